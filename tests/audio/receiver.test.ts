import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Path, throughPath } from '../../bench/receiver/channel.ts';
import { randomFrom } from '../../bench/receiver/random.ts';
import { createReceiver, type HeardBurst, modulate } from '../../src/audio/index.ts';
import { encodeCall } from '../../src/burst/index.ts';
import { composeTestCall } from '../../src/call/index.ts';
import { english } from '../../src/locale/en.ts';
import { type Translatable, translate } from '../../src/locale/index.ts';
import type { Issue } from '../../src/result/index.ts';

interface Worked {
  readonly name: string;
  readonly information: number[];
  readonly expansion?: object;
  readonly bits: string;
}

// Compositions and their sources stand beside each entry of the file.
const { sequences } = JSON.parse(
  readFileSync(new URL('../../shared/burst/worked-sequences.json', import.meta.url), 'utf8'),
) as { sequences: Worked[] };
const worked = (name: string): Worked => sequences.find((entry) => entry.name === name) as Worked;
const testCall = worked('test-call');
const invert = (bits: string): string => bits.replace(/[01]/g, (bit) => (bit === '1' ? '0' : '1'));

function receive(
  samples: ArrayLike<number>,
  sampleRate = 8000,
  cuts: readonly number[] = [],
): { heard: HeardBurst[]; issues: Issue[] } {
  const heard: HeardBurst[] = [];
  const issues: Issue[] = [];
  const receiver = createReceiver({
    sampleRate,
    onReception: (burst) => heard.push(burst),
    onIssue: (issue) => issues.push(issue),
  });
  let from = 0;
  for (const cut of [...[...cuts].sort((a, b) => a - b), samples.length]) {
    receiver.push(Array.prototype.slice.call(samples, from, cut));
    from = cut;
  }
  receiver.flush();
  return { heard, issues };
}

const plain: Path = { sampleRate: 8000, ebN0Db: 12, gain: 0.1, before: 0.1, behind: 0.1 };
const sound = (bits: string, path: Partial<Path> = {}, seed = 1): Float32Array =>
  throughPath(bits, { ...plain, ...path }, randomFrom(seed));

/** The one call heard, clean. */
function onlyClean(heard: readonly HeardBurst[], { information }: Worked): HeardBurst {
  expect(heard.map(({ reception }) => [reception.quality.verdict, reception.information])).toEqual([
    ['clean', information],
  ]);
  return heard[0] as HeardBurst;
}

/** Adds `other` to `samples` from sample `at` on. */
function mix(samples: Float32Array, other: ArrayLike<number>, at: number): Float32Array {
  for (let n = 0; n < other.length && at + n < samples.length; n++) {
    samples[at + n] = (samples[at + n] as number) + (other[n] as number);
  }
  return samples;
}

describe('worked sequences as sound', () => {
  it.each([8000, 11_025, 22_050, 44_100, 48_000, 192_000])(
    'are read at %i samples a second',
    (sampleRate) => {
      const gap = 0.0503;
      const parts = sequences.map(({ bits }) =>
        modulate(bits, { sampleRate, leadInSeconds: gap, allowDistress: true }),
      );
      const samples = new Float32Array(parts.reduce((sum, { length }) => sum + length, 0));
      const starts: number[] = [];
      let at = 0;
      for (const part of parts) {
        samples.set(part, at);
        starts.push(at + gap * sampleRate);
        at += part.length;
      }
      const { heard, issues } = receive(samples, sampleRate);
      expect(issues).toEqual([]);
      expect(heard.map(({ reception }) => reception.information)).toEqual(
        sequences.map(({ information }) => information),
      );
      heard.forEach((burst, n) => {
        const { bits, expansion } = sequences[n] as Worked;
        expect(burst.reception.quality).toMatchObject({
          verdict: 'clean',
          expansion: expansion ? 'read' : 'none',
        });
        expect(burst.polarity).toBe('normal');
        expect(Math.abs(burst.startSample - (starts[n] as number)) / sampleRate).toBeLessThan(0.03 / 1200);
        expect(
          Math.abs(burst.endSample - burst.startSample - (bits.length / 1200) * sampleRate) / sampleRate,
        ).toBeLessThan(0.03 / 1200);
        expect(burst.levelDb).toBeCloseTo(20 * Math.log10(0.5), 0);
        expect(Math.abs(burst.toneOffsetHz)).toBeLessThan(0.2);
        expect(Math.abs(burst.clockErrorPpm)).toBeLessThan(30);
        expect(Math.abs(burst.toneBalanceDb)).toBeLessThan(0.2);
        expect(burst.ebN0Db).toBeGreaterThan(25);
        expect(burst.snrDb).toBeCloseTo(burst.ebN0Db + 10 * Math.log10(1200 / 3000), 9);
      });
    },
  );
});

describe('createReceiver', () => {
  it('gives the same whatever the way the samples are cut up', () => {
    const samples = sound(testCall.bits + worked('group-routine').bits, { ebN0Db: 5, offsetHz: 7 });
    const whole = receive(samples);
    expect(whole.heard.length).toBe(2);
    fc.assert(
      fc.property(fc.array(fc.nat(samples.length), { maxLength: 40 }), (cuts) => {
        expect(receive(samples, 8000, cuts)).toEqual(whole);
      }),
      { numRuns: 4 },
    );
    expect(
      receive(
        samples,
        8000,
        Array.from({ length: samples.length }, (_, n) => n),
      ),
    ).toEqual(whole);
  });

  it('hears the five calls of a distress attempt, which follow one another without a gap', () => {
    const { bits, information } = worked('distress-alert-full');
    const { heard } = receive(sound(bits.repeat(5)));
    expect(heard.map(({ reception }) => reception.information)).toEqual(new Array(5).fill(information));
    expect(heard.map(({ event, reception }) => [event, reception.quality.calls])).toEqual(
      [1, 2, 3, 4, 5].map((calls) => [1, calls]),
    );
    for (const [n, burst] of heard.entries()) {
      expect(burst.reception.quality.verdict).toBe('clean');
      expect(burst.startSample).toBeCloseTo(800 + n * 3600, -1);
    }
  });

  it('knows inverted polarity by the phasing', () => {
    const burst = onlyClean(
      receive(sound(invert(testCall.bits), { balanceDb: 3, offsetHz: 12 })).heard,
      testCall,
    );
    expect(burst.polarity).toBe('inverted');
    expect(burst.toneOffsetHz).toBeCloseTo(12, 0);
    expect(burst.toneBalanceDb).toBeCloseTo(3, 0);
  });

  it.each<[string, Partial<Path>]>([
    ['tones 30 Hz too high', { offsetHz: 30 }],
    ['tones 30 Hz too low', { offsetHz: -30 }],
    ['a clock 200 parts per million fast', { clockPpm: 200 }],
    ['a clock 200 parts per million slow', { clockPpm: -200 }],
    ['2100 Hz 6 dB stronger', { balanceDb: 6 }],
    ['1300 Hz 6 dB stronger', { balanceDb: -6 }],
    ['a constant offset twice the signal', { dc: 2 }],
    ['a level of -60 dB', { gain: 0.001 }],
    ['a level of -10 dB', { gain: 0.3 }],
  ])('takes %s, and says so', (_, path) => {
    const burst = onlyClean(receive(sound(testCall.bits, path)).heard, testCall);
    expect(Math.abs(burst.toneOffsetHz - (path.offsetHz ?? 0))).toBeLessThan(0.5);
    expect(Math.abs(burst.clockErrorPpm - (path.clockPpm ?? 0))).toBeLessThan(150);
    expect(Math.abs(burst.toneBalanceDb - (path.balanceDb ?? 0))).toBeLessThan(0.9);
    expect(Math.abs(burst.ebN0Db - 12)).toBeLessThan(1);
    if (path.balanceDb === undefined)
      expect(Math.abs(burst.levelDb - 20 * Math.log10(path.gain ?? 0.1))).toBeLessThan(0.3);
    expect(Math.abs(burst.startSample - 800)).toBeLessThan(0.5);
  });

  it('estimates signal-to-noise ratio from weak to strong', () => {
    for (const ebN0Db of [2, 5, 8, 15]) {
      const [burst] = receive(sound(testCall.bits, { ebN0Db }, ebN0Db)).heard;
      expect(Math.abs((burst as HeardBurst).ebN0Db - ebN0Db)).toBeLessThan(0.9);
    }
  });

  it('hears a burst whose first half of phasing was lost to a squelch', () => {
    const samples = sound(testCall.bits).fill(0, 0, 800 + Math.round((80 / 1200) * 8000));
    onlyClean(receive(samples).heard, testCall);
  });

  it('hears a stronger burst begin in the tail of a weaker one', () => {
    const samples = sound(testCall.bits, { ebN0Db: 10, behind: 0.6 });
    const second = worked('group-routine');
    mix(
      samples,
      modulate(second.bits, { sampleRate: 8000, amplitude: 0.4, allowDistress: true }),
      800 + 4100,
    );
    const { heard } = receive(samples);
    expect(heard.at(-1)?.reception).toMatchObject({
      information: second.information,
      quality: { verdict: 'clean' },
    });
    expect(heard[0]?.reception.information).toEqual(testCall.information);
  });

  it('hears a burst in the middle of loud noise that stops and starts with it, as an open squelch makes it', () => {
    const random = randomFrom(3);
    const samples = Float32Array.from({ length: 16_000 }, () => 0.3 * random.normal());
    const burst = modulate(testCall.bits, { sampleRate: 8000, amplitude: 0.3 });
    samples.set(burst, 6000);
    const { heard } = receive(samples);
    onlyClean(heard, testCall);
  });

  it('reads a burst that is clipped hard, and says that the sound is too loud', () => {
    const samples = modulate(testCall.bits, {
      sampleRate: 8000,
      amplitude: 1,
      leadInSeconds: 0.2,
      tailSeconds: 0.5,
    }).map((x) => Math.max(-1, Math.min(1, 8 * x)));
    const { heard, issues } = receive(samples);
    onlyClean(heard, testCall);
    expect(issues.map(({ code }) => code)).toEqual(['audio-clipped']);
  });

  it('reads on past samples that are no numbers, and says where the first is', () => {
    const samples = sound(testCall.bits);
    for (const [n, value] of [
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -1e30,
      Number.NEGATIVE_INFINITY,
    ].entries()) {
      samples[2000 + 300 * n] = value;
    }
    const { heard, issues } = receive(samples);
    onlyClean(heard, testCall);
    expect(issues).toMatchObject([{ code: 'audio-sample-unusable', at: ['sample', 2000], received: 'NaN' }]);
  });

  it('speaks of unusable samples once a second, not once a sample', () => {
    const { heard, issues } = receive(new Float32Array(8000 * 3).fill(Number.NaN));
    expect(heard).toEqual([]);
    expect(issues.map(({ code, at }) => [code, at[1]])).toEqual([
      ['audio-sample-unusable', 0],
      ['audio-sample-unusable', 8000],
      ['audio-sample-unusable', 16_000],
      ['audio-silent', undefined],
    ]);
  });

  it('says that a stream was silent or empty', () => {
    expect(receive(new Float32Array(9000)).issues).toMatchObject([
      { code: 'audio-silent', params: { count: 9000 } },
    ]);
    expect(receive([]).issues).toMatchObject([{ code: 'audio-no-samples' }]);
  });

  it('is ready for a new stream after flush', () => {
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({ sampleRate: 8000, onReception: (burst) => heard.push(burst) });
    const samples = sound(testCall.bits);
    receiver.push(samples);
    receiver.flush();
    receiver.push(samples);
    receiver.flush();
    expect(heard.length).toBe(2);
    expect(heard[1]).toEqual(heard[0]);
  });

  it('reports plain data', () => {
    const [burst] = receive(sound(testCall.bits)).heard;
    expect(structuredClone(burst)).toEqual(burst);
    expect(JSON.parse(JSON.stringify(burst))).toEqual(burst);
  });

  it('never throws from the stream, whatever the samples', () => {
    const anySample = fc.oneof(fc.double(), fc.double({ min: -1, max: 1 }), fc.constantFrom(0, 1, -1));
    fc.assert(
      fc.property(
        fc.array(anySample, { maxLength: 3000 }),
        fc.double({ min: 8000, max: 192_000, noNaN: true }),
        (list, sampleRate) => {
          expect(receive(list, sampleRate).heard).toEqual([]);
        },
      ),
      { numRuns: 15 },
    );
  });

  it('stays quiet and sound when random stretches of a burst are overwritten', () => {
    const whole = sound(testCall.bits, { ebN0Db: 20 });
    fc.assert(
      fc.property(
        fc.nat(whole.length),
        fc.nat(2000),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (from, length, value) => {
          const { heard } = receive(Float32Array.from(whole).fill(value, from, from + length));
          for (const { reception } of heard) {
            if (reception.quality.verdict === 'clean')
              expect(reception.information).toEqual(testCall.information);
          }
        },
      ),
      { numRuns: 8 },
    );
  });

  it('tells the rest and loses no sound when a callback throws, then throws the first error', () => {
    const samples = sound(testCall.bits + worked('group-routine').bits);
    const whole = receive(samples);
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: (burst) => {
        heard.push(burst);
        throw new Error(`no room for number ${heard.length}`);
      },
    });
    const quiet = new Float32Array(12_000);
    expect(() => receiver.push([...samples, ...quiet])).toThrow(new Error('no room for number 1'));
    expect(heard).toEqual(whole.heard);
    expect(heard.length).toBe(2);
    receiver.flush();
    // The same once more as a new stream, and what is told only at its end.
    receiver.push(samples.slice(0, 5500));
    expect(heard.length).toBe(2);
    expect(() => receiver.flush()).toThrow(new Error('no room for number 3'));
    receiver.flush();
    expect(heard[2]?.startSample).toBe(whole.heard[0]?.startSample);
  });

  it('goes on where a callback threw, in the same stream', () => {
    const samples = sound(testCall.bits + worked('group-routine').bits);
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: (burst) => {
        if (heard.push(burst) === 1) throw new Error('first');
      },
    });
    let thrown = 0;
    for (let at = 0; at < samples.length; at += 100) {
      try {
        receiver.push(samples.slice(at, at + 100));
      } catch {
        thrown++;
      }
    }
    receiver.flush();
    expect(thrown).toBe(1);
    expect(heard).toEqual(receive(samples).heard);
  });

  it('takes no sound from its own callbacks', () => {
    const samples = sound(testCall.bits + worked('group-routine').bits);
    const refused: string[] = [];
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: (burst) => {
        heard.push(burst);
        for (const call of [() => receiver.push(samples), () => receiver.flush()]) {
          try {
            call();
          } catch (error) {
            refused.push(String(error));
          }
        }
      },
    });
    receiver.push(samples);
    receiver.flush();
    const why = 'called from a callback of the same receiver: wait for its return';
    expect(refused).toEqual([
      `Error: push: ${why}`,
      `Error: flush: ${why}`,
      `Error: push: ${why}`,
      `Error: flush: ${why}`,
    ]);
    expect(heard).toEqual(receive(samples).heard);
  });

  it('tells what was heard and what was wrong in the order of the sound', () => {
    const samples = Float32Array.from([...sound(testCall.bits), ...new Float32Array(16_000)]);
    samples[20] = Number.NaN;
    samples[20_000] = Number.NaN;
    const told: string[] = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: ({ kind }) => told.push(kind),
      onIssue: ({ at }) => told.push(at.join(' ')),
    });
    receiver.push(samples);
    expect(told).toEqual(['sample 20', 'heard-burst', 'sample 20000']);
  });

  it('says what it lacks', () => {
    const made = (options?: unknown) => () =>
      createReceiver(options as { sampleRate: 8000; onReception: () => void });
    for (const [options, name] of [
      [undefined, 'undefined'],
      [null, 'null'],
      [8000, 'number'],
    ])
      expect(made(options)).toThrow(
        new TypeError(`createReceiver: expected options with sampleRate and onReception, got ${name}`),
      );
    const onReception = () => {};
    expect(made({ sampleRate: 8000 })).toThrow(
      new TypeError('createReceiver: onReception: expected a function, got undefined'),
    );
    expect(made({ sampleRate: 8000, onReception: null })).toThrow(
      new TypeError('createReceiver: onReception: expected a function, got null'),
    );
    expect(made({ sampleRate: 8000, onReception, onIssue: 'log' })).toThrow(
      new TypeError('createReceiver: onIssue: expected a function, got string'),
    );
    expect(made({ onReception })).toThrow(RangeError);
    const receiver = createReceiver({ sampleRate: 8000, onReception, onIssue: undefined });
    expect(() => receiver.flush()).not.toThrow();
    for (const [samples, name] of [
      [undefined, 'undefined'],
      [{}, 'object'],
      ['101', 'string'],
    ])
      expect(() => receiver.push(samples as unknown as number[])).toThrow(
        new TypeError(`push: samples: expected an array of numbers, typed or not, got ${name}`),
      );
  });

  it('refuses sample rates it cannot work at', () => {
    for (const sampleRate of [0, 7999, 192_001, Number.NaN]) {
      expect(() => createReceiver({ sampleRate, onReception: () => {} })).toThrow(RangeError);
    }
  });
});

describe('far from any call', () => {
  it.each<[string, (n: number, random: () => number) => number]>([
    ['white noise', (_, normal) => 0.2 * normal()],
    ['1300 Hz', (n) => 0.5 * Math.sin((2 * Math.PI * 1300 * n) / 8000)],
    [
      'both tones',
      (n) => 0.2 * (Math.sin((2 * Math.PI * 1300 * n) / 8000) + Math.sin((2 * Math.PI * 2100 * n) / 8000)),
    ],
    ['a sweep', (n) => 0.5 * Math.sin(2 * Math.PI * ((300 * n) / 8000 + (150 * n * n) / 8000 ** 2))],
    ['clicks', (n) => (n % 397 === 0 ? 1 : 0)],
    ['mains hum', (n) => 0.5 * Math.sign(Math.sin((2 * Math.PI * 50 * n) / 8000))],
  ])('nothing is heard in %s', (_, make) => {
    const { normal } = randomFrom(9);
    expect(receive(Float32Array.from({ length: 80_000 }, (__, n) => make(n, normal))).heard).toEqual([]);
  });

  it('nothing is heard in a dot pattern, random bits or phasing without a call', () => {
    const random = randomFrom(4);
    const bits = Array.from({ length: 3000 }, () => random.below(2)).join('');
    expect(receive(sound('10'.repeat(1500))).heard).toEqual([]);
    expect(receive(sound(bits)).heard).toEqual([]);
    for (const { reception } of receive(sound(testCall.bits.slice(0, 160).repeat(4) + bits)).heard) {
      expect(reception.quality.verdict).toBe('doubtful');
    }
  });
});

describe('spoilt phasing', () => {
  const { bits } = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
  const sampleRate = 8000;
  const lost = Math.round((100 / 1200) * sampleRate);

  it.each([
    ['silence', () => 0],
    ['another tone', (n: number) => 0.4 * Math.sin(0.9 * n)],
    ['noise', (n: number) => 0.8 * Math.sin(n * n * 12.9898)],
  ])('is enough of it when the first eight words are %s', (_, sound) => {
    const samples = modulate(bits, { sampleRate, tailSeconds: 0.2 });
    for (let n = 0; n < lost; n++) samples[n] = sound(n);
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({ sampleRate, onReception: (burst) => heard.push(burst) });
    receiver.push(samples);
    receiver.flush();
    expect(heard.map(({ reception }) => reception.quality.verdict)).toEqual(['clean']);
    expect(heard[0]?.startSample).toBeCloseTo(0, -1);
  });

  it('again and again is not decoded, and told as unreadable', () => {
    const issues: Issue[] = [];
    const heard: HeardBurst[] = [];
    const receiver = createReceiver({
      sampleRate,
      onReception: (burst) => heard.push(burst),
      onIssue: (issue) => issues.push(issue),
    });
    for (let n = 0; n < 8; n++) receiver.push(modulate(bits.slice(0, 180), { sampleRate }));
    receiver.flush();
    expect(heard).toEqual([]);
    const unreadable = issues.filter(({ code }) => code === 'audio-burst-unreadable');
    const overtaken = issues.filter(({ code }) => code === 'audio-burst-overtaken');
    expect(unreadable.length).toBeGreaterThanOrEqual(1);
    expect(unreadable.length + overtaken.length).toBeGreaterThanOrEqual(6);
    // The text of the decoder is in that of the receiver, and is made again from its own code and params.
    for (const issue of unreadable) {
      expect(issue.params).toMatchObject({ sample: issue.at[1], why: { code: 'burst-not-found' } });
      expect(translate(issue as Translatable, english).text).toBe(issue.message);
    }
  });
});

describe('the level of what comes in', () => {
  it('is told once a second, in order, whether a call is there or not', () => {
    const sampleRate = 8000;
    const levels: Parameters<NonNullable<Parameters<typeof createReceiver>[0]['onLevel']>>[0][] = [];
    const receiver = createReceiver({
      sampleRate,
      onReception: () => {},
      onLevel: (level) => levels.push(level),
    });
    // A second of silence, a sine of amplitude 0.5 (6.02 dB below full scale), one that clips, and half a second more.
    receiver.push(new Float32Array(sampleRate));
    receiver.push(Float32Array.from({ length: sampleRate }, (_, n) => 0.5 * Math.sin((2 * Math.PI * n) / 8)));
    receiver.push(Float32Array.from({ length: sampleRate }, (_, n) => (n % 2 === 0 ? 1 : -1)));
    receiver.push(new Float32Array(sampleRate / 2));
    receiver.flush();
    expect(levels).toHaveLength(3);
    expect(levels[0]).toEqual({
      kind: 'sound-level',
      startSample: 0,
      levelDb: null,
      peakDb: null,
      clippedShare: 0,
    });
    expect(levels[1]?.startSample).toBe(8000);
    expect(levels[1]?.levelDb).toBeCloseTo(-6.02, 2);
    expect(levels[1]?.peakDb).toBeCloseTo(-6.02, 2);
    expect(levels[2]?.levelDb).toBeCloseTo(3.01, 2);
    expect(levels[2]?.clippedShare).toBe(1);
  });
});
