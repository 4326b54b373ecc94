import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { assertText } from './number.mjs';

export const placeChecks = [
  {
    name: 'place: one station, checked against a sphere, saved as GPX and GeoJSON',
    async run({ page, open }) {
      const question = {
        own: '56°22.00′ N 006°24.00′ W',
        stations: 'Tern of Ardle; 56°18′ N 006°32′ W; 14:32',
      };
      await open(`workbench/place.html#${new URLSearchParams(question)}`);
      await page.locator('#plot').waitFor();
      const told = (await page.getByText(/M, .*° true/).textContent()) ?? '';
      const [, miles, bearing] = /([\d.]+) M, ([\d.]+)°/.exec(told).map(Number);
      const sphere = onSphere(56 + 22 / 60, -6.4, 56 + 18.5 / 60, -(6 + 32.5 / 60));
      // A sphere of one nautical mile to the minute is within half a per cent of the ellipsoid.
      assert(Math.abs(miles - sphere.miles) < 0.005 * sphere.miles, `${miles} and ${sphere.miles}`);
      assert(Math.abs(bearing - sphere.bearing) < 0.4, `${bearing} and ${sphere.bearing}`);
      const gpx = await saved(page, 'Save as GPX');
      const place = await page.evaluate((text) => {
        const point = new DOMParser().parseFromString(text, 'application/xml').querySelector('wpt');
        return [
          point.getAttribute('lat'),
          point.getAttribute('lon'),
          point.querySelector('name').textContent,
        ];
      }, gpx);
      assert.deepEqual(place, ['56.308333', '-6.541667', 'Tern of Ardle']);
      assert.match(gpx, /<desc>reported .*, within 1,?\d{3} m then, within \d+ m now<\/desc>/);
      const geojson = JSON.parse(await saved(page, 'Save as GeoJSON'));
      assert.deepEqual(geojson.features[0].geometry.coordinates, [-6.541667, 56.308333]);
      assert.match(await saved(page, 'Save the drawing'), /^<svg/);
    },
  },
  {
    name: 'place: bounds and the drawing in Dutch, its caution too',
    async run({ page, open }) {
      const question = {
        own: '56°22.00′ N 006°24.00′ W',
        stations: 'Tern of Ardle; 56°18′ N 006°32′ W; 14:32',
      };
      await open(`workbench/place.html#${new URLSearchParams(question)}`);
      await page.locator('#language').selectOption('nl');
      await page.locator('#answer [lang=nl]', { hasText: /zeemijl, ware peiling/ }).waitFor();
      const drawing = await saved(page, 'Save the drawing');
      assert.match(drawing, /<title id="plot-title">Gemelde posities<\/title>/);
      assert.match(drawing, /Dit is geen radar/);
    },
  },
  {
    name: 'place: digits are as fine as they were typed, and movement counts in what is saved',
    async run({ page, open }) {
      const lines = ['A; 56°22.5′ N 006°32.5′ W; 14:36', 'B; 56°22.0000′ N 006°32.0000′ W; 14:46'];
      await open(
        `workbench/place.html#${new URLSearchParams({ stations: lines.join('\n'), pace: '6', variation: '2 W' })}`,
      );
      await page.locator('#plot').waitFor();
      const [tenth, fine] = await page.locator('#answer section').allTextContents();
      // A tenth of a minute is 185 m of latitude: half a step below the digits and one above, in both axes.
      const off = Number(/Up to this far off([\d,]+) m/.exec(tenth)[1].replace(',', ''));
      assert(off > 185 && off < 240, String(off));
      assert.match(fine, /56°22\.0000′ N 006°32\.0000′ W.*Up to this far off1 m/);
      assert.match(fine, /Time to reach4\d min to 4\d min at 6 knots/);
      const [, bearing, magnetic] = /M, ([\d.]+)° true, ([\d.]+)° magnetic/.exec(fine).map(Number);
      // Westerly variation is added.
      assert(Math.abs(magnetic - bearing - 2) < 0.11);
      // Eleven minutes at 6 knots, the doubt of the clock included: 1.1 M.
      const gpx = await saved(page, 'Save as GPX');
      const [, then, now] = /within (\d+) m then, within (\d+) m now/.exec(gpx).map(Number);
      assert.equal(then, off);
      assert(Math.abs(now - then - 1.1 * 1852) < 2, `${now} ${then}`);
      await assertText(page.locator('#in-short'), /^B, is nearest: .*|^B: .*A may be nearer\.$/);
      assert.deepEqual(await page.locator('#answer h3').allTextContents(), ['1. A', '2. B']);
      await assertText(page.locator('figcaption'), /Hatched: where the report places her/);
      await page.locator('#variation').fill('around 3');
      await assertText(page.locator('#issues'), /Variation: expected one such as 1\.5 W, got/);
    },
  },
  {
    name: 'place: position and time of the device, when the person allows it',
    options: { geolocation: { latitude: 56.25, longitude: -6.5, accuracy: 8 }, permissions: ['geolocation'] },
    async run({ page, open }) {
      await open('workbench/place.html');
      await page.getByRole('button', { name: /from this device/ }).click();
      await assertText(page.locator('#device-said'), /^Position to within 8 m/);
      assert.equal(await page.locator('#own').inputValue(), '56°15.000′ N 006°30.000′ W');
      assert.equal(await page.locator('#day').inputValue(), new Date().toISOString().slice(0, 10));
    },
  },
  {
    name: 'place: by keyboard, a vessel in distress, and a line that cannot be read',
    async run({ page, open }) {
      await open('workbench/place.html');
      await page.locator('#stations').focus();
      await page.keyboard.press('Control+A');
      await page.keyboard.insertText(
        '!Bounty of Lorn; 56°26.7240′ N 006°03.3300′ W; 14:40\nPellinore; somewhere; 13:50',
      );
      await page.getByRole('heading', { level: 3, name: /Bounty of Lorn, in distress/ }).waitFor();
      await assertText(page.locator('#issues'), /Line 2:/);
      const address = page.url();
      await page.reload();
      assert.equal(page.url(), address);
      await page.getByRole('heading', { level: 3, name: /Bounty of Lorn, in distress/ }).waitFor();
    },
  },
  {
    name: 'place: what cannot be read is said at its blank',
    async run({ page, open }) {
      await open('workbench/place.html#now=25:99&day=2026-02-30');
      await assertText(page.locator('#in-short'), /^One field could not be read\.$/);
      await assertText(page.locator('#issues'), /“it is”: Time of day: expected .*'25:99'/);
      // February has 28 days in 2026, and 29 at most.
      await assertText(page.locator('#issues'), /“on”: Date: expected .*'2026-02-30'/);
      await page.locator('#now').fill('');
      await assertText(page.locator('#in-short'), /^Fill in the missing fields\.$/);
      await page.locator('#now').fill('14:46');
      await page.locator('#day').fill('2028-02-29');
      await page.locator('#plot').waitFor();
      assert.equal(await page.locator('[aria-invalid]').count(), 0);
    },
  },
  {
    name: 'place: thousands of lines do not stop the page, and those in distress are drawn in any case',
    async run({ page, open }) {
      const line = (index) => `S${index}; 56°${10 + (index % 40)}′ N 006°${10 + (index % 49)}′ W; 14:30`;
      const lines = Array.from({ length: 3000 }, (_, index) => line(index));
      lines[2900] = '!Bounty of Lorn; 55°01′ N 003°59′ W; 14:30';
      await open('workbench/place.html');
      // Set at one stroke: the browser's own typing of so many lines is what would be slow.
      await page.locator('#stations').evaluate((field, text) => {
        field.value = text;
        field.dispatchEvent(new Event('input', { bubbles: true }));
      }, lines.join('\n'));
      await page.getByText('The nearest are drawn, and 2,970 more are not.').waitFor();
      assert.equal(await page.locator('#answer section').count(), 30);
      await page.getByRole('heading', { level: 3, name: /Bounty of Lorn, in distress/ }).waitFor();
      const gpx = await saved(page, 'Save as GPX');
      assert.equal(gpx.match(/<wpt /g)?.length, 3000);
    },
  },
  {
    name: 'place: the drawing can be read on a phone',
    options: { viewport: { width: 390, height: 740 } },
    async run({ page, open }) {
      await open('workbench/place.html');
      await page.locator('#plot').waitFor();
      const heights = await page
        .locator('#plot text')
        .evaluateAll((all) =>
          all.map((each) => each.getBoundingClientRect()).map(({ height, top }) => [height, top]),
        );
      assert(heights.length > 5);
      for (const [size, top] of heights) assert(size >= 10, `${size} at ${top}`);
    },
  },
];

async function saved(page, button) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFileSync(await download.path(), 'utf8');
}

/** Great circle on a sphere whose minute is one nautical mile. */
function onSphere(latitude1, longitude1, latitude2, longitude2) {
  const [a, b, d] = [latitude1, latitude2, longitude2 - longitude1].map(
    (degrees) => (degrees * Math.PI) / 180,
  );
  const angle = Math.acos(Math.sin(a) * Math.sin(b) + Math.cos(a) * Math.cos(b) * Math.cos(d));
  const bearing = Math.atan2(
    Math.sin(d) * Math.cos(b),
    Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b) * Math.cos(d),
  );
  return { miles: ((angle * 180) / Math.PI) * 60, bearing: ((bearing * 180) / Math.PI + 360) % 360 };
}
