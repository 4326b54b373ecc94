// What TypeDoc's pages get beside what TypeDoc makes: a door on the front page, links to the workbench, a list of pages
// that needs no script, examples that can be edited and run, a policy that forbids every outside connection, and one
// text with everything.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { Converter, PageEvent, ReflectionKind } from 'typedoc';
import { buildWorkbench, doors } from '../../scripts/build-workbench.mjs';
import { allDocs } from './all-docs.mjs';
import { buildEditAndRun, runnableOf } from './examples.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Documents that also stand in the repository as they are, and so begin without a title and a group. */
const titles = {
  'CHANGELOG.md': { name: 'Change log', group: 'Guides' },
  'shared/README.md': { name: 'Vectors and tables to share', group: 'Tables' },
};

/** The same functions answer while the site is built and while somebody types. */
const front = await frontFunctions();

async function frontFunctions() {
  const { outputFiles } = await build({
    entryPoints: [join(root, 'docs/site/front.ts')],
    plugins: [doors],
    bundle: true,
    format: 'esm',
    platform: 'node',
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`);
}

export function load(app) {
  app.converter.on(Converter.EVENT_CREATE_DOCUMENT, (_, document) => {
    const path = relative(root, document.project.files.getReflectionPath(document) ?? '');
    const title = titles[path];
    if (title === undefined) return;
    document.name = title.name;
    document.frontmatter.group = title.group;
  });
  app.renderer.on(PageEvent.END, (page) => {
    if (!page.contents?.startsWith('<!DOCTYPE html>')) return;
    const addressOf = (reflection) => app.renderer.router.getFullUrl(reflection);
    page.contents = dressed(page, contentsOf(page, addressOf));
  });
  app.renderer.postRenderAsyncJobs.push(async ({ outputDirectory, project }) => {
    const assets = join(outputDirectory, 'assets');
    const css = ['docs/workbench/paper.css', 'docs/site/site.css'].map((path) =>
      readFileSync(join(root, path), 'utf8'),
    );
    writeFileSync(join(assets, 'custom.css'), css.join('\n'));
    await buildEditAndRun(assets);
    await build({
      entryPoints: ['shell', 'front', 'languages'].map((name) => join(root, `docs/site/${name}.ts`)),
      outdir: assets,
      plugins: [doors],
      bundle: true,
      minify: true,
      format: 'iife',
      target: 'es2022',
    });
    await buildWorkbench(join(outputDirectory, 'workbench'));
    writeFileSync(join(outputDirectory, 'all-docs.txt'), allDocs(root, project));
  });
}

/** One page with everything added to it. */
function dressed({ contents: rendered, url, model }, contents) {
  // The page need not wait for its scripts to be seen.
  const html = rendered.replace(
    /document\.body\.style\.display="none";setTimeout\(.*?,500\)(?=<\/script>)/,
    '',
  );
  const base = /data-base="([^"]*)"/.exec(html)?.[1] ?? './';
  const examples = withExamples(html);
  const links = [
    `<a href="${base}workbench/index.html">Workbench</a>`,
    `<a href="${base}all-docs.txt">All as one text</a>`,
  ].join('\n');
  const scripts = [
    'shell.js',
    ...(examples === html ? [] : ['edit-and-run.js']),
    ...(/Issue_codes/i.test(url) ? ['languages.js'] : []),
  ].map((name) => `<script defer src="${base}assets/${name}"></script>`);
  const whole = examples
    .replace('<div id="tsd-toolbar-links"></div>', `<div id="tsd-toolbar-links">${links}</div>`)
    // Contents as plain links, for readers without JavaScript too, in the place of a tree made by a script.
    .replace(
      /<nav class="tsd-navigation">.*?<\/nav>/s,
      () => `<nav class="contents" id="contents" aria-label="Contents">${contents(base)}</nav>`,
    )
    .replace(/<script async src="[^"]*navigation.js" id="tsd-nav-script"><\/script>/, '')
    // The index of the search weighs more than any page: it is fetched when somebody searches.
    .replace(
      /<script async src="([^"]*search.js)" id="tsd-search-script"><\/script>/,
      '<script type="text/plain" data-src="$1" id="tsd-search-script"></script>',
    )
    // A button that the keyboard can press, too.
    .replace(
      /<a href="#"( class="tsd-widget menu" id="tsd-toolbar-menu-trigger") data-toggle="menu"( aria-label="Menu">.*?)<\/a>/s,
      '<button type="button"$1 aria-expanded="false" aria-controls="contents"$2</button>',
    )
    // A table needs the width more than a list of the one heading above it.
    .replace(
      '<div class="container container-main">',
      `<div class="container container-main${model.frontmatter?.group === 'Tables' ? ' broad' : ''}">`,
    )
    .replace('<div class="page-menu">', '<div class="page-menu" role="complementary" aria-label="This page">')
    .replace('<body>', '<body><a class="skip" href="#content">Skip to the content</a>')
    .replace('<div class="col-content">', '<main class="col-content" id="content" tabindex="-1">')
    .replace(/<\/div>(\s*<div class="col-sidebar">)/, '</main>$1')
    .replace(
      '<footer></footer>',
      `<footer><p>A description, not a permission: national rules, the licence and trained operators decide. Software keeps no watch.</p></footer>`,
    )
    // A wide table scrolls on its own, for the keyboard too.
    .replaceAll('<table>', '<div class="wide" tabindex="0" role="group" aria-label="Table"><table>')
    .replaceAll('</table>', '</table></div>')
    // A heading that opens and closes its section has no room for a link beside it.
    .replace(
      /(<summary class="tsd-accordion-summary" data-key="section-.*?)<a href="[^"]*" aria-label="Permalink".*?<\/a>(.*?<\/summary>)/gs,
      '$1$2',
    )
    // A page whose text has a heading of its own needs no second one.
    .replace(
      /(<div class="tsd-page-title">)(?:\s*<h1>[^<]*<\/h1>)?(.*?<\/div>\s*<div class="tsd-panel tsd-typography"><h1 )/s,
      '$1$2',
    )
    .replace('</head>', `<link rel="icon" href="data:,"/>${scripts.join('')}</head>`)
    // A list of one heading, which is that of the page.
    .replace(
      /<details open class="tsd-accordion tsd-page-navigation">(?:(?!<\/details>|<a ).)*<a [^>]*>(?:(?!<\/details>|<a ).)*<\/details>/s,
      '',
    )
    // Layers named before those of TypeDoc win over their `!important`.
    .replace(
      '<meta charset="utf-8"/>',
      `<meta charset="utf-8"/>${policyFor(html)}<style>@layer site;</style>`,
    );
  return withoutLeaps(url === 'index.html' ? withDoors(whole, front) : whole);
}

const NUMBER = 'MMSI 232-999-142';
const PLACE = '56°18′ N 006°32′ W';

/** What it is, how to get it, a live example and the ways in, above the text of the README. */
function withDoors(html, { whoIs, minuteBox }) {
  const doors = [
    ['workbench/index.html', 'Try it in the page', 'a number, a call, a log, a sound: nothing to install'],
    ['documents/First_steps.html', 'First steps', 'four small jobs in ten minutes'],
    ['modules.html#modules', 'Reference', 'every room, function and type'],
  ].map(([address, name, about]) => `<li><a href="${address}">${name}</a> ${about}</li>`);
  const box = minuteBox(PLACE);
  const front = [
    '<div class="front">',
    '<p class="lead">Marine VHF selective calling (DSC) in TypeScript: identities, channels, calls, positions and distress procedures, each rule with its clause.</p>',
    '<pre class="install"><code>npm install seahail</code></pre>',
    '<form autocomplete="off">',
    `<p><label for="live-number">Who is</label> <input id="live-number" size="18" spellcheck="false" value="${NUMBER}"></p>`,
    `<p id="live-who" role="status">${escaped(whoIs(NUMBER))}</p>`,
    `<p><label for="live-place">Where is a boat that reports</label> <input id="live-place" size="20" spellcheck="false" value="${PLACE}"></p>`,
    `<p id="live-where" role="status">${escaped(box.words)}${box.svg}</p>`,
    '</form>',
    `<ul class="doors">${doors.join('')}</ul>`,
    '</div>',
  ].join('');
  return html
    .replace('</h1>', () => `</h1>${front}`)
    .replace('</head>', '<script defer src="assets/front.js"></script></head>');
}

/** Headings that go down one level at a time, looking as they did. */
function withoutLeaps(html) {
  let above = 0;
  const open = [];
  return html.replace(/<(\/?)h([1-6])\b([^>]*)>/g, (_, slash, given, attributes) => {
    if (slash) return `</h${open.pop() ?? given}>`;
    const level = Math.min(Number(given), above + 1);
    above = level;
    open.push(level);
    return level === Number(given)
      ? `<h${level}${attributes}>`
      : `<h${level}${attributes} data-as="${given}">`;
  });
}

/** Nothing from elsewhere, nothing to elsewhere; the inline script of the theme by its hash. */
function policyFor(html) {
  const inline = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(
    ([, text]) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`,
  );
  const policy = [
    "default-src 'none'",
    `script-src 'self' blob: ${[...new Set(inline)].join(' ')}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data:",
    'worker-src blob:',
    "connect-src 'none'",
    "form-action 'none'",
    "base-uri 'none'",
  ];
  return `<meta http-equiv="Content-Security-Policy" content="${policy.join('; ')}"/>`;
}

/** Documents and rooms in their groups, the group of the page open, and the contents of the module of the page. */
function contentsOf({ project, model, url }, addressOf) {
  const room = roomOf(model);
  const groups = project.groups ?? [];
  // The front page begins with the guides, the list of all rooms with the rooms.
  const current =
    groups.find(({ children }) => children.includes(room ?? model)) ??
    (url === 'modules.html' ? groups.at(-1) : groups[0]);
  const link = (base, reflection, name = reflection.name) => {
    const address = addressOf(reflection);
    return `<a href="${base}${address}"${address === url ? ' aria-current="page"' : ''}>${escaped(name)}</a>`;
  };
  const members = (base) =>
    `<ul>${(room.children ?? []).map((member) => `<li>${link(base, member)}</li>`).join('')}</ul>`;
  return (base) =>
    groups
      .map((group) => {
        const { title, children } = group;
        const rooms = children.some(({ kind }) => kind === ReflectionKind.Module);
        const entries = children.map((child) => {
          const name = rooms ? `seahail/${child.name}` : child.name;
          return `<li>${link(base, child, name)}${child === room ? members(base) : ''}</li>`;
        });
        const name = rooms ? 'Reference' : escaped(title);
        return `<details${group === current ? ' open' : ''}><summary>${name}</summary><ul>${entries.join('')}</ul></details>`;
      })
      .join('');
}

function roomOf(reflection) {
  let at = reflection;
  while (at !== undefined && at.kind !== ReflectionKind.Module) at = at.parent;
  return at;
}

/** Examples that import nothing but this library, each followed by its JavaScript. */
function withExamples(html) {
  return html.replace(
    /<pre><code class="ts">([\s\S]*?)<\/code>(?:<button[\s\S]*?<\/button>)?<\/pre>/g,
    (block, code) => {
      const runnable = runnableOf(textOf(code));
      const marked = block.replace(
        /<span class="hl-\d+">(\/\/[^<]*)<\/span>/g,
        '<span class="said">$1</span>',
      );
      if (runnable === null) return marked;
      // Only `<` could end the element early.
      const data = JSON.stringify(runnable).replaceAll('<', '\\u003c');
      return `${marked}<script type="application/json" class="example">${data}</script>`;
    },
  );
}

function textOf(html) {
  const entities = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
  return html
    .replace(/<br\s*\/?>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&(amp|lt|gt|quot|#39);/g, (_, name) => entities[name]);
}

function escaped(text) {
  return text.replace(
    /[&<>"]/g,
    (character) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[character],
  );
}
