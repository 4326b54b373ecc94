/**
 * The call: what a digital selective call says, taken apart and put together by the tables of ITU-R M.493.
 *
 * @packageDocumentation
 */
export type * from './call.ts';
export {
  type ComposedKind,
  type Composition,
  compositionOf,
  compositions,
  type Duty,
  type EquipmentClass,
  fieldLengths,
} from './composition.ts';
export {
  type CallFields,
  digitsOf,
  type ExpansionSet,
  emptyFields,
  type Symbols,
  symbolsOf,
} from './fields.ts';
export { callFromFields, type InterpretedCall } from './from-fields.ts';
export { CALL_ISSUE_CODES } from './issue-code.ts';
export * from './symbol.ts';
export { callToFields } from './to-fields.ts';
