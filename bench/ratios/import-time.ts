import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Figure } from './ratio.ts';

const RUNS = 15;
const DOORS = ['seahail', 'seahail/identity', 'seahail/channel', 'seahail/sentence'];
/** What the machine needs for other people's code: the one dependency, and a general-purpose package of the root's size. */
const OTHERS = ['geographiclib-geodesic', 'zod'];

/**
 * First import of a door in a new process, over that of a module with nothing in it. Processes by turns, the least of
 * each: a process can be held up by others but never helped.
 */
export function importFigures(): Figure[] {
  writeFileSync('out/empty.mjs', '');
  const empty = './out/empty.mjs';
  const least = new Map([empty, ...DOORS, ...OTHERS].map((name) => [name, Number.POSITIVE_INFINITY]));
  for (let run = 0; run < RUNS; run++) {
    for (const [name, before] of least) least.set(name, Math.min(before, importTime(name)));
  }
  const timeOf = (name: string): number => least.get(name) as number;
  const extraOf = (name: string): number => timeOf(name) - timeOf(empty);
  return [
    ...[...DOORS, ...OTHERS].map((name) => ({
      what: `first import of ${name}`,
      beside: 'an empty module',
      ratio: timeOf(name) / timeOf(empty),
      extraMs: extraOf(name),
      ...(name === 'seahail' && { extraGoalMs: 10 }),
    })),
    {
      what: 'what the first import of seahail adds to an empty module',
      beside: 'what zod adds',
      ratio: extraOf('seahail') / extraOf('zod'),
      goal: 0.4,
    },
  ];
}

/** Milliseconds in a process of its own. */
function importTime(name: string): number {
  const script = `const begun = performance.now(); await import('${name}'); console.log(performance.now() - begun)`;
  const child = spawnSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' });
  if (child.status !== 0) throw new Error(child.stderr);
  return Number(child.stdout);
}
