// What the command line says, checked; what is wrong with it is said in one line.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { canadaPlan } from 'seahail/channel/canada';
import { internationalPlan } from 'seahail/channel/international';
import { netherlandsInlandPlan, netherlandsSeaPlan } from 'seahail/channel/netherlands';
import { swedenPlan } from 'seahail/channel/sweden';
import { unitedKingdomPlan } from 'seahail/channel/united-kingdom';
import { unitedStatesPlan } from 'seahail/channel/united-states';
import { createDirectory, readDirectoryCsv } from 'seahail/directory';
import { identityForms, parseIdentity, usesOf } from 'seahail/identity';
import { isNetworkLog } from 'seahail/network';

const USAGE = `npm run demo                               the invented evening watch
npm run demo -- my.log --own 232999871     any log of the serial line, or of the network (candump, or a capture file)
npm run demo -- my.log boat.candump        one of each, and where they differ

--own NUMBER        own identity: calls to one station are then addressed to it, and answers can be composed
--stations FILE     known stations as CSV (mmsi, name, call sign, groups, notes)
--plan NAME         the plan of the waters: international, united-states, canada, united-kingdom,
                    netherlands-sea, netherlands-inland or sweden (international for a log of yours)
--speed KNOTS       what another vessel may have run since her fix (6)
--out FOLDER        where the waypoints and the sound go (out/evening-watch)`;

const PLANS = new Map([
  ['international', internationalPlan],
  ['united-states', unitedStatesPlan],
  ['canada', canadaPlan],
  ['united-kingdom', unitedKingdomPlan],
  ['netherlands-sea', netherlandsSeaPlan],
  ['netherlands-inland', netherlandsInlandPlan],
  ['sweden', swedenPlan],
]);

/** Reads the command line, or ends the program with one line that says what is wanted. */
export function readOptions() {
  const { values, positionals } = commandLine();
  if (values.help) stop(USAGE, 0);
  const [file] = positionals;
  const ours = file === undefined;
  const files = ours
    ? ['serial.log', 'network.log'].map((name) => new URL(name, import.meta.url))
    : positionals;
  const logs = files.map((one) => read(one, 'the log'));
  const [serial, network] = [logs.find((log) => !isNetworkLog(log)), logs.find(isNetworkLog)];
  if (logs.length > 2 || (logs.length === 2 && (!serial || !network)))
    stop(`At most one log of each cable is read: a serial log and a network log, not ${files.join(', ')}`);
  const stationsFile = values.stations ?? (ours ? new URL('stations.csv', import.meta.url) : undefined);
  return {
    title: positionals.join(' and ') || 'The evening watch on the Skerra Sound (invented)',
    serial,
    network,
    own: ownIdentity(values.own ?? (ours ? '232999871' : undefined)),
    directory: stationsFile === undefined ? createDirectory() : directoryIn(stationsFile),
    plan: planNamed(values.plan ?? (ours ? 'united-kingdom' : 'international')),
    speed: knots(values.speed),
    out: values.out,
  };
}

/** Ends the program. */
export function stop(text, code = 1) {
  if (code === 0) console.log(text);
  else console.error(text);
  process.exit(code);
}

function commandLine() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        own: { type: 'string' },
        stations: { type: 'string' },
        plan: { type: 'string' },
        speed: { type: 'string', default: '6' },
        out: { type: 'string', default: 'out/evening-watch' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
  } catch (error) {
    return stop(`${error.message.split('. ')[0]}\n\n${USAGE}`);
  }
}

function read(file, what, encoding) {
  try {
    return readFileSync(file, encoding);
  } catch (error) {
    return stop(`${file}: ${what} cannot be read (${error.code})`);
  }
}

function ownIdentity(text) {
  if (text === undefined) return undefined;
  const parsed = parseIdentity(text);
  if (!parsed.ok) {
    const [{ message, expected, suggestion }] = parsed.issues;
    return stop(`--own ${text}: ${message}${suggestion === undefined ? `, ${expected} are wanted` : ''}`);
  }
  const form = identityForms.find(({ kind }) => kind === parsed.value.kind);
  if (!usesOf(parsed.value).own)
    stop(`--own ${text}: ${form.name}, which no station has as its own identity`);
  return parsed.value;
}

function directoryIn(file) {
  const rows = readDirectoryCsv(read(file, 'the list of stations', 'utf8'));
  if (!rows.ok) return stop(`--stations ${file}: ${rows.issues[0].message}`);
  for (const { message } of rows.notices) console.log(`Stations: ${message}`);
  return createDirectory(rows.value);
}

function planNamed(name) {
  return PLANS.get(name) ?? stop(`--plan ${name}: one of ${[...PLANS.keys()].join(', ')} is wanted`);
}

function knots(text) {
  const speed = text.trim() === '' ? Number.NaN : Number(text);
  return speed >= 0 && speed <= 100 ? speed : stop(`--speed ${text}: knots from 0 to 100 are wanted`);
}
