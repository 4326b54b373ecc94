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

  it('keeps every byte of a malformed one', () => {
    const bytes = [0xef, 0xbb, 0xbf, 0xc3, 0x28, 0xff, 0xf4, 0xbf, 0xbf, 0xbf, 0xe2, 0x82];
    let out = '';
    const decoder = createDecoder();
    decoder.decode(Uint8Array.from(bytes), (piece) => (out += piece));
    decoder.flush((piece) => (out += piece));
    expect(out.startsWith('\u00c3(\u00ff\u00f4\u00bf\u00bf\u00bf')).toBe(true);
  });
});

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
