import { box, heading, label, line, n, picture, text } from './svg.mjs';

const ROW = 19;
const GAP = 34;
const LANE = 11;
const TOP = 46;
/** Letters of a label at the side. */
const MOST = 34;

const named = (name) => name.replaceAll('-', ' ');

/**
 * A procedure of the station as a diagram: phases in a column, ways forward on the right, ways back on the left.
 * Every way leaves a phase on a row of its own, labelled with its events, runs in a lane and enters below.
 */
export function stateDiagram({ procedure, title, phases, transitions }) {
  const order = ['new', ...phases.map(({ phase }) => phase)];
  const ways = gather(transitions, order);
  const places = place(order, ways);
  const right = assignLanes(
    ways.filter((way) => way.side === 'right' && way.to !== null),
    places,
  );
  const left = assignLanes(
    ways.filter((way) => way.side === 'left'),
    places,
  );
  const boxWidth = 28 + 8.4 * Math.max(...order.map(({ length }) => length));
  const words = { right: wordsWidth(ways, 'right'), left: wordsWidth(ways, 'left') };
  const boxX = 12 + left * LANE + words.left;
  const width = boxX + boxWidth + words.right + right * LANE + 12;
  const bottom = Math.max(...[...places.values()].map(({ y, height }) => y + height));
  const lines = [heading(title, { x: boxX + boxWidth / 2, y: 24, anchor: 'middle' })];
  for (const way of ways) lines.push(...drawn(way, places, [boxX, boxX + boxWidth], words));
  for (const [phase, { y, height }] of places) {
    lines.push(
      box(boxX, y, boxWidth, height, phase === 'new' ? { dash: '4 3' } : {}),
      label(boxX + boxWidth / 2, y + height / 2 + 5, phase === 'new' ? 'begins' : named(phase), {
        anchor: 'middle',
        size: 15,
      }),
    );
  }
  const description = `${phases.length} phases: ${phases.map(({ phase, meaning }) => `${named(phase)}, ${meaning}`).join('; ')}. Every way between them stands in the table of transitions below.`;
  return picture({ id: `station-${procedure}`, width, height: bottom + 24, title, description }, lines);
}

/** One way for all rows between the same two phases; `to` is null where it ends or stays. */
function gather(transitions, order) {
  const ways = new Map();
  for (const { from, to, on } of transitions) {
    const key = `${from}>${to}`;
    const way = ways.get(key) ?? { from, to, events: [] };
    if (!way.events.includes(named(on))) way.events.push(named(on));
    ways.set(key, way);
  }
  return [...ways.values()].map(({ from, to, events }) => {
    const step = order.indexOf(to) - order.indexOf(from);
    if (to === 'ended') return { from, to: null, events, side: 'right', sign: 'end' };
    if (step === 0) return { from, to: null, events, side: 'right', sign: 'stay' };
    if (step === 1) return { from, to, events, side: 'down' };
    return { from, to, events, side: step > 0 ? 'right' : 'left' };
  });
}

/** Gives each phase its height and each way its rows: ways out in order of their ends. */
function place(order, ways) {
  const places = new Map();
  let y = TOP;
  for (const phase of order) {
    let height = 34;
    for (const side of ['right', 'left']) {
      const rank = (way) => (way.to === null ? order.length : order.indexOf(way.to));
      const out = ways
        .filter((way) => way.from === phase && way.side === side)
        .sort((a, b) => rank(a) - rank(b));
      const into = ways
        .filter((way) => way.to === phase && way.side === side)
        .sort((a, b) => order.indexOf(b.from) - order.indexOf(a.from));
      const rows = side === 'right' ? [...into, ...out] : [...out, ...into];
      rows.forEach((way, row) => {
        way[way.from === phase ? 'outY' : 'inY'] = y + 16 + row * ROW;
      });
      height = Math.max(height, rows.length * ROW + 10);
    }
    places.set(phase, { y, height });
    y += height + GAP;
  }
  return places;
}

/** Ways that do not overlap share a lane; the shortest run nearest to the boxes. */
function assignLanes(ways) {
  const lanes = [];
  const span = ({ outY, inY }) => [Math.min(outY, inY), Math.max(outY, inY)];
  const length = (way) => span(way)[1] - span(way)[0];
  for (const way of [...ways].sort((a, b) => length(a) - length(b))) {
    const [from, to] = span(way);
    let lane = lanes.findIndex((taken) => taken.every(([start, end]) => to < start - 4 || from > end + 4));
    if (lane < 0) lane = lanes.push([]) - 1;
    lanes[lane].push([from, to]);
    way.lane = lane;
  }
  return lanes.length;
}

function drawn(way, places, [boxX, boxEnd], room) {
  const words = summary(way.events, way.side === 'down' ? 44 : MOST);
  const note = (x, y, anchor) =>
    `<g><title>${text(way.events.join(', '))}</title>${label(x, y, words, { anchor, size: 11.5 })}</g>`;
  if (way.side === 'down') {
    const { y, height } = places.get(way.from);
    const x = boxX + 24;
    const end = places.get(way.to).y;
    return [
      line(
        [
          [x, y + height],
          [x, end],
        ],
        { arrow: true },
      ),
      note(x + 10, (y + height + end) / 2 + 4, 'start'),
    ];
  }
  const out = way.side === 'right' ? 1 : -1;
  const edge = way.side === 'right' ? boxEnd : boxX;
  const caption = note(edge + 8 * out, way.outY - 4, out > 0 ? 'start' : 'end');
  if (way.to === null) {
    const x = edge + 14;
    const sign =
      way.sign === 'end'
        ? `<circle cx="${n(x)}" cy="${n(way.outY)}" r="4" fill="currentColor"/>`
        : `<circle cx="${n(x)}" cy="${n(way.outY)}" r="3.5" fill="none" stroke="currentColor" stroke-width="1.2"/>`;
    return [
      line([
        [edge, way.outY],
        [x - 4, way.outY],
      ]),
      sign,
      note(x + 10, way.outY + 4, 'start'),
    ];
  }
  const lane = edge + out * (room[way.side] + way.lane * LANE);
  const points = [
    [edge, way.outY],
    [lane, way.outY],
    [lane, way.inY],
    [edge, way.inY],
  ];
  return [line(points, { arrow: true, opacity: 0.8 }), caption];
}

/** Room for the labels on one side, at about six units a letter. */
function wordsWidth(ways, side) {
  const lengths = ways.filter((way) => way.side === side).map(({ events }) => summary(events, MOST).length);
  return lengths.length === 0 ? 0 : 32 + 6 * Math.max(...lengths);
}

function summary(events, most) {
  let words = events[0];
  let shown = 1;
  while (shown < events.length && `${words}, ${events[shown]}`.length <= most)
    words += `, ${events[shown++]}`;
  return shown === events.length ? words : `${words} +${events.length - shown}`;
}
