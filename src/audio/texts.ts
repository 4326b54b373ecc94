import { type CodeOf, type IssueMaker, issueMaker } from '../result/internal.ts';

/** What the receiver says. */
export const audioTexts = {
  error: {
    'audio-burst-unreadable': 'Burst at sample {sample} could not be read[. {why}]',
    'audio-burst-overtaken':
      'Burst at sample {sample} could not be read. The next burst begins before three characters were received',
    'audio-silent': ['All {count} samples of the stream were 0', 'sound'],
    'audio-no-samples': ['Stream ended before its first sample', 'sound'],
  },
  check: {
    'audio-clipped': [
      'Sound from sample {sample}: {clipped} of {count} samples are at full scale. Turn the input level down',
      'peaks below full scale',
    ],
    'audio-sample-unusable': [
      'Sample {sample} is {received} and is taken as 0: others in the same second may be too',
      'a finite number from -{limit} to {limit}',
    ],
  },
} as const;

const wavTerms = {
  'sound-channels.1': 'channel',
  'sound-channels.*': 'channels',
};

/** What reading a WAV file says. */
export const wavTexts = {
  error: {
    'audio-wav-not-bytes': 'Input is not a Uint8Array',
    'audio-wav-not-wav': "File does not begin with 'RIFF', a size and 'WAVE'",
    'audio-wav-header': "Chunk 'fmt ' is missing or shorter than 16 bytes",
    'audio-wav-no-data': "Chunk 'data' is missing",
    'audio-wav-format': [
      'Sample format {format} with {bits} bits cannot be read',
      'integers of 8, 16, 24 or 32 bits, or floating point of 32 or 64',
    ],
    'audio-wav-channels': ['Header: expected {expected}, got {received}', '1 to {limit} channels'],
    'audio-wav-rate': [
      'Sample rate: expected {expected} samples per second, got {received}',
      '{least} to {most}',
    ],
    'audio-wav-channel': [
      'Channel {received} is not in a file of {count} {count:sound-channels}',
      '0 to {last}',
    ],
  },
  check: {
    'audio-wav-frame': ['Header gives {received} bytes a frame: {expected} were used', '{bytes} bytes'],
    'audio-wav-truncated': "Chunk 'data' says {declared} bytes and has {received}: what is there was read",
    'audio-wav-part-sample': "Chunk 'data' ends within a sample: {count} whole ones were read",
    'audio-wav-empty': "Chunk 'data' has no samples",
  },
  note: {
    'audio-wav-size-unset': "Chunk 'data' says 0 bytes and {received} follow: they were read",
  },
  terms: wavTerms as typeof wavTerms,
} as const;

/** All texts of this module. */
export type AudioTexts = typeof audioTexts & typeof wavTexts;

/** Any code of reading a WAV file. */
export type WavCode = CodeOf<typeof wavTexts>;

/** Makes an issue of the receiver. */
export const issue: IssueMaker<typeof audioTexts> = /* @__PURE__ */ issueMaker(audioTexts);

/** Makes an issue or notice of reading a WAV file. */
export const wavIssue: IssueMaker<typeof wavTexts> = /* @__PURE__ */ issueMaker(wavTexts);
