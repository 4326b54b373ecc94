import { compositions, fieldLengths } from 'seahail/call';
import { accent, box, heading, label, line, picture } from './svg.mjs';

const CELL = 38;
const HEIGHT = 30;
const SLOTS_IN_A_BAND = 16;
const BAND = 126;
const LEFT = 46;
const TOP = 64;
/** A character of the first pass comes again two slots later in the second. */
const LAG = 2;

/** Name in the legend, and how its words are drawn: no two names alike. */
const looks = {
  phasing: ['phasing', { tint: 0, dash: '3 3' }],
  format: ['whom: format specifier', { tint: 0, hatch: '|' }],
  address: ['whom: address', { tint: 0, hatch: '/' }],
  category: ['how important', { tint: 0.18 }],
  self: ['who calls', { tint: 0, hatch: '\\' }],
  telecommand1: ['what is asked for', { tint: 0, hatch: '-' }],
  telecommand2: ['what is asked for', { tint: 0, hatch: '-' }],
  receive: ['where to talk: none named', { tint: 0 }],
  transmit: ['where to talk: none named', { tint: 0 }],
  end: ['end of sequence', { tint: 0, hatch: '/\\' }],
  check: ['error check', { tint: 0.18, stroke: 2.6 }],
};

/** The words of a call in order of transmission: first pass above, second pass half a step later below. */
export function callStream({ id, call, burst, title }) {
  const fields = compositions
    .find(({ kind }) => kind === call.kind)
    .order.flatMap((field) => Array(fieldLengths[field]).fill(field));
  const message = [...fields, 'end', 'check', 'end', 'end'];
  const first = [...Array(6).fill('phasing'), ...message];
  const second = [...Array(8).fill('phasing'), ...message.slice(0, -LAG)];
  const place = (slot, pass) => ({
    x: LEFT + (slot % SLOTS_IN_A_BAND) * CELL + (pass * CELL) / 2,
    y: TOP + Math.floor(slot / SLOTS_IN_A_BAND) * BAND + pass * (HEIGHT + 18),
  });
  const bands = Math.ceil(first.length / SLOTS_IN_A_BAND);
  const lines = [heading(title)];
  for (let band = 0; band < bands; band++) {
    const y = TOP + band * BAND;
    lines.push(label(0, y + 20, 'first'), label(0, y + HEIGHT + 18 + 20, 'again'));
  }
  first.forEach((role, slot) => {
    lines.push(...word(place(slot, 0), burst.stream[2 * slot], looks[role][1]));
    lines.push(...word(place(slot, 1), burst.stream[2 * slot + 1], looks[second[slot]][1]));
  });
  const shown = first.indexOf('address');
  const [from, to] = [place(shown, 0), place(shown + LAG, 1)];
  lines.push(
    line(
      [
        [from.x + CELL / 2, from.y + HEIGHT],
        [to.x + CELL / 2 - 3, to.y - 1],
      ],
      { arrow: true, width: 1.8, colour: accent },
    ),
  );
  const legend = [...new Map([...first].map((role) => looks[role])).entries()];
  const legendTop = TOP + bands * BAND;
  legend.forEach(([name, look], index) => {
    const [x, y] = [LEFT + (index % 3) * 214, legendTop + Math.floor(index / 3) * 26];
    lines.push(box(x, y, 26, 16, look), label(x + 34, y + 13, name));
  });
  const height = legendTop + Math.ceil(legend.length / 3) * 26 + 4;
  const description = `${burst.stream.length} words in two interleaved passes: ${burst.stream.join(' ')}. Every character comes twice, the second time five words after the first; an arrow shows it for the first symbol of the address.`;
  return picture({ id, width: LEFT + (SLOTS_IN_A_BAND + 0.5) * CELL + 4, height, title, description }, lines);
}

function word({ x, y }, symbol, look) {
  return [
    box(x + 1, y, CELL - 2, HEIGHT, look),
    label(x + CELL / 2, y + 20, String(symbol).padStart(2, '0'), {
      anchor: 'middle',
      size: 14,
      halo: look.hatch !== undefined,
    }),
  ];
}
