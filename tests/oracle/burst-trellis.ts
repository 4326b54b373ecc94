/** A sequence of symbols and the sum of its weights. */
export interface Sequence {
  readonly characters: readonly number[];
  readonly weight: number;
}

/**
 * Every sequence of symbols whose exclusive-or is zero, heaviest first, and the natural log of the sum of all
 * their exponentials: by trying each one.
 *
 * @param choices - for each position the symbols that may stand there and their weights
 */
export function everySequence(choices: readonly (readonly (readonly [symbol: number, weight: number])[])[]): {
  readonly sequences: readonly Sequence[];
  readonly total: number;
} {
  let partial: Sequence[] = [{ characters: [], weight: 0 }];
  for (const choice of choices)
    partial = partial.flatMap(({ characters, weight }) =>
      choice.map(([symbol, more]) => ({ characters: [...characters, symbol], weight: weight + more })),
    );
  const sequences = partial
    .filter(({ characters }) => characters.reduce((parity, symbol) => parity ^ symbol, 0) === 0)
    .sort((one, other) => other.weight - one.weight);
  const heaviest = sequences[0]?.weight ?? Number.NEGATIVE_INFINITY;
  const sum = sequences.reduce((so, { weight }) => so + Math.exp(weight - heaviest), 0);
  return { sequences, total: heaviest + Math.log(sum) };
}
