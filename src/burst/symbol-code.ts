/**
 * The ten bits of each symbol 0–127, bit 1 (sent first) on the left, 1 = Y and 0 = B.
 *
 * Seven information bits, least significant first, then the count of B among them as three bits,
 * most significant first. Source: ITU-R M.493, ten-bit error-detecting code; the rule as restated in
 * Nippon Foundation library, GMDSS equipment-inspection training texts of 1998 and 2002, whose printed
 * rows 00–45 equal it.
 *
 * @param symbol - 0 to 127
 * @returns ten characters, each `0` or `1`
 * @throws RangeError when the symbol is not an integer from 0 to 127
 */
export function encodeSymbol(symbol: number): string {
  requireSymbol(symbol);
  let bits = '';
  for (let bit = 0; bit < 7; bit++) bits += (symbol >> bit) & 1;
  return bits + zerosIn(symbol).toString(2).padStart(3, '0');
}

/**
 * The symbol that ten bits stand for, or `null` when their count of B does not agree or they are not ten bits.
 *
 * The count finds every single wrong bit, but a 0 read as 1 together with a 1 read as 0 passes.
 *
 * @param bits - ten characters, each `0` or `1`, bit 1 first
 */
export function decodeSymbol(bits: string): number | null {
  if (typeof bits !== 'string' || !/^[01]{7}/.test(bits)) return null;
  const symbol = Number.parseInt([...bits.slice(0, 7)].reverse().join(''), 2);
  return encodeSymbol(symbol) === bits ? symbol : null;
}

/** Throws a RangeError at what is no symbol. */
export function requireSymbol(symbol: number): void {
  if (!isSymbol(symbol)) throw new RangeError(`a symbol is an integer from 0 to 127, not ${String(symbol)}`);
}

export function isSymbol(given: unknown): given is number {
  return Number.isInteger(given) && (given as number) >= 0 && (given as number) <= 127;
}

/** Count of B (0) among the seven information bits of a symbol. */
export function zerosIn(symbol: number): number {
  let zeros = 7;
  for (let rest = symbol; rest > 0; rest &= rest - 1) zeros--;
  return zeros;
}
