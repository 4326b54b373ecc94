import { requireOptions, want } from '../result/internal.ts';
import { type Coordinates, requireCoordinates } from './coordinates.ts';
import { requireFinite, requireNotNegative } from './require-number.ts';
import { xmlText } from './xml-text.ts';

/** A place to be handed on to another program: what {@link toGpx} and {@link toGeoJson} write. */
export interface Waypoint {
  readonly position: Coordinates;
  /** Short name, for example the ship's name or identity. */
  readonly name: string;
  /** When the position was true, epoch milliseconds; `null` when that is not known, as calls have it. */
  readonly time?: number | null | undefined;
  /** For people: what the call was. */
  readonly description?: string | undefined;
  /** Where the position came from, for example `DSC position reply`. */
  readonly source?: string | undefined;
  /** Kind of waypoint, one word. */
  readonly type?: string | undefined;
  /** The position is good to within so many metres. GPX has no element for it; GeoJSON carries it as a property. */
  readonly uncertainty?: number | undefined;
  /** What a map knows it by, so that a later report moves it instead of adding another: for example nine digits. */
  readonly id?: string | null | undefined;
  /** Anything else that an app wants to find again: `properties` of GeoJSON, `extensions` of GPX. */
  readonly properties?: Readonly<Record<string, string | number | boolean | null>> | undefined;
}

/** Decimals of a degree in files: 0.11 m, finer than the step of any call. */
const FILE_DIGITS = 6;

/** UTC in the form that GPX and RFC 3339 share, without a fraction when there is none. */
function utcText(instant: number): string {
  requireFinite('time', instant);
  const date = new Date(instant);
  const year = date.getUTCFullYear();
  if (!(year >= 1 && year <= 9999)) {
    throw new RangeError(`time: expected an instant of the years 1 to 9999, got ${instant}`);
  }
  return date.toISOString().replace('.000Z', 'Z');
}

/** A number as files want it: no exponent, no minus at zero. */
function fixedText(value: number): string {
  const text = value.toFixed(FILE_DIGITS);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** A GeoJSON document: media type `application/geo+json`. */
export interface PointCollection {
  readonly type: 'FeatureCollection';
  readonly features: readonly {
    readonly type: 'Feature';
    /** The `id` of the waypoint, where it has one. */
    readonly id?: string;
    readonly geometry: {
      readonly type: 'Point';
      /** Longitude first, then latitude. */
      readonly coordinates: readonly [number, number];
    };
    readonly properties: Readonly<Record<string, string | number | boolean | null>>;
  }[];
}

/**
 * Waypoints as GeoJSON: plain data, ready for `JSON.stringify`.
 *
 * @param waypoints - the places
 * @returns a feature collection; name, time (RFC 3339), description, source, type and uncertainty in metres are properties, beside `properties` of its own
 * @throws RangeError when coordinates or a time are out of range, or an uncertainty is negative
 *
 * Source: RFC 7946 (longitude first, WGS 84, §3.1.1, §4).
 *
 * @see {@link toGpx}
 * @see {@link toGeoUri}
 *
 * @example
 * ```ts
 * import { toGeoJson } from 'seahail/position';
 *
 * const tern = { position: { latitude: 56.3388333, longitude: -6.502 }, name: 'Tern of Ardle' };
 * console.log(JSON.stringify(toGeoJson([tern]).features[0]?.geometry)); // {"type":"Point","coordinates":[-6.502,56.338833]}
 * ```
 */
export function toGeoJson(waypoints: readonly Waypoint[]): PointCollection {
  want('toGeoJson', 'a list of waypoints', waypoints, 'map');
  return { type: 'FeatureCollection', features: waypoints.map(feature) };
}

function feature(waypoint: Waypoint): PointCollection['features'][number] {
  const { latitude, longitude } = requireCoordinates(waypoint.position);
  const { name, time, description, source, type, uncertainty, id, properties } = waypoint;
  if (uncertainty !== undefined) requireNotNegative('uncertainty', uncertainty);
  return {
    type: 'Feature',
    ...(id == null ? {} : { id }),
    geometry: { type: 'Point', coordinates: [Number(fixedText(longitude)), Number(fixedText(latitude))] },
    properties: {
      ...properties,
      name,
      ...(time == null ? {} : { time: utcText(time) }),
      ...(description === undefined ? {} : { description }),
      ...(source === undefined ? {} : { source }),
      ...(type === undefined ? {} : { type }),
      ...(uncertainty === undefined ? {} : { uncertainty }),
    },
  };
}

/**
 * A position as a `geo:` URI, for a link or a code to scan.
 *
 * @param coordinates - the place
 * @param options - `uncertainty`: the position is good to within so many metres; rounded up to a tenth
 * @returns the URI, latitude first, WGS 84
 * @throws RangeError when the coordinates are out of range or the uncertainty is negative
 *
 * Source: RFC 5870 §3.3, §3.4 (180 and -180 are the same; at a pole the longitude is written 0).
 *
 * @see {@link toGeoJson}
 * @see {@link uncertaintyOf}
 *
 * @example
 * ```ts
 * import { toGeoUri } from 'seahail/position';
 *
 * console.log(toGeoUri({ latitude: 56.3388333, longitude: -6.502 })); // geo:56.338833,-6.502
 * console.log(toGeoUri({ latitude: 56.3416667, longitude: -6.508333 }, { uncertainty: 1100 })); // geo:56.341667,-6.508333;u=1100
 * ```
 */
export function toGeoUri(
  coordinates: Coordinates,
  options: { readonly uncertainty?: number | undefined } = {},
): string {
  const { latitude, longitude } = requireCoordinates(coordinates);
  const { uncertainty } = options;
  const pole = Math.abs(Number(fixedText(latitude))) === 90;
  const place = `geo:${short(fixedText(latitude))},${pole ? '0' : short(fixedText(longitude))}`;
  if (uncertainty === undefined) return place;
  requireNotNegative('uncertainty', uncertainty);
  // Half round the Earth is as uncertain as a place can be, and keeps the number free of an exponent.
  const metres = Math.min(uncertainty, 20_003_932);
  return `${place};u=${short((Math.ceil(metres * 10) / 10).toFixed(1))}`;
}

function short(text: string): string {
  return text.replace(/\.?0+$/, '');
}

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
  want('toGpx', 'a list of waypoints', waypoints, 'map');
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
