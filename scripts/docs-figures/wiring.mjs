import { box, heading, label, line, picture } from './svg.mjs';

/** Radio, position receiver, AIS and display, over the serial line and over the network; the library beside either. */
export function wiring({ id, title }) {
  const thing = (x, y, name, what) => [
    box(x, y, 132, 50),
    label(x + 66, y + 22, name, { anchor: 'middle', size: 15 }),
    label(x + 66, y + 40, what, { anchor: 'middle', size: 12, slant: true }),
  ];
  const way = (...points) => line(points, { arrow: true, width: 1.6 });
  const lines = [
    heading(title),
    label(0, 56, 'Serial line, IEC 61162-1: one talker, a pair of wires each way', { weight: 600 }),
    ...thing(1, 70, 'position', 'GGA, RMC'),
    ...thing(252, 70, 'radio', 'DSC, DSE'),
    ...thing(504, 70, 'display', 'chart or list'),
    way([132, 95], [252, 95]),
    label(192, 88, 'own fix', { anchor: 'middle', size: 12, slant: true }),
    way([384, 95], [504, 95]),
    label(444, 88, 'calls', { anchor: 'middle', size: 12, slant: true }),
    label(0, 178, 'Network, IEC 61162-3: everybody hears everybody, 250 kbit/s', { weight: 600 }),
    ...thing(1, 192, 'position', 'PGN 129029'),
    ...thing(168, 192, 'radio', 'PGN 129808'),
    ...thing(336, 192, 'AIS', 'PGN 129038'),
    ...thing(504, 192, 'display', 'chart or list'),
    line(
      [
        [0, 276],
        [636, 276],
      ],
      { width: 4 },
    ),
    ...[66, 234, 402, 570].map((x) =>
      line(
        [
          [x, 242],
          [x, 276],
        ],
        { width: 1.6 },
      ),
    ),
    label(0, 322, 'seahail reads either, and a bridge carries across what the other can express', {
      slant: true,
    }),
  ];
  const description =
    'On the serial line the position receiver talks to the radio, which talks to the display in DSC and DSE sentences. On the network all four share one bus: position by PGN 129029, calls by PGN 129808, AIS by PGN 129038.';
  return picture({ id, width: 640, height: 334, title, description }, lines);
}
