import type { CharacterTables } from './character-table.ts';
import { type CharacterKind, fieldPriors } from './field-prior.ts';
import { DX_PHASING_SLOTS, RX_LAG } from './sequence.ts';

const SYMBOLS = 128;
/** Chance that from one word to the next another sender is heard in step, or the same one with its tones turned over. */
const CHANGE = 1e-4;
/** Chance that the first one is heard again from one word to the next. */
const BACK = 0.01;
/** Of what another sender sends, the share that is as usual as in the call itself; the rest may be any symbol. */
const ALIKE = 0.5;
/** Stream positions from a copy in DX to its copy in RX. */
const LAG: number = 2 * RX_LAG + 1;
/** Who sent the last words, a bit each: 1 is the other sender. */
const MEMORIES: number = 1 << LAG;

// deviation: D-burst-10 (two calls heard in step).
/**
 * Natural log of how much more likely what was heard is when the sender changes on the way than when there is one
 * throughout, the error check left aside.
 *
 * Two calls heard in step, first one and then the other, are a row of right words. What gives them away are the
 * characters on the way from one to the other: their copy in DX is of one call and their copy in RX of the other.
 *
 * @param kinds - kind of each character, format specifier once, up to and with the end of sequence
 */
export function heardOfChange(tables: CharacterTables, kinds: readonly CharacterKind[]): number {
  const [format] = kinds;
  const pairs = [format, ...kinds, null].map((kind, slot) =>
    pairOf(tables, 2 * (DX_PHASING_SLOTS + slot), kind ?? null),
  );
  // Where no copies differ, nothing shows a change: it may as well be the same call from another sender.
  return Math.log(Math.max(sumOver(pairs.map(({ any }) => any)) - sumOver(pairs.map(({ same }) => same)), 0));
}

/**
 * Sum over every way in which the sender may change, each as likely as it is and as the characters on the way say.
 *
 * @param ratios - per character in order of transmission, see {@link Pair}
 */
function sumOver(ratios: readonly Ratios[]): number {
  const first = 2 * DX_PHASING_SLOTS;
  let changed = new Float64Array(MEMORIES);
  let never = 1;
  for (let position = first; position < first + 2 * ratios.length + LAG - 1; position++) {
    // A character is weighed where its copy in RX is.
    const pair = position % 2 === 1 ? ratios[(position - LAG - first) / 2] : undefined;
    const next = new Float64Array(MEMORIES);
    const go = (memory: number, weight: number): void => {
      const last = memory & (MEMORIES - 1);
      const ratio = pair === undefined ? 1 : (pair[2 * (memory >> LAG) + (memory & 1)] as number);
      next[last] = (next[last] as number) + weight * ratio;
    };
    for (const [memory, weight] of changed.entries()) {
      const stay = (memory & 1) === 0 ? 1 - CHANGE : BACK;
      go(2 * memory, weight * stay);
      go(2 * memory + 1, weight * (1 - stay));
    }
    go(1, never * CHANGE);
    never *= 1 - CHANGE;
    changed = next;
  }
  return changed.reduce((sum, weight) => sum + weight);
}

/**
 * How much more likely what was heard of a character in DX and RX is than with one sender of both: with one sender, the
 * other's copy in RX, the other's copy in DX, both the other's.
 */
type Ratios = readonly [number, number, number, number];

interface Pair {
  readonly any: Ratios;
  /** The part of it that shows no difference between the copies. */
  readonly same: Ratios;
}

function pairOf(tables: CharacterTables, dx: number, kind: CharacterKind | null): Pair {
  const usual = kind === null ? null : fieldPriors()[kind];
  let ofBoth = 0;
  let ofTwoAlike = 0;
  let alike = 0;
  let firstInDx = 0;
  let firstInRx = 0;
  let otherInDx = 0;
  let otherInRx = 0;
  for (let symbol = 0; symbol < SYMBOLS; symbol++) {
    const first = usual === null ? 1 / SYMBOLS : Math.exp(usual[symbol] as number);
    const other = ALIKE * first + (1 - ALIKE) / SYMBOLS;
    const inDx = tables.likelihood[SYMBOLS * dx + symbol] as number;
    const inRx = tables.likelihood[SYMBOLS * (dx + LAG) + symbol] as number;
    ofBoth += first * inDx * inRx;
    ofTwoAlike += first * other * inDx * inRx;
    alike += first * other;
    firstInDx += first * inDx;
    firstInRx += first * inRx;
    otherInDx += other * inDx;
    otherInRx += other * inRx;
  }
  const onlyRx = (firstInDx * otherInRx) / ofBoth;
  const onlyDx = (otherInDx * firstInRx) / ofBoth;
  // Of copies of which nothing was heard all of it, of copies that say the same all of it, of those that differ little.
  const same = ofTwoAlike / alike / ofBoth;
  return { any: [1, onlyRx, onlyDx, 1], same: [1, Math.min(onlyRx, same), Math.min(onlyDx, same), 1] };
}
