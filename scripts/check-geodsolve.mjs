// Compares rangeAndBearing and destination with GeodSolve, the reference program of the geodesic algorithms
// (Debian: geographiclib-tools), on lines of every length. `npm run build:js` must have run, or name another module.
import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';

const module = process.argv[2]
  ? pathToFileURL(process.argv[2]).href
  : new URL('../dist/position/index.js', import.meta.url).href;
const { destination, rangeAndBearing } = await import(module);

// A small generator with a fixed seed, so that a failure can be repeated.
let state = 20250101;
const random = () => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 2 ** 32;
};

const lines = [];
for (let i = 0; i < 20_000; i += 1) {
  const from = { latitude: Math.asin(2 * random() - 1) * (180 / Math.PI), longitude: 360 * random() - 180 };
  const reach = [10, 1e3, 5e4, 1e6, 1.9e7][i % 5] * random();
  lines.push({ from, to: destination(from, 360 * random(), reach) });
}

const geodSolve = (options, rows) => {
  const run = spawnSync('GeodSolve', [...options, '-p', '10'], {
    input: rows.join('\n'),
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (run.status !== 0) throw new Error(`GeodSolve: ${run.error?.message ?? run.stderr}`);
  return run.stdout
    .trim()
    .split('\n')
    .map((row) => row.split(' ').map(Number));
};
const turn = (from, to) => ((((to - from + 180) % 360) + 360) % 360) - 180;

const inverse = geodSolve(
  ['-i', '-f'],
  lines.map(({ from, to }) => `${from.latitude} ${from.longitude} ${to.latitude} ${to.longitude}`),
);
let [distance, sideways, ending] = [0, 0, 0];
const starts = [];
for (const [i, { from, to }] of lines.entries()) {
  // Full output: lat1 lon1 azi1 lat2 lon2 azi2 s12 a12 m12 ...
  const [, , azi1, , , azi2, s12, , m12] = inverse[i];
  const found = rangeAndBearing(from, to);
  distance = Math.max(distance, Math.abs(found.metres - s12));
  for (const [bearing, azimuth] of [
    [found.bearing, azi1],
    [found.finalBearing, azi2],
  ]) {
    if (bearing !== null)
      sideways = Math.max(sideways, (Math.abs(turn(azimuth, bearing)) * Math.PI * Math.abs(m12)) / 180);
  }
  starts.push(`${from.latitude} ${from.longitude} ${found.bearing ?? 0} ${found.metres}`);
}
for (const [i, [latitude, longitude]] of geodSolve([], starts).entries()) {
  const [, , bearing, metres] = starts[i].split(' ').map(Number);
  ending = Math.max(
    ending,
    rangeAndBearing(destination(lines[i].from, bearing, metres), { latitude, longitude }).metres,
  );
}

console.log(`${lines.length} lines against GeodSolve:`);
console.log(
  `  largest difference in distance ${(distance * 1e9).toFixed(1)} nm, sideways ${(sideways * 1e9).toFixed(1)} nm`,
);
console.log(`  largest difference at the end of a run ${(ending * 1e9).toFixed(1)} nm`);
if (Math.max(distance, sideways, ending) > 50e-9) {
  console.log('  more than 50 nm: this is not the same geodesic');
  process.exitCode = 1;
}
