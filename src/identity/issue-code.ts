/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const IDENTITY_ISSUE_CODES = [
  // parseIdentity: what was taken away
  { code: 'identity-invisible', meaning: 'invisible characters were removed' },
  { code: 'identity-digits', meaning: 'digits of another script were read' },
  { code: 'identity-blanks', meaning: 'spaces around or between the digits were removed' },
  { code: 'identity-apostrophe', meaning: "a spreadsheet's leading apostrophe was removed" },
  { code: 'identity-label', meaning: 'the label "MMSI" was removed' },
  { code: 'identity-thousands', meaning: 'commas between groups of three digits were removed' },
  { code: 'identity-separators', meaning: 'hyphens or dots between digits were removed' },
  {
    code: 'identity-repeated-digit',
    meaning: 'all nine digits are the same: an assigned format, but check the licence',
  },
  // parseIdentity: what could mean something else
  { code: 'identity-empty', meaning: 'nothing was entered' },
  { code: 'identity-not-text', meaning: 'the value is neither text nor a number' },
  {
    code: 'identity-number',
    meaning: 'the value is a number, which loses leading zeros; each reading is suggested',
  },
  { code: 'identity-too-long', meaning: 'the text is too long for one identity' },
  { code: 'identity-two-numbers', meaning: 'the text holds two numbers; each is suggested' },
  { code: 'identity-sign', meaning: 'a plus or minus in front' },
  {
    code: 'identity-scientific',
    meaning: 'the number was rounded to scientific notation, so digits may be lost',
  },
  { code: 'identity-decimal', meaning: 'the number has a decimal part; each reading is suggested' },
  { code: 'identity-imo-number', meaning: 'an IMO ship number, by its label or its check digit' },
  { code: 'identity-call-sign', meaning: 'a call sign in the field for an identity' },
  { code: 'identity-letter', meaning: 'letters that look like digits; the reading is suggested' },
  { code: 'identity-character', meaning: 'a character that no identity contains' },
  { code: 'identity-placeholder', meaning: 'a placeholder such as 123456789' },
  { code: 'identity-unassigned', meaning: 'nine digits in no assigned format' },
  { code: 'identity-leading-zeros', meaning: 'seven or eight digits, as when leading zeros were dropped' },
  { code: 'identity-call-address', meaning: 'ten digits ending in 0, the form used on the air' },
  { code: 'identity-atis', meaning: 'ten digits beginning with 9, an inland waterway ATIS code' },
  { code: 'identity-atis-shape', meaning: 'an ATIS code is not 9, a MID and six digits' },
  { code: 'identity-digit-count', meaning: 'a wrong number of digits, without a likely reading' },
  // decodeCallAddress
  { code: 'identity-address-shape', meaning: 'an address of a call is not ten digits' },
  { code: 'identity-tenth-digit', meaning: 'the tenth digit of an address is not 0' },
  // checkIdentity, checkAssigned, identitySchema
  { code: 'identity-use', meaning: 'this kind of identity does not belong in this field' },
  { code: 'identity-own-called', meaning: 'the address of a call is the own identity' },
  { code: 'identity-station', meaning: 'this kind of identity is unusual for this radio: check the licence' },
  { code: 'identity-mid-unallocated', meaning: 'the MID is not in this edition of the table' },
  {
    code: 'identity-kind',
    meaning: 'the identity is well-formed but of a kind that the field does not accept',
  },
  // checkCallSign
  { code: 'identity-call-sign-digits', meaning: 'nine digits in the field for a call sign' },
  { code: 'identity-call-sign-shape', meaning: 'a call sign that does not look like that of a ship' },
] as const;
