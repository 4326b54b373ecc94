import assert from 'node:assert/strict';
import { assertText } from './number.mjs';

export const channelChecks = [
  {
    name: 'channel: two plans compared, by mouse',
    async run({ page, open }) {
      await open('workbench/channel.html');
      await page.getByLabel('the other one').selectOption('United States');
      // 72 is intership in Radio Regulations Appendix 18 and non-commercial intership in 47 CFR 80.373(f).
      await assertText(page.locator('#in-short'), /^Use channel 72/);
      // 06 is for intership safety in the United States, 47 CFR 80.373(f): not for ordinary talk.
      const served = await page.locator('#answer .channel > b').allTextContents();
      assert(!served.includes('06') && !served.includes('16') && !served.includes('70'));
      await page.locator('summary', { hasText: 'For distress and calling' }).click();
      await page.getByText('Channel 16 is for distress, safety and calling').waitFor();
      assert.match(page.url(), /there=us/);
    },
  },
  {
    name: 'channel: a frequency and a name looked up in every plan',
    async run({ page, open }) {
      await open('workbench/channel.html');
      // 156.800 MHz is channel 16 everywhere: Radio Regulations Appendix 18.
      await page.getByLabel('What is').fill('156.8');
      await page.waitForFunction(() => document.querySelectorAll('#look-up .channel > b').length === 7);
      assert.deepEqual(await page.locator('#look-up .channel > b').allTextContents(), Array(7).fill('16'));
      await page.getByLabel('What is').fill('22A');
      await page.getByText('Channel 22A is not in the International plan').waitFor();
      // 157.100 MHz on both sides in the United States, 47 CFR 80.373(f): found whatever plan is chosen, and first.
      const [first] = await page.locator('#look-up section').allTextContents();
      assert.match(first, /^United States.*157\.1(?:00)? MHz, one frequency for both sides/);
    },
  },
  {
    name: 'channel: why not 6 is answered for the plans and the talk that were chosen, with frequencies',
    async run({ page, open }) {
      await open('workbench/channel.html#channel-name=6');
      await assertText(page.locator('#look-up'), /^Channel 06 fits this talk\./);
      await page.getByLabel('the other one').selectOption('United States');
      // Intership safety only: 47 CFR 80.373(f).
      await assertText(page.locator('#look-up'), /^Not channel 06 for this talk\..*47 CFR 80\.373\(f\)/);
      // 156.625 MHz is channel 72: Radio Regulations Appendix 18.
      await assertText(page.locator('#answer .channel').first(), /156\.625 MHz/);
    },
  },
  {
    name: 'channel: reasons and cautions in German, and English again',
    async run({ page, open }) {
      await open('workbench/channel.html#channel-name=16');
      await page.locator('#language').selectOption('de');
      await assertText(page.locator('#look-up'), /^Not channel 16 for this talk\..*Kanal 16 ist für Not/);
      await page.locator('#look-up [lang=de]', { hasText: 'Not, Sicherheit und Anruf' }).first().waitFor();
      await page.locator('#answer [lang=de]').first().waitFor();
      await page.locator('#language').selectOption('en');
      await assertText(page.locator('#look-up'), /Channel 16 is for distress, safety and calling/);
    },
  },
  {
    name: 'channel: by keyboard, and the address restores the question',
    async run({ page, open, at }) {
      await open('workbench/channel.html');
      await page.locator('#here').focus();
      await page.keyboard.type('Unit');
      await page.keyboard.press('Tab');
      await page.keyboard.type('Can');
      await page.keyboard.press('Tab');
      await page.keyboard.type('with a');
      const short = await page.locator('#in-short').textContent();
      const address = page.url();
      await page.goto(at('workbench/index.html'));
      await page.goto(address);
      assert.equal(await page.locator('#in-short').textContent(), short);
      assert.equal(await page.locator('#purpose').inputValue(), 'ship-to-coast');
    },
  },
  {
    name: 'channel: one that serves alone, those that the coast station chooses, and no caution twice',
    async run({ page, open, at }) {
      await open('workbench/channel.html#purpose=intership-navigation');
      // 13 is for the safety of navigation: Radio Regulations Appendix 18.
      await assertText(page.locator('#in-short'), /^Only channel 13 fits\.$/);
      const told = (await page.locator('#answer').textContent()) ?? '';
      assert.equal(told.match(/for the safety of navigation; other uses/g)?.length, 1);
      await page.goto(at('workbench/channel.html#purpose=ship-to-coast'));
      await assertText(page.locator('#in-short'), /^The coast station chooses: \d+ channels/);
      const once = (await page.locator('#answer').textContent()) ?? '';
      assert.equal(once.match(/is optional/g)?.length, 1);
    },
  },
];
