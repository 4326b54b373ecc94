import assert from 'node:assert/strict';
import { assertText } from './number.mjs';

export const exchangeChecks = [
  {
    name: 'exchange: a call answered by hand ends on the channel, by mouse',
    async run({ page, open }) {
      await open('workbench/exchange.html');
      const next = page.getByRole('button', { name: 'Next' });
      const answer = page.getByRole('button', { name: /able to comply/ });
      for (let presses = 0; presses < 10 && !(await answer.isVisible()); presses++) await next.click();
      await answer.click();
      for (let presses = 0; presses < 20; presses++) {
        if ((await page.locator('#script .said', { hasText: 'to channel 72' }).count()) >= 2) break;
        await page.locator('#next').click();
      }
      // Able to comply, then both change to the channel proposed: ITU-R M.541, routine calls, from memory.
      assert((await page.locator('#script .said', { hasText: 'to channel 72' }).count()) >= 2);
      const script = await page.locator('#script').textContent();
      const address = page.url();
      await page.reload();
      assert.equal(page.url(), address);
      assert.equal(await page.locator('#script').textContent(), script);
    },
  },
  {
    name: 'exchange: a pretended distress, by keyboard, with its caution',
    async run({ page, open }) {
      await open('workbench/exchange.html');
      await page.locator('#scene').focus();
      await page.keyboard.type('Bounty of Lorn is flooding; M');
      await page.locator('#caution .caution').waitFor();
      await page.locator('#next').focus();
      for (let presses = 0; presses < 5; presses++) await page.keyboard.press('Enter');
      await assertText(page.locator('#script'), /Distress alert from Bounty of Lorn/);
      await assertText(page.locator('#script'), /Leave the acknowledgement to the coast stations/);
      await page.getByRole('button', { name: 'One step back' }).press('Enter');
      await page.getByRole('button', { name: 'From the beginning' }).press('Enter');
      assert.equal(await page.locator('#script > li').count(), 0);
    },
  },
  {
    name: 'exchange: every scene, manner and air plays to a rest',
    async run({ page, open, at }) {
      await open('workbench/exchange.html');
      const values = (id) =>
        page.locator(`#${id} option`).evaluateAll((options) => options.map(({ value }) => value));
      let plays = 0;
      for (const scene of await values('scene')) {
        for (const manner of await values('manner')) {
          for (const air of await values('air')) {
            await page.goto(at('workbench/index.html'));
            await page.goto(
              at(
                `workbench/exchange.html#${new URLSearchParams({ scene, manner, air, moves: 'n'.repeat(40) })}`,
              ),
            );
            assert((await page.locator('#script > li').count()) > 1, `${scene} ${manner} ${air}`);
            assert.equal(
              await page.locator('#script .said i', { hasText: 'declines' }).count(),
              0,
              `${scene} ${manner} ${air}`,
            );
            plays++;
          }
        }
      }
      return `${plays} plays`;
    },
  },
];
