import type { Call } from '../../call/index.ts';
import { areaContains } from '../../position/internal.ts';
import type { StationState } from '../model/state.ts';

/**
 * Whether a call is meant for this station: its own identity, one of its groups, an area it is in, all ships, or
 * nobody that can be named. A call for another station is ignored here.
 *
 * A station that does not know where it is takes every area call for its own.
 */
export function isForStation(
  { settings, fix }: Pick<StationState, 'settings' | 'fix'>,
  { to }: Call,
): boolean {
  switch (to?.kind) {
    case 'station':
      return to.mmsi === null || to.mmsi === settings.mmsi;
    case 'group':
      return to.mmsi === null || settings.groups.includes(to.mmsi);
    case 'area':
      return to.area === null || fix === null || areaContains(to.area, fix.position);
    default:
      return true;
  }
}

/** The same, with nothing left open: the call names the station, one of its groups, the area it is in, or all ships. */
export function isPlainlyForStation(state: Pick<StationState, 'settings' | 'fix'>, call: Call): boolean {
  const { to } = call;
  if (to === null || !isForStation(state, call)) return false;
  if ('mmsi' in to) return to.mmsi !== null;
  return to.kind !== 'area' || (to.area !== null && state.fix !== null);
}
