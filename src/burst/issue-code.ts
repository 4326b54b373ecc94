/** Codes of the issues and notices that this room gives. */
export const burstIssueCodes: readonly { readonly code: BurstIssueCode; readonly meaning: string }[] = [
  {
    code: 'burst-input',
    meaning: 'what was given is not the kind of bits, values or symbols that is read here',
  },
  { code: 'burst-not-found', meaning: 'no call is found in what was given' },
  { code: 'burst-cut-short', meaning: 'what was given ends before the call does' },
  { code: 'burst-inverted', meaning: 'the two tones came the wrong way round' },
  { code: 'burst-repaired', meaning: 'the error check or expectations helped to read the call' },
  { code: 'burst-doubtful', meaning: 'the call may be wrong and must not be acted on' },
  {
    code: 'burst-format-once',
    meaning: 'a call without an address had its format specifier received only once',
  },
  {
    code: 'burst-expansion-broken',
    meaning: 'something stands behind the call that cannot be read as an expansion',
  },
  { code: 'burst-expansion-layout', meaning: 'the expansion stood in an unusual layout' },
];

/** A code of {@link burstIssueCodes}. */
export type BurstIssueCode =
  | 'burst-input'
  | 'burst-not-found'
  | 'burst-cut-short'
  | 'burst-inverted'
  | 'burst-repaired'
  | 'burst-doubtful'
  | 'burst-format-once'
  | 'burst-expansion-broken'
  | 'burst-expansion-layout';
