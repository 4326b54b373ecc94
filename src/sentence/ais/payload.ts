/** The bits of an AIS message, as its six-bit groups. */
export interface Payload {
  /** Values 0–63. */
  readonly groups: readonly number[];
  /** Count of bits, fill bits taken off. */
  readonly length: number;
}

/**
 * The six-bit groups of an armoured payload (IEC 61162-1, six-bit binary field conversion): characters
 * `0`–`W` are 0–39, `` ` ``–`w` are 40–63. It has no other characters.
 */
export function groupsOf(armoured: string): number[] {
  const groups: number[] = [];
  for (let index = 0; index < armoured.length; index += 1) {
    const code = armoured.charCodeAt(index);
    groups.push(code - (code < 0x60 ? 0x30 : 0x38));
  }
  return groups;
}

/** An unsigned number of at most 30 bits; bits after the end count as 0. */
export function unsigned({ groups }: Payload, from: number, count: number): number {
  let value = 0;
  for (let bit = from; bit < from + count; ) {
    const within = bit % 6;
    const taken = Math.min(6 - within, from + count - bit);
    const group = groups[(bit - within) / 6] ?? 0;
    value = (value << taken) | ((group >> (6 - within - taken)) & ((1 << taken) - 1));
    bit += taken;
  }
  return value;
}

/** A number in two's complement of at most 30 bits. */
export function signed(payload: Payload, from: number, count: number): number {
  const value = unsigned(payload, from, count);
  return value >= 2 ** (count - 1) ? value - 2 ** count : value;
}

/** Six-bit text (ITU-R M.1371-6, table of six-bit ASCII) up to its first `@`. */
export function characters(payload: Payload, from: number, count: number): string {
  let out = '';
  for (let bit = from; bit + 6 <= Math.min(from + count, payload.length); bit += 6) {
    const value = unsigned(payload, bit, 6);
    if (value === 0) break;
    out += String.fromCharCode(value < 32 ? value + 64 : value);
  }
  return out;
}
