// Random histories of a station, stored and restored on the way, whole and damaged (docs/guide/station.md):
//
// - distress is never sent without a person's acts in this very session;
// - only a call received clean and addressed to this very station is ever answered or followed without a person;
// - `step` never throws and changes neither state nor event; what it gives is plain data; its state is bounded;
// - where distress is concerned, `caution` is never null;
// - every dialogue ends.
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import type { Call } from '../../../src/call/index.ts';
import {
  createStation,
  type Effect,
  nextWake,
  restoreStation,
  type StationEvent,
  type StationState,
  type StationStep,
  step,
} from '../../../src/station/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { club, happening, mutatedState, own } from '../support/histories.ts';

/** Events of `npm run attack`. */
export const usual = 1_000_000;

const isDistress = (call: Call | null | undefined): boolean => call?.kind.startsWith('distress-') === true;

/** Acts by which a person wants something sent. */
const yes = new Set([
  'answer',
  'reject',
  'counter-propose',
  'confirm',
  'retry',
  'acknowledge',
  'call',
  'press-alert',
  'cancel-alert',
]);
/** Acts of a person. */
const byPerson = new Set([
  ...yes,
  'decline',
  'dismiss',
  'select',
  'spoken',
  'assist',
  'stand-by',
  'traffic',
  'no-traffic',
  'tuned',
  'settings',
  'silence',
  'prepare-alert',
  'release-alert',
  'stop-alert',
  'describe-alert',
]);

/** What answers what (ITU-R M.493 tables 4.7 to 4.9, from memory). */
const answersOf: Readonly<Record<string, readonly string[]>> = {
  'individual-call': ['individual-acknowledgement', 'unable-to-comply'],
  'position-request': ['position-reply', 'unable-to-comply'],
  'test-call': ['test-acknowledgement', 'unable-to-comply'],
  'polling-call': ['polling-acknowledgement', 'unable-to-comply'],
};

const addressedTo = (mmsi: string | null, call: Call): boolean =>
  mmsi !== null && call.to?.kind === 'station' && call.to.mmsi === mmsi;

/** What is known about a dialogue from outside. */
interface Witness {
  /** A person wanted something of it to be sent. */
  wanted: boolean;
  /** The same, since the state was last restored. */
  wantedSince: boolean;
  /** A person called, not the air. */
  begunBy: StationEvent | null;
  /** Calls received clean that this step or an earlier one may have answered. */
  clean: Call[];
}

/** The own alert, by the two acts of 80.1117 and M.493: prepared, then the key held for three seconds. */
interface Key {
  prepared: boolean;
  pressedAt: number | null;
  held: boolean;
  /** An alert went out by both acts, or a person acted on it, since the state was last restored. */
  running: boolean;
  cancelAsked: boolean;
  confirmed: boolean;
}

const noKey = (): Key => ({
  prepared: false,
  pressedAt: null,
  held: false,
  running: false,
  cancelAsked: false,
  confirmed: false,
});

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  let events = 0;
  for (let history = 0; events < count; history += 1) {
    const random = randomFrom(seed * 1_000_003 + history);
    events += oneHistory(random, notes, `seed ${seed}, history ${history}`);
    notes.count('histories');
  }
  return notes.outcome({ events });
};

function oneHistory(random: Random, notes: ReturnType<typeof notebook>, where: string): number {
  const equipment = pick(random, ['D', 'D', 'D', 'A', 'H', 'coast'] as const);
  const mmsi = equipment === 'coast' ? '002329991' : random.below(20) === 0 ? null : own;
  let state: StationState = createStation({
    mmsi,
    equipment,
    groups: [club],
    policies: {
      individual: pick(random, ['automatic', 'by-hand', 'reject-busy'] as const),
      position: pick(random, ['automatic', 'by-hand'] as const),
    },
  });
  let witnesses = new Map<number, Witness>();
  let key = noKey();
  let damaged = false;
  const witness = (id: number | null): Witness => {
    const known = witnesses.get(id ?? -1) ?? { wanted: false, wantedSince: false, begunBy: null, clean: [] };
    witnesses.set(id ?? -1, known);
    return known;
  };
  const past: string[] = [];
  const broken = (what: string, more: unknown): void =>
    notes.broken(what, `${where}, event ${past.length}: ${show(more)} after ${past.slice(-4).join(' ; ')}`);

  const length = 20 + random.below(120);
  for (let number = 0; number < length; number += 1) {
    if (random.below(15) === 0) {
      const mutate = random.below(3) === 0;
      const stored = mutate ? mutatedState(random, state) : JSON.parse(JSON.stringify(state));
      const restored = restoreStation(stored);
      notes.count(mutate ? 'damaged restores' : 'restores');
      past.push(mutate ? 'damaged restore' : 'restore');
      if (restored.ok) {
        state = restored.value;
        damaged ||= mutate;
        key = noKey();
        if (mutate) witnesses = new Map();
        for (const one of witnesses.values()) one.wantedSince = false;
      } else if (!mutate) broken('an honest state is not restored', restored.issues);
      continue;
    }
    const event = happening(random, state);
    const before = JSON.stringify(state);
    let turn: StationStep;
    try {
      turn = step(deepFrozen(state), event);
    } catch (error) {
      broken(damaged ? 'step throws after a damaged restore' : 'step throws', {
        error: String(error),
        event,
      });
      break;
    }
    past.push(
      event !== null && typeof event === 'object'
        ? `${event.kind} ${show(event).slice(0, 160)}`
        : show(event),
    );
    if (JSON.stringify(state) !== before) broken('step changes the state it was given', event);
    follow(event, state, turn);
    state = turn.state;
  }
  endQuietly();
  return past.length;

  /** Updates the witnesses by the event, then holds every effect to them. */
  function follow(event: StationEvent, before: StationState, turn: StationStep): void {
    if (event === null || typeof event !== 'object') return;
    const followed = !turn.effects.some((effect) => effect.kind === 'issue');
    const opened = turn.state.dialogues.filter(({ id }) => !before.dialogues.some((one) => one.id === id));
    if (event.kind === 'call' && followed) for (const { id } of opened) witness(id).begunBy = event;
    if (followed && yes.has(event.kind) && 'dialogue' in event) {
      witness(event.dialogue).wanted = true;
      witness(event.dialogue).wantedSince = true;
    }
    if (event.kind === 'received' && event.verdict === 'clean') {
      for (const { id } of turn.state.dialogues)
        witness(id).clean = [...witness(id).clean.slice(-3), event.call];
    }
    if (event.kind === 'call') for (const { id } of opened) witness(id).wantedSince = true;
    if (event.kind === 'prepare-alert') key.prepared = true;
    if (event.kind === 'press-alert') {
      // The first act may lie before this session, and an alert that was broken off needs none again; the key does.
      key.prepared ||= before.dialogues.some(
        ({ procedure, phase }) =>
          procedure === 'own-distress' && (phase === 'prepared' || phase === 'interrupted'),
      );
    }
    if (event.kind === 'press-alert' && key.prepared && key.pressedAt === null) key.pressedAt = event.at;
    if (event.kind === 'release-alert') key.pressedAt = null;
    // A clock that is put back takes all waits with it.
    if (key.pressedAt !== null && event.at < before.now) key.pressedAt += event.at - before.now;
    if (key.pressedAt !== null && event.at - key.pressedAt >= 3000) key.held = true;
    if (event.kind === 'cancel-alert') key.cancelAsked = true;
    if (event.kind === 'stop-alert' && !turn.effects.some(({ kind }) => kind === 'issue'))
      key.running = false;
    if (event.kind === 'confirm' || event.kind === 'retry') {
      key.confirmed = true;
      if (before.dialogues.some(({ id, procedure }) => id === event.dialogue && procedure === 'own-distress'))
        key.running = true;
    }
    for (const effect of turn.effects) check(effect, event, before, turn.state);
    if (!isDeepStrictEqual(JSON.parse(JSON.stringify(turn.effects)), turn.effects))
      broken('effects are not plain data', turn.effects);
    if (!isDeepStrictEqual(JSON.parse(JSON.stringify(turn.state)), turn.state))
      broken('the state is not plain data', event);
    if (turn.state.dialogues.length > 32 || turn.state.heardAlerts.length > 20)
      broken('the state grows', event);
  }

  function check(effect: Effect, event: StationEvent, before: StationState, after: StationState): void {
    notes.count(`effects: ${effect.kind}`);
    const subject = [...after.dialogues, ...before.dialogues].find(({ id }) => id === effect.dialogue);
    const aboutDistress =
      subject?.procedure === 'own-distress' ||
      subject?.procedure === 'heard-distress' ||
      ('call' in effect && isDistress(effect.call)) ||
      (subject !== undefined && isDistress(subject.call));
    if (
      aboutDistress &&
      effect.caution === null &&
      ['send', 'ask', 'show', 'speak', 'advise'].includes(effect.kind)
    ) {
      broken(`no caution where distress is concerned (${effect.kind})`, { effect, event });
    }
    if (effect.kind === 'send') checkSend(effect, event, before, after);
    if (effect.kind === 'tune') checkTune(effect, event, before);
  }

  function checkSend(
    effect: Effect & { kind: 'send' },
    event: StationEvent,
    before: StationState,
    after: StationState,
  ): void {
    const { call } = effect;
    const { mmsi: self, equipment } = after.settings;
    const seen = witness(effect.dialogue);
    const why = { call, event, times: effect.times };
    if (call.from !== self || self === null) broken('sends under another identity', why);
    if (call.to?.kind === 'station' && call.to.mmsi === self) broken('calls itself', why);
    if (call.kind === 'distress-alert') {
      if (!key.running && !(key.prepared && key.held))
        broken('an alert without both acts in this session', why);
      key.running = true;
      key.prepared = false;
      key.pressedAt = null;
      key.held = false;
    } else if (call.kind === 'distress-self-cancel') {
      if (!(key.cancelAsked || key.running) || !key.confirmed)
        broken('a cancellation without a person in this session', why);
    } else if (call.kind === 'distress-acknowledgement') {
      if (!seen.wantedSince) broken('a distress acknowledgement without a person in this session', why);
      if (equipment !== 'coast' && equipment !== 'A')
        broken(`a distress acknowledgement from class ${equipment}`, why);
    } else if (isDistress(call)) {
      if (!seen.wantedSince) broken(`a ${call.kind} without a person in this session`, why);
      const { begunBy } = seen;
      const grounds = begunBy?.kind === 'call' && begunBy.because !== undefined;
      if (call.kind === 'distress-relay' && equipment !== 'coast' && !grounds && !damaged)
        broken('a relay without grounds', why);
    } else if (!seen.wanted && seen.begunBy === null) {
      notes.count('sent without a person');
      if (event.kind === 'received' && (event.verdict !== 'clean' || !addressedTo(self, event.call))) {
        // The event at hand gives no leave; an earlier one may, when the channel was busy until now.
        if (
          !before.dialogues.some(({ id, phase }) => id === effect.dialogue && phase.startsWith('waiting'))
        ) {
          broken('an answer to what is not clean, or not for this station', why);
        }
      }
      const stored = before.dialogues.find(({ id }) => id === effect.dialogue);
      const answered = (asked: Call): boolean =>
        addressedTo(self, asked) &&
        asked.from !== null &&
        call.to?.kind === 'station' &&
        call.to.mmsi === asked.from &&
        (answersOf[asked.kind]?.includes(call.kind) ?? false);
      const fromStore =
        damaged &&
        stored !== undefined &&
        (stored.procedure === 'outgoing' ||
          (stored.procedure === 'incoming' && stored.verdict === 'clean' && answered(stored.call)));
      if (!fromStore && !seen.clean.some(answered))
        broken('an answer to no clean call for this station', { ...why, stored });
    }
  }

  function checkTune(effect: Effect & { kind: 'tune' }, event: StationEvent, before: StationState): void {
    if (byPerson.has(event.kind)) return;
    const { settings } = before;
    const alert = before.dialogues.find(({ id }) => id === effect.dialogue)?.procedure === 'own-distress';
    if (alert && key.running) return;
    if (event.kind === 'received') {
      const { to } = event.call;
      const forUs =
        addressedTo(settings.mmsi, event.call) ||
        (to?.kind === 'group' && to.mmsi !== null && settings.groups.includes(to.mmsi)) ||
        ['all-ships', 'area', 'all-stations'].includes(to?.kind ?? '') ||
        // Distress concerns everybody who hears it.
        isDistress(event.call);
      if (event.verdict !== 'clean' || !forUs)
        broken('retuned by what is not clean, or not for this station', { event, effect });
      return;
    }
    const seen = witness(effect.dialogue);
    if (!damaged && !seen.wanted && seen.begunBy === null && seen.clean.length === 0 && !key.running) {
      broken('retuned by nobody', { event, effect });
    }
  }

  /** Nobody does anything more: the radio reports what it sent, and the clock goes on. */
  function endQuietly(): void {
    const { now: at } = state;
    const last: StationEvent[] = state.dialogues
      .filter(({ procedure }) => procedure === 'own-distress')
      .flatMap(({ id: dialogue }) => [
        { kind: 'release-alert', at },
        { kind: 'stop-alert', at },
        { kind: 'confirm', at, dialogue },
        { kind: 'dismiss', at, dialogue },
      ]);
    for (let ticks = 0; ticks < 2000; ticks += 1) {
      const wake = nextWake(state);
      if (state.transmitting === null && wake === null && last.length === 0) break;
      const event: StationEvent =
        last.shift() ??
        (state.transmitting === null
          ? { kind: 'clock', at: Math.max(state.now, wake as number) }
          : { kind: 'sent', at: state.now + 700, dialogue: state.transmitting });
      try {
        const turn = step(state, event);
        follow(event, state, turn);
        state = turn.state;
      } catch (error) {
        broken('step throws at the end', String(error));
        return;
      }
    }
    const left = state.dialogues.filter(({ procedure }) => procedure !== 'own-distress');
    if (left.length > 0)
      broken(
        'a dialogue never ends',
        left.map(({ procedure, phase, waits }) => ({ procedure, phase, waits })),
      );
  }
}

function deepFrozen<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const one of Object.values(value)) deepFrozen(one);
  }
  return value;
}
