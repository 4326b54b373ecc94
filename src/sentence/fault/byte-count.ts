/** What the bytes of a stream look like, before any sentence is sought in them. */
export interface ByteCount {
  count: number;
  /** Whether a byte is no blank and no line end. */
  visible: boolean;
  /** Bytes that no sentence can hold: above 7E hex, or control characters other than tab and line ends. */
  foreign: number;
  /** Lines, the last one without an end included, empty ones too. */
  lines: number;
  /** The byte counted last, `null` before the first. */
  last: number | null;
  /** Bytes whose bits are at most two runs, as a slow line gives them to a fast port: each bit is read several times. */
  smeared: number;
}

export function countBytes(count: ByteCount, piece: string): void {
  for (let index = 0; index < piece.length; index += 1) {
    const code = piece.charCodeAt(index);
    const { last } = count;
    count.count += 1;
    // A line begins with whatever follows a line end; the LF of a CR LF belongs to it.
    if (last === null || last === 0x0a || (last === 0x0d && code !== 0x0a)) count.lines += 1;
    count.last = code;
    if (code === 0x20 || code === 0x0d || code === 0x0a || code === 0x09) continue;
    count.visible = true;
    if (code < 0x20 || code > 0x7e) {
      count.foreign += 1;
      if (isSmeared(code)) count.smeared += 1;
    }
  }
}

/** Fewer are not enough to judge a speed by. */
const LEAST_BYTES = 16;

/** Whether the stream is no text at all: nothing sound in it, and many bytes that no sentence can hold. */
export function isGarbage(count: ByteCount, sentences: number): boolean {
  return sentences === 0 && count.count >= LEAST_BYTES && count.foreign * 5 > count.count;
}

/** 00, FF, and all ones above or below all zeros. */
function isSmeared(code: number): boolean {
  const byte = code & 0xff;
  const turned = byte & 1 ? byte : ~byte & 0xff;
  return code <= 0xff && (turned & (turned + 1)) === 0;
}
