/** What other modules of this library use of this one and the package does not publish. */
export type { ReadFields } from './call-table.ts';
export { expandFields, fillWhatIsUnsaid, readFields } from './convert.ts';
export { isMfHf } from './describe/cautions.ts';
export { isMooredVesselAlarm, unnamedChannelNotices } from './element/announcement.ts';
export { isAshore, UNKNOWN_SHIP } from './element/identity-symbols.ts';
export { PARITY_MARKS, telephoneSymbols } from './element/telephone-number.ts';
export type { DraftFields, ExpansionSet } from './fields.ts';
export {
  allFields,
  digitsOf,
  emptyFields,
  type FieldName,
  fieldForms,
  POSITION_HEADER,
  symbolsOf,
} from './fields.ts';
export type { ComposedKind } from './kinds.ts';
export { stationNamed } from './station-names.ts';
export type { EndOfSequence, FormatSpecifier } from './symbol.ts';
export {
  ATIS_FORMAT,
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  NO_INFORMATION,
  nameOfSymbol,
  symbolOfName,
} from './symbol.ts';
export { callTerms, categoryTerms, fieldTerms, voiceTerms } from './terms.ts';
export type { CallTexts } from './texts.ts';
export { answerTexts, cautionTexts, checkTexts, describeTexts, receivedTexts } from './texts.ts';
