/** A stream of random numbers from a seed, the same on every machine. */
export interface Random {
  /** Even between 0 and 1. */
  readonly even: () => number;
  /** Whole number from 0 to `below` - 1. */
  readonly below: (below: number) => number;
  /** Normal, mean 0, variance 1. */
  readonly normal: () => number;
}

/** xoshiro128** (Blackman and Vigna, 2018) seeded by splitmix32; normal values by the polar method (Marsaglia, 1964). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const split = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return (z ^ (z >>> 15)) >>> 0;
  };
  let a = split();
  let b = split();
  let c = split();
  let d = split();
  const next = (): number => {
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = (d << 11) | (d >>> 21);
    return result;
  };
  const even = (): number => next() / 0x1_0000_0000;
  let spare = Number.NaN;
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const value = spare;
      spare = Number.NaN;
      return value;
    }
    for (;;) {
      const x = 2 * even() - 1;
      const y = 2 * even() - 1;
      const r = x * x + y * y;
      if (r >= 1 || r === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(r)) / r);
      spare = y * scale;
      return x * scale;
    }
  };
  return { even, below: (below) => Math.floor(even() * below), normal };
}
