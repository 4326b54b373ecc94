/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const NETWORK_ISSUE_CODES = [
  {
    code: 'network-not-a-frame',
    meaning: 'the input is not a frame with a 29-bit identifier and up to 8 bytes',
  },
  { code: 'network-packet-torn', meaning: 'frames of a fast packet are missing' },
  { code: 'network-message-short', meaning: 'a message ends before its last field' },
  {
    code: 'network-identity-tenth-digit',
    meaning: 'the five bytes of an identity do not end in the digit 0',
  },
  { code: 'network-ais-identity', meaning: 'an AIS identity has more than nine digits' },
  {
    code: 'network-distress-one-field',
    meaning: 'one field holds both the nature of distress and the first telecommand',
  },
  { code: 'network-position-range', meaning: 'a position lies beyond 90 or 180 degrees' },
  { code: 'network-position-half', meaning: 'only one of latitude and longitude is available' },
  { code: 'network-frequency', meaning: 'a frequency or channel is not six digits' },
  { code: 'network-telephone-unexpected', meaning: 'a telephone number is not that of an automatic call' },
  { code: 'network-text-cut-off', meaning: 'a text is shorter than its length says' },
  { code: 'network-date-early', meaning: 'a date is 1024 weeks early, as an old GNSS receiver sets it' },
  { code: 'network-log-not-text', meaning: 'a log is neither text nor bytes' },
  { code: 'network-log-line', meaning: 'a line of a log is not a CAN frame' },
  { code: 'network-log-link-type', meaning: 'a capture file is not of CAN frames' },
  { code: 'network-log-cut-off', meaning: 'a capture file ends within a record' },
] as const;
