import type { Call } from '../../call/index.ts';
import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { show } from '../engine/action.ts';
import { groundsOf, identityMissing, objectionToStarting, startable } from '../engine/on-air.ts';
import { reject, type Turn } from '../engine/turn.ts';
import { barOf, workingChannel } from '../model/channel.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { isCoastIdentity } from '../model/equipment.ts';
import type { StationEvent } from '../model/event.ts';
import type { StationState } from '../model/state.ts';
import { asCoded, relayPermission } from '../procedures/other-distress/permission.ts';
import { issue, say } from '../texts.ts';
import { isHeldBack, openDialogue } from './dialogues.ts';

/** A person starts a call. */
export function beginCall(turn: Turn, event: StationEvent<'call'>): void {
  const { call } = event;
  const { mmsi } = turn.state.settings;
  if (mmsi === null) {
    reject(turn, null, identityMissing());
    return;
  }
  if (!startable.includes(call.kind)) {
    const { kind } = call;
    reject(turn, null, issue('station-not-a-beginning', { kind }, { received: kind }));
    return;
  }
  if (isWithoutAddress(call)) {
    reject(turn, null, issue('station-address-missing', {}, { clause: clause.address }));
    return;
  }
  const channel =
    'channel' in call && call.channel !== null ? takeChannel(turn, call, call.channel) : undefined;
  if (channel === null) return;
  const opening = openingOf(event, mmsi, channel);
  const objection = objectionToStarting(turn.state, opening) ?? objectionToPassingOn(turn.state, event);
  if (objection !== null) {
    reject(turn, null, objection);
    return;
  }
  openDialogue(turn, opening, 'call');
  const opened = turn.state.dialogues.at(-1);
  if (opened !== undefined && isHeldBack(turn.state, opened)) {
    show(turn, opened, 'held-for-distress', say('station-held', {}));
  }
}

/** The digits for a channel that a person names; `null`, with the reason given, where no such talk may be. */
export function takeChannel(turn: Turn, call: Call, name: unknown): string | null {
  const received = quote(String(name));
  const channel = workingChannel(name);
  if (channel === null) {
    reject(turn, null, issue('station-channel-form', {}, { received }));
    return null;
  }
  const bar = barOf(call, channel);
  if (bar === null) return channel;
  const source = bar.clause === undefined ? {} : { clause: bar.clause };
  reject(turn, null, issue('station-channel-barred', { bar: bar }, { received, ...source }));
  return null;
}

function isWithoutAddress({ to }: Call): boolean {
  return to === null || ('mmsi' in to && to.mmsi === null) || ('area' in to && to.area === null);
}

/** The call that a person wants, as it will be sent. */
function openingOf(
  { call, attempts, because }: StationEvent<'call'>,
  own: string,
  channel: string | undefined,
) {
  const { asReceived: _received, ...meaning } = call;
  return {
    procedure: 'outgoing',
    phase: 'waiting-channel',
    call: { ...meaning, from: own, ...(channel !== undefined && { channel }) } as Call,
    attempts: 0,
    allowed: attemptsFor(call, attempts),
    answer: null,
    channel: null,
    because: call.kind === 'distress-relay' ? groundsOf(because) : null,
  } as const;
}

/** A distress that is in hand here is passed on as unanswered only when nobody answered it. */
function objectionToPassingOn(state: StationState, { call, because }: StationEvent<'call'>): Issue | null {
  if (call.kind !== 'distress-relay' || because === undefined || !('unanswered' in because)) return null;
  if (state.settings.equipment === 'coast') return null;
  const heard = state.dialogues.find(
    (dialogue): dialogue is Dialogue<'heard-distress'> =>
      dialogue.procedure === 'heard-distress' &&
      dialogue.distressed !== null &&
      dialogue.distressed === call.distressed,
  );
  const permission = heard === undefined ? null : relayPermission(state, heard);
  if (permission === null || permission.allowed) return null;
  return issue('station-relay-not-now', { why: asCoded(permission) }, { clause: clause.relay });
}

// M.541 gives three attempts to a coast station. deviation: D-station-6 (two to a ship, one where a set answers).
function attemptsFor(call: Call, requested?: number): number {
  // The five and fifteen minutes are those of routine calls: a relay is spoken at once, and repeated by hand.
  if (call.kind === 'distress-relay') return 1;
  if (requested !== undefined && requested >= 1) return Math.min(3, Math.floor(requested));
  if (call.kind === 'test-call' || call.kind === 'polling-call') return 1;
  return call.to?.kind === 'station' && isCoastIdentity(call.to.mmsi) ? 3 : 2;
}
