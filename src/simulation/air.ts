import type { Jams, Transmission } from './transmission.ts';

/** What is on channel 70, and how long it was in use. Instants are milliseconds of simulated time. */
export interface Air {
  /** Bursts without a gap between them go on the air. */
  readonly begin: (bursts: readonly Transmission[], now: number) => void;
  /** The last of them is over. */
  readonly end: (now: number) => void;
  /** When something else was on a receiver's air while a transmission was. */
  readonly jams: (receiver: number, transmission: Transmission) => Jams;
  /** For how long at least one station transmitted. */
  readonly timeInUse: (now: number) => number;
}

/** Longer than any row of bursts: what ended before cannot fall together with what is still on the air. */
const MEMORY = 10_000;

/**
 * An empty channel.
 *
 * @param hearers - for each station, those that its signals reach
 */
export function createAir(hearers: readonly (readonly number[])[]): Air {
  let recent: Transmission[] = [];
  let onAir = 0;
  let inUseSince = 0;
  let inUse = 0;
  return {
    begin: (bursts, now) => {
      recent = recent.filter(({ end }) => end > now - MEMORY);
      recent.push(...bursts);
      if (onAir++ === 0) inUseSince = now;
    },
    end: (now) => {
      if (--onAir === 0) inUse += now - inUseSince;
    },
    jams: (receiver, transmission) =>
      recent
        .filter(
          (other) =>
            other !== transmission &&
            other.start < transmission.end &&
            other.end > transmission.start &&
            // A station that transmits hears nothing.
            (other.sender === receiver || (hearers[other.sender] ?? []).includes(receiver)),
        )
        .map(({ start, end }) => [start, end] as const),
    timeInUse: (now) => inUse + (onAir > 0 ? now - inUseSince : 0),
  };
}
