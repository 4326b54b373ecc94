import type { Issue } from '../../result/index.ts';
import { issue } from '../texts.ts';

/** What the functions of this room take for a stream or a piece of it. */
export const PIECE_WANTED = 'text or a Uint8Array';

/**
 * The piece of a stream that a program handed over, or `null` when it is none; a `Uint8Array` of another realm is one
 * too. Bytes are copied, so that a buffer given away, or an object that only looks like bytes, fails here alone.
 */
export function pieceOf(value: unknown): string | Uint8Array | null {
  if (typeof value === 'string') return value;
  try {
    const isBytes =
      ArrayBuffer.isView(value) && Object.prototype.toString.call(value) === '[object Uint8Array]';
    return isBytes ? new Uint8Array(value as Uint8Array) : null;
  } catch {
    return null;
  }
}

/** A value that is neither text nor bytes: nothing was received, but it must not pass in silence. */
export function notText(value: unknown, accepted: 'text' | 'stream'): Issue {
  return issue('sentence-not-text', { accepted }, { received: typeName(value) });
}

/** Type of a value in one word, without looking into it. */
export function typeName(value: unknown): string {
  return value === null ? 'null' : typeof value;
}
