import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toGeoJson, toGeoUri, toGpx, type Waypoint } from '../../src/position/index.ts';

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});
const text = fc.string({ unit: 'binary', maxLength: 20 });
const waypoint: fc.Arbitrary<Waypoint> = fc.record(
  {
    position: place,
    name: text,
    time: fc.integer({ min: 0, max: 4e12 }),
    description: text,
    source: text,
    type: text,
    uncertainty: fc.double({ min: 0, max: 1e5, noNaN: true }),
  },
  { requiredKeys: ['position', 'name'] },
);

/** Undoes the five named references and the decimal ones. */
const unescaped = (xml: string) =>
  xml
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, '&');

describe('toGpx', () => {
  it('writes a document that GPX 1.1 allows', () => {
    const tern: Waypoint = {
      position: { latitude: 56 + 20.33 / 60, longitude: -(6 + 30.12 / 60) },
      name: 'Tern of Ardle',
      time: Date.UTC(2026, 5, 1, 14, 4),
      description: 'She said: "come & see" <here>',
      source: 'DSC position reply',
      type: 'vessel',
      uncertainty: 0.2,
    };
    expect(toGpx([tern], { creator: 'Skerra "log"' })).toBe(`<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="Skerra &quot;log&quot;" xmlns="http://www.topografix.com/GPX/1/1">
<wpt lat="56.338833" lon="-6.502000">
  <time>2026-06-01T14:04:00Z</time>
  <name>Tern of Ardle</name>
  <desc>She said: &quot;come &amp; see&quot; &lt;here&gt;</desc>
  <src>DSC position reply</src>
  <type>vessel</type>
</wpt>
</gpx>
`);
  });

  // GPX 1.1 schema: wptType is a sequence, longitudeType is -180 <= value < 180.
  it('keeps to order, ranges and characters, whatever the waypoints hold', () => {
    const order = [
      'ele',
      'time',
      'magvar',
      'geoidheight',
      'name',
      'cmt',
      'desc',
      'src',
      'link',
      'sym',
      'type',
      'fix',
    ];
    fc.assert(
      fc.property(fc.array(waypoint, { maxLength: 4 }), text, (waypoints, creator) => {
        const xml = toGpx(waypoints, { creator });
        // XML 1.0 production Char, and no raw line end but our own.
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there.
        expect(xml).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\ufffe\uffff]/);
        expect(xml).not.toMatch(/\p{Cs}/u);
        const found = [...xml.matchAll(/<wpt lat="([^"]*)" lon="([^"]*)">\n([\s\S]*?)<\/wpt>/g)];
        expect(found.length).toBe(waypoints.length);
        for (const [i, [, lat, lon, inner]] of found.entries()) {
          expect(lat).toMatch(/^-?\d{1,2}\.\d{6}$/);
          expect(lon).toMatch(/^-?\d{1,3}\.\d{6}$/);
          expect(Number(lon)).toBeGreaterThanOrEqual(-180);
          expect(Number(lon)).toBeLessThan(180);
          const elements = [...(inner as string).matchAll(/^ {2}<(\w+)>([^<>]*)<\/\1>$/gm)];
          const places = elements.map(([, name]) => order.indexOf(name as string));
          expect(places).toEqual([...places].sort((a, b) => a - b));
          const name = elements.find((element) => element[1] === 'name')?.[2] as string;
          const kept = (waypoints[i] as Waypoint).name.replace(
            // biome-ignore lint/suspicious/noControlCharactersInRegex: these cannot stand in XML.
            /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]|\p{Cs}/gu,
            '\ufffd',
          );
          expect(unescaped(name)).toBe(kept);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has no longitude 180 and no minus at zero', () => {
    const at = (latitude: number, longitude: number) =>
      toGpx([{ position: { latitude, longitude }, name: 'x' }], { creator: 'x' });
    expect(at(0, 180)).toContain('lon="-180.000000"');
    expect(at(0, 179.9999999)).toContain('lon="-180.000000"');
    expect(at(-1e-9, -1e-9)).toContain('lat="0.000000" lon="0.000000"');
  });

  it('throws on what no file can hold', () => {
    const position = { latitude: 0, longitude: 0 };
    expect(() => toGpx([{ position: { latitude: 91, longitude: 0 }, name: '' }], { creator: '' })).toThrow(
      RangeError,
    );
    expect(() => toGpx([{ position, name: '', time: Number.NaN }], { creator: '' })).toThrow(RangeError);
    for (const bad of [{}, { name: null }, { name: 5 }, { name: '', description: 5 }])
      expect(() => toGpx([{ position, ...bad } as unknown as Waypoint], { creator: '' })).toThrow(
        'expected text, got a value of type',
      );
    expect(() => toGpx([{ position, name: '', time: Date.UTC(12000, 1) }], { creator: '' })).toThrow(
      RangeError,
    );
  });
});

describe('toGeoJson', () => {
  // RFC 7946: §3.3 a feature collection, §3.2 properties present, §3.1.1 longitude first.
  it('keeps to structure and ranges', () => {
    fc.assert(
      fc.property(fc.array(waypoint, { maxLength: 4 }), (waypoints) => {
        const document = toGeoJson(waypoints);
        expect(JSON.parse(JSON.stringify(document))).toEqual(document);
        expect(Object.keys(document)).toEqual(['type', 'features']);
        for (const [i, feature] of document.features.entries()) {
          const [longitude, latitude] = feature.geometry.coordinates;
          const { position, name } = waypoints[i] as Waypoint;
          expect(Math.abs(longitude - position.longitude)).toBeLessThanOrEqual(5.1e-7);
          expect(Math.abs(latitude - position.latitude)).toBeLessThanOrEqual(5.1e-7);
          expect(feature.geometry.type).toBe('Point');
          expect(feature.properties.name).toBe(name);
        }
      }),
    );
  });

  it('writes what is known, and only that', () => {
    const position = { latitude: 56.5, longitude: -6.5 };
    expect(toGeoJson([{ position, name: 'Tern of Ardle', time: 0, uncertainty: 1100 }]).features[0]).toEqual({
      type: 'Feature',
      geometry: { type: 'Point', coordinates: [-6.5, 56.5] },
      properties: { name: 'Tern of Ardle', time: '1970-01-01T00:00:00Z', uncertainty: 1100 },
    });
  });
});

describe('toGeoUri', () => {
  // RFC 5870 §3.3: "geo:" latitude "," longitude, then parameters; no plus, no exponent.
  it('follows the grammar, whatever the place', () => {
    fc.assert(
      fc.property(
        place,
        fc.option(fc.double({ min: 0, max: 1e7, noNaN: true }), { nil: undefined }),
        (position, uncertainty) => {
          const uri = toGeoUri(position, uncertainty === undefined ? {} : { uncertainty });
          const match = /^geo:(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)(?:;u=(\d+(?:\.\d+)?))?$/.exec(uri);
          expect(match, uri).not.toBeNull();
          expect(Math.abs(Number(match?.[1]) - position.latitude)).toBeLessThanOrEqual(5.1e-7);
          if (uncertainty !== undefined) expect(Number(match?.[3])).toBeGreaterThanOrEqual(uncertainty);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('writes zero longitude at the poles and whole numbers without a point', () => {
    expect(toGeoUri({ latitude: 90, longitude: 120 })).toBe('geo:90,0');
    expect(toGeoUri({ latitude: 10, longitude: -20 })).toBe('geo:10,-20');
    expect(toGeoUri({ latitude: 0, longitude: 100 }, { uncertainty: 0.11 })).toBe('geo:0,100;u=0.2');
    expect(toGeoUri({ latitude: 0, longitude: 0 }, { uncertainty: 1e300 })).toBe('geo:0,0;u=20003932');
    expect(() => toGeoUri({ latitude: 0, longitude: 0 }, { uncertainty: -1 })).toThrow(RangeError);
  });
});

describe('the id and the properties of a waypoint', () => {
  const tern: Waypoint = {
    position: { latitude: 56.3388333, longitude: -6.502 },
    name: 'Tern of Ardle',
    id: '232999142',
    properties: { 'call kind': 'position-reply', fresh: true, name: 'not this one', note: '<&"' },
  };

  // RFC 7946 §3.2: an identifier of a feature is its member `id`, a string or a number.
  it('are the id and the properties of a feature of GeoJSON, whose own names come first', () => {
    expect(toGeoJson([tern]).features[0]).toMatchObject({
      id: '232999142',
      properties: { 'call kind': 'position-reply', fresh: true, name: 'Tern of Ardle' },
    });
    expect(toGeoJson([{ ...tern, id: undefined }]).features[0]).not.toHaveProperty('id');
  });

  // GPX 1.1 schema: wptType ends with `extensions`, which holds elements of other namespaces.
  it('are the last element of a GPX waypoint, in a namespace of our own', () => {
    const xml = toGpx([tern], { creator: 'x' });
    expect(xml).toMatch(/<\/extensions>\n<\/wpt>/);
    expect(xml).toContain('name="id">232999142</property>');
    expect(xml).toContain('name="note">&lt;&amp;&quot;</property>');
    expect(xml.match(/<property xmlns="(?!http:\/\/www\.topografix)[^"]+"/g)).toHaveLength(5);
    expect(toGpx([{ position: tern.position, name: 'x' }], { creator: 'x' })).not.toContain('extensions');
  });
});
