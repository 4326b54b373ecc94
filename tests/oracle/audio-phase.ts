/**
 * Every possible run of bits weighed against a sound, one by one: what the phase trellis must come to.
 *
 * `tones[k]` holds the correlations of bit k with 1300 Hz (index 1) and 2100 Hz (index 0) as [re, im]. The phase stands on one of
 * `steps` places; a bit turns it by a third, up for 0 and down for 1; then it wanders as `wander` says (rows: from, columns: to).
 */
export function slowBitPosteriors(
  tones: readonly (readonly [readonly [number, number], readonly [number, number]])[],
  amplitude: readonly [number, number],
  noise: number,
  steps: number,
  wander: readonly (readonly number[])[],
): readonly number[] {
  const bits = tones.length;
  const ones = new Array<number>(bits).fill(0);
  let total = 0;
  for (let run = 0; run < 2 ** bits; run++) {
    let phases = new Array<number>(steps).fill(1 / steps);
    for (let k = 0; k < bits; k++) {
      const bit = (run >> k) & 1;
      const [re, im] = (tones[k] as (typeof tones)[number])[bit] as readonly [number, number];
      const a = amplitude[bit] as number;
      const next = new Array<number>(steps).fill(0);
      for (let s = 0; s < steps; s++) {
        const angle = (2 * Math.PI * s) / steps;
        const exponent = (2 * a * (re * Math.cos(angle) + im * Math.sin(angle)) - a * a) / noise;
        const to = (s + (bit === 1 ? (2 * steps) / 3 : steps / 3)) % steps;
        for (let t = 0; t < steps; t++) {
          next[t] =
            (next[t] as number) +
            (phases[s] as number) * Math.exp(exponent) * ((wander[to] as number[])[t] as number);
        }
      }
      phases = next;
    }
    const likelihood = phases.reduce((sum, p) => sum + p, 0);
    total += likelihood;
    for (let k = 0; k < bits; k++) if ((run >> k) & 1) ones[k] = (ones[k] as number) + likelihood;
  }
  return ones.map((sum) => sum / total);
}
