import { tenBits } from './burst-code.ts';

/**
 * The sequence of ITU-R M.493 laid out slot by slot. RX phasing numbers and their names RX7 to RX0: Japan, Ministry
 * of Posts and Telecommunications Notification 567 of 1990. Six DX phasing symbols 125, each character again
 * after four others: Nippon Foundation text of 1998. Places of the end of sequence and the error check: from memory.
 *
 * @param characters - format specifier once, end of sequence last
 */
export function slotStream(characters: readonly number[]): number[] {
  const end = characters[characters.length - 1] as number;
  let check = 0;
  for (const character of characters) check ^= character;
  const dx: number[] = [];
  const rx: number[] = [];
  for (let slot = 0; slot < 6; slot++) dx[slot] = 125;
  for (let slot = 0; slot < 8; slot++) rx[slot] = 111 - slot;
  const information = [characters[0] as number, ...characters.slice(0, -1)];
  information.forEach((character, index) => {
    dx[6 + index] = character;
    rx[8 + index] = character;
  });
  const n = information.length;
  dx[6 + n] = end;
  dx[7 + n] = check;
  dx[8 + n] = end;
  dx[9 + n] = end;
  rx[8 + n] = end;
  rx[9 + n] = check;
  const stream: number[] = [];
  for (let slot = 0; slot < dx.length; slot++) stream.push(dx[slot] as number, rx[slot] as number);
  return stream;
}

/** The same as bits, twenty of dot pattern first. */
export function slotBits(characters: readonly number[]): string {
  return '10'.repeat(10) + slotStream(characters).map(tenBits).join('');
}
