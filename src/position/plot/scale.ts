import { type Coordinates, signedAngle } from '../coordinates.ts';
import { type GeoBox, widthOf } from '../geo-box.ts';
import { rangeAndBearing } from '../geodesic.ts';
import { MILE } from '../units.ts';

/** A point of the drawing, in its units, x to the right and y down. */
export type Point = readonly [x: number, y: number];

/** Turns ranges and bearings from own ship into points: every range and every bearing from the middle is true to scale. */
export interface Scale {
  readonly middle: Point;
  /** Radius of the drawing in its units. */
  readonly radius: number;
  /** Metres at the edge. */
  readonly reach: number;
  /** Miles from ring to ring. */
  readonly step: number;
}

/** A scale that shows at least so many metres, with three to five rings at round miles. */
export function scaleFor(metres: number, middle: Point, radius: number): Scale {
  const miles = Math.max(metres / MILE, 0.01);
  const decade = 10 ** Math.floor(Math.log10(miles / 2.5));
  const step = decade * ([1, 2, 5, 10].find((factor) => factor * decade * 5 >= miles) ?? 10);
  return { middle, radius, step, reach: Math.ceil(miles / step - 1e-9) * step * MILE };
}

/** Where a range and a bearing fall. */
export function pointAt(scale: Scale, metres: number, bearing: number): Point {
  const angle = (bearing * Math.PI) / 180;
  const length = (metres / scale.reach) * scale.radius;
  return [scale.middle[0] + length * Math.sin(angle), scale.middle[1] - length * Math.cos(angle)];
}

/** Where a place falls. */
export function pointOf(scale: Scale, own: Coordinates, place: Coordinates): Point {
  const { metres, bearing } = rangeAndBearing(own, place);
  return pointAt(scale, metres, bearing ?? 0);
}

/** The outline of a box, its edges in so many pieces. */
export function outlineOf(scale: Scale, own: Coordinates, box: GeoBox, pieces = 4): Point[] {
  const width = widthOf(box);
  const corners = [
    [0, 0],
    [0, 1],
    [1, 1],
    [1, 0],
    [0, 0],
  ] as const;
  const points: Point[] = [];
  for (let edge = 0; edge < 4; edge += 1) {
    const [from, to] = [corners[edge] ?? corners[0], corners[edge + 1] ?? corners[0]];
    for (let i = 0; i < pieces; i += 1) {
      const [x, y] = [from[0] + ((to[0] - from[0]) * i) / pieces, from[1] + ((to[1] - from[1]) * i) / pieces];
      const latitude = box.south + y * (box.north - box.south);
      points.push(pointOf(scale, own, { latitude, longitude: signedAngle(box.west + x * width) }));
    }
  }
  return points;
}

/** Coordinates as SVG writes them, to a tenth. */
export function svgPoint([x, y]: Point): string {
  return `${svgNumber(x)},${svgNumber(y)}`;
}

/** A number to a tenth, without a minus at zero. */
export function svgNumber(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}

/** Rings at round miles with their ranges, and bearings every 30 degrees at the edge. */
export function rings(scale: Scale): string[] {
  const count = Math.round(scale.reach / MILE / scale.step);
  const lines: string[] = [];
  for (let i = 1; i <= count; i += 1) {
    const radius = (scale.radius * i) / count;
    const [x, y] = [scale.middle[0] + radius * Math.SQRT1_2, scale.middle[1] + radius * Math.SQRT1_2];
    lines.push(
      `<circle class="ring" cx="${scale.middle[0]}" cy="${scale.middle[1]}" r="${svgNumber(radius)}"/>`,
      `<text class="soft" x="${svgNumber(x + 4)}" y="${svgNumber(y + 12)}" font-size="12">${miles(i * scale.step)}</text>`,
    );
  }
  for (let bearing = 30; bearing < 360; bearing += 30) {
    const [from, to] = [pointAt(scale, scale.reach, bearing), pointAt(scale, scale.reach * 1.02, bearing)];
    const [x, y] = pointAt(scale, scale.reach * 1.07, bearing);
    const text = String(bearing).padStart(3, '0');
    lines.push(
      `<path class="tick" d="M${svgPoint(from)}L${svgPoint(to)}"/>`,
      `<text class="soft" x="${svgNumber(x)}" y="${svgNumber(y + 4)}" font-size="12" text-anchor="middle">${text}°</text>`,
    );
  }
  return lines;
}

export function northMark({ middle, radius }: Scale): string {
  const y = middle[1] - radius;
  return `<path class="solid" d="M${middle[0]},${y - 15}l5,15h-10z"/><text x="${middle[0]}" y="${y - 19}" font-size="14" text-anchor="middle">N</text>`;
}

/** A bar as long as from ring to ring, in miles and kilometres. */
export function scaleBar(scale: Scale, [x, y]: Point): string {
  const length = ((scale.step * MILE) / scale.reach) * scale.radius;
  const text = `${miles(scale.step)} (${Number(((scale.step * MILE) / 1000).toPrecision(3))} km)`;
  return `<path class="rule" d="M${x},${y - 4}v8M${x},${y}h${svgNumber(length)}m0,-4v8"/><text class="soft" x="${x}" y="${y + 19}" font-size="12">${text}</text>`;
}

export function hatch(id: string): string {
  return `<pattern id="${id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0,0V6"/></pattern>`;
}

/** A number of miles for people. */
export function miles(value: number): string {
  return `${Number(value.toPrecision(6))} M`;
}
