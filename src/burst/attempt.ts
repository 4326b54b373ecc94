import { combineCopies } from './character-table.ts';
import { CALL_ODDS, type Rescore, related } from './judgement.ts';
import { logSum } from './log-sum.ts';
import { heardOfStream } from './loss.ts';
import { type Received, receive, type Words, withLossFloor } from './receive.ts';
import { DX_PHASING_SLOTS, streamLength } from './sequence.ts';
import { type WholeCall, weighWholeCall } from './whole-call.ts';

/** Calls of one attempt (ITU-R M.541-11: five alerts in a row). */
export const MOST_CALLS = 5;
// deviation: D-audio-4 (no standard says that a receiver may join the calls of an attempt).
/** Chance that a burst in the place of a call of the attempt is any other call, and that it is one which differs in some characters only. */
const OTHER_CALL = 0.02;
const SIMILAR_CALL = 0.02;
/** Chance of each character of a similar call to differ. */
const DIFFERS = 0.1;
/** A call of which so little was heard (natural log, against random bits) adds nothing to the others and is not counted. */
const LEAST_HEARD = 3;
const SYMBOLS = 128;

/** What was heard of one call, and how it reads when nothing else is known. */
export interface CallHeard {
  readonly words: Words;
  readonly rescore: Rescore | undefined;
  readonly alone: Received | null;
}

/** What several calls say when they are one call, sent several times. */
export interface JoinedCalls {
  readonly received: Received;
  /** Which of the calls given are that call. */
  readonly members: readonly number[];
}

/** What was heard of one call, made ready to be joined with others. */
interface Weighed {
  readonly at: number;
  readonly call: CallHeard;
  readonly heard: Float64Array;
  readonly rescore: Rescore;
  /** Natural log of what was heard given any call, against random bits. */
  readonly anyCall: number;
  /** Natural log of what was heard given a call that differs from this one in some characters, against this one. */
  similar(stream: readonly number[]): number;
}

/**
 * Read several calls as one that was sent several times: what was heard of each is added.
 *
 * Each of them may be another call all the same, whose weight for the common one is then bounded; one that is more likely
 * to be another is left out.
 *
 * @param anchor - index of the call that is asked about: it is never left out
 * @returns `null` when no two are the same call
 */
export function joinCalls(calls: readonly CallHeard[], anchor?: number): JoinedCalls | null {
  let open = calls.map(weigh);
  while (open.length > 1) {
    const received = readTogether(open, anchor);
    if (received === null) return null;
    const fits = open.map((call) => ({ call, odds: oddsOfSame(call, received.stream) }));
    const members = fits.filter(({ odds }) => odds > 0).map(({ call }) => call);
    if (members.length === open.length) {
      const heard = members.filter((each) => heardOf(each, received.stream) > LEAST_HEARD);
      if (heard.length < 2) return null;
      return { received: withCalls(received, heard.length), members: heard.map(({ at }) => at) };
    }
    // Where the call that is asked about does not fit, the one that fits best is the other call.
    const stays = anchor === undefined || members.some(({ at }) => at === anchor);
    const others = fits.filter(({ call }) => call.at !== anchor).sort((one, other) => one.odds - other.odds);
    const left = others.at(stays ? 0 : -1)?.call;
    open = open.filter((call) => call !== left);
  }
  return null;
}

function weigh(call: CallHeard, at: number): Weighed {
  const { words, alone } = call;
  const heard = withLossFloor(words.metrics);
  const tables = combineCopies(heard);
  const anyCall =
    alone === null
      ? (weighWholeCall(tables, Number.NEGATIVE_INFINITY, 1) as WholeCall).total
      : alone.evidence - CALL_ODDS - words.lead;
  const rescore: Rescore =
    call.rescore ?? ((streams) => streams.map((stream) => heardOfStream(words.metrics, stream)));
  const similar = (stream: readonly number[]): number => {
    const characters = charactersOf(stream);
    const end = characters.length - 2;
    return characters.reduce((sum, symbol, index) => {
      const own = (index === end ? tables.end : tables.character)[SYMBOLS * index + symbol] as number;
      const ratio = Math.exp(tables.mean(null, index, index === end) - own);
      return sum + Math.log(1 - DIFFERS + DIFFERS * ratio);
    }, 0);
  };
  return { at, call, heard, rescore, anyCall, similar };
}

function readTogether(calls: readonly Weighed[], anchor: number | undefined): Received | null {
  const sum = new Float64Array((calls[0] as Weighed).heard.length);
  for (const { heard } of calls)
    for (let at = 0; at < sum.length; at++) sum[at] = (sum[at] as number) + (heard[at] as number);
  const rescore: Rescore = (streams) => {
    const each = calls.map((call) => {
      const heard = call.rescore(streams);
      return streams.map((stream, n) => {
        const same = heard[n] as number;
        if (call.at === anchor) return same;
        return logSum(Math.log(1 - OTHER_CALL - SIMILAR_CALL) + same, otherwise(call, stream, same));
      });
    });
    return streams.map((_, n) => each.reduce((total, values) => total + (values[n] as number), 0));
  };
  const [first] = calls as [Weighed];
  const lead = calls.reduce((total, { call }) => total + call.words.lead, 0);
  const tempering = calls.some(({ call }) => call.words.tempering === related)
    ? related
    : first.call.words.tempering;
  return receive({ ...first.call.words, metrics: sum, lead, tempering }, rescore, sum);
}

/** Natural log of what was heard given some other call than this one, of which so much was heard. */
function otherwise(call: Weighed, stream: readonly number[], same: number): number {
  return logSum(Math.log(OTHER_CALL) + call.anyCall, Math.log(SIMILAR_CALL) + same + call.similar(stream));
}

function heardOf({ rescore }: Weighed, stream: readonly number[]): number {
  return rescore([stream])[0] as number;
}

/** Natural log of the odds that a call is this one. */
function oddsOfSame(call: Weighed, stream: readonly number[]): number {
  const same = heardOf(call, stream);
  return Math.log(1 - OTHER_CALL - SIMILAR_CALL) + same - otherwise(call, stream, same);
}

/** The same reception, resting on so many calls. */
export function withCalls(received: Received, calls: number): Received {
  const { reception } = received;
  return { ...received, reception: { ...reception, quality: { ...reception.quality, calls } } };
}

/** Format specifier once, up to and with the end of sequence, then the error check, out of the stream of a call. */
function charactersOf(stream: readonly number[]): number[] {
  const end = (stream.length - streamLength(0)) / 2;
  return Array.from({ length: end + 2 }, (_, index) => {
    // The format specifier is sent twice: this is its second time.
    const slot = DX_PHASING_SLOTS + 1 + index;
    return stream[2 * slot] as number;
  });
}
