import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { assertText } from './number.mjs';

const evening = readFileSync(
  fileURLToPath(new URL('../../examples/evening-watch/serial.log', import.meta.url)),
  'utf8',
);

export const logChecks = [
  {
    name: 'log: the invented evening, pressed, opened, drawn',
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.getByRole('button', { name: 'take an invented evening' }).click();
      await assertText(
        page.locator('#in-short'),
        /^\d+ calls and \d+ lines with something amiss, in 2\d lines/,
      );
      await page.getByText('Distress alert from Bounty of Lorn').first().waitFor();
      await page.locator('#calls .caution').first().waitFor();
      await page.locator('#calls summary').first().click();
      await page.locator('#calls pre').first().waitFor();
      assert.match(page.url(), /#.*log=/);
      await page.getByRole('link', { name: /Draw where they are/ }).click();
      await page.locator('#plot').waitFor();
      // Times of the log are taken with the log's own clock.
      await assertText(page.locator('#answer'), /fix \d{1,3} minutes old/);
      await page.getByRole('heading', { name: 'Kittiwake II', exact: true }).waitFor();
    },
  },
  {
    name: 'log: the address restores a pasted line',
    async run({ page, open }) {
      const line = evening.split('\n').find((text) => text.includes('DSC,20,2329991420,08,21'));
      await open(`workbench/log.html#${new URLSearchParams({ log: `${line.trim()}\n`, own: '232999871' })}`);
      await assertText(page.locator('#calls'), /Position request from Tern of Ardle \(232999142\) to Merrow/);
    },
  },
  {
    name: 'log: a dropped file, and by keyboard',
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.evaluate((text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], 'evening.log', { type: 'text/plain' }));
        document
          .querySelector('#drop')
          .dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
      }, evening);
      await assertText(page.locator('#in-short'), /^\d+ calls/);
      await page.locator('#log').focus();
      await page.keyboard.insertText(evening.split('\n').slice(0, 3).join('\n'));
      await assertText(page.locator('#in-short'), /^1 call and 0 lines/);
    },
  },
  {
    name: 'log: 10 MB without freezing the page',
    async run({ page, open, out }) {
      const path = join(out, 'ten-megabytes.log');
      const copies = Math.ceil(10_000_000 / evening.length);
      writeFileSync(path, evening.repeat(copies));
      await open('workbench/log.html');
      await page.evaluate(() => {
        window.frames_ = [];
        const frame = (at) => {
          window.frames_.push(at);
          requestAnimationFrame(frame);
        };
        requestAnimationFrame(frame);
      });
      const begun = await page.evaluate(() => window.frames_.length);
      await page.locator('#file').setInputFiles(path);
      await page.locator('#progress-line').waitFor();
      // The page answers while it reads.
      await page.locator('#own').fill('232999871');
      await page.waitForFunction(() => !document.querySelector('#answer').hidden, undefined, {
        timeout: 120_000,
      });
      const gaps = await page.evaluate((from) => {
        const frames = window.frames_.slice(Math.max(0, from - 1));
        return frames.slice(1).map((at, index) => at - frames[index]);
      }, begun);
      const [longest, whole] = [Math.max(...gaps), gaps.reduce((sum, gap) => sum + gap, 0)];
      assert(gaps.length > 20, `only ${gaps.length} frames were painted`);
      assert(longest < whole / 4, `one frame took ${longest.toFixed(0)} of ${whole.toFixed(0)} ms`);
      const short = await page.locator('#in-short').textContent();
      await page
        .getByRole('button', { name: /more of/ })
        .first()
        .click();
      await page.waitForFunction(() => document.querySelectorAll('#calls .entry').length === 50);
      return `${short} Longest gap between ${gaps.length} frames ${longest.toFixed(0)} ms, ${(whole / 1000).toFixed(1)} s in all`;
    },
  },
];
