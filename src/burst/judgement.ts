import { listOf } from './input.ts';
import { logSum } from './log-sum.ts';
import { streamOf } from './sequence.ts';
import { TRELLIS_REACH } from './trellis.ts';
import { holds, type Reading, type WholeCall } from './whole-call.ts';

/** Natural log of the odds, before anything is heard, that a call begins at a given bit. */
export const CALL_ODDS = -16;
/** A call less sure than this is in doubt. */
const SHOWN = 0.99;
/** More than any sound can say (natural log): what is told to be certain or impossible counts as this. */
const BEYOND = 1e6;

/**
 * Log-likelihood of everything heard, given each of some streams (symbols from the first phasing symbol to
 * the last of the call), against random bits.
 */
export type Rescore = (streams: readonly (readonly number[])[]) => readonly number[];

/** Which reading holds, and how far. */
export interface Judgement {
  readonly reading: Reading;
  readonly runnerUp: Reading | null;
  readonly margin: number;
  readonly probability: number;
  /** Natural log of the odds for a call against none. */
  readonly evidence: number;
  /** Probability that there is a call at all. */
  readonly callProbability: number;
  /** Probability of each character of the reading, error check last. */
  readonly characterProbabilities: readonly number[];
}

/**
 * How far differences of log-likelihood can be believed: 1 when what was heard of each word or bit is independent
 * of the others, less when neighbours go wrong together.
 */
export interface Tempering {
  /** For the readings that are compared one by one. */
  readonly listed: number;
  /** For the weight of all others together. */
  readonly unlisted: number;
}

/** Bits that are right or wrong independently. */
export const separate: Tempering = { listed: 1, unlisted: 1 };
/** Words or soft bits as receivers have them; measured by bench/burst/soft-bits.ts. */
export const related: Tempering = { listed: 0.7, unlisted: 0.7 };
/** Readings that the receiver compared with all the sound there was; measured by bench/receiver. */
export const compared: Tempering = { listed: 1, unlisted: 0.8 };

/**
 * Weigh the readings against each other, against every call not listed and against there being no call at all.
 *
 * @param whole - the readings
 * @param lead - natural log of what was heard of the dot pattern, against random bits
 * @param tempering - how far the differences can be believed
 * @param rescore - better likelihoods of the listed readings, from who has the sound
 * @param isAsReceived - whether a reading is what was received, character by character, where it differs from another
 */
export function judge(
  whole: WholeCall,
  lead: number,
  tempering: Tempering,
  rescore: Rescore | undefined,
  isAsReceived: (reading: readonly number[], other: readonly number[]) => boolean,
): Judgement {
  const readings = rescore === undefined ? whole.readings : rescored(whole.readings, rescore);
  const [first] = readings;
  const best = weightOf(first);
  const listedBefore = sumOf(whole.readings);
  const listed = sumOf(readings);
  // Calls that are not listed gain or lose by rescoring what the listed ones do.
  const unlisted =
    Math.log1p(-Math.min(Math.exp(listedBefore - whole.total), 1)) + whole.total + listed - listedBefore;
  const evidence = logSum(listed, unlisted) + CALL_ODDS + lead;
  const callProbability = 1 / (1 + Math.exp(-evidence));
  const relative = readings.map((each) => Math.exp(tempering.listed * (weightOf(each) - best)));
  const others = Math.exp(tempering.unlisted * (unlisted - best));
  const sum = relative.reduce((one, other) => one + other, others);
  // Where the call stays in doubt, what was received is shown before what was expected.
  const inDoubt = callProbability / sum < SHOWN;
  const received = inDoubt
    ? readings.findIndex(({ characters }) => !holds(characters) && isAsReceived(characters, first.characters))
    : -1;
  const chosen = Math.max(received, 0);
  const reading = readings[chosen] as Reading;
  const second = readings[chosen === 0 ? 1 : 0];
  // A wrong check says that one character is wrong, the check itself included, and not which.
  const right = holds(reading.characters) ? 1 : 1 / reading.characters.length;
  const margin = second === undefined ? TRELLIS_REACH : Math.max(weightOf(reading) - weightOf(second), 0);
  return {
    reading,
    runnerUp: second === undefined || margin > TRELLIS_REACH ? null : second,
    margin: Math.min(margin, TRELLIS_REACH),
    probability: (callProbability * right * (relative[chosen] as number)) / sum,
    evidence,
    callProbability,
    characterProbabilities: reading.characters.map((symbol, index) => {
      let share = others * (whole.shares[index] ?? 0);
      readings.forEach(({ characters }, at) => {
        if (characters.length === reading.characters.length && characters[index] === symbol)
          share += relative[at] as number;
      });
      const legible = right === 1 ? 1 : 1 - right;
      return (callProbability * legible * share) / sum;
    }),
  };
}

function weightOf({ heard, prior }: Reading): number {
  return heard + prior;
}

function rescored(readings: WholeCall['readings'], rescore: Rescore): WholeCall['readings'] {
  const answer = listOf(
    rescore(readings.map(({ characters }) => streamOf(characters.slice(0, -1), [], characters.at(-1)))),
  );
  const again = readings.map((reading, index) => {
    const heard = answer?.[index];
    if (typeof heard !== 'number' || Number.isNaN(heard)) return reading;
    return { ...reading, heard: Math.max(-BEYOND, Math.min(BEYOND, heard)) };
  });
  return again.sort((one, other) => weightOf(other) - weightOf(one)) as [Reading, ...Reading[]];
}

function sumOf(readings: readonly Reading[]): number {
  return readings.reduce((sum, each) => logSum(sum, weightOf(each)), Number.NEGATIVE_INFINITY);
}
