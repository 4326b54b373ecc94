import type { Verdict } from '../../burst/index.ts';
import type { Call, EquipmentClass } from '../../call/index.ts';
import { areaContains } from '../../position/internal.ts';
import type { Issue } from '../../result/index.ts';
import { WATCH_CHANNEL } from '../model/channel.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { isCoastIdentity, maySend } from '../model/equipment.ts';
import type { StationEvents } from '../model/event.ts';
import { hasSymbols } from '../model/form.ts';
import type { StationSettings } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { issue } from '../texts.ts';
import { isDistress } from './turn.ts';

// Who may transmit: the one place that decides whether anything goes on the air, or the radio changes its channel,
// without a person. Each step asks here about the event at hand, and restoreStation about each stored dialogue.

/** A call received, and how well. */
export interface Received {
  readonly call: Call;
  readonly verdict: Verdict;
}

/**
 * Whether a call is meant for this station: its own identity, one of its groups, an area it is in, all ships, or
 * nobody that can be named. A call for another station is ignored here.
 *
 * A station that does not know where it is takes every area call for its own.
 */
export function isForStation(
  { settings, fix }: Pick<StationState, 'settings' | 'fix'>,
  { to }: Call,
): boolean {
  switch (to?.kind) {
    case 'station':
      return to.mmsi === null || to.mmsi === settings.mmsi;
    case 'group':
      return to.mmsi === null || settings.groups.includes(to.mmsi);
    case 'area':
      return to.area === null || fix === null || areaContains(to.area, fix.position);
    default:
      return true;
  }
}

/** The same, with nothing left open: the call names the station, one of its groups, the area it is in, or all ships. */
function isPlainlyForStation(state: Pick<StationState, 'settings' | 'fix'>, call: Call): boolean {
  const { to } = call;
  if (to === null || !isForStation(state, call)) return false;
  if ('mmsi' in to) return to.mmsi !== null;
  return to.kind !== 'area' || (to.area !== null && state.fix !== null);
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

/**
 * Whether the radio may change to a channel automatically: the owner allows it, the channel is one that was asked for or that
 * the station uses, and no distress is in hand.
 */
export function mayTuneAutomatically(state: StationState, channel: string, wasAskedFor: boolean): boolean {
  if (state.settings.tuning !== 'automatic' || isDistressInHand(state)) return false;
  return wasAskedFor || channel === WATCH_CHANNEL || state.settings.channels.includes(channel);
}

/** Whether the person must not be taken away from channel 16 now. */
function isDistressInHand(state: StationState): boolean {
  return (
    isOwnAlertOut(state) ||
    state.dialogues.some(
      ({ procedure, phase }) => procedure === 'heard-distress' && phase !== 'shown' && phase !== 'cancelled',
    )
  );
}

/** Whether this station's own alert is out, or about to be. */
export function isOwnAlertOut(state: StationState): boolean {
  return state.dialogues.some(
    ({ procedure, phase }) => procedure === 'own-distress' && phase !== 'prepared' && phase !== 'countdown',
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
): Issue | null {
  const because = dialogue.procedure === 'outgoing' ? dialogue.because : null;
  return objection(settings, call, isOfProcedure(dialogue, call, settings.mmsi), because);
}

/** The same for a call that a person is about to start. */
export function objectionToStarting(
  state: Pick<StationState, 'settings'>,
  { call, because }: Pick<Dialogue<'outgoing'>, 'procedure' | 'call' | 'because'>,
): Issue | null {
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
): Issue | null {
  if (because === null) return issue('station-relay-reason', {}, { clause: clause.relay });
  const isToCoast = to?.kind === 'station' && isCoastIdentity(to.mmsi);
  return 'unanswered' in because && !isToCoast
    ? issue('station-relay-address', {}, { clause: clause.relay })
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
function isAnswerTo(question: Call, answer: Call): boolean {
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
): Issue | null {
  if (mmsi === null || call.from !== mmsi) return identityMissing();
  if (!isPart) return issue('station-not-of-procedure', { kind: call.kind });
  if (!maySend(equipment, call)) return classCannotSend(equipment, call.kind);
  if (call.to !== null && 'mmsi' in call.to && call.to.mmsi === mmsi)
    return issue('station-call-to-itself', {});
  const against =
    call.kind === 'distress-relay' && equipment !== 'coast' ? reasonAgainst(call, because) : null;
  return against ?? (hasSymbols(call) ? null : issue('station-call-form', {}));
}

/** No transmission without an own identity (M.493-16). */
export function identityMissing(): Issue {
  return issue('station-identity-missing', {}, { clause: clause.identity });
}

/** A class of equipment sends only some kinds of call. */
export function classCannotSend(equipment: EquipmentClass, kind: Call['kind']): Issue {
  return issue(
    'station-class-cannot-send',
    { equipment, kind },
    { received: kind, clause: clause.equipment },
  );
}
