// Attacks the promises of README, guides and DEVELOPERS.md for longer than `npm test` does.
//
//   npm run attack                                      every promise, at its usual length
//   npm run attack -- --promise clean-means-right --count 30000 --seed 7
//
// Each attack is a file of tests/promises/attacks/. Ends with 1 when a promise was broken.
import { readdirSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { buildSync } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const { values: options } = parseArgs({
  options: {
    promise: { type: 'string', multiple: true },
    count: { type: 'string' },
    seed: { type: 'string', default: '1' },
  },
});

const all = readdirSync(`${root}/tests/promises/attacks`).map((file) => file.replace(/\.ts$/, ''));
const chosen = options.promise ?? all;
const unknown = chosen.filter((promise) => !all.includes(promise));
if (unknown.length > 0) {
  console.error(`There is no promise '${unknown[0]}'; there are ${all.join(', ')}`);
  process.exit(2);
}

buildSync({
  absWorkingDir: root,
  entryPoints: chosen.map((promise) => `tests/promises/attacks/${promise}.ts`),
  bundle: true,
  splitting: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  outdir: 'out/attack',
  outExtension: { '.js': '.mjs' },
  logLevel: 'error',
});

let broken = 0;
for (const promise of chosen) {
  const { attack, usual } = await import(pathToFileURL(`${root}/out/attack/${promise}.mjs`));
  const count = Number(options.count ?? usual);
  const { counts, breaks } = await attack({ seed: Number(options.seed), count });
  console.log(
    `\n${promise} (seed ${options.seed}, count ${count}): ${breaks.length === 0 ? 'holds' : 'BROKEN'}`,
  );
  for (const [name, value] of Object.entries(counts)) console.log(`  ${name.padEnd(32)} ${value}`);
  for (const { what, how } of breaks) console.log(`  broken: ${what}\n    ${how}`);
  broken += breaks.length > 0 ? 1 : 0;
}
console.log(`\n${chosen.length - broken} of ${chosen.length} promises hold`);
process.exitCode = broken === 0 ? 0 : 1;
