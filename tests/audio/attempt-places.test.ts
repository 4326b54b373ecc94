import { expect, it } from 'vitest';
import { throughPath } from '../../bench/receiver/channel.ts';
import { randomFrom } from '../../bench/receiver/random.ts';
import { ALERT_BITS } from '../../src/audio/acquire/phasing.ts';
import { createBurstReader } from '../../src/audio/burst-reader.ts';
import { createBaseband } from '../../src/audio/front-end/baseband.ts';
import { PER_BIT } from '../../src/audio/front-end/bit-filter.ts';
import { createFrontEnd } from '../../src/audio/front-end/front-end.ts';
import { startSampleOf } from '../../src/audio/heard-burst.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';

const RATE = 8000;
const ALERT = [112, 23, 29, 99, 21, 80, 105, 5, 62, 0, 6, 30, 12, 34, 100, 127];
const BITS = `10101010101010101010${streamOf(ALERT).map(encodeSymbol).join('')}`;

/** What is found at the five places of an attempt, of which these hold an alert and the others noise alone. */
function placesOf(places: readonly boolean[], ebN0Db: number, seed: number): readonly unknown[] | null {
  const baseband = createBaseband();
  const random = randomFrom(seed);
  const samples = throughPath(BITS.repeat(5), { sampleRate: RATE, ebN0Db, before: 0.1, behind: 0.1 }, random);
  const empty = throughPath('', { sampleRate: RATE, ebN0Db, before: 2.4, behind: 0.1 }, random);
  const length = (BITS.length / 1200) * RATE;
  places.forEach((holds, n) => {
    const from = Math.round(0.1 * RATE + n * length);
    if (!holds) samples.set(empty.subarray(from, Math.round(from + length)), from);
  });
  const frontEnd = createFrontEnd(RATE, (re, im) => baseband.push(re, im));
  frontEnd.push(samples, 0, samples.length);
  // The instant whose sample is that of the first bit.
  let first = 0;
  const sampleOf = (start: number) =>
    startSampleOf(
      { start, perBit: PER_BIT, offset: 0, mirror: false, phase: 0, one: 1, zero: 1, noise: 1 },
      RATE,
    );
  while (sampleOf(first) < 0.1 * RATE) first++;
  const starts = [0, 1, 2, 3, 4].map((n) => first + n * ALERT_BITS * PER_BIT);
  return createBurstReader(baseband).locateAttempt(starts as [number, ...number[]], false);
}

// What is weighed has no source but theory: five calls of one sender against calls that happen to lie at their distance.
it.each([1, 2, 3])('an attempt is looked at where three places hold phasing (seed %i)', (seed) => {
  expect(placesOf([true, true, true, true, true], -6, seed)).toHaveLength(5);
  expect(placesOf([true, false, true, false, true], -2, seed)).toHaveLength(5);
});

it.each([1, 2, 3])('and not where two calls, however strong, lie in two of them (seed %i)', (seed) => {
  for (const ebN0Db of [12, 4, 0])
    expect(placesOf([true, false, false, true, false], ebN0Db, seed)).toBeNull();
  expect(placesOf([false, false, false, false, false], 0, seed)).toBeNull();
});
