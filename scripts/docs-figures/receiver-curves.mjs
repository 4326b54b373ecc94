import { box, colours, label, line, n, picture } from './svg.mjs';

const [LEFT, TOP, WIDTH, HEIGHT] = [56, 48, 540, 260];
const [LEAST, MOST] = [-2, 14];

/** How often a whole call is received, against the strength of the signal, as measured. */
export function receiverCurves({ id, title, success }) {
  const x = (decibels) => LEFT + (WIDTH * (decibels - LEAST)) / (MOST - LEAST);
  const y = (share) => TOP + HEIGHT * (1 - share);
  const { characters22, characters30, trialsPerPoint } = success;
  const curves = [
    [characters22.receiver, colours.sea, '', 'this receiver, 22 characters'],
    [characters30.receiver, colours.sea, '6 4', 'this receiver, 30 characters'],
    [characters22.classical, colours.land, '', 'tone by tone and word by word, 22'],
    [characters30.classical, colours.land, '6 4', 'tone by tone and word by word, 30'],
  ];
  const lines = [
    label(0, 22, title, { size: 16, weight: 600 }),
    box(LEFT, TOP, WIDTH, HEIGHT, { tint: 0.02, radius: 0, stroke: 1 }),
  ];
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
  for (let decibels = LEAST; decibels <= MOST; decibels += 2) {
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
  for (const [curve, colour, dash] of curves)
    lines.push(
      line(
        curve.map(({ at, share }) => [x(at), y(share)]),
        { width: 2, colour, dash },
      ),
    );
  for (const { ideal } of [characters22, characters30]) {
    for (const [at, share] of [
      [ideal.limit[0], 0.5],
      [ideal.limit[1], 0.99],
    ])
      lines.push(
        `<circle cx="${n(x(at))}" cy="${n(y(share))}" r="4.5" fill="none" stroke="${colours.alarm}" stroke-width="2"/>`,
      );
  }
  lines.push(
    label(LEFT + WIDTH / 2, TOP + HEIGHT + 40, 'energy of a bit over noise density, dB', {
      anchor: 'middle',
    }),
  );
  const legend = TOP + HEIGHT + 62;
  curves.forEach(([, colour, dash, name], index) => {
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
  lines.push(
    `<circle cx="${LEFT + 15}" cy="${legend + 48}" r="4.5" fill="none" stroke="${colours.alarm}" stroke-width="2"/>`,
    label(LEFT + 38, legend + 53, 'limit: a receiver that is told phase, instant and clock'),
  );
  const told = (name, { half, most, classicalHalf, classicalMost }) =>
    `${name}: half of all calls at ${half.toFixed(1)} dB and 99 per cent at ${most.toFixed(1)} dB, tone by tone at ${classicalHalf.toFixed(1)} and ${classicalMost.toFixed(1)} dB.`;
  const description = `Share of calls received right, clean or repaired, ${trialsPerPoint} bursts a point. ${told('22 characters', characters22)} ${told('30 characters', characters30)}`;
  return picture({ id, width: 640, height: legend + 64, title, description }, lines);
}
