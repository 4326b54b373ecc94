import type { Call } from '../../call/index.ts';
import { barOf, workingChannel } from '../model/channel.ts';
import type { StationState } from '../model/state.ts';

const DISTRESS_AND_CALLING = '16';

/**
 * The voice channel that a call leads to, ITU-R M.1084 digits; `null` when it leads to none, or to one that no such
 * talk may use in any waters.
 *
 * Distress traffic is on 16, and urgency and safety traffic too unless the call names another channel.
 */
export function voiceChannelOf(call: Call): string | null {
  if (call.kind === 'distress-relay' || call.kind === 'distress-relay-acknowledgement')
    return DISTRESS_AND_CALLING;
  if (!('channel' in call) || call.kind === 'unable-to-comply') return null;
  if (call.channel !== null) {
    const channel = workingChannel(call.channel);
    return channel === null || barOf(call, channel) !== null ? null : channel;
  }
  return call.category === 'urgency' || call.category === 'safety' || call.category === 'distress'
    ? DISTRESS_AND_CALLING
    : null;
}

/**
 * Whether the radio may change to a channel automatically: the owner allows it, the channel is one that was asked for or that
 * the station uses, and no distress is in hand.
 */
export function mayTuneAutomatically(state: StationState, channel: string, wasAskedFor: boolean): boolean {
  if (state.settings.tuning !== 'automatic' || isDistressInHand(state)) return false;
  return wasAskedFor || channel === DISTRESS_AND_CALLING || state.settings.channels.includes(channel);
}

/** Whether the person must not be taken away from channel 16 now. */
export function isDistressInHand(state: StationState): boolean {
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
