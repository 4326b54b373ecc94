/**
 * What reading costs: sentences a minute of processor time, and as a ratio to splitting the same text into lines
 * and those at their commas. Run with
 * `npx esbuild bench/sentence/parse.ts --bundle --platform=node --format=esm --outfile=out/parse.mjs && node out/parse.mjs`,
 * behind it `pairs` or `watch` for one mix alone.
 */
import { createSentenceReader } from '../../src/sentence/index.ts';
import { inventedLog, type Mix } from './log.ts';

const SENTENCES = 100_000;
const ROUNDS = 15;
/** Bytes handed over at once, as a serial port would. */
const CHUNK = 4096;

function split(text: string): number {
  let fields = 0;
  for (const line of text.split('\r\n')) fields += line.split(',').length;
  return fields;
}

function read(text: string): number {
  const reader = createSentenceReader({ own: '232999871' });
  let readings = 0;
  for (let from = 0; from < text.length; from += CHUNK)
    readings += reader.push(text.slice(from, from + CHUNK)).length;
  return readings + reader.flush().length;
}

/** Time of the processor, not of the clock: other work on the machine does not count. */
function milliseconds(work: () => number): number {
  const begun = process.cpuUsage();
  if (work() === 0) throw new Error('nothing was read');
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}

const median = (values: number[]): number =>
  values.sort((one, other) => one - other)[values.length >> 1] as number;

const mixes: readonly Mix[] = ['pairs', 'watch'];
for (const mix of mixes) {
  if (process.argv[2] !== undefined && process.argv[2] !== mix) continue;
  const text = inventedLog(SENTENCES, mix);
  const splitting: number[] = [];
  const reading: number[] = [];
  for (let round = 0; round < ROUNDS + 3; round += 1) {
    const [plain, whole] = [milliseconds(() => split(text)), milliseconds(() => read(text))];
    if (round < 3) continue;
    splitting.push(plain);
    reading.push(whole);
  }
  const [plain, whole] = [median(splitting), median(reading)];
  const perMinute = ((SENTENCES / whole) * 60_000) / 1e6;
  const each = (whole / SENTENCES) * 1000;
  console.log(
    `${mix}: ${perMinute.toFixed(1)} million sentences a minute, ${each.toFixed(2)} µs each, ` +
      `${(whole / plain).toFixed(1)} times splitting at commas`,
  );
}
