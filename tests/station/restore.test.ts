import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeIndividualCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import {
  createStation,
  restoreStation,
  type StationEvent,
  type StationState,
  step,
} from '../../src/station/index.ts';
import { alertAct, bothGrounds, callToStart, club, heardCall, own } from './happenings.ts';
import { Radio } from './radio.ts';

const stored = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../shared/station/state-version-1.json'), 'utf8'),
) as unknown;

const stored2 = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../shared/station/state-version-2.json'), 'utf8'),
) as Readonly<Record<string, unknown>> & { readonly now: number };

type Stored = Readonly<Record<string, unknown>> & { readonly settings?: unknown };

/** The setting `speed` served an advice that is no longer given. */
function asNow(old: Stored): object {
  const { speed: _, ...settings } = old.settings as Record<string, unknown>;
  return { ...old, settings };
}

describe('restoring a station', () => {
  it('of version 1 loses nothing', () => {
    const result = restoreStation(stored, { vouchedAt: 1780336920000 });
    expect(result.ok && result.notices).toEqual([]);
    const state = valueOf(result);
    expect(state.version).toBe(3);
    expect(state.tunedTo).toBeNull();
    expect(state).toMatchObject({ ...asNow(stored as Stored), version: 3, wakeAt: null });
    const radio = new Radio({ mmsi: null });
    radio.state = state;
    radio.now = state.now;
    radio.give({ kind: 'clock' });
    expect(radio.phases).toEqual([
      'outgoing: waiting-answer',
      'incoming: deciding',
      'heard-distress: listening',
    ]);
    radio.pass(5 * 60_000);
    expect(radio.phases).toContain('heard-distress: undecided');
  });

  it('of version 2 loses nothing, and vouched for goes on with its own alert', () => {
    const result = restoreStation(stored2, { vouchedAt: stored2.now + 60_000 });
    expect(result.ok && result.notices).toEqual([]);
    expect(valueOf(result)).toMatchObject({ ...asNow(stored2), version: 3, wakeAt: null });
    const asked = restoreStation(stored2);
    expect(asked.ok && asked.notices.map(({ code, at }) => [code, ...at])).toEqual([
      ['station-state-asks', 'dialogues 3'],
    ]);
    expect(valueOf(asked).dialogues.map(({ phase }) => phase)).toEqual([
      'waiting-answer',
      'deciding',
      'listening',
      'interrupted',
    ]);
  });

  it('takes nothing for a station that is none, and never throws', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(restoreStation(value).ok).toBe(false);
      }),
    );
    for (const value of [null, [], 'x', { kind: 'station' }, { kind: 'station', version: 'toString' }]) {
      expect(restoreStation(value)).toMatchObject({ ok: false, issues: [{ code: 'station-state-form' }] });
    }
    const newer = restoreStation({ ...createStation({ mmsi: own }), version: 4 });
    expect(newer).toMatchObject({ ok: false, issues: [{ code: 'station-state-newer' }] });
  });

  it.each<[part: string, value: unknown]>([
    ['fix', { position: { latitude: 'x', longitude: 0 }, at: 0 }],
    ['tunedTo', 16],
    ['channelBusy', 'yes'],
    ['sounding', ['whistle']],
    ['heardAlerts', [{ lastAt: null }]],
    ['dialogues', 'x'],
    ['nextLogEntry', -1],
    ['random', 'x'],
    ['transmitting', 99],
    ['settings', { mmsi: '23299987' }],
  ])('says that %s made no sense', (part, value) => {
    const result = restoreStation({ ...createStation({ mmsi: own }), [part]: value });
    expect(result.ok && result.notices.map(({ at }) => at[0]?.toString().split(' ')[0])).toContain(part);
  });

  it.each<[setting: string, value: unknown]>([
    ['mmsi', '23299987'],
    ['mmsi', '023299905'],
    ['channels', ['78A', 'zz']],
    ['channels', ['70']],
    ['timers', { 'alert-hold': -5 }],
  ])('says that the setting %s made no sense: %j', (setting, value) => {
    const stored = createStation({ mmsi: own });
    const result = restoreStation({ ...stored, settings: { ...stored.settings, [setting]: value } });
    expect(result).toMatchObject({ ok: true, notices: [{ at: [`settings ${setting}`] }] });
  });

  it('without an own identity lets no call wait to be sent: ITU-R M.493, self-identification', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'prepare-alert' });
    const { settings } = radio.state;
    const result = restoreStation({ ...radio.state, settings: { ...settings, mmsi: 'x' } });
    expect(valueOf(result).dialogues).toEqual([]);
    expect(result.ok && result.notices.map(({ at }) => at[0])).toContain('dialogues 0');
  });

  it.each<[what: string, change: object]>([
    ['a number for an identity', { to: { kind: 'station', mmsi: 232999142 } }],
    ['a kind that no call has', { kind: 'bogus', to: null }],
    ['a channel that is a number', { channel: 72 }],
  ])('takes no call with %s', (_, change) => {
    const radio = new Radio({ mmsi: own });
    radio.give({
      kind: 'call',
      call: composeIndividualCall({ from: own, to: '232999142', channel: '72' }),
    });
    const [dialogue] = radio.state.dialogues;
    const damaged = { ...dialogue, call: { ...dialogue?.call, ...change } };
    const result = restoreStation({ ...radio.state, dialogues: [damaged] });
    expect(valueOf(result).dialogues).toEqual([]);
    expect(result.ok && result.notices.map(({ at }) => at[0])).toContain('dialogues 0');
  });

  it('with nonsense in any place still gives a station that works', () => {
    const places = pathsOf(stored);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...places), nonsense), { minLength: 1, maxLength: 4 }),
        fc.array(fc.oneof(heardCall.map(asHeard), callToStart.map(asCall), alertAct), { maxLength: 8 }),
        (changes, history) => {
          const spoilt = JSON.parse(JSON.stringify(stored)) as unknown;
          for (const [path, value] of changes) put(spoilt, path, value);
          const result = restoreStation(spoilt);
          if (!result.ok) return;
          let { value: state } = result;
          for (const happening of history)
            state = step(state, { ...happening, at: state.now + 100 } as StationEvent).state;
          expect(everythingEnds(state)).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });
});

const nonsense = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    'constructor',
    '__proto__',
    -1,
    1e300,
    1.5,
    '',
    [],
    {},
    true,
    'sending',
    club,
  ),
  fc.jsonValue(),
);

function asHeard(call: Extract<StationEvent, { kind: 'received' }>['call']) {
  return { kind: 'received', call, verdict: 'clean' } as const;
}

function asCall(call: Extract<StationEvent, { kind: 'call' }>['call']) {
  return { kind: 'call', call, because: bothGrounds } as const;
}

/** Lets the station run on its own, its transmitter dead, the own alert stopped. */
function everythingEnds(first: StationState): boolean {
  let state = first;
  for (let turn = 0; turn < 500 && state.dialogues.length > 0; turn++) {
    const at = Math.max(state.now, state.wakeAt ?? state.now);
    if (state.dialogues.some(({ phase }) => phase === 'waiting-acknowledgement')) {
      state = step(state, { kind: 'stop-alert', at }).state;
    }
    state = step(state, { kind: 'clock', at }).state;
  }
  return state.dialogues.length === 0;
}

type Path = readonly (string | number)[];

function pathsOf(value: unknown, at: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  const inner = Object.entries(value).flatMap(([key, each]) => pathsOf(each, [...at, key]));
  return at.length === 0 ? inner : [at, ...inner];
}

function put(root: unknown, path: Path, value: unknown): void {
  let place = root as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) {
    const next = place[key];
    if (typeof next !== 'object' || next === null) return;
    place = next as Record<string | number, unknown>;
  }
  place[path.at(-1) as string | number] = value;
}
