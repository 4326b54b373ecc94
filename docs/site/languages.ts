// The page of all codes in other languages, from the catalogues that an app uses.
import type { Catalogue } from 'seahail/locale';
import { german } from 'seahail/locale/de';
import { english } from 'seahail/locale/en';
import { french } from 'seahail/locale/fr';
import { dutch } from 'seahail/locale/nl';

const NAMES = { en: 'English', de: 'Deutsch', fr: 'français', nl: 'Nederlands' };
const CATALOGUES: readonly Catalogue[] = [english, german, french, dutch];

document.addEventListener('DOMContentLoaded', () => {
  const cells = [...document.querySelectorAll<HTMLTableRowElement>('#content tbody tr')].map((row) => ({
    code: row.cells[0]?.textContent ?? '',
    text: row.cells[2],
  }));
  const first = document.querySelector('#content h2');
  if (first === null) return;
  const label = document.createElement('label');
  const select = document.createElement('select');
  const note = document.createElement('span');
  note.setAttribute('role', 'status');
  select.id = 'language';
  for (const { lang } of CATALOGUES) {
    const option = new Option(NAMES[lang as keyof typeof NAMES], lang);
    option.lang = lang;
    select.append(option);
  }
  label.append('Texts in ', select);
  const line = document.createElement('p');
  line.className = 'filter';
  line.append(label, ' ', note);
  first.before(line);
  select.addEventListener('change', () => {
    const catalogue = CATALOGUES.find(({ lang }) => lang === select.value) ?? english;
    const texts = catalogue.texts as Readonly<Record<string, string | readonly [string, string]>>;
    for (const { code, text } of cells) {
      if (text === undefined) continue;
      text.lang = catalogue.lang;
      text.textContent = [texts[code] ?? ''].flat()[0] ?? '';
    }
    const { by, on } = catalogue.translated;
    note.textContent =
      catalogue === english ? '' : `Translated by ${by}, ${on}; ${catalogue.translated.note}.`;
  });
});
