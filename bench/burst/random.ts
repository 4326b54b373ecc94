/** Random numbers from a seed, the same on every machine. */
export interface Random {
  /** 0 up to but not 1. */
  next(): number;
  /** Normal, mean 0, variance 1. */
  normal(): number;
  /** An integer from `first` to `last`. */
  integer(first: number, last: number): number;
  pick<T>(list: readonly T[]): T;
}

/** A generator after Marsaglia (xorshift, 32 bits), with the Box and Muller transform. */
export function randomFrom(seed: number): Random {
  let state = (seed * 2654435761) >>> 0 || 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4294967296;
  };
  for (let warm = 0; warm < 8; warm++) next();
  let spare: number | null = null;
  const normal = (): number => {
    if (spare !== null) {
      const value = spare;
      spare = null;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - next()));
    const angle = 2 * Math.PI * next();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  const integer = (first: number, last: number): number => first + Math.floor(next() * (last - first + 1));
  return {
    next,
    normal,
    integer,
    pick: (list) => list[integer(0, list.length - 1)] as (typeof list)[number],
  };
}
