// Compares what the package reads from AIS sentences with what check-ais.py packed into them, by tables of its own and
// a general bit-field library (Debian: python3-bitstring). `npm run build:js` must have run.
import { spawnSync } from 'node:child_process';
import { readSentences } from 'seahail/sentence';

const run = spawnSync('/usr/bin/python3', ['scripts/check-ais.py'], { encoding: 'utf8', maxBuffer: 1 << 26 });
if (run.status !== 0) throw new Error(run.error?.message ?? run.stderr);
const rows = run.stdout.trim().split('\n').map(JSON.parse);

const problems = [];
let values = 0;
for (const { sentences, report } of rows) {
  const readings = readSentences(`${sentences.join('\r\n')}\r\n`);
  const [reading] = readings;
  if (readings.length !== 1 || reading.kind !== 'ais') {
    problems.push(`${sentences[0]}: ${readings.map(({ kind }) => kind)}`);
    continue;
  }
  const { station: _, ...read } = reading.report;
  for (const name of new Set([...Object.keys(read), ...Object.keys(report)])) {
    values += 1;
    if (JSON.stringify(read[name]) !== JSON.stringify(report[name]))
      problems.push(
        `${sentences[0]} ${name}: ${JSON.stringify(read[name])}, packed ${JSON.stringify(report[name])}`,
      );
  }
}
console.log(`${rows.length} AIS messages, ${values} values, ${problems.length} differ`);
for (const problem of problems.slice(0, 20)) console.error(problem);
process.exitCode = problems.length === 0 ? 0 : 1;
