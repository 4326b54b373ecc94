/** Codes of the issues that {@link step}, {@link restoreStation}, {@link checkSetup} and the log give, with their meaning. */
export const STATION_ISSUE_CODES = [
  {
    code: 'station-identity-missing',
    meaning: 'no own identity is stored: the station receives, and sends nothing',
  },
  { code: 'station-identity-fixed', meaning: 'a stored own identity cannot be changed by the user' },
  { code: 'station-identity-form', meaning: 'the identity is not one that a single station can have' },
  { code: 'station-class-cannot-send', meaning: 'this class of equipment does not send that kind of call' },
  {
    code: 'station-not-a-beginning',
    meaning: 'that kind of call cannot be started by hand: it is an answer, or part of a procedure',
  },
  { code: 'station-address-missing', meaning: 'the call has no address to send it to' },
  { code: 'station-call-form', meaning: 'a value in the call has no symbols, so it cannot be sent' },
  { code: 'station-call-to-itself', meaning: 'the call is addressed to this station itself' },
  {
    code: 'station-relay-reason',
    meaning:
      'a ship gives a reason for a DSC relay: nobody acknowledged (to one coast station), or the vessel cannot alert herself and needs more help',
  },
  { code: 'station-channel-form', meaning: 'not a channel that a call can propose' },
  {
    code: 'station-channel-barred',
    meaning: 'that channel is never used for such talk, in any waters: 70 and 16 among them',
  },
  { code: 'station-reason-missing', meaning: 'a refusal gives one of ten reasons' },
  {
    code: 'station-settings-form',
    meaning: 'a setting has an invalid value; no setting was changed',
  },
  {
    code: 'station-event-form',
    meaning: 'the event has an unknown kind, or a part of it is missing or malformed',
  },
  { code: 'station-alert-in-hand', meaning: 'an own distress alert is already in progress' },
  { code: 'station-no-alert', meaning: 'no own distress alert is in progress' },
  { code: 'station-no-such-dialogue', meaning: 'no dialogue has that number; it may have ended' },
  { code: 'station-not-now', meaning: 'the dialogue is in a phase that does not allow it' },
  {
    code: 'station-acknowledgement-not-allowed',
    meaning: 'this station may not send a DSC distress acknowledgement now',
  },
  { code: 'station-fix-form', meaning: 'the position is not a place on Earth' },
  { code: 'station-state-form', meaning: 'the stored data is not a station state' },
  { code: 'station-state-newer', meaning: 'the stored state was written by a newer version of the library' },
  {
    code: 'station-state-repaired',
    meaning: 'a part of the stored state was invalid and was replaced or left out',
  },
  {
    code: 'station-state-asks',
    meaning: 'a stored dialogue would have transmitted: a person is asked first',
  },
  {
    code: 'station-state-set-aside',
    meaning: 'a stored dialogue is impossible: it was set aside, and the notice holds all of it',
  },
] as const;
