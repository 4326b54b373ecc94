import { decodeBits, type Reception } from '../burst/index.ts';
import { decodeSymbol, encodeSymbol } from '../burst/internal.ts';

/** Ten-bit words of M.493-16 Table A1-1 as they are looked for in a run of bits. */
const DISTRESS = /* @__PURE__ */ encodeSymbol(112);
const ALL_SHIPS = /* @__PURE__ */ encodeSymbol(116);
const DX_PHASING = /* @__PURE__ */ encodeSymbol(125);

/** First and last RX phasing symbol, M.493-16 Annex 1 section 3: 111 is in slot 0, 104 in slot 7. */
const RX_FIRST = 111;
const RX_LAST = 104;

/**
 * Refuses bits that hold a burst of the distress format or category, in either polarity and at any place.
 *
 * Both copies of format and category are looked at, and one is enough to refuse: a receiver could read that one. Then
 * the decoder of `seahail/burst` is asked, as a receiver would ask it: it reads a burst in spite of wrong bits.
 *
 * @throws RangeError with the way out in its message
 */
export function assertStaysOffAir(bits: string): void {
  if (holdsDistressBurst(bits) || holdsDistressBurst(inverted(bits)) || readsAsDistress(bits)) {
    throw new RangeError(
      'modulate: this burst is of the distress format or category and would raise a false alert on the air: pass allowDistress: true only for sound that never reaches a transmitter, or try the radio with a test call',
    );
  }
}

/** Whether any place in the bits looks like the phasing of a burst whose format or category says distress. */
function holdsDistressBurst(bits: string): boolean {
  for (let at = bits.indexOf(DX_PHASING); at >= 0; at = bits.indexOf(DX_PHASING, at + 1)) {
    const rx = decodeSymbol(bits.slice(at + 10, at + 20));
    if (rx === null || rx > RX_FIRST || rx < RX_LAST) continue;
    if (isDistressStream(bits, at - 20 * (RX_FIRST - rx))) return true;
  }
  return false;
}

/** Whether the stream whose first phasing symbol is (or would be) at bit `start` is a distress burst. */
function isDistressStream(bits: string, start: number): boolean {
  const word = (slot: number, copy: 'dx' | 'rx'): string => {
    const at = start + 20 * (copy === 'dx' ? slot : slot + 2) + (copy === 'dx' ? 0 : 10);
    return at < 0 ? '' : bits.slice(at, at + 10);
  };
  const reads = (slot: number, expected: string): boolean =>
    word(slot, 'dx') === expected || word(slot, 'rx') === expected;
  const format = (expected: string): boolean => reads(6, expected) || reads(7, expected);
  return format(DISTRESS) || (format(ALL_SHIPS) ? reads(8, DISTRESS) : reads(13, DISTRESS));
}

/** Whether a receiver reads any call in the bits, or its next best reading, as one of distress. */
function readsAsDistress(bits: string): boolean {
  for (let from = 0; ; ) {
    const result = decodeBits(bits, { from });
    if (!result.ok) return false;
    const { information, quality } = result.value;
    if (saysDistress(information) || saysDistress(quality.runnerUp ?? [])) return true;
    from = Math.max(from + 1, quality.end);
  }
}

/** Format specifier 112, or category 112: after the format of an all-ships call, or after the address. */
function saysDistress(information: Reception['information']): boolean {
  const [format] = information;
  return format === 112 || information[format === 116 ? 2 : 7] === 112;
}

function inverted(bits: string): string {
  return bits.replace(/[01]/g, (bit) => (bit === '1' ? '0' : '1'));
}
