import {
  type Bounds,
  boundsFrom,
  type Coordinates,
  centreOf,
  describeBounds,
  formatPosition,
  formatReportedPosition,
  parsePosition,
  rangeAndBearing,
  resolveTime,
  toGeoJson,
  toGeoUri,
  toGpx,
  uncertaintyOf,
  type Waypoint,
} from 'seahail/position';
import { plotBearings } from 'seahail/position/plot';
import type { Issue } from 'seahail/result';
import { announce } from '../frame/announce.ts';
import { inBlanks } from '../frame/blanks.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { findings, ledger, sentence } from '../frame/ledger.ts';
import { saveFile } from '../frame/save.ts';
import { parseDay, parseNow, parseSpeed } from './own.ts';
import { parseStation, type StationLine } from './stations.ts';

/** A station with what its report says from here. */
interface Placed extends StationLine {
  readonly at: number | null;
  readonly bounds: Bounds;
}

/** Stations that are drawn and listed; the rest are counted. */
const MOST_DRAWN = 30;
/** Height of the drawing without the words under it, which are in the list below it; its width is 640. */
const PICTURE = 652;

let waypoints: readonly Waypoint[] = [];
let drawing = '';
let waiting: ReturnType<typeof setTimeout> | undefined;

const form = byId<HTMLFormElement>('question');
bindShare(
  bindFinding(form, (question) => {
    clearTimeout(waiting);
    waiting = setTimeout(() => answer(question), 150);
  }),
);
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
  const asked = { own, now: time, day, speed };
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
  if (!own.ok || !time.ok || !day.ok || !speed.ok) {
    const missing = Object.keys(asked).some((name) => (question[name] ?? '').trim() === '');
    announce(missing ? 'Something is missing.' : 'Something cannot be read.');
    waypoints = [];
    show([], null, 0);
    return;
  }
  const now = day.value + (time.value.hour * 60 + time.value.minute) * 60_000;
  const dated = lines.map((line) => ({
    ...line,
    at: line.time === null ? null : resolveTime(line.time, now).at,
  }));
  waypoints = dated.map(waypointOf);
  const placed = worthDrawing(dated, own.value).map(
    (line): Placed => ({
      ...line,
      bounds: boundsFrom(own.value, line.position, { at: line.at, now, speed: speed.value }),
    }),
  );
  announce(inShort(placed));
  show(placed, own.value, dated.length - placed.length);
}

/** All of them, or when they are too many those in distress and the nearest, in the order in which they were given. */
function worthDrawing<Line extends StationLine>(lines: readonly Line[], own: Coordinates): readonly Line[] {
  if (lines.length <= MOST_DRAWN) return lines;
  const far = (line: Line): number =>
    line.distress ? -1 : rangeAndBearing(own, centreOf(line.position)).metres;
  const nearest = lines.map((line) => ({ line, metres: far(line) })).sort((a, b) => a.metres - b.metres);
  const chosen = new Set(nearest.slice(0, MOST_DRAWN).map(({ line }) => line));
  return lines.filter((line) => chosen.has(line));
}

function inShort(placed: readonly Placed[]): string {
  const [nearest] = [...placed].sort((a, b) => a.bounds.least - b.bounds.least);
  if (nearest === undefined) return 'Nobody has reported a position.';
  return sentence(`${nearest.name} may be nearest: ${describeBounds(nearest.bounds)}`);
}

function show(placed: readonly Placed[], own: Coordinates | null, left: number): void {
  for (const id of ['save-gpx', 'save-geojson', 'save-svg'])
    byId<HTMLButtonElement>(id).disabled = placed.length === 0;
  if (own === null || placed.length === 0) {
    fill(byId('drawing'));
    fill(byId('answer'));
    return;
  }
  drawing = plotBearings(
    own,
    placed.map(({ name, bounds, distress }) => ({ name, bounds, distress })),
    { ownName: 'I' },
  );
  const svg = new DOMParser().parseFromString(drawing, 'image/svg+xml').documentElement;
  svg.setAttribute('viewBox', `0 0 640 ${PICTURE}`);
  svg.setAttribute('height', String(PICTURE));
  fill(byId('drawing'), h('figure', { class: 'plot' }, document.importNode(svg, true)));
  fill(
    byId('answer'),
    left === 0 ? null : h('p', {}, `The nearest are drawn, and ${left.toLocaleString('en')} more are not.`),
    placed.map((station) => card(station, own)),
  );
}

function card(station: Placed, own: Coordinates): HTMLElement {
  const { name, distress, position, time, bounds } = station;
  const middle = centreOf(position);
  const { metres, bearing } = rangeAndBearing(own, middle);
  const uri = toGeoUri(middle, { uncertainty: uncertaintyOf(position) });
  return h(
    'section',
    {},
    h('h3', {}, distress ? `${name}, in distress` : name),
    h('p', {}, sentence(describeBounds(bounds))),
    ledger([
      {
        what: 'Reported',
        answer: `${formatReportedPosition(position)}, ${time === null ? 'time not known' : `${two(time.hour)}:${two(time.minute)} UTC`}`,
        clause: position.fraction === undefined ? 'ITU-R M.493-16' : 'ITU-R M.821-1',
      },
      {
        what: 'Middle of the box',
        answer: [formatPosition(middle, { digits: 3 }), ', ', h('a', { href: uri }, 'open elsewhere')],
        clause: 'RFC 5870',
      },
      {
        what: 'To the middle',
        answer: `${(metres / 1852).toFixed(2)} M${bearing === null ? '' : `, ${bearing.toFixed(1)}° true`}`,
        clause: 'geodesic on WGS 84',
      },
      {
        what: 'Off by at most',
        answer: `${Math.ceil(uncertaintyOf(position)).toLocaleString('en')} m, when the digits were cut off`,
      },
      bounds.movement === null
        ? null
        : { what: 'Run since', answer: `at most ${(bounds.movement / 1852).toFixed(2)} M` },
    ]),
  );
}

function waypointOf({
  name,
  position,
  at,
  distress,
}: StationLine & { readonly at: number | null }): Waypoint {
  const uncertainty = Math.ceil(uncertaintyOf(position));
  return {
    position: centreOf(position),
    name,
    source: 'DSC position report',
    description: `reported ${formatReportedPosition(position)}, within ${uncertainty} m`,
    uncertainty,
    ...(at !== null && { time: at }),
    ...(distress && { type: 'distress' }),
  };
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
