import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  parseSentence,
  readSentences,
  writeSentences,
  writeTarget,
  writeWaypoint,
} from '../../src/sentence/index.ts';
import { anyCall, line } from './arbitrary.ts';

const text = fc.string({
  maxLength: 10,
  unit: fc.integer({ min: 1, max: 0xff }).map((code) => String.fromCharCode(code)),
});
const position = fc.record({
  latitude: fc.integer({ min: -54_000_000, max: 54_000_000 }).map((units) => units / 600_000),
  longitude: fc.integer({ min: -108_000_000, max: 108_000_000 }).map((units) => units / 600_000),
});

describe('writing and reading', () => {
  it.each(['received', 'commanded'] as const)('every kind of call comes back: %s', (direction) => {
    fc.assert(
      fc.property(anyCall(direction), fc.constantFrom('CD', 'CV', 'U0'), (call, talker) => {
        const { sentences: written, notices } = writeSentences(call, {
          direction,
          talker,
          allowDistress: true,
        });
        expect(notices).toEqual([]);
        for (const sentence of written) expect(sentence.length).toBeLessThanOrEqual(80);
        const readings = readSentences(written.map((sentence) => `${sentence}\r\n`).join(''), { direction });
        expect(readings).toMatchObject([{ kind: 'call', stage: 'final', talker, call }]);
        expect(readings[0]).not.toHaveProperty('call.asReceived');
        const again = (readings[0] as { call: typeof call }).call;
        expect(writeSentences(again, { direction, talker, allowDistress: true }).sentences).toEqual(written);
      }),
      { numRuns: 400 },
    );
  });

  it('waypoints and targets come back to four decimals of a minute', () => {
    fc.assert(
      fc.property(position, text, fc.integer({ min: 0, max: 99 }), (place, name, number) => {
        for (const sentence of [
          writeWaypoint({ position: place, name }),
          writeTarget({ position: place, name, number }),
        ]) {
          const [reading] = readSentences(sentence);
          const read =
            reading?.kind === 'waypoint'
              ? reading.waypoint
              : reading?.kind === 'target'
                ? reading.target
                : null;
          expect(read?.name).toBe(name);
          expect(read?.position.latitude).toBeCloseTo(place.latitude, 9);
          expect(read?.position.longitude).toBeCloseTo(place.longitude, 9);
        }
      }),
    );
  });

  it('any field text survives its own framing', () => {
    const field = fc.string({ unit: fc.constantFrom(...'ABC019.-:^') });
    fc.assert(
      fc.property(fc.array(field, { maxLength: 8 }), (fields) => {
        const result = parseSentence(line(['GPXYZ', ...fields].join(',')));
        expect(result.ok && result.value.fields).toEqual(fields);
      }),
    );
  });
});

describe('writing refuses', () => {
  it.each([
    [
      'a name too long',
      () => writeWaypoint({ position: { latitude: 0, longitude: 0 }, name: 'X'.repeat(60) }),
    ],
    ['a latitude past the pole', () => writeWaypoint({ position: { latitude: 91, longitude: 0 }, name: '' })],
    [
      'a target number of 100',
      () => writeTarget({ number: 100, position: { latitude: 0, longitude: 0 }, name: '' }),
    ],
    [
      'a talker in small letters',
      () => writeWaypoint({ position: { latitude: 0, longitude: 0 }, name: '' }, { talker: 'cd' }),
    ],
  ])('%s', (_, write) => {
    expect(write).toThrow(RangeError);
  });
});
