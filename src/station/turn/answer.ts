import {
  type AnswerMeaning,
  answersTo,
  type Call,
  type LawfulAnswer,
  type Reason,
} from '../../call/index.ts';
import type { ReportedPosition, TimeOfDay } from '../../position/index.ts';
import { toReportedPosition } from '../../position/internal.ts';
import { maySend } from '../state/equipment.ts';
import type { StationState } from '../state/state.ts';

const ableMeanings: readonly AnswerMeaning[] = ['able', 'position', 'test', 'polling'];

/**
 * The answer "able to comply" to a call, on the channel proposed or another.
 *
 * @returns `null` when the call wants no answer, nobody is known to answer, or this station may not send one
 */
export function answerAble(state: StationState, call: Call, channel?: string): Call | null {
  const proposed = 'channel' in call ? call.channel : null;
  const other = channel ?? (proposed === null && ashore(state) ? state.settings.channels[0] : undefined);
  const wanted = lawfulAnswers(state, call, other).find(({ meaning }) =>
    other === undefined || other === proposed
      ? ableMeanings.includes(meaning)
      : meaning === 'able-on-another-channel' ||
        (call.kind !== 'individual-call' && ableMeanings.includes(meaning)),
  );
  return wanted?.call ?? null;
}

/** The answer "unable to comply" to a call, with its reason; `null` as for {@link answerAble}. */
export function answerUnable(state: StationState, call: Call, reason: Reason): Call | null {
  const wanted = lawfulAnswers(state, call).find(
    (answer) => answer.call.kind === 'unable-to-comply' && answer.call.reason === reason,
  );
  return wanted?.call ?? null;
}

/** Whether the call asks for an answer that this station may send, able or not. */
export function mayAnswer(state: StationState, call: Call): boolean {
  return lawfulAnswers(state, call).length > 0;
}

/** The own position as it goes into a call; `null` when there is none. */
export function sendablePosition({ fix }: StationState): {
  readonly position: ReportedPosition | null;
  readonly time: TimeOfDay | null;
} {
  if (fix === null) return { position: null, time: null };
  return { position: toReportedPosition(fix.position, { enhanced: true }), time: timeOfDay(fix.at) };
}

/** UTC of an instant, as calls carry it. */
export function timeOfDay(at: number): TimeOfDay {
  const minutes = Math.floor(at / 60_000);
  const minuteOfDay = ((minutes % 1440) + 1440) % 1440;
  return { hour: Math.floor(minuteOfDay / 60), minute: minuteOfDay % 60 };
}

function lawfulAnswers(state: StationState, call: Call, other?: string): readonly LawfulAnswer[] {
  const { mmsi, equipment } = state.settings;
  if (mmsi === null) return [];
  const channels = other === undefined ? [] : [other];
  const { answers } = answersTo(call, { own: mmsi, ...sendablePosition(state), channels });
  return answers.filter((answer) => maySend(equipment, answer.call));
}

/** Only a coast station chooses the channel when the caller proposed none. */
function ashore(state: StationState): boolean {
  return state.settings.equipment === 'coast';
}
