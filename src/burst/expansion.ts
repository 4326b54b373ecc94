import type { Symbols } from '../call/index.ts';
import type { ExpansionSet } from '../call/internal.ts';
import { errorCheckOf } from './error-check.ts';

/** In place of data: the sender asks for it, or has none. */
const IN_PLACE_OF_DATA: Symbols = [110, 126];
// deviation: D-burst-6 (specifiers and lengths).
/** Data symbols by specifier (ITU-R M.821-1); a specifier not listed takes all that follows. */
const DATA_LENGTHS: ReadonlyMap<number, number> = /* @__PURE__ */ new Map([
  [100, 4],
  [101, 3],
  [102, 2],
  [103, 2],
  [105, 12],
  [106, 2],
]);
/** Most symbols of an expansion that the decoder looks for. */
export const LONGEST_EXPANSION = 32;

/**
 * Layout of an expansion after the basic call, defined here only.
 *
 * Slots are counted from the DX slot of the basic call's error check.
 */
export interface ExpansionLayout {
  readonly name: string;
  /** First DX slot of the expansion. */
  readonly first: number;
  /** Whether the end of sequence of the call is repeated twice after its error check, before the expansion. */
  readonly closesCall: boolean;
  /** Whether the expansion's own error check counts its end of sequence. */
  readonly countsEnd: boolean;
}

/**
 * The layout that is sent: RX goes on copying DX two slots later, the closing end-of-sequence pair of the
 * basic call included, and the expansion closes as the basic call does.
 * Source: ITU-R M.821-1, low confidence.
 */
// deviation: D-burst-5 (layout of the expansion).
export const sentLayout: ExpansionLayout = { name: 'continued', first: 3, closesCall: true, countsEnd: true };

/** The layouts that are accepted when received, the one that is sent first. */
export const plausibleLayouts: readonly ExpansionLayout[] = /* @__PURE__ */ (() => [
  sentLayout,
  { name: 'check-without-end', first: 3, closesCall: true, countsEnd: false },
  { name: 'in-place-of-pair', first: 1, closesCall: false, countsEnd: true },
])();

/** The DX symbols of an expansion in the layout that is sent: its characters, end, error check, end twice. */
export function expansionSymbols(characters: readonly number[], end: number): number[] {
  return characters.length === 0 ? [] : [...characters, end, errorCheckOf([...characters, end]), end, end];
}

/**
 * The characters of an expansion's data sets, in order.
 *
 * @throws RangeError when a set holds only text, which has no agreed symbols, or an unreadable symbol
 */
export function charactersFromSets(sets: readonly ExpansionSet[]): number[] {
  return sets.flatMap((set) => {
    if (set.text !== undefined && set.symbols.length === 0)
      throw new RangeError(`expansion set ${set.specifier} holds text, which has no standard symbols`);
    return [set.specifier, ...set.symbols].map((symbol) => {
      if (symbol === null) throw new RangeError(`expansion set ${set.specifier} holds an unreadable symbol`);
      return symbol;
    });
  });
}

/** Take the characters of an expansion apart into data sets; from an unknown specifier on, one set holds the rest. */
export function setsFromCharacters(characters: readonly number[]): ExpansionSet[] {
  const sets: ExpansionSet[] = [];
  for (let at = 0; at < characters.length; ) {
    const specifier = characters[at] as number;
    const length = IN_PLACE_OF_DATA.includes(characters[at + 1] ?? null) ? 1 : DATA_LENGTHS.get(specifier);
    const end = length === undefined ? characters.length : at + 1 + length;
    sets.push({ specifier, symbols: characters.slice(at + 1, end) });
    at = end;
  }
  return sets;
}
