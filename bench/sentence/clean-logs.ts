/**
 * Looks for faults in ten thousand generated clean logs and shows whatever is found. Run with
 * `npx esbuild bench/sentence/clean-logs.ts --bundle --platform=node --format=esm --outfile=out/clean-logs.mjs && node out/clean-logs.mjs`.
 */
import { findFaults } from '../../src/sentence/index.ts';
import { cleanLog } from '../../tests/sentence/clean-log.ts';

const LOGS = 10_000;
let sentences = 0;
let found = 0;
for (let seed = 1; seed <= LOGS; seed += 1) {
  const { text, options } = cleanLog(seed);
  const report = findFaults(text, options);
  sentences += report.sentences;
  // A log without a call says so, and that is no more than possible a fault.
  if (
    report.clean ||
    (report.calls === 0 && report.findings.every(({ certainty }) => certainty === 'possible'))
  )
    continue;
  found += 1;
  console.log(seed, JSON.stringify(report.findings.map(({ id, sightings }) => [id, sightings[0]?.seen])));
}
console.log(`${LOGS} clean logs, ${sentences} sentences: faults found in ${found}`);
if (found > 0) process.exitCode = 1;
