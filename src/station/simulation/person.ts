import type { Reason } from '../../call/index.ts';
import type { AskEffect, Effect, SpeakEffect } from '../effect.ts';
import type { StationEvent } from '../event.ts';
import type { StationState } from '../state.ts';

/** The person aboard or ashore, as far as a simulation needs one. */
export interface SimulatedPerson {
  /** How calls are answered: `'able'`, with a reason not to, or not at all. */
  readonly answers: 'able' | Reason | 'never';
  /** Seconds until the person acts, least and most. */
  readonly delay: readonly [least: number, most: number];
  /** Seconds of talk on a working channel, least and most. */
  readonly talk: readonly [least: number, most: number];
}

type WithoutAt<T> = T extends StationEvent ? Omit<T, 'at'> : never;

/** An event whose instant is given by whoever plays it. */
export type EventWithoutTime = WithoutAt<StationEvent>;

/** What a person will do, and after how many seconds. */
export interface Reaction {
  readonly after: readonly [least: number, most: number];
  readonly event: EventWithoutTime;
}

/** What the person does about an effect; `null` when nothing. */
export function reactionTo(person: SimulatedPerson, state: StationState, effect: Effect): Reaction | null {
  if (effect.dialogue === null) return null;
  switch (effect.kind) {
    case 'ask':
      return answerTo(person, effect, effect.dialogue);
    case 'speak':
      return speakFor(person, effect, effect.dialogue);
    case 'advise':
      // A coast station acknowledges by hand; aboard, whoever answers calls lends a hand once the coast has answered.
      if (state.settings.equipment === 'coast') {
        return effect.advice.phase === 'listening' && effect.advice.dscAcknowledgement.allowed
          ? { after: person.delay, event: { kind: 'acknowledge', dialogue: effect.dialogue } }
          : null;
      }
      return effect.advice.phase === 'coast-answered'
        ? {
            after: person.delay,
            event: { kind: person.answers === 'able' ? 'assist' : 'stand-by', dialogue: effect.dialogue },
          }
        : null;
    default:
      return null;
  }
}

function answerTo(
  { answers, delay }: SimulatedPerson,
  { question }: AskEffect,
  dialogue: number,
): Reaction | null {
  if (question === 'answer-call') {
    if (answers === 'never') return null;
    return {
      after: delay,
      event:
        answers === 'able' ? { kind: 'answer', dialogue } : { kind: 'refuse', dialogue, reason: answers },
    };
  }
  if (question === 'stop-alert') return null;
  if (question === 'tune-to' && answers === 'never') return null;
  return { after: delay, event: { kind: 'confirm', dialogue } };
}

function speakFor({ talk }: SimulatedPerson, { situation }: SpeakEffect, dialogue: number): Reaction {
  const ends = situation === 'routine-contact' || situation === 'urgency' || situation === 'safety';
  return { after: talk, event: { kind: ends ? 'close' : 'spoken', dialogue } };
}
