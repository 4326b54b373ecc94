import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { german as inGerman } from '../../src/locale/de.ts';
import { translate } from '../../src/locale/index.ts';
import { boundsFrom, destination, toReportedPosition } from '../../src/position/index.ts';
import { plotBearings } from '../../src/position/plot/index.ts';
import type { CodedText } from '../../src/result/index.ts';

const merrow = { latitude: 56.3667, longitude: -6.4 };
const now = Date.UTC(2026, 5, 1, 14, 4);

const station = (
  name: string,
  bearing: number,
  miles: number,
  change: Partial<Parameters<typeof plotBearings>[1][number]> = {},
): Parameters<typeof plotBearings>[1][number] => ({
  name,
  bounds: boundsFrom(merrow, toReportedPosition(destination(merrow, bearing, miles * 1852)), {
    at: now - 840_000,
    now,
    speed: 4,
  }),
  ...change,
});
const count = (svg: string, what: string) => svg.split(what).length - 1;

/** Fails unless every element is closed in order and every attribute is quoted. */
function wellFormed(svg: string): void {
  const open: string[] = [];
  const rest = svg.replace(
    /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g,
    (_, end, name, __, single) => {
      if (end === '/') expect(open.pop()).toBe(name);
      else if (single !== '/') open.push(name);
      return '';
    },
  );
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>]/);
}

describe('plotBearings', () => {
  const stations = [
    station('Tern of Ardle', 230, 6),
    station('Pellinore', 20, 3),
    station('Bounty of Lorn', 110, 5, { distress: true }),
    station('Kittiwake II', 100, 0.4),
    { name: 'Skerra Coastguard', bounds: null },
  ];
  const svg = plotBearings(merrow, stations, { ownName: 'Merrow', title: 'Skerra Sound, 14:04 UTC' });

  it('is a standalone document that tells the same in words', () => {
    wellFormed(svg);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" id="plot" viewBox="0 0 640 \d+"/);
    expect(svg).toContain('role="img" aria-labelledby="plot-title plot-desc"');
    expect(svg).toContain('<title id="plot-title">Skerra Sound, 14:04 UTC</title>');
  });

  it('says in words what it draws, and last the caution, in the language that says them', () => {
    const said: CodedText[] = [];
    const drawn = plotBearings(merrow, stations, {
      ownName: 'Merrow',
      say: (text) => {
        said.push(text);
        return `<${text.code}>`;
      },
    });
    const where = (...codes: string[]) => ({
      code: 'position-bounds',
      params: { parts: codes.map((code) => expect.objectContaining({ code })) },
    });
    const sector = ['position-bounds-between', 'position-bounds-sector', 'position-bounds-minutes'];
    expect(said).toMatchObject([
      { code: 'position-plot-title' },
      {
        code: 'position-plot-middle',
        params: { name: 'Merrow', position: '56°22.00′ N 006°24.00′ W' },
      },
      { code: 'position-plot-rings', params: { miles: '2 M' } },
      { code: 'position-plot-station', params: { name: 'Tern of Ardle', where: where(...sector) } },
      { code: 'position-plot-station', params: { name: 'Pellinore', where: where(...sector) } },
      { code: 'position-plot-distress', params: { name: 'Bounty of Lorn', where: where(...sector) } },
      {
        code: 'position-plot-station',
        params: {
          name: 'Kittiwake II',
          where: where('position-bounds-within', 'position-bounds-no-bearing', 'position-bounds-minutes'),
        },
      },
      {
        code: 'position-plot-station',
        params: { name: 'Skerra Coastguard', where: { code: 'position-plot-no-position' } },
      },
      { code: 'position-plot-caution' },
    ]);
    wellFormed(drawn);
    // Once for screen readers, once for those who see the picture.
    expect(count(drawn, '&lt;position-plot-distress&gt;.')).toBe(2);
    expect(count(drawn, '&lt;position-plot-caution&gt;.')).toBe(2);
    const german = plotBearings(merrow, stations, { say: (text) => translate(text, inGerman).text });
    expect(german).toContain('<title id="plot-title">Gemeldete Positionen</title>');
    expect(german).toMatch(/3\. In Not: Bounty of Lorn: zwischen \d\.\d und \d\.\d Seemeilen entfernt/);
  });

  it('draws a box for each position, and a bearing and a sector only where they mean something', () => {
    expect(count(svg, 'url(#plot-hatch)')).toBe(4);
    expect(count(svg, 'class="may"')).toBe(4);
    expect(count(svg, 'class="bearing"')).toBe(3);
    expect(count(svg, 'class="sector"')).toBe(3);
    expect(count(svg, 'class="tag"')).toBe(4);
    expect(count(svg, 'class="urgent"')).toBe(1);
  });

  it('has what a picture of bearings needs: rings in miles, north, a scale, day, night and print', () => {
    expect(count(svg, 'class="ring"')).toBeGreaterThanOrEqual(3);
    for (const text of ['>2 M<', '>4 M<', '>N<', '>2 M (3.7 km)<', '>090°<']) expect(svg).toContain(text);
    expect(svg).toContain('@media (prefers-color-scheme:dark)');
    expect(svg).toContain('@media print');
    expect(svg).not.toMatch(/href|url\(h|@import|<script/);
  });

  it('is true to scale', () => {
    // One exact station due east, 4 miles away, in a picture of 4 miles: its cross stands at the edge.
    const exact = toReportedPosition(destination(merrow, 90, 4 * 1852), { enhanced: true });
    const bounds = boundsFrom(merrow, exact, { at: now, now });
    const drawn = plotBearings(merrow, [{ name: 'Tern of Ardle', bounds }], { reach: 5 * 1852 });
    const line = /class="bearing" d="M320,350L([\d.]+),([\d.]+)"/.exec(drawn);
    expect(Number(line?.[1])).toBeCloseTo(320 + (262 * 4) / 5, 0);
    expect(Number(line?.[2])).toBeCloseTo(350, 0);
  });

  it('gives the same text for the same input, and keeps pictures on one page apart', () => {
    expect(plotBearings(merrow, stations)).toBe(plotBearings(merrow, stations));
    const other = plotBearings(merrow, stations, { id: 'second' });
    expect(other).not.toMatch(/plot-|#plot/);
    expect(other).toContain('aria-labelledby="second-title second-desc"');
    expect(() => plotBearings(merrow, [], { id: '1"><script>' })).toThrow(RangeError);
    expect(() => plotBearings(merrow, [], { reach: 0 })).toThrow(RangeError);
    expect(() => plotBearings({ latitude: 91, longitude: 0 }, [])).toThrow(RangeError);
  });

  it('keeps each line of the legend short, and cuts a word that is longer than a line', () => {
    for (const ownName of ['x'.repeat(300), 'Merrow '.repeat(60), '🌊'.repeat(300)]) {
      const drawn = plotBearings(merrow, [{ name: 'y'.repeat(300), bounds: null }], { ownName });
      const lines = [...drawn.matchAll(/<text x="24" y="\d+" font-size="14">([^<]*)</g)].map(
        ([, line = '']) => line,
      );
      expect(lines.length).toBeGreaterThan(3);
      for (const line of lines) expect([...line].length).toBeLessThanOrEqual(88);
    }
  });

  it('says so when a station lies outside the picture', () => {
    const params: unknown[] = [];
    const near = plotBearings(merrow, [station('Tern of Ardle', 230, 30)], {
      reach: 5 * 1852,
      say: (text) => {
        params.push(text.params['where']);
        return text.message;
      },
    });
    expect(params).toContainEqual(expect.objectContaining({ code: 'position-plot-outside' }));
    expect(count(near, 'class="tag"')).toBe(0);
  });

  it('stays well-formed and finite with any names and places', () => {
    const text = fc.string({ unit: 'binary', maxLength: 60 });
    const place = fc.record({
      latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(
        place,
        fc.array(fc.tuple(text, fc.option(place), fc.boolean()), { maxLength: 5 }),
        text,
        (own, others, title) => {
          const drawn = plotBearings(
            own,
            others.map(([name, at, distress]) => ({
              name,
              distress,
              bounds: at && boundsFrom(own, toReportedPosition(at), { at: now, now, speed: 5 }),
            })),
            { title, ownName: title },
          );
          wellFormed(drawn);
          expect(drawn.replace(/<(?:title|desc|text|style)[^>]*>[^<]*/g, '')).not.toMatch(
            /NaN|Infinity|undefined|e[+-]\d/,
          );
          // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there.
          expect(drawn).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\ufffe\uffff]|\p{Cs}/u);
        },
      ),
    );
  });
});
