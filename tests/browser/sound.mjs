import assert from 'node:assert/strict';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { modulate, writeWav } from 'seahail/audio';
import { encodeCall } from 'seahail/burst';
import { composeDistressAlert } from 'seahail/call';
import { assertText } from './number.mjs';

export const soundChecks = [
  {
    name: 'sound: the invented minute',
    async run({ page, open }) {
      await open('workbench/sound.html');
      await page.getByRole('button', { name: 'Try an example recording (13 s)' }).click();
      await assertText(page.locator('#in-short'), /^4 calls heard/);
      // The picture says in words what it shows, and marks each call where its card says it is.
      const picture = page.locator('.wave svg');
      assert.match((await picture.getAttribute('aria-label')) ?? '', /^The sound, .* call 4 at \d+\.\d s$/);
      assert.equal(await picture.locator('.span').count(), 4);
      await assertText(page.locator('#heard h3').nth(1), /^Position of Tern of Ardle/);
      // What is sure is said once; what is not, at its character.
      const card = (number) => page.locator('#heard .heard').nth(number);
      assert.equal(await card(0).locator('.characters span').count(), 0);
      await assertText(card(0), /All 22 characters: both copies agree, over 99\.99 %\./);
      await assertText(card(3).locator('b').first(), /^Doubtful/);
      assert((await card(3).locator('.characters .one-copy').count()) > 0);
      assert((await card(3).locator('.characters :is(.repaired, .unread, .soft)').count()) > 0);
      // The call heard is the call opened: finer minutes and all.
      const heard = await card(1).locator('h3').textContent();
      await card(1).getByRole('link', { name: 'Open it on the page of calls' }).click();
      await page.locator('#fields .ledger').waitFor();
      assert.equal(await page.locator('#in-short').textContent(), heard);
      await page.goBack();
    },
  },
  {
    name: 'sound: a WAV file chosen by keyboard, and a file that holds no sound',
    async run({ page, open, out }) {
      await open('workbench/sound.html');
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.locator('#file').press('Space'),
      ]);
      await chooser.setFiles(join(out, 'test-call.wav'));
      await assertText(page.locator('#in-short'), /^One call heard/);
      await assertText(page.locator('#heard h3'), /^Test call from Merrow .* to Skerra Coastguard/);
      await page.locator('#file').setInputFiles({
        name: 'cut.wav',
        mimeType: 'audio/wav',
        buffer: cutShort(join(out, 'test-call.wav')),
      });
      await assertText(page.locator('#in-short'), /^Something began like a call and could not be read\.$/);
      await assertText(page.locator('#issues'), /At 0\.\d s something began like a call/);
      await page
        .locator('#file')
        .setInputFiles({ name: 'note.txt', mimeType: 'text/plain', buffer: Buffer.from('no sound') });
      await assertText(page.locator('#in-short'), /^note\.txt holds no sound/);
    },
  },
  {
    name: 'sound: the five calls of a distress attempt are one call',
    async run({ page, open }) {
      await open('workbench/sound.html');
      const { bits } = encodeCall(composeDistressAlert({ from: '232999871', nature: 'flooding' }));
      const attempt = { bits: bits.repeat(5) };
      const sampleRate = 22_050;
      const samples = modulate(attempt.bits, {
        sampleRate,
        allowDistress: true,
        leadInSeconds: 0.3,
        tailSeconds: 0.3,
      });
      await page.locator('#file').setInputFiles({
        name: 'attempt.wav',
        mimeType: 'audio/wav',
        buffer: Buffer.from(writeWav(samples, { sampleRate })),
      });
      await assertText(page.locator('#in-short'), /^One call heard/);
      assert.equal(await page.locator('#heard .heard').count(), 1);
      // ITU-R M.493: a distress attempt is five calls in a row.
      await assertText(page.locator('#heard'), /Rests on\s*5 calls of one attempt/);
    },
  },
  {
    name: 'sound: through the microphone, opened and closed by a press',
    options: { permissions: ['microphone'] },
    browserArgs: ({ out }) => [
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${forMicrophone(out)}`,
    ],
    async run({ page, open }) {
      await open('workbench/sound.html');
      await page.getByRole('button', { name: 'Listen through the microphone' }).press('Enter');
      await assertText(page.locator('#in-short'), /heard so far/);
      await assertText(page.locator('#heard h3').first(), /^Test call from Merrow/);
      await page.getByRole('button', { name: 'Stop' }).press('Enter');
      await assertText(page.locator('#in-short'), /^The microphone is closed\. .*heard\./);
      assert(await page.getByRole('button', { name: 'Stop' }).isDisabled());
    },
  },
];

/** The saved test call with two seconds of silence before and after, as the pretended microphone plays it round and round. */
function forMicrophone(out) {
  const saved = join(out, 'test-call.wav');
  assert(existsSync(saved), 'the call page saves it first');
  const bytes = readFileSync(saved);
  const data = bytes.indexOf('data') + 8;
  const silence = Buffer.alloc(4 * bytes.readUInt32LE(24));
  const samples = Buffer.concat([silence, bytes.subarray(data), silence]);
  const header = Buffer.from(bytes.subarray(0, data));
  header.writeUInt32LE(samples.length + data - 8, 4);
  header.writeUInt32LE(samples.length, data - 4);
  const path = join(out, 'microphone.wav');
  writeFileSync(path, Buffer.concat([header, samples]));
  return path;
}

/** The first of a call: its phasing and little more. The file has a header of 44 bytes. */
function cutShort(path) {
  const whole = readFileSync(path);
  const samples = Math.round(whole.readUInt32LE(24) * 0.27);
  const cut = Buffer.from(whole.subarray(0, 44 + 2 * samples));
  cut.writeUInt32LE(36 + 2 * samples, 4);
  cut.writeUInt32LE(2 * samples, 40);
  return cut;
}
