/** A part of a WAV file. */
export interface Chunk {
  readonly name: string;
  /** Size as the file gives it. */
  readonly declared: number;
  readonly start: number;
  readonly end: number;
}

const MOST_CHUNKS = 10_000;

/**
 * The chunks in order. One that runs past the end of the file ends there, and so does a data chunk of size 0 with
 * something after it that is not a chunk: a recorder that was cut off never wrote the length of its data.
 */
export function chunksOf(view: DataView): readonly Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 12; at + 8 <= view.byteLength && chunks.length < MOST_CHUNKS; ) {
    const name = textAt(view, at);
    const declared = view.getUint32(at + 4, true);
    const start = at + 8;
    const size =
      name === 'data' && declared === 0 && !isChunkAt(view, start) ? view.byteLength - start : declared;
    chunks.push({ name, declared, start, end: Math.min(start + size, view.byteLength) });
    // Chunks begin at even places.
    at = start + size + (size & 1);
  }
  return chunks;
}

/** Whether a whole chunk with a name of printable characters begins here. */
function isChunkAt(view: DataView, at: number): boolean {
  if (at + 8 > view.byteLength || !/^[ -~]{4}$/.test(textAt(view, at))) return false;
  return at + 8 + view.getUint32(at + 4, true) <= view.byteLength;
}

/** Four bytes as characters. */
export function textAt(view: DataView, at: number): string {
  return String.fromCharCode(
    view.getUint8(at),
    view.getUint8(at + 1),
    view.getUint8(at + 2),
    view.getUint8(at + 3),
  );
}
