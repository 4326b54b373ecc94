import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../src/burst/index.ts';
import type { Call } from '../../src/call/index.ts';
import {
  createStation,
  type Effect,
  restoreStation,
  type SettingsInput,
  type StationEvent,
  type StationState,
  step,
} from '../../src/station/index.ts';
import {
  alertAct,
  bothGrounds,
  callToStart,
  club,
  heardCall,
  interval,
  own,
  personAct,
} from './happenings.ts';
import { deepFreeze, effectsOf, type Happening } from './radio.ts';

/** What a bystander keeps track of: enough to tell whether the station behaves. */
interface Bystander {
  busy: boolean;
  onAir: Effect<'send'> | null;
  lastEntry: number;
  /** Dialogues whose question was answered with "confirm". */
  confirmed: Set<number>;
}

interface Bench {
  state: StationState;
  now: number;
}

const POSSIBLE_ALARMS = 6;

/** Gives an event to the station and holds it to its promises. */
function give(model: Bystander, bench: Bench, happening: Happening): readonly Effect[] {
  const event = { ...happening, at: bench.now } as StationEvent;
  if (event.kind === 'channel') model.busy = event.busy;
  if (event.kind === 'confirm') model.confirmed.add(event.dialogue);
  if (event.kind === 'sent' || event.kind === 'send-failed') model.onAir = null;
  const before = deepFreeze(bench.state);
  const { state, effects } = step(before, event);
  expect(step(before, event), 'the same step again').toEqual({
    state,
    effects,
    transitions: expect.anything(),
  });
  for (const effect of effects) follow(model, before, state, effect);
  expect(JSON.parse(JSON.stringify(state)), 'plain data').toEqual(state);
  expect(state.dialogues.length).toBeLessThanOrEqual(32);
  expect(state.heardAlerts.length).toBeLessThanOrEqual(20);
  expect(state.sounding.length).toBeLessThanOrEqual(POSSIBLE_ALARMS);
  if (state.dialogues.length > 0) expect(state.wakeAt, 'never stuck').not.toBeNull();
  if (state.wakeAt !== null) expect(state.wakeAt, 'nothing overdue').toBeGreaterThan(state.now);
  expect(state.active === null).toBe(state.dialogues.length === 0);
  bench.state = state;
  return effects;
}

function follow(model: Bystander, before: StationState, after: StationState, effect: Effect): void {
  switch (effect.kind) {
    case 'send': {
      expect(model.onAir, 'never two transmissions at once').toBeNull();
      expect(after.settings.mmsi, 'no transmission without an identity').not.toBeNull();
      expect(effect.call.from).toBe(after.settings.mmsi);
      const dialogue = after.dialogues.find(({ id }) => id === effect.dialogue);
      if (model.busy)
        expect(dialogue?.procedure, 'only distress is sent on a busy channel').toBe('own-distress');
      if (isDistress(effect.call)) {
        const deliberate =
          dialogue?.procedure === 'own-distress' || model.confirmed.has(effect.dialogue as number);
        expect(deliberate, 'distress is never answered or relayed without a person').toBe(true);
      }
      model.onAir = effect;
      break;
    }
    case 'stop-sending':
      expect(model.onAir?.dialogue, 'only what is on the air is stopped').toBe(effect.dialogue);
      model.onAir = null;
      break;
    case 'log':
      expect(effect.entry.number, 'no entry is missing or written twice').toBe(model.lastEntry + 1);
      model.lastEntry = effect.entry.number;
      break;
    case 'sound':
      if (effect.lasts === 'until-silenced' && !before.restored)
        expect(before.sounding).not.toContain(effect.alarm);
      break;
    default:
      break;
  }
  const about = [...before.dialogues, ...after.dialogues].find(({ id }) => id === effect.dialogue);
  if (about?.procedure === 'own-distress' || about?.procedure === 'heard-distress') {
    expect(effect.caution, 'what concerns distress carries its caution').not.toBeNull();
    if (effect.kind !== 'issue') expect(effect.clause).not.toBeNull();
  }
}

function isDistress(call: Call): boolean {
  return call.kind.startsWith('distress-');
}

class GiveCommand implements fc.Command<Bystander, Bench> {
  constructor(
    private readonly name: string,
    private readonly gap: number,
    private readonly happening: (bench: Bench, model: Bystander) => Happening | null,
  ) {}
  check(): boolean {
    return true;
  }
  run(model: Bystander, bench: Bench): void {
    bench.now += this.gap;
    const happening = this.happening(bench, model);
    if (happening !== null) give(model, bench, happening);
  }
  toString(): string {
    return `${this.name} after ${this.gap} ms`;
  }
}

const instant = fc.oneof(
  fc.double(),
  fc.constantFrom(Number.NaN, Infinity, -Infinity, 8.64e15, -8.64e15, 1e308),
);
const asHeard = heardCall.map((call): Happening => ({ kind: 'received', call, verdict: 'clean' }));
const verdict = fc.constantFrom<Verdict>('clean', 'clean', 'repaired', 'doubtful');
const latest = ({ state }: Bench) => state.nextDialogue - 1;

const commands: readonly fc.Arbitrary<GiveCommand>[] = [
  fc
    .tuple(interval, heardCall, verdict)
    .map(
      ([gap, call, verdict]) =>
        new GiveCommand(`hear ${call.kind} ${verdict}`, gap, () => ({ kind: 'received', call, verdict })),
    ),
  fc.tuple(interval, callToStart, fc.boolean()).map(
    ([gap, call, named]) =>
      new GiveCommand(`call ${call.kind}`, gap, () => ({
        kind: 'call',
        call,
        ...(named && { because: bothGrounds }),
      })),
  ),
  fc
    .tuple(interval, personAct)
    .map(([gap, act]) => new GiveCommand('act', gap, (bench) => act(latest(bench)))),
  fc.tuple(interval, alertAct).map(([gap, act]) => new GiveCommand(act.kind, gap, () => act)),
  fc
    .tuple(interval, fc.boolean())
    .map(([gap, busy]) => new GiveCommand(`busy ${busy}`, gap, () => ({ kind: 'channel', busy }))),
  fc
    .tuple(interval, fc.boolean())
    .map(
      ([gap, works]) =>
        new GiveCommand(`sent ${works}`, gap, (_, { onAir }) =>
          onAir === null
            ? null
            : { kind: works ? 'sent' : 'send-failed', dialogue: onAir.dialogue as number },
        ),
    ),
  interval.map((gap) => new GiveCommand('silence', gap, () => ({ kind: 'silence' }))),
  fc.constant(
    new GiveCommand('wake', 0, (bench) => {
      if (bench.state.wakeAt !== null) bench.now = bench.state.wakeAt;
      return { kind: 'clock' };
    }),
  ),
  interval.map(
    (gap) =>
      new GiveCommand('fix', gap, () => ({
        kind: 'fix',
        position: { latitude: 56.34, longitude: -6.5 },
        source: 'instrument',
      })),
  ),
  interval.map(
    (gap) => new GiveCommand('note', gap, () => ({ kind: 'note', text: 'Wind south-west 4', corrects: 1 })),
  ),
  interval.map(
    (gap) =>
      new GiveCommand('restart', gap, (bench) => {
        const restored = restoreStation(JSON.parse(JSON.stringify(bench.state)), {
          vouchedAt: bench.state.now,
        });
        expect(restored).toMatchObject({ ok: true });
        if (restored.ok) {
          // An honest state is whole: at most a person is asked first.
          for (const { code } of restored.notices) expect(code).toBe('station-state-asks');
          const { wakeAt } = bench.state;
          if (restored.notices.length === 0)
            expect({ ...restored.value, restored: false, wakeAt }).toEqual(bench.state);
          bench.state = restored.value;
        }
        return { kind: 'clock' };
      }),
  ),
];

const automatic = {
  individual: 'automatic',
  position: 'automatic',
  test: 'automatic',
  polling: 'automatic',
  group: 'automatic',
  area: 'automatic',
  'all-ships': 'automatic',
} as const;

const settings = fc.constantFrom<SettingsInput>(
  { mmsi: own, groups: [club] },
  { mmsi: own, equipment: 'A', policies: automatic },
  {
    mmsi: own,
    equipment: 'H',
    tuning: 'by-hand',
    callers: [{ caller: '232999142', policy: 'reject-station-barred' }],
  },
  { mmsi: '002329990', equipment: 'coast', designated: true, policies: automatic },
  { mmsi: null },
);

describe('the station, over random histories', () => {
  it('keeps its promises, and every dialogue ends', () => {
    fc.assert(
      fc.property(
        settings,
        fc.commands([...commands], { maxCommands: 150, size: 'max' }),
        (entry, history) => {
          const model: Bystander = { busy: false, onAir: null, lastEntry: 0, confirmed: new Set() };
          const bench: Bench = { state: createStation(entry), now: Date.UTC(2026, 5, 1, 18, 0) };
          fc.modelRun(() => ({ model, real: bench }), history);
          leaveAlone(model, bench);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('bears any instant, even none', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(instant, fc.oneof(alertAct, asHeard)), { maxLength: 20 }), (moments) => {
        let state = createStation({ mmsi: own });
        for (const [at, happening] of moments)
          state = step(state, { ...happening, at } as StationEvent).state;
        expect(Number.isFinite(state.now)).toBe(true);
      }),
    );
  });
});

/** Nobody touches the radio any more: what is on the air ends, waits end, and in the end nothing is left to do. */
function leaveAlone(model: Bystander, bench: Bench): void {
  bench.now = Math.max(bench.now, bench.state.now);
  give(model, bench, { kind: 'channel', busy: false });
  for (let wakes = 0; bench.state.dialogues.length > 0; wakes++) {
    expect(wakes, 'ends in bounded steps').toBeLessThan(1000);
    if (model.onAir !== null) give(model, bench, { kind: 'sent', dialogue: model.onAir.dialogue as number });
    // An own alert goes on until it is acknowledged or stopped by hand, and rightly so.
    if (bench.state.dialogues.some(({ phase }) => phase === 'waiting-acknowledgement'))
      give(model, bench, { kind: 'stop-alert' });
    bench.now = Math.max(bench.now, bench.state.wakeAt ?? bench.now);
    const effects = give(model, bench, { kind: 'clock' });
    expect(effectsOf(effects, 'issue')).toEqual([]);
  }
}
