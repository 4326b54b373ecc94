import { ATIS_FORMAT } from '../call/internal.ts';
import { failure, type Result, success } from '../result/index.ts';
import { errorCheckOf } from './error-check.ts';
import { DOT_PATTERN, RX_LAG, streamOf } from './sequence.ts';
import { decodeSymbol, encodeSymbol } from './symbol-code.ts';
import { issue } from './texts.ts';

// deviation: D-burst-9 (the layout is second-hand).
const CLAUSE = 'ETSI EN 300 698 Annex B, restated';
const END = 127;
/** Characters of a burst: format, five pairs, end and error check. */
const LENGTH = 8;

/**
 * The bits of an ATIS burst, by which a VHF set on inland waters identifies itself on the voice channel in use.
 *
 * The layout is second-hand: two restatements of ETSI EN 300 698 Annex B and ITU-R Report M.1159 agree with each
 * other, and with the published duration to 2 ms; neither text was seen. Only a type-approved set may transmit it.
 *
 * @param code - ten digits, the first a 9, as `encodeAtisCode` of `seahail/identity` makes them
 * @returns 360 characters `0` and `1`: 20 dots, then 34 symbols of ten bits, at 1200 bits a second
 * @throws RangeError when the code is not ten digits that begin with 9
 *
 * @see {@link decodeAtis}
 *
 * @example
 * ```ts
 * import { encodeAtis } from 'seahail/burst';
 *
 * console.log(encodeAtis('9265123456').length); // 360
 * ```
 */
export function encodeAtis(code: string): string {
  if (typeof code !== 'string' || !/^9\d{9}$/.test(code))
    throw new RangeError(`encodeAtis: expected ten digits that begin with 9, got ${String(code)}`);
  const pairs = [0, 2, 4, 6, 8].map((at) => Number(code.slice(at, at + 2)));
  return (
    DOT_PATTERN +
    streamOf([ATIS_FORMAT, ...pairs, END])
      .map(encodeSymbol)
      .join('')
  );
}

/**
 * The code of an ATIS burst in hard bits from a **voice channel**. On channel 70 format 121 is not a call, and must
 * not be taken for one.
 *
 * Strict: every symbol of the code must be readable in at least one of its two copies, copies that are both readable
 * must agree, and the error check must be right. Nothing is repaired.
 *
 * @param bits - characters `0` and `1`, 1 being 1300 Hz; the burst may start anywhere in them
 * @returns ten digits, or why none were found; see `decodeAtisCode` of `seahail/identity` for what they may stand for
 *
 * Source: as for {@link encodeAtis}, second-hand.
 *
 * @see {@link encodeAtis}
 *
 * @example
 * ```ts
 * import { decodeAtis, encodeAtis } from 'seahail/burst';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(valueOf(decodeAtis(`0110${encodeAtis('9265123456')}01`))); // 9265123456
 * ```
 */
export function decodeAtis(bits: string): Result<string> {
  if (typeof bits !== 'string' || /[^01]/.test(bits)) {
    return failure(
      issue('burst-input', { subject: 'atis', accepted: 'atis' }, { received: typeof bits, clause: CLAUSE }),
    );
  }
  for (let start = 0; start < bits.length; start++) {
    const code = codeAt(bits, start);
    if (code !== null) return success(code);
  }
  return failure(issue('burst-atis-not-found', {}, { clause: CLAUSE }));
}

/** The code of a burst whose format begins at a bit; `null` where there is none. */
function codeAt(bits: string, start: number): string | null {
  const symbolAt = (symbol: number): number | null => {
    const at = start + 10 * symbol;
    return decodeSymbol(bits.slice(at, at + 10));
  };
  const characters: number[] = [];
  for (let index = 0; index < LENGTH; index++) {
    // In DX, and again in RX some slots later; a slot has a symbol of each.
    const [dx, rx] = [symbolAt(2 * index), symbolAt(2 * (index + RX_LAG) + 1)];
    const character = dx ?? rx;
    if (character === null || (rx !== null && rx !== character)) return null;
    characters.push(character);
  }
  const check = characters.pop();
  const [format, ...pairs] = characters;
  const end = pairs.pop();
  if (format !== ATIS_FORMAT || end !== END || errorCheckOf(characters) !== check) return null;
  if (pairs.some((pair) => pair > 99)) return null;
  const code = pairs.map((pair) => String(pair).padStart(2, '0')).join('');
  return code.startsWith('9') ? code : null;
}
