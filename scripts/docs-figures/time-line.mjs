import { simulate } from 'seahail/simulation';
import { accent, heading, label, line, picture } from './svg.mjs';

const LANES = [112, 560];
const TOP = 74;
const ROW = 27;
const WIDTH = 650;

/**
 * Two stations and what passes between them, from a simulation of the library itself: one row a moment, time downwards
 * and not to scale. Arrows are calls on channel 70; words beside a line are what that station does, and what its
 * operator does where a line of the script has words for it.
 */
export function timeLine({ id, title, stations, script, durationSeconds }) {
  const start = Date.UTC(2026, 7, 14, 18, 0);
  const { moments } = simulate(stations, script, { seed: 3, start, durationSeconds, bitErrorRate: 0 });
  const names = stations.map(({ name }) => name);
  const acts = script.map(({ afterSeconds, station, words }) => ({
    at: start + afterSeconds * 1000,
    lane: names.indexOf(station),
    text: words,
    isCall: false,
  }));
  const rows = [...acts, ...rowsOf(moments, names)].sort((a, b) => a.at - b.at);
  const height = TOP + rows.length * ROW + 14;
  const lines = [heading(title)];
  names.forEach((name, lane) => {
    lines.push(label(LANES[lane], 54, name, { anchor: 'middle', weight: 600 }));
    lines.push(
      line(
        [
          [LANES[lane], 62],
          [LANES[lane], height - 6],
        ],
        { width: 1.6 },
      ),
    );
  });
  rows.forEach(({ at, lane, text, isCall }, index) => {
    const y = TOP + index * ROW + 14;
    const clock = new Date(at).toISOString().slice(11, 19);
    if (rows[index - 1] === undefined || clockOf(rows[index - 1]) !== clock)
      lines.push(label(0, y + 4, clock, { size: 12 }));
    const [from, to] = lane === 0 ? LANES : [...LANES].reverse();
    if (!isCall) {
      lines.push(label(from + (lane === 0 ? 9 : -9), y + 4, text, { anchor: lane === 0 ? 'start' : 'end' }));
      return;
    }
    lines.push(label((from + to) / 2, y - 1, text, { anchor: 'middle', slant: true }));
    lines.push(
      line(
        [
          [from, y + 6],
          [to, y + 6],
        ],
        { arrow: true, width: 1.7, colour: accent },
      ),
    );
  });
  const description = rows
    .map((row) => `${clockOf(row)} ${names[row.lane]}: ${row.isCall ? 'sends ' : ''}${row.text}.`)
    .join(' ');
  return picture({ id, width: WIDTH, height, title, description }, lines);
}

function clockOf({ at }) {
  return new Date(at).toISOString().slice(11, 19);
}

/** What is worth a row, said once. */
function rowsOf(moments, names) {
  const rows = [];
  for (const { at, station, effect } of moments) {
    const lane = names.indexOf(station);
    const text = textOf(effect);
    const last = rows.at(-1);
    if (text === null || (last?.text === text && last.lane === lane)) continue;
    rows.push({ at, lane, text, isCall: effect.kind === 'send' });
  }
  return rows;
}

function textOf(effect) {
  switch (effect.kind) {
    case 'send':
      return [
        effect.call.kind.replaceAll('-', ' '),
        effect.call.channel ? `channel ${effect.call.channel}` : '',
        effect.times > 1 ? `${effect.times} times in a row` : '',
      ]
        .filter(Boolean)
        .join(', ');
    case 'tune':
      return `changes to channel ${effect.channel}`;
    case 'speak':
      return `speaks on channel ${effect.channel}`;
    case 'sound':
      return `sounds the alarm: ${effect.alarm}`;
    case 'ask':
      return 'asks its operator';
    case 'stop-sending':
      return 'stops transmitting';
    default:
      return null;
  }
}
