import type { Call, DistressRelay } from '../../call/index.ts';
import { quote } from '../../result/index.ts';
import { relayPermission } from '../advice/permission.ts';
import { clause } from '../state/clause.ts';
import type { HeardDistressDialogue } from '../state/dialogue.ts';
import { maySend } from '../state/equipment.ts';
import type { CallEvent, RelayGrounds } from '../state/event.ts';
import type { StationState } from '../state/state.ts';
import { openDialogue } from './open-dialogue.ts';
import { isCoastIdentity } from './own-identity.ts';
import { reject } from './reject.ts';
import { isHeldBack } from './send-queue.ts';
import { emit, type Turn } from './turn.ts';
import { barOf, workingChannel } from './working-channel.ts';

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
  const channel =
    'channel' in call && call.channel !== null ? takeChannel(turn, call, call.channel) : undefined;
  if (channel === null) return;
  if (call.kind === 'distress-relay' && equipment !== 'coast') {
    const why = barToRelay(turn.state, call, because);
    if (why !== null) {
      reject(turn, null, 'station-relay-reason', `Relay: ${why}`, {
        expected:
          'because: { unanswered: true } to one coast station, or { cannotAlertHerself: true, moreHelpNeeded: true }',
        clause: clause.relay,
      });
      return;
    }
  }
  const { asReceived: _received, ...meaning } = call;
  openDialogue(
    turn,
    {
      procedure: 'outgoing',
      call: { ...meaning, from: mmsi, ...(channel !== undefined && { channel }) } as Call,
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

/** No transmission without an own identity (M.493-16, from memory). */
export function rejectWithoutIdentity(turn: Turn): void {
  reject(turn, null, 'station-identity-missing', 'Own identity: nothing is sent before one is stored', {
    clause: clause.identity,
  });
}

/** The digits for a channel that a person names; `null`, with the reason given, where no such talk may be. */
export function takeChannel(turn: Turn, call: Call, name: unknown): string | null {
  const received = quote(String(name));
  const channel = workingChannel(name);
  if (channel === null) {
    const message = `Channel ${received}: no call can name it`;
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

/** Why a ship does not send this relay by DSC; `null` when she may. */
function barToRelay(
  state: StationState,
  call: DistressRelay,
  because: RelayGrounds | undefined,
): string | null {
  if (because !== undefined && 'unanswered' in because && because.unanswered === true) {
    if (call.to.kind !== 'station' || !isCoastIdentity(call.to.mmsi)) {
      return 'expected the address of one coast station for a distress that nobody acknowledged; to many only when the vessel in distress cannot alert herself and the master judges that more help is needed';
    }
    const heard = state.dialogues.find(
      (dialogue): dialogue is HeardDistressDialogue =>
        dialogue.procedure === 'heard-distress' &&
        dialogue.distressed !== null &&
        dialogue.distressed === call.distressed,
    );
    const permission = heard === undefined ? null : relayPermission(state, heard);
    return permission === null || permission.allowed ? null : permission.why;
  }
  const both = because !== undefined && 'cannotAlertHerself' in because;
  if (both && because.cannotAlertHerself === true && because.moreHelpNeeded === true) return null;
  return 'expected a reason: nobody acknowledged within five minutes (to one coast station), or the vessel in distress cannot alert herself and the master judges that more help is needed';
}

// M.541 gives three attempts to a coast station. deviation: D-station-6 (two to a ship, one where a set answers).
function attemptsFor(call: Call, wanted?: number): number {
  // The five and fifteen minutes are those of routine calls: a relay is spoken at once, and repeated by hand.
  if (call.kind === 'distress-relay') return 1;
  if (wanted !== undefined && wanted >= 1) return Math.min(3, Math.floor(wanted));
  if (call.kind === 'test-call' || call.kind === 'polling-call') return 1;
  return call.to?.kind === 'station' && isCoastIdentity(call.to.mmsi) ? 3 : 2;
}
