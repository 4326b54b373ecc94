import { encodeSymbol } from '../../burst/internal.ts';

/**
 * Symbols of the stream that are the same in every call, M.493-16 Annex 1 section 3: DX 125 in slots 0 to 5, RX 111 to 104
 * in slots 0 to 7, where the last two stand between the format specifiers.
 */
export const PHASING: readonly (number | undefined)[] = [
  ...[125, 111, 125, 110, 125, 109, 125, 108, 125, 107, 125, 106],
  ...[undefined, 105, undefined, 104],
];

/** Words read of each burst at most: the longest call with its expansion has fewer. */
export const MOST_WORDS = 106;

/** Words of phasing without a gap. */
export const UNBROKEN = 12;

/** The bits of {@link PHASING}, blanks in place of a format specifier. */
export const PHASING_BITS: string = /* @__PURE__ */ (() =>
  PHASING.map((symbol) => (symbol === undefined ? ' '.repeat(10) : encodeSymbol(symbol))).join(''))();

/** Words of the shortest call (a distress alert, M.493-16): the part that is sure to be there, used to learn level and clock. */
export const SURE_WORDS = 52;

/** Bits of a distress alert with its dot pattern. The five of an attempt follow one another without a break. */
export const ALERT_BITS: number = 20 + 10 * SURE_WORDS;
