import { type Translatable, translate } from 'seahail/locale';
import { german } from 'seahail/locale/de';
import { french } from 'seahail/locale/fr';
import { dutch } from 'seahail/locale/nl';
import { byId, type Child, h } from './dom.ts';

const KEY = 'seahail-language';
const CATALOGUES = new Map([german, french, dutch].map((catalogue) => [catalogue.lang, catalogue]));

/** The language of issues, notices and cautions that the person chose; the page itself is in English. */
function chosen(): string {
  try {
    return localStorage.getItem(KEY) ?? 'en';
  } catch {
    return 'en';
  }
}

/** Whether the person reads another language than that of the page. */
export function isForeign(): boolean {
  return CATALOGUES.has(chosen());
}

/** A text of the library in the chosen language, as plain words. */
export function words(coded: Translatable): string {
  const catalogue = CATALOGUES.get(chosen());
  return catalogue === undefined ? (coded.message ?? coded.text ?? '') : translate(coded, catalogue).text;
}

/** A text of the library in the chosen language, marked with it. */
export function said(coded: Translatable, dressed: (text: string) => string = (text) => text): Child {
  const english = dressed(coded.message ?? coded.text ?? '');
  const catalogue = CATALOGUES.get(chosen());
  if (catalogue === undefined) return english;
  const { lang, text } = translate(coded, catalogue);
  return lang === 'en' ? english : h('span', { lang }, dressed(text));
}

/** Lets the person choose; the page answers again. */
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
    again();
  });
}
