import { requireOptions } from '../result/internal.ts';
import { requireCoordinates } from './coordinates.ts';
import { fixedText, utcText, type Waypoint } from './waypoint.ts';
import { xmlText } from './xml-text.ts';

/**
 * Writes waypoints as a GPX 1.1 document.
 *
 * Elements come in the order of the schema; `id` and `properties` become `extensions`. Longitude 180 is written -180,
 * as GPX has no 180. A control
 * character or half of a surrogate pair, which XML cannot hold, becomes U+FFFD.
 *
 * @param waypoints - the places
 * @param options - `creator`: name of the program that makes the file
 * @returns the document, UTF-8 when stored
 * @throws RangeError when coordinates or a time are out of range
 * @throws TypeError when a waypoint has no name, or anything but text where text belongs
 *
 * Source: GPX 1.1 schema, http://www.topografix.com/GPX/1/1/gpx.xsd.
 *
 * @see {@link toGeoJson}
 * @see {@link toGeoUri}
 *
 * @example
 * ```ts
 * import { toGpx } from 'seahail/position';
 *
 * const tern = { position: { latitude: 56.3388333, longitude: -6.502 }, name: 'Tern of Ardle' };
 * console.log(toGpx([tern], { creator: 'example' }).split('\n')[2]); // <wpt lat="56.338833" lon="-6.502000">
 * ```
 */
export function toGpx(waypoints: readonly Waypoint[], options: { readonly creator: string }): string {
  requireOptions('toGpx', options, ['creator'], 'creator');
  const root = `<gpx version="1.1" creator="${xmlText(options.creator)}" xmlns="http://www.topografix.com/GPX/1/1">`;
  return `${['<?xml version="1.0" encoding="UTF-8"?>', root, ...waypoints.map(wpt), '</gpx>'].join('\n')}\n`;
}

function wpt(waypoint: Waypoint): string {
  const { latitude, longitude } = requireCoordinates(waypoint.position);
  const east = fixedText(longitude);
  const lon = Number(east) === 180 ? fixedText(-180) : east;
  const elements = [
    element('time', waypoint.time == null ? undefined : utcText(waypoint.time)),
    `  <name>${xmlText(waypoint.name)}</name>`,
    element('desc', waypoint.description),
    element('src', waypoint.source),
    element('type', waypoint.type),
    extensions(waypoint),
  ];
  return [
    `<wpt lat="${fixedText(latitude)}" lon="${lon}">`,
    ...elements.filter((line) => line !== ''),
    '</wpt>',
  ].join('\n');
}

/** What GPX has no element for, in a namespace of our own: the schema lets other namespaces stand here. */
function extensions({ id, properties = {} }: Waypoint): string {
  const all = Object.entries({ ...(id == null ? {} : { id }), ...properties });
  const lines = all.map(
    ([name, value]) =>
      `    <property xmlns="${NAMESPACE}" name="${xmlText(name)}">${xmlText(String(value))}</property>`,
  );
  return lines.length === 0 ? '' : ['  <extensions>', ...lines, '  </extensions>'].join('\n');
}

const NAMESPACE = 'urn:seahail:gpx:1';

function element(name: string, content: string | undefined): string {
  return content === undefined ? '' : `  <${name}>${xmlText(content)}</${name}>`;
}
