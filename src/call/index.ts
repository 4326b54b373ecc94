/**
 * The call: what a digital selective call says, taken apart and put together by the tables of ITU-R M.493.
 *
 * Everything received becomes a {@link Call} and everything sent starts as one. The functions here compose, check,
 * answer and describe calls; nothing here transmits. The radio licence, the
 * operator's certificate and national rules decide what may be sent.
 *
 * Guide: [Call: what is said?](../../docs/guide/call.md).
 *
 * @packageDocumentation
 */

// What a call is: one interface a kind, and two families of them.

export type * from './call.ts';
export { isDistressCall } from './kinds.ts';

// The symbols of each field and their names.

export * from './symbol.ts';

// A call taken apart into fields of symbols, and back.

export type { InterpretedCall } from './call-table.ts';
export { decodeFields, encodeFields } from './convert.ts';
export {
  type CallFields,
  digitsOf,
  type ExpansionSet,
  emptyFields,
  type Symbols,
  symbolsOf,
} from './fields.ts';

// Which fields make which call, and who may send it.

export {
  type ComposedKind,
  type Composition,
  compositionOf,
  compositions,
  type Duty,
  type EquipmentClass,
  fieldLengths,
} from './kinds.ts';

// Composing one call of each kind.

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

// What speaks against a call.

export { type CheckOptions, checkCall } from './check/check-call.ts';

// Every lawful answer, ready to send.

export { answersTo } from './answer/answers-to.ts';
export type {
  AnsweringStation,
  AnswerMeaning,
  LawfulAnswer,
  LawfulAnswers,
  NoAnswer,
} from './answer/lawful-answers.ts';

// Where names of stations come from, for people and for the words to speak.

export type { SpokenStation, StationNames } from './station-names.ts';

// A call for people: one sentence, a table of fields, cautions.

export type { Caution } from './describe/cautions.ts';
export { type CallDescription, type DescribeOptions, describeCall } from './describe/describe-call.ts';
export type { DescriptionRow } from './describe/field-rows.ts';

// Every code a notice of this room can carry.

export { CALL_ISSUE_CODES, type CallIssueCode } from './issue-code.ts';
