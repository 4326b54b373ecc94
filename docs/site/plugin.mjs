// What TypeDoc's pages get beside what TypeDoc makes: links to the workbench, a list of pages that needs no script,
// examples that can be edited and run, a policy that forbids every outside connection, and one text with everything.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PageEvent, ReflectionKind } from 'typedoc';
import { buildWorkbench } from '../../scripts/build-workbench.mjs';
import { allDocs } from './all-docs.mjs';
import { buildEditAndRun, runnableOf } from './examples.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

export function load(app) {
  app.renderer.on(PageEvent.END, (page) => {
    if (!page.contents?.startsWith('<!DOCTYPE html>')) return;
    const pages = pagesOf(page.project, (reflection) => app.renderer.router.getFullUrl(reflection));
    page.contents = dressed(page.contents, pages, page.url);
  });
  app.renderer.postRenderAsyncJobs.push(async ({ outputDirectory, project }) => {
    const assets = join(outputDirectory, 'assets');
    const css = ['docs/workbench/paper.css', 'docs/site/site.css'].map((path) => readFileSync(join(root, path), 'utf8'));
    writeFileSync(join(assets, 'custom.css'), css.join('\n'));
    await buildEditAndRun(assets);
    await buildWorkbench(join(outputDirectory, 'workbench'));
    writeFileSync(join(outputDirectory, 'all-docs.txt'), allDocs(root, project));
  });
}

/** One page with everything added to it. */
function dressed(html, pages, url) {
  const base = /data-base="([^"]*)"/.exec(html)?.[1] ?? './';
  const examples = withExamples(html);
  const links = [
    `<a href="${base}workbench/index.html">Workbench</a>`,
    `<a href="${base}all-docs.txt">All as one text</a>`,
  ].join('\n');
  const scripts = examples === html ? '' : `<script defer src="${base}assets/edit-and-run.js"></script>`;
  return examples
    .replace('<div id="tsd-toolbar-links"></div>', `<div id="tsd-toolbar-links">${links}</div>`)
    .replace('<li>Loading...</li>', listOf(pages, base, url))
    .replace('<body>', '<body><a class="skip" href="#content">Skip to the content</a>')
    .replace('<div class="col-content">', '<main class="col-content" id="content" tabindex="-1">')
    .replace('</div><div class="col-sidebar">', '</main><div class="col-sidebar">')
    .replace('</div>\n<div class="col-sidebar">', '</main>\n<div class="col-sidebar">')
    .replace('<footer></footer>', `<footer><p>A description, not a permission: national rules, the licence and trained operators decide. Software keeps no watch.</p></footer>`)
    // A wide table scrolls by itself, for the keyboard too.
    .replaceAll('<table>', '<div class="wide" tabindex="0" role="group" aria-label="Table"><table>')
    .replaceAll('</table>', '</table></div>')
    // A page whose text has a heading of its own needs no second one.
    .replace(/(<div class="tsd-page-title">)(?:\s*<h1>[^<]*<\/h1>)?(.*?<\/div>\s*<div class="tsd-panel tsd-typography"><h1 )/s, '$1$2')
    .replace('</head>', `<link rel="icon" href="data:,"/>${scripts}</head>`)
    .replace('<meta charset="utf-8"/>', `<meta charset="utf-8"/>${policyFor(html)}`);
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

/** Documents and rooms, by name and address. */
function pagesOf(project, addressOf) {
  const rooms = (project.children ?? []).filter(({ kind }) => kind === ReflectionKind.Module);
  return [...(project.documents ?? []), ...rooms].map((each) => ({ name: each.name, address: addressOf(each) }));
}

/** Plain links for readers without JavaScript; TypeDoc puts its tree in their place. */
function listOf(pages, base, url) {
  return pages
    .map(({ name, address }) => {
      const current = address === url ? ' aria-current="page"' : '';
      return `<li><a href="${base}${address}"${current}>${escaped(name)}</a></li>`;
    })
    .join('');
}

/** Examples that import nothing but this library, each followed by itself as JavaScript. */
function withExamples(html) {
  return html.replace(/<pre><code class="ts">([\s\S]*?)<\/code>(?:<button[\s\S]*?<\/button>)?<\/pre>/g, (block, code) => {
    const runnable = runnableOf(textOf(code));
    const marked = block.replace(/<span class="hl-\d+">(\/\/[^<]*)<\/span>/g, '<span class="said">$1</span>');
    if (runnable === null) return marked;
    // Only `<` could end the element early.
    const data = JSON.stringify(runnable).replaceAll('<', '\\u003c');
    return `${marked}<script type="application/json" class="example">${data}</script>`;
  });
}

function textOf(html) {
  const entities = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
  return html
    .replace(/<br\s*\/?>/g, '\n')
    .replace(/<[^>]*>/g, '')
    .replace(/&(amp|lt|gt|quot|#39);/g, (_, name) => entities[name]);
}

function escaped(text) {
  return text.replace(/[&<>"]/g, (character) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[character]);
}
