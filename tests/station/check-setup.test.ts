import { describe, expect, it } from 'vitest';
import { checkSetup, createStation, type SettingsInput } from '../../src/station/index.ts';
import { club, coast, friend, own } from './happenings.ts';

const now = Date.UTC(2026, 5, 1, 18, 0);
const MINUTE = 60_000;
const good: Parameters<typeof checkSetup>[1] = {
  now,
  fix: {
    position: { latitude: 56.34, longitude: -6.5 },
    at: now - 1000,
    source: 'instrument',
    warned: false,
  },
  time: now + 900,
  testAnsweredAt: now - 86_400_000,
  replyOnPlotter: true,
};

function statusOf(
  settings: SettingsInput,
  seen: Partial<Parameters<typeof checkSetup>[1]> = {},
): Readonly<Record<string, string>> {
  const items = checkSetup(createStation(settings).settings, { ...good, ...seen });
  return Object.fromEntries(items.map(({ subject, status }) => [subject, status]));
}

describe('the set-up check', () => {
  it('finds nothing to do on a station that is ready', () => {
    const items = checkSetup(createStation({ mmsi: own, groups: [club], tuning: 'by-hand' }).settings, good);
    expect(items.map(({ status }) => status)).toEqual(Array.from({ length: 8 }, () => 'ready'));
    expect(items.map(({ toDo }) => toDo)).toEqual(Array.from({ length: 8 }, () => null));
  });

  it('says what to do about everything that is not ready, with a clause', () => {
    const items = checkSetup(createStation({ mmsi: null, channels: [], groups: [own] }).settings, {
      now,
      fix: null,
      time: null,
      testAnsweredAt: null,
      replyOnPlotter: false,
    });
    for (const { status, toDo, message, clause, grade } of items) {
      expect(status).not.toBe('ready');
      expect(grade).toMatch(/error|check/);
      expect(toDo?.text).toMatch(/\w/);
      expect(message).toMatch(/\w/);
      expect(clause).toMatch(/\w/);
    }
  });

  // ITU-R M.585-10: ship MIDxxxxxx, hand-held 8MIDxxxxx, man-overboard device 972xxxxxx, coast 00MIDxxxx.
  it.each<[SettingsInput['equipment'], string, string]>([
    ['D', own, 'ready'],
    ['A', own, 'ready'],
    ['D', '823299904', 'not-ready'],
    ['H', '823299904', 'ready'],
    ['M', '972009990', 'ready'],
    ['M', own, 'not-ready'],
    ['D', '972009990', 'not-ready'],
    ['coast', coast, 'ready'],
    ['D', coast, 'not-ready'],
    ['coast', own, 'not-ready'],
  ])('an identity in class %s: %s is %s', (equipment, mmsi, status) => {
    expect(statusOf({ mmsi, ...(equipment !== undefined && { equipment }) }).identity).toBe(status);
  });

  it('wants a position from the receiver within the minute, or by hand within four hours', () => {
    const fix = { position: { latitude: 56.34, longitude: -6.5 }, warned: false } as const;
    const at = (minutes: number, source: 'instrument' | 'person') =>
      statusOf({ mmsi: own }, { fix: { ...fix, at: now - minutes * MINUTE, source } }).position;
    expect(at(0.5, 'instrument')).toBe('ready');
    expect(at(2, 'instrument')).toBe('not-ready');
    expect(at(2, 'person')).toBe('ready');
    expect(at(240, 'person')).toBe('not-ready');
  });

  it('wants UTC, not local time', () => {
    expect(statusOf({ mmsi: own }, { time: now + 60 * MINUTE }).time).toBe('not-ready');
    expect(statusOf({ mmsi: own }, { time: now - 30_000 }).time).toBe('ready');
  });

  it('takes only groups of ships for groups', () => {
    expect(statusOf({ mmsi: own, groups: [club] }).groups).toBe('ready');
    for (const group of [friend, coast, '12', own])
      expect(statusOf({ mmsi: own, groups: [group] }).groups).toBe('not-ready');
  });

  it('does not call a thing wrong that was not tried', () => {
    const seen = statusOf({ mmsi: own }, { testAnsweredAt: null, replyOnPlotter: null });
    expect(seen).toMatchObject({ 'test-call': 'unknown', plotter: 'unknown' });
  });

  it('finds instants to come, which no clock that is right has seen', () => {
    const fix = { ...(good.fix as NonNullable<typeof good.fix>), at: now + 10 * MINUTE };
    expect(statusOf({ mmsi: own }, { fix }).position).toBe('not-ready');
    expect(statusOf({ mmsi: own }, { testAnsweredAt: now + MINUTE })['test-call']).toBe('not-ready');
  });
});
