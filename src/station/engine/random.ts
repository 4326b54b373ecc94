/**
 * The next of a series of random numbers.
 *
 * A Weyl sequence (steps of 2³²/φ) through the 32-bit finaliser of MurmurHash3, which is in the public domain: every
 * state occurs once in 2³² numbers, and zero is as good a seed as any.
 *
 * @param state - unsigned 32-bit integer
 * @returns a value from 0 up to 1, and the state to go on from
 */
export function nextRandom(state: number): readonly [value: number, next: number] {
  const next = (state + 0x9e3779b9) >>> 0;
  let bits = next;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  bits ^= bits >>> 16;
  return [(bits >>> 0) / 0x1_0000_0000, next];
}
