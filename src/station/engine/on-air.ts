import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import { hasSymbols } from '../model/call-form.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { maySend } from '../model/equipment.ts';
import type { StationEvents } from '../model/event.ts';
import { isCoastIdentity } from '../model/own-identity.ts';
import type { StationSettings } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { isPlainlyForStation } from './for-station.ts';
import { isDistress } from './turn.ts';
import { isOwnAlertOut, mayTuneAutomatically } from './voice-channel.ts';

// Who may transmit: the one place that decides whether anything goes on the air, or the radio changes its channel,
// without a person. Each step asks here about the event at hand, and restoreStation about each stored dialogue.

/** A call received, and how well. */
export interface Received {
  readonly call: Call;
  readonly verdict: Verdict;
}

/** Why a call is not sent. */
export interface Objection {
  readonly code: string;
  readonly message: string;
  readonly clause?: string;
}

/** Whether a call received may change the voice channel without a person: clean, and plainly for this station. */
export function mayFollowAlone(state: StationState, { call, verdict }: Received): boolean {
  return verdict === 'clean' && isPlainlyForStation(state, call);
}

/** The same for one working channel. */
export function mayTuneAlone(
  state: StationState,
  received: Received,
  channel: string,
  wasAskedFor: boolean,
): boolean {
  return mayFollowAlone(state, received) && mayTuneAutomatically(state, channel, wasAskedFor);
}

/**
 * Whether a call received may be answered without a person: clean, addressed to this very station, no distress, and no
 * own alert out.
 */
export function mayAnswerAlone(state: StationState, received: Received): boolean {
  const { call } = received;
  return (
    mayFollowAlone(state, received) &&
    call.to?.kind === 'station' &&
    !isDistress(call) &&
    !isOwnAlertOut(state)
  );
}

// deviation: D-station-15
/** Whether an alert in hand may go on after nothing happened for so long, in milliseconds: only for less than its repeat. */
export function mayRepeatAlone(gap: number, repeat: number): boolean {
  return gap >= 0 && gap < repeat;
}

/** The objection to sending a call of a dialogue, no matter who asks; `null` when there is none. */
export function objectionTo(
  { settings }: Pick<StationState, 'settings'>,
  dialogue: Dialogue,
  call: Call,
): Objection | null {
  const because = dialogue.procedure === 'outgoing' ? dialogue.because : null;
  return objection(settings, call, isOfProcedure(dialogue, call, settings.mmsi), because);
}

/** The same for a call that a person is about to start. */
export function objectionToStarting(
  state: Pick<StationState, 'settings'>,
  { call, because }: Pick<Dialogue<'outgoing'>, 'procedure' | 'call' | 'because'>,
): Objection | null {
  return objection(state.settings, call, startable.includes(call.kind), because);
}

/** The grounds of a relay, from whatever is given as such; `null` when they are none. */
export function groundsOf(given: unknown): NonNullable<StationEvents['call']['because']> | null {
  const { unanswered, cannotAlertHerself, moreHelpNeeded } = (given ?? {}) as Readonly<
    Partial<Record<'unanswered' | 'cannotAlertHerself' | 'moreHelpNeeded', unknown>>
  >;
  if (unanswered === true) return { unanswered };
  return cannotAlertHerself === true && moreHelpNeeded === true
    ? { cannotAlertHerself, moreHelpNeeded }
    : null;
}

/** Why a ship does not send a relay on these grounds; `null` when she may. */
function reasonAgainst(
  { to }: Call,
  because: NonNullable<StationEvents['call']['because']> | null,
): string | null {
  if (because === null) {
    return 'expected a reason: nobody acknowledged within five minutes (to one coast station), or the vessel in distress cannot alert herself and the master judges that more help is needed';
  }
  const isToCoast = to?.kind === 'station' && isCoastIdentity(to.mmsi);
  return 'unanswered' in because && !isToCoast
    ? 'expected the address of one coast station for a distress that nobody acknowledged; to many only when the vessel in distress cannot alert herself and the master judges that more help is needed'
    : null;
}

/** The kinds of call that a person starts. */
export const startable: readonly Call['kind'][] = [
  'individual-call',
  'group-call',
  'all-ships-call',
  'area-call',
  'position-request',
  'position-reply',
  'test-call',
  'polling-call',
  'distress-relay',
];

/** Which answers each kind of call has. */
const answers: Readonly<Partial<Record<Call['kind'], readonly Call['kind'][]>>> = {
  'individual-call': ['individual-acknowledgement', 'unable-to-comply'],
  'position-request': ['position-reply', 'unable-to-comply'],
  'test-call': ['test-acknowledgement'],
  'polling-call': ['polling-acknowledgement'],
  'automatic-service-call': ['automatic-service-call'],
};

/** Whether a call is the answer of a station to a call it received. */
export function isAnswerTo(question: Call, answer: Call): boolean {
  return (
    (answers[question.kind]?.includes(answer.kind) ?? false) &&
    answer.to?.kind === 'station' &&
    answer.to.mmsi !== null &&
    answer.to.mmsi === question.from
  );
}

function isOfProcedure(dialogue: Dialogue, call: Call, own: string | null): boolean {
  switch (dialogue.procedure) {
    case 'outgoing':
      return startable.includes(call.kind);
    case 'incoming':
      return isAnswerTo(dialogue.call, call);
    case 'own-distress':
      return (
        call.kind === 'distress-alert' || (call.kind === 'distress-self-cancel' && call.distressed === own)
      );
    case 'heard-distress':
      return (
        (call.kind === 'distress-acknowledgement' || call.kind === 'distress-relay-acknowledgement') &&
        call.distressed === dialogue.distressed &&
        call.distressed !== own
      );
  }
}

function objection(
  { mmsi, equipment }: StationSettings,
  call: Call,
  isPart: boolean,
  because: NonNullable<StationEvents['call']['because']> | null,
): Objection | null {
  if (mmsi === null || call.from !== mmsi) {
    const message = 'Own identity is not stored: nothing can be sent';
    return { code: 'station-identity-missing', message, clause: clause.identity };
  }
  if (!isPart) {
    return { code: 'station-not-a-beginning', message: `Call: ${call.kind} is not part of this procedure` };
  }
  if (!maySend(equipment, call)) {
    const message = `Call: equipment of class ${equipment} does not send this kind`;
    return { code: 'station-class-cannot-send', message, clause: clause.equipment };
  }
  if (call.to !== null && 'mmsi' in call.to && call.to.mmsi === mmsi) {
    return { code: 'station-call-to-itself', message: 'Call: the address is this station’s own' };
  }
  if (call.kind === 'distress-relay' && equipment !== 'coast') {
    const why = reasonAgainst(call, because);
    if (why !== null) return { code: 'station-relay-reason', message: `Relay: ${why}`, clause: clause.relay };
  }
  return hasSymbols(call)
    ? null
    : { code: 'station-call-form', message: 'Call: a value in it has no symbols' };
}
