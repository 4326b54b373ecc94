import { Buffer } from 'node:buffer';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDecoder } from '../../src/sentence/frame/encoding.ts';
import {
  createSentenceReader,
  createSentenceRepairer,
  findFaults,
  readSentences,
} from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Byte-order marks: The Unicode Standard, section 23.8. The encoders are those of Node.
const log =
  line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E') + line('CDDSE,1,1,A,2329991420,00,33001200');
const bigEndian = (text: string): Buffer => Buffer.from(text, 'utf16le').swap16();
const files = {
  'UTF-8 with a mark': Buffer.from(`\ufeff${log}`, 'utf8'),
  'UTF-16, low byte first': Buffer.from(`\ufeff${log}`, 'utf16le'),
  'UTF-16, high byte first': bigEndian(`\ufeff${log}`),
  'text that still has its mark': `\ufeff${log}`,
} as const;

describe('a log that an editor saved', () => {
  it.each(Object.entries(files))('as %s is read like its plain text', (_, file) => {
    const plain = readSentences(log);
    expect(readSentences(file)).toEqual(plain);
    expect(findFaults(file).findings).toEqual(findFaults(log).findings);
    const reader = createSentenceReader();
    const pieces = typeof file === 'string' ? [...file] : [...file].map((byte) => Uint8Array.of(byte));
    const readings = pieces.flatMap((piece) => reader.push(piece)).concat(reader.flush());
    expect(readings.at(-1)).toEqual(plain.at(-1));
    expect(readings.every(({ notices }) => notices.length === 0)).toBe(true);
  });

  it('in an encoding without a mark is read byte by byte', () => {
    const name = line('GPWPL,5620.0000,N,00630.0000,W,CAF\u00c9');
    expect(readSentences(Buffer.from(name, 'latin1'))).toMatchObject([{ waypoint: { name: 'CAF\u00c9' } }]);
    expect(readSentences(Buffer.from(`\ufeff${name}`, 'utf8'))).toMatchObject([
      { waypoint: { name: 'CAF\u00c9' } },
    ]);
  });

  it.each(['utf8', 'utf16le'] as const)(
    'in %s comes out as Node decodes it, wherever it is cut',
    (encoding) => {
      const text = fc.string({ unit: 'grapheme', maxLength: 12 });
      fc.assert(
        fc.property(text, fc.integer({ min: 1, max: 5 }), (body, size) => {
          const bytes = Buffer.from(`\ufeff${body}`, encoding);
          let out = '';
          const decoder = createDecoder();
          for (let from = 0; from < bytes.length; from += size)
            decoder.decode(bytes.subarray(from, from + size), (piece) => (out += piece));
          decoder.flush((piece) => (out += piece));
          expect(out).toBe(Buffer.from(body, encoding).toString(encoding));
        }),
      );
    },
  );

  it('has its mark taken off at its beginning alone', () => {
    const [call = '', expansion = ''] = log.split(/(?<=\n)/);
    const read = (...pieces: string[]): string[] => {
      const reader = createSentenceReader();
      return [...pieces.flatMap((piece) => reader.push(piece)), ...reader.flush()].flatMap(({ notices }) =>
        notices.map(({ code }) => code),
      );
    };
    expect(read(`\ufeff${call}`, expansion)).toEqual([]);
    expect(read('', `\ufeff${call}`, expansion)).toEqual([]);
    expect(read(call, `\ufeff${expansion}`)).toEqual(['sentence-leading-characters']);
    expect(read('\ufeff', `\ufeff${log}`)).toContain('sentence-leading-characters');
  });

  // Well-formed sequences: The Unicode Standard, table 3-7; a byte of any other is shown as it is (our own choice).
  it.each([
    ['cut off, not the character it might have been', [0xe2, 0x82], '\u00e2\u0082'],
    ['with a byte missing', [0xc3, 0x28], '\u00c3('],
    ['with a byte that never occurs', [0xff, 0xf8, 0x80, 0x80, 0x80], '\u00ff\u00f8\u0080\u0080\u0080'],
    ['for a number beyond the last', [0xf4, 0x90, 0x80, 0x80], '\u00f4\u0090\u0080\u0080'],
    ['too long for its number', [0xc1, 0x81], '\u00c1\u0081'],
  ])('keeps every byte of a malformed character: %s', (_, bytes, expected) => {
    for (const size of [1, 2, 12]) expect(decoded([0xef, 0xbb, 0xbf, ...bytes], size)).toBe(expected);
  });

  it.each([
    [[0xc2, 0x80], 0x80],
    [[0xc2, 0xb0], 0xb0],
    [[0xdf, 0xbf], 0x7ff],
    [[0xe0, 0xa0, 0x80], 0x800],
    [[0xef, 0xbf, 0xbf], 0xffff],
    [[0xf0, 0x90, 0x80, 0x80], 0x10000],
    [[0xf4, 0x8f, 0xbf, 0xbf], 0x10ffff],
  ])('reads %j as the character it is', (bytes, code) => {
    for (const size of [1, 2, 12])
      expect(decoded([0xef, 0xbb, 0xbf, ...bytes], size)).toBe(String.fromCodePoint(code));
  });

  it('shows what still waits at its end byte by byte', () => {
    expect(decoded([0xef, 0xbb])).toBe('\u00ef\u00bb');
    expect(decoded([0xff])).toBe('\u00ff');
    expect(decoded([0xff, 0xfe, 0x41, 0x00, 0x42])).toBe('AB');
    expect(decoded([0xfe, 0xff, 0x00, 0x41, 0x42])).toBe('AB');
    expect(decoded([])).toBe('');
    const reader = createSentenceReader();
    expect(reader.push(Uint8Array.of(0xef, 0xbb))).toEqual([]);
    expect(reader.flush()).toMatchObject([{ kind: 'damaged', text: '\u00ef\u00bb' }]);
  });

  it('is given on as it comes: only what may be half a character waits', () => {
    const decoder = createDecoder();
    const given = (...bytes: number[]): string => {
      let out = '';
      decoder.decode(Uint8Array.from(bytes), (piece) => (out += piece));
      return out;
    };
    expect([given(0xef, 0xbb), given(0xbf, 0x41), given(0xc3), given(0xa9, 0xff, 0x42)]).toEqual([
      '',
      'A',
      '',
      '\u00e9\u00ffB',
    ]);
  });
});

/** What the decoder makes of a stream in pieces of so many bytes. */
function decoded(bytes: readonly number[], size = 12): string {
  let out = '';
  const decoder = createDecoder();
  for (let from = 0; from < bytes.length; from += size)
    decoder.decode(Uint8Array.from(bytes.slice(from, from + size)), (piece) => (out += piece));
  decoder.flush((piece) => (out += piece));
  return out;
}

/** Bytes whose buffer was given to another thread. */
function detached(): Uint8Array {
  const bytes = new TextEncoder().encode(log);
  structuredClone(bytes.buffer, { transfer: [bytes.buffer] });
  return bytes;
}

/** Bytes that throw when they are looked at as an object. */
function thorny(): Uint8Array {
  const bytes = new TextEncoder().encode(log);
  for (const name of ['length', 'subarray', 'slice', 'constructor', Symbol.toStringTag, Symbol.iterator]) {
    Object.defineProperty(bytes, name, {
      get() {
        throw new Error('a trap');
      },
    });
  }
  return bytes;
}

describe('bytes that cannot be taken', () => {
  it('are told as damage, and nothing is thrown', () => {
    for (const bytes of [detached(), thorny()]) {
      expect(readSentences(bytes)).toMatchObject([
        { kind: 'damaged', issues: [{ code: 'sentence-not-text' }] },
      ]);
      expect(findFaults(bytes).sentences).toBe(0);
      expect(() => createSentenceRepairer().push(bytes)).toThrow(TypeError);
    }
  });

  it('and options that are null are options left out', () => {
    expect(readSentences(log, null as never)).toEqual(readSentences(log));
    expect(createSentenceReader(null as never).push(log)).toEqual(createSentenceReader().push(log));
    expect(findFaults(log, null as never)).toEqual(findFaults(log));
    expect(createSentenceRepairer(null as never).push(log)).toEqual(createSentenceRepairer().push(log));
  });
});
