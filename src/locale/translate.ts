import type { CodedText, Param } from '../result/index.ts';
import { render, type Template, want } from '../result/internal.ts';
import type { Catalogue } from './catalogue.ts';

/** A text in another language. */
export interface Translated {
  /** Language that the text is in: that of the catalogue, or `'en'` where it has no text for the code. */
  readonly lang: string;
  /** The text, without a final full stop. */
  readonly text: string;
  /** What an issue expects, where it says so. */
  readonly expected?: string;
}

/** What can be translated: an issue, notice, caution, advice, note or what a station shows and asks. */
export interface Translatable {
  /** Without one, as on a note of a plan of your own, the text stays as it is. */
  readonly code?: string;
  readonly params?: CodedText['params'];
  /** The text in English, kept where the catalogue has none; `text` where the object has that instead. */
  readonly message?: string;
  readonly text?: string;
  readonly expected?: string;
  readonly received?: string;
  readonly suggestion?: string;
}

/**
 * A text in another language, made from its code and params. English is kept for a code that the catalogue lacks, and
 * marked. Numbers, frequencies, identities, names of channels and clauses are data and stay as they are.
 *
 * Safety wording in another language needs a second reader, a radio operator who speaks it, before anyone relies on
 * it: see `translated.note` of the catalogue.
 *
 * @param coded - an issue, notice, caution, or anything else with `code` and `params`
 * @param catalogue - the language; part of one will do
 * @returns the text and its language; never throws on what the library gave
 *
 * @example
 * ```ts
 * import { parseIdentity } from 'seahail/identity';
 * import { translate } from 'seahail/locale';
 * import { german } from 'seahail/locale/de';
 *
 * const typed = parseIdentity('23299987');
 * if (!typed.ok) console.log(translate(typed.issues[0], german).text); // Kennung braucht 9 Ziffern, hat 8
 * ```
 */
export function translate(
  coded: Translatable,
  catalogue: Pick<Catalogue, 'lang'> & { readonly texts: Partial<Catalogue['texts']> },
): Translated {
  want('translate', 'a text with its code', coded);
  want('translate', 'a catalogue', catalogue, 'texts');
  const texts: Readonly<Record<string, Template | undefined>> = catalogue.texts;
  const { code = '', params = {}, message, text = message ?? '', expected, received, suggestion } = coded;
  const template = Object.hasOwn(texts, code) ? texts[code] : undefined;
  if (template === undefined) return { lang: 'en', text, ...(expected !== undefined && { expected }) };
  const nested = Object.entries(params).map(([name, value]) => [name, said(value, catalogue)]);
  // A text made of an issue has what was received among its params.
  const values = {
    ...Object.fromEntries(nested),
    ...(received !== undefined && { received }),
    ...(suggestion !== undefined && { suggestion }),
  };
  const { message: made, ...rest } = render(template, values, texts);
  return { lang: catalogue.lang, text: made, ...rest };
}

/** A param with the texts in it in the language of the catalogue. */
function said(value: Param, catalogue: Parameters<typeof translate>[1]): unknown {
  if (Array.isArray(value)) return value.map((each) => said(each, catalogue));
  return typeof value === 'object' ? { message: translate(value as CodedText, catalogue).text } : value;
}
