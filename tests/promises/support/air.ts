// A call on the air, from the published description alone: the ten-bit code, phasing, time diversity and error check of
// ITU-R M.493. Nothing of the code under test is used.
//
// Sources: code rule and table rows 00 to 45, Japanese inspection training texts of 1998 and 2002; phasing, order and
// closing characters, Japan, Ministry of Posts and Telecommunications Notification 567 of 1990; the rest of the
// interleave and the rule of the error check from memory of ITU-R M.493; the expansion's place from memory of M.821.
// tests/promises/air.test.ts holds this file to the printed sequences of shared/.

/** Information characters of a call, format specifier twice, up to and with one end of sequence. */
export type Characters = readonly number[];

/** Ten bits of a symbol: seven of information, least significant first, then the count of zeros among them. */
export function tenBits(symbol: number): number[] {
  const information = Array.from({ length: 7 }, (_, bit) => (symbol >> bit) & 1);
  const zeros = information.filter((bit) => bit === 0).length;
  return [...information, (zeros >> 2) & 1, (zeros >> 1) & 1, zeros & 1];
}

/** Exclusive-or of the characters, the format specifier once and the end of sequence once. */
export function check(characters: Characters): number {
  return characters.slice(1).reduce((sum, symbol) => sum ^ symbol, 0);
}

/** An expansion behind the call: its data symbols, without the end of sequence. */
export interface Airborne {
  readonly characters: Characters;
  readonly expansion?: readonly number[] | undefined;
  /** Sent in place of the right error check. */
  readonly wrongCheck?: number | undefined;
}

/** The symbols in order of transmission, phasing first. */
export function stream({ characters, expansion, wrongCheck }: Airborne): number[] {
  const end = characters.at(-1) as number;
  const sent = [...characters, wrongCheck ?? check(characters)];
  const closing = [end, end];
  const dx = [125, 125, 125, 125, 125, 125, ...sent, ...closing];
  const rx = [111, 110, 109, 108, 107, 106, 105, 104, ...sent];
  if (expansion !== undefined) {
    const sum = [...expansion, end].reduce((left, right) => left ^ right, 0);
    dx.push(...expansion, end, sum, ...closing);
    rx.push(...closing, ...expansion, end, sum);
  }
  return dx.flatMap((symbol, slot) => [symbol, rx[slot] as number]);
}

/** The bits on the air: twenty dots, of either polarity, then the symbols. */
export function bitsOf(call: Airborne, firstDot = 1): Uint8Array {
  const dots = Array.from({ length: 20 }, (_, at) => (at & 1) ^ firstDot);
  return Uint8Array.from([...dots, ...stream(call).flatMap(tenBits)]);
}
