import { decodeSymbol } from '../../src/burst/symbol-code.ts';

/**
 * The ordinary way, for comparison: two tone filters (Goertzel) over each bit, the stronger one wins; words whose count of
 * zeros is right are taken, the second copy only when the first fails; the error check must agree.
 *
 * It is told the exact instant of the first bit, which no receiver is.
 */
export function classicalCall(
  samples: Float32Array,
  sampleRate: number,
  firstBit: number,
  bits: number,
): number[] | null {
  const words: (number | null)[] = [];
  let word = '';
  for (let k = 20; k < bits; k++) {
    const from = firstBit + (k * sampleRate) / 1200;
    const start = Math.round(from);
    const end = Math.round(from + sampleRate / 1200);
    word +=
      goertzel(samples, start, end, 1300 / sampleRate) > goertzel(samples, start, end, 2100 / sampleRate)
        ? '1'
        : '0';
    if (word.length === 10) {
      words.push(decodeSymbol(word));
      word = '';
    }
  }
  // DX slot s stands at 2 s, its copy in RX at 2 (s + 2) + 1.
  const characters: number[] = [];
  for (let slot = 6; 2 * slot < words.length; slot++) {
    const symbol = words[2 * slot] ?? words[2 * slot + 5] ?? null;
    if (symbol === null) return null;
    characters.push(symbol);
    const end = characters.at(-2);
    if (characters.length > 12 && (end === 117 || end === 122 || end === 127)) {
      const parity = characters.slice(1).reduce((a, b) => a ^ b, 0);
      return parity === 0 ? characters.slice(0, -1) : null;
    }
  }
  return null;
}

/** Power of one frequency (cycles a sample) in a stretch of samples (Goertzel, 1958). */
export function goertzel(samples: Float32Array, start: number, end: number, frequency: number): number {
  const turn = 2 * Math.cos(2 * Math.PI * frequency);
  let one = 0;
  let two = 0;
  for (let n = start; n < end; n++) {
    const zero = (samples[n] ?? 0) + turn * one - two;
    two = one;
    one = zero;
  }
  return one * one + two * two - turn * one * two;
}
