import type { NetworkFrame } from '../../src/network/index.ts';

export function bytesOf(hex: string): Uint8Array {
  return Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

export function hexOf(bytes: Uint8Array): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Frames of a fast packet, cut by the rule of its public description and apart from the library. */
export function framesOf(
  { pgn, priority = 4, source = 3 }: { pgn: number; priority?: number; source?: number },
  payload: Uint8Array,
  sequence = 0,
): NetworkFrame[] {
  const id = Number.parseInt(
    `${((priority << 2) | (pgn >> 16)).toString(16)}${(pgn & 0xffff).toString(16).padStart(4, '0')}${source.toString(16).padStart(2, '0')}`,
    16,
  );
  const rest = [payload.length, ...payload];
  const frames: NetworkFrame[] = [];
  for (let number = 0; rest.length > 0 || number === 0; number++) {
    const body = rest.splice(0, 7);
    while (body.length < 7) body.push(0xff);
    frames.push({ id, data: Uint8Array.from([(sequence << 5) | number, ...body]) });
  }
  return frames;
}
