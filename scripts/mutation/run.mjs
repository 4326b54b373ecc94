// Mutation score of one room against its own tests: node scripts/mutation/run.mjs identity [concurrency]
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Per cent of a room's mutants that its tests must catch. */
const LEAST = 85;
/**
 * Rooms whose files are tried one after another. The decoder's inner loops, once instrumented, slow every test of the
 * room, and the time that an endless mutant is given grows with them: so only the file in question carries mutants.
 */
const FILE_BY_FILE = new Set(['burst']);

const root = fileURLToPath(new URL('../..', import.meta.url));
const [room, concurrency = '2'] = process.argv.slice(2);
if (!/^[a-z]+$/.test(room ?? ''))
  throw new Error('which room? for example: node scripts/mutation/run.mjs identity');

const files = readdirSync(`${root}/src/${room}`, { recursive: true })
  .filter((file) => file.endsWith('.ts') && !/(^|[\\/])index\.ts$/.test(file) && !/texts\.ts$/.test(file))
  .map((file) => `src/${room}/${file}`);
const tried = {};
for (const mutate of FILE_BY_FILE.has(room) ? files.map((file) => [file]) : [files])
  Object.assign(tried, mutants(mutate));
writeFileSync(`${root}/reports/mutation/${room}.json`, JSON.stringify({ files: tried }));

const counts = {};
for (const { mutants } of Object.values(tried))
  for (const { status } of mutants) counts[status] = (counts[status] ?? 0) + 1;
const caught = (counts.Killed ?? 0) + (counts.Timeout ?? 0);
const missed = (counts.Survived ?? 0) + (counts.NoCoverage ?? 0);
const score = (100 * caught) / (caught + missed);
const told = Object.entries(counts).map(([status, count]) => `${status} ${count}`);
console.log(`${room}: ${score.toFixed(1)} % of ${caught + missed} mutants caught (${told.join(', ')})`);
process.exitCode = score >= LEAST ? 0 : 1;

/** What became of each mutant of these files, as Stryker reports it. */
function mutants(mutate) {
  const report = `${root}/reports/mutation/mutation.json`;
  rmSync(report, { force: true });
  const run = spawnSync(
    'npx',
    ['stryker', 'run', '--mutate', mutate.join(','), '--concurrency', concurrency],
    {
      cwd: root,
      env: { ...process.env, ROOM: room },
      stdio: 'inherit',
    },
  );
  if (run.status !== 0) process.exit(run.status ?? 1);
  return JSON.parse(readFileSync(report, 'utf8')).files;
}
