import type { Finding, Sighting } from './fault.ts';
import { FAULTS, type FaultId } from './fault-list.ts';

/** Gathers sightings into findings. */
export interface Collector {
  add(id: FaultId, certainty: Finding['certainty'], sighting: Sighting): void;
  /** Makes certain of a fault, if it was seen. */
  confirm(id: FaultId): void;
  /** In the order of the list of faults; sightings by line. */
  findings(): Finding[];
}

const MOST_SIGHTINGS = 20;
const RANK = { certain: 2, likely: 1, possible: 0 } as const;

/** An empty collector. It keeps a bounded number of sightings of each fault and counts the rest. */
export function createCollector(): Collector {
  const found = new Map<FaultId, { certainty: Finding['certainty']; count: number; sightings: Sighting[] }>();
  return {
    add(id, certainty, sighting) {
      const entry = found.get(id);
      if (entry === undefined) {
        found.set(id, { certainty, count: 1, sightings: [sighting] });
        return;
      }
      entry.count += 1;
      if (entry.sightings.length < MOST_SIGHTINGS) entry.sightings.push(sighting);
      if (RANK[certainty] > RANK[entry.certainty]) entry.certainty = certainty;
    },

    confirm(id) {
      const entry = found.get(id);
      if (entry !== undefined) entry.certainty = 'certain';
    },

    findings() {
      return FAULTS.flatMap(({ id, step, why, remedy }) => {
        const entry = found.get(id);
        if (entry === undefined) return [];
        const sightings = [...entry.sightings].sort((one, other) => (one.line ?? 0) - (other.line ?? 0));
        return { id, step, certainty: entry.certainty, why, remedy, count: entry.count, sightings };
      });
    },
  };
}
