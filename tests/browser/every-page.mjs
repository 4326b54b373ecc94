import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Each page of the workbench in a state worth looking at. */
const states = [
  ['index', ''],
  ['number', ''],
  ['number', '#number=2329990', 'doubtful'],
  ['channel', '#there=us'],
  ['call', '#kind=position-reply&from=232999142&to=232999871&finer=yes'],
  ['call', '#kind=distress-alert&from=232999218', 'distress'],
  ['log', '', '', 'example'],
  ['sound', '', '', 'example'],
  ['place', ''],
  ['exchange', '#moves=nnn'],
];

async function show({ page, at }, [name, hash, , press]) {
  // Another hash alone would not load the page anew.
  await page.goto('about:blank');
  await page.goto(at(`workbench/${name}.html${hash}`));
  if (press !== undefined) {
    await page.locator(`#${press}`).click();
    await page.waitForFunction(() =>
      /\d.*(call|calls)/i.test(document.querySelector('#in-short')?.textContent ?? ''),
    );
  }
  await page.waitForTimeout(150);
}

/** What axe finds, one line each. */
export async function violationsOn(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'] }));
  return violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .slice(0, 4)
        .map(({ html }) => html.slice(0, 160))
        .join(' | ')}`,
  );
}

const looks = states.flatMap((state) =>
  ['light', 'dark'].flatMap((colorScheme) =>
    [360, 1280].map((width) => {
      const name = `${state[0]}${state[2] ? `-${state[2]}` : ''}-${width}-${colorScheme}`;
      return {
        name: `look: ${name}`,
        options: { colorScheme, viewport: { width, height: width === 360 ? 740 : 900 } },
        async run({ page, at, out }) {
          await show({ page, at }, state);
          assert.deepEqual(await violationsOn(page), []);
          const wide = await page.evaluate(() => document.documentElement.scrollWidth);
          assert(wide <= width, `${wide} px wide on ${width}`);
          await page.screenshot({ path: join(out, `screenshots/${name}.png`), fullPage: true });
        },
      };
    }),
  ),
);

const names = [...new Set(states.map(([name]) => name))];

/** Pages of the site that are not the workbench. */
const guides = ['index.html', 'documents/First_steps.html', 'documents/Station__what_to_do_next_.html'];

export const everyPageChecks = [
  ...looks,
  {
    name: 'every page: nothing shifts while it loads',
    options: { viewport: { width: 390, height: 740 } },
    async run({ page, at }) {
      await page.addInitScript(() => {
        window.shift_ = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shift_ += entry.value;
        }).observe({ type: 'layout-shift', buffered: true });
      });
      const shifts = {};
      for (const path of [...names.map((name) => `workbench/${name}.html`), ...guides]) {
        await page.goto('about:blank');
        await page.goto(at(path));
        await page.waitForTimeout(400);
        shifts[path] = await page.evaluate(() => window.shift_);
      }
      const most = Math.max(...Object.values(shifts));
      assert(most < 0.1, JSON.stringify(shifts));
      return `at most ${most.toFixed(3)}`;
    },
  },
  {
    name: 'every page: on paper no menu, and no line of code cut off',
    async run({ page, at }) {
      await page.setViewportSize({ width: 680, height: 900 });
      await page.emulateMedia({ media: 'print' });
      for (const path of ['workbench/call.html', ...guides]) {
        await page.goto(at(path));
        for (const menu of ['.tsd-page-toolbar', '.col-sidebar', '.running-head nav', '.buttons', '.share'])
          for (const each of await page.locator(menu).all()) assert(await each.isHidden(), `${path} ${menu}`);
        const cut = await page
          .locator('pre')
          .evaluateAll((all) => all.filter((each) => each.scrollWidth > each.clientWidth + 1).length);
        assert.equal(cut, 0, path);
      }
    },
  },
  {
    name: 'every page: in forced colours nothing that axe finds',
    options: { forcedColors: 'active' },
    async run({ page, at }) {
      for (const state of states) {
        await show({ page, at }, state);
        assert.deepEqual(await violationsOn(page), [], state.join(' '));
      }
    },
  },
  {
    name: 'every page: at 400 %, which is 320 px wide, nothing to scroll sideways for',
    options: { viewport: { width: 320, height: 256 } },
    async run({ page, at }) {
      for (const state of states) {
        await show({ page, at }, state);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        assert(wide <= 320, `${state.join(' ')}: ${wide} px`);
      }
      for (const path of guides) {
        await page.goto(at(path));
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        assert(wide <= 320, `${path}: ${wide} px`);
      }
    },
  },
  {
    name: 'every page: nothing lost at 200 % on a small desktop',
    options: { viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 },
    async run({ page, at }) {
      for (const state of states) {
        await show({ page, at }, state);
        assert((await page.evaluate(() => document.documentElement.scrollWidth)) <= 640, state[0]);
      }
    },
  },
  {
    name: 'every page: each stop of the Tab key shows itself, the skip link first',
    async run({ page, at }) {
      let stops = 0;
      for (const state of states) {
        await show({ page, at }, state);
        await page.evaluate(() => {
          document.activeElement?.blur();
          window.scrollTo(0, 0);
        });
        if (state[3] !== undefined) await show({ page, at }, [state[0], '']);
        await page.keyboard.press('Tab');
        assert.equal(await page.evaluate(() => document.activeElement?.className), 'skip', state[0]);
        for (let presses = 0; presses < 40; presses++) {
          const stop = await page.evaluate(() => {
            const element = document.activeElement;
            const { outlineStyle, outlineWidth } = getComputedStyle(element);
            return {
              body: element === document.body,
              what: element.outerHTML.slice(0, 120),
              seen: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
            };
          });
          if (stop.body) break;
          assert(stop.seen, stop.what);
          stops++;
          await page.keyboard.press('Tab');
        }
      }
      return `${stops} stops`;
    },
  },
  {
    name: 'every page: the skip link moves the reader and leaves the finding alone',
    async run({ page, at }) {
      for (const name of names) {
        await page.goto('about:blank');
        await page.goto(at(`workbench/${name}.html#${name === 'index' ? '' : 'number=2329990'}`));
        const before = page.url();
        await page.keyboard.press('Tab');
        await page.keyboard.press('Enter');
        assert.equal(await page.evaluate(() => document.activeElement?.tagName), 'MAIN', name);
        assert.equal(page.url(), before);
      }
      await page.goto('about:blank');
      await page.goto(at('workbench/number.html#number=2329990'));
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.reload();
      assert.equal(await page.locator('#number').inputValue(), '2329990');
    },
  },
  {
    name: 'every page: nothing moves for those who asked for that',
    options: { reducedMotion: 'reduce' },
    async run({ page, at }) {
      for (const name of names) {
        await page.goto(at(`workbench/${name}.html`));
        const moving = await page.evaluate(
          () =>
            [...document.querySelectorAll('*')].filter((element) =>
              getComputedStyle(element)
                .transitionDuration.split(', ')
                .some((time) => Number.parseFloat(time) > 0),
            ).length,
        );
        assert.equal(moving, 0, name);
      }
    },
  },
  {
    name: 'every page: forbids its browser every connection',
    async run({ page, at }) {
      for (const name of names) {
        await page.goto(at(`workbench/${name}.html`));
        const policy = await page
          .locator('meta[http-equiv="Content-Security-Policy"]')
          .getAttribute('content');
        assert.match(policy, /default-src 'none'.*connect-src 'none'/);
      }
    },
  },
  {
    name: 'every page: the choice of paper holds for the whole site',
    options: { colorScheme: 'light' },
    async run({ page, at }) {
      await page.goto(at('workbench/number.html'));
      const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
      const light = await paper();
      await page.getByLabel('Theme').selectOption('dark');
      const dark = await paper();
      assert.notEqual(dark, light);
      await page.goto(at('workbench/place.html'));
      assert.equal(await paper(), dark);
      await page.goto(at('index.html'));
      assert.equal(await paper(), dark);
    },
  },
  {
    name: 'every page: says without JavaScript what it is',
    options: { javaScriptEnabled: false },
    async run({ page, at }) {
      for (const name of names) {
        await page.goto(at(`workbench/${name}.html`));
        assert.equal(await page.locator('h1').count(), 1);
        assert.match((await page.locator('noscript').textContent()) ?? '', /JavaScript/);
      }
    },
  },
];
