/**
 * Marine VHF digital selective calling: a short tour of what most apps need.
 *
 * Text from a form becomes an identity ({@link parseIdentity}); a plan of the waters, such as that of
 * `seahail/channel/international`, gives channels ({@link findChannel}, {@link workingChannels}); a typed or a
 * reported position becomes coordinates or a box ({@link parsePosition}, {@link boxOf}); a call is composed
 * ({@link composeIndividualCall}), checked ({@link checkCall}), put into words ({@link describeCall}) and answered
 * ({@link answersTo}).
 *
 * Everything else has an entry point of its own: `seahail/position` gives range and bearing, `seahail/sentence` reads and writes the serial line,
 * `seahail/station` decides what to do next, `seahail/burst` and `seahail/audio` make symbols and sound,
 * `seahail/directory` is an address book, and `seahail/speech` has the words to speak.
 *
 * @packageDocumentation
 */

// Answers: a value with notices, or issues.

export type { Issue, Notice, Result } from './result/index.ts';
export { valueOf } from './result/index.ts';

// Who is it?

export type { Identity, IdentityField, IdentityKind, Mmsi } from './identity/index.ts';
export {
  checkCallSign,
  checkIdentity,
  formatIdentity,
  identitySchema,
  parseIdentity,
} from './identity/index.ts';

// Where do we talk?

export type { Channel, ChannelPlan, WorkingChannels } from './channel/index.ts';
export { channelsAt, checkWorkingChannel, findChannel, workingChannels } from './channel/index.ts';

// Where is she? Range and bearing, which load the geodesy, are in `seahail/position`.

export { boxOf } from './position/box.ts';
export { formatPosition } from './position/format-position.ts';
export type { Bounds, Coordinates, ReportedPosition, TimeOfDay } from './position/index.ts';
export { parsePosition } from './position/parse-position.ts';
export { toReportedPosition } from './position/report-position.ts';
export { formatReportedPosition } from './position/reported-position.ts';

// What is said?

export type { Call, CallKind, LawfulAnswers } from './call/index.ts';
export {
  answersTo,
  checkCall,
  composeAllShipsCall,
  composeDistressAlert,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  describeCall,
} from './call/index.ts';
