import { formatPosition } from 'seahail/position';
import { byId } from '../frame/dom.ts';
import type { Finding } from '../frame/finding.ts';

/** The button that takes position and time from the device; the browser asks the person, and nothing leaves the page. */
export function bindDevice(finding: Finding): void {
  const button = byId<HTMLButtonElement>('device');
  const said = byId('device-said');
  // Some browsers have none, and none outside a secure page.
  if (!('geolocation' in navigator) || !window.isSecureContext) return;
  button.hidden = false;
  button.addEventListener('click', () => {
    said.textContent = 'Asking the device.';
    navigator.geolocation.getCurrentPosition(
      ({ coords, timestamp }) => {
        const day = new Date(timestamp).toISOString();
        finding.set({
          own: formatPosition(coords, { digits: 3 }),
          now: day.slice(11, 16),
          day: day.slice(0, 10),
        });
        said.textContent = `Position to within ${Math.ceil(coords.accuracy)} m, as the device says.`;
      },
      () => {
        said.textContent = 'The device gave no position. Type it instead.';
      },
      { enableHighAccuracy: true, timeout: 20_000 },
    );
  });
}
