// Bundles one benchmark and runs it: `node scripts/bench.mjs receiver [--full] [section ...]`; without a name, `ratios`.
// The name is a file of bench/ without its ending, or a folder with a main.ts.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { buildSync } from 'esbuild';

const [name = 'ratios', ...rest] = process.argv.slice(2);
const entry = [`bench/${name}.ts`, `bench/${name}/main.ts`].find((path) => existsSync(path));
if (!entry) {
  console.error(`there is no benchmark '${name}'`);
  process.exit(2);
}
const outfile = `out/bench-${name.replaceAll('/', '-')}.mjs`;
buildSync({
  entryPoints: [entry],
  bundle: true,
  // Above all the package itself, which is measured as built.
  packages: 'external',
  platform: 'node',
  format: 'esm',
  outfile,
  logLevel: 'error',
});
process.exit(
  spawnSync(process.execPath, ['--expose-gc', outfile, ...rest], { stdio: 'inherit' }).status ?? 1,
);
