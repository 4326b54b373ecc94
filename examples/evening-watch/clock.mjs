// When each reading came in. A log without dates still has the time of day of own fixes: ages can be told from it,
// and no date is made up.
const DAY = 86_400_000;

export function createClock() {
  let day = '';
  let fixTime = null;
  return {
    /** Takes the time of own fixes as it comes by. */
    hear(reading) {
      if (reading.kind === 'own-position' && reading.fix.time !== null) fixTime = reading.fix.time;
    },
    /** Instant of receipt; on a day of no date when the log has none; `null` when it has no time either. */
    at(reading) {
      if (reading.at !== null) return reading.at;
      if (fixTime === null) return null;
      return DAY + ((fixTime.hour * 60 + fixTime.minute) * 60 + fixTime.second) * 1000;
    },
    /** The date when it is another than before, else nothing. */
    newDay(reading) {
      const before = day;
      day = reading.at === null ? before : new Date(reading.at).toISOString().slice(0, 10);
      return day === before ? undefined : day;
    },
  };
}

/** Hour and minute, UTC. */
export function timeOfDay(at) {
  return at === null ? '--:--' : new Date(at).toISOString().slice(11, 16);
}

/** A length of time for people. */
export function duration(seconds) {
  const minutes = Math.max(1, Math.round(seconds / 60));
  if (minutes < 120) return minutes === 1 ? '1 minute' : `${minutes} minutes`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}
