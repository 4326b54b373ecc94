import { encodeCall, type Verdict } from 'seahail/burst';
import { type Call, describeCall } from 'seahail/call';
import { type SpokenScript, spokenScript } from 'seahail/speech';
import {
  createStation,
  type Effect,
  type Policy,
  type StationEvent,
  type StationState,
  step,
} from 'seahail/station';
import { words } from '../frame/language.ts';
import { inventedName } from '../frame/names.ts';
import { type Choice, choicesOf, type ToSpeak } from './choices.ts';
import { BEGIN, type Role, type Scene } from './scenes.ts';

/** Who of the two. */
export type Side = 0 | 1;

/** One line of the play. */
export interface Line {
  readonly side: Side;
  readonly kind: 'person' | 'clock' | Exclude<Effect['kind'], 'wake' | 'log'>;
  readonly text: string;
  readonly clause: string | null;
  readonly cautions: readonly string[];
  /** What is advised, one thing each. */
  readonly advised: readonly { readonly text: string; readonly clause: string | null }[];
  /** Words to be spoken, one line each. */
  readonly spoken: SpokenScript['lines'];
}

/** What one push of the button brought. */
export interface Turn {
  readonly at: number;
  readonly lines: readonly Line[];
}

interface Happening {
  readonly at: number;
  readonly side: Side;
  readonly event: StationEvent;
  /** Whose transmission it is part of, if of any. */
  readonly sender?: Side;
}

/** The two stations, what is about to happen, and what has. */
export interface Play {
  readonly scene: Scene;
  readonly air: Verdict | 'lost';
  readonly now: number;
  readonly states: readonly [StationState, StationState];
  readonly ahead: readonly Happening[];
  readonly toSpeak: readonly ToSpeak[];
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
    toSpeak: [],
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
    designated: role.designated,
    groups: role.groups ?? [],
    policies,
    seed,
  });
  return fixed(station, role);
}

/** The instrument goes on telling where the station is: a play is about calls, not about a position that grows old. */
function fixed(station: StationState, { position }: Role): StationState {
  const at = Math.max(station.now, BEGIN);
  return step(station, { kind: 'fix', at, position, source: 'instrument' }).state;
}

/** Waits that only put things away, hours or days later: no play goes on for them. */
const TIDYING: ReadonlySet<string> = new Set(['inactivity', 'distress-memory']);

/** What happens next without anybody's doing; `null` when nothing does. */
export function nextHappening({ ahead, now, states }: Play): Happening | null {
  const wakes = states.flatMap(({ dialogues }, index): Happening[] => {
    const waits = dialogues.flatMap((dialogue) => Object.entries(dialogue.waits));
    const ends = waits.filter(([wait]) => !TIDYING.has(wait)).map(([, end]) => end);
    if (ends.length === 0) return [];
    const at = Math.max(now, Math.min(...ends));
    return [{ at, side: index as Side, event: { kind: 'clock', at } }];
  });
  const all = [...ahead, ...wakes].sort((a, b) => a.at - b.at);
  return all[0] ?? null;
}

/** The play after its next happening. */
export function advance(play: Play): Play {
  const next = nextHappening(play);
  if (next === null) return play;
  return follow({ ...play, ahead: play.ahead.filter((each) => each !== next) }, next);
}

/** Whether somebody was asked something and nothing but time would go on. */
export function isAwaitingAnswer(play: Play): boolean {
  return play.choices.some(({ isAsked }) => isAsked) && nextHappening(play)?.event.kind === 'clock';
}

/** The play after a person's choice, a second later; what is due before then comes first. */
export function choose(play: Play, index: number): Play {
  const chosen = play.choices[index];
  if (chosen === undefined) return play;
  const at = play.now + 1000;
  let before = play;
  for (let next = nextHappening(before); next !== null && next.at <= at; next = nextHappening(before)) {
    before = advance(before);
  }
  // What came first may have closed the question: then there is nothing left to choose.
  const choice = before.choices.find(({ side, label }) => side === chosen.side && label === chosen.label);
  if (choice === undefined) return before;
  return follow(before, { at, side: choice.side, event: { ...choice.event, at } }, choice.label);
}

function follow(play: Play, { at, side, event }: Happening, label?: string): Play {
  const now = Math.max(at, play.now);
  const turn = step(fixed(play.states[side], play.scene.roles[side]), { ...event, at: now });
  const states = play.states.map((state, index) =>
    index === side ? turn.state : state,
  ) as unknown as Play['states'];
  const lines: Line[] = [];
  const first = firstLine(event, label);
  if (first !== null) lines.push(plain(side, event.kind === 'clock' ? 'clock' : 'person', first));
  let after: Play = {
    ...play,
    now,
    states,
    toSpeak: play.toSpeak.filter((words) => !isDone(words, side, event)),
  };
  for (const effect of turn.effects) {
    after = carryOut(after, side, effect, now);
    const line = lineOf(play, side, effect);
    if (line !== null) lines.push(line);
  }
  after = { ...after, choices: choicesOf(states, after.toSpeak, after.ahead.length > 0) };
  // A clock that only looked, or a station that only listens, is no step worth showing.
  if (lines.every(({ kind }) => kind === 'clock'))
    return nextHappening(after) === null ? after : advance(after);
  return { ...after, turns: [...play.turns, { at: now, lines }] };
}

/** Words are said once. */
function isDone(words: ToSpeak, side: Side, event: StationEvent): boolean {
  return event.kind === 'spoken' && words.side === side && words.dialogue === event.dialogue;
}

/** What an effect brings about: on the air, at the dial, and as questions. */
function carryOut(play: Play, side: Side, effect: Effect, now: number): Play {
  const other: Side = side === 0 ? 1 : 0;
  const then = (...happenings: Happening[]): Play => ({ ...play, ahead: [...play.ahead, ...happenings] });
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
                event: { kind: 'received', at: end, call: effect.call, verdict: play.air },
                sender: side,
              },
            ];
      return then(
        { at: now, side: other, event: { kind: 'channel', at: now, busy: true } },
        { at: end, side, event: { kind: 'sent', at: end, dialogue: effect.dialogue ?? 0 }, sender: side },
        { at: end, side: other, event: { kind: 'channel', at: end, busy: false } },
        ...heard,
      );
    }
    case 'stop-sending':
      // What was cut off is neither sent nor heard.
      return { ...play, ahead: play.ahead.filter(({ sender }) => sender !== side) };
    case 'tune':
      return then({ at: now, side, event: { kind: 'tuned', at: now, channel: effect.channel } });
    case 'speak':
      return { ...play, toSpeak: [...play.toSpeak, { side, dialogue: effect.dialogue ?? 0 }] };
    default:
      return play;
  }
}

function firstLine(event: StationEvent, label: string | undefined): string | null {
  if (label !== undefined) return label;
  switch (event.kind) {
    case 'call':
      return `${describe(event.call)}: the key is pressed`;
    case 'received':
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

function lineOf({ scene }: Play, side: Side, effect: Effect): Line | null {
  const { clause, caution } = effect;
  const said = (text: string, more: Partial<Line> = {}): Line | null =>
    effect.kind === 'wake' || effect.kind === 'log'
      ? null
      : {
          ...plain(side, effect.kind, text),
          clause,
          cautions: caution === null ? [] : [words(caution)],
          ...more,
        };
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
        `the alarm for ${effect.alarm}${effect.lasts === 'short' ? ', briefly' : ', until it is silenced'}`,
      );
    case 'silence':
      return said(`the alarm for ${effect.alarm}`);
    case 'show':
    case 'ask':
      return said(withNames(words(effect)));
    case 'speak': {
      const script = wordsFor(scene.roles[side], effect.call);
      return said(`on channel ${effect.channel}`, {
        spoken: script.lines,
        cautions: [...(caution === null ? [] : [words(caution)]), words(script.cautionText)],
      });
    }
    case 'advise': {
      const { now, question } = effect.advice;
      return said('what to do', {
        advised: [
          ...now.map((step) => ({ text: words(step), clause: step.clause })),
          ...(question === null ? [] : [{ text: words(question), clause: null }]),
        ],
      });
    }
    case 'issue':
      return said(words(effect.issue));
    default:
      return null;
  }
}

/** A set shows digits; a reader of the play knows names, and times with a colon. */
function withNames(text: string): string {
  return text
    .replace(/\b\d{9}\b/g, (mmsi) => inventedName(mmsi) ?? mmsi)
    .replace(/\b(\d\d)(\d\d) UTC\b/g, '$1:$2 UTC');
}

function wordsFor({ name, callSign, mmsi }: Role, call: Call): SpokenScript {
  const directory = (digits: string) => {
    const known = inventedName(digits);
    return known === undefined ? undefined : { name: known };
  };
  return spokenScript(call, { name, callSign, mmsi }, { directory });
}

function describe(call: Call): string {
  return describeCall(call, { directory: inventedName }).sentence;
}

function plain(side: Side, kind: Line['kind'], text: string): Line {
  return { side, kind, text, clause: null, cautions: [], advised: [], spoken: [] };
}
