import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { violationsOn } from './every-page.mjs';
import { assertText } from './number.mjs';

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
          const wanted = shown(await panel.locator('xpath=preceding-sibling::pre[1]/code').innerText());
          await panel.locator('summary').click();
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
      await panel.getByRole('button', { name: 'Reset' }).click();
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
    name: 'docs: every code in four languages',
    async run({ page, open }) {
      await open('documents/Issue_codes.html');
      const cell = page.locator('tr', { hasText: 'identity-digit-count' }).locator('td').nth(2);
      await assertText(cell, /^Identity needs 9 digits/);
      await page.getByLabel('Texts in').selectOption('fr');
      await assertText(cell, /^Identité : il faut 9 chiffres/);
      assert.equal(await cell.getAttribute('lang'), 'fr');
      await assertText(page.locator('p', { hasText: 'Texts in' }), /before it is relied on/);
      const others = await page
        .locator('#content tbody tr')
        .evaluateAll(
          (rows) =>
            rows.filter((row) => row.cells.length === 3 && (row.cells[2]?.textContent ?? '') === '').length,
        );
      assert.equal(others, 0);
    },
  },
  {
    name: 'docs: a guide weighs at most 120 kB compressed, and the search is fetched when somebody searches',
    async run({ page, open, site, at }) {
      const fetched = new Set();
      page.on('request', (request) => fetched.add(request.url().replace(at(''), '')));
      await open('documents/Station__what_to_do_next_.html');
      await page.waitForLoadState('networkidle');
      const weight = [...fetched].reduce(
        (sum, path) => sum + gzipSync(readFileSync(join(site, decodeURIComponent(path)))).length,
        0,
      );
      assert(weight <= 120_000, `${weight} B in ${[...fetched].join(' ')}`);
      await page.getByRole('button', { name: 'Search' }).click();
      await page.locator('#tsd-search-input').fill('bearing');
      await page.locator('#tsd-search-results a').first().waitFor();
      assert([...fetched].some((path) => path.endsWith('/search.js')));
      return `${(weight / 1000).toFixed(0)} kB`;
    },
  },
  {
    name: 'docs: the search finds a function, and guides and functions before fields',
    async run({ page, at }) {
      await page.goto(at('index.html'));
      await page.getByRole('button', { name: 'Search' }).click();
      await page.locator('#tsd-search-input').fill('bearing');
      await page.locator('#tsd-search-results a').first().waitFor();
      const found = await page
        .locator('#tsd-search-results a')
        .evaluateAll((all) => all.map((link) => new URL(link.href)).map((url) => url.pathname + url.hash));
      const first = found.slice(0, 5);
      assert(
        first.some((address) => address.includes('/documents/')),
        `no guide: ${first.join(' ')}`,
      );
      assert(
        first.some((address) => address.includes('/functions/')),
        `no function: ${first.join(' ')}`,
      );
      await page.locator('#tsd-search-input').fill('parseIdentity');
      await page.locator('#tsd-search-results a', { hasText: 'parseIdentity' }).first().click();
      await page.getByRole('heading', { name: 'Function parseIdentity' }).waitFor();
    },
  },
  {
    name: 'docs: the front page says what it is and answers as somebody types',
    options: { viewport: { width: 1280, height: 900 } },
    async run({ page, at }) {
      await page.goto(at('index.html'));
      const text = (await page.locator('main').textContent()) ?? '';
      // What it is, how to get it and the three doors stand on the first screen, before anything about a repository.
      const order = [
        'selective calling (DSC)',
        'npm install seahail',
        'Who is',
        'Try it in the page',
        'repository',
      ];
      const places = order.map((words) => text.indexOf(words));
      assert(!places.includes(-1), places.join(' '));
      assert.deepEqual(
        places,
        [...places].sort((a, b) => a - b),
      );
      const door = await page.getByRole('link', { name: 'Try it in the page' }).boundingBox();
      assert(door.y + door.height < 900, `the doors stand ${door.y} px down`);
      await page.getByLabel('Who is').fill('002111240');
      // MID 211 is Germany, and two zeros are a coast station: ITU-R M.585 and the table of MIDs.
      await assertText(page.locator('#live-who'), /^002111240: coast station, number issued by Germany\b/);
      await page.getByLabel('Who is').fill('2111240');
      await assertText(page.locator('#live-who'), /Perhaps 002111240\?$/);
      await page.getByLabel('Where is a boat').fill('00°10′ N 000°10′ E');
      // On the equator a minute is as long either way.
      await assertText(page.locator('#live-where'), /a box 1\.00 by 1\.00 nautical miles/);
      assert.equal(await page.locator('#live-where svg').count(), 1);
      await page.getByLabel('Where is a boat').fill('<img src=x>');
      assert.equal(await page.locator('#live-where img, #live-where svg').count(), 0);
    },
  },
  {
    name: 'docs: the front page leads into the workbench, the first steps and the reference',
    options: { viewport: { width: 390, height: 844 } },
    async run({ page, at }) {
      for (const [name, heading] of [
        ['Try it in the page', 'The workbench'],
        ['First steps', 'First steps'],
        ['Reference', 'Modules'],
      ]) {
        await page.goto(at('index.html'));
        const door = page.locator('main').getByRole('link', { name, exact: true }).first();
        const { y } = await door.boundingBox();
        assert(y < 1000, `${name} stands ${y} px down`);
        await door.click();
        await page.locator('h1, h2').filter({ hasText: heading }).first().waitFor();
      }
    },
  },
  {
    name: 'docs: the contents open the group of the page alone, its entry in sight',
    options: { viewport: { width: 1440, height: 900 } },
    async run({ page, at }) {
      for (const [path, group] of [
        ['documents/First_steps.html', 'Guides'],
        ['documents/Timers.html', 'Tables'],
        ['modules/station.html', 'Reference'],
        ['functions/position.timeToReach.html', 'Reference'],
      ]) {
        await page.goto(at(path));
        const open = await page
          .locator('nav.contents details[open]')
          .evaluateAll((all) => all.map((details) => details.querySelector('summary').textContent));
        assert.deepEqual(open, [group], path);
        const entry = await page.locator('nav.contents [aria-current]').boundingBox();
        // The outermost part that scrolls, which is not the same on a page with a wide table.
        const menu = await page.locator('.site-menu').evaluate((element) => {
          const { top, bottom } = (
            element.closest('.broad') ? element.closest('.col-sidebar') : element
          ).getBoundingClientRect();
          return { top, bottom };
        });
        assert(entry.y >= menu.top && entry.y + entry.height <= menu.bottom, `${path}: out of sight`);
      }
    },
  },
  {
    name: 'docs: on a phone the contents open and close by the keyboard',
    options: { viewport: { width: 390, height: 844 } },
    async run({ page, at }) {
      await page.goto(at('documents/Glossary.html'));
      const button = page.getByRole('button', { name: 'Menu' });
      const contents = page.locator('nav.contents');
      assert.equal(await contents.isVisible(), false);
      await button.press('Enter');
      await contents.waitFor();
      assert.equal(await button.getAttribute('aria-expanded'), 'true');
      assert.equal(await page.evaluate(() => document.activeElement?.closest('nav')?.className), 'contents');
      await page.keyboard.press('Escape');
      await contents.waitFor({ state: 'hidden' });
      assert.equal(await page.evaluate(() => document.activeElement?.id), 'tsd-toolbar-menu-trigger');
      await button.click();
      await contents.waitFor();
      await page.mouse.click(20, 400);
      await contents.waitFor({ state: 'hidden' });
    },
  },
  {
    name: 'docs: on a phone without JavaScript the contents stand below the page, and nothing that needs a script',
    options: { javaScriptEnabled: false, viewport: { width: 390, height: 844 } },
    async run({ page, at }) {
      await page.goto(at('documents/First_steps.html'));
      const [main, contents] = [
        await page.locator('main').boundingBox(),
        await page.locator('nav.contents').boundingBox(),
      ];
      assert(contents.y >= main.y + main.height, 'the contents cover the page');
      assert(await page.locator('nav.contents').getByRole('link', { name: 'Glossary' }).isVisible());
      for (const useless of ['#tsd-toolbar-menu-trigger', '#tsd-search-trigger', '.settings', 'pre > button'])
        assert.equal(await page.locator(useless).first().isVisible(), false, useless);
    },
  },
  {
    name: 'docs: tables fit a wide screen, and what a row is about stays in sight on a narrow one',
    options: { viewport: { width: 1440, height: 900 } },
    async run({ page, site, at }) {
      const wide = [];
      const tables = pagesOf(site).filter((path) =>
        readFileSync(join(site, path), 'utf8').includes('container-main broad'),
      );
      assert(tables.length > 10, 'no pages of tables');
      for (const path of tables) {
        await page.goto(at(path));
        const over = await page
          .locator('.wide')
          .evaluateAll((all) => all.map((table) => table.scrollWidth - table.clientWidth));
        if (over.some((pixels) => pixels > 0)) wide.push(`${path}: ${Math.max(...over)} px too wide`);
      }
      assert.deepEqual(wide, []);
      await page.setViewportSize({ width: 390, height: 844 });
      await page.goto(at('documents/Channels__International.html'));
      const table = page.locator('.wide').first();
      await table.evaluate((element) => element.scrollTo(300, 0));
      const [cell, frame] = [await table.locator('td').first().boundingBox(), await table.boundingBox()];
      assert.equal(Math.round(cell.x), Math.round(frame.x));
      return `${tables.length} pages`;
    },
  },
  {
    name: 'docs: a long table can be filtered, and its head stays in sight',
    options: { viewport: { width: 1500, height: 800 } },
    async run({ page, open }) {
      await open('documents/Administrations.html');
      const rows = page.locator('.wide').first().locator('tbody tr');
      const all = await rows.count();
      await page.getByLabel('Rows with').first().fill('germ');
      // MIDs 211 and 218 are Germany: ITU table of maritime identification digits.
      await assertText(page.locator('.filter [role=status]').first(), new RegExp(`of ${all} rows$`));
      const left = await rows.evaluateAll((each) =>
        each.filter((row) => !row.hidden).map((row) => row.textContent),
      );
      assert(left.length > 0 && left.length < 6 && left.every((text) => /german/i.test(text)));
      await page.getByLabel('Rows with').first().fill('');
      await page.mouse.wheel(0, 2500);
      await page.waitForTimeout(200);
      const { y } = await page.locator('.wide thead th').first().boundingBox();
      assert(y >= 0 && y < 120, `the head is at ${y}`);
    },
  },
  {
    name: 'docs: an example that is edited takes the place of the one that was read',
    async run({ page, open }) {
      await open('documents/First_steps.html');
      const block = page.locator('pre:has(+ script.example)').first();
      await page.locator('summary', { hasText: 'Edit and run' }).first().click();
      await page.waitForFunction(() => document.querySelector('pre:has(+ script.example)').hidden);
      assert(await block.isHidden());
      await page.locator('summary', { hasText: 'Edit and run' }).first().click();
      await block.waitFor();
    },
  },
  {
    name: 'docs: on a phone code keeps its lines and scrolls, its button beside the code and not over it',
    options: { hasTouch: true, viewport: { width: 390, height: 844 } },
    async run({ page, at }) {
      await page.goto(at('documents/First_steps.html'));
      const block = page.locator('main pre').nth(1);
      const lines = await block.evaluate((element) => [
        element.querySelector('code').getBoundingClientRect().height /
          Number.parseFloat(getComputedStyle(element).lineHeight),
        element.innerText.trimEnd().split('\n').length,
      ]);
      assert(Math.round(lines[0]) <= lines[1], `${lines[0]} lines are shown of ${lines[1]}`);
      await block.evaluate((element) => element.scrollTo(200, 0));
      assert((await block.evaluate((element) => element.scrollLeft)) > 0, 'does not scroll');
      const copy = block.getByRole('button', { name: 'Copy' });
      const [button, code] = [await copy.boundingBox(), await block.locator('code').boundingBox()];
      assert(button.y + button.height <= code.y, 'the button covers the code');
      assert(button.x >= 0 && button.x + button.width <= 390, 'the button scrolls out of sight');
    },
  },
  {
    name: 'docs: figures take letters and colours of the page, and show on a phone that there is more',
    options: { viewport: { width: 390, height: 844 } },
    async run({ page, site, at }) {
      let figures = 0;
      for (const path of pagesOf(site)) {
        if (!readFileSync(join(site, path), 'utf8').includes('class="drawn"')) continue;
        await page.goto(at(path));
        for (const figure of await page.locator('.drawn').all()) {
          const own = await figure.evaluate((element) =>
            [...element.querySelectorAll('[fill], [stroke], [font-family]')].flatMap((part) =>
              ['fill', 'stroke', 'font-family']
                .map((name) => part.getAttribute(name))
                .filter(
                  (value) =>
                    value !== null && !/^(?:none|currentColor|var\(--[a-z]+\)|url\(#.*\))$/.test(value),
                ),
            ),
          );
          assert.deepEqual(own, [], path);
          assert.match(
            await figure.evaluate((element) => getComputedStyle(element).backgroundAttachment),
            /local/,
          );
          figures++;
        }
      }
      assert(figures > 8, `${figures} figures`);
      return `${figures} figures`;
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
      assert(!text.includes('{@'), 'a tag that only a page can follow');
      // Code keeps its elements, and members their parameters.
      assert.match(text, /<input\b[^\n]*/);
      assert.match(text, /^- push\(\w+\??: /m);
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
