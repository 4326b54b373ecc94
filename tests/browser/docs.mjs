import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { violationsOn } from './every-page.mjs';

const pagesOf = (site) => [
  'index.html',
  ...readdirSync(join(site, 'documents')).map((name) => `documents/${name}`),
];

const runnable = (site) =>
  pagesOf(site).filter((path) => readFileSync(join(site, path), 'utf8').includes('class="example"'));

export const docsChecks = [
  {
    name: 'docs: every example of the guides prints, edited and run in the page, what it shows',
    async run({ page, site, at }) {
      let examples = 0;
      const wrong = [];
      for (const path of runnable(site)) {
        await page.goto(at(path));
        const panels = page.locator('details.try');
        for (let index = 0; index < (await panels.count()); index++) {
          const panel = panels.nth(index);
          await panel.locator('summary').click();
          const wanted = shown(await panel.locator('xpath=preceding-sibling::pre[1]/code').innerText());
          await panel.getByRole('button', { name: 'Run' }).click();
          await panel
            .locator('[role="status"]')
            .filter({ hasText: /Done|Error|Stopped/ })
            .waitFor();
          const printed = ((await panel.locator('.printed').textContent()) ?? '').trimEnd();
          if (printed !== wanted)
            wrong.push(
              `${path} example ${index + 1}\n shows  ${wanted}\n prints ${printed} ${await panel.locator('[role="status"]').textContent()}`,
            );
          examples++;
        }
      }
      assert.deepEqual(wrong, []);
      assert(examples > 0, 'no example was found');
      return `${examples} examples`;
    },
  },
  {
    name: 'docs: an example can be edited, goes in circles only until stopped, and has no network',
    async run({ page, site, at }) {
      await page.goto(at(runnable(site)[0] ?? 'functions/identity.parseIdentity.html'));
      const panel = page.locator('details.try').first();
      await panel.locator('summary').press('Enter');
      const code = panel.locator('textarea');
      const state = panel.locator('[role="status"]');
      const run = async (text) => {
        await code.fill(text);
        await code.press('Control+Enter');
      };
      await run(
        "import { formatIdentity as write } from 'seahail/identity';\nconsole.log(write('232878000'), { a: [1, 'two'] });",
      );
      await state.filter({ hasText: 'Done' }).waitFor();
      assert.equal(await panel.locator('.printed').textContent(), "232 878 000 { a: [ 1, 'two' ] }\n");
      await run(
        'console.log(typeof fetch, typeof XMLHttpRequest, typeof WebSocket, typeof importScripts, typeof indexedDB);',
      );
      await state.filter({ hasText: 'Done' }).waitFor();
      assert.equal(await panel.locator('.printed').textContent(), `${'undefined '.repeat(5).trim()}\n`);
      await run('for (;;) ;');
      await state.filter({ hasText: 'Running' }).waitFor();
      await panel.getByRole('button', { name: 'Stop' }).click();
      await state.filter({ hasText: 'Stopped' }).waitFor();
      await run('throw new RangeError("so");');
      await state.filter({ hasText: 'RangeError: so' }).waitFor();
      await panel.getByRole('button', { name: 'As it was' }).click();
      assert.match(await code.inputValue(), /import/);
    },
  },
  {
    name: 'docs: readable without JavaScript, every page to be reached',
    options: { javaScriptEnabled: false },
    async run({ page, site, at }) {
      const paths = pagesOf(site);
      for (const path of paths) {
        await page.goto(at(path));
        assert.equal(await page.locator('h1').count(), 1, path);
        assert(await page.locator('h1').isVisible(), path);
        assert(((await page.locator('main').innerText()) ?? '').length > 100, path);
        const links = await page.locator('nav.contents a').evaluateAll((all) => all.map((link) => link.href));
        for (const other of paths.slice(1)) assert(links.includes(at(other)), `${path} to ${other}`);
        assert.equal(
          await page.getByRole('link', { name: 'Workbench', exact: true }).first().isVisible(),
          true,
        );
      }
      return `${paths.length} pages`;
    },
  },
  ...[
    ['light', 360],
    ['dark', 1280],
  ].map(([colorScheme, width]) => ({
    name: `docs: every guide and table, and some of the reference, ${colorScheme}, ${width}`,
    options: { colorScheme, viewport: { width, height: 900 } },
    async run({ page, site, at, out }) {
      const paths = [...pagesOf(site), 'functions/identity.parseIdentity.html', 'modules/call.html'];
      const found = [];
      for (const path of paths) {
        await page.goto(at(path));
        found.push(...(await violationsOn(page)).map((violation) => `${path} ${violation}`));
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        if (wide > width) found.push(`${path} ${wide} px wide`);
        const name = path.replaceAll('/', '-').replace('.html', '');
        await page.screenshot({ path: join(out, `screenshots/docs-${name}-${width}-${colorScheme}.png`) });
      }
      assert.deepEqual(found, []);
      return `${paths.length} pages`;
    },
  })),
  {
    name: 'docs: the search finds a function',
    async run({ page, at }) {
      await page.goto(at('index.html'));
      await page.getByRole('button', { name: 'Search' }).click();
      await page.locator('#tsd-search-input').fill('parseIdentity');
      await page.locator('#tsd-search-results a', { hasText: 'parseIdentity' }).first().click();
      await page.getByRole('heading', { name: 'Function parseIdentity' }).waitFor();
    },
  },
  {
    name: 'docs: one text holds every room and every guide',
    async run({ site }) {
      const text = readFileSync(join(site, 'all-docs.txt'), 'utf8');
      for (const room of [
        'result',
        'identity',
        'channel',
        'position',
        'call',
        'burst',
        'audio',
        'sentence',
        'station',
      ]) {
        assert(text.includes(`# seahail/${room}\n`), room);
      }
      return `${(text.length / 1000).toFixed(0)} kB`;
    },
  },
];

/** What an example shows, by the rules of scripts/check-examples.mjs. */
function shown(source) {
  const lines = source.split('\n');
  const text = [];
  const last = lines.findLastIndex((line) => !/^\s*(\/\/.*)?$/.test(line));
  let output = false;
  for (const [index, line] of lines.entries()) {
    const comment = /^\s*\/\/ ?(.*)$/.exec(line);
    const statement = /^(?:.*\bconsole\.log\(.*\)|\s*\))[;,](?:\s*\/\/ ?(.*))?$/.exec(line);
    if (comment !== null && (output || index > last)) text.push(comment[1]);
    else if (statement?.[1] !== undefined) text.push(statement[1]);
    output = statement !== null || (output && (comment !== null || /^\s*\}$/.test(line)));
  }
  return text.join('\n');
}
