/** The international nautical mile in metres: First International Extraordinary Hydrographic Conference, Monaco, 1929. */
export const MILE = 1852;

/** Metres run at a speed in knots during seconds. */
export function metresRun(knots: number, seconds: number): number {
  return (knots * MILE * seconds) / 3600;
}
