import { logSum } from './log-sum.ts';
import { phasingSymbol, RX_LAG } from './sequence.ts';

/** Share of words that some click has made worthless, whatever they seem to say. */
export const RUINED = 1e-3;
/** Chance that reception is lost from one word to the next: a fade, a slip, another call, the end of what came in. */
export const LOSE = 4e-3;
/** Chance that it comes back from one word to the next. */
export const REGAIN = 0.08;
/** Chance that a burst is lost already where its phasing begins. */
export const LOST_AT_FIRST = 0.15;
/** How far a copy is believed when the other one is judged. */
const BELIEVED = 0.8;
const SYMBOLS = 128;
/** Stream positions from a copy in DX to its copy in RX. */
const LAG: number = 2 * RX_LAG + 1;
/** Share of calls whose end of sequence is not repeated twice after the error check. */
export const LEFT_OUT = 0.01;

/**
 * How likely it is of each word that reception was lost there, judged by its neighbours and not by the word itself.
 *
 * Two states with memory, received and lost (Gilbert, 1960): while it is lost, words are random bits. Whether a word
 * was received shows from its being a word at all and from its other copy; the call need not be known.
 *
 * @param metrics - per stream position and symbol, natural log of the likelihood against that of random bits
 */
export function lostShares(metrics: Float64Array): Float64Array {
  const count = Math.floor(metrics.length / SYMBOLS);
  return smooth(evidenceOfWords(metrics, count), count).others;
}

/**
 * Natural log of what was heard given a stream, against random bits, with reception lost for a while or for good
 * wherever that explains it better.
 *
 * @param stream - the symbols that were sent, from the first phasing symbol to the RX copy of the error check
 */
export function heardOfStream(metrics: Float64Array, stream: readonly number[]): number {
  const first = stream.length - 4;
  const before = forward(
    metrics,
    stream,
    { received: 1 - LOST_AT_FIRST, lost: LOST_AT_FIRST, sum: 0 },
    0,
    first,
  );
  // The two further copies of the end of sequence stand there, or are left out together.
  const sent = forward(metrics, stream, before, first, stream.length).sum;
  const left = forward(metrics, stream, before, first, stream.length, [first, first + 2]).sum;
  return logSum(Math.log(1 - LEFT_OUT) + sent, Math.log(LEFT_OUT) + left);
}

/** How likely it is, after some words, that reception is there and that it is lost; and what was heard so far. */
interface State {
  readonly received: number;
  readonly lost: number;
  readonly sum: number;
}

function forward(
  metrics: Float64Array,
  stream: readonly number[],
  { received, lost, sum }: State,
  from: number,
  to: number,
  leftOut: readonly number[] = [],
): State {
  for (let position = from; position < to; position++) {
    const metric = metrics[SYMBOLS * position + (stream[position] as number)] ?? 0;
    const here = received * (leftOut.includes(position) ? 1 : soft(metric, RUINED));
    const all = here + lost;
    sum += Math.log(all);
    received = ((1 - LOSE) * here + REGAIN * lost) / all;
    lost = (LOSE * here + (1 - REGAIN) * lost) / all;
  }
  return { received, lost, sum };
}

/** For each word of a stream that was sent, how likely it is that it was received. */
export function receivedShares(metrics: Float64Array, stream: readonly number[]): Float64Array {
  const evidence = Float64Array.from(stream, (symbol, position) =>
    soft(metrics[SYMBOLS * position + symbol] ?? 0, RUINED),
  );
  return smooth(evidence, stream.length).all.map((lost) => 1 - lost);
}

/** Likelihood of each word received against random bits, from its being a word and from its other copy. */
function evidenceOfWords(metrics: Float64Array, count: number): Float64Array {
  const likelihood = metrics.subarray(0, SYMBOLS * count).map(Math.exp);
  const total = new Float64Array(count);
  for (let position = 0; position < count; position++)
    for (let at = SYMBOLS * position; at < SYMBOLS * (position + 1); at++)
      total[position] = (total[position] as number) + (likelihood[at] as number);
  return total.map((own, position) => {
    const known = phasingSymbol(position);
    if (known !== null) return soft(metrics[SYMBOLS * position + known] as number, RUINED);
    const other = otherCopy(position);
    const copy = total[other];
    let evidence = own / SYMBOLS;
    if (copy !== undefined) {
      let together = 0;
      for (let symbol = 0; symbol < SYMBOLS; symbol++)
        together +=
          (likelihood[SYMBOLS * position + symbol] as number) *
          (likelihood[SYMBOLS * other + symbol] as number);
      evidence = (1 - BELIEVED) * evidence + BELIEVED * (together / copy);
    }
    return (1 - RUINED) * evidence + RUINED;
  });
}

/** Position of the other copy of a character. */
function otherCopy(position: number): number {
  return position % 2 === 0 ? position + LAG : position - LAG;
}

/** How likely each word is lost, by all words and by all others. */
function smooth(evidence: Float64Array, count: number): { all: Float64Array; others: Float64Array } {
  const before = new Float64Array(count);
  let lost = LOST_AT_FIRST;
  for (let position = 0; position < count; position++) {
    before[position] = lost;
    lost = step(after(lost, evidence[position] as number));
  }
  const others = new Float64Array(count);
  const all = new Float64Array(count);
  // Likelihood of what follows, given that reception was lost against received.
  let ratio = 1;
  for (let position = count - 1; position >= 0; position--) {
    const own = evidence[position] as number;
    const weight = (before[position] as number) * ratio;
    others[position] = weight / (weight + 1 - (before[position] as number));
    all[position] = after(others[position] as number, own);
    const here = ratio / own;
    ratio = (REGAIN + (1 - REGAIN) * here) / (1 - LOSE + LOSE * here);
  }
  return { all, others };
}

/** Chance of being lost after a word was seen. */
function after(lost: number, evidence: number): number {
  return lost / (lost + (1 - lost) * evidence);
}

/** Chance of being lost one word on. */
function step(lost: number): number {
  return (1 - REGAIN) * lost + LOSE * (1 - lost);
}

/** A likelihood ratio softened by the chance that it says nothing. */
function soft(metric: number, ruined: number): number {
  return (1 - ruined) * Math.exp(metric) + ruined;
}
