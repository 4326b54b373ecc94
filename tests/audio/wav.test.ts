import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWav, type WavFormat, writeWav } from '../../src/audio/index.ts';

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
            notices: [],
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

  it.each([
    ['no WAV file', wavBytes(['RIFX', [4, 4], 'WAVE']), 'audio-wav-not-wav'],
    ['no header', wavBytes(['RIFF', [4, 4], 'WAVE', 'data', [0, 4]]), 'audio-wav-header'],
    [
      'no channel',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 0, 8000, 0, 16), 'data', [0, 4]]),
      'audio-wav-header',
    ],
    [
      'no rate',
      wavBytes(['RIFF', [0, 4], 'WAVE', ...header(1, 1, 0, 2, 16), 'data', [0, 4]]),
      'audio-wav-header',
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
    for (const channel of [1, -1, 0.5, Number.NaN]) {
      expect(readWav(file, { channel })).toMatchObject({
        ok: false,
        issues: [{ code: 'audio-wav-channel' }],
      });
    }
  });

  it('mends a header whose frame size is wrong, and says so', () => {
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
    expect(result).toMatchObject({ ok: true, notices: [{ code: 'audio-wav-header' }] });
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
        issues: [{ code: 'audio-wav-not-wav' }],
      });
    }
  });
});
