import { accent, box, heading, label, line, picture } from './svg.mjs';

/** The rooms of the library around the call. */
export function rooms({ id, title }) {
  const room = (x, y, name, what, look = {}) => [
    box(x, y, 150, 54, look),
    label(x + 75, y + 24, name, { anchor: 'middle', size: 16 }),
    label(x + 75, y + 43, what, { anchor: 'middle', size: 13, slant: true }),
  ];
  const way = (...points) => line(points, { arrow: true, width: 1.5 });
  const lines = [
    heading(title, { y: 20 }),
    ...room(10, 50, 'identity', 'who'),
    ...room(10, 128, 'channel', 'where to talk'),
    ...room(10, 206, 'position', 'where she is'),
    ...room(250, 128, 'call', 'what is said', { colour: accent, stroke: 2 }),
    ...room(250, 20, 'sentence', 'on the wire'),
    ...room(490, 128, 'burst', 'symbols and bits'),
    ...room(490, 236, 'audio', 'sound'),
    ...room(250, 266, 'station', 'what to do next'),
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
