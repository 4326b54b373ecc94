import { readFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };

/** The public doors, read from `exports` so that the two lists cannot differ: './channel' is src/channel/index.ts. */
const doors: Record<string, string> = {};
for (const door of Object.keys(manifest.exports)) {
  if (door === './package.json') continue;
  const target = (manifest.exports[door] as { default: string }).default;
  const name = target.replace('./dist/', '').replace(/\.js$/, '');
  doors[name] = `src/${name}.ts`;
}

export default defineConfig({
  // Geodesy is an entry beside the doors, so that it stays a file of its own, which a bundler drops where it is not used.
  entry: [...Object.values(doors), 'src/position/geodesic.ts'],
  outDir: 'dist',
  format: 'esm',
  target: 'es2022',
  splitting: true,
  clean: true,
  // Three languages are written with letters that would take six characters each.
  esbuildOptions(options) {
    options.charset = 'utf8';
  },
  dts: { entry: doors, compilerOptions: { ignoreDeprecations: '6.0' } },
});
