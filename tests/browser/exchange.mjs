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
      await assertText(page.locator('#script'), /acknowledgement to the coastguard/);
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
        // Whatever is offered can be done, and is offered once.
        for (const pressed of ['0', '1', '2', '3', '4']) {
          await page.goto(at('workbench/index.html'));
          await page.goto(
            at(
              `workbench/exchange.html#${new URLSearchParams({ scene, moves: `nnn${pressed}nnn${pressed}`.repeat(6) })}`,
            ),
          );
          assert.equal(
            await page.locator('#script .said i', { hasText: 'declines' }).count(),
            0,
            `${scene} ${pressed}`,
          );
          const offered = await page.locator('#choices button').allTextContents();
          assert.equal(new Set(offered).size, offered.length, `${scene} ${pressed}: ${offered}`);
          plays++;
        }
      }
      return `${plays} plays`;
    },
  },
  {
    name: 'exchange: what is due comes before an answer by hand, and an open question is not passed unseen',
    async run({ page, open, at }) {
      await open('workbench/exchange.html#moves=nnn');
      const next = page.locator('#next');
      await page.getByRole('button', { name: /able to comply/ }).waitFor();
      assert.equal(await next.textContent(), 'Next: nobody answers');
      await page.getByRole('button', { name: /able to comply/ }).click();
      // No talk is over before the other side has the answer.
      for (let changes = 0; changes < 2; ) {
        assert.equal(await page.getByRole('button', { name: /The talk is over/ }).count(), 0);
        await next.click();
        changes = await page.locator('#script .said', { hasText: 'to channel 72' }).count();
      }
      // Any buttons in any order: whatever is due is delivered first, so that no station declines or raises an alarm.
      const scenes = await page
        .locator('#scene option')
        .evaluateAll((options) => options.map(({ value }) => value));
      let seed = 1;
      const drawn = () => {
        seed = (seed * 48271) % 2147483647;
        return seed % 3 === 0 ? 'n' : String(seed % 5);
      };
      for (const scene of scenes) {
        for (let play = 0; play < 8; play++) {
          const moves = `nnn${Array.from({ length: 40 }, drawn).join('')}`;
          await page.goto(at('workbench/index.html'));
          await page.goto(at(`workbench/exchange.html#${new URLSearchParams({ scene, moves })}`));
          await page.locator('#script > li').first().waitFor();
          const script = (await page.locator('#script').textContent()) ?? '';
          assert.doesNotMatch(script, /declines|alarm for fault/, `${scene} ${moves}`);
        }
      }
    },
  },
  {
    name: 'exchange: each speaks her own words, and the play ends when they talk',
    async run({ page, open }) {
      await open('workbench/exchange.html#moves=nnn0nnnnnn');
      await assertText(page.locator('#ending'), /^They are talking on channel 72\.$/);
      const next = page.locator('#next');
      assert(await next.isDisabled());
      // The caller speaks first, and the called station answers: ITU-R M.1171, from memory.
      const tern = page.locator('#script > .second .spoken li');
      assert.match((await tern.first().textContent()) ?? '', /^Merrow says .*THIS IS Merrow/);
      assert.match((await tern.nth(1).textContent()) ?? '', /^Merrow$/);
      await assertText(page.locator('#script'), /Wait for the caller to begin\./);
      await assertText(page.locator('#script'), /Leave channels 16 and 70 free/);
      assert.deepEqual(await page.locator('#choices button').allTextContents(), [
        'Merrow: The talk is over',
        'Tern of Ardle: The talk is over',
      ]);
    },
  },
  {
    name: 'exchange: a coast station acknowledges an alert, and the casualty could stop or cancel it',
    async run({ page, open }) {
      await open('workbench/exchange.html#scene=answered');
      const next = page.locator('#next');
      const press = (name) => page.getByRole('button', { name }).click();
      const offered = async () => (await page.locator('#choices button').allTextContents()).join('; ');
      for (let presses = 0; presses < 6; presses++) await next.click();
      assert.match(await offered(), /Bounty of Lorn: Stop the repeats; Bounty of Lorn: The alert was false/);
      assert.doesNotMatch(await offered(), /vessel can help/);
      await press('Skerra Coastguard: Acknowledge the alert');
      await press('Skerra Coastguard: Yes, acknowledge');
      for (let presses = 0; presses < 10 && (await next.isEnabled()); presses++) await next.click();
      // An acknowledgement by DSC ends the repeats: ITU-R M.541 Annex 1.
      await assertText(page.locator('#ending'), /^Skerra Coastguard has acknowledged, .* repeated no more/);
      await assertText(page.locator('#script'), /The alert is acknowledged by Skerra Coastguard/);
      await assertText(page.locator('#script'), /only in grave and imminent danger/);
      assert(await next.isDisabled());
    },
  },
  {
    name: 'exchange: a link to another scene brings its moves, and a play too long for a link says so',
    async run({ page, open }) {
      await open('workbench/exchange.html#moves=nn');
      assert.equal(await page.locator('#script > li').count(), 2);
      await page.evaluate(() => {
        location.hash = 'scene=test&moves=nnn';
      });
      await page.waitForFunction(() => document.querySelectorAll('#script > li').length === 3);
      await page.locator('#scene').selectOption('where');
      await page.waitForFunction(() => document.querySelectorAll('#script > li').length === 0);
      assert.match(page.url(), /#scene=where$/);
      await page.evaluate((moves) => {
        location.hash = `scene=distress&moves=${moves}`;
      }, 'n'.repeat(200));
      await assertText(page.locator('#ending'), /^A link holds 200 steps/);
      assert(await page.locator('#next').isDisabled());
    },
  },
  {
    name: 'exchange: the next step stays on a phone’s screen',
    options: { viewport: { width: 390, height: 740 } },
    async run({ page, open }) {
      await open('workbench/exchange.html');
      for (let presses = 0; presses < 12; presses++) {
        const choice = page.locator('#choices button').first();
        await ((await choice.isVisible()) ? choice : page.locator('#next')).click();
        await page.waitForTimeout(50);
        const [next, newest] = await Promise.all(
          ['#next', '#script > li:last-child'].map((what) => page.locator(what).boundingBox()),
        );
        assert(next.y >= 0 && next.y + next.height <= 740, `after ${presses + 1} the button is at ${next.y}`);
        assert(
          newest.y < 740 && newest.y + newest.height > 0,
          `after ${presses + 1} the turn is at ${newest.y}`,
        );
        if (await page.locator('#next').isDisabled()) break;
      }
    },
  },
];
