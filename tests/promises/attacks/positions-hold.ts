// A reported position is a box, and the ship is inside it; `boundsFrom` holds every place she may be by now
// (docs/guide/position.md). Digits: whole minutes cut off, quadrant first (Japan, Notification 567 of 1990). Distances by
// the sphere and its cosine rule, 0.6 % allowed for the flattening of the Earth.
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import {
  boundsFrom,
  boxContains,
  boxOf,
  centreOf,
  closestApproach,
  deadReckoning,
  decodePosition,
  destination,
  encodePosition,
  formatPosition,
  intercept,
  parsePosition,
  rangeAndBearing,
  resolveTime,
  timeToReach,
  toReportedPosition,
} from '../../../src/position/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';

/** Ships of `npm run attack`. */
export const usual = 40_000;

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

const RADIUS = 6_371_009;
const rad = (degrees: number): number => (degrees * Math.PI) / 180;

function sphereMetres(from: Place, to: Place): number {
  const [a, b] = [rad(from.latitude), rad(to.latitude)];
  const h =
    Math.sin((b - a) / 2) ** 2 +
    Math.cos(a) * Math.cos(b) * Math.sin(rad(to.longitude - from.longitude) / 2) ** 2;
  return 2 * RADIUS * Math.asin(Math.min(1, Math.sqrt(h)));
}

/** So many metres in some direction, on the sphere. */
function moved(from: Place, bearing: number, metres: number): Place {
  const [a, d, c] = [rad(from.latitude), metres / RADIUS, rad(bearing)];
  const b = Math.asin(Math.sin(a) * Math.cos(d) + Math.cos(a) * Math.sin(d) * Math.cos(c));
  const turn = Math.atan2(Math.sin(c) * Math.sin(d) * Math.cos(a), Math.cos(d) - Math.sin(a) * Math.sin(b));
  const longitude = from.longitude + (turn * 180) / Math.PI;
  return { latitude: (b * 180) / Math.PI, longitude: longitude - 360 * Math.round(longitude / 360) };
}

/** Ten digits of a place, minutes cut off toward the equator and Greenwich. */
function digitsOf({ latitude, longitude }: Place): string {
  const quadrant = (latitude < 0 ? 2 : 0) + (longitude < 0 ? 1 : 0);
  const part = (degrees: number, width: number): string => {
    const minutes = Math.floor(Math.abs(degrees) * 60 + 1e-9);
    return `${String(Math.floor(minutes / 60)).padStart(width, '0')}${String(minutes % 60).padStart(2, '0')}`;
  };
  return `${quadrant}${part(latitude, 2)}${part(longitude, 3)}`;
}

function placeOf(random: Random): Place {
  const special = [0, 0, 90, -90, 89.999, 45, -0.001, 0.001];
  const longitudes = [0, 180, -180, 179.999, -179.999, -0.001, 0.001];
  return {
    latitude: random.below(4) === 0 ? pick(random, special) : 180 * random.even() - 90,
    longitude: random.below(4) === 0 ? pick(random, longitudes) : 360 * random.even() - 180,
  };
}

/** Numbers anywhere in a value that JSON does not keep. */
function unkept(value: unknown): boolean {
  if (typeof value === 'number') return Object.is(value, -0) || !Number.isFinite(value);
  return value !== null && typeof value === 'object' && Object.values(value).some(unkept);
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const there = placeOf(random);
    const own =
      random.below(2) === 0 ? placeOf(random) : moved(there, 360 * random.even(), 40_000 * random.even());
    const how = show({ seed, tried, there, own });
    const plain = (name: string, value: unknown): void => {
      notes.count('values');
      if (unkept(value))
        notes.broken(
          `a number that JSON does not keep: ${name}`,
          `${how}: ${show(value)} ${JSON.stringify(value, (_, one) => (Object.is(one, -0) ? '-0' : one))}`,
        );
    };

    const reported = decodePosition(digitsOf(there));
    if (!reported.ok || reported.value.kind !== 'reported-position') {
      if (Math.abs(there.latitude) < 90 && Math.abs(there.longitude) < 180)
        notes.broken('digits of a place are refused', how);
      continue;
    }
    const position = reported.value;
    const box = boxOf(position, 'truncated');
    plain('boxOf', box);
    plain('centreOf', centreOf(position));
    if (!boxContains(box, there)) notes.broken('the ship is outside her box', `${how}: ${show(box)}`);
    if (!boxContains(box, centreOf(position)))
      notes.broken('the middle is outside the box', `${how}: ${show(box)}`);
    if (encodePosition(position).digits !== digitsOf(there)) notes.broken('digits are not given back', how);
    const fix = toReportedPosition(there);
    if (encodePosition(fix).digits !== digitsOf(there))
      notes.broken('own fix is reported in other digits', `${how}: ${show(fix)}`);

    const hours = 5 * random.even();
    const speed = 12 * random.even();
    const now = Date.UTC(2026, 5, 1, 14, 0);
    const bounds = boundsFrom(own, position, { at: now - hours * 3_600_000, now, speed });
    const ship = moved(there, 360 * random.even(), hours * speed * 1852 * random.even() * 0.99);
    const metres = sphereMetres(own, ship);
    plain('boundsFrom', bounds);
    if (metres < bounds.least * 0.994 - 5 || metres > bounds.greatest * 1.006 + 5)
      notes.broken(
        'out of bounds',
        `${how}: ${metres} of ${bounds.least} to ${bounds.greatest}, ${show({ ship, hours, speed })}`,
      );
    if (!boxContains(bounds.area, ship))
      notes.broken('outside the area', `${how}: ${show({ ship, hours, speed, area: bounds.area })}`);

    const { metres: range, bearing } = rangeAndBearing(own, there);
    plain('rangeAndBearing', rangeAndBearing(own, there));
    const sphere = sphereMetres(own, there);
    if (Math.abs(range - sphere) > 0.006 * sphere + 1)
      notes.broken('range', `${how}: ${range}, on the sphere ${sphere}`);
    if (bearing !== null && !(bearing >= 0 && bearing < 360))
      notes.broken('a bearing outside 0 to 360', `${how}: ${bearing}`);
    plain('destination', destination(own, 360 * random.even(), 20_000_000 * random.even()));
    const mover = {
      position: there,
      course: pick(random, [0, 90, 180, 270, 359.9]),
      speed: pick(random, [0, 5, 20]),
    };
    plain('closestApproach', closestApproach({ position: own, course: 0, speed: 6 }, mover));
    plain('deadReckoning', deadReckoning(there, { ...mover, seconds: 3600 }));
    plain('timeToReach', timeToReach(own, there, { speed: 6 }));
    plain('intercept', intercept({ position: own, speed: 6 }, mover));

    const read = parsePosition(formatPosition(there, { digits: 4 }));
    if (!read.ok)
      notes.broken('a formatted position is not read', `${how}: ${formatPosition(there, { digits: 4 })}`);
    else if (sphereMetres(read.value, there) > 1)
      notes.broken('a formatted position is another', `${how}: ${formatPosition(there, { digits: 4 })}`);
    const time = { hour: random.below(24), minute: random.below(60) };
    const resolved = resolveTime(time, now);
    const at = new Date(resolved.at);
    if (
      at.getUTCHours() !== time.hour ||
      at.getUTCMinutes() !== time.minute ||
      resolved.at > now + 3_600_000 ||
      resolved.at < now - 86_400_000
    )
      notes.broken('a time of day is resolved to another', `${show(time)}: ${at.toISOString()}`);
  }
  return notes.outcome();
};
