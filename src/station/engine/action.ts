import type { Call } from '../../call/index.ts';
import type { TimeOfDay } from '../../position/index.ts';
import { situationOf } from '../../speech/internal.ts';
import { WATCH_CHANNEL } from '../model/channel.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { Effects } from '../model/effect.ts';
import { type StationText, say } from '../texts.ts';
import { briefly } from './brief.ts';
import { objectionTo } from './on-air.ts';
import { emit, log, reject, type Turn } from './turn.ts';

/** Shows a text to the person; `call` is the call it is about, by default that of the dialogue. */
export function show(
  turn: Turn,
  dialogue: Dialogue | null,
  topic: Effects['show']['topic'],
  text: StationText,
  call?: Call,
): void {
  emit(turn, dialogue, { kind: 'show', topic, call, ...text });
}

/** Logs what was done. */
export function logDone(turn: Turn, dialogue: Dialogue | null, text: StationText): void {
  log(turn, dialogue, { what: 'done', ...text });
}

/** Shows a text and logs it. */
export function tell(
  turn: Turn,
  dialogue: Dialogue | null,
  topic: Effects['show']['topic'],
  text: StationText,
  call?: Call,
): void {
  show(turn, dialogue, topic, text, call);
  logDone(turn, dialogue, text);
}

/** Puts a call on the air, unless something bars it: then the dialogue goes on as after a failed transmission. */
export function transmit(turn: Turn, dialogue: Dialogue, call: Call | null, times: 1 | 5 = 1): void {
  const objection = call === null ? null : objectionTo(turn.state, dialogue, call);
  if (objection !== null) reject(turn, dialogue, objection);
  turn.state.transmitting = dialogue.id;
  if (call === null || objection !== null) turn.failed.push(dialogue.id);
  else emit(turn, dialogue, { kind: 'send', call, times });
}

/** The transmission is over. */
export function endTransmission(turn: Turn, dialogue: Dialogue): void {
  if (turn.state.transmitting === dialogue.id) turn.state.transmitting = null;
}

/** Breaks off the own transmission. */
export function stopTransmission(turn: Turn, dialogue: Dialogue): void {
  if (turn.state.transmitting === dialogue.id) emit(turn, dialogue, { kind: 'stop-sending' });
  endTransmission(turn, dialogue);
}

/** Notes a call that went out. */
export function logSent(turn: Turn, dialogue: Dialogue, call: Call, times = 1): void {
  const sent = { call: briefly(call) };
  const text = times > 1 ? say('station-sent-times', { ...sent, times }) : say('station-sent', sent);
  log(turn, dialogue, { what: 'sent', ...text, call });
}

/** The radio could not send. */
export function reportFailure(turn: Turn, dialogue: Dialogue, text: StationText): void {
  endTransmission(turn, dialogue);
  sound(turn, dialogue, 'fault');
  tell(turn, dialogue, 'transmission-failed', text);
}

/** ITU-R M.493-16: distress and urgency alarms last until a person silences them, the others are short. */
export const lasting: readonly Effects['sound']['alarm'][] = ['distress', 'urgency'];

/** Starts an alarm, unless the very same one is sounding already. */
export function sound(turn: Turn, dialogue: Dialogue | null, alarm: Effects['sound']['alarm']): void {
  const { state } = turn;
  if (!lasting.includes(alarm)) {
    emit(turn, dialogue, { kind: 'sound', alarm, lasts: 'short' });
  } else if (!state.sounding.includes(alarm)) {
    state.sounding = [...state.sounding, alarm];
    emit(turn, dialogue, { kind: 'sound', alarm, lasts: 'until-silenced' });
  }
}

/** Asks for the words that belong to a call, if any do. */
export function speak(
  turn: Turn,
  dialogue: Dialogue,
  call: Call,
  channel: string,
  alertTime: TimeOfDay | null = null,
): void {
  const { kind: situation } = situationOf(call, turn.state.settings.mmsi, (mmsi) => ({ mmsi }));
  if (situation === 'nothing-to-say') return;
  emit(turn, dialogue, { kind: 'speak', situation, channel, call, alertTime });
}

/** Changes the voice channel. */
export function tune(turn: Turn, dialogue: Dialogue, channel: string): void {
  const left = turn.state.tunedTo;
  turn.state.tunedTo = channel;
  emit(turn, dialogue, { kind: 'tune', channel });
  tellWatchLeft(turn, dialogue, left);
}

/** The voice channel was changed outside this machine, or as it asked. */
export function tuneByHand(turn: Turn, channel: string): void {
  const left = turn.state.tunedTo;
  turn.state.tunedTo = channel;
  tellWatchLeft(turn, null, left);
}

/**
 * Says that the radio left a channel that must be watched. Automatic channel change during a bridge-to-bridge or
 * traffic watch: US Coast Guard safety alert of 2010; ITU-R M.493 considering j).
 */
function tellWatchLeft(turn: Turn, dialogue: Dialogue | null, left: string | null): void {
  const { tunedTo, settings } = turn.state;
  if (left === tunedTo || tunedTo === null) return;
  const watched = left === null ? settings.watched : settings.watched.filter((channel) => channel === left);
  const lost = watched.filter((channel) => channel !== tunedTo);
  if (lost.length === 0) return;
  tell(turn, dialogue, 'watch-left', say('station-watch-left', { channel: tunedTo, watched: lost }));
}

/** Distress traffic is on channel 16: tunes there, or asks the person to. */
export function tuneToWatch(turn: Turn, dialogue: Dialogue, certain = true): void {
  if (certain && turn.state.settings.tuning === 'automatic') tune(turn, dialogue, WATCH_CHANNEL);
  else show(turn, dialogue, 'tune-by-hand', say('station-tune-16', {}));
}

/** The talk is over: back to the watch, unless somebody has tuned elsewhere since. */
export function returnToWatch(turn: Turn, dialogue: Dialogue & { readonly channel: string | null }): void {
  const { channel } = dialogue;
  logDone(turn, dialogue, say('station-finished', channel === null ? {} : { channel }));
  if (channel !== WATCH_CHANNEL && turn.state.tunedTo === channel) tune(turn, dialogue, WATCH_CHANNEL);
}

/** Closed because nobody acted: the radio stays on its channel, since a conversation may be in progress. */
export function leaveTuned(turn: Turn, dialogue: Dialogue & { readonly channel: string | null }): void {
  const { channel } = dialogue;
  const stillThere = channel !== null && channel !== WATCH_CHANNEL && turn.state.tunedTo === channel;
  tell(turn, dialogue, 'still-on-channel', say('station-closed-idle', stillThere ? { channel } : {}));
}
