import { requireCoordinates } from './coordinates.ts';
import { requireNotNegative } from './require-number.ts';
import { fixedText, utcText, type Waypoint } from './waypoint.ts';

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
