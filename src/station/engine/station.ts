import { waitsOf } from '../model/dialogue.ts';
import { completeSettings, misfitsOf, type SettingsInput } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { positionDeadline } from './clock.ts';

/**
 * A station that was just switched on.
 *
 * @param settings - own identity and class; the rest has usual values
 * @returns the state to give to {@link step}
 * @throws RangeError when the identity cannot be a station's own and is not `null`, or another setting has a value that
 * it cannot have, such as a channel for no talk
 *
 * @see {@link restoreStation}
 * @see {@link checkSetup}
 *
 * @example
 * ```ts
 * import { createStation, step } from 'seahail/station';
 *
 * const merrow = createStation({ mmsi: '232999871', equipment: 'D' });
 * const turn = step(merrow, {
 *   kind: 'call',
 *   at: Date.UTC(2026, 5, 1, 18, 0),
 *   call: {
 *     kind: 'individual-call',
 *     to: { kind: 'station', mmsi: '232999142' },
 *     from: null,
 *     category: 'routine',
 *     firstTelecommand: 'telephony-simplex',
 *     secondTelecommand: null,
 *     channel: '72',
 *   },
 * });
 * console.log(turn.effects.map((effect) => effect.kind).join(', ')); // send, wake
 * ```
 */
export function createStation(settings: SettingsInput): StationState {
  const complete = completeSettings(settings);
  const [wrong] = misfitsOf(complete);
  if (wrong === 'mmsi')
    throw new RangeError('createStation: expected mmsi to be an identity that one station can have, or null');
  if (wrong !== undefined) throw new RangeError(`createStation: invalid setting ${wrong}`);
  return {
    kind: 'station',
    version: 3,
    settings: complete,
    now: 0,
    fix: null,
    tunedTo: null,
    channelBusy: false,
    transmitting: null,
    dialogues: [],
    active: null,
    sounding: [],
    heardAlerts: [],
    provisional: [],
    restored: false,
    wakeAt: null,
    nextDialogue: 1,
    nextLogEntry: 1,
    random: complete.seed >>> 0,
  };
}

/**
 * When the station next wants a `clock` event, epoch milliseconds; `null` when it waits for nothing.
 *
 * @param state - any state
 *
 * @example
 * ```ts
 * import { createStation, nextWake } from 'seahail/station';
 *
 * console.log(nextWake(createStation({ mmsi: '232999871' }))); // null
 * ```
 */
export function nextWake(state: StationState): number | null {
  let soonest = positionDeadline(state);
  for (const dialogue of state.dialogues) {
    for (const [, until] of waitsOf(dialogue)) soonest = Math.min(soonest, until);
  }
  return soonest < Infinity ? soonest : null;
}
