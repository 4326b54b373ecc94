import type { Issue } from '../../result/index.ts';
import { issue } from '../texts.ts';

/** Turns the bytes of a stream into text, one character a byte unless a byte-order mark says otherwise. */
interface Decoder {
  /** Gives the text of the bytes in pieces; what may be half a character waits for the next bytes. */
  decode(bytes: Uint8Array, onText: (text: string) => void): void;
  /** Ends the stream: gives what still waited. */
  flush(onText: (text: string) => void): void;
}

type Encoding = 'bytes' | 'utf-8' | 'utf-16le' | 'utf-16be';

const AT_ONCE = 4096;
/** Byte-order marks (The Unicode Standard, section 23.8). A wire carries none, a log saved by an editor may. */
const MARKS: readonly (readonly [Encoding, readonly number[]])[] = [
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
];

/** A decoder at the beginning of a stream. It never holds more than three bytes. */
export function createDecoder(): Decoder {
  let encoding: Encoding | null = null;
  let held: Uint8Array = new Uint8Array(0);

  return {
    decode(chunk, onText) {
      let bytes = joined(held, chunk);
      if (encoding === null) {
        const begun = beginningOf(bytes);
        held = bytes;
        if (begun === null) return;
        encoding = begun.encoding;
        bytes = bytes.subarray(begun.length);
      }
      held = bytes.slice(encoding === 'bytes' ? giveBytes(bytes, onText) : give(bytes, encoding, onText));
    },
    flush(onText) {
      giveBytes(held, onText);
      held = new Uint8Array(0);
    },
  };
}

/** The encoding that the first bytes show, and how long their mark is; `null` while they may still become one. */
function beginningOf(bytes: Uint8Array): { readonly encoding: Encoding; readonly length: number } | null {
  for (const [encoding, mark] of MARKS) {
    if (!mark.every((byte, index) => index >= bytes.length || bytes[index] === byte)) continue;
    return bytes.length < mark.length ? null : { encoding, length: mark.length };
  }
  return { encoding: 'bytes', length: 0 };
}

/** Gives each byte as the character of its number, and returns how many bytes that took: all. */
function giveBytes(bytes: Uint8Array, onText: (text: string) => void): number {
  for (let from = 0; from < bytes.length; from += AT_ONCE)
    onText(String.fromCharCode(...bytes.subarray(from, from + AT_ONCE)));
  return bytes.length;
}

/** Gives the characters that are there in full, and returns how many bytes they take. */
function give(bytes: Uint8Array, encoding: Encoding, onText: (text: string) => void): number {
  let text = '';
  let next = 0;
  while (next < bytes.length) {
    const [code, length] = characterAt(bytes, next, encoding);
    if (next + length > bytes.length) break;
    text += String.fromCodePoint(code);
    next += length;
  }
  onText(text);
  return next;
}

/** The character that begins here and how many bytes it takes; of a malformed one only the first byte. */
function characterAt(bytes: Uint8Array, at: number, encoding: Encoding): [code: number, length: number] {
  const [first = 0, second = 0] = bytes.subarray(at, at + 2);
  if (encoding === 'utf-16le') return [first | (second << 8), 2];
  if (encoding === 'utf-16be') return [(first << 8) | second, 2];
  const length = first < 0xc2 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
  let code = length === 1 ? first : first & (0xff >> length);
  for (let index = 1; index < length && at + index < bytes.length; index += 1) {
    const byte = bytes[at + index] ?? 0;
    if ((byte & 0xc0) !== 0x80) return [first, 1];
    code = (code << 6) | (byte & 0x3f);
  }
  return code > 0x10ffff ? [first, 1] : [code, length];
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  const both = new Uint8Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

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
