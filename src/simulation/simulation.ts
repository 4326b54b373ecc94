import type { Coordinates } from '../position/index.ts';
import type { Effect, EventWithoutTime, SettingsInput, StationState } from '../station/index.ts';
import type { SimulatedPerson } from './person.ts';

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
  readonly clockError?: number;
  /** Who minds it; nobody when absent. */
  readonly person?: SimulatedPerson;
}

/** One thing that a person does at a set time. */
export interface ScriptLine {
  /** Seconds from the start. */
  readonly at: number;
  /** Name of the station. */
  readonly station: string;
  /** An act on a dialogue whose `dialogue` is 0 is meant for the active one. */
  readonly event: EventWithoutTime;
}

/** How a simulation is run. */
export interface SimulationOptions {
  /** Any integer: the same seed gives the same simulation. */
  readonly seed: number;
  /** Start, epoch milliseconds; 2026-06-01 18:00 UTC when absent. */
  readonly start?: number;
  /** Seconds to simulate; one hour when absent. */
  readonly duration?: number;
  /** Share of bits that come wrong even without another transmission on top; 0.001 when absent. */
  readonly bitErrorRate?: number;
  /** Milliseconds until a station notices that another transmits; 10 when absent. */
  readonly carrierDelay?: number;
}

/** Something a station did or was told, in the order of time. */
export interface SimulatedMoment {
  /** Simulated time, epoch milliseconds. */
  readonly at: number;
  /** Name of the station. */
  readonly station: string;
  readonly effect: Effect;
}

/** What channel 70 carried. */
export interface ChannelLoad {
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
}

/** The outcome of a simulation. */
export interface SimulationResult {
  /** Everything but `wake` effects. */
  readonly moments: readonly SimulatedMoment[];
  /** The stations at the end, by name. */
  readonly states: Readonly<Record<string, StationState>>;
  readonly channel70: ChannelLoad;
}
