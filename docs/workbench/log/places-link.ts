import { h } from '../frame/dom.ts';
import { inventedName } from '../frame/names.ts';
import type { PlaceEntry } from './messages.ts';

/** A link to the drawing of the latest place of each station, seen from the latest own position. */
export function placesLink(
  places: readonly PlaceEntry[],
  own: string,
  last: number | null,
): HTMLElement | null {
  if (places.length === 0) return null;
  const stations = places
    .map(({ station, distress, text, time }) => {
      const name = station === null ? 'An unnamed vessel' : (inventedName(station) ?? station);
      return `${distress ? '!' : ''}${name}; ${text}; ${time}`;
    })
    .join('\n');
  const now = last === null ? '' : new Date(last).toISOString();
  const address = new URLSearchParams({
    stations,
    ...(own !== '' && { own }),
    ...(now !== '' && { day: now.slice(0, 10), now: now.slice(11, 16) }),
  });
  return h(
    'p',
    {},
    h(
      'a',
      { href: `place.html#${address.toString()}` },
      `Draw where they are: ${places.length === 1 ? 'one station' : `${places.length} stations`}`,
    ),
    ', as last reported.',
  );
}
