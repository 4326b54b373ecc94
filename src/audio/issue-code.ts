/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const AUDIO_ISSUE_CODES = [
  {
    code: 'audio-sample-unusable',
    meaning: 'a sample is not a finite number or is far beyond full scale, and was taken as 0',
  },
  { code: 'audio-clipped', meaning: 'more than one in a hundred samples of a second are at full scale' },
  { code: 'audio-silent', meaning: 'a stream ended without a single sample other than 0' },
  {
    code: 'audio-burst-unreadable',
    meaning: 'the phasing of a burst was received, but the call after it could not be read',
  },
  { code: 'audio-wav-not-wav', meaning: 'the bytes are not a WAV file' },
  {
    code: 'audio-wav-header',
    meaning: 'the header of a WAV file is missing, too short or contradicts itself',
  },
  { code: 'audio-wav-format', meaning: 'the sample format of a WAV file is not one that can be read' },
  {
    code: 'audio-wav-rate',
    meaning: 'the sample rate of a WAV file is not one that can be received',
  },
  { code: 'audio-wav-channel', meaning: 'the requested channel is not in the WAV file' },
  { code: 'audio-wav-no-data', meaning: 'a WAV file has no samples' },
  {
    code: 'audio-wav-truncated',
    meaning: 'a WAV file is shorter than it says, and the samples that are there were read',
  },
  {
    code: 'audio-wav-size-unset',
    meaning:
      'a WAV file says that it holds nothing, as one of a recorder that was cut off, and was read to its end',
  },
  { code: 'audio-wav-empty', meaning: 'a WAV file holds not a single sample' },
] as const;
