import { MOST_CALLS, type Received, report } from '../burst/internal.ts';
import type { Issue } from '../result/index.ts';
import { textOf } from '../result/internal.ts';
import {
  type Candidate,
  dueOf,
  isWithin,
  joinedBy,
  LOOK_AFTER,
  READ_AFTER,
  wordsBefore,
} from './acquire/candidate.ts';
import { ALERT_BITS, PHASING, SURE_WORDS } from './acquire/phasing.ts';
import { createSearcher } from './acquire/search.ts';
import { createAttempts } from './attempt.ts';
import { createBurstReader } from './burst-reader.ts';
import type { FirstFit } from './estimate/fit-space.ts';
import { createBaseband } from './front-end/baseband.ts';
import { PER_BIT } from './front-end/bit-filter.ts';
import { createFrontEnd } from './front-end/front-end.ts';
import { createSampleGuard, type SoundLevel } from './front-end/sample-guard.ts';
import { type HeardBurst, heardBurst, startSampleOf } from './heard-burst.ts';
import { createPost } from './post.ts';
import { named, requireOptions, requireSamples } from './require.ts';
import { issue } from './texts.ts';

/** A stream of samples that is listened to. */
export interface Receiver {
  /**
   * Takes the next samples, as many as there are: the way they are cut up changes nothing. Full scale is 1.
   *
   * @throws TypeError when there is no array of samples; Error when called from a callback of this receiver; what a
   *   callback threw
   */
  push(samples: ArrayLike<number>): void;
  /**
   * Ends the stream: reports what is still being heard, and makes ready for a new one that begins at sample 0.
   *
   * @throws Error when called from a callback of this receiver; what a callback threw
   */
  flush(): void;
}

/** ln of the evidence a phasing must bring: below this, nothing is reported. One chance in 10^14 at any single place. */
const ENOUGH_EVIDENCE = 32;

/** Words that must be heard before reading is worth while: those of the phasing and of three characters. */
const LEAST_WORDS: number = PHASING.length + 4;

/** Silence that brings everything begun to an end: a stretch in which whatever begins shows, and as many as it may take. */
const RUN_OUT_S = 0.15;
const RUN_OUTS = 10;

/**
 * A receiver for the sound of VHF digital selective calling.
 *
 * It looks for the phasing of a burst at every half bit, learns from it when the burst began, how its tones lie and
 * how strong they are, then weighs every possible word against the sound with the phase carried through from bit to
 * bit, and leaves the call to the decoder of `seahail/burst`. Memory is bounded, nothing is allocated per
 * sample, and needs no platform features, so it runs unchanged in a worker.
 *
 * **Caution.** Software is no watch-keeping receiver. Keep the watch that rules and licence ask for with approved equipment.
 *
 * @param options - sample rate and callbacks
 * @returns where to push the samples
 * @throws TypeError when the options or `onReception` are missing, or a callback is no function
 * @throws RangeError when the sample rate is not from 8000 to 192000
 *
 * Source: ITU-R M.493-16 Annex 1 sections 1 to 4, from memory, for the signal; the demodulator is maximum a
 * posteriori estimation with the sub-carrier's phase as hidden state.
 *
 * @see {@link modulate}
 * @see {@link readWav}
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
 *   onReception: (heard) => console.log(heard.reception.call.kind, heard.reception.quality.verdict), // test-call clean
 * });
 * receiver.push(modulate(encodeCall(call), { sampleRate: 48_000 }));
 * receiver.flush();
 * ```
 */
export function createReceiver(options: {
  /** Samples per second of what is pushed, 8000 to 192000. */
  readonly sampleRate: number;
  /** Is called for every burst, in order of their phasing, about half a second after the burst's end. */
  readonly onReception: (heard: HeardBurst) => void;
  /** Is called for what is wrong with the sound: unusable samples, clipping, a burst that cannot be read. */
  readonly onIssue?: ((issue: Issue) => void) | undefined;
  /** Is called once for every second of the stream with what came in, so that a person sees whether anything does. */
  readonly onLevel?: ((level: SoundLevel) => void) | undefined;
}): Receiver {
  requireOptions('createReceiver', options, 'sampleRate and onReception');
  const { sampleRate, onReception, onIssue = () => {}, onLevel = () => {} } = options;
  if (typeof sampleRate !== 'number' || !(sampleRate >= 8000 && sampleRate <= 192_000)) {
    throw new RangeError(`createReceiver: sampleRate: expected 8000 to 192000, got ${String(sampleRate)}`);
  }
  for (const [name, callback] of Object.entries({ onReception, onIssue, onLevel }))
    if (typeof callback !== 'function')
      throw new TypeError(`createReceiver: ${name}: expected a function, got ${named(callback)}`);
  const post = createPost();
  const begin = (): Stream =>
    createStream(
      sampleRate,
      (heard) => post.put(() => onReception(heard)),
      (issue) => post.put(() => onIssue(issue)),
      (level) => post.put(() => onLevel(level)),
    );
  let stream: Stream | null = null;
  return {
    push(samples): void {
      post.assertIdle('push');
      requireSamples('push', samples);
      stream ??= begin();
      stream.push(samples);
      post.deliver();
    },
    flush(): void {
      post.assertIdle('flush');
      const last = stream ?? begin();
      stream = null;
      last.end();
      post.deliver();
    },
  };
}

/** A place where the last call of an attempt may begin, and the baseband instant from which on all of it was heard. */
interface AttemptDue {
  readonly start: number;
  readonly mirror: boolean;
  readonly due: number;
}

/** Baseband samples after which the last burst of an attempt was read alone, if it was found alone. */
const READ_ATTEMPT_AFTER: number = READ_AFTER + 20 * PER_BIT;

/** Attempts that wait to be read, at most. */
const MOST_DUE = 16;

const ALERT_SAMPLES: number = ALERT_BITS * PER_BIT;

interface Stream {
  push(samples: ArrayLike<number>): void;
  end(): void;
}

function createStream(
  sampleRate: number,
  onReception: (heard: HeardBurst) => void,
  onIssue: (issue: Issue) => void,
  onLevel: (level: Parameters<NonNullable<Parameters<typeof createReceiver>[0]['onLevel']>>[0]) => void,
): Stream {
  const baseband = createBaseband();
  const reader = createBurstReader(baseband);
  const attempts = createAttempts();
  let candidates: readonly Candidate[] = [];
  let attemptsDue: readonly AttemptDue[] = [];
  const searcher = createSearcher(
    baseband,
    (start, mirror, strength) => {
      candidates = joinedBy(candidates, { start, mirror, fit: null, strength, due: start + LOOK_AFTER });
    },
    (start, mirror) => {
      attemptsDue = [...attemptsDue, { start, mirror, due: start + READ_ATTEMPT_AFTER }].slice(-MOST_DUE);
    },
  );

  function look(candidate: Candidate): void {
    if (isWithin(candidates, candidate)) return;
    const { start, mirror, strength } = candidate;
    const checked = reader.check(start, mirror, strength);
    if (checked === null || checked.evidence < ENOUGH_EVIDENCE) return;
    const { fit, evidence } = checked;
    const due = fit.start + READ_AFTER;
    candidates = joinedBy(candidates, { start: fit.start, mirror, fit, strength: evidence, due });
  }

  function read(first: FirstFit): void {
    const words = wordsBefore(candidates, first);
    const sample = Math.round(startSampleOf(first, sampleRate));
    if (words < LEAST_WORDS) {
      onIssue(issue('audio-burst-overtaken', { sample }, aboutSample(sample)));
      return;
    }
    const burst = reader.read(first, words);
    const { received, event } = attempts.take(burst);
    if (received !== null) onReception(heardBurst(burst.fit, event, received, sampleRate));
    else onIssue(unreadable(Math.round(startSampleOf(burst.fit, sampleRate)), burst.heard.alone));
  }

  /** Looks at the five places of an attempt at once, where not one clean call was read. */
  function readAttempt({ start, mirror }: AttemptDue): void {
    const starts = Array.from({ length: MOST_CALLS }, (_, n) => start - (MOST_CALLS - 1 - n) * ALERT_SAMPLES);
    if (attempts.isSettled((starts[0] as number) - ALERT_SAMPLES / 2, start + ALERT_SAMPLES / 2)) return;
    const fits = reader.locateAttempt(starts as [number, ...number[]], mirror);
    if (fits === null) return;
    const bursts = fits.map((fit) => attempts.at(fit.start, mirror) ?? reader.read(fit, SURE_WORDS));
    const joined = attempts.takeAll(bursts);
    if (joined !== null) onReception(heardBurst(joined.burst.fit, joined.event, joined.received, sampleRate));
  }

  const frontEnd = createFrontEnd(sampleRate, (re, im) => {
    baseband.push(re, im);
    searcher.advance();
    for (let next = dueOf(candidates, baseband.count()); next; next = dueOf(candidates, baseband.count())) {
      const now = next;
      candidates = candidates.filter((candidate) => candidate !== now);
      if (now.fit === null) look(now);
      else read(now.fit);
    }
    const [attempt] = attemptsDue;
    if (attempt !== undefined && attempt.due <= baseband.count()) {
      attemptsDue = attemptsDue.slice(1);
      readAttempt(attempt);
    }
  });
  const guard = createSampleGuard(sampleRate, onIssue, onLevel);
  return {
    push(samples): void {
      guard.take(samples, frontEnd);
    },
    end(): void {
      guard.end();
      // What is being heard is heard to its end; where nothing is, there is nothing to wait for.
      const silence = new Float32Array(Math.ceil(RUN_OUT_S * sampleRate));
      for (let from = 0; from < RUN_OUTS; from++) {
        if (from > 0 && candidates.length === 0 && attemptsDue.length === 0) break;
        frontEnd.push(silence, 0, silence.length);
      }
    },
  };
}

function unreadable(sample: number, heard: Received | null): Issue {
  const result = report(heard);
  const why = result.ok ? {} : { why: textOf(result.issues[0]) };
  return issue('audio-burst-unreadable', { sample, ...why }, aboutSample(sample));
}

function aboutSample(sample: number): Pick<Issue, 'at' | 'clause'> {
  return { at: ['sample', sample], clause: 'ITU-R M.493-16 Annex 1' };
}
