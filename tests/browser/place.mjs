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
      assert.match(gpx, /<desc>reported .*, within 1,?\d{3} m<\/desc>/);
      const geojson = JSON.parse(await saved(page, 'Save as GeoJSON'));
      assert.deepEqual(geojson.features[0].geometry.coordinates, [-6.541667, 56.308333]);
      assert.match(await saved(page, 'Save the drawing'), /^<svg/);
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
      await page.getByRole('heading', { name: 'Bounty of Lorn, in distress' }).waitFor();
      await assertText(page.locator('#issues'), /Line 2:/);
      const address = page.url();
      await page.reload();
      assert.equal(page.url(), address);
      await page.getByRole('heading', { name: 'Bounty of Lorn, in distress' }).waitFor();
    },
  },
  {
    name: 'place: what cannot be read is said at its blank',
    async run({ page, open }) {
      await open('workbench/place.html#now=25:99&day=2026-02-30');
      await assertText(page.locator('#in-short'), /^Something cannot be read\.$/);
      await assertText(page.locator('#issues'), /“it is”: '25:99' is no time of day/);
      // February has 28 days in 2026, and 29 at most.
      await assertText(page.locator('#issues'), /“on”: '2026-02-30' is no day of the calendar/);
      await page.locator('#now').fill('');
      await assertText(page.locator('#in-short'), /^Something is missing\.$/);
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
      await page.getByRole('heading', { name: 'Bounty of Lorn, in distress' }).waitFor();
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
