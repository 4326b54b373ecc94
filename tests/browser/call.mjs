import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { assertText } from './number.mjs';

export const callChecks = [
  {
    name: 'call: made, read field by field, written as sentences',
    async run({ page, open }) {
      await open('workbench/call.html');
      await page.getByLabel('makes').selectOption('a position reply');
      await assertText(
        page.locator('#in-short'),
        /^Position of Merrow \(232999871\), in reply to Tern of Ardle/,
      );
      const lines = (await page.locator('#wire pre').allTextContents()).join('\n').split('\n');
      for (const line of lines) assert.equal(line.slice(-2), checksum(line), line);
      await page.getByLabel('with the finer minutes').check();
      // Eight digits more, ten-thousandths of a minute: ITU-R M.821 set 100.
      await page.locator('#wire pre', { hasText: 'DSE' }).first().waitFor();
      await assertText(page.locator('#cautions'), /Do not navigate by the position alone/);
    },
  },
  {
    name: 'call: a wrong number says what is wrong and offers the reading',
    async run({ page, open }) {
      await open('workbench/call.html#kind=test-call&to=2329990');
      await assertText(page.locator('#in-short'), /^Not a call yet/);
      await page.getByRole('button', { name: 'Read it as 002329990' }).click();
      await assertText(page.locator('#in-short'), /^Test call from Merrow .* to Skerra Coastguard/);
    },
  },
  {
    name: 'call: distress makes no sound without the word that it stays off the air, and no link carries the word',
    async run({ page, open }) {
      await open('workbench/call.html#kind=distress-alert');
      const [play, save, decode] = ['Play it', 'Save as WAV', 'Read it back'].map((name) =>
        page.getByRole('button', { name }),
      );
      for (const button of [play, save, decode]) assert(await button.isDisabled());
      await page.locator('#cautions .caution').waitFor();
      await page.getByText('starts a search').waitFor();
      const tick = page.getByLabel('This sound stays off the air');
      await tick.check();
      for (const button of [play, save, decode]) assert(await button.isEnabled());
      assert.doesNotMatch(page.url(), /off-air|stays/);
      await decode.click();
      await assertText(page.locator('#heard h3'), /^Distress alert from Merrow/);
      await page.getByLabel('for', { exact: true }).selectOption('sinking');
      assert(!(await tick.isChecked()));
      assert(await play.isDisabled());
      assert.equal(await page.locator('#heard').textContent(), '');
    },
  },
  {
    name: 'call: read back through the browser’s own sound path, clear and in noise',
    async run({ page, open }) {
      await open('workbench/call.html#kind=individual-call&channel=77');
      const sent = await page.locator('#in-short').textContent();
      const verdicts = [];
      for (const noise of ['', '20', '8']) {
        await page.locator('#noise').selectOption(noise);
        await page.getByRole('button', { name: 'Read it back' }).click();
        await page.locator('#heard h3').waitFor();
        assert.equal(await page.locator('#heard h3').textContent(), sent);
        verdicts.push((await page.locator('#heard b').first().textContent()) ?? '');
        await page.locator('#noise').selectOption('3');
        await page.getByRole('button', { name: 'Read it back' }).click();
        await page.getByText('Listening.').waitFor({ state: 'detached' });
      }
      assert.equal(verdicts[0], 'Received clean');
      return verdicts.join(', ').toLowerCase();
    },
  },
  {
    name: 'call: the saved sound holds the bits that are drawn, by another demodulator',
    async run({ page, open, out }) {
      await open('workbench/call.html#kind=test-call&to=002329990');
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save as WAV' }).click(),
      ]);
      const path = join(out, 'test-call.wav');
      await download.saveAs(path);
      const bytes = readFileSync(path);
      assert.equal(bytes.toString('latin1', 0, 4), 'RIFF');
      await page.getByText('The same as figures').click();
      const bits = (await page.locator('.bits').textContent()) ?? '';
      assert.equal(bitsOfWav(bytes, bits.length), bits);
      writeFileSync(join(out, 'test-call.bits'), bits);
      return `${bits.length} bits`;
    },
  },
  {
    name: 'call: by keyboard, sound included',
    async run({ page, open }) {
      await open('workbench/call.html');
      await page.evaluate(() => {
        window.started = 0;
        const start = AudioBufferSourceNode.prototype.start;
        AudioBufferSourceNode.prototype.start = function (...parts) {
          window.started++;
          return start.apply(this, parts);
        };
      });
      await page.locator('#kind').focus();
      await page.keyboard.type('a test call');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Control+A');
      await page.keyboard.type('002329990');
      await assertText(page.locator('#in-short'), /^Test call from Merrow .* to Skerra Coastguard/);
      for (let presses = 0; presses < 30; presses++) {
        await page.keyboard.press('Tab');
        if ((await page.evaluate(() => document.activeElement?.id)) === 'play') break;
      }
      await page.keyboard.press('Enter');
      await page.waitForFunction(() => window.started === 1);
      // The button shows that it plays, and shows when it does not.
      await assertText(page.locator('#play'), /^Playing: press to stop$/);
      await page.keyboard.press('Enter');
      await assertText(page.locator('#play'), /^(?!Playing)/);
      await page.keyboard.press('Enter');
      await assertText(page.locator('#play'), /^Playing/);
      await assertText(page.locator('#play'), /^(?!Playing)/);
    },
  },
  {
    name: 'call: every kind can be made, and its address restores it',
    async run({ page, open, at }) {
      await open('workbench/call.html');
      const kinds = await page
        .locator('#kind option')
        .evaluateAll((options) => options.map(({ value }) => value));
      for (const kind of kinds) {
        await page.goto(at('workbench/index.html'));
        await page.goto(at(`workbench/call.html#kind=${kind}`));
        assert(await page.locator('#answer').isVisible(), kind);
        assert((await page.locator('#fields .ledger > div').count()) > 2, kind);
        assert.equal(await page.locator('#issues').textContent(), '', kind);
      }
      return `${kinds.length} kinds`;
    },
  },
  {
    name: 'call: what a kind of call cannot have is not offered, and what it usually has stands there',
    async run({ page, open }) {
      await open('workbench/call.html');
      const held = () =>
        page.evaluate(() =>
          ['to', 'category', 'channel'].map((id) => document.querySelector(`#${id}`).value).join(' '),
        );
      const routine = page.locator('#category option[value=routine]');
      await page.getByLabel('makes').selectOption('a call to a group');
      await assertText(page.locator('#in-short'), /to group Ardle Sailing Club/);
      // Urgency and safety alone go to all ships and to areas: ITU-R M.493-16 tables of compositions, from memory.
      for (const kind of ['a call to all ships', 'a call to an area']) {
        await page.getByLabel('makes').selectOption(kind);
        assert.match(await held(), / safety 16$/, kind);
        assert(await routine.evaluate((option) => option.disabled), kind);
        await assertText(page.locator('#in-short'), /^Safety call .* channel 16/);
      }
      await page.getByLabel('makes').selectOption('a call to one station');
      assert.equal(await held(), '232999142 routine 72');
      // What a person chose stays.
      await page.locator('#channel').fill('77');
      await page.getByLabel('makes').selectOption('a call to all ships');
      assert.match(await held(), / safety 77$/);
      await page.getByLabel('makes').selectOption('a distress relay to one station');
      assert.match(await held(), /^002329990/);
      await page.getByLabel('makes').selectOption('a distress relay to all ships');
      await assertText(page.locator('#in-short'), /^Distress relay from .* to all ships/);
      assert(!(await page.locator('#to').isVisible()));
      // What differs from the usual is in the link, whatever the usual is.
      await page.goto(`${page.url().split('#')[0]}#kind=distress-relay&to=232999142`);
      assert.match(await held(), /^232999142/);
      await page.reload();
      assert.match(await held(), /^232999142/);
    },
  },
  {
    name: 'call: no line of the question begins with a comma or full stop, however narrow the page',
    async run({ page, open }) {
      for (const kind of ['individual-call', 'distress-relay', 'unable-to-comply']) {
        await page.goto('about:blank');
        await open(`workbench/call.html#kind=${kind}`);
        for (const width of [360, 390, 412, 480, 640, 768]) {
          await page.setViewportSize({ width, height: 740 });
          const orphans = await page.locator('.blank > p .tie').evaluateAll(
            (ties) =>
              ties.filter((tie) => {
                const { left, width: wide } = tie.getBoundingClientRect();
                return (
                  /^\u2060[.,]$/.test(tie.textContent) &&
                  wide > 0 &&
                  left - tie.closest('p').getBoundingClientRect().left < 4
                );
              }).length,
          );
          assert.equal(orphans, 0, `${kind} at ${width}`);
        }
      }
    },
  },
  {
    name: 'call: the sender of a distress call reads the sender’s cautions first',
    async run({ page, open, at }) {
      for (const kind of [
        'distress-alert',
        'distress-acknowledgement',
        'distress-relay',
        'distress-relay-to-all',
      ]) {
        await page.goto('about:blank');
        await open(`workbench/call.html#kind=${kind}&position=56°20′ N 006°30′ W`);
        // RR 2024 Art. 32; 47 CFR 80.335.
        await assertText(
          page.locator('#cautions li').first(),
          /^(?:Only about|Send a distress alert only in) grave and imminent danger.*never as a test/,
        );
        assert.doesNotMatch((await page.locator('#notices').textContent()) ?? '', /No objection found/);
      }
      await page.goto(at('workbench/call.html#kind=distress-alert'));
      assert.doesNotMatch(
        (await page.locator('#cautions').textContent()) ?? '',
        /Leave the DSC acknowledgement/,
      );
      await assertText(page.locator('#consent'), /cancel one sent by mistake at once: stop it on the radio/);
    },
  },
  {
    name: 'call: nothing argues against cancelling a false alert: RR 32.53B to 32.53E',
    async run({ page, open }) {
      await open('workbench/call.html#kind=distress-self-cancel&alertsent=09:15');
      await assertText(
        page.locator('#cautions li').first(),
        /^Cancel the alert at once by voice on channel 16/,
      );
      assert.doesNotMatch((await page.locator('#cautions').textContent()) ?? '', /Only (?:in|about) grave/);
      await assertText(page.locator('#notices'), /^No reason, if an alert was false: cancel it at once/);
      await assertText(page.locator('#words'), /MY DISTRESS ALERT OF zero nine one five UTC/);
    },
  },
  {
    name: 'call: an issue names its blank, and marks it',
    async run({ page, open }) {
      await open('workbench/call.html#kind=position-reply&to=&time=25:99');
      await assertText(page.locator('#issues'), /“to”: Identity is empty/);
      await assertText(page.locator('#issues'), /“since”: '25:99' is not a time of day/);
      const marked = () =>
        page.locator('[aria-invalid]').evaluateAll((all) => all.map(({ id }) => id).join(' '));
      assert.equal(await marked(), 'to time');
      await page.locator('#time').fill('14:32');
      assert.equal(await marked(), 'to');
      await page.locator('#to').fill('232999142');
      await page.locator('#answer').waitFor();
      assert.equal(await marked(), '');
    },
  },
  {
    name: 'call: words damaged by click and by keyboard are read again, and more noise brings doubt',
    async run({ page, open }) {
      await open('workbench/call.html');
      const verdict = page.locator('#again b').first();
      const word = (number) => page.locator('.words button').nth(number);
      assert.equal(await page.locator('#again').textContent(), '');
      await word(20).click();
      // The copy comes five words later: ITU-R M.493, time diversity.
      assert.equal(await page.locator('.words .tied').count(), 2);
      assert.match((await word(25).getAttribute('class')) ?? '', /tied/);
      // Every character goes twice, so one copy may be lost: ITU-R M.493, time diversity.
      await assertText(verdict, /^Received clean$/);
      await assertText(page.locator('#again .one-copy'), /from one copy/);
      // The copy stands five words later.
      for (let presses = 0; presses < 5; presses++) await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Space');
      await assertText(verdict, /^Received with repair$/);
      assert(await word(25).evaluate((button) => button === document.activeElement));
      assert.match(page.url(), /#damaged=20\.25$/);
      // Down and up again ends at the same word, a row away in between.
      const top = () => page.evaluate(() => document.activeElement.getBoundingClientRect().top);
      const row = await top();
      await page.keyboard.press('ArrowUp');
      assert((await top()) < row);
      await page.keyboard.press('ArrowDown');
      assert(await word(25).evaluate((button) => button === document.activeElement));
      for (const number of [22, 27]) await word(number).click();
      await assertText(verdict, /^Doubtful/);
      const again = await page.locator('#again').textContent();
      await page.reload();
      assert.equal(await page.locator('#again').textContent(), again);
      await page.locator('#channel').fill('77');
      assert.equal(await page.locator('#again').textContent(), '');
      const verdicts = [];
      for (const noise of ['3', '-4', '-6']) {
        await page.locator('#noise').selectOption(noise);
        await page.getByRole('button', { name: 'Read it back' }).click();
        await page.locator('#heard b').first().waitFor();
        verdicts.push(await page.locator('#heard b').first().textContent());
      }
      assert.equal(verdicts[0], 'Received clean');
      assert.equal(verdicts[1], 'Received with repair');
      assert.match(verdicts[2], /^Doubtful/);
    },
  },
];

/** IEC 61162-1: exclusive or of everything between the start and the asterisk. */
function checksum(line) {
  let sum = 0;
  for (const character of line.slice(1, line.indexOf('*'))) sum ^= character.charCodeAt(0);
  return sum.toString(16).toUpperCase().padStart(2, '0');
}

/** The plainest demodulator there is: for each bit, which of the two tones of ITU-R M.493 has more energy in it. */
function bitsOfWav(bytes, count) {
  const sampleRate = bytes.readUInt32LE(24);
  const data = bytes.indexOf('data') + 8;
  const lead = 0.1 * sampleRate;
  const energy = (from, to, hertz) => {
    let [re, im] = [0, 0];
    for (let n = Math.ceil(from); n < to; n++) {
      const sample = bytes.readInt16LE(data + 2 * n);
      re += sample * Math.cos((2 * Math.PI * hertz * n) / sampleRate);
      im += sample * Math.sin((2 * Math.PI * hertz * n) / sampleRate);
    }
    return re * re + im * im;
  };
  let bits = '';
  for (let bit = 0; bit < count; bit++) {
    const [from, to] = [bit, bit + 1].map((edge) => lead + (edge * sampleRate) / 1200);
    bits += energy(from, to, 1300) > energy(from, to, 2100) ? '1' : '0';
  }
  return bits;
}
