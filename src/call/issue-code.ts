/** Every finding the call room can give. */
export const CALL_ISSUE_CODES = [
  { code: 'call-unrecognised', meaning: 'format specifier and telecommand belong to no kind of call' },
  { code: 'call-character-missing', meaning: 'a character of a field could not be read' },
  { code: 'call-field-missing', meaning: 'a field of the composition is not there' },
  { code: 'call-field-unexpected', meaning: 'a field is there that the composition does not have' },
  {
    code: 'call-field-unread',
    meaning: 'a field of the composition carries something that is not understood',
  },
  { code: 'call-symbol-unknown', meaning: 'a symbol has no name in the tables' },
  { code: 'call-category-unusual', meaning: 'the category is not one the composition has' },
  {
    code: 'call-category-acs',
    meaning: "the category is the automatic connection system (MF/HF), in older sets ship's business",
  },
  { code: 'call-end-unusual', meaning: 'the end of sequence is not that of the composition' },
  { code: 'call-header-missing', meaning: 'a position reply came without the header symbol 55' },
  { code: 'call-channel-echoed', meaning: 'an answer that cannot comply names a channel' },
  { code: 'call-channel-unknown', meaning: 'the digits of a channel element name no channel' },
  { code: 'call-channel-old-form', meaning: 'a channel came in the form of older sets, and was read' },
  { code: 'call-channels-differ', meaning: 'the two channel elements of a call name two VHF channels' },
  { code: 'call-tenth-digit', meaning: 'the tenth digit of an identity is not 0' },
  { code: 'call-expansion-unread', meaning: 'a data set of the expansion is not understood or out of order' },
  { code: 'call-rest', meaning: 'symbols follow that fit no field' },
  {
    code: 'call-moored-vessel-alarm',
    meaning: 'the call has the form of the automatic alarm of a moored vessel (47 CFR 80.179(e))',
  },
  // checkCall
  { code: 'call-value', meaning: 'a value in the call has no symbols, or is of another type' },
  { code: 'call-identity-form', meaning: 'an identity has no form of ITU-R M.585' },
  { code: 'call-class-none', meaning: "the sender's class of equipment does not send this kind of call" },
  {
    code: 'call-class-guarded',
    meaning: "the sender's class sends this kind of call only from behind a protective cover",
  },
  { code: 'call-communication-unusual', meaning: 'the first telecommand is not usual in this kind of call' },
  {
    code: 'call-reason-misplaced',
    meaning: 'a reason for being unable stands in a call that says something else',
  },
  { code: 'call-reason-missing', meaning: 'an answer that cannot comply gives none of the ten reasons' },
  { code: 'call-remark-misplaced', meaning: 'medical transport or neutral craft without telephony' },
  { code: 'call-channel-none', meaning: 'a call that needs a working channel names none' },
  { code: 'call-channel-70', meaning: 'channel 70 is named as working channel' },
  { code: 'call-channel-16-routine', meaning: 'channel 16 is named as working channel of routine traffic' },
  { code: 'call-channel-two-frequency', meaning: 'a two-frequency channel is named between two ships' },
  { code: 'call-coast-acknowledges', meaning: 'a ship acknowledges an alert by DSC' },
  { code: 'call-cancel-of-another', meaning: "a cancellation names another vessel's distress" },
  { code: 'call-relay-of-own', meaning: 'a relay names the own vessel' },
  { code: 'call-relay-cases', meaning: 'a ship sends a DSC relay to others than one coast station' },
  { code: 'call-position-unknown', meaning: 'a distress call gives no position' },
  { code: 'call-time-unknown', meaning: 'a distress call gives a position without its time' },
] as const;

/** Code of any notice that the call room gives by itself. */
export type CallIssueCode = (typeof CALL_ISSUE_CODES)[number]['code'];
