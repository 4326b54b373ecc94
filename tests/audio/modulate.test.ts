import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modulate } from '../../src/audio/index.ts';
import { slowSample } from '../oracle/audio-modulator.ts';

// Compositions and their sources stand beside each entry of the file.
const { sequences } = JSON.parse(
  readFileSync(new URL('../../shared/burst/worked-sequences.json', import.meta.url), 'utf8'),
) as { sequences: { name: string; bits: string; stream: number[] }[] };

const invert = (bits: string): string => bits.replace(/[01]/g, (bit) => (bit === '1' ? '0' : '1'));
const bitsOf = (name: string): string => sequences.find((entry) => entry.name === name)?.bits as string;
const anyBits = fc.array(fc.boolean(), { maxLength: 300 }).map((list) => list.map(Number).join(''));

describe('modulate', () => {
  it('is the plain waveform of ITU-R M.493-16 Annex 1 section 1 at any rate and any instant of starting', () => {
    fc.assert(
      fc.property(
        anyBits,
        fc.double({ min: 8000, max: 192_000, noNaN: true }),
        fc.double({ min: 0, max: 0.01, noNaN: true }),
        (bits, sampleRate, leadInSeconds) => {
          const samples = modulate(bits, { sampleRate, leadInSeconds, amplitude: 1, allowDistress: true });
          expect(Math.abs(samples.length - (leadInSeconds + bits.length / 1200) * sampleRate)).toBeLessThan(
            1,
          );
          for (let n = 0; n < samples.length; n += 7) {
            const time = n / sampleRate - leadInSeconds;
            // Beside a boundary between bits rounding may choose either; the wave is continuous, its ends are not.
            if (Math.abs(time) < 1e-9 || Math.abs(time - bits.length / 1200) < 1e-9) continue;
            expect(samples[n]).toBeCloseTo(slowSample(bits, time), 5);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('keeps time over a long run: the last bit of ten minutes begins where it must', () => {
    const bits = '01'.repeat(360_000);
    const samples = modulate(bits, { sampleRate: 8000, amplitude: 1 });
    expect(samples.length).toBe(4_800_000);
    for (const n of [4_799_990, 4_799_994, 4_799_999])
      expect(samples[n]).toBeCloseTo(slowSample(bits, n / 8000), 4);
  });

  it('has no jump at a change of tone', () => {
    const samples = modulate(bitsOf('test-call'), { sampleRate: 192_000, amplitude: 1 });
    let step = 0;
    for (let n = 1; n < samples.length; n++) {
      step = Math.max(step, Math.abs((samples[n] as number) - (samples[n - 1] as number)));
    }
    expect(step).toBeLessThan((2 * Math.PI * 2100) / 192_000 + 1e-6);
  });

  it('takes amplitude, phase, lead-in and tail', () => {
    const samples = modulate('1', {
      sampleRate: 48_000,
      amplitude: 0.25,
      startPhase: 0.25,
      leadInSeconds: 0.001,
      tailSeconds: 0.002,
    });
    expect(samples.length).toBe(48 + 40 + 96);
    expect([samples[47], samples[48], samples[88]]).toEqual([0, 0.25, 0]);
  });

  it('takes options that are undefined as left out', () => {
    const none = {
      amplitude: undefined,
      preEmphasis: undefined,
      leadInSeconds: undefined,
      tailSeconds: undefined,
      startPhase: undefined,
      allowDistress: undefined,
    };
    expect(modulate('10', { sampleRate: 8000, ...none })).toEqual(modulate('10', { sampleRate: 8000 }));
  });

  it('makes 1300 Hz 4.2 dB weaker with pre-emphasis of 6 dB an octave', () => {
    const peak = (bits: string): number =>
      modulate(bits, { sampleRate: 192_000, amplitude: 1, preEmphasis: true }).reduce(
        (a, b) => Math.max(a, Math.abs(b)),
        0,
      );
    expect(peak('00')).toBeCloseTo(1, 3);
    expect(20 * Math.log10(peak('11'))).toBeCloseTo(20 * Math.log10(1300 / 2100), 2);
  });

  it('throws on what is no bit and no rate', () => {
    expect(() => modulate('10a', { sampleRate: 8000 })).toThrow(TypeError);
    for (const given of [undefined, null, 10, {}, { bits: 10 }])
      expect(() => modulate(given as unknown as string, { sampleRate: 8000 })).toThrow(
        new TypeError("modulate: bits: expected a string of '0' and '1'"),
      );
    for (const [options, name] of [
      [undefined, 'undefined'],
      [null, 'null'],
      [8000, 'number'],
    ])
      expect(() => modulate('10', options as unknown as { sampleRate: number })).toThrow(
        new TypeError(`modulate: expected options with sampleRate, got ${name}`),
      );
    for (const sampleRate of [0, 7999, 192_001, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => modulate('10', { sampleRate })).toThrow(RangeError);
    }
    for (const amplitude of [0, -1, 1.01, Number.NaN])
      expect(() => modulate('1', { sampleRate: 8000, amplitude })).toThrow(RangeError);
    for (const leadInSeconds of [-1, Number.NaN, 1e9])
      expect(() => modulate('1', { sampleRate: 8000, leadInSeconds })).toThrow(RangeError);
  });
});

describe('distress bursts stay off the air', () => {
  const distress = sequences.filter(({ name }) => name.startsWith('distress'));
  const others = sequences.filter(({ name }) => !name.startsWith('distress'));

  it('knows both kinds', () => {
    expect([distress.length, others.length]).toEqual([3, 10]);
  });

  it.each(distress.map(({ name, bits }) => [name, bits]))(
    'refuses %s, whatever surrounds it and in either polarity',
    (_, bits) => {
      for (const disguised of [
        bits,
        invert(bits),
        bits.slice(20),
        bits.slice(90),
        `111${bits}`,
        bitsOf('test-call') + bits,
      ]) {
        expect(() => modulate(disguised, { sampleRate: 8000 })).toThrow(/allowDistress.*test call/);
        expect(modulate(disguised, { sampleRate: 8000, allowDistress: true }).length).toBeGreaterThan(0);
      }
      expect(() => modulate({ bits }, { sampleRate: 8000 })).toThrow(RangeError);
      expect(() => modulate({ bits }, { sampleRate: 8000, allowDistress: false })).toThrow(RangeError);
    },
  );

  it('refuses when one copy alone says distress', () => {
    const bits = bitsOf('distress-alert-full');
    // Format specifier: DX slots 6 and 7, RX slots 8 and 9. Three of the four are spoilt.
    for (const kept of [12, 14, 17, 19]) {
      const spoilt = [12, 14, 17, 19]
        .filter((position) => position !== kept)
        .reduce(
          (all, position) => `${all.slice(0, 20 + 10 * position)}1111111111${all.slice(30 + 10 * position)}`,
          bits,
        );
      expect(() => modulate(spoilt, { sampleRate: 8000 })).toThrow(RangeError);
    }
  });

  it('refuses what a receiver reads in spite of wrong bits', () => {
    const flip = (bits: string, at: number) =>
      bits.slice(0, at) + (bits[at] === '1' ? '0' : '1') + bits.slice(at + 1);
    for (const { bits } of distress) {
      // One wrong bit in each word of DX phasing; then in each word of the burst.
      const positions = Array.from({ length: (bits.length - 20) / 10 }, (_, position) => position);
      for (const words of [[0, 2, 4, 6, 8, 10], positions]) {
        const spoilt = words.reduce((all, position) => flip(all, 20 + 10 * position + (position % 10)), bits);
        for (const disguised of [spoilt, bitsOf('test-call') + spoilt, invert(spoilt)])
          expect(() => modulate(disguised, { sampleRate: 8000 })).toThrow(/allowDistress/);
      }
    }
  });

  it.each(others.map(({ name, bits }) => [name, bits]))('lets %s pass', (_, bits) => {
    expect(modulate(bits, { sampleRate: 8000 }).length).toBeGreaterThan(0);
    expect(modulate(bits + bits, { sampleRate: 8000 }).length).toBeGreaterThan(0);
  });
});
