import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWav, writeWav } from '../../src/audio/index.ts';
import type { WavFormat } from '../../src/audio/wav/read.ts';

const formats: readonly WavFormat[] = ['int8', 'int16', 'int24', 'int32', 'float32', 'float64'];

/** Largest error that storing a sample between -1 and 1 may cost: half a step, a whole one at +1 where integers stop short. */
const tolerance: Record<WavFormat, number> = {
  int8: 1 / 128,
  int16: 1 / 32_768,
  int24: 1 / 8_388_608,
  int32: 2 ** -24,
  float32: 0,
  float64: 0,
};

/** A file written out by hand, byte for byte: RIFF and WAVE as of 1991, from memory. */
function wavBytes(parts: readonly (string | number | readonly [number, 2 | 4])[]): Uint8Array {
  const bytes: number[] = [];
  for (const part of parts) {
    if (typeof part === 'string') for (const character of part) bytes.push(character.charCodeAt(0));
    else if (typeof part === 'number') bytes.push(part);
    else for (let n = 0; n < part[1]; n++) bytes.push(Math.floor(part[0] / 256 ** n) % 256);
  }
  return Uint8Array.from(bytes);
}

const header = (tag: number, channels: number, rate: number, frame: number, bits: number) =>
  ['fmt ', [16, 4], [tag, 2], [channels, 2], [rate, 4], [rate * frame, 4], [frame, 2], [bits, 2]] as const;

describe('writeWav and readWav', () => {
  it.each(formats)('keep every sample in %s', (format) => {
    fc.assert(
      fc.property(
        fc.array(fc.float({ min: -1, max: 1, noNaN: true })),
        fc.integer({ min: 1, max: 4e9 }),
        (list, sampleRate) => {
          const result = readWav(writeWav(list, { sampleRate, format }));
          expect(result).toMatchObject({
            ok: true,
            notices: list.length === 0 ? [{ code: 'audio-wav-empty' }] : [],
            value: { sampleRate, format, channelCount: 1 },
          });
          if (!result.ok) return;
          expect(result.value.samples.length).toBe(list.length);
          result.value.samples.forEach((sample, n) => {
            expect(Math.abs(sample - (list[n] as number))).toBeLessThanOrEqual(tolerance[format]);
          });
        },
      ),
    );
  });

  it('holds what is too loud at full scale and writes no number as silence', () => {
    const result = readWav(writeWav([2, -2, Number.NaN, Number.POSITIVE_INFINITY], { sampleRate: 8000 }));
    expect(result.ok && [...result.value.samples]).toEqual([32_767 / 32_768, -1, 0, 32_767 / 32_768]);
  });

  it('refuses rates and formats that no file can carry', () => {
    for (const sampleRate of [0, -1, 1.5, Number.NaN, 2 ** 32])
      expect(() => writeWav([], { sampleRate })).toThrow(RangeError);
    expect(() => writeWav([], { sampleRate: 8000, format: 'toString' as WavFormat })).toThrow(RangeError);
  });

  it.each([
    [undefined, 'undefined'],
    [null, 'null'],
    ['0.5', 'string'],
    [{}, 'object'],
    [{ length: -1 }, 'object'],
    [{ length: 1.5 }, 'object'],
    [{ length: '2' }, 'object'],
  ])('says that %j is no array of samples', (given, name) => {
    expect(() => writeWav(given as unknown as number[], { sampleRate: 8000 })).toThrow(
      new TypeError(`writeWav: samples: expected an array of numbers, typed or not, got ${name}`),
    );
  });

  it('says that options are missing, and takes those that are undefined as left out', () => {
    for (const [options, name] of [
      [undefined, 'undefined'],
      [null, 'null'],
      [8000, 'number'],
    ])
      expect(() => writeWav([], options as unknown as { sampleRate: number })).toThrow(
        new TypeError(`writeWav: expected options with sampleRate, got ${name}`),
      );
    const file = writeWav([0.5], { sampleRate: 8000, format: undefined });
    expect(file).toEqual(writeWav([0.5], { sampleRate: 8000 }));
    for (const none of [undefined, null as unknown as undefined, { channel: undefined }])
      expect(readWav(file, none)).toEqual(readWav(file));
  });
});

describe('readWav', () => {
  it('reads a file made by hand: 16 bits, two channels, an unknown chunk of odd size before the data', () => {
    const file = wavBytes([
      'RIFF',
      [0, 4],
      'WAVE',
      'LIST',
      [3, 4],
      'abc',
      0,
      ...header(1, 2, 44_100, 4, 16),
      'data',
      [8, 4],
      [0x4000, 2],
      [0xc000, 2],
      [0x0001, 2],
      [0x8000, 2],
    ]);
    const left = readWav(file);
    const right = readWav(file, { channel: 1 });
    expect(left).toMatchObject({
      ok: true,
      notices: [],
      value: { sampleRate: 44_100, channelCount: 2, channel: 0 },
    });
    expect(left.ok && [...left.value.samples]).toEqual([0.5, 1 / 32_768]);
    expect(right.ok && [...right.value.samples]).toEqual([-0.5, -1]);
  });

  it('reads the extensible header', () => {
    const file = wavBytes([
      'RIFF',
      [0, 4],
      'WAVE',
      'fmt ',
      [40, 4],
      [0xfffe, 2],
      [1, 2],
      [48_000, 4],
      [192_000, 4],
      [4, 2],
      [32, 2],
      [22, 2],
      [32, 2],
      [4, 4],
      // KSDATAFORMAT_SUBTYPE_IEEE_FLOAT
      [3, 4],
      [0, 2],
      [0x10, 2],
      ...[0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71],
      'data',
      [4, 4],
      // 0.25 in IEEE 754
      [0x3e800000, 4],
    ]);
    const result = readWav(file);
    expect(result).toMatchObject({ ok: true, notices: [], value: { format: 'float32' } });
    expect(result.ok && [...result.value.samples]).toEqual([0.25]);
  });

  it('gives what is left of a file cut anywhere, with a notice', () => {
    const whole = writeWav([0.5, 0.25, -0.25, -0.5], { sampleRate: 8000 });
    for (let length = 0; length < whole.length; length++) {
      const result = readWav(whole.slice(0, length));
      if (length < 44) {
        expect(result.ok).toBe(false);
      } else {
        expect(result).toMatchObject({ ok: true, notices: [{ code: 'audio-wav-truncated' }] });
        expect(result.ok && result.value.samples.length).toBe(Math.floor((length - 44) / 2));
      }
    }
  });

  // As a recorder leaves it that was cut off before it could go back and write the size (common practice, no source).
  it('reads to the end what has no size, and says so', () => {
    const head = ['RIFF', [0, 4], 'WAVE', ...header(1, 1, 8000, 2, 16), 'data', [0, 4]] as const;
    const unset = { code: 'audio-wav-size-unset', at: ['data'] };
    const cut = { code: 'audio-wav-part-sample', params: { count: 1 }, at: ['data'] };
    const samples = [
      [0x4000, 2],
      [0xc000, 2],
      [0x2000, 2],
      [0, 2],
      [0x4000, 2],
    ] as const;
    const whole = readWav(wavBytes([...head, ...samples]));
    expect(whole).toMatchObject({ ok: true, notices: [{ ...unset, grade: 'note', received: '10' }] });
    expect(whole.ok && [...whole.value.samples]).toEqual([0.5, -0.5, 0.25, 0, 0.5]);
    const within = readWav(wavBytes([...head, [0x4000, 2], 7]));
    expect(within).toMatchObject({ ok: true, notices: [unset, cut] });
    expect(within.ok && [...within.value.samples]).toEqual([0.5]);
    // Sound that begins like the name of a chunk, but goes on like none.
    const loud = readWav(wavBytes([...head, 'LIST', [0x4000_4000, 4]]));
    expect(loud.ok && loud.value.samples).toHaveLength(4);
  });

  it('says that a file has no samples, other parts behind them or not', () => {
    const head = ['RIFF', [0, 4], 'WAVE', ...header(1, 1, 8000, 2, 16), 'data', [0, 4]] as const;
    for (const behind of [[], ['LIST', [4, 4], 'abcd'], ['note', [0, 4]]] as const)
      expect(
        readWav(wavBytes([...head, ...(behind as readonly (string | [number, 2 | 4])[])])),
      ).toMatchObject({
        ok: true,
        value: { samples: { length: 0 } },
        notices: [{ code: 'audio-wav-empty', grade: 'check', params: {}, at: ['data'] }],
      });
    // As written into a pipe, where the size is never known.
    const piped = wavBytes([...head.slice(0, -1), [0xffff_ffff, 4]]);
    expect(readWav(piped)).toMatchObject({ ok: true, notices: [{ code: 'audio-wav-empty' }] });
  });

  it.each([
    ['no WAV file', wavBytes(['RIFX', [4, 4], 'WAVE']), 'audio-wav-not-wav'],
    ['no header', wavBytes(['RIFF', [4, 4], 'WAVE', 'data', [0, 4]]), 'audio-wav-header'],
    [
      'no channel',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 0, 8000, 0, 16), 'data', [0, 4]]),
      'audio-wav-channels',
    ],
    [
      'no rate',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 1, 0, 2, 16), 'data', [0, 4]]),
      'audio-wav-rate',
    ],
    [
      'a compressed format',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(85, 1, 8000, 1, 0), 'data', [0, 4]]),
      'audio-wav-format',
    ],
    [
      'twelve bits',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 1, 8000, 2, 12), 'data', [0, 4]]),
      'audio-wav-format',
    ],
    ['no data', wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 1, 8000, 2, 16)]), 'audio-wav-no-data'],
  ])('says what is wrong with %s', (_, file, code) => {
    expect(readWav(file)).toMatchObject({ ok: false, issues: [{ code }] });
  });

  it('says that a channel is not there', () => {
    const file = writeWav([0], { sampleRate: 8000 });
    for (const channel of [1, -1, 0.5, Number.NaN, '0', Object.create(null), Symbol('0')] as number[]) {
      expect(readWav(file, { channel })).toMatchObject({
        ok: false,
        issues: [{ code: 'audio-wav-channel' }],
      });
    }
  });

  it('repairs a header whose frame size is wrong, and says so', () => {
    const file = wavBytes([
      'RIFF',
      [0, 4],
      'WAVE',
      ...header(1, 1, 8000, 7, 16),
      'data',
      [4, 4],
      [0x4000, 2],
      [0x2000, 2],
    ]);
    const result = readWav(file);
    expect(result).toMatchObject({
      ok: true,
      notices: [{ code: 'audio-wav-frame', params: { bytes: 2 }, received: '7' }],
    });
    expect(result.ok && [...result.value.samples]).toEqual([0.5, 0.25]);
  });

  it('never throws, whatever the bytes', () => {
    const whole = writeWav([0.5, 0.25, -0.25, -0.5], { sampleRate: 8000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255))),
        fc.uint8Array(),
        (changes, tail) => {
          const bytes = Uint8Array.from([...whole, ...tail]);
          for (const [at, value] of changes) bytes[at] = value;
          const result = readWav(bytes);
          expect(result.ok ? result.value.samples.length : result.issues.length).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 1000 },
    );
    for (const input of [undefined, null, 'RIFF', new ArrayBuffer(44), {}]) {
      expect(readWav(input as unknown as Uint8Array)).toMatchObject({
        ok: false,
        issues: [{ code: 'audio-wav-not-bytes' }],
      });
    }
  });
});
