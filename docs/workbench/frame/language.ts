import { type Catalogue, type Translatable, translate } from 'seahail/locale';
import { keptFor } from './catalogue/keep.ts';
import { byId, type Child, h } from './dom.ts';

const KEY = 'seahail-language';

/** The language of issues, notices and cautions that the person chose; the page itself is in English. */
function chosen(): string {
  try {
    return localStorage.getItem(KEY) ?? 'en';
  } catch {
    return 'en';
  }
}

function catalogue(): Catalogue | undefined {
  return keptFor(chosen());
}

/** Whether the person reads another language than that of the page. */
export function isForeign(): boolean {
  return catalogue() !== undefined;
}

/** A text of the library in the chosen language, as plain words. */
export function words(coded: Translatable): string {
  const there = catalogue();
  return there === undefined ? (coded.message ?? coded.text ?? '') : translate(coded, there).text;
}

/** A text of the library in the chosen language, marked with it. */
export function said(coded: Translatable, dressed: (text: string) => string = (text) => text): Child {
  const there = catalogue();
  const { lang, text } =
    there === undefined ? { lang: 'en', text: coded.message ?? coded.text ?? '' } : translate(coded, there);
  return lang === 'en' ? dressed(text) : h('span', { lang }, dressed(text));
}

/** Lets the person choose; the page answers again when the words have come. */
export function bindLanguage(again: () => void): void {
  const select = document.querySelector<HTMLSelectElement>('#language');
  if (select === null) return;
  byId('language-choice').hidden = false;
  select.value = chosen();
  select.addEventListener('change', () => {
    try {
      localStorage.setItem(KEY, select.value);
    } catch {
      // Without storage there is no other language.
    }
    fetchWords(select.value, again);
  });
  if (select.value !== 'en') fetchWords(select.value, again);
}

/** The catalogue of a language is a script of its own: a page in English does not carry it. */
function fetchWords(lang: string, then: () => void): void {
  if (lang === 'en' || keptFor(lang) !== undefined) {
    then();
    return;
  }
  const script = document.createElement('script');
  script.src = `language-${lang}.js`;
  script.addEventListener('load', then);
  document.head.append(script);
}
