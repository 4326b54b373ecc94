/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const SENTENCE_ISSUE_CODES = [
  { code: 'sentence-no-start', meaning: 'the line holds no sentence' },
  { code: 'sentence-line-endless', meaning: 'characters were dropped because no line end came in time' },
  { code: 'sentence-leading-characters', meaning: 'characters before the sentence were left out' },
  { code: 'sentence-trailing-characters', meaning: 'characters or blanks behind the checksum were left out' },
  { code: 'sentence-address', meaning: 'the first field is neither talker and formatter nor a maker’s code' },
  { code: 'sentence-length', meaning: 'the sentence is longer than 82 characters' },
  { code: 'sentence-checksum-wrong', meaning: 'the checksum is not that of the sentence' },
  { code: 'sentence-checksum-malformed', meaning: 'the checksum is not two hexadecimal digits' },
  { code: 'sentence-checksum-missing', meaning: 'the sentence has no checksum' },
  { code: 'sentence-checksum-lower-case', meaning: 'the checksum is written in lower case' },
  { code: 'sentence-blank-sent', meaning: 'a field was sent with blanks around it' },
  { code: 'sentence-blank-damage', meaning: 'blanks got into the sentence after it was sent' },
  { code: 'sentence-tag-checksum', meaning: 'the checksum of a TAG block is wrong or missing' },
  { code: 'sentence-tag-unclosed', meaning: 'a TAG block has no second backslash' },
  { code: 'sentence-fields-missing', meaning: 'a DSC sentence has fewer than eleven fields' },
  { code: 'sentence-fields-surplus', meaning: 'a DSC sentence has more than eleven fields' },
  { code: 'sentence-legacy-layout', meaning: 'a DSC sentence has the older layout of seven fields' },
  { code: 'sentence-code', meaning: 'a field that should hold a two-digit code holds something else' },
  { code: 'sentence-identity', meaning: 'a field that should hold an identity holds something else' },
  { code: 'sentence-identity-nine-digits', meaning: 'an identity lacks its padding zero' },
  { code: 'sentence-address-unexpected', meaning: 'a commanded call to everyone names a station' },
  { code: 'sentence-area', meaning: 'a field that should hold an area holds something else' },
  { code: 'sentence-area-or-identity', meaning: 'an area could just as well be the caller’s identity' },
  { code: 'sentence-place', meaning: 'field 6 is neither a position nor a frequency' },
  { code: 'sentence-time', meaning: 'field 7 is no time' },
  { code: 'sentence-ship-unexpected', meaning: 'a distress alert names another ship in distress' },
  { code: 'sentence-acknowledgement', meaning: 'field 10 is none of R, B and S' },
  { code: 'sentence-expansion-mark', meaning: 'field 11 is neither E nor empty' },
  { code: 'sentence-expansion-count', meaning: 'a DSE sentence does not say which of how many it is' },
  { code: 'sentence-expansion-flag', meaning: 'the flag of a DSE sentence is none of A, Q and R' },
  { code: 'sentence-expansion-code', meaning: 'a data set of a DSE sentence has no code' },
  { code: 'sentence-expansion-data', meaning: 'the data of a DSE sentence does not fit its data set' },
  { code: 'sentence-expansion-missing', meaning: 'an announced expansion did not come in full' },
  {
    code: 'sentence-expansion-unannounced',
    meaning: 'an expansion was joined to a call that did not announce it',
  },
  { code: 'sentence-expansion-late', meaning: 'an expansion did not follow its call directly' },
  { code: 'sentence-expansion-alone', meaning: 'an expansion belongs to no call that was read' },
  {
    code: 'sentence-expansion-other-station',
    meaning: 'an expansion is of another station than the waiting call',
  },
  { code: 'sentence-fix-unusable', meaning: 'own position is marked as not to be used, or is simulated' },
  { code: 'sentence-fix-unreadable', meaning: 'own position cannot be read' },
  { code: 'sentence-fix-estimated', meaning: 'own position is dead reckoning or was keyed in by hand' },
] as const;

/** Code of any issue or notice that the sentence room gives. */
export type SentenceIssueCode = (typeof SENTENCE_ISSUE_CODES)[number]['code'];
