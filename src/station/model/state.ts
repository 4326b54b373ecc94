import type { Call } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import { want } from '../../result/internal.ts';
import type { Dialogue } from './dialogue.ts';
import type { Effects } from './effect.ts';
import { completeSettings, misfitsOf, type SettingsInput, type StationSettings } from './settings.ts';

/** All that a station knows. Plain data: keep it as JSON, bring it back with {@link restoreStation}. */
export interface StationState {
  readonly kind: 'station';
  /** Layout of this object. */
  readonly version: 3;
  readonly settings: StationSettings;
  /** Instant of the last event, epoch milliseconds; 0 before the first. */
  readonly now: number;
  readonly fix: {
    readonly position: Coordinates;
    /** When it was there, epoch milliseconds. */
    readonly at: number;
    readonly source: 'instrument' | 'person';
    /** The person was told that it is old. */
    readonly warned: boolean;
  } | null;
  /** Voice channel of the radio as far as known, ITU-R M.1084 digits. Since version 2. */
  readonly tunedTo: string | null;
  /** Somebody else is transmitting on channel 70. */
  readonly channelBusy: boolean;
  /** The dialogue whose call is on the air. */
  readonly transmitting: number | null;
  /** In order of opening; at most 32. */
  readonly dialogues: readonly Dialogue[];
  /** The dialogue before the person; the others are on hold. */
  readonly active: number | null;
  /** Alarms that sound until they are silenced. */
  readonly sounding: readonly Effects['sound']['alarm'][];
  /** At most 20, oldest first. */
  readonly heardAlerts: readonly {
    /** Nine digits, `null` when unknown. */
    readonly distressed: string | null;
    readonly nature: string | null;
    /** Epoch milliseconds. */
    readonly lastAt: number;
  }[];
  /** At most 8, oldest first. Since version 3. */
  readonly provisional: readonly {
    /** `event` of the reading. */
    readonly event: number | string;
    readonly call: Call;
    /** The dialogue it belongs to, which may have ended; `null` for none. */
    readonly dialogue: number | null;
  }[];
  /** Brought back by {@link restoreStation}: the next step shows and asks everything again. Since version 3. */
  readonly restored: boolean;
  /** When the last `wake` effect asked for a clock event, epoch milliseconds. */
  readonly wakeAt: number | null;
  readonly nextDialogue: number;
  readonly nextLogEntry: number;
  /** State of the random numbers. */
  readonly random: number;
}

/** Dialogues kept at once. The oldest that is neither distress nor on the air makes room. */
export const MOST_DIALOGUES = 32;

/** Provisional readings remembered: a source completes each within seconds. */
export const MOST_PROVISIONAL = 8;

/** Alerts remembered: the memory that the equipment standards ask for, from memory of ITU-R M.493. */
export const MOST_ALERTS = 20;

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
  want('createStation', 'settings with mmsi', settings, 'mmsi');
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
