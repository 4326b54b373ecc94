import { workingChannels } from 'seahail/channel';
import { accent, heading, label, line, picture } from './svg.mjs';

/** The two parts of the band, kHz, and where they are drawn; nothing lies between them. */
const PARTS = [
  { from: 156_000, to: 157_450, left: 128, right: 470 },
  { from: 160_600, to: 162_050, left: 498, right: 840 },
];
const ROW = 54;
const TOP = 74;

/** Each channel of two plans at its frequencies, and below them those that serve a talk under both. */
export function channelBand({ id, title, plans, purpose }) {
  const x = (kHz) => {
    const part = PARTS.find(({ from, to }) => kHz >= from && kHz <= to);
    return part && part.left + ((kHz - part.from) / (part.to - part.from)) * (part.right - part.left);
  };
  const stroke = (kHz, y, look) =>
    line(
      [
        [x(kHz), y],
        [x(kHz), y + 18],
      ],
      look,
    );
  const lines = [heading(title)];
  plans.forEach(({ name, channels }, index) => {
    const y = TOP + index * 2 * ROW;
    lines.push(label(0, y + 4, name, { weight: 600 }));
    for (const [side, row] of [
      ['shipKHz', 0],
      ['coastKHz', 1],
    ]) {
      const top = y + 12 + row * 38;
      lines.push(label(0, top + 14, row === 0 ? 'ships transmit' : 'coast transmits', { slant: true }));
      for (const channel of channels) {
        const kHz = channel[side];
        if (kHz === null || x(kHz) === undefined) continue;
        lines.push(stroke(kHz, top, { width: channel.service === 'voice' ? 1.3 : 2.6, opacity: 0.75 }));
      }
    }
  });
  const { ranked } = workingChannels(plans, purpose);
  const y = TOP + plans.length * 2 * ROW;
  lines.push(label(0, y + 26, 'both may use', { weight: 600 }));
  // Names in two lines by turns, as neighbours are 25 kHz apart.
  const byFrequency = [...ranked].sort((a, b) => a.channels[0].shipKHz - b.channels[0].shipKHz);
  let last = -Infinity;
  let level = 0;
  for (const { designator, channels } of byFrequency) {
    const at = x(channels[0].shipKHz);
    level = at - last < 17 ? level + 1 : 0;
    last = at;
    lines.push(stroke(channels[0].shipKHz, y + 12, { width: 2, colour: accent }));
    lines.push(label(at, y + 46 + (level % 4) * 15, designator, { anchor: 'middle', size: 12 }));
  }
  const axis = y + 112;
  for (const { from, to, left, right } of PARTS) {
    lines.push(
      line([
        [left, axis],
        [right, axis],
      ]),
    );
    for (let kHz = Math.ceil(from / 500) * 500; kHz <= to; kHz += 500) {
      lines.push(
        line([
          [x(kHz), axis],
          [x(kHz), axis + 5],
        ]),
        label(x(kHz), axis + 20, (kHz / 1000).toFixed(1), { anchor: 'middle', size: 12 }),
      );
    }
  }
  lines.push(label(0, axis + 20, 'MHz'));
  const description = `Channels of ${plans.map(({ name }) => name).join(' and ')} by the frequencies ships and coast stations transmit on; heavy strokes carry no talk. For ${purpose.replaceAll('-', ' ')} talk both may use ${byFrequency.map(({ designator }) => designator).join(', ')}.`;
  return picture({ id, width: 850, height: axis + 30, title, description }, lines);
}
