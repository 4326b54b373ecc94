import type { Call } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import type { Dialogue } from './dialogue.ts';
import type { Effects } from './effect.ts';
import type { StationSettings } from './settings.ts';

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
