import assert from 'node:assert/strict';

export const numberChecks = [
  {
    name: 'number: an identity is told apart, by mouse',
    async run({ page, open }) {
      await open('workbench/number.html');
      await page.getByLabel('The number is').click();
      await page.getByLabel('The number is').fill('MMSI 00 211 1240');
      const said = page.locator('#in-short');
      // MID 211: Germany, ITU Table of Maritime Identification Digits; 00MIDxxxx: coast station, ITU-R M.585.
      await assertText(said, /^Coast station\. The number was issued by Germany/);
      const parts = await page.locator('.anatomy b').allTextContents();
      assert.deepEqual(parts, ['00', '211', '1240']);
      // Five symbols of two digits, the tenth digit 0: ITU-R M.493, self-identification.
      const folded = page.getByText('0021112400, ten digits in five symbols');
      assert(await folded.isHidden());
      await page.locator('summary', { hasText: 'symbols on the air' }).click();
      await folded.waitFor();
    },
  },
  {
    name: 'number: a reading that may be meant is taken only when pressed',
    async run({ page, open }) {
      await open('workbench/number.html#number=2111240');
      assert.equal(await page.getByLabel('The number is').inputValue(), '2111240');
      await page.getByRole('button', { name: 'Read it as 002111240, coast station' }).click();
      assert.equal(await page.getByLabel('The number is').inputValue(), '002111240');
      assert.match(page.url(), /#number=002111240$/);
      await assertText(page.locator('#in-short'), /^Coast station/);
    },
  },
  {
    name: 'number: messages in another language, kept from page to page, spoken words in English',
    async run({ page, open }) {
      await open('workbench/number.html#number=23299987');
      await assertText(page.locator('.findings').first(), /^Identity needs 9 digits, has 8\./);
      await page.getByLabel('Messages in').selectOption('nl');
      await assertText(
        page.locator('.findings').first(),
        /^Identiteit heeft 9 cijfers nodig, er zijn er 8\./,
      );
      assert.equal(await page.locator('.findings [lang]').first().getAttribute('lang'), 'nl');
      // MAYDAY and what follows stay as every operator knows them: RR Article 32; the gloss is beside them.
      await open('workbench/call.html#kind=distress-alert&from=232999871');
      assert.equal(await page.getByLabel('Messages in').inputValue(), 'nl');
      await assertText(page.locator('.spoken li').first(), /^MAYDAY, MAYDAY, MAYDAY/);
      assert.equal(
        await page.locator('.spoken li').first().locator('[lang]').first().getAttribute('lang'),
        'nl',
      );
      await assertText(page.locator('#cautions'), /kanaal 16/);
      await page.getByLabel('Messages in').selectOption('en');
      await assertText(page.locator('#cautions'), /channel 16/);
    },
  },
  {
    name: 'number: by keyboard alone',
    async run({ page, open }) {
      await open('workbench/number.html');
      await page.keyboard.press('Tab');
      assert.equal(await page.evaluate(() => document.activeElement?.className), 'skip');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      assert.equal(await page.evaluate(() => document.activeElement?.id), 'number');
      await page.keyboard.press('Control+A');
      await page.keyboard.type('023299905');
      await page.keyboard.press('Tab');
      await page.keyboard.type('the own');
      await page.getByText('No, it cannot be used that way.').waitFor();
      await page.keyboard.press('Tab');
      assert.equal(await page.evaluate(() => document.activeElement?.id), 'set');
      await assertText(page.locator('#said'), /^Group of ship stations/);
    },
  },
  {
    name: 'number: the address restores a finding, and going back restores the one before',
    async run({ page, open }) {
      await open('workbench/number.html#number=023299905&use=own&set=coast');
      assert.equal(await page.locator('#set').inputValue(), 'coast');
      await page.getByText('No, it cannot be used that way.').waitFor();
      await page.getByRole('link', { name: '823299904' }).click();
      await assertText(page.locator('#in-short'), /^Hand-held/);
      await page.goBack();
      await assertText(page.locator('#in-short'), /^Group/);
    },
  },
  {
    name: 'number: the link to a finding is copied, and the call sign is looked at',
    options: { permissions: ['clipboard-read', 'clipboard-write'] },
    async run({ page, open }) {
      await open('workbench/number.html');
      await page.getByLabel('The call sign is').fill('232878000');
      await page.getByText('Call sign has nine digits').waitFor();
      await page.getByRole('button', { name: 'Copy a link' }).click();
      await page.getByText('Link copied').waitFor();
      assert.equal(await page.evaluate(() => navigator.clipboard.readText()), page.url());
      assert.match(page.url(), /sign=232878000/);
    },
  },
  {
    name: 'number: the question is answered in the headline, and nothing is asked for that is not there',
    async run({ page, open }) {
      await open('workbench/number.html#number=023299905&use=own');
      // A group has no set of its own: ITU-R M.585.
      await assertText(
        page.locator('#in-short'),
        /^Group .* issued by the United Kingdom.*\. It may not be the own number of that set\.$/,
      );
      await page.getByLabel('and it is to be').selectOption('group');
      await assertText(page.locator('#in-short'), / It may be called as a group\.$/);
      const press = page.getByText('Check, then choose');
      await page.getByLabel('The number is').fill('12');
      await assertText(page.locator('#in-short'), /^7 digits are missing: an identity has nine\.$/);
      assert.equal(await press.count(), 0);
      assert.equal(await page.locator('#number').getAttribute('aria-invalid'), 'true');
      await page.getByLabel('The number is').fill('2329990');
      await press.waitFor();
      // 0MIDxxxxx is a group of ships, ITU-R M.585: a reading that is one says so before it is taken.
      await page.getByLabel('The number is').fill('23299905');
      await assertText(page.locator('#in-short'), /^One digit is missing: an identity has nine\./);
      await page.getByRole('button', { name: /Read it as 023299905, group of ship stations/i }).waitFor();
      await page.getByLabel('The number is').fill('');
      await assertText(page.locator('#in-short'), /^Type a number\.$/);
      assert.equal(await page.locator('#answer').textContent(), '');
    },
  },
];

/** Waits until an element's text fits. */
export async function assertText(locator, pattern) {
  try {
    await locator.filter({ hasText: pattern }).waitFor();
  } catch {
    assert.match((await locator.textContent()) ?? '', pattern);
  }
}
