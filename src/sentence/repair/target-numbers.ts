/** Gives every station a target number of its own. */
export interface TargetNumbers {
  /** 0–99. */
  numberOf(station: string): number;
}

/** Two digits of a `TLL` sentence. */
const MOST_TARGETS = 100;

/** No number given yet. When all are taken, the station that has had hers longest gives it up. */
export function createTargetNumbers(): TargetNumbers {
  const given = new Map<string, number>();
  return {
    numberOf(station) {
      const known = given.get(station);
      if (known !== undefined) return known;
      const number = given.size < MOST_TARGETS ? given.size : takeOldest(given);
      given.set(station, number);
      return number;
    },
  };
}

function takeOldest(given: Map<string, number>): number {
  for (const [station, number] of given) {
    given.delete(station);
    return number;
  }
  return 0;
}
