import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseIdentity } from '../../src/identity/index.ts';

// Without types nothing stops a value of the wrong kind. What is thrown then says what was expected and what came.
const { exports: entries } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
) as { exports: Record<string, { default: string }> };

/** Every function of every entry, by name. */
const functions = new Map<string, (...given: unknown[]) => unknown>();
for (const { default: built } of Object.values(entries)) {
  if (built === undefined) continue;
  const door: Record<string, unknown> = await import(
    built.replace('./dist', '../../src').replace('.js', '.ts')
  );
  for (const [name, value] of Object.entries(door))
    if (typeof value === 'function') functions.set(name, value as () => unknown);
}

const mistakes: Record<string, unknown> = {
  nothing: undefined,
  null: null,
  'a number': 5,
  'an object of no kind': {},
  'a result whose value was asked for': parseIdentity('232999871'),
};

describe.each([...functions])('%s', (_, call) => {
  it.each(Object.keys(mistakes))('says what it expected when given %s', (mistake) => {
    expect(complaint(() => call(mistakes[mistake]))).toMatch(CLEAR);
    expect(complaint(() => call(mistakes[mistake], {}))).toMatch(CLEAR);
  });
});

/** What is good for a first argument, for functions whose second must be there too. */
const first: Record<string, unknown> = {
  checkIdentity: { kind: 'ship', mmsi: '232999871' },
  closestApproach: { position: { latitude: 56, longitude: -6 } },
  compassToTrue: 90,
  deadReckoning: { latitude: 56, longitude: -6 },
  intercept: { position: { latitude: 56, longitude: -6 }, speed: 6 },
  toGpx: [],
  translate: { code: 'identity-shape', params: {} },
  trueToCompass: 90,
  writeAisFrames: { mmsi: '232999142' },
  writeCallFrames: { kind: 'test' },
  writeNodeFrames: { unique: 1 },
  writeOwnPositionFrames: { position: null },
  writeSentences: { kind: 'test-call' },
  writeWaypointFrames: { position: { latitude: 56, longitude: -6 }, name: 'TERN' },
};

describe('options left out', () => {
  it.each(Object.entries(first))('%s says so', (name, good) => {
    expect(complaint(() => functions.get(name)?.(good))).toMatch(/^\w+: expected .+, got undefined/);
    expect(complaint(() => functions.get(name)?.(good, null))).toMatch(/^\w+: expected .+, got null/);
  });
});

const CLEAR = /^$|: expected .+/;

/** What it throws; empty where it answers, as a reader of what was received does. */
function complaint(run: () => unknown): string {
  try {
    run();
    return '';
  } catch (error) {
    return (error as Error).message;
  }
}
