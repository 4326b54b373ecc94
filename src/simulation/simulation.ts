import type { Reason } from '../call/index.ts';
import type { Coordinates } from '../position/index.ts';
import type { Effect, EventWithoutTime, SettingsInput, StationState } from '../station/index.ts';

/** One station of a simulation. */
export interface SimulatedStation {
  /** For the time line and the script; no two alike. */
  readonly name: string;
  readonly settings: SettingsInput;
  /** Where it lies; it does not move. */
  readonly position: Coordinates;
  /** Metres above the sea. */
  readonly antennaHeight: number;
  /** Whether a position receiver is connected; `true` when absent. */
  readonly receiver?: boolean;
  /** By how many milliseconds its clock is ahead; 0 when absent. */
  readonly clockErrorMs?: number;
  /** Who minds it; nobody when absent. */
  readonly person?: {
    /** How calls are answered: `'able'`, with a reason not to, or not at all. */
    readonly answers: 'able' | Reason | 'never';
    /** Seconds until the person acts, least and most. */
    readonly delaySeconds: readonly [least: number, most: number];
    /** Seconds of talk on a working channel, least and most. */
    readonly talkSeconds: readonly [least: number, most: number];
  };
}

/** One thing that a person does at a set time. */
export interface ScriptLine {
  /** Seconds from the start. */
  readonly afterSeconds: number;
  /** Name of the station. */
  readonly station: string;
  /** An act on a dialogue whose `dialogue` is 0 is meant for the active one. */
  readonly event: EventWithoutTime;
}

/** Something a station did or was told, in the order of time. */
export type SimulatedMoment = SimulationResult['moments'][number];

/** The outcome of a simulation. */
export interface SimulationResult {
  /** Everything but `wake` effects. */
  readonly moments: readonly {
    /** Simulated time, epoch milliseconds. */
    readonly at: number;
    /** Name of the station. */
    readonly station: string;
    readonly effect: Effect;
  }[];
  /** The stations at the end, by name. */
  readonly states: Readonly<Record<string, StationState>>;
  readonly channel70: {
    /** Bursts sent: a distress attempt counts five. */
    readonly bursts: number;
    /** Seconds in which at least one station transmitted. */
    readonly busySeconds: number;
    /** Share of the time in which the channel was in use: erlang. */
    readonly erlang: number;
    /** Receptions by stations that a burst was meant for: heard at all, clean, and lost. */
    readonly meant: { readonly heard: number; readonly clean: number; readonly lost: number };
    /** Distress attempts that a station in range should have heard, and those of which not one alert came through. */
    readonly alerts: { readonly attempts: number; readonly spoilt: number };
    /** Events given to stations. */
    readonly events: number;
  };
}
