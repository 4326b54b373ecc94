import { box, colours, label, line, picture } from './svg.mjs';

/** The rooms of the library around the call. */
export function rooms({ id, title }) {
  const room = (x, y, name, what, colour, width = 150) => [
    box(x, y, width, 54, { colour, tint: 0.14, radius: 6 }),
    label(x + width / 2, y + 24, name, { anchor: 'middle', size: 15, weight: 600 }),
    label(x + width / 2, y + 43, what, { anchor: 'middle', size: 12 }),
  ];
  const way = (...points) => line(points, { arrow: true, width: 1.5 });
  const lines = [
    label(0, 20, title, { size: 16, weight: 600 }),
    ...room(10, 50, 'identity', 'who', colours.leaf),
    ...room(10, 128, 'channel', 'where to talk', colours.leaf),
    ...room(10, 206, 'position', 'where she is', colours.leaf),
    ...room(250, 128, 'call', 'what is said', colours.violet),
    ...room(250, 20, 'sentence', 'on the wire', colours.sea),
    ...room(490, 128, 'burst', 'symbols and bits', colours.sea),
    ...room(490, 236, 'audio', 'sound', colours.sea),
    ...room(250, 266, 'station', 'what to do next', colours.land),
    way([160, 77], [205, 77], [205, 146], [250, 146]),
    way([160, 155], [250, 155]),
    way([160, 233], [205, 233], [205, 164], [250, 164]),
    way([315, 74], [315, 128]),
    way([335, 128], [335, 74]),
    way([315, 182], [315, 266]),
    way([335, 266], [335, 182]),
    way([400, 147], [490, 147]),
    way([490, 163], [400, 163]),
    way([555, 182], [555, 236]),
    way([575, 236], [575, 182]),
  ];
  const description =
    'Identity, channel and position lead into the call. The call goes to the sentence and back, to the burst and back, and to the station and back. The burst goes to audio and back.';
  return picture({ id, width: 650, height: 330, title, description }, lines);
}
