import type { findFaults } from '../../src/sentence/index.ts';
import { bitsOf, sentencesOf } from '../oracle/sentence-ais.ts';
import { line } from './arbitrary.ts';

interface Ship {
  mmsi: string;
  /** Ten-thousandths of a minute, north and east positive. */
  north: number;
  east: number;
}

const DEGREE = 600_000;
const OWN = '232999871';
const COAST = '002329990';

/** Numbers from 0 up to but not including 1, repeatable (xorshift, 32 bits). */
function randomFrom(seed: number): () => number {
  let state = Math.imul(seed, 2_654_435_761) | 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

const padded = (value: number, width: number): string => String(value).padStart(width, '0');

/** An invented log without a fault: own position, AIS and every kind of call around a place anywhere. */
export function cleanLog(seed: number): {
  text: string;
  options: NonNullable<Parameters<typeof findFaults>[1]>;
} {
  const random = randomFrom(seed);
  const between = (least: number, most: number): number => Math.floor(least + random() * (most - least + 1));
  const pick = <T>(list: readonly T[]): T => list[between(0, list.length - 1)] as T;
  const own = { north: between(-80 * DEGREE, 80 * DEGREE), east: between(-179 * DEGREE, 179 * DEGREE) };
  const ships: Ship[] = Array.from({ length: between(1, 6) }, (_, index) => ({
    mmsi: `23${between(2, 5)}${padded(between(0, 99_999), 5)}${index}`,
    north: own.north + between(-10 * 10_000, 10 * 10_000),
    east: own.east + between(-10 * 10_000, 10 * 10_000),
  }));
  let now = Date.UTC(2026, 0, 1) + between(0, 364 * 86_400) * 1000;
  const lines: string[] = [];

  const utc = (): string => {
    const date = new Date(now);
    return [date.getUTCHours(), date.getUTCMinutes(), date.getUTCSeconds()]
      .map((part) => padded(part, 2))
      .join('');
  };
  const wire = ({ north, east }: Omit<Ship, 'mmsi'>): string => {
    const axis = (units: number, width: number): string => {
      const size = Math.abs(units);
      const minutes = padded(Math.floor((size % DEGREE) / 10_000), 2);
      return `${padded(Math.floor(size / DEGREE), width)}${minutes}.${padded(size % 10_000, 4)}`;
    };
    return `${axis(north, 2)},${north < 0 ? 'S' : 'N'},${axis(east, 3)},${east < 0 ? 'W' : 'E'}`;
  };
  const digits = ({ north, east }: Ship): [whole: string, fraction: string] => {
    const axis = (units: number, width: number): string =>
      padded(Math.floor(Math.abs(units) / DEGREE), width) +
      padded(Math.floor((Math.abs(units) % DEGREE) / 10_000), 2);
    const quadrant = (north < 0 ? 2 : 0) + (east < 0 ? 1 : 0);
    const fraction = padded(Math.abs(north) % 10_000, 4) + padded(Math.abs(east) % 10_000, 4);
    return [`${quadrant}${axis(north, 2)}${axis(east, 3)}`, fraction];
  };
  const dsc = (...fields: string[]): void => {
    lines.push(line(`CDDSC,${fields.join(',')}`));
  };
  const withPosition = (ship: Ship, write: (whole: string, time: string) => void): void => {
    const [whole, fraction] = digits(ship);
    if (fraction === '00000000') return;
    const taken = new Date(now - between(0, 15) * 60_000);
    write(whole, padded(taken.getUTCHours(), 2) + padded(taken.getUTCMinutes(), 2));
    lines.push(line(`CDDSE,1,1,A,${ship.mmsi}0,00,${fraction}`));
  };
  const ownPosition = (): void => {
    const date = new Date(now);
    const day =
      padded(date.getUTCDate(), 2) +
      padded(date.getUTCMonth() + 1, 2) +
      padded(date.getUTCFullYear() % 100, 2);
    lines.push(line(`GPRMC,${utc()}.00,A,${wire(own)},5.2,184.0,${day},1.5,W,A`));
    if (random() < 0.5) lines.push(line(`GPGGA,${utc()}.00,${wire(own)},1,09,0.9,3.0,M,50.1,M,,`));
  };
  const ais = (ship: Ship): void => {
    const values = {
      message: 1,
      mmsi: Number(ship.mmsi),
      longitude: ship.east,
      latitude: ship.north,
      speed: 0,
    };
    for (const body of sentencesOf(bitsOf('1', values))) lines.push(line(body, '!'));
    const named = { message: 5, mmsi: Number(ship.mmsi), name: `INVENTED ${between(1, 99)}` };
    if (random() < 0.3) for (const body of sentencesOf(bitsOf('5', named))) lines.push(line(body, '!'));
  };

  ownPosition();
  const reported = new Set<string>();
  for (let step = between(3, 25); step > 0; step -= 1) {
    now += between(1, 120) * 1000;
    ownPosition();
    const ship = pick(ships);
    const station = `${ship.mmsi}0`;
    switch (between(0, 9)) {
      case 0:
        ais(ship);
        break;
      case 1:
        dsc(
          '20',
          station,
          pick(['00', '08', '10']),
          '00',
          '26',
          pick(['900072', '900077', '']),
          '',
          '',
          '',
          pick(['R', 'B']),
          '',
        );
        break;
      case 2:
        dsc('20', station, '08', pick(['18', '21']), '26', '', '', '', '', 'R', '');
        break;
      case 3:
        dsc('14', station, '00', '00', '26', '900077', '', '', '', 'S', '');
        break;
      case 4:
        dsc('16', `${COAST}0`, pick(['08', '10']), '00', '26', '900016', '', '', '', 'S', '');
        break;
      case 5:
        dsc('20', station, '00', '04', pick(['02', '06', '08']), '', '', '', '', 'B', '');
        break;
      case 6:
        if (!reported.has(ship.mmsi)) {
          const nature = pick(['05', '10']);
          withPosition(ship, (whole, time) =>
            dsc('12', station, '', nature, '00', whole, time, '', '', 'S', 'E'),
          );
        }
        reported.add(ship.mmsi);
        break;
      case 7: {
        const [whole] = digits(ship);
        const time = utc().slice(0, 4);
        if (!reported.has(`${ship.mmsi}ack`))
          dsc('16', `${COAST}0`, '12', '10', '00', whole, time, station, '05', 'S', '');
        reported.add(`${ship.mmsi}ack`);
        break;
      }
      default:
        if (!reported.has(ship.mmsi)) {
          withPosition(ship, (whole, time) =>
            dsc('20', station, '08', '21', '26', whole, time, '', '', 'B', 'E'),
          );
        }
        reported.add(ship.mmsi);
    }
  }
  const options: NonNullable<Parameters<typeof findFaults>[1]> = random() < 0.5 ? {} : { own: OWN };
  return { text: lines.join(''), options };
}
