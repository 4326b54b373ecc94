import type { Call } from '../../call/index.ts';
import { clause } from '../state/clause.ts';
import { maySend } from '../state/equipment.ts';
import type { CallEvent } from '../state/event.ts';
import { openDialogue } from './open-dialogue.ts';
import { isCoastIdentity } from './own-identity.ts';
import { reject } from './reject.ts';
import { isHeldBack } from './send-queue.ts';
import { emit, type Turn } from './turn.ts';
import { isWorkingChannel } from './working-channel.ts';

/** A person starts a call. */
export function beginCall(turn: Turn, { call, attempts, because }: CallEvent): void {
  const { mmsi, equipment } = turn.state.settings;
  if (mmsi === null) {
    rejectWithoutIdentity(turn);
    return;
  }
  if (!startable.includes(call.kind)) {
    const received = call.kind;
    reject(turn, null, 'station-not-a-beginning', 'Call: this kind is not started by hand', {
      received,
    });
    return;
  }
  if (!maySend(equipment, call)) {
    const message = `Call: equipment of class ${equipment} does not send this kind`;
    reject(turn, null, 'station-class-cannot-send', message, {
      received: call.kind,
      clause: clause.equipment,
    });
    return;
  }
  if (isWithoutAddress(call)) {
    reject(turn, null, 'station-address-missing', 'Call: an address is needed', {
      clause: clause.address,
    });
    return;
  }
  if (call.to?.kind === 'station' && call.to.mmsi === mmsi) {
    reject(turn, null, 'station-call-to-itself', 'Call: the address is this station’s own');
    return;
  }
  if ('channel' in call && call.channel !== null && !isWorkingChannel(call.channel)) {
    rejectChannel(turn, call.channel);
    return;
  }
  // deviation: D-station-12
  if (call.kind === 'distress-relay' && equipment !== 'coast' && because === undefined) {
    reject(
      turn,
      null,
      'station-relay-reason',
      'Relay: allowed only when the vessel in distress cannot alert herself, or the master judges that more help is needed',
      { expected: "because: 'cannot-alert-herself' or 'more-help-needed'", clause: clause.relay },
    );
    return;
  }
  const { asReceived: _received, ...meaning } = call;
  openDialogue(
    turn,
    {
      procedure: 'outgoing',
      call: { ...meaning, from: mmsi } as Call,
      attempts: 0,
      allowed: attemptsFor(call, attempts),
      answer: null,
      channel: null,
    },
    'call',
  );
  const opened = turn.state.dialogues.at(-1);
  if (opened !== undefined && isHeldBack(turn.state, opened)) {
    emit(turn, opened, {
      kind: 'show',
      topic: 'held-for-distress',
      text: 'Distress traffic goes first: the call waits',
    });
  }
}

/** No transmission without an own identity (M.493, from memory). */
export function rejectWithoutIdentity(turn: Turn): void {
  reject(turn, null, 'station-identity-missing', 'Own identity: nothing is sent before one is stored', {
    clause: clause.identity,
  });
}

/** Channel 70 carries no speech, and a channel is named by its digits. */
export function rejectChannel(turn: Turn, channel: string): void {
  reject(turn, null, 'station-channel-form', 'Channel: a working channel in ITU-R M.1084 digits is needed', {
    received: channel,
    expected: 'two or four digits, not 70',
  });
}

const startable: readonly Call['kind'][] = [
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

function isWithoutAddress({ to }: Call): boolean {
  return to === null || ('mmsi' in to && to.mmsi === null) || ('area' in to && to.area === null);
}

// M.541 gives three attempts to a coast station. deviation: D-station-6 (two to a ship, one where a set answers).
function attemptsFor(call: Call, wanted?: number): number {
  if (wanted !== undefined && wanted >= 1) return Math.min(3, Math.floor(wanted));
  if (call.kind === 'test-call' || call.kind === 'polling-call') return 1;
  return call.to?.kind === 'station' && isCoastIdentity(call.to.mmsi) ? 3 : 2;
}
