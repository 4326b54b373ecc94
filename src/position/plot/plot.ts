import type { CodedText } from '../../result/index.ts';
import { type Bounds, boundsText } from '../bounds.ts';
import { type Coordinates, requireCoordinates } from '../coordinates.ts';
import { formatPosition } from '../format-position.ts';
import { middleOf } from '../geo-box.ts';
import { requirePositive } from '../require-number.ts';
import { plotWords } from '../texts.ts';
import { MILE } from '../units.ts';
import { xmlText } from '../xml-text.ts';
import {
  hatch,
  miles,
  northMark,
  outlineOf,
  type Point,
  pointAt,
  pointOf,
  rings,
  type Scale,
  scaleBar,
  scaleFor,
  svgNumber,
  svgPoint,
} from './scale.ts';
import { plotStyle } from './style.ts';

type PlottedStation = Parameters<typeof plotBearings>[1][number];

const WIDTH = 640;
const RADIUS = 262;
const MIDDLE: Point = [WIDTH / 2, 350];
const LEGEND_TOP = 664;
const LINE = 19;
/** Characters that fit on a line of the legend. */
const LINE_LENGTH = 88;

/**
 * Draws where stations may be, seen from own ship in the middle: rings in miles, the box that each position leaves, the
 * water she may have run since, the sector of bearings and the least and greatest range, a bearing line where a bearing
 * means something, north up, a scale, and all of it in words below and for screen readers.
 *
 * North is up and true. The picture shows reports, which may be old: it is no radar picture and not for avoiding
 * collisions.
 *
 * @param own - own position, the same that the bounds were worked from
 * @param stations - what to draw, in the order of their numbers
 * @param options - language, title, own name, reach
 * @returns a standalone SVG document without outside references; the same input gives the same text
 * @throws RangeError when own position or reach is out of range, or the id is no plain name
 *
 *
 * @example
 * ```ts
 * import { plotBearings } from 'seahail/position/plot';
 *
 * const merrow = { latitude: 56.3667, longitude: -6.4 };
 * const svg = plotBearings(merrow, [{ name: 'Pellinore', bounds: null }], { ownName: 'Merrow' });
 * console.log(svg.match(/<title id="plot-title">(.*)<\/title>/)?.[1]); // Reported positions
 * ```
 */
export function plotBearings(
  own: Coordinates,
  stations: readonly {
    readonly name: string;
    /** What `boundsFrom` found from the same own position; `null` when she gave no position. */
    readonly bounds: Bounds | null;
    /** Drawn heavier and named first in words: a vessel in distress. */
    readonly distress?: boolean | undefined;
  }[],
  options: {
    /**
     * Says the texts of the picture, in English unless stated:
     * `(text) => translate(text, german).text` with `seahail/locale` for another language.
     */
    readonly say?: ((text: CodedText) => string) | undefined;
    /** Heading and accessible name; `Reported positions` unless stated. */
    readonly title?: string | undefined;
    /** Name of own ship; `own ship` unless stated. */
    readonly ownName?: string | undefined;
    /** Least range that the picture shows, metres; all stations fit in unless stated. */
    readonly reach?: number | undefined;
    /** Id of the picture and beginning of the ids inside, so that several can stand on one page; `plot` unless stated. */
    readonly id?: string | undefined;
  } = {},
): string {
  requireCoordinates(own);
  const { say = ({ message }) => message, id = 'plot' } = options;
  const {
    title = say(plotWords('position-plot-title', {})),
    ownName = say(plotWords('position-plot-own-ship', {})),
  } = options;
  const farthest = Math.max(0, ...stations.map(({ bounds }) => bounds?.greatest ?? 0));
  const reach = options.reach ?? (farthest === 0 ? MILE : farthest);
  requirePositive('reach', reach);
  if (!/^[a-z][a-z0-9-]*$/i.test(id)) {
    throw new RangeError('id: expected a letter, then letters, digits and hyphens');
  }
  const scale = scaleFor(reach, MIDDLE, RADIUS);
  const middle = say(plotWords('position-plot-middle', { name: ownName, position: formatPosition(own) }));
  const north = say(plotWords('position-plot-rings', { miles: miles(scale.step) }));
  const words = [
    ...stations.map((station, i) => `${i + 1}. ${say(wordsOf(station, scale))}.`),
    `${say(plotWords('position-plot-caution', {}))}.`,
  ];
  const legend = [middle, ...words].map((text) => wrapped(text, LINE_LENGTH));
  const height = LEGEND_TOP + legend.flat().length * LINE + legend.length * 6 + 14;
  const tags: Point[] = [MIDDLE];
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" id="${id}" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${xmlText(title)}</title>`,
    `<desc id="${id}-desc">${xmlText([`${middle}.`, `${north}.`, ...words].join(' '))}</desc>`,
    `<style>${plotStyle(id)}</style>`,
    `<defs>${hatch(id)}<clipPath id="${id}-edge"><circle cx="${MIDDLE[0]}" cy="${MIDDLE[1]}" r="${RADIUS}"/></clipPath></defs>`,
    `<rect class="paper" width="${WIDTH}" height="${height}"/>`,
    `<text x="24" y="38" font-size="21">${xmlText(shortened(title, 52))}</text>`,
    ...rings(scale),
    `<g clip-path="url(#${id}-edge)">`,
    ...stations.flatMap(({ bounds, distress }) =>
      bounds === null ? [] : areaOf(scale, own, bounds, id, distress === true),
    ),
    '</g>',
    ownMark(ownName),
    ...stations.flatMap((station, i) => tagOf(scale, own, station, { number: i + 1, taken: tags })),
    northMark(scale),
    scaleBar(scale, [24, LEGEND_TOP - 34]),
    ...legendText(legend),
    '</svg>',
  ].join('\n')}\n`;
}

function wordsOf({ name, bounds, distress }: PlottedStation, scale: Scale): CodedText {
  const place = bounds === null ? plotWords('position-plot-no-position', {}) : boundsText(bounds);
  const where =
    bounds !== null && bounds.least > scale.reach
      ? plotWords('position-plot-outside', { where: place })
      : place;
  const code = distress ? 'position-plot-distress' : 'position-plot-station';
  return plotWords(code, { name: shortened(name, 48), where });
}

function areaOf(scale: Scale, own: Coordinates, bounds: Bounds, id: string, distress: boolean): string[] {
  const outline = `M${outlineOf(scale, own, bounds.box).map(svgPoint).join('L')}Z`;
  const lines: string[] = [];
  const margin = ((bounds.movement ?? 0) / scale.reach) * scale.radius;
  if (margin > 0) lines.push(`<path class="may" d="${outline}" stroke-width="${svgNumber(2 * margin)}"/>`);
  lines.push(`<path class="box${distress ? ' alarm' : ''}" d="${outline}" fill="url(#${id}-hatch)"/>`);
  if (bounds.sector === null) return lines;
  const { from, to } = bounds.sector;
  const [near, far] = [bounds.least, bounds.greatest];
  const arc = (metres: number, sweep: 0 | 1, end: number) => {
    const radius = svgNumber((metres / scale.reach) * scale.radius);
    return `A${radius},${radius} 0 0 ${sweep} ${svgPoint(pointAt(scale, metres, end))}`;
  };
  const sides = [pointAt(scale, near, from), pointAt(scale, near, to), pointAt(scale, far, to)].map(svgPoint);
  lines.push(
    `<path class="sector" d="M${sides[0]}${arc(near, 1, to)}L${sides[2]}${arc(far, 0, from)}Z"/>`,
    `<path class="bearing" d="M${svgPoint(scale.middle)}L${svgPoint(pointOf(scale, own, middleOf(bounds.box)))}"/>`,
  );
  return lines;
}

/** The station's number beside the middle of her box, on the first side without another number. */
function tagOf(
  scale: Scale,
  own: Coordinates,
  { bounds, distress }: PlottedStation,
  { number, taken }: { readonly number: number; readonly taken: Point[] },
): string[] {
  if (bounds === null) return [];
  const at = pointOf(scale, own, middleOf(bounds.box));
  if (Math.hypot(at[0] - scale.middle[0], at[1] - scale.middle[1]) > scale.radius) return [];
  const outward = (Math.atan2(at[1] - scale.middle[1], at[0] - scale.middle[0]) * 180) / Math.PI;
  const spots = [0, 60, -60, 120, -120, 180].flatMap((turn) =>
    [20, 44].map((away): Point => {
      const angle = ((outward + turn) * Math.PI) / 180;
      return [at[0] + away * Math.cos(angle), at[1] + away * Math.sin(angle)];
    }),
  );
  const free = (spot: Point) =>
    taken.every((other) => Math.hypot(spot[0] - other[0], spot[1] - other[1]) > 22);
  const [x, y] = spots.find(free) ?? spots[0] ?? at;
  taken.push([x, y]);
  return [
    `<g${distress ? ' class="urgent"' : ''}>`,
    `<path class="rule" d="M${svgPoint([at[0] - 4, at[1]])}h8M${svgPoint([at[0], at[1] - 4])}v8"/>`,
    `<rect class="tag" x="${svgNumber(x - 10)}" y="${svgNumber(y - 10)}" width="20" height="20" rx="3"/>`,
    `<text x="${svgNumber(x)}" y="${svgNumber(y + 5)}" font-size="14" text-anchor="middle">${number}</text>`,
    '</g>',
  ];
}

function ownMark(name: string): string {
  const [x, y] = MIDDLE;
  const label = `<text class="halo" x="${x + 10}" y="${y + 18}" font-size="13">${xmlText(shortened(name, 24))}</text>`;
  return `<path class="solid" d="M${x},${y - 7}L${x + 5},${y + 6}H${x - 5}Z"/>${label}`;
}

function legendText(legend: readonly (readonly string[])[]): string[] {
  const out: string[] = [];
  let y = LEGEND_TOP + 10;
  for (const lines of legend) {
    for (const line of lines) {
      out.push(`<text x="24" y="${y}" font-size="14">${xmlText(line)}</text>`);
      y += LINE;
    }
    y += 6;
  }
  return out;
}

/** Lines of at most so many characters, broken at blanks; a longer word is cut. */
function wrapped(text: string, length: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > length) {
      if (line !== '') lines.push(line);
      line = shortened(word, length);
    } else {
      line = longer;
    }
  }
  lines.push(line);
  return lines;
}

function shortened(text: string, length: number): string {
  const characters = [...text];
  return characters.length <= length ? text : `${characters.slice(0, length - 1).join('')}…`;
}
