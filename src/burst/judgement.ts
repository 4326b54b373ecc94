import { logSum } from './log-sum.ts';
import { streamOf } from './sequence.ts';
import { TRELLIS_REACH } from './trellis.ts';
import type { Reading, WholeCall } from './whole-call.ts';

/** Natural log of the odds, before anything is heard, that a call begins at a given bit. */
export const CALL_ODDS = -16;

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
 * Weigh the readings against each other, against every call not listed and against there being no call at all.
 *
 * @param whole - the readings
 * @param lead - natural log of what was heard of the dot pattern, against random bits
 * @param rescore - better likelihoods of the listed readings, from whoever has the sound
 */
export function judge(whole: WholeCall, lead: number, rescore: Rescore | undefined): Judgement {
  const readings = rescore === undefined ? whole.readings : rescored(whole.readings, rescore);
  const offset = CALL_ODDS + lead;
  const listedBefore = sumOf(whole.readings);
  const listed = sumOf(readings);
  // Calls that are not listed gain or lose by rescoring what the listed ones do.
  const unlisted =
    Math.log1p(-Math.min(Math.exp(listedBefore - whole.total), 1)) + whole.total + listed - listedBefore;
  const calls = logSum(listed, unlisted) + offset;
  const all = logSum(calls, 0);
  const [reading, second] = readings;
  const shareOf = ({ heard, prior }: Reading): number => Math.exp(heard + prior + offset - all);
  const margin =
    second === undefined ? TRELLIS_REACH : reading.heard + reading.prior - second.heard - second.prior;
  return {
    reading,
    runnerUp: second === undefined || margin > TRELLIS_REACH ? null : second,
    margin: Math.min(margin, TRELLIS_REACH),
    probability: Math.min(shareOf(reading), 1),
    evidence: calls,
    callProbability: Math.exp(calls - all),
    characterProbabilities: reading.characters.map((symbol, index) => {
      const agreeing = readings.filter(
        ({ characters }) => characters.length === reading.characters.length && characters[index] === symbol,
      );
      const listedShare = agreeing.reduce((sum, each) => sum + shareOf(each), 0);
      const unlistedShare = Math.exp(unlisted + offset - all) * (whole.shares[index] ?? 0);
      return Math.min(listedShare + unlistedShare, 1);
    }),
  };
}

function rescored(readings: WholeCall['readings'], rescore: Rescore): WholeCall['readings'] {
  const heard = rescore(readings.map(({ characters }) => streamOf(characters.slice(0, -1))));
  const again = readings.map((reading, index) => ({ ...reading, heard: heard[index] ?? reading.heard }));
  const [first, ...others] = again.sort((one, other) => other.heard + other.prior - one.heard - one.prior);
  return first === undefined ? readings : [first, ...others];
}

function sumOf(readings: readonly Reading[]): number {
  return readings.reduce((sum, { heard, prior }) => logSum(sum, heard + prior), Number.NEGATIVE_INFINITY);
}
