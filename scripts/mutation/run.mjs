// Mutation score of one room against its own tests: node scripts/mutation/run.mjs identity [concurrency]
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, renameSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Per cent of a room's mutants that its tests must catch. */
const LEAST = 85;

const root = fileURLToPath(new URL('../..', import.meta.url));
const [room, concurrency = '2'] = process.argv.slice(2);
if (!/^[a-z]+$/.test(room ?? ''))
  throw new Error('which room? for example: node scripts/mutation/run.mjs identity');

const mutate = [`src/${room}/**/*.ts`, `!src/${room}/**/index.ts`, `!src/${room}/issue-code.ts`].join(',');
const run = spawnSync('npx', ['stryker', 'run', '--mutate', mutate, '--concurrency', concurrency], {
  cwd: root,
  env: { ...process.env, ROOM: room },
  stdio: 'inherit',
});
if (run.status === 0) {
  mkdirSync(`${root}/reports/mutation`, { recursive: true });
  renameSync(`${root}/reports/mutation/mutation.json`, `${root}/reports/mutation/${room}.json`);
  const { files } = JSON.parse(readFileSync(`${root}/reports/mutation/${room}.json`, 'utf8'));
  const counts = {};
  for (const { mutants } of Object.values(files))
    for (const { status } of mutants) counts[status] = (counts[status] ?? 0) + 1;
  const caught = (counts.Killed ?? 0) + (counts.Timeout ?? 0);
  const missed = (counts.Survived ?? 0) + (counts.NoCoverage ?? 0);
  const score = (100 * caught) / (caught + missed);
  const told = Object.entries(counts).map(([status, count]) => `${status} ${count}`);
  console.log(`${room}: ${score.toFixed(1)} % of ${caught + missed} mutants caught (${told.join(', ')})`);
  process.exitCode = score >= LEAST ? 0 : 1;
} else process.exitCode = run.status ?? 1;
