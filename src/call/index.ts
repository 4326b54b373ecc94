/**
 * The call: what a digital selective call says, taken apart and put together by the tables of ITU-R M.493.
 *
 * @packageDocumentation
 */
export { answersTo } from './answer/answers-to.ts';
export type {
  AnsweringStation,
  AnswerMeaning,
  LawfulAnswer,
  LawfulAnswers,
  NoAnswer,
} from './answer/lawful-answers.ts';
export type * from './call.ts';
export { type CheckOptions, checkCall } from './check/check-call.ts';
export {
  composeAllShipsCall,
  composeAreaCall,
  composeGroupCall,
  composeIndividualCall,
  type TrafficCategory,
  type TrafficOptions,
} from './compose/announcement.ts';
export {
  type AnswerOptions,
  composeIndividualAcknowledgement,
  composePollingAcknowledgement,
  composePositionReply,
  composeTestAcknowledgement,
  composeUnableToComply,
  type PositionOptions,
} from './compose/answer.ts';
export { composeAutomaticServiceCall } from './compose/automatic-service.ts';
export type { WithExpansion } from './compose/composed.ts';
export {
  type AboutDistress,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  type DistressOptions,
  type RelayTarget,
} from './compose/distress.ts';
export {
  composePollingCall,
  composePositionRequest,
  composeTestCall,
  type EnquiryOptions,
} from './compose/enquiry.ts';
export {
  type ComposedKind,
  type Composition,
  compositionOf,
  type Duty,
  type EquipmentClass,
  fieldLengths,
} from './composition.ts';
export { compositions } from './composition-table.ts';
export type { Caution } from './describe/cautions.ts';
export { type CallDescription, type DescribeOptions, describeCall } from './describe/describe-call.ts';
export type { DescriptionRow } from './describe/field-rows.ts';
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
export type { DistressCall } from './kind/distress.ts';
export type { Situation, SpokenDistress, SpokenLine, SpokenScript, SpokenStation } from './speak/script.ts';
export { type FigureWords, spell } from './speak/spell.ts';
export { type SpokenScriptOptions, spokenScript } from './speak/spoken-script.ts';
export * from './symbol.ts';
export { callToFields } from './to-fields.ts';
