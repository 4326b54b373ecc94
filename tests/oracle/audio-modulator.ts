/**
 * The waveform of some bits, written down as slowly and plainly as it can be.
 *
 * ITU-R M.493-16 Annex 1 section 1, from memory: 1200 baud, Y (1) 1300 Hz, B (0) 2100 Hz. Cycles gained over each bit are added up from
 * the first; nothing is carried over from sample to sample.
 */
export function slowSample(bits: string, seconds: number): number {
  const bit = Math.floor(seconds * 1200);
  if (seconds < 0 || bit >= bits.length) return 0;
  let cycles = 0;
  for (let k = 0; k < bit; k++) cycles += (bits[k] === '1' ? 1300 : 2100) / 1200;
  cycles += (bits[bit] === '1' ? 1300 : 2100) * (seconds - bit / 1200);
  return Math.sin(2 * Math.PI * cycles);
}
