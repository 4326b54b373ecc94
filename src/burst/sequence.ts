import { errorCheckOf } from './error-check.ts';

/** DX phasing symbol, sent in slots 0–5 (M.493). */
export const DX_PHASING = 125;
/** Slots of DX phasing. */
export const DX_PHASING_SLOTS = 6;
/** RX phasing, RX7 down to RX0, in slots 0–7 (M.493; numbers as in Japan, Notification 567 of 1990). */
export const RX_PHASING: readonly number[] = [111, 110, 109, 108, 107, 106, 105, 104];
/** A character of DX slot k comes again in RX slot k + 2, five stream positions later. */
export const RX_LAG = 2;
/** On VHF the dot pattern is always 20 bits (Japan, Notification 567 of 1990); either polarity is allowed. */
export const DOT_PATTERN = '10101010101010101010';

/** The phasing symbol at a stream position; `null` at the position of a character. */
export function phasingSymbol(position: number): number | null {
  if (position % 2 === 0) return position < 2 * DX_PHASING_SLOTS ? DX_PHASING : null;
  return RX_PHASING[(position - 1) / 2] ?? null;
}

/** Symbols before the first that carries a character: slots 0–5 of DX and RX. */
const FIRST_SLOT = DX_PHASING_SLOTS;

/**
 * Stream positions (in symbols, phasing's first symbol being 0) that carry character `index` of a call:
 * the format specifier has four, every other character two.
 *
 * `index` counts the format specifier once; the end of sequence has two more copies, see {@link endPositions}.
 */
export function characterPositions(index: number): readonly number[] {
  if (index > 0) return [dx(FIRST_SLOT + 1 + index), rx(FIRST_SLOT + 1 + index + RX_LAG)];
  return [
    ...characterPositions(1).map((position) => position - 4),
    ...characterPositions(1).map((p) => p - 2),
  ];
}

/**
 * The two further positions of an end of sequence that is character `index`: in DX after the error check.
 * Source: ITU-R M.493; four copies in all as in the Nippon Foundation text of 1998, their places remembered.
 */
export function endPositions(index: number): readonly number[] {
  // deviation: D-burst-2 (where the four end-of-sequence characters stand is remembered).
  return [dx(FIRST_SLOT + 1 + index + 2), dx(FIRST_SLOT + 1 + index + 3)];
}

/** Symbols of a whole call whose end of sequence is character `end`, phasing included, expansion not. */
export function streamLength(end: number): number {
  return rx(FIRST_SLOT + 1 + end + 1 + RX_LAG) + 1;
}

/**
 * The symbols of a call in order of transmission, DX and RX taking turns, from the first phasing symbol
 * to the RX copy of the last error check.
 *
 * @param characters - format specifier once, up to and with the end of sequence
 * @param appended - DX symbols of an expansion, its closing end-of-sequence pair included; none by default
 * @param check - the error check that is sent, the right one by default
 */
export function streamOf(
  characters: readonly number[],
  appended: readonly number[] = [],
  check: number = errorCheckOf(characters),
): number[] {
  const [format, ...others] = characters;
  if (format === undefined) throw new RangeError('a call has at least one character');
  const end = others.at(-1) ?? format;
  const message = [format, format, ...others, check, end, end, ...appended];
  const first = [...Array.from({ length: DX_PHASING_SLOTS }, () => DX_PHASING), ...message];
  const second = [...RX_PHASING, ...message];
  return first.flatMap((symbol, slot) => [symbol, second[slot] as number]);
}

function dx(slot: number): number {
  return 2 * slot;
}

function rx(slot: number): number {
  return 2 * slot + 1;
}
