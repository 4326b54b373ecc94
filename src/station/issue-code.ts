/** Codes of the issues that {@link step}, {@link restoreStation}, {@link checkSetup} and the log give, with their meaning. */
export const STATION_ISSUE_CODES = [
  {
    code: 'station-identity-missing',
    meaning: 'no own identity is stored: the station receives, and sends nothing',
  },
  { code: 'station-identity-fixed', meaning: 'an identity that is stored once is not changed by the user' },
  { code: 'station-identity-form', meaning: 'the identity cannot be a station’s own' },
  { code: 'station-class-cannot-send', meaning: 'this class of equipment does not send that kind of call' },
  {
    code: 'station-not-a-beginning',
    meaning: 'that kind of call is not started by hand: it is an answer, or part of a procedure',
  },
  { code: 'station-address-missing', meaning: 'the call says for nobody that it could be sent to' },
  { code: 'station-call-form', meaning: 'a value in the call has no symbols, so it cannot be sent' },
  { code: 'station-call-to-itself', meaning: 'the call is addressed to this very station' },
  {
    code: 'station-relay-reason',
    meaning:
      'a ship gives a reason for a DSC relay: nobody acknowledged (to one coast station), or the vessel cannot alert herself and needs more help',
  },
  { code: 'station-channel-form', meaning: 'no channel that a call can name' },
  {
    code: 'station-channel-barred',
    meaning: 'no such talk may be on that channel in any waters: 70 and 16 among them',
  },
  { code: 'station-reason-missing', meaning: 'a refusal gives one of ten reasons' },
  {
    code: 'station-settings-form',
    meaning: 'a setting has a value that it cannot have; all stay as they were',
  },
  { code: 'station-event-form', meaning: 'the event is none that a station knows, or lacks a part' },
  { code: 'station-alert-in-hand', meaning: 'there is an own distress already' },
  { code: 'station-no-alert', meaning: 'there is no own distress' },
  { code: 'station-no-such-dialogue', meaning: 'no dialogue has that number; it may have ended' },
  { code: 'station-not-now', meaning: 'the dialogue is not in a phase in which that can be done' },
  {
    code: 'station-acknowledgement-not-allowed',
    meaning: 'a DSC acknowledgement of distress is not this station’s to send now',
  },
  { code: 'station-fix-form', meaning: 'the position is no place on Earth' },
  { code: 'station-state-form', meaning: 'the stored data is no station state' },
  { code: 'station-state-newer', meaning: 'the stored state is of a newer version of the library' },
  {
    code: 'station-state-mended',
    meaning: 'a part of the stored state made no sense and was replaced or left out',
  },
  {
    code: 'station-state-asks',
    meaning: 'a stored dialogue would have transmitted: a person is asked first',
  },
  {
    code: 'station-state-set-aside',
    meaning: 'a stored dialogue cannot have come about: it was set aside, and the notice holds all of it',
  },
] as const;

/** One of {@link STATION_ISSUE_CODES}. */
export type StationIssueCode = (typeof STATION_ISSUE_CODES)[number]['code'];
