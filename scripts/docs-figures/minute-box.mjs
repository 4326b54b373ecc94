import { boxOf, centreOf, formatReportedPosition, rangeAndBearing } from 'seahail/position';
import { accent, box, heading, label, line, n, picture } from './svg.mjs';

const SCALE = 0.13;

/** What the digits of a position leave open: the box, the place the digits name, the middle. */
export function minuteBox({ id, position, title }) {
  const wide = boxOf(position, 'unknown');
  const cut = boxOf(position);
  const metres = (from, to) => rangeAndBearing(from, to).metres;
  const origin = { latitude: wide.north, longitude: wide.west };
  const across = (longitude) => 150 + SCALE * metres(origin, { latitude: wide.north, longitude });
  const down = (latitude) => 70 + SCALE * metres(origin, { latitude, longitude: wide.west });
  const frame = ({ north, south, west, east }) => [
    across(west),
    down(north),
    across(east) - across(west),
    down(south) - down(north),
  ];
  const [x, y, width, height] = frame(wide);
  const inner = frame(cut);
  // Digits are cut off, so the place they name is the corner nearest the equator and Greenwich.
  const named = {
    latitude: position.latitude.hemisphere === 'N' ? cut.south : cut.north,
    longitude: position.longitude.hemisphere === 'E' ? cut.west : cut.east,
  };
  const [corner, centre] = [named, centreOf(position)].map(({ latitude, longitude }) => [
    across(longitude),
    down(latitude),
  ]);
  const northward = metres(
    { latitude: cut.south, longitude: cut.west },
    { latitude: cut.north, longitude: cut.west },
  );
  const westward = metres(
    { latitude: cut.south, longitude: cut.west },
    { latitude: cut.south, longitude: cut.east },
  );
  const mark = ([markX, markY], look) => `<circle cx="${n(markX)}" cy="${n(markY)}" r="5" ${look}/>`;
  const right = x + width + 24;
  const lines = [
    heading(title),
    label(0, 44, formatReportedPosition(position)),
    `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" fill="none" stroke="currentColor" stroke-dasharray="5 4"/>`,
    box(...inner, { tint: 0, hatch: '/', radius: 0, stroke: 1.6 }),
    mark(corner, 'fill="var(--paper)" stroke="currentColor" stroke-width="2"'),
    mark(centre, `fill="${accent}" stroke="var(--paper)" stroke-width="2"`),
    line(
      [
        [right - 6, corner[1]],
        [corner[0] + 9, corner[1]],
      ],
      { arrow: true },
    ),
    label(right, corner[1] + 5, 'where the digits point: a corner'),
    line(
      [
        [right - 6, centre[1]],
        [centre[0] + 9, centre[1]],
      ],
      { arrow: true },
    ),
    label(right, centre[1] + 5, 'the middle: draw her here'),
    label(right, y + 16, 'dashed: should the set round'),
    label(right, y + 33, 'instead of cutting off'),
    label(inner[0] - 10, inner[1] + inner[3] / 2 + 5, `${Math.round(northward)} m`, { anchor: 'end' }),
    label(inner[0] + inner[2] / 2, y + height + 22, `${Math.round(westward)} m`, { anchor: 'middle' }),
  ];
  const description = `A position of whole minutes, ${formatReportedPosition(position)}, stands for a box ${Math.round(northward)} metres high and ${Math.round(westward)} metres wide, north and west of the place that its digits name.`;
  return picture({ id, width: right + 230, height: y + height + 36, title, description }, lines);
}
