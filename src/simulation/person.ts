import type { Effect, EventWithoutTime, StationState } from '../station/index.ts';
import type { SimulatedStation } from './simulation.ts';

type Person = NonNullable<SimulatedStation['person']>;

/** What a person will do, and after how many seconds. */
export interface Reaction {
  readonly after: readonly [least: number, most: number];
  readonly event: EventWithoutTime;
}

/** What the person does about an effect; `null` when nothing. */
export function reactionTo(person: Person, state: StationState, effect: Effect): Reaction | null {
  if (effect.dialogue === null) return null;
  switch (effect.kind) {
    case 'ask':
      return answerTo(person, effect, effect.dialogue);
    case 'speak':
      return speakFor(person, effect, effect.dialogue);
    case 'advise':
      return adviceTaken(person, state, effect, effect.dialogue);
    case 'show':
      return effect.topic === 'acknowledged' && isOwnDistress(state, effect.dialogue)
        ? { after: UNTIL_HELPED, event: { kind: 'dismiss', dialogue: effect.dialogue } }
        : null;
    default:
      return null;
  }
}

/** Seconds until a distress is over, in this simulated world. */
const UNTIL_HELPED = [1800, 3600] as const;

/** Seconds that ships leave to the vessel in distress and the coast station on channel 16 before they speak. */
const UNTIL_SPOKEN = [120, 240] as const;

/** A coast station acknowledges by hand; aboard, the person who answers calls offers help once the coast has answered. */
function adviceTaken(
  { answers, delaySeconds: delay }: Person,
  { settings }: StationState,
  { advice }: Effect<'advise'>,
  dialogue: number,
): Reaction | null {
  if (advice.phase === 'assisting') return { after: UNTIL_HELPED, event: { kind: 'dismiss', dialogue } };
  if (settings.equipment === 'coast') {
    if (advice.phase === 'coast-answered')
      return { after: UNTIL_HELPED, event: { kind: 'dismiss', dialogue } };
    return advice.phase === 'listening' && advice.dscAcknowledgement.allowed
      ? { after: delay, event: { kind: 'acknowledge', dialogue } }
      : null;
  }
  if (advice.phase === 'coast-answered') {
    return answers === 'able'
      ? { after: UNTIL_SPOKEN, event: { kind: 'assist', dialogue } }
      : { after: delay, event: { kind: 'stand-by', dialogue } };
  }
  return advice.phase === 'undecided' ? { after: delay, event: { kind: 'no-traffic', dialogue } } : null;
}

function isOwnDistress({ dialogues }: StationState, dialogue: number): boolean {
  return dialogues.some(({ id, procedure }) => id === dialogue && procedure === 'own-distress');
}

function answerTo(
  { answers, delaySeconds: delay }: Person,
  { question }: Effect<'ask'>,
  dialogue: number,
): Reaction | null {
  if (question === 'answer-call') {
    if (answers === 'never') return null;
    return {
      after: delay,
      event:
        answers === 'able' ? { kind: 'answer', dialogue } : { kind: 'reject', dialogue, reason: answers },
    };
  }
  if (question === 'stop-alert') return null;
  if (question === 'tune-to' && answers === 'never') return null;
  return { after: delay, event: { kind: 'confirm', dialogue } };
}

function speakFor({ talkSeconds: talk }: Person, { situation }: Effect<'speak'>, dialogue: number): Reaction {
  const ends =
    situation === 'routine-call' ||
    situation === 'routine-answer' ||
    situation === 'pan-pan' ||
    situation === 'securite';
  return { after: talk, event: { kind: ends ? 'dismiss' : 'spoken', dialogue } };
}
