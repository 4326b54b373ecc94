import { readFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };

/** The public doors, read from `exports` so that the two lists cannot differ: './channel' is src/channel/index.ts. */
const doors: Record<string, string> = {};
for (const door of Object.keys(manifest.exports)) {
  if (door === './package.json') continue;
  const target = (manifest.exports[door] as { import: { default: string } }).import.default;
  const name = target.replace('./dist/', '').replace(/\.js$/, '');
  doors[name] = `src/${name}.ts`;
}

const dts = { entry: doors, compilerOptions: { ignoreDeprecations: '6.0' } };

export default defineConfig([
  {
    // Every source file is an entry, so that each stays a chunk of its own and a bundler
    // drops what is not used, geodesy first of all.
    entry: ['src/**/*.ts'],
    outDir: 'dist',
    format: 'esm',
    target: 'es2022',
    splitting: true,
    clean: true,
    dts,
  },
  {
    entry: doors,
    outDir: 'dist',
    format: 'cjs',
    target: 'es2022',
    dts,
  },
]);
