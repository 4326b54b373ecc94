// Joins the many files that tsup makes into fewer, because opening a file costs Node more than the code in it; run by
// `npm run build`. What the root loads becomes two files: one for calls, and one for what calls are made of. Bundlers still
// leave out what an app does not use. Only geodesy stays in a file of its own: no bundler can tell what its library does.
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rollup } from 'rollup';

const dist = fileURLToPath(new URL('../dist', import.meta.url));
/** Doors to what calls are made of. */
const BELOW_CALLS = ['identity/index', 'channel/index', 'result/index'];
/** Characters of a file that is worth a load of its own. */
const LEAST = 15_000;

const files = readdirSync(dist, { recursive: true }).filter((file) => file.endsWith('.js'));
const isPart = (file) => /chunk-\w+\.js$/.test(file);
const isDoor = (file) => !isPart(file) && file !== join('position', 'geodesic.js');
const path = (door) => join(dist, `${door}.js`);

/** All files of the package that some of them load, themselves included. */
function loaded(paths, { getModuleInfo }, seen = new Set()) {
  for (const id of paths) {
    if (seen.has(id) || !id.startsWith(dist)) continue;
    seen.add(id);
    loaded(getModuleInfo(id).importedIds, { getModuleInfo }, seen);
  }
  return seen;
}

const bundle = await rollup({
  input: Object.fromEntries(
    files.filter(isDoor).map((file) => [file.slice(0, -'.js'.length), join(dist, file)]),
  ),
  external: /^[^./]/,
  treeshake: false,
  logLevel: 'warn',
});
for (const file of files) rmSync(join(dist, file));
let below;
let root;
await bundle.write({
  dir: dist,
  chunkFileNames: 'chunk-[hash].js',
  experimentalMinChunkSize: LEAST,
  hoistTransitiveImports: false,
  minifyInternalExports: false,
  manualChunks(id, graph) {
    below ??= loaded(BELOW_CALLS.map(path), graph);
    root ??= loaded([path('index')], graph);
    if (!isPart(id)) return null;
    if (below.has(id)) return 'below-calls';
    return root.has(id) ? 'calls' : null;
  },
});
