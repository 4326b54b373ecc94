import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { assertText } from './number.mjs';

const evening = readFileSync(
  fileURLToPath(new URL('../../examples/evening-watch/serial.log', import.meta.url)),
  'utf8',
);

const network = readFileSync(
  fileURLToPath(new URL('../../examples/evening-watch/network.log', import.meta.url)),
  'utf8',
);

export const logChecks = [
  {
    name: 'log: the same evening from the network, pressed, pasted and dropped as a capture file',
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.getByRole('button', { name: 'the same evening from the network' }).click();
      await assertText(page.locator('#in-short'), /^253 lines: 11 calls, \d+ with problems/);
      await page.getByText('Distress alert from Bounty of Lorn').first().waitFor();
      await assertText(page.locator('#report'), /packet-torn/);
      await assertText(page.locator('#report'), /call-repeated/);
      assert(await page.locator('#repairing').isHidden());
      await page.locator('#calls summary').first().click();
      await assertText(page.locator('#calls pre').first(), /^PGN 129808 from 3: /);
      await page.locator('#file').setInputFiles({
        name: 'evening.pcap',
        mimeType: 'application/vnd.tcpdump.pcap',
        buffer: captureOf(network),
      });
      await assertText(page.locator('#in-short'), /: 11 calls, \d+ with problems/);
      await page.locator('#log').fill(evening);
      await assertText(page.locator('#in-short'), /^2\d lines: /);
      assert(await page.locator('#repairing').isVisible());
    },
  },
  {
    name: 'log: the invented evening, pressed, opened, drawn',
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.getByRole('button', { name: 'try an example log' }).click();
      await assertText(page.locator('#in-short'), /^2\d lines: \d+ calls, \d+ with problems/);
      await page.getByText('Distress alert from Bounty of Lorn').first().waitFor();
      await page.locator('#calls .caution').first().waitFor();
      const strokes = page.locator('.times svg');
      const [, count, distress] = /^(\d+) calls from .*, (\d+) of them distress$/.exec(
        (await strokes.getAttribute('aria-label')) ?? '',
      );
      assert.equal(await strokes.locator('path:not(.axis)').count(), Number(count));
      assert.equal(await strokes.locator('.distress').count(), Number(distress));
      assert(Number(distress) > 0);
      await page.locator('#calls summary').first().click();
      await page.locator('#calls pre').first().waitFor();
      assert.match(page.url(), /#.*log=/);
      await page.getByRole('link', { name: /Draw where they are/ }).click();
      await page.locator('#plot').waitFor();
      // Times of the log are taken with the log's own clock.
      await assertText(page.locator('#answer'), /fix \d{1,3} minutes old/);
      await page.getByRole('heading', { name: /^\d+\. Kittiwake II$/ }).waitFor();
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
        // Beside the marked place: a page that left for the file would have forgotten everything.
        const dropped = new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true });
        document.querySelector('h1').dispatchEvent(dropped);
        if (!dropped.defaultPrevented) throw new Error('the page would leave for the file');
      }, evening);
      await assertText(page.locator('#in-short'), /: \d+ calls/);
      await page.locator('#log').focus();
      await page.keyboard.insertText(evening.split('\n').slice(0, 3).join('\n'));
      await assertText(page.locator('#in-short'), /^3 lines: 1 call, 0 with problems/);
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
  {
    name: 'log: a line without its end counts, and everything stands in the order of its lines',
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.locator('#log').fill('hello');
      await assertText(page.locator('#in-short'), /^1 line: 0 calls, 1 with problems\./);
      // A call that waits for its expansion is told of after the lines behind it.
      await page.getByRole('button', { name: 'try an example log' }).click();
      await assertText(page.locator('#in-short'), /: [1-9]\d* calls/);
      await page.locator('#faults .entry').first().waitFor();
      // Why a display shows nothing comes before the calls, and distress before every other call.
      const headings = await page.locator('#answer h2').allTextContents();
      assert.deepEqual(headings.slice(0, 2), ['Why a display may show nothing', 'Calls, distress first']);
      const told = await page.locator('#calls .entry').allTextContents();
      const isDistress = (text) =>
        /Distress alert|distress acknowledgement|Distress relay|elf-cancel/.test(text);
      assert(isDistress(told[0]));
      assert.equal(told.findLastIndex(isDistress) + 1, told.filter(isDistress).length);
      for (const list of ['faults']) {
        const lines = (await page.locator(`#${list} .margin`).allTextContents()).map((text) =>
          Number(/line (\d+)/.exec(text)?.[1]),
        );
        assert(lines.length > 2);
        assert.deepEqual(
          lines,
          [...lines].sort((a, b) => a - b),
          list,
        );
      }
      // CR alone ends a line as well, and UTF-16 has a zero between any two bytes.
      for (const [ending, encoding] of [
        ['\r', 'latin1'],
        ['\r\n', 'utf16le'],
      ]) {
        const [mark, three] = [
          encoding === 'latin1' ? '' : '\ufeff',
          evening.trim().split(/\r?\n/).slice(0, 3),
        ];
        await page.locator('#file').setInputFiles({
          name: 'evening.log',
          mimeType: 'text/plain',
          buffer: Buffer.from(mark + three.join(ending) + ending, encoding),
        });
        await assertText(page.locator('#in-short'), /^3 lines: /);
      }
      await page.getByLabel('whose own number is').fill('abc');
      await assertText(page.locator('#issues'), /“whose own number is”: /);
      assert.equal(await page.locator('#own').getAttribute('aria-invalid'), 'true');
    },
  },
  {
    name: 'log: a vessel in distress keeps her mark on the way to the drawing, and unknown vessels stay apart',
    async run({ page, open }) {
      const log = [
        alertOf('2329992180', '1562600603'),
        // A later report of hers, asked for by somebody, is no end of her distress.
        withChecksum('$CDDSC,20,2329992180,08,21,26,1562500604,1825,,,B,'),
        // Relays of a vessel unknown carry no identity.
        relayOf('1562100622'),
        relayOf('1562300640'),
      ].join('\n');
      await open(`workbench/log.html#${new URLSearchParams({ log })}`);
      const link = page.getByRole('link', { name: /Draw where they are: 3 stations/ });
      await link.waitFor();
      const stations = new URLSearchParams((await link.getAttribute('href')).split('#')[1]).get('stations');
      assert.match(stations, /^!Bounty of Lorn; 56°25′ N 006°04′ W; 18:25$/m);
      assert.equal(stations.match(/^!An unnamed vessel;/gm)?.length, 2);
      await link.click();
      await page.getByRole('heading', { level: 3, name: /Bounty of Lorn, in distress/ }).waitFor();
    },
  },
  {
    name: 'log: no link pretends to hold a file or a text that is too long',
    options: { permissions: ['clipboard-read', 'clipboard-write'] },
    async run({ page, open }) {
      await open('workbench/log.html');
      const share = page.getByRole('button', { name: 'Copy a link' });
      const told = page.locator('#share-told');
      await page
        .locator('#file')
        .setInputFiles({ name: 'evening.log', mimeType: 'text/plain', buffer: Buffer.from(evening) });
      await assertText(page.locator('#in-short'), /: \d+ calls/);
      await share.click();
      await assertText(told, /^Not copied: a link cannot hold evening\.log/);
      await page.locator('#log').fill('x'.repeat(6001));
      assert.equal(await told.textContent(), '');
      await share.click();
      await assertText(told, /^Not copied: a text of more than 6000 characters/);
      await page.locator('#log').fill('hello');
      await page.locator('#own').fill('9'.repeat(6001));
      await share.click();
      await assertText(told, /^Not copied: a text of more than 6000 characters/);
      await page.locator('#own').fill('');
      await share.click();
      await assertText(told, /^Link copied/);
      assert.equal(await page.evaluate(() => navigator.clipboard.readText()), page.url());
    },
  },
  {
    name: 'log: on a phone no two words of the margin run together',
    options: { viewport: { width: 390, height: 740 } },
    async run({ page, open }) {
      await open('workbench/log.html');
      await page.getByRole('button', { name: 'try an example log' }).click();
      await page.locator('#calls .entry').first().waitFor();
      const margins = await page
        .locator('.entry .margin')
        .evaluateAll((all) => all.map((each) => each.innerText));
      assert(margins.some((text) => /^line \d+\n20\d\d-/.test(text)));
      for (const text of margins)
        assert.doesNotMatch(text, /line \d{5}|[a-z][A-Z]|Certain\w|Likely\w|Possible\w/);
      // From an entry to what more can be asked about it.
      await page.getByRole('link', { name: 'Who is Tern of Ardle?' }).first().click();
      await assertText(page.locator('#in-short'), /^Ship station, Tern of Ardle/);
    },
  },
];

/** A distress alert as a radio reports it: IEC 61162-1, sentence DSC. */
function alertOf(identity, position) {
  return withChecksum(`$CDDSC,12,${identity},,06,00,${position},1820,,,S,`);
}

/** A relay to all ships about a vessel whose identity is not known. */
function relayOf(position) {
  return withChecksum(`$CDDSC,16,0023299900,12,12,00,${position},1820,,06,S,`);
}

function withChecksum(sentence) {
  let sum = 0;
  for (const character of sentence.slice(1)) sum ^= character.charCodeAt(0);
  return `${sentence}*${sum.toString(16).toUpperCase().padStart(2, '0')}`;
}

/** A text log as a capture file of link type 227: libpcap file format, SocketCAN frames. */
function captureOf(log) {
  const records = [...log.matchAll(/\((\d+)\.(\d+)\) \S+ ([0-9A-F]{8})#([0-9A-F]*)/g)].map(
    ([, seconds, fraction, id, data]) => {
      const record = Buffer.alloc(32);
      record.writeUInt32LE(Number(seconds), 0);
      record.writeUInt32LE(Number(fraction), 4);
      record.writeUInt32LE(16, 8);
      record.writeUInt32LE(16, 12);
      record.writeUInt32BE(Number.parseInt(id, 16) + 0x80000000, 16);
      record[20] = data.length / 2;
      record.write(data, 24, 'hex');
      return record;
    },
  );
  const head = Buffer.alloc(24);
  head.writeUInt32LE(0xa1b2c3d4, 0);
  head.writeUInt32LE(227, 20);
  return Buffer.concat([head, ...records]);
}
