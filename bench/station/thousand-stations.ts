/**
 * A thousand stations, a simulated day, on one core: what an event costs, whether that and the state stay flat, and
 * what channel 70 carries, beside the limits of ITU-R M.822-1. Everything in it is invented. Run with
 * `npx esbuild bench/station/thousand-stations.ts --bundle --platform=node --format=esm --outfile=out/thousand-stations.mjs && node out/thousand-stations.mjs [hours …]`.
 */
import { composeIndividualCall, composePositionRequest, composeTestCall } from '../../src/call/index.ts';
import { destination } from '../../src/position/index.ts';
import { type ScriptLine, type SimulatedStation, simulate } from '../../src/simulation/index.ts';
import { nextRandom } from '../../src/station/engine/turn.ts';

const LENGTHS = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [1, 6, 24];
const SHIPS = 996;
const CALLS_AN_HOUR = 500;
const ATTEMPTS_AN_HOUR = 2;
/** Miles: all within reach of a coast station on a hill, not all of each other. */
const RADIUS = 14;
const CENTRE = { latitude: 56.34, longitude: -6.5 };

let state = 1;
function draw(): number {
  const [value, next] = nextRandom(state);
  state = next;
  return value;
}

const answersAlone = {
  individual: 'automatic',
  position: 'automatic',
  test: 'automatic',
  polling: 'automatic',
  group: 'by-hand',
  area: 'by-hand',
  'all-ships': 'by-hand',
} as const;

const coasts: SimulatedStation[] = Array.from({ length: 4 }, (_, index) => ({
  name: `coast ${index}`,
  settings: { mmsi: `00232999${index}`, equipment: 'coast', policies: answersAlone },
  position: destination(CENTRE, index * 90, 2 * 1852),
  antennaHeight: 120,
  // One of them minds distress; the others are machines.
  ...(index === 0 && { person: { answers: 'able', delaySeconds: [5, 20], talkSeconds: [20, 60] } }),
}));
const ships: SimulatedStation[] = Array.from({ length: SHIPS }, (_, index) => ({
  name: `ship ${index}`,
  settings: { mmsi: `232${900000 + index}`, equipment: index % 10 === 0 ? 'A' : 'D', policies: answersAlone },
  position: destination(CENTRE, draw() * 360, Math.sqrt(draw()) * RADIUS * 1852),
  antennaHeight: 3 + draw() * 15,
  person: { answers: 'able', delaySeconds: [2, 30], talkSeconds: [20, 60] },
}));
const stations = [...coasts, ...ships];

const pick = (from: readonly SimulatedStation[]): SimulatedStation =>
  from[Math.floor(draw() * from.length)] as SimulatedStation;
const mmsiOf = ({ settings }: SimulatedStation): string => settings.mmsi as string;

function scriptFor(hours: number): ScriptLine[] {
  const script: ScriptLine[] = [];
  for (let call = 0; call < CALLS_AN_HOUR * hours; call++) {
    const caller = pick(ships);
    const called = pick(stations);
    if (called === caller) continue;
    const parties = { from: mmsiOf(caller), to: mmsiOf(called) };
    const kind = draw();
    const composed =
      kind < 0.6
        ? composeIndividualCall({ ...parties, channel: '72' })
        : kind < 0.8
          ? composePositionRequest(parties)
          : composeTestCall(parties);
    // One attempt each: the limit counts calls, and repeats to ships out of reach would come on top.
    const event = { kind: 'call', call: composed, attempts: 1 } as const;
    script.push({ afterSeconds: draw() * 3600 * hours, station: caller.name, event });
  }
  for (let alert = 0; alert < ATTEMPTS_AN_HOUR * hours; alert++) {
    const afterSeconds = draw() * 3600 * hours;
    const { name } = pick(ships);
    script.push({ afterSeconds, station: name, event: { kind: 'prepare-alert' } });
    script.push({ afterSeconds: afterSeconds + 1, station: name, event: { kind: 'press-alert' } });
  }
  return script;
}

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(3)} %`;

for (const hours of LENGTHS) {
  const script = scriptFor(hours);
  const started = process.cpuUsage();
  const { channel70, states, moments } = simulate(stations, script, {
    seed: 1,
    durationSeconds: 3600 * hours,
    bitErrorRate: 0,
  });
  const { user, system } = process.cpuUsage(started);
  const sizes = Object.values(states).map((state) => JSON.stringify(state).length);
  const { meant, alerts } = channel70;
  console.log(
    `
${stations.length} stations, ${hours} h, ${script.length} script lines
  processor time ${((user + system) / 1e6).toFixed(1)} s, ${channel70.events} events, ${((user + system) / channel70.events).toFixed(1)} microseconds each, channel and decoding included
  state at the end, as JSON: ${Math.max(...sizes)} bytes at most, ${Math.round(sizes.reduce((a, b) => a + b) / sizes.length)} on average; effects ${moments.length}
  bursts ${(channel70.bursts / hours).toFixed(0)} an hour; load ${channel70.erlang.toFixed(3)} erlang, limit 0.15 (ITU-R M.822-1)
  receptions meant ${meant.heard + meant.lost}, lost ${percent(meant.lost, meant.heard + meant.lost)}
  distress attempts at a receiver ${alerts.attempts}, spoilt ${percent(alerts.spoilt, alerts.attempts)}, limit 0.1 % (ITU-R M.822-1)`,
  );
}
