import type { Reception } from '../burst/index.ts';
import type { Issue, Notice } from '../result/index.ts';
import { createBaseband } from './baseband.ts';
import { PER_BIT } from './bit-filter.ts';
import { type BurstReader, createBurstReader, WORDS_READ } from './burst-reader.ts';
import type { Fit } from './fit.ts';
import { BASEBAND_RATE, createFrontEnd } from './front-end.ts';
import { PHASING } from './phasing.ts';
import { createSampleGuard } from './sample-guard.ts';
import { createSearcher } from './search.ts';
import { BAUD } from './tone.ts';

/** A burst that was heard: the call in it, how sure that is, and how it sounded. Plain data. */
export interface HeardBurst {
  readonly kind: 'heard-burst';
  /** The call and how sure it is. Act automatically only on verdict `clean`. */
  readonly reception: Reception;
  /** What the decoder had to say besides. */
  readonly notices: readonly Notice[];
  /** Where the dot pattern begins, in samples since the stream began; not rounded, and negative when it was cut off. */
  readonly startSample: number;
  /** Just behind the last bit of the call and its expansion, in samples since the stream began. */
  readonly endSample: number;
  /** Level of the tones in dB, 0 for a sine of amplitude 1. */
  readonly levelDb: number;
  /** How much stronger 2100 Hz is than 1300 Hz in dB: about 4 behind a discriminator without de-emphasis. */
  readonly toneBalanceDb: number;
  /** By how many hertz both tones lie too high. The standard allows a tone 10 Hz. */
  readonly toneOffsetHz: number;
  /** By how many parts per million the bits come too fast, the sound card's own error included. */
  readonly clockErrorPpm: number;
  /** Energy per bit over noise density, estimated, in dB. Above about 25 dB the receiver's own faults are all it finds. */
  readonly ebN0Db: number;
  /** The same as signal-to-noise ratio in 3 kHz, in dB: 4 dB less. */
  readonly snrDb: number;
  /** `inverted` when the two tones came the wrong way round. */
  readonly polarity: 'normal' | 'inverted';
}

/** What a receiver needs to know, and whom it tells. */
export interface ReceiverOptions {
  /** Samples per second of what is pushed, 8000 to 192000. */
  readonly sampleRate: number;
  /** Is called for every burst, in order of their phasing, about half a second after the burst's end. */
  readonly onReception: (heard: HeardBurst) => void;
  /** Is called for what is wrong with the sound: unusable samples, clipping, a burst that cannot be read. */
  readonly onIssue?: (issue: Issue) => void;
}

/** A stream of samples that is listened to. */
export interface Receiver {
  /** Takes the next samples, as many as there are: the way they are cut up changes nothing. Full scale is 1. */
  push(samples: ArrayLike<number>): void;
  /** Ends the stream: reports what is still being heard, and makes ready for a new one that begins at sample 0. */
  flush(): void;
}

/** ln of the evidence a phasing must bring: below this, nothing is said. One chance in 10^14 for any place by itself. */
const ENOUGH_EVIDENCE = 32;

const WORD_SAMPLES: number = 10 * PER_BIT;
const DOT_BITS = 20;

/**
 * Baseband samples from the start of the phasing until it is looked at closely (its later shadows have been
 * found by then), and until it is read (a next burst that cuts it short has been looked at by then).
 */
const LOOK_AFTER: number = (PHASING.length + 10) * WORD_SAMPLES;
const READ_AFTER: number = (WORDS_READ + 1) * WORD_SAMPLES + LOOK_AFTER;

/** A place this much more coherent than its shadow needs no closer look to tell them apart. */
const CLEAR_LEAD = 1.15;

/** Silence that brings everything begun to an end. */
const RUN_OUT_S = 1.4;

/**
 * A receiver for the sound of VHF digital selective calling.
 *
 * It looks for the phasing of a burst at every half bit, learns from it when the burst began, how its tones lie and
 * how strong they are, then weighs every possible word against the sound with the phase carried through from bit to
 * bit, and leaves the call to `decodeSymbolMetrics` of `seahail/burst`. Memory is bounded, nothing is allocated per
 * sample, and it needs nothing of its surroundings, so that it runs in a worker as it stands.
 *
 * **Caution.** Software is no watch-keeping receiver. Keep the watch that rules and licence ask for with approved equipment.
 *
 * @param options - sample rate and callbacks
 * @returns where to push the samples
 * @throws RangeError when the sample rate is not from 8000 to 192000
 *
 * Source: ITU-R M.493-15 Annex 1 sections 1 to 4, from memory, for the signal; the demodulator is maximum a
 * posteriori estimation with the sub-carrier's phase as hidden state.
 *
 * @example
 * ```ts
 * import { createReceiver, modulate } from 'seahail/audio';
 * import { encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 *
 * const call = composeTestCall({ from: '232999871', to: '002329990' });
 * const receiver = createReceiver({
 *   sampleRate: 48_000,
 *   onReception: (heard) => console.log(heard.reception.call.kind, heard.reception.quality.verdict), // test clean
 * });
 * receiver.push(modulate(encodeCall(call), { sampleRate: 48_000 }));
 * receiver.flush();
 * ```
 */
export function createReceiver(options: ReceiverOptions): Receiver {
  const { sampleRate } = options;
  if (typeof sampleRate !== 'number' || !(sampleRate >= 8000 && sampleRate <= 192_000)) {
    throw new RangeError(
      `createReceiver: sampleRate must be from 8000 to 192000, given ${String(sampleRate)}`,
    );
  }
  let stream: Stream | null = null;
  return {
    push(samples): void {
      stream ??= createStream(options);
      stream.push(samples);
    },
    flush(): void {
      (stream ?? createStream(options)).end();
      stream = null;
    },
  };
}

interface Stream {
  push(samples: ArrayLike<number>): void;
  end(): void;
}

/** A place where a burst may be: not yet looked at closely (`fit` null), or waiting for its end. */
interface Candidate {
  readonly start: number;
  readonly mirror: boolean;
  readonly fit: Fit | null;
  /** How much speaks for it: coherence of the DX phasing at first, ln of the evidence of all phasing later. */
  readonly strength: number;
  /** Baseband instant up to which it must be heard before anything can be done. */
  readonly due: number;
}

function createStream({ sampleRate, onReception, onIssue = () => {} }: ReceiverOptions): Stream {
  const baseband = createBaseband();
  const reader = createBurstReader(baseband);
  let candidates: readonly Candidate[] = [];
  const searcher = createSearcher(baseband, (start, mirror, strength) => {
    candidates = joinedBy(candidates, { start, mirror, fit: null, strength, due: start + LOOK_AFTER });
  });
  const frontEnd = createFrontEnd(sampleRate, (re, im) => {
    baseband.push(re, im);
    searcher.advance();
    for (let next = dueOf(candidates, baseband.count()); next; next = dueOf(candidates, baseband.count())) {
      candidates = candidates.filter((candidate) => candidate !== next);
      if (next.fit === null) candidates = withChecked(candidates, next, reader);
      else report(reader, next.fit, wordsBefore(candidates, next.fit), sampleRate, onReception, onIssue);
    }
  });
  const guard = createSampleGuard(sampleRate, onIssue);
  return {
    push(samples): void {
      guard.take(samples, frontEnd);
    },
    end(): void {
      guard.end();
      const silence = new Float32Array(4096);
      for (let left = RUN_OUT_S * sampleRate; left > 0; left -= silence.length)
        frontEnd.push(silence, 0, silence.length);
    },
  };
}

/** The earliest candidate whose time has come. */
function dueOf(candidates: readonly Candidate[], count: number): Candidate | undefined {
  let first: Candidate | undefined;
  for (const candidate of candidates) {
    if (candidate.due <= count && (first === undefined || candidate.due < first.due)) first = candidate;
  }
  return first;
}

/** Words of a burst that can be heard before the dot pattern of the next one begins. */
function wordsBefore(candidates: readonly Candidate[], fit: Fit): number {
  let words = WORDS_READ;
  for (const { fit: next } of candidates) {
    if (next === null || next.start <= fit.start) continue;
    const free = Math.round((next.start - fit.start) / WORD_SAMPLES) - DOT_BITS / 10;
    words = Math.min(words, Math.max(free, PHASING.length));
  }
  return words;
}

/** Looks at the phasing of one candidate closely. */
function withChecked(
  candidates: readonly Candidate[],
  { start, mirror }: Candidate,
  reader: BurstReader,
): readonly Candidate[] {
  const { fit, evidence } = reader.check(start, mirror);
  if (evidence < ENOUGH_EVIDENCE) return candidates;
  return joinedBy(candidates, {
    start: fit.start,
    mirror,
    fit,
    strength: evidence,
    due: fit.start + READ_AFTER,
  });
}

/** The candidates with one more, less those that are the shadow of another; a lone shadow stays. */
function joinedBy(candidates: readonly Candidate[], one: Candidate): readonly Candidate[] {
  const rivals = candidates.filter(
    (other) => (other.fit === null) === (one.fit === null) && isShadow(other, one),
  );
  const lead = one.fit === null ? CLEAR_LEAD : 1;
  if (rivals.some(({ strength }) => strength >= lead * one.strength)) return candidates;
  return [
    ...candidates.filter((other) => !rivals.includes(other) || one.strength < lead * other.strength),
    one,
  ];
}

/** DX phasing repeats every second word, so a burst seems to begin, less surely, two or four words beside its place too. */
function isShadow(a: Candidate, b: Candidate): boolean {
  const words = Math.abs(a.start - b.start) / (2 * WORD_SAMPLES);
  return words < 6.1 && Math.abs(words - Math.round(words)) < 0.1;
}

/** Reads a burst whose whole length has been heard, and tells of it. */
function report(
  reader: BurstReader,
  first: Fit,
  words: number,
  sampleRate: number,
  onReception: (heard: HeardBurst) => void,
  onIssue: (issue: Issue) => void,
): void {
  const { fit, reception: result } = reader.read(first, words);
  const sampleAt = (bit: number): number => ((fit.start + bit * fit.perBit) * sampleRate) / BASEBAND_RATE;
  if (!result.ok) {
    onIssue({
      code: 'audio-burst-unreadable',
      message: `burst at sample ${Math.round(sampleAt(-DOT_BITS))}: its phasing was heard, its call could not be read: ${result.issues[0].message}`,
      at: ['sample', Math.round(sampleAt(-DOT_BITS))],
      clause: 'ITU-R M.493-15 Annex 1',
    });
    return;
  }
  const power = (fit.one * fit.one + fit.zero * fit.zero) / 2;
  const ebN0Db = decibels(power / fit.noise);
  onReception({
    kind: 'heard-burst',
    reception: result.value,
    notices: result.notices,
    startSample: sampleAt(-DOT_BITS),
    endSample: sampleAt(result.value.quality.end),
    levelDb: decibels(power),
    toneBalanceDb: 2 * decibels(fit.zero / fit.one) * (fit.mirror ? -1 : 1),
    toneOffsetHz: fit.mirror ? -fit.offset : fit.offset,
    clockErrorPpm: (PER_BIT / fit.perBit - 1) * 1e6,
    ebN0Db,
    snrDb: ebN0Db + decibels(BAUD / 3000),
    polarity: fit.mirror ? 'inverted' : 'normal',
  });
}

function decibels(ratio: number): number {
  return 10 * Math.log10(ratio);
}
