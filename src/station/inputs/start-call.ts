import type { Call } from '../../call/index.ts';
import { quote } from '../../result/internal.ts';
import { groundsOf, type Objection, objectionToStarting, startable } from '../engine/on-air.ts';
import { emit, reject, type Turn } from '../engine/turn.ts';
import { barOf, workingChannel } from '../model/channel.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { StationEvent } from '../model/event.ts';
import { isCoastIdentity } from '../model/own-identity.ts';
import type { StationState } from '../model/state.ts';
import { relayPermission } from '../procedures/other-distress/permission.ts';
import { openDialogue } from './dialogues.ts';
import { isHeldBack } from './queue.ts';

/** A person starts a call. */
export function beginCall(turn: Turn, event: StationEvent<'call'>): void {
  const { call } = event;
  const { mmsi } = turn.state.settings;
  if (mmsi === null) {
    rejectWithoutIdentity(turn);
    return;
  }
  if (!startable.includes(call.kind)) {
    const received = call.kind;
    reject(turn, null, 'station-not-a-beginning', 'Call: this kind cannot be started by hand', {
      received,
    });
    return;
  }
  if (isWithoutAddress(call)) {
    reject(turn, null, 'station-address-missing', 'Call: expected an address, got none', {
      clause: clause.address,
    });
    return;
  }
  const channel =
    'channel' in call && call.channel !== null ? takeChannel(turn, call, call.channel) : undefined;
  if (channel === null) return;
  const opening = openingOf(event, mmsi, channel);
  const objection = objectionToStarting(turn.state, opening) ?? objectionToPassingOn(turn.state, event);
  if (objection !== null) {
    const { code, message, clause: where } = objection;
    reject(turn, null, code, message, {
      ...(code === 'station-relay-reason' && {
        expected:
          'because: { unanswered: true } to one coast station, or { cannotAlertHerself: true, moreHelpNeeded: true }',
      }),
      ...(code === 'station-class-cannot-send' && { received: call.kind }),
      ...(where !== undefined && { clause: where }),
    });
    return;
  }
  openDialogue(turn, opening, 'call');
  const opened = turn.state.dialogues.at(-1);
  if (opened !== undefined && isHeldBack(turn.state, opened)) {
    emit(turn, opened, {
      kind: 'show',
      topic: 'held-for-distress',
      text: 'Distress traffic goes first: the call waits',
    });
  }
}

/** No transmission without an own identity (M.493-16). */
export function rejectWithoutIdentity(turn: Turn): void {
  reject(turn, null, 'station-identity-missing', 'Own identity is not stored: nothing can be sent', {
    clause: clause.identity,
  });
}

/** The digits for a channel that a person names; `null`, with the reason given, where no such talk may be. */
export function takeChannel(turn: Turn, call: Call, name: unknown): string | null {
  const received = quote(String(name));
  const channel = workingChannel(name);
  if (channel === null) {
    const message = `Channel ${received} cannot be proposed in a call`;
    reject(turn, null, 'station-channel-form', message, {
      received,
      expected: 'a channel with digits of ITU-R M.1084',
    });
    return null;
  }
  const bar = barOf(call, channel);
  if (bar === null) return channel;
  const { clause: where } = bar;
  reject(turn, null, 'station-channel-barred', bar.message, {
    received,
    ...(where !== undefined && { clause: where }),
  });
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
    call: { ...meaning, from: own, ...(channel !== undefined && { channel }) } as Call,
    attempts: 0,
    allowed: attemptsFor(call, attempts),
    answer: null,
    channel: null,
    because: call.kind === 'distress-relay' ? groundsOf(because) : null,
  } as const;
}

/** A distress that is in hand here is passed on as unanswered only when nobody answered it. */
function objectionToPassingOn(
  state: StationState,
  { call, because }: StationEvent<'call'>,
): Objection | null {
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
  return { code: 'station-relay-reason', message: `Relay: ${permission.why}`, clause: clause.relay };
}

// M.541 gives three attempts to a coast station. deviation: D-station-6 (two to a ship, one where a set answers).
function attemptsFor(call: Call, requested?: number): number {
  // The five and fifteen minutes are those of routine calls: a relay is spoken at once, and repeated by hand.
  if (call.kind === 'distress-relay') return 1;
  if (requested !== undefined && requested >= 1) return Math.min(3, Math.floor(requested));
  if (call.kind === 'test-call' || call.kind === 'polling-call') return 1;
  return call.to?.kind === 'station' && isCoastIdentity(call.to.mmsi) ? 3 : 2;
}
