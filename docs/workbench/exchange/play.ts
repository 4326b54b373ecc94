import { encodeCall, type Verdict } from 'seahail/burst';
import { type Call, describeCall, spokenScript } from 'seahail/call';
import {
  createStation,
  type Effect,
  nextWake,
  type Policy,
  type StationEvent,
  type StationState,
  step,
} from 'seahail/station';
import { inventedName } from '../frame/names.ts';
import { BEGIN, type Role, type Scene } from './scenes.ts';

/** Who of the two. */
export type Side = 0 | 1;

/** One line of the play. */
export interface Line {
  readonly side: Side;
  readonly kind: 'person' | 'clock' | Exclude<Effect['kind'], 'wake' | 'log'>;
  readonly text: string;
  readonly clause: string | null;
  readonly caution: string | null;
  /** Words to be spoken, one line each. */
  readonly spoken: readonly string[];
}

/** What one push of the button brought. */
export interface Turn {
  readonly at: number;
  readonly lines: readonly Line[];
}

/** Something a person at one of the stations can do now. */
export interface Choice {
  readonly side: Side;
  readonly label: string;
  readonly event: StationEvent;
}

interface Happening {
  readonly at: number;
  readonly side: Side;
  readonly event: StationEvent;
}

/** The two stations, what is about to happen, and what has. */
export interface Play {
  readonly scene: Scene;
  readonly air: Verdict | 'lost';
  readonly now: number;
  readonly states: readonly [StationState, StationState];
  readonly ahead: readonly Happening[];
  readonly choices: readonly Choice[];
  readonly turns: readonly Turn[];
}

/** A play before its first step. */
export function beginPlay(scene: Scene, manner: Policy, air: Play['air']): Play {
  const stations = scene.roles.map((role, side) =>
    stationFor(role, side === 1 ? manner : 'by-hand', side + 1),
  );
  return {
    scene,
    air,
    now: BEGIN,
    states: stations as unknown as Play['states'],
    ahead: scene.opening.map(({ after, event }) => ({
      at: BEGIN + after,
      side: 0,
      event: { ...event, at: BEGIN + after },
    })),
    choices: [],
    turns: [],
  };
}

function stationFor(role: Role, policy: Policy, seed: number): StationState {
  const policies = {
    individual: policy,
    position: policy,
    test: 'automatic',
    polling: 'automatic',
    group: 'by-hand',
    area: 'by-hand',
    'all-ships': 'by-hand',
  } as const;
  const station = createStation({
    mmsi: role.mmsi,
    equipment: role.equipment,
    groups: role.groups ?? [],
    policies,
    seed,
  });
  return step(station, { kind: 'fix', at: BEGIN - 60_000, position: role.position, source: 'instrument' })
    .state;
}

/** What happens next without anybody's doing; `null` when nothing does. */
export function nextHappening(play: Play): Happening | null {
  const wakes = play.states.flatMap((state, side): Happening[] => {
    const at = nextWake(state);
    return at === null
      ? []
      : [
          {
            at: Math.max(at, play.now),
            side: side as Side,
            event: { kind: 'clock', at: Math.max(at, play.now) },
          },
        ];
  });
  const all = [...play.ahead, ...wakes].sort((a, b) => a.at - b.at);
  return all[0] ?? null;
}

/** The play after its next happening. */
export function advance(play: Play): Play {
  const next = nextHappening(play);
  if (next === null) return play;
  return follow({ ...play, ahead: play.ahead.filter((each) => each !== next) }, next);
}

/** The play after a person's choice. */
export function choose(play: Play, index: number): Play {
  const choice = play.choices[index];
  if (choice === undefined) return play;
  const at = play.now + 1000;
  return follow(play, { at, side: choice.side, event: { ...choice.event, at } }, choice.label);
}

function follow(play: Play, { at, side, event }: Happening, label?: string): Play {
  const now = Math.max(at, play.now);
  const turn = step(play.states[side], { ...event, at: now });
  const states = play.states.map((state, index) =>
    index === side ? turn.state : state,
  ) as unknown as Play['states'];
  const lines: Line[] = [];
  const first = firstLine(event, label);
  if (first !== null) lines.push(plain(side, event.kind === 'clock' ? 'clock' : 'person', first));
  let after: Play = { ...play, now, states, choices: choicesAfter(play, side, event) };
  for (const effect of turn.effects) {
    after = carryOut(after, side, effect, now);
    const line = lineOf(play.scene.roles[side], side, effect);
    if (line !== null) lines.push(line);
  }
  after = { ...after, choices: after.choices.filter((choice) => stillOpen(choice, states)) };
  // A clock that only looked, or a station that only listens, is no step worth showing.
  if (lines.every(({ kind }) => kind === 'clock'))
    return nextHappening(after) === null ? after : advance(after);
  return { ...after, turns: [...play.turns, { at: now, lines }] };
}

/** What an effect brings about: on the air, at the dial, and as questions. */
function carryOut(play: Play, side: Side, effect: Effect, now: number): Play {
  const other: Side = side === 0 ? 1 : 0;
  const then = (...happenings: Happening[]): Play => ({ ...play, ahead: [...play.ahead, ...happenings] });
  const offer = (...choices: Choice[]): Play => ({ ...play, choices: [...play.choices, ...choices] });
  switch (effect.kind) {
    case 'send': {
      const end = now + Math.round((encodeCall(effect.call).bits.length * effect.times) / 1.2);
      const heard: Happening[] =
        play.air === 'lost'
          ? []
          : [
              {
                at: end,
                side: other,
                event: { kind: 'heard', at: end, call: effect.call, verdict: play.air },
              },
            ];
      return then(
        { at: now, side: other, event: { kind: 'channel', at: now, busy: true } },
        { at: end, side, event: { kind: 'sent', at: end, dialogue: effect.dialogue ?? 0 } },
        { at: end, side: other, event: { kind: 'channel', at: end, busy: false } },
        ...heard,
      );
    }
    case 'tune':
      return then({ at: now, side, event: { kind: 'tuned', at: now, channel: effect.channel } });
    case 'ask':
      return offer(...effect.answers.flatMap((answer) => choicesFor(side, answer, effect.dialogue ?? 0)));
    case 'speak':
      return offer({
        side,
        label: 'The words were spoken',
        event: { kind: 'spoken', at: 0, dialogue: effect.dialogue ?? 0 },
      });
    case 'advise':
      return offer(
        ...(effect.advice.question?.answers ?? []).flatMap((answer) =>
          choicesFor(side, answer, effect.dialogue ?? 0),
        ),
      );
    default:
      return play;
  }
}

const LABELS: Readonly<Record<string, string>> = {
  answer: 'Answer: able to comply',
  refuse: 'Answer: busy',
  offer: 'Propose channel 77 instead',
  confirm: 'Yes',
  decline: 'No',
  retry: 'Try again',
  close: 'Put it away',
  spoken: 'The words were spoken',
  assist: 'This vessel can help',
  'stand-by': 'This vessel cannot help',
  traffic: 'Distress traffic is heard on channel 16',
  'no-traffic': 'Nothing is heard on channel 16',
  acknowledge: 'Acknowledge the alert',
  'stop-alert': 'Stop the repeats',
  'cancel-alert': 'The alert was false: take it back',
};

function choicesFor(side: Side, kind: string, dialogue: number): readonly Choice[] {
  const label = LABELS[kind];
  if (label === undefined) return [];
  const base = { at: 0, dialogue };
  switch (kind) {
    case 'refuse':
      return [{ side, label, event: { kind, ...base, reason: 'busy' } }];
    case 'offer':
      return [{ side, label, event: { kind, ...base, channel: '77' } }];
    case 'stop-alert':
    case 'cancel-alert':
      return [{ side, label, event: { kind, at: 0 } }];
    default:
      return [{ side, label, event: { kind, ...base } as StationEvent }];
  }
}

/** Questions of a dialogue go with the act that answers one of them. */
function choicesAfter(play: Play, side: Side, event: StationEvent): readonly Choice[] {
  if (!('dialogue' in event) || event.kind === 'sent') return play.choices;
  return play.choices.filter(
    (choice) =>
      choice.side !== side || !('dialogue' in choice.event) || choice.event.dialogue !== event.dialogue,
  );
}

function stillOpen(choice: Choice, states: Play['states']): boolean {
  const { event } = choice;
  return !('dialogue' in event) || states[choice.side].dialogues.some(({ id }) => id === event.dialogue);
}

function firstLine(event: StationEvent, label: string | undefined): string | null {
  if (label !== undefined) return label;
  switch (event.kind) {
    case 'call':
      return `${describe(event.call)}: the key is pressed`;
    case 'heard':
      return `Heard, ${event.verdict}: ${describe(event.call)}`;
    case 'sent':
      return 'The transmission is over';
    case 'prepare-alert':
      return 'The cover of the distress key is lifted, and flooding chosen';
    case 'press-alert':
      return 'The distress key is held down';
    case 'tuned':
      return `The set is on channel ${event.channel}`;
    case 'clock':
      return 'Time goes by';
    default:
      return null;
  }
}

function lineOf(role: Role, side: Side, effect: Effect): Line | null {
  const { clause, caution } = effect;
  const said = (text: string, spoken: readonly string[] = []): Line | null =>
    effect.kind === 'wake' || effect.kind === 'log'
      ? null
      : { side, kind: effect.kind, text, clause, caution, spoken };
  switch (effect.kind) {
    case 'send':
      return said(
        `on channel 70${effect.times === 5 ? ', five times in a row' : ''}: ${describe(effect.call)}`,
      );
    case 'stop-sending':
      return said('the transmission');
    case 'tune':
      return said(`to channel ${effect.channel}`);
    case 'sound':
      return said(
        `the alarm for ${effect.alarm}${effect.lasts === 'short' ? ', for a moment' : ', until it is silenced'}`,
      );
    case 'silence':
      return said(`the alarm for ${effect.alarm}`);
    case 'show':
      return said(effect.text);
    case 'ask':
      return said(effect.text);
    case 'speak':
      return said(`on channel ${effect.channel}`, wordsFor(role, effect.call));
    case 'advise':
      return said(
        'what to do',
        effect.advice.now.map(({ text, clause: source }) => `${text} (${source})`),
      );
    case 'reject':
      return said(effect.issue.message);
    default:
      return null;
  }
}

function wordsFor({ name, callSign, mmsi }: Role, call: Call): readonly string[] {
  const directory = (digits: string) => {
    const known = inventedName(digits);
    return known === undefined ? undefined : { name: known };
  };
  return spokenScript(call, { name, callSign, mmsi }, { directory }).lines.map(({ say }) => say);
}

function describe(call: Call): string {
  return describeCall(call, { directory: inventedName }).sentence;
}

function plain(side: Side, kind: 'person' | 'clock', text: string): Line {
  return { side, kind, text, clause: null, caution: null, spoken: [] };
}
