import type { Call } from '../../call/index.ts';
import type { Issue } from '../../result/index.ts';
import type { LogEntry } from '../log/watch-log.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { Effect } from '../model/effect.ts';
import type { StationState } from '../model/state.ts';
import { rangeOf, type TimerName } from '../model/timer.ts';
import { type StationText, say } from '../texts.ts';

/** A value that this turn may change, because it made the copy. */
export type Draft<T> = { -readonly [Key in keyof T]: T[Key] };

/** What came of an event. */
export interface StationStep {
  readonly state: StationState;
  /** What to do, in this order. */
  readonly effects: readonly Effect[];
  /** Which rows of {@link transitionTable} were taken, in order. */
  readonly transitions: readonly {
    readonly dialogue: number;
    /** {@link TransitionRow.id} of the row. */
    readonly row: string;
  }[];
}

/** The working copy of one step. */
export interface Turn {
  readonly state: Draft<Omit<StationState, 'dialogues'>> & { dialogues: Draft<Dialogue>[] };
  readonly effects: Effect[];
  readonly transitions: StationStep['transitions'][number][];
  /** Dialogues whose call could not be sent: each goes on as after a failed transmission. */
  readonly failed: number[];
  /** The clause of the transition being taken: its effects carry it. */
  clause: string | null;
}

type WithoutBase<T> = T extends Effect<'show'> | Effect<'ask'>
  ? Omit<T, 'dialogue' | 'clause' | 'caution' | 'call'> & { readonly call?: Call | undefined }
  : T extends Effect
    ? Omit<T, 'dialogue' | 'clause' | 'caution'>
    : never;

/** An effect as the actions give it; {@link emit} adds dialogue, clause and caution, and the dialogue's call to what is shown. */
export type BareEffect = WithoutBase<Effect>;

/** What every effect about distress carries. The words are this library's own. */
export function distressCaution(): StationText {
  return say('station-caution-distress', {});
}

/** Hands an effect to the caller of the step. */
export function emit(
  turn: Turn,
  dialogue: Dialogue | null,
  effect: BareEffect,
  caution: StationText | null = null,
): void {
  const isShown = effect.kind === 'show' || effect.kind === 'ask';
  const about = isShown ? { call: effect.call ?? dialogue?.call ?? null } : {};
  const base = {
    dialogue: dialogue?.id ?? null,
    clause: turn.clause,
    caution: caution ?? (concernsDistress(dialogue, effect) ? distressCaution() : null),
  };
  turn.effects.push({ ...effect, ...about, ...base } as Effect);
}

function concernsDistress(dialogue: Dialogue | null, effect: BareEffect): boolean {
  if (dialogue?.procedure === 'own-distress' || dialogue?.procedure === 'heard-distress') return true;
  if (dialogue !== null && dialogue.call !== null && isDistress(dialogue.call)) return true;
  const call = effect.kind === 'log' ? effect.entry.call : 'call' in effect ? effect.call : undefined;
  return call !== undefined && isDistress(call);
}

/** Whether a call speaks of a distress, by its kind or its category. */
export function isDistress(call: Call): boolean {
  return call.kind.startsWith('distress-') || ('category' in call && call.category === 'distress');
}

/** Writes into the watch log. */
export function log(
  turn: Turn,
  dialogue: Dialogue | null,
  entry: Pick<LogEntry, 'what' | 'text'> & Partial<LogEntry>,
): void {
  const { state } = turn;
  const number = state.nextLogEntry++;
  const position = state.fix?.position ?? null;
  emit(turn, dialogue, {
    kind: 'log',
    entry: { kind: 'log-entry', number, at: state.now, dialogue: dialogue?.id ?? null, position, ...entry },
  });
}

/** A length for a timer, in milliseconds: random where the table gives a range. */
export function drawLength(turn: Turn, timer: TimerName): number {
  const [least, most] = rangeOf(timer, turn.state.settings.timers);
  if (least === most) return least;
  const [value, next] = nextRandom(turn.state.random);
  turn.state.random = next;
  return Math.round(least + value * (most - least));
}

/**
 * The next of a series of random numbers.
 *
 * A Weyl sequence (steps of 2³²/φ) through the 32-bit finaliser of MurmurHash3, which is in the public domain: every
 * state occurs once in 2³² numbers, and zero is as good a seed as any.
 *
 * @param state - unsigned 32-bit integer
 * @returns a value from 0 up to 1, and the state to go on from
 */
export function nextRandom(state: number): readonly [value: number, next: number] {
  const next = (state + 0x9e3779b9) >>> 0;
  let bits = next;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  bits ^= bits >>> 16;
  return [(bits >>> 0) / 0x1_0000_0000, next];
}

/** Rejects an event with its reason. Nothing else happens. */
export function reject(turn: Turn, dialogue: Dialogue | null, issue: Issue): void {
  emit(turn, dialogue, { kind: 'issue', issue });
}
