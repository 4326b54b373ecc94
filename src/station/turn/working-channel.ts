import type { Call } from '../../call/index.ts';
import { barredEverywhere, parseDesignator } from '../../channel/index.ts';
import type { Notice } from '../../result/index.ts';
import type { StationState } from '../state/state.ts';

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
 * Whether the radio may go to a channel by itself: the owner allows it, the channel is one that was asked for or that
 * the station uses, and no distress is in hand.
 */
export function mayTuneByItself(state: StationState, channel: string, wasAskedFor: boolean): boolean {
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

/** The digits by which a call names a channel, from any of its names; `null` for one that no call can name. */
export function workingChannel(name: unknown): string | null {
  const read = parseDesignator(name);
  return read.ok ? read.value.m1084 : null;
}

/** What speaks against talking on a channel in any waters, after a call of this urgency. */
export function barOf(call: Call, channel: string): Notice | null {
  const urgent = 'category' in call && call.category !== null && URGENT.includes(call.category);
  return barredEverywhere(channel, urgent ? 'safety' : 'intership-non-commercial');
}

const URGENT: readonly string[] = ['safety', 'urgency', 'distress'];
