/**
 * Every code that an issue or notice of this module can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const DIRECTORY_ISSUE_CODES = [
  { code: 'directory-csv-header', meaning: 'no column of a list holds identities' },
  { code: 'directory-csv-quotes', meaning: 'quotes of a row do not close' },
  { code: 'directory-csv-short', meaning: 'a row ends before the identity' },
  { code: 'directory-csv-twice', meaning: 'two rows of a list have one identity' },
  { code: 'directory-csv-group', meaning: 'a group of a row is not the identity of a group' },
  { code: 'directory-csv-time', meaning: 'a time of a row is not an ISO 8601 instant' },
  { code: 'directory-json-shape', meaning: 'the text is not a stored directory' },
  { code: 'directory-json-field', meaning: 'a field of a stored directory is not valid' },
  { code: 'directory-vcard-none', meaning: 'the text contains no vCard' },
  { code: 'directory-vcard-end', meaning: 'a card has no end' },
  { code: 'directory-vcard-line', meaning: 'a line is not a property of a card' },
  { code: 'directory-vcard-version', meaning: 'a card has a version other than 4.0' },
  { code: 'directory-vcard-identity', meaning: 'a card has no identity' },
  { code: 'directory-vcard-group', meaning: 'a group of a card is not the identity of a group' },
  { code: 'directory-more-notices', meaning: 'the text has more findings than are listed' },
] as const;
