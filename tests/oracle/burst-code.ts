/**
 * The ten-bit code of ITU-R M.493, read literally from its rule as restated in the Nippon Foundation library,
 * GMDSS equipment-inspection training text of 1998: seven information bits, the least significant sent first,
 * then three that give the count of B (0) among them, the most significant first.
 */
export function tenBits(symbol: number): string {
  const information = symbol.toString(2).padStart(7, '0').split('').reverse();
  const count = information.filter((bit) => bit === '0').length;
  return [...information, ...count.toString(2).padStart(3, '0')].join('');
}
