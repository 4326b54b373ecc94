import type { FirstFit, Fit } from '../estimate/fit-space.ts';
import { PER_BIT } from '../front-end/bit-filter.ts';
import { MOST_WORDS, PHASING, SURE_WORDS } from './phasing.ts';

const WORD_SAMPLES: number = 10 * PER_BIT;

/** Words of the dot pattern. */
const DOT_WORDS = 2;

/** A place where a burst may be: not yet looked at closely (`fit` null), or waiting for its end. */
export interface Candidate {
  readonly start: number;
  readonly mirror: boolean;
  readonly fit: FirstFit | null;
  /** How much speaks for it: coherence of the DX phasing at first, ln of the evidence of all phasing later. */
  readonly strength: number;
  /** Baseband instant up to which it must be heard before anything can be done. */
  readonly due: number;
}

/**
 * Baseband samples from the start of the phasing until it is looked at closely (its later sidelobes have been
 * found by then), and until it is read (a next burst that cuts it short has been looked at by then).
 */
export const LOOK_AFTER: number = (PHASING.length + 10) * WORD_SAMPLES;
export const READ_AFTER: number = (MOST_WORDS + 1) * WORD_SAMPLES + LOOK_AFTER;

/** A place with so much more coherence (of the six there can be) than its sidelobe needs no closer look to tell them apart. */
const CLEAR_LEAD = 0.7;

/** Evidence of a burst that is surely there, and the coherence that another within it must have to be looked at. */
const SURELY_THERE = 60;
const STRONG = 2.5;

/** Candidates kept at a time: sound that is made to look like phasing must not fill the memory. */
const MOST = 24;

/** The candidates with one more, less those that are the sidelobe of another; a lone sidelobe stays. */
export function joinedBy(candidates: readonly Candidate[], one: Candidate): readonly Candidate[] {
  const rivals = candidates.filter(
    (other) => (other.fit === null) === (one.fit === null) && isSidelobe(other, one),
  );
  const lead = one.fit === null ? CLEAR_LEAD : 0;
  if (rivals.some(({ strength }) => strength >= one.strength + lead)) return candidates;
  const joined = candidates.filter(
    (other) => !rivals.includes(other) || one.strength < other.strength + lead,
  );
  joined.push(one);
  return joined.length <= MOST ? joined : joined.filter((candidate) => candidate !== weakest(joined));
}

/** The one to give up first: of those not yet looked at, if there are any, the least coherent. */
function weakest(candidates: readonly Candidate[]): Candidate {
  const unseen = candidates.filter(({ fit }) => fit === null);
  const among = unseen.length > 0 ? unseen : candidates;
  return among.reduce(
    (least, each) => (each.strength < least.strength ? each : least),
    among[0] as Candidate,
  );
}

/** DX phasing repeats every second word, so a burst seems to begin, less surely, two or four words beside its place too. */
function isSidelobe(a: Candidate, b: Candidate): boolean {
  const words = Math.abs(a.start - b.start) / (2 * WORD_SAMPLES);
  return words < 6.1 && Math.abs(words - Math.round(words)) < 0.1;
}

/**
 * Whether a place is only what the characters of a burst look like that is surely there: no other burst so much weaker could
 * be read across it.
 */
export function isWithin(candidates: readonly Candidate[], { start, strength }: Candidate): boolean {
  return (
    strength < STRONG &&
    candidates.some(
      (other) =>
        other.fit !== null &&
        other.strength >= SURELY_THERE &&
        start > other.start &&
        start < other.start + SURE_WORDS * WORD_SAMPLES,
    )
  );
}

/** The earliest candidate whose time has come. */
export function dueOf(candidates: readonly Candidate[], count: number): Candidate | undefined {
  let first: Candidate | undefined;
  for (const candidate of candidates) {
    if (candidate.due <= count && (first === undefined || candidate.due < first.due)) first = candidate;
  }
  return first;
}

/** Words of a burst that can be heard before the dot pattern of the next one begins. */
export function wordsBefore(candidates: readonly Candidate[], fit: Fit): number {
  let words = MOST_WORDS;
  for (const { fit: next } of candidates) {
    if (next === null || next.start <= fit.start) continue;
    const free = Math.round((next.start - fit.start) / WORD_SAMPLES) - DOT_WORDS;
    words = Math.min(words, Math.max(free, PHASING.length));
  }
  return words;
}
