// Examples of the docs, made ready to be edited and run in the page.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import ts from 'typescript';
import { doors } from '../../scripts/build-workbench.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The example as JavaScript, or `null` when it needs more than this library or shows nothing. */
export function runnableOf(source) {
  const imported = [...source.matchAll(/^\s*import\b[^'"]*['"]([^'"]+)['"]/gms)].map(
    ([, specifier]) => specifier,
  );
  const own = imported.length > 0 && imported.every((specifier) => /^seahail(\/|$)/.test(specifier));
  if (!own || !source.includes('console.log')) return null;
  return withoutTypes(source);
}

/** TypeScript's own emitter, with the blank lines that it drops kept. */
function withoutTypes(source) {
  const blank = '//:blank';
  const { outputText } = ts.transpileModule(source.replace(/^[ \t]*$/gm, blank), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  });
  return outputText
    .split('\n')
    .map((line) => (line.trim() === blank ? '' : line))
    .join('\n')
    .replaceAll(blank, '')
    .replace(/^( +)/gm, (indent) => ' '.repeat(indent.length / 2))
    .trim();
}

/** The script of the pages, and the library as the text that its worker starts with. */
export async function buildEditAndRun(assets) {
  const options = { bundle: true, minify: true, target: 'es2022', charset: 'utf8', legalComments: 'none' };
  const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const names = Object.keys(manifest.exports).filter((door) => door !== './package.json' && door !== '.');
  const library = await build({
    ...options,
    format: 'iife',
    stdin: {
      contents: [
        ...names.map((door, index) => `import * as door${index} from 'seahail${door.slice(1)}';`),
        `self.doors = { ${names.map((door, index) => `'seahail${door.slice(1)}': door${index}`).join(', ')} };`,
        'self.doors.seahail = Object.assign({}, ...Object.values(self.doors));',
      ].join('\n'),
      resolveDir: root,
    },
    plugins: [doors],
    write: false,
  });
  writeFileSync(
    join(assets, 'library-text.js'),
    `self.libraryText = ${JSON.stringify(library.outputFiles[0].text)};\n`,
  );
  await build({
    ...options,
    format: 'iife',
    entryPoints: [join(root, 'docs/site/edit-and-run.ts')],
    outfile: join(assets, 'edit-and-run.js'),
    plugins: [workerText],
  });
}

/** The worker's own text, as in the workbench. */
const workerText = {
  name: 'worker-text',
  setup(plugin) {
    plugin.onResolve({ filter: /^worker:/ }, ({ path }) => ({
      path: join(root, 'docs/site', path.slice(7)),
      namespace: 'worker-text',
    }));
    plugin.onLoad({ filter: /.*/, namespace: 'worker-text' }, async ({ path }) => {
      const { outputFiles } = await build({
        entryPoints: [path],
        bundle: true,
        format: 'iife',
        target: 'es2022',
        write: false,
      });
      return { contents: outputFiles[0].text, loader: 'text' };
    });
  },
};
