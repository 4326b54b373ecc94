import { characterPositions, endPositions } from '../../src/burst/sequence.ts';
import { decodeSymbol } from '../../src/burst/symbol-code.ts';

/** What a plain decoder makes of the bits of a call whose length it knows: characters with error check, or nothing. */
export type PlainDecoder = (bits: Uint8Array, end: number) => readonly number[] | null;

/** The first copy whose count of B is right; the call only when the error check agrees. */
export const firstCopy: PlainDecoder = (bits, end) => {
  const characters = copiesOf(bits, end).map((copies) => copies.find((symbol) => symbol !== null) ?? null);
  return holds(characters) ? characters : null;
};

/** The same, and the error check fills one missing character or chooses between two copies that pass and differ. */
export const firstCopyRepaired: PlainDecoder = (bits, end) => {
  const copies = copiesOf(bits, end);
  const characters = copies.map((each) => each.find((symbol) => symbol !== null) ?? null);
  if (holds(characters)) return characters;
  const missing = characters.flatMap((symbol, index) => (symbol === null ? [index] : []));
  const parity = characters.reduce<number>((sum, symbol) => sum ^ (symbol ?? 0), 0);
  if (missing.length === 1) {
    characters[missing[0] as number] = parity;
    return holds(characters) ? characters : null;
  }
  if (missing.length > 1) return null;
  for (const [index, each] of copies.entries()) {
    const other = each.find(
      (symbol) => symbol !== null && ((characters[index] as number) ^ symbol) === parity,
    );
    if (other !== undefined && parity !== 0) {
      characters[index] = other;
      return holds(characters) ? characters : null;
    }
  }
  return null;
};

/** Both copies' bits added up, the nearest of the 128 words; the call only when the error check agrees. */
export const addedCopies: PlainDecoder = (bits, end) => {
  const characters = Array.from({ length: end + 2 }, (_, index) => {
    const votes = new Int8Array(10);
    for (const position of positionsOf(index, end))
      for (let bit = 0; bit < 10; bit++)
        votes[bit] = (votes[bit] as number) + (bits[10 * position + bit] === 1 ? 1 : -1);
    return nearest(votes);
  });
  return holds(characters) ? characters : null;
};

const words: readonly (readonly number[])[] = Array.from({ length: 1024 }, (_, word) =>
  word.toString(2).padStart(10, '0'),
)
  .filter((word) => decodeSymbol(word) !== null)
  .map((word) => [decodeSymbol(word) as number, ...[...word].map((bit) => (bit === '1' ? 1 : -1))]);

function nearest(votes: Int8Array): number {
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (const [symbol, ...signs] of words) {
    const agreement = signs.reduce((sum, sign, bit) => sum + sign * (votes[bit] as number), 0);
    if (agreement > most) {
      most = agreement;
      best = symbol as number;
    }
  }
  return best;
}

function positionsOf(index: number, end: number): readonly number[] {
  return index === end ? [...characterPositions(index), ...endPositions(index)] : characterPositions(index);
}

function copiesOf(bits: Uint8Array, end: number): (number | null)[][] {
  return Array.from({ length: end + 2 }, (_, index) =>
    positionsOf(index, end).map((position) =>
      decodeSymbol(bits.subarray(10 * position, 10 * position + 10).join('')),
    ),
  );
}

function holds(characters: readonly (number | null)[]): characters is readonly number[] {
  return (
    !characters.includes(null) && characters.reduce<number>((sum, symbol) => sum ^ (symbol ?? 0), 0) === 0
  );
}
