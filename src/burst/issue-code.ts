/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const BURST_ISSUE_CODES = [
  {
    code: 'burst-input',
    meaning: 'the input is not bits, values or symbols of the expected kind',
  },
  { code: 'burst-not-found', meaning: 'no call was found in the input' },
  { code: 'burst-cut-short', meaning: 'the input ends before the call does' },
  { code: 'burst-inverted', meaning: 'the two tones came the wrong way round' },
  { code: 'burst-repaired', meaning: 'the error check or expectations helped to read the call' },
  {
    code: 'burst-check-wrong',
    meaning: 'characters and error check were received and do not agree',
  },
  { code: 'burst-doubtful', meaning: 'the call may be wrong and must not be acted on' },
  {
    code: 'burst-format-once',
    meaning: 'a call without an address had its format specifier received only once',
  },
  {
    code: 'burst-expansion-broken',
    meaning: 'what follows the call cannot be read as an expansion',
  },
  { code: 'burst-expansion-layout', meaning: 'the expansion stood in an unusual layout' },
] as const;
