/**
 * The call: what a digital selective call says, taken apart and put together by the tables of ITU-R M.493-16 (A1-3 to A1-5 read in
 * restatements, A1-4.1 to A1-4.9 and M.821-1 from memory, unless a function names another source).
 *
 * Everything received becomes a {@link Call} and everything sent starts as one. The functions here compose, check,
 * answer and describe calls; nothing here transmits. The radio licence, the
 * operator's certificate and national rules decide what may be sent.
 *
 * Guide: [Call: what is said?](../../docs/guide/call.md).
 *
 * @packageDocumentation
 */

// What a call is: what each kind says is in one table, and a call of one kind is `Call<'test-call'>`.

export type {
  Call,
  CallAddress,
  CallAddresses,
  CallKind,
  Calls,
  DistressCall,
  DistressDetails,
  ExpansionData,
  TrafficDetails,
} from './call.ts';
export { isDistressCall } from './kinds.ts';

// The names that fields have, and the lists to choose from.

export type {
  Category,
  FirstTelecommand,
  NatureOfDistress,
  Reason,
  SecondTelecommand,
  UnknownSymbol,
} from './symbol.ts';
export { natures, reasons, type SymbolTable } from './symbol.ts';

// A call taken apart into fields of symbols, and back.

export { decodeFields, encodeFields } from './convert.ts';
export type { CallFields, Symbols } from './fields.ts';

// Which fields make which call, and who may send it.

export { type Composition, compositions, type EquipmentClass, fieldLengths } from './kinds.ts';

// Composing one call of each kind.

export {
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeGroupCall,
  composeIndividualCall,
  type TrafficOptions,
} from './compose/announcement.ts';
export {
  type AnswerOptions,
  composeIndividualAcknowledgement,
  composePollingAcknowledgement,
  composePositionReply,
  composeTestAcknowledgement,
  composeUnableToComply,
} from './compose/answer.ts';
export type { ComposeOptions } from './compose/arguments.ts';
export {
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  type DistressOptions,
} from './compose/distress.ts';
export { composePollingCall, composePositionRequest, composeTestCall } from './compose/enquiry.ts';

// What speaks against a call.

export { checkCall } from './check/check-call.ts';

// Every lawful answer, ready to send.

export { answersTo } from './answer/answers-to.ts';
export type { AnsweringStation, LawfulAnswer, LawfulAnswers } from './answer/lawful-answers.ts';

// Where names of stations come from, for people and for the words to speak.

export type { SpokenStation, StationNames } from './station-names.ts';

// A call for people: one sentence, a table of fields, cautions.

export type { Caution } from './describe/cautions.ts';
export { describeCall } from './describe/describe-call.ts';
export type { CallDescription } from './describe/field-rows.ts';
