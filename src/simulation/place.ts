import { createStation, type EventWithoutTime, type StationState } from '../station/index.ts';
import type { SimulatedStation } from './simulation.ts';
import type { Transmission } from './transmission.ts';

/** A station in the course of a simulation. */
export interface Place {
  readonly index: number;
  readonly station: SimulatedStation;
  state: StationState;
  /** Transmissions that this station notices now. */
  carriers: number;
  /** Its own bursts that are on the air or to follow. */
  sending: readonly Transmission[];
  /** Who heard one of the alerts of its attempt so far. */
  readonly warned: Set<number>;
}

/** A station before anything happened. */
export function createPlace(station: SimulatedStation, index: number, seed: number): Place {
  const state = createStation({ seed, ...station.settings });
  return { index, station, state, carriers: 0, sending: [], warned: new Set() };
}

/** What the position receiver gives. */
export function fixOf({ station }: Place): EventWithoutTime {
  return { kind: 'fix', position: station.position, source: 'instrument' };
}

/** A script does not know the numbers of dialogues: 0 is the one before the person. */
export function aimed({ state }: Place, event: EventWithoutTime): EventWithoutTime {
  return 'dialogue' in event && event.dialogue === 0 ? { ...event, dialogue: state.active ?? 0 } : event;
}
