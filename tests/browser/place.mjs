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
