/** A finding that this room can report, and what it means. */
export interface AudioIssueCode {
  readonly code: string;
  readonly meaning: string;
}

/** Every issue and notice code of `seahail/audio`. */
export const audioIssueCodes: readonly AudioIssueCode[] = [
  {
    code: 'audio-sample-unusable',
    meaning: 'A sample is not a finite number or far beyond full scale; it was taken as 0.',
  },
  { code: 'audio-clipped', meaning: 'More than one in a hundred samples of a second are at full scale.' },
  { code: 'audio-silent', meaning: 'A stream ended without a single sample other than 0.' },
  {
    code: 'audio-burst-unreadable',
    meaning: 'The phasing of a burst was heard, but no call could be made of what followed.',
  },
  { code: 'audio-wav-not-wav', meaning: 'The bytes are not a WAV file.' },
  {
    code: 'audio-wav-header',
    meaning: 'The header of a WAV file is missing, too short or contradicts itself.',
  },
  { code: 'audio-wav-format', meaning: 'The sample format of a WAV file is not one that can be read.' },
  { code: 'audio-wav-channel', meaning: 'The wanted channel is not in the WAV file.' },
  { code: 'audio-wav-no-data', meaning: 'A WAV file has no samples.' },
  {
    code: 'audio-wav-truncated',
    meaning: 'A WAV file is shorter than it says; the samples that are there were read.',
  },
];
