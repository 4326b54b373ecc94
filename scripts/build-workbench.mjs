// Builds the workbench from docs/workbench into one static folder (out/workbench unless another is given).
// Every page is one HTML file and one script; the folder works from any plain file server, under any path, offline.
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = join(root, 'docs/workbench');

const options = {
  loader: { '.log': 'text' },
  bundle: true,
  minify: true,
  format: 'iife',
  target: 'es2022',
  charset: 'utf8',
  legalComments: 'none',
};

/** The public doors, straight from the source: the workbench imports what any user imports. */
export const doors = {
  name: 'doors',
  setup(plugin) {
    const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    plugin.onResolve({ filter: /^seahail(\/|$)/ }, ({ path }) => {
      const door = manifest.exports[path.replace('seahail', '.')];
      if (door === undefined) return { errors: [{ text: `${path} is not a public entry` }] };
      return { path: join(root, door.default.replace('./dist/', 'src/').replace(/\.js$/, '.ts')) };
    });
  },
};

/** `import text from 'worker:./x.ts'` gives the bundled text of a worker. */
const workerText = {
  name: 'worker-text',
  setup(plugin) {
    plugin.onResolve({ filter: /^worker:/ }, ({ path, importer }) => ({
      path: resolve(dirname(importer), path.slice('worker:'.length)),
      namespace: 'worker-text',
    }));
    plugin.onLoad({ filter: /.*/, namespace: 'worker-text' }, async ({ path }) => {
      const { outputFiles } = await build({
        ...options,
        entryPoints: [path],
        plugins: [doors],
        write: false,
      });
      return { contents: outputFiles[0].text, loader: 'text' };
    });
  },
};

/** Builds the whole folder. */
export async function buildWorkbench(out = join(root, 'out/workbench')) {
  const pages = JSON.parse(readFileSync(join(source, 'pages.json'), 'utf8'));
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });

  await build({
    ...options,
    entryPoints: [
      { in: join(source, 'frame/theme.ts'), out: 'theme' },
      { in: join(source, 'sound/tap.worklet.ts'), out: 'tap' },
      ...['de', 'fr', 'nl'].map((lang) => ({
        in: join(source, `frame/catalogue/${lang}.ts`),
        out: `language-${lang}`,
      })),
      ...pages.map(({ name }) => ({ in: join(source, name, 'page.ts'), out: name })),
    ],
    outdir: out,
    plugins: [doors, workerText],
  });
  await build({ ...options, entryPoints: [join(source, 'workbench.css')], outdir: out, target: 'esnext' });

  const shell = readFileSync(join(source, 'frame/shell.html'), 'utf8');
  const page = (name, title, about, body, script) =>
    writeFileSync(
      join(out, `${name}.html`),
      filled(shell, {
        title,
        about,
        body,
        script,
        homeCurrent: name === 'index' ? ' aria-current="page"' : '',
        nav: pages
          .map((each) => {
            const current = each.name === name ? ' aria-current="page"' : '';
            return `<li><a href="${each.name}.html"${current}>${each.word}</a></li>`;
          })
          .join(''),
      }),
    );

  for (const { name, question, about } of pages) {
    const body = tied(readFileSync(join(source, name, 'page.html'), 'utf8'));
    page(name, `${question} · seahail workbench`, about, body, `<script src="${name}.js"></script>`);
  }
  const contents = pages
    .map(({ name, question, about }) => `<li><a href="${name}.html">${question}</a><p>${about}</p></li>`)
    .join('\n');
  const index = filled(readFileSync(join(source, 'index.html'), 'utf8'), { contents });
  page(
    'index',
    'Workbench · seahail',
    'Use the whole library in the browser, without installing anything.',
    index,
    '',
  );
  return out;
}

/** Ties each blank to the comma or full stop behind it, so that no line begins with them; a word joiner alone does not. */
function tied(html) {
  return html.replace(
    /(<select[^>]*>(?:(?!<\/select>)[\s\S])*<\/select>|<input[^>]*>)((?:<\/?(?:span|label)[^>]*>)*)([.,])/g,
    '<span class="tie">$1</span>$2<span class="tie">&#8288;$3</span>',
  );
}

function filled(template, values) {
  return template.replace(/\{\{(\w+)\}\}/g, (_, name) => {
    if (!Object.hasOwn(values, name)) throw new Error(`no value for {{${name}}}`);
    return values[name];
  });
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const out = await buildWorkbench(process.argv[2] === undefined ? undefined : resolve(process.argv[2]));
  for (const name of readdirSync(out).sort()) {
    const path = join(out, name);
    console.log(`${name.padEnd(16)} ${statSync(path).size} B, ${gzipSync(readFileSync(path)).length} B gzip`);
  }
}
