import { zerosIn } from './symbol-code.ts';

/**
 * What ten bits say about each symbol: natural log of the likelihood against ten random bits.
 *
 * @param bits - log-likelihood per bit, ln P(heard | 1) - ln P(heard | 0); bits outside are taken as not heard
 * @param at - index of the first bit of the word
 * @param sign - 1, or -1 when the tones are the wrong way round
 * @param out - receives 128 values at `offset`
 */
export function wordMetric(
  bits: ArrayLike<number>,
  at: number,
  sign: 1 | -1,
  out: Float64Array,
  offset: number,
): void {
  // Of each bit, ln(2 P(0)); a 1 then adds the bit's log-likelihood.
  let allZeros = 0;
  for (let bit = 0; bit < 10; bit++) allZeros += Math.LN2 - softplus(sign * (bits[at + bit] ?? 0));
  out[offset] = allZeros;
  for (let bit = 0; bit < 7; bit++) {
    const gain = sign * (bits[at + bit] ?? 0);
    const high = 1 << bit;
    for (let symbol = 0; symbol < high; symbol++)
      out[offset + high + symbol] = (out[offset + symbol] as number) + gain;
  }
  const four = sign * (bits[at + 7] ?? 0);
  const two = sign * (bits[at + 8] ?? 0);
  const one = sign * (bits[at + 9] ?? 0);
  for (let symbol = 0; symbol < 128; symbol++) {
    const zeros = zerosIn(symbol);
    out[offset + symbol] =
      (out[offset + symbol] as number) +
      ((zeros & 4) === 0 ? 0 : four) +
      ((zeros & 2) === 0 ? 0 : two) +
      ((zeros & 1) === 0 ? 0 : one);
  }
}

/** ln(1 + e^x) without overflow. */
export function softplus(x: number): number {
  return Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)));
}
