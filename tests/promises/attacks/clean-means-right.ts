// `clean`: at least 0.9999 sure, the only one fit for automatic action; `repaired`: at least 0.99 sure
// (docs/guide/burst.md). So a clean reading is one of the calls that were sent, symbol for symbol.
import { randomFrom } from '../../../bench/receiver/random.ts';
import { decodeBits, decodeSoft, encodeCall, type Reception } from '../../../src/burst/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import type { SentCall } from '../support/calls.ts';
import { waysInBits } from '../support/spoil-bits.ts';

/**
 * Whether what was read is what one of them sent, the expansion included when it was read: symbol for symbol, but an
 * expansion may be another one's than its call.
 *
 * That is as much as a receiver can know. An expansion is a row of words that follows the end of a call in the same
 * rhythm, with a check over itself alone (ITU-R M.821, from memory): no identity, no count and no check over both. What
 * a second station sends in step where the first one's call ends is the same bits as an expansion of the first, so
 * no decoder of bits can tell them apart. A row of words that nobody sent as an expansion, such as the rest of a
 * longer call, still counts as wrong.
 */
export function isOneOf(reception: Reception, sent: readonly SentCall[]): boolean {
  const read = reception.information.join(' ');
  const finer =
    reception.quality.expansion === 'read'
      ? encodeCall(reception.call).expansion?.information.join(' ')
      : undefined;
  return (
    sent.some(({ characters }) => characters.join(' ') === read) &&
    (finer === undefined || sent.some(({ expansion }) => finer === expansion?.join(' ')))
  );
}

/** Counts of one way: how often each verdict came, and how often it was wrong. */
export interface Tally {
  tries: number;
  clean: number;
  cleanWrong: number;
  repaired: number;
  repairedWrong: number;
  doubtful: number;
  nothing: number;
}
export const emptyTally = (): Tally => ({
  tries: 0,
  clean: 0,
  cleanWrong: 0,
  repaired: 0,
  repairedWrong: 0,
  doubtful: 0,
  nothing: 0,
});

/** Upper bound of a Poisson mean at 95 %, for k events seen (exact for 0; Byar's approximation above). */
const upper = (seen: number): number =>
  seen === 0 ? 3 : (seen + 1) * (1 - 1 / (9 * (seen + 1)) + 1.645 / (3 * Math.sqrt(seen + 1))) ** 3;

/** Adds a reading to a tally and says whether it breaks `clean`. */
export function score(tally: Tally, reception: Reception, sent: readonly SentCall[]): boolean {
  const { verdict } = reception.quality;
  tally[verdict] += 1;
  if (verdict === 'doubtful' || isOneOf(reception, sent)) return false;
  if (verdict === 'repaired') tally.repairedWrong += 1;
  else tally.cleanWrong += 1;
  return verdict === 'clean';
}

/** `repaired` is wrong in more than one of a hundred, beyond what chance explains (three standard deviations). */
export const tooOftenWrong = ({ repaired, repairedWrong }: Tally): boolean =>
  repairedWrong > 0.01 * repaired + 3 * Math.sqrt(0.01 * repaired) + 1;

/** The table: one row a way, and the bound over all. */
export function summary(tallies: ReadonlyMap<string, Tally>): Record<string, string> {
  const rows: Record<string, string> = {};
  const all = emptyTally();
  for (const [way, tally] of [...tallies, ['all', all] as const]) {
    if (tally !== all) for (const key of Object.keys(all) as (keyof Tally)[]) all[key] += tally[key];
    const { tries, clean, cleanWrong, repaired, repairedWrong, doubtful, nothing } = tally;
    rows[way] =
      `${tries} tries: ${clean} clean, ${cleanWrong} wrong (below ${clean === 0 ? '-' : (upper(cleanWrong) / clean).toExponential(1)}); ` +
      `${repaired} repaired, ${repairedWrong} wrong; ${doubtful} doubtful; ${nothing} no call`;
  }
  return rows;
}

/** Tries of `npm run attack`. */
export const usual = 30_000;

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const tallies = new Map<string, Tally>();
  const ways = Object.entries(waysInBits);
  for (let tried = 0; tried < count; tried += 1) {
    const [way, spoil] = ways[tried % ways.length] as (typeof ways)[number];
    const { heard, sent } = spoil(randomFrom(seed * 1_000_003 + tried));
    const tally = tallies.get(way) ?? emptyTally();
    tallies.set(way, tally);
    tally.tries += 1;
    notes.count('tries');
    const result = heard instanceof Float64Array ? decodeSoft(heard) : decodeBits(heard);
    if (!result.ok) tally.nothing += 1;
    else if (score(tally, result.value, sent)) {
      notes.broken(
        `clean is wrong (${way})`,
        show({
          seed,
          tried,
          sent,
          read: result.value.information,
          quality: result.value.quality.probability,
          bits: heard instanceof Float64Array ? 'soft' : heard.map((bit) => bit ?? '?').join(''),
        }),
      );
    }
  }
  for (const [way, tally] of tallies) {
    // Whether characters whose check was sent wrong are right cannot be said of a repair.
    if (way !== 'wrong check sent' && tooOftenWrong(tally)) {
      notes.broken(`repaired is wrong too often (${way})`, `${tally.repairedWrong} of ${tally.repaired}`);
    }
  }
  return notes.outcome(summary(tallies));
};
