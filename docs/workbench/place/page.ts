import {
  type Bounds,
  boundsFrom,
  boundsText,
  type Coordinates,
  describeBounds,
  formatPosition,
  parsePosition,
  rangeAndBearing,
  resolveTime,
  toGeoJson,
  toGeoUri,
  toGpx,
  trueToCompass,
  type Waypoint,
} from 'seahail/position';
import { plotBearings } from 'seahail/position/plot';
import type { Issue } from 'seahail/result';
import { announce } from '../frame/announce.ts';
import { inBlanks } from '../frame/blanks.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { said, words } from '../frame/language.ts';
import { findings, ledger, sentence } from '../frame/ledger.ts';
import { saveFile } from '../frame/save.ts';
import { bindDevice } from './device.ts';
import { parseDay, parseNow, parseSpeed, parseVariation } from './own.ts';
import { formatStationPosition, middleOf, parseStation, type StationLine } from './stations.ts';

/** A station with what its report says from here. */
interface Placed extends StationLine {
  readonly at: number | null;
  readonly bounds: Bounds;
}

/** Where own ship is and how she goes. */
interface Own {
  readonly position: Coordinates;
  /** Knots. */
  readonly pace: number;
  /** Degrees, east positive; `null` when not given. */
  readonly variation: number | null;
}

/** Stations that are drawn and listed; the rest are counted. */
const MOST_DRAWN = 30;
/** Height of the drawing without the words under it, which are in the list below it; its width is 640. */
const PICTURE = 652;

let waypoints: readonly Waypoint[] = [];
let drawing = '';
let waiting: ReturnType<typeof setTimeout> | undefined;

const form = byId<HTMLFormElement>('question');
const finding = bindFinding(form, (question) => {
  clearTimeout(waiting);
  // The first answer is what the page waits for to be shown; later ones wait for the typing to pause.
  if (waiting === undefined) answer(question);
  waiting = setTimeout(() => answer(question), 150);
});
bindShare(finding);
bindDevice(finding);
byId('save-gpx').addEventListener('click', () =>
  saveFile('stations.gpx', toGpx(waypoints, { creator: 'seahail workbench' }), 'application/gpx+xml'),
);
byId('save-geojson').addEventListener('click', () =>
  saveFile('stations.geojson', JSON.stringify(toGeoJson(waypoints), null, 2), 'application/geo+json'),
);
byId('save-svg').addEventListener('click', () => saveFile('stations.svg', drawing, 'image/svg+xml'));

function answer(question: Question): void {
  const own = parsePosition(question['own']);
  const time = parseNow(question['now'] ?? '');
  const day = parseDay(question['day'] ?? '');
  const speed = parseSpeed(question['speed'] ?? '');
  const pace = parseSpeed(question['pace'] ?? '');
  const variation = parseVariation(question['variation'] ?? '');
  const asked = { own, now: time, day, speed, pace, variation };
  const wrong = Object.entries(asked).flatMap(([name, result]): readonly Issue[] =>
    result.ok ? [] : result.issues.map((issue) => ({ ...issue, at: [name] })),
  );
  const issues: Issue[] = [...inBlanks(form, wrong)];

  const lines: StationLine[] = [];
  (question['stations'] ?? '').split('\n').forEach((text, index) => {
    if (text.trim() === '') return;
    const read = parseStation(text, index + 1);
    issues.push(...(read.ok ? read.value.notices : read.issues));
    if (read.ok) lines.push(read.value);
  });
  fill(
    byId('issues'),
    findings(issues.slice(0, MOST_DRAWN)),
    issues.length > MOST_DRAWN ? h('p', {}, `And ${issues.length - MOST_DRAWN} more like these.`) : null,
  );
  if (!own.ok || !time.ok || !day.ok || !speed.ok || !pace.ok || !variation.ok) {
    const missing = Object.entries(asked).some(
      ([name, { ok }]) => !ok && (question[name] ?? '').trim() === '',
    );
    announce(missing ? 'Fill in the missing fields.' : 'One field could not be read.');
    waypoints = [];
    show([], null, 0);
    return;
  }
  const now = day.value + (time.value.hour * 60 + time.value.minute) * 60_000;
  const dated = lines.map((line) => ({
    ...line,
    at: line.time === null ? null : resolveTime(line.time, now).at,
  }));
  const all = dated.map(
    (line): Placed => ({
      ...line,
      bounds: boundsFrom(own.value, line.position, { at: line.at, now, speed: speed.value }),
    }),
  );
  waypoints = all.map(waypointOf);
  const placed = worthDrawing(all);
  announce(inShort(placed));
  show(
    placed,
    { position: own.value, pace: pace.value, variation: variation.value },
    all.length - placed.length,
  );
}

/** All of them, or when they are too many those in distress and the nearest, in the order in which they were given. */
function worthDrawing(all: readonly Placed[]): readonly Placed[] {
  if (all.length <= MOST_DRAWN) return all;
  const far = ({ distress, bounds }: Placed): number => (distress ? -1 : bounds.greatest);
  const chosen = new Set([...all].sort((a, b) => far(a) - far(b)).slice(0, MOST_DRAWN));
  return all.filter((each) => chosen.has(each));
}

/** Distress before everything else, and what is certain before what may be. */
function inShort(placed: readonly Placed[]): string {
  const inDistress = placed.filter(({ distress }) => distress);
  const pool = inDistress.length > 0 ? inDistress : placed;
  const [nearest, ...others] = [...pool].sort((a, b) => a.bounds.greatest - b.bounds.greatest);
  if (nearest === undefined) return 'Nobody has reported a position.';
  const { name, distress, bounds } = nearest;
  const rivals = others.filter((other) => other.bounds.least < bounds.greatest).map((other) => other.name);
  const who = `${name}${distress ? ', in distress' : ''}${others.length > 0 && rivals.length === 0 ? ', is nearest' : ''}`;
  const perhaps =
    rivals.length === 0
      ? ''
      : ` ${rivals.length > 2 ? `${rivals.length} others` : rivals.join(' and ')} may be nearer.`;
  return `${sentence(`${who}: ${describeBounds(bounds)}`)}${perhaps}`;
}

function show(placed: readonly Placed[], own: Own | null, left: number): void {
  for (const id of ['save-gpx', 'save-geojson', 'save-svg'])
    byId<HTMLButtonElement>(id).disabled = placed.length === 0;
  if (own === null || placed.length === 0) {
    fill(byId('drawing'));
    fill(byId('answer'));
    return;
  }
  drawing = plotBearings(
    own.position,
    placed.map(({ name, bounds, distress }) => ({ name, bounds, distress })),
    { say: words },
  );
  const svg = new DOMParser().parseFromString(drawing, 'image/svg+xml').documentElement;
  svg.setAttribute('viewBox', `0 0 640 ${PICTURE}`);
  svg.setAttribute('height', String(PICTURE));
  fill(
    byId('drawing'),
    h('figure', { class: 'plot' }, document.importNode(svg, true), h('figcaption', { class: 'help' }, KEY)),
  );
  fill(
    byId('answer'),
    left === 0 ? null : h('p', {}, `The nearest are drawn, and ${left.toLocaleString('en')} more are not.`),
    placed.map((station, index) => card(station, index + 1, own)),
  );
}

const KEY =
  'Each number is that of the list below. Hatched: where the report places her. Shaded around it: where she may have gone since. Dashed outline: every range and bearing she may have. Line: the bearing to the middle of the box. Dotted circles: distance in nautical miles (M).';

function card(station: Placed, number: number, { position: from, pace, variation }: Own): HTMLElement {
  const { name, distress, position, time, bounds } = station;
  const { centre: middle, off } = middleOf(position);
  const { metres, bearing } = rangeAndBearing(from, middle);
  const uri = toGeoUri(middle, { uncertainty: off });
  const magnetic =
    bearing === null || variation === null
      ? ''
      : `, ${trueToCompass(bearing, { variation }).toFixed(1)}° magnetic`;
  return h(
    'section',
    {},
    h('h3', {}, `${number}. ${name}${distress ? ', in distress' : ''}`),
    h('p', {}, said(boundsText(bounds), sentence)),
    ledger([
      {
        what: 'Reported',
        answer: `${formatStationPosition(position)}, ${time === null ? 'time not known' : `${two(time.hour)}:${two(time.minute)} UTC`}`,
        clause:
          'step' in position
            ? undefined
            : position.fraction === undefined
              ? 'ITU-R M.493-16'
              : 'ITU-R M.821-1',
      },
      {
        what: 'Middle of the box',
        answer: [formatPosition(middle, { digits: 3 }), ', ', h('a', { href: uri }, 'open in a map app')],
        clause: 'RFC 5870',
      },
      {
        what: 'To the middle',
        answer: `${(metres / 1852).toFixed(2)} M${bearing === null ? '' : `, ${bearing.toFixed(1)}° true${magnetic}`}`,
        clause: 'geodesic on WGS 84',
      },
      {
        what: 'Up to this far off',
        answer: `${off.toLocaleString('en')} m, ${'step' in position ? 'by the digits that were typed' : 'when the digits were cut off'}`,
      },
      pace === 0
        ? null
        : {
            what: 'Time to reach',
            answer: `${reach(bounds, pace)} at ${pace} ${pace === 1 ? 'knot' : 'knots'}, straight over open water`,
          },
      bounds.movement === null
        ? null
        : { what: 'May have moved since', answer: `up to ${(bounds.movement / 1852).toFixed(2)} M` },
    ]),
  );
}

/** From the least range to the greatest, rounded outward to whole minutes. */
function reach({ least, greatest }: Bounds, pace: number): string {
  const minutes = (metres: number): number => (metres / 1852 / pace) * 60;
  const [from, to] = [Math.floor(minutes(least)), Math.ceil(minutes(greatest))];
  return from === 0 ? `at most ${duration(to)}` : `${duration(from)} to ${duration(to)}`;
}

function duration(minutes: number): string {
  return minutes < 120 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${two(minutes % 60)} min`;
}

/** What another display is told: how far off she may be now, not only when she reported. */
function waypointOf({ name, position, at, distress, bounds }: Placed): Waypoint {
  const { centre, off } = middleOf(position);
  const movement = Math.ceil(bounds.movement ?? 0);
  const now = movement === 0 ? '' : ` then, within ${off + movement} m now`;
  return {
    position: { latitude: centre.latitude, longitude: centre.longitude },
    name,
    source: 'DSC position report',
    description: `reported ${formatStationPosition(position)}, within ${off} m${now}`,
    uncertainty: off + movement,
    ...(at !== null && { time: at }),
    ...(distress && { type: 'distress' }),
  };
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
