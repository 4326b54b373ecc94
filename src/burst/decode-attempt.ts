import { failure, type Issue, type Result } from '../result/index.ts';
import { safely } from '../result/internal.ts';
import { joinCalls, MOST_CALLS } from './attempt.ts';
import { decodeHard, givenHard } from './decode-bits.ts';
import {
  type Decode,
  decodeRelated,
  type GivenBits,
  givenSoft,
  receiveWhere,
  report,
} from './decode-soft.ts';
import { givenSymbols } from './decode-stream.ts';
import { listOf, wrongInput } from './input.ts';
import type { Received } from './receive.ts';
import type { Reception, ReceptionQuality, Verdict } from './reception.ts';

/** How each kind of input is read. */
const READERS = {
  bits: { read: givenHard, decode: decodeHard },
  'soft-bits': { read: givenSoft, decode: decodeRelated },
  symbols: { read: givenSymbols, decode: decodeHard },
} as const satisfies Record<string, { read: (given: unknown) => GivenBits | Issue; decode: Decode }>;

/** From least to most. */
const VERDICTS: readonly Verdict[] = ['doubtful', 'repaired', 'clean'];

/**
 * Decode the calls of one attempt together: a distress alert is sent as up to five consecutive calls, the same to the bit.
 *
 * Each call is looked for in what was heard of it; what its copies say is then added before the whole call is decided. A
 * call that is more likely another one, of another vessel or with a character changed, is left out, and of several
 * different calls the one that is read best is returned. Give only calls that follow one another without a break: an alert that is
 * repeated minutes later may have another position and time.
 *
 * @param calls - what was heard of each call, 1 to 5 of them in any order, its phasing included
 * @param options - `as`: how calls are given. `'bits'` as for {@link decodeBits}, which is the default, `'soft-bits'`
 *   as for {@link decodeSoft}, `'symbols'` as for {@link decodeStream}
 * @returns the call and how sure it is; `quality.calls` says how many calls it rests on, and `start` and `end` count
 *   bits in the first of them
 *
 * Source: five alerts in an attempt: ITU-R M.541-11; without a gap: Japan, Notification 567 of 1990.
 *
 * @see {@link decodeBits}
 *
 * @example
 * ```ts
 * import { decodeAttempt, encodeCall } from 'seahail/burst';
 * import { composeDistressAlert } from 'seahail/call';
 * import { valueOf } from 'seahail/result';
 *
 * const { bits } = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));
 * // The first call lost its second half, the second its first words.
 * const heard = [bits.slice(0, 300), `${'?'.repeat(100)}${bits.slice(100)}`];
 * const { call, quality } = valueOf(decodeAttempt(heard));
 * console.log(call.kind, quality.verdict, quality.calls); // distress-alert clean 2
 * ```
 */
export function decodeAttempt(
  calls: readonly (string | ArrayLike<number | null>)[],
  options: { readonly as?: 'bits' | 'soft-bits' | 'symbols' | undefined } = {},
): Result<Reception> {
  return safely(
    () => decoded(calls, options?.as ?? 'bits'),
    () => failure(wrongInput({ subject: 'calls', accepted: 'calls' }, calls)),
  );
}

function decoded(given: unknown, as: string): Result<Reception> {
  if (!Object.hasOwn(READERS, as))
    return failure(wrongInput({ subject: 'option', which: 'as', accepted: 'kinds' }, as, ['as']));
  const reader = READERS[as as keyof typeof READERS];
  const list = listOf(given);
  if (list === null || list.length < 1 || list.length > MOST_CALLS)
    return failure(wrongInput({ subject: 'calls', accepted: 'calls' }, list === null ? given : list.length));
  const found: Received[] = [];
  for (let n = 0; n < list.length; n++) {
    const bits = reader.read(list[n]);
    const received = 'code' in bits ? bits : receiveWhere(bits, null, reader.decode);
    if (received === null) continue;
    if ('code' in received) return failure({ ...received, at: [n, ...received.at] });
    found.push(received);
  }
  const joined = joinCalls(found.map((alone) => ({ words: alone.words, rescore: undefined, alone })));
  const [first, ...others] = joined === null ? found : [joined.received, ...found];
  if (first === undefined) return report(null);
  const qualityOf = ({ reception }: Received) => reception.quality;
  return report(
    others.reduce((best, other) => (isSurer(qualityOf(other), qualityOf(best)) ? other : best), first),
  );
}

/** Whether one reception has a better verdict than another, or the same and is more probable; one that was joined comes first. */
export function isSurer(one: ReceptionQuality, other: ReceptionQuality): boolean {
  const lead = VERDICTS.indexOf(one.verdict) - VERDICTS.indexOf(other.verdict);
  return lead > 0 || (lead === 0 && other.calls === 1 && one.probability > other.probability);
}
