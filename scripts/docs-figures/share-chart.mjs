import { box, heading, label, line, n, picture } from './svg.mjs';

const [LEFT, TOP, WIDTH, HEIGHT] = [56, 48, 540, 260];

/**
 * Shares of calls received against decibels. A curve is `{ points: [{ at, share }], colour, dash, name }`;
 * marks are single places, named once below.
 */
export function shareChart({ id, title, description, range, unit, curves, marks = [], marksName = '' }) {
  const [least, most] = range;
  const x = (decibels) => LEFT + (WIDTH * (decibels - least)) / (most - least);
  const y = (share) => TOP + HEIGHT * (1 - share);
  const lines = [heading(title), box(LEFT, TOP, WIDTH, HEIGHT, { tint: 0.02, radius: 0, stroke: 1 })];
  for (let share = 0; share <= 1; share += 0.25) {
    lines.push(
      line(
        [
          [LEFT, y(share)],
          [LEFT + WIDTH, y(share)],
        ],
        { width: 0.6, opacity: 0.4 },
      ),
      label(LEFT - 8, y(share) + 5, `${100 * share} %`, { anchor: 'end' }),
    );
  }
  for (let decibels = least; decibels <= most; decibels += 2) {
    lines.push(
      line(
        [
          [x(decibels), TOP],
          [x(decibels), TOP + HEIGHT],
        ],
        { width: 0.6, opacity: 0.25 },
      ),
      label(x(decibels), TOP + HEIGHT + 18, decibels, { anchor: 'middle' }),
    );
  }
  for (const { points, colour, dash } of curves)
    lines.push(
      line(
        points.map(({ at, share }) => [x(at), y(share)]),
        { width: 2, colour, dash },
      ),
    );
  for (const { at, share } of marks) lines.push(mark(x(at), y(share)));
  lines.push(label(LEFT + WIDTH / 2, TOP + HEIGHT + 40, unit, { anchor: 'middle' }));
  const legend = TOP + HEIGHT + 62;
  curves.forEach(({ colour, dash, name }, index) => {
    const [left, top] = [LEFT + (index % 2) * 290, legend + Math.floor(index / 2) * 24];
    lines.push(
      line(
        [
          [left, top],
          [left + 30, top],
        ],
        { width: 2, colour, dash },
      ),
      label(left + 38, top + 5, name),
    );
  });
  if (marks.length > 0) lines.push(mark(LEFT + 15, legend + 48), label(LEFT + 38, legend + 53, marksName));
  return picture({ id, width: 640, height: legend + 64, title, description }, lines);
}

function mark(x, y) {
  return `<circle cx="${n(x)}" cy="${n(y)}" r="4.5" fill="none" stroke="currentColor" stroke-width="2"/>`;
}
