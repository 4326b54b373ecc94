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
  { code: 'call-category-withdrawn', meaning: "the category is ship's business, which is withdrawn" },
  { code: 'call-end-unusual', meaning: 'the end of sequence is not that of the composition' },
  { code: 'call-header-missing', meaning: 'a position reply came without the header symbol 55' },
  { code: 'call-channel-echoed', meaning: 'an answer that cannot comply names a channel' },
  { code: 'call-tenth-digit', meaning: 'the tenth digit of an identity is not 0' },
  { code: 'call-expansion-unread', meaning: 'a data set of the expansion is not understood or out of order' },
  { code: 'call-rest', meaning: 'symbols follow that fit no field' },
] as const satisfies readonly { readonly code: string; readonly meaning: string }[];
