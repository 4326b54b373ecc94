import { describe, expect, it } from 'vitest';
import { throughPath } from '../../bench/receiver/channel.ts';
import { randomFrom } from '../../bench/receiver/random.ts';
import { createReceiver, type HeardBurst } from '../../src/audio/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';

// An attempt is five alerts, the same to the bit, the next dot pattern behind the last symbol without a gap: Japan, Notification
// 567 of 1990; ITU-R M.541-8.

/** Characters of a distress alert: identity, nature, position, time, telecommand, end of sequence. */
const ALERT = [112, 23, 29, 99, 21, 80, 105, 5, 62, 0, 6, 30, 12, 34, 100, 127];
const OTHER = [112, 0, 23, 29, 99, 90, 101, 5, 61, 59, 6, 31, 7, 20, 100, 127];
/** One digit of the longitude is another. */
const CHANGED = ALERT.map((symbol, index) => (index === 11 ? 31 : symbol));
const informationOf = (characters: readonly number[]): number[] => [112, ...characters];
const bitsOf = (calls: readonly (readonly number[])[]): string =>
  calls.map((call) => `10101010101010101010${streamOf(call).map(encodeSymbol).join('')}`).join('');

function soundOf(calls: readonly (readonly number[])[], ebN0Db: number, seed: number): Float32Array {
  const path = { sampleRate: 8000, ebN0Db, gain: 0.1, before: 0.1, behind: 0.1, offsetHz: 6, clockPpm: 20 };
  return throughPath(bitsOf(calls), path, randomFrom(seed));
}

function receive(samples: Float32Array, piece = samples.length): HeardBurst[] {
  const heard: HeardBurst[] = [];
  const receiver = createReceiver({ sampleRate: 8000, onReception: (burst) => heard.push(burst) });
  for (let at = 0; at < samples.length; at += piece) receiver.push(samples.subarray(at, at + piece));
  receiver.flush();
  return heard;
}

const verdictOf = ({ reception }: HeardBurst): string => reception.quality.verdict;

describe('the calls of an attempt', () => {
  it('are heard together where none can be heard alone', () => {
    for (const seed of [1, 2]) {
      const alone = receive(soundOf([ALERT], -4, seed));
      expect(alone.filter((burst) => verdictOf(burst) !== 'doubtful')).toEqual([]);
      const heard = receive(soundOf(new Array(5).fill(ALERT), -4, seed));
      const last = heard.at(-1) as HeardBurst;
      expect(verdictOf(last)).not.toBe('doubtful');
      expect(last.reception.information).toEqual(informationOf(ALERT));
      expect(last.reception.quality.calls).toBeGreaterThanOrEqual(3);
      expect(last.reception.quality.calls).toBeLessThanOrEqual(5);
    }
  });

  it('are one event, which a later call makes surer', () => {
    const heard = receive(soundOf(new Array(5).fill(ALERT), -1, 3));
    expect(new Set(heard.map(({ event }) => event))).toEqual(new Set([1]));
    expect(heard.map(({ reception }) => reception.quality.calls)).toEqual([1, 2, 3, 4, 5]);
    expect(verdictOf(heard[0] as HeardBurst)).not.toBe('clean');
    expect(heard.slice(2).map(verdictOf)).toEqual(['clean', 'clean', 'clean']);
  });

  it('give the same whatever the way the samples are cut up', () => {
    const samples = soundOf(new Array(5).fill(ALERT), -4, 1);
    expect(receive(samples, 1009)).toEqual(receive(samples));
  });

  it.each([8, 1, -3])('of two vessels that take turns are never mixed, at %i dB', (ebN0Db) => {
    const heard = receive(soundOf([ALERT, OTHER, ALERT, OTHER, ALERT], ebN0Db, 4));
    const sure = heard.filter((burst) => verdictOf(burst) !== 'doubtful');
    const events = [ALERT, OTHER].map((characters) => {
      const own = sure.filter(
        ({ reception }) => String(reception.information) === String(informationOf(characters)),
      );
      return { count: own.length, events: new Set(own.map(({ event }) => event)) };
    });
    expect(events.reduce((sum, { count }) => sum + count, 0)).toBe(sure.length);
    expect([...(events[0]?.events ?? [])].filter((event) => events[1]?.events.has(event))).toEqual([]);
    for (const { reception } of sure) expect(reception.quality.calls).toBeLessThanOrEqual(3);
    if (ebN0Db === 8) expect(events.map(({ count }) => count)).toEqual([3, 2]);
  });

  it.each([8, 3])('are told from a call with one character different, at %i dB', (ebN0Db) => {
    const calls = [ALERT, ALERT, CHANGED, ALERT];
    const heard = receive(soundOf(calls, ebN0Db, 5));
    const clean = heard.filter((burst) => verdictOf(burst) === 'clean');
    expect(clean.length).toBeGreaterThanOrEqual(3);
    for (const { reception, startSample } of clean) {
      const place = Math.round((startSample - 800) / 3600);
      expect(reception.information).toEqual(informationOf(calls[place] as number[]));
    }
    const changed = clean.find(
      ({ reception }) => String(reception.information) === String(informationOf(CHANGED)),
    );
    expect(changed?.reception.quality.calls ?? 1).toBe(1);
  });

  it.each([
    [-3, 7],
    [-3, 34],
    [-3.5, 31],
  ])(
    'never put two sure calls under one event, with one character different at %d dB (noise %i)',
    (ebN0Db, seed) => {
      const heard = receive(soundOf([ALERT, CHANGED, ALERT, CHANGED, ALERT, CHANGED], ebN0Db, seed));
      const sure = heard.filter((burst) => verdictOf(burst) !== 'doubtful');
      const calls = new Set(sure.map(({ event, reception }) => `${event}: ${reception.information}`));
      expect(calls.size).toBeGreaterThanOrEqual(2);
      expect(new Set(sure.map(({ event }) => event)).size).toBe(calls.size);
    },
  );

  it('are counted apart from the next call', () => {
    const heard = receive(soundOf([ALERT, ALERT, OTHER, OTHER], 10, 6));
    expect(heard.map(({ event, reception }) => [event, reception.quality.calls])).toEqual([
      [1, 1],
      [1, 2],
      [2, 1],
      [2, 2],
    ]);
  });
});
