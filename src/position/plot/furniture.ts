import { MILE } from '../units.ts';
import { type Point, pointAt, type Scale, svgNumber, svgPoint } from './scale.ts';

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

/** North, up. */
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

/** The pattern that fills a box. */
export function hatch(id: string): string {
  return `<pattern id="${id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0,0V6"/></pattern>`;
}

/** A number of miles for people. */
export function miles(value: number): string {
  return `${Number(value.toPrecision(6))} M`;
}
