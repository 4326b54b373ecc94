import {
  type Bounds,
  boundsFrom,
  type Coordinates,
  centreOf,
  describeBounds,
  formatPosition,
  formatReportedPosition,
  parsePosition,
  plotBearings,
  rangeAndBearing,
  resolveTime,
  toGeoJson,
  toGeoUri,
  toGpx,
  uncertaintyOf,
  type Waypoint,
} from 'seahail/position';
import type { Issue } from 'seahail/result';
import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { findings, ledger, sentence } from '../frame/ledger.ts';
import { saveFile } from '../frame/save.ts';
import { parseStation, parseTime, type StationLine } from './stations.ts';

/** A station with what its report says from here. */
interface Placed extends StationLine {
  readonly at: number | null;
  readonly bounds: Bounds;
}

let waypoints: readonly Waypoint[] = [];
let drawing = '';

bindShare(bindFinding(byId<HTMLFormElement>('question'), answer));
byId('save-gpx').addEventListener('click', () =>
  saveFile('stations.gpx', toGpx(waypoints, { creator: 'seahail workbench' }), 'application/gpx+xml'),
);
byId('save-geojson').addEventListener('click', () =>
  saveFile('stations.geojson', JSON.stringify(toGeoJson(waypoints), null, 2), 'application/geo+json'),
);
byId('save-svg').addEventListener('click', () => saveFile('stations.svg', drawing, 'image/svg+xml'));

function answer(question: Question): void {
  const issues: Issue[] = [];
  const own = parsePosition(question['own']);
  if (!own.ok) issues.push(...own.issues);
  const now = instantOf(question['day'] ?? '', question['now'] ?? '');
  if (now === null)
    issues.push({
      code: 'time-of-day',
      message: 'Now is no day and time of day',
      at: [],
      expected: '14:46 and 2026-06-01',
    });
  const speed = Number((question['speed'] ?? '').replace(',', '.'));
  if (!(speed >= 0 && speed < 1000))
    issues.push({ code: 'speed', message: 'Speed is no number of knots', at: [] });

  const lines: StationLine[] = [];
  (question['stations'] ?? '').split('\n').forEach((text, index) => {
    if (text.trim() === '') return;
    const read = parseStation(text, index + 1);
    issues.push(...(read.ok ? read.value.notices : read.issues));
    if (read.ok) lines.push(read.value);
  });
  fill(byId('issues'), findings(issues));
  if (!own.ok || now === null || !(speed >= 0 && speed < 1000)) {
    announce('Something is missing.');
    show([], own.ok ? own.value : null);
    return;
  }
  const placed = lines.map((line): Placed => {
    const at = line.time === null ? null : resolveTime(line.time, now).at;
    return { ...line, at, bounds: boundsFrom(own.value, line.position, { at, now, speed }) };
  });
  announce(inShort(placed));
  show(placed, own.value);
}

function inShort(placed: readonly Placed[]): string {
  const [nearest] = [...placed].sort((a, b) => a.bounds.least - b.bounds.least);
  if (nearest === undefined) return 'Nobody has reported a position.';
  return sentence(`${nearest.name} may be nearest: ${describeBounds(nearest.bounds)}`);
}

function show(placed: readonly Placed[], own: Coordinates | null): void {
  for (const id of ['save-gpx', 'save-geojson', 'save-svg'])
    byId<HTMLButtonElement>(id).disabled = placed.length === 0;
  if (own === null || placed.length === 0) {
    fill(byId('drawing'));
    fill(byId('answer'));
    return;
  }
  waypoints = placed.map(waypointOf);
  drawing = plotBearings(
    own,
    placed.map(({ name, bounds, distress }) => ({ name, bounds, distress })),
    { ownName: 'I' },
  );
  const svg = new DOMParser().parseFromString(drawing, 'image/svg+xml').documentElement;
  fill(byId('drawing'), h('figure', { class: 'plot' }, document.importNode(svg, true)));
  fill(
    byId('answer'),
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
        clause: position.fraction === undefined ? 'ITU-R M.493-15' : 'ITU-R M.821-1',
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

function waypointOf({ name, position, at, distress }: Placed): Waypoint {
  return {
    position: centreOf(position),
    name,
    source: 'DSC position report',
    description: `reported ${formatReportedPosition(position)}`,
    uncertainty: Math.ceil(uncertaintyOf(position)),
    ...(at !== null && { time: at }),
    ...(distress && { type: 'distress' }),
  };
}

function instantOf(day: string, now: string): number | null {
  const time = parseTime(now);
  const midnight = /^\d{4}-\d{2}-\d{2}$/.test(day.trim())
    ? Date.parse(`${day.trim()}T00:00:00Z`)
    : Number.NaN;
  if (time === null || time === undefined || Number.isNaN(midnight)) return null;
  return midnight + (time.hour * 60 + time.minute) * 60_000;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
