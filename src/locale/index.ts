/**
 * What the library says, in other languages. Every issue, notice, caution, advice and text of a station has a code and
 * params; {@link translate} makes it again from a catalogue: `seahail/locale/de`, `seahail/locale/fr`,
 * `seahail/locale/nl` or your own. Nothing is global: the caller passes the catalogue.
 *
 * Words to speak on the radio stay English.
 *
 * Guide: [Other languages](../../docs/guide/locale.md).
 *
 * @packageDocumentation
 */
export type { Catalogue, TextCode, TextParams } from './catalogue.ts';
export type { Translatable, Translated } from './translate.ts';
export { translate } from './translate.ts';
