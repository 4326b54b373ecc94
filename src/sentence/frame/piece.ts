import type { Issue } from '../../result/index.ts';

/** What the functions of this room take for a stream or a piece of it. */
export const PIECE_WANTED = 'text or a Uint8Array';

/** Whether a value is a piece of a stream, whatever a program without types handed over; a `Uint8Array` of another realm is one too. */
export function isPiece(value: unknown): value is string | Uint8Array {
  if (typeof value === 'string') return true;
  return ArrayBuffer.isView(value) && Object.prototype.toString.call(value) === '[object Uint8Array]';
}

/** A value that is neither text nor bytes: nothing was received, but it must not pass in silence. */
export function notText(value: unknown, expected: string): Issue {
  const received = typeName(value);
  return {
    code: 'sentence-not-text',
    message: `The input is not ${expected} but of type ${received}`,
    at: [],
    expected,
    received,
  };
}

/** Type of a value in one word, without looking into it. */
export function typeName(value: unknown): string {
  return value === null ? 'null' : typeof value;
}
