import {
  type Call,
  composeDistressAlert,
  composeDistressRelay,
  composeGroupCall,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from '../../../src/call/index.ts';
import {
  createStation,
  type Dialogue,
  type Effect,
  type EventWithoutTime,
  restoreStation,
  type SettingsInput,
  type StationEvent,
  type StationState,
  step,
} from '../../../src/station/index.ts';

// Histories of a station with restores in the middle, and a bystander who knows nothing of the code under test: who
// acted since the last restore, and what was received clean. Identities invented.

const OWN = '232999871';
const FRIEND = '232999142';
const COAST = '002329990';
const TROUBLED = '232999218';
const CLUB = '023299905';
const MINUTE = 60_000;
const START = Date.UTC(2026, 5, 1, 18, 0);

/** What the bystander noted. Plain data, so that equal histories can be told. */
interface Notes {
  /** Dialogues that a person acted on, or a clean call to this station led to, since the last restore. */
  readonly led: readonly number[];
  /** Dialogues on which a person said "confirm" since the last restore. */
  readonly confirmed: readonly number[];
  /** Since when the distress key is held. */
  readonly heldSince: number | null;
  /** The key was held long enough, and nobody acknowledged or stopped the alert since. */
  readonly alerting: boolean;
  /** Dialogue of the call on the air. */
  readonly onAir: number | null;
}

/** A station, its clock and the notes about it. */
export interface World {
  readonly state: StationState;
  readonly now: number;
  readonly notes: Notes;
}

/** A world in which nothing has happened. */
export function newWorld(settings: SettingsInput): World {
  const notes = { led: [], confirmed: [], heldSince: null, alerting: false, onAir: null };
  return { state: createStation(settings), now: START, notes };
}

/** Gives an event, and holds the station to its promise. Throws with the broken promise. */
export function give(world: World, happening: EventWithoutTime, after = 0): World {
  const { state: before } = world;
  const now = world.now + after;
  const event = { ...happening, at: now } as StationEvent;
  // A clock that goes back takes every instant with it: the key is held as long as before.
  const back = Math.min(0, now - before.now);
  const { heldSince } = world.notes;
  const shifted = { ...world.notes, heldSince: heldSince === null ? null : heldSince + back };
  const seen = note({ ...world, notes: shifted }, event, now);
  const { state, effects } = step(before, event);
  const notes = afterStep(seen, before, state, event);
  let { onAir } = notes;
  for (const effect of effects) {
    const broken = promiseBrokenBy(effect, event, before, state, { ...notes, onAir });
    if (broken !== null)
      throw new Error(`${broken} at ${JSON.stringify(event)} in ${JSON.stringify(before)}`);
    if (effect.kind === 'send') onAir = effect.dialogue;
    if (effect.kind === 'stop-sending') onAir = null;
  }
  if (state.dialogues.length > 0 && state.wakeAt === null) throw new Error('a dialogue waits for nothing');
  return { state, now, notes: { ...notes, onAir } };
}

/** Stores the station and brings it back, spoilt in between or not, vouched for or not. */
export function restore(
  world: World,
  gap: number,
  { vouched = false, spoil }: { readonly vouched?: boolean; readonly spoil?: (stored: unknown) => void } = {},
): World {
  const stored: unknown = JSON.parse(JSON.stringify(world.state));
  spoil?.(stored);
  const now = world.now + gap;
  const result = restoreStation(stored, vouched ? { vouchedAt: now } : {});
  if (!result.ok) return { ...world, now };
  const { led, alerting } = world.notes;
  // The state was last stored when its last event came.
  const isShort = now - world.state.now >= 0 && now - world.state.now <= 4.5 * MINUTE;
  const notes: Notes = {
    led: vouched ? led : [],
    confirmed: [],
    heldSince: null,
    alerting: vouched && isShort && alerting,
    onAir: vouched && result.value.transmitting !== null ? world.notes.onAir : null,
  };
  return { state: result.value, now, notes };
}

/** Nobody acts any more: every dialogue ends. Worlds in `known` were seen to end. */
export function leaveAlone(first: World, known?: Set<string>): void {
  let world = give(first, { kind: 'channel', busy: false });
  for (let turn = 0; world.state.dialogues.length > 0; turn++) {
    if (known !== undefined) {
      const key = keyOf(world);
      if (known.has(key)) return;
      known.add(key);
    }
    if (turn > 1000) throw new Error(`a dialogue never ends: ${JSON.stringify(first.state)}`);
    if (world.notes.onAir !== null) world = give(world, { kind: 'sent', dialogue: world.notes.onAir });
    // An own alert goes on until it is acknowledged or stopped by hand, and rightly so.
    if (world.state.dialogues.some(({ phase }) => phase === 'waiting-acknowledgement'))
      world = give(world, { kind: 'stop-alert' });
    const wake = world.state.wakeAt ?? world.now;
    world = give(world, { kind: 'clock' }, Math.max(0, wake - world.now));
  }
}

function note({ state, notes }: World, event: StationEvent, now: number): Notes {
  switch (event.kind) {
    case 'press-alert':
      return state.dialogues.some(({ procedure }) => procedure === 'own-distress')
        ? { ...notes, heldSince: notes.heldSince ?? now }
        : notes;
    case 'release-alert':
      return heldLongEnough(notes, state, now) ? notes : { ...notes, heldSince: null };
    // "Try again now" is as much a person's word as "confirm".
    case 'confirm':
    case 'retry':
      return with_(notes, 'confirmed', event.dialogue);
    case 'answer':
    case 'reject':
    case 'counter-propose':
      return with_(notes, 'led', event.dialogue);
    case 'received': {
      if (!isCleanAndForUs(state, event)) return notes;
      const { from } = event.call;
      return state.dialogues.reduce(
        (kept, { id, procedure, call }) =>
          procedure === 'incoming' && call.from === from ? with_(kept, 'led', id) : kept,
        notes,
      );
    }
    default:
      return notes;
  }
}

/** What only the new state can tell: which dialogue the event opened. */
function afterStep(notes: Notes, before: StationState, after: StationState, event: StationEvent): Notes {
  let seen = notes;
  if (event.kind === 'call' || (event.kind === 'received' && isCleanAndForUs(before, event)))
    seen = with_(seen, 'led', before.nextDialogue);
  // Not in the middle of a transmission: then the station says so.
  if (event.kind === 'stop-alert' && after.dialogues.some(({ phase }) => phase === 'stopped'))
    seen = { ...seen, alerting: false };
  if (event.kind === 'confirm' || event.kind === 'retry') seen = with_(seen, 'led', event.dialogue);
  if (event.kind === 'sent' || event.kind === 'send-failed')
    seen = event.dialogue === seen.onAir ? { ...seen, onAir: null } : seen;
  if (heldLongEnough(seen, after, after.now)) seen = { ...seen, alerting: true, heldSince: null };
  const ids = new Set(after.dialogues.map(({ id }) => id));
  return {
    ...seen,
    led: seen.led.filter((id) => ids.has(id)),
    confirmed: seen.confirmed.filter((id) => ids.has(id)),
  };
}

function heldLongEnough({ heldSince }: Notes, { settings }: StationState, now: number): boolean {
  return heldSince !== null && now - heldSince >= (settings.timers['alert-hold'] ?? 3000);
}

function with_(notes: Notes, list: 'led' | 'confirmed', id: number): Notes {
  return notes[list].includes(id) ? notes : { ...notes, [list]: [...notes[list], id].sort((a, b) => a - b) };
}

function isCleanAndForUs(state: StationState, event: Extract<StationEvent, { kind: 'received' }>): boolean {
  if (event.verdict !== 'clean') return false;
  const { to } = event.call;
  switch (to?.kind) {
    case 'station':
      return to.mmsi !== null && to.mmsi === state.settings.mmsi;
    case 'group':
      return to.mmsi !== null && state.settings.groups.includes(to.mmsi);
    case 'area':
      return to.area !== null && state.fix !== null;
    case undefined:
      return false;
    default:
      return true;
  }
}

/** Whose act each kind of event is. Receiving, the clock and the set's own reports are nobody's. */
const persons: ReadonlySet<string> = new Set([
  'call',
  'answer',
  'reject',
  'counter-propose',
  'confirm',
  'decline',
  'retry',
  'dismiss',
  'select',
  'spoken',
  'assist',
  'stand-by',
  'traffic',
  'no-traffic',
  'acknowledge',
  'press-alert',
  'release-alert',
  'stop-alert',
  'cancel-alert',
]);

function promiseBrokenBy(
  effect: Effect,
  event: StationEvent,
  before: StationState,
  after: StationState,
  notes: Notes,
): string | null {
  if (effect.kind === 'tune') {
    if (persons.has(event.kind)) return null;
    const own = before.dialogues.find(({ id }) => id === effect.dialogue);
    if (own?.procedure === 'own-distress') return effect.channel === '16' ? null : 'retuned away from 16';
    if (event.kind === 'received')
      return isCleanAndForUs(before, event)
        ? null
        : 'the radio was retuned by a call that is not clean or not for us';
    return event.kind === 'sent' && notes.led.concat(notes.confirmed).includes(event.dialogue)
      ? null
      : 'the radio was retuned without a person';
  }
  if (effect.kind !== 'send') return null;
  const { call } = effect;
  const id = effect.dialogue ?? 0;
  if (notes.onAir !== null) return 'two transmissions at once';
  if (after.settings.mmsi === null || call.from !== after.settings.mmsi) return 'sent under another identity';
  const dialogue = [...after.dialogues, ...before.dialogues].find((each) => each.id === id);
  const fits = dialogue !== undefined && kindsOf[dialogue.procedure](call.kind);
  if (!fits) return `${call.kind} is no part of ${dialogue?.procedure}`;
  if (call.kind === 'distress-alert') return notes.alerting ? null : 'an alert without the key held';
  if (call.kind.startsWith('distress-'))
    return notes.confirmed.includes(id) ? null : `${call.kind} without a person`;
  return notes.led.includes(id) || notes.confirmed.includes(id) ? null : `${call.kind} without a person`;
}

const kindsOf: Readonly<Record<Dialogue['procedure'], (kind: string) => boolean>> = {
  outgoing: (kind) => kind === 'distress-relay' || !/^distress-|-acknowledgement$|unable/.test(kind),
  incoming: (kind) =>
    /^(individual|test|polling)-acknowledgement$|^position-reply$|^unable-to-comply$/.test(kind),
  'own-distress': (kind) => kind === 'distress-alert' || kind === 'distress-self-cancel',
  'heard-distress': (kind) => /^distress-(relay-)?acknowledgement$/.test(kind),
};

const alert = composeDistressAlert({ from: TROUBLED, nature: 'flooding' });
const asked = composeIndividualCall({ from: OWN, to: FRIEND, channel: '72' });
const individual = composeIndividualCall({ from: FRIEND, to: OWN, channel: '72' });
const acknowledgement: Call = {
  ...alert,
  kind: 'distress-acknowledgement',
  to: { kind: 'all-ships' },
  from: COAST,
  distressed: OWN,
};
const able: Call = { ...individual, kind: 'individual-acknowledgement' };
const relayed = composeDistressRelay({ from: COAST, to: OWN, about: alert });
const group = composeGroupCall({ from: FRIEND, to: CLUB, channel: '72' });
const relay = composeDistressRelay({ from: OWN, to: COAST, about: alert });

const heard = (call: Call, verdict: 'clean' | 'repaired' = 'clean') =>
  ({ kind: 'received', call, verdict }) as const;
const unread = (call: Call): Call => ({ ...call, to: { kind: 'station', mmsi: null } }) as Call;

/** One letter of the alphabet: what happens to a world; `null` when it cannot happen there. */
type Letter = (world: World) => World | null;
const happens =
  (happening: EventWithoutTime, after = 0): Letter =>
  (world) =>
    give(world, happening, after);
const toLatest =
  (kind: 'confirm' | 'decline' | 'answer' | 'acknowledge' | 'retry' | 'dismiss'): Letter =>
  (world) => {
    const dialogue = world.state.dialogues.at(-1)?.id;
    return dialogue === undefined ? null : give(world, { kind, dialogue });
  };
const reports =
  (kind: 'sent' | 'send-failed'): Letter =>
  (world) =>
    world.notes.onAir === null ? null : give(world, { kind, dialogue: world.notes.onAir });

/** The alphabet of the exploration: what is received, what a person does, time, and restores. */
export const alphabet: Readonly<Record<string, Letter>> = {
  'hear an alert': happens(heard(alert)),
  'hear a repaired alert': happens(heard(alert, 'repaired')),
  'hear a relay to us': happens(heard(relayed)),
  'hear an acknowledgement of us': happens(heard(acknowledgement)),
  'hear a repaired acknowledgement of us': happens(heard(acknowledgement, 'repaired')),
  'hear a call': happens(heard(individual)),
  'hear a repaired call': happens(heard(individual, 'repaired')),
  'hear a call, address unread': happens(heard(unread(individual), 'repaired')),
  'hear a position request': happens(heard(composePositionRequest({ from: FRIEND, to: OWN }))),
  'hear a group call': happens(heard(group)),
  'hear an answer': happens(heard(able)),
  'hear a repaired answer': happens(heard(able, 'repaired')),
  call: happens({ kind: 'call', call: asked }),
  relay: happens({
    kind: 'call',
    call: relay,
    because: { cannotAlertHerself: true, moreHelpNeeded: true },
  }),
  prepare: happens({ kind: 'prepare-alert' }),
  press: happens({ kind: 'press-alert' }),
  release: happens({ kind: 'release-alert' }, 1000),
  'cancel the alert': happens({ kind: 'cancel-alert' }),
  'stop the alert': happens({ kind: 'stop-alert' }),
  confirm: toLatest('confirm'),
  decline: toLatest('decline'),
  answer: toLatest('answer'),
  acknowledge: toLatest('acknowledge'),
  retry: toLatest('retry'),
  close: toLatest('dismiss'),
  sent: reports('sent'),
  'send failed': reports('send-failed'),
  busy: happens({ kind: 'channel', busy: true }),
  free: happens({ kind: 'channel', busy: false }),
  wake: (world) =>
    world.state.wakeAt === null
      ? null
      : give(world, { kind: 'clock' }, Math.max(0, world.state.wakeAt - world.now)),
  'ten minutes': happens({ kind: 'clock' }, 10 * MINUTE),
  restore: (world) => restore(world, 1000),
  'restore, vouched': (world) => restore(world, MINUTE, { vouched: true }),
  'restore, vouched, late': (world) => restore(world, 10 * MINUTE, { vouched: true }),
};

/** The stations that are explored. */
export const explored: readonly SettingsInput[] = [
  {
    mmsi: OWN,
    equipment: 'A',
    groups: [CLUB],
    policies: { individual: 'automatic', position: 'automatic', group: 'automatic' },
  },
];

/** Every sequence of letters up to a length, equal worlds merged. Returns how many there are, and how many steps led to them. */
export function explore(depth: number): { readonly states: number; readonly steps: number } {
  let steps = 0;
  const seen = new Set<string>();
  const ending = new Set<string>();
  let level: World[] = explored.map(newWorld);
  for (const world of level) seen.add(keyOf(world));
  for (let length = 0; length < depth; length++) {
    const next: World[] = [];
    for (const world of level)
      for (const letter of Object.values(alphabet)) {
        const reached = letter(world);
        if (reached === null) continue;
        steps++;
        const key = keyOf(reached);
        if (seen.has(key)) continue;
        seen.add(key);
        next.push(reached);
        leaveAlone(reached, ending);
      }
    level = next;
  }
  return { states: seen.size, steps };
}

/** Two worlds are equal when only the date, the numbering of dialogues and log entries, and the dice differ. */
function keyOf({ state, now, notes }: World): string {
  const order = new Map(state.dialogues.map(({ id }, index) => [id, index]));
  const instants = new Set([
    'at',
    'lastAt',
    'openedAt',
    'changedAt',
    'alertedAt',
    'lastAlertAt',
    'heldSince',
    'wakeAt',
    'now',
  ]);
  const ids = new Set(['id', 'active', 'transmitting', 'onAir', 'dialogue']);
  const plain = { state: { ...state, nextDialogue: 0, nextLogEntry: 0, random: 0, settings: 0 }, notes };
  return JSON.stringify(plain, (key, value: unknown) => {
    if (typeof value === 'number' && instants.has(key)) return value - now;
    if (typeof value === 'number' && ids.has(key)) return order.get(value) ?? -1;
    if (key === 'led' || key === 'confirmed') return (value as number[]).map((id) => order.get(id) ?? -1);
    if (key === 'waits')
      return Object.fromEntries(
        Object.entries(value as object).map(([wait, until]) => [wait, (until as number) - now]),
      );
    return value;
  });
}

/** Random numbers of xorshift32, apart from those of the code under test. */
function dice(seed: number): (sides: number) => number {
  let state = (seed ^ 0x9e3779b9) >>> 0 || 1;
  return (sides) => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % sides;
  };
}

/** What came of {@link attackStation}. */
export interface Attack {
  readonly events: number;
  readonly restores: number;
  readonly spoilt: number;
  readonly sent: number;
}

/** Random histories with restores at random moments, of spoilt states too. Throws with the first broken promise. */
export function attackStation({ events, seed }: { readonly events: number; readonly seed: number }): Attack {
  const roll = dice(seed);
  const oneOf = <T>(list: readonly T[]): T => list[roll(list.length)] as T;
  const letters = Object.values(alphabet);
  const count = { events: 0, restores: 0, spoilt: 0, sent: 0 };
  while (count.events < events) {
    let world = newWorld(oneOf(attacked));
    for (let length = 20 + roll(100); length > 0; length--) {
      const which = roll(12);
      if (which === 0) {
        const gap = oneOf([0, 1, 30_000, 3 * MINUTE, 5 * MINUTE, 3 * 1440 * MINUTE, -MINUTE]);
        const vouched = roll(2) === 0;
        const spoil = !vouched && roll(2) === 0 ? (stored: unknown) => spoilState(stored, roll) : undefined;
        world = restore(world, gap, { vouched, ...(spoil && { spoil }) });
        count.restores++;
        if (spoil !== undefined) count.spoilt++;
      } else if (which < 3) {
        world = give(world, oneOf(strange(roll)), oneOf([0, 100, 20_000, 4 * MINUTE, -1000]));
      } else {
        const onAir = world.notes.onAir;
        world = oneOf(letters)(world) ?? world;
        if (world.notes.onAir !== null && onAir === null) count.sent++;
      }
      count.events++;
    }
    leaveAlone(world);
  }
  return count;
}

const attacked: readonly SettingsInput[] = [
  ...explored,
  { mmsi: OWN },
  { mmsi: OWN, equipment: 'A', tuning: 'by-hand' },
  { mmsi: COAST, equipment: 'coast', policies: { individual: 'automatic', position: 'reject-busy' } },
  { mmsi: null },
];

/** Events with whatever identities a call can carry, at any verdict. */
function strange(roll: (sides: number) => number): readonly EventWithoutTime[] {
  const mmsi =
    ['970123456', '974123456', '972123456', COAST, CLUB, '999999999', OWN, FRIEND, TROUBLED, null][
      roll(10)
    ] ?? null;
  const other = [OWN, COAST, FRIEND, null][roll(4)] ?? null;
  const verdict = (['clean', 'repaired', 'doubtful'] as const)[roll(3)] ?? 'clean';
  const stage = ([undefined, 'provisional', 'final'] as const)[roll(3)];
  const reading = stage === undefined ? {} : { event: roll(4), stage };
  const calls: readonly Call[] = [
    { ...alert, from: mmsi },
    { ...relayed, from: mmsi, to: { kind: 'station', mmsi: other } },
    { ...relayed, distressed: mmsi, from: other },
    { ...acknowledgement, from: mmsi, distressed: other } as Call,
    { ...individual, from: mmsi, to: { kind: 'station', mmsi: other } },
    { ...able, from: mmsi, to: { kind: 'station', mmsi: other } } as Call,
    { ...composeTestCall({ from: FRIEND, to: OWN }), from: mmsi },
    { ...group, to: { kind: 'group', mmsi } },
  ];
  return calls.map((call) => ({ kind: 'received', call, verdict, ...reading }) as const);
}

/** Changes one to four values of a stored state: to nonsense, or to what would make it transmit. */
function spoilState(stored: unknown, roll: (sides: number) => number): void {
  const places = placesOf(stored);
  for (let changes = 1 + roll(4); changes > 0; changes--) {
    const [holder, key] = places[roll(places.length)] as readonly [Record<string, unknown>, string];
    if (key === 'phase' && roll(4) > 0) holder[key] = phases[roll(phases.length)];
    else holder[key] = values[roll(values.length)];
  }
  if (roll(2) === 0) forge(stored, roll);
}

/** Puts a dialogue that nobody opened into a stored state. */
function forge(stored: unknown, roll: (sides: number) => number): void {
  const state = stored as { dialogues?: unknown; now?: unknown };
  if (!Array.isArray(state.dialogues)) return;
  const answer = [
    { ...alert, from: OWN },
    able,
    { ...acknowledgement, from: OWN, distressed: TROUBLED },
    null,
  ][roll(4)];
  const call = [individual, asked, relay, { ...alert, from: OWN }, alert, relayed][roll(6)];
  state.dialogues = [
    {
      id: 1,
      openedAt: state.now,
      changedAt: state.now,
      waits: {},
      procedure: ['outgoing', 'incoming', 'own-distress', 'heard-distress'][roll(4)],
      phase: phases[roll(phases.length)],
      call,
      answer,
      verdict: 'clean',
      times: 1,
      attempts: roll(3),
      allowed: 3,
      automatic: roll(2) === 0,
      channel: '72',
      because: roll(2) === 0 ? { cannotAlertHerself: true, moreHelpNeeded: true } : null,
      nature: 'fire',
      alertedAt: state.now,
      acknowledgement: null,
      stopped: false,
      cancelWanted: roll(2) === 0,
      spoken: false,
      distressed: TROUBLED,
      alerts: 3,
      lastAlertAt: state.now,
      acknowledgedBy: null,
    },
  ];
}

const phases = [
  'confirming',
  'waiting-channel',
  'sending',
  'waiting-answer',
  'retry-wait',
  'agreed',
  'on-channel',
  'deciding',
  'shown',
  'prepared',
  'countdown',
  'waiting-acknowledgement',
  'interrupted',
  'cancel-asked',
  'cancel-waiting',
  'cancel-sending',
  'acknowledge-asked',
  'acknowledge-waiting',
  'acknowledge-sending',
  'undecided',
];
const values: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e300,
  '',
  'x',
  '72',
  OWN,
  COAST,
  'clean',
  'automatic',
  'coast',
  [],
  {},
  individual,
  asked,
  relay,
  alert,
];

function placesOf(value: unknown): (readonly [Record<string, unknown>, string])[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...placesOf(holder[key])]);
}
