// The main job on a recorded serial log: who called, what was said, what may be answered, where they are.
//
//   npm run demo                                      the invented evening watch
//   npm run demo -- my.log --own 232999871            any log; options below
//
//   --own NUMBER        own identity: calls to one station are then addressed to it, and answers can be composed
//   --stations FILE     known stations as CSV (mmsi, name, call sign, groups, notes)
//   --plan NAME         waters: international, united-states, canada or united-kingdom
//   --speed KNOTS       what the other vessel may have run since her fix (6)
//   --out FOLDER        where the waypoints and the sound go (out/evening-watch)
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import {
  administrationName,
  administrationOf,
  answersTo,
  boundsFrom,
  canadaPlan,
  centreOf,
  checkCall,
  createDirectory,
  createReceiver,
  describeBounds,
  describeCall,
  encodeCall,
  findChannel,
  formatIdentity,
  formatMegahertz,
  formatPosition,
  internationalPlan,
  modulate,
  parseIdentity,
  rangeAndBearing,
  readDirectoryCsv,
  readSentences,
  readWav,
  reportPosition,
  stationOf,
  timeToReach,
  toGpx,
  unitedKingdomPlan,
  unitedStatesPlan,
  workingChannels,
  writeSentences,
  writeWav,
} from 'seahail';

const plans = {
  international: internationalPlan,
  'united-states': unitedStatesPlan,
  canada: canadaPlan,
  'united-kingdom': unitedKingdomPlan,
};

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    own: { type: 'string' },
    stations: { type: 'string' },
    plan: { type: 'string', default: 'united-kingdom' },
    speed: { type: 'string', default: '6' },
    out: { type: 'string', default: 'out/evening-watch' },
  },
});

const here = new URL('./evening-watch/', import.meta.url);
const given = positionals[0];
const log = readFileSync(given ?? new URL('serial.log', here));
const stationsFile = options.stations ?? (given === undefined ? new URL('stations.csv', here) : undefined);
const own = required(
  '--own',
  parseIdentity(options.own ?? (given === undefined ? '232999871' : '')),
  options.own ?? given === undefined,
);
const plan =
  plans[options.plan] ??
  stop(`--plan: one of ${Object.keys(plans).join(', ')} is needed, not '${options.plan}'`);
const speed = Number(options.speed);

let directory = createDirectory();
if (stationsFile !== undefined) {
  const rows = readDirectoryCsv(readFileSync(stationsFile, 'utf8'));
  for (const notice of rows.ok ? rows.notices : rows.issues) say(`stations: ${notice.message}`);
  if (rows.ok) directory = createDirectory(rows.value);
}
const known = (mmsi) => stationOf(directory, mmsi)?.name;

const readings = readSentences(log, { ...(own && { own: own.mmsi }), now: Date.now() });
const calls = new Map();
let fix = null;
let damaged = 0;
const waypoints = new Map();

say(`${given ?? 'The evening watch on the Skerra Sound (invented)'}: ${readings.length} readings`);
if (own) say(`Own station ${nameFor(own.mmsi)}, plan: ${plan.name}`);

for (const reading of readings) {
  if (reading.kind === 'own-fix' && reading.fix.position !== null) fix = { ...reading.fix, at: reading.at };
  if (reading.kind === 'damaged') {
    damaged += 1;
    say(`\n${clock(reading.at)}  line ${reading.line} is damaged: ${reading.issues[0].message}`);
  }
  if (reading.kind === 'call' && reading.stage === 'final') tell(reading);
}

function tell({ call, at, line, notices, event, repeat, positionTime }) {
  if (repeat > 0) {
    say(`\n${clock(at)}  line ${line}: the ${words(call.kind)} of call ${event} again`);
    return;
  }
  calls.set(event, call);
  const description = describeCall(call, { directory: known, own: own?.mmsi });
  say(`\n${clock(at)}  ${description.sentence}`);
  if (call.from !== null) say(`       number ${formatIdentity(call.from)}: ${whose(call.from)}`);
  const remarks = [...notices, ...checkCall(call, { plan, own: own?.mmsi })].map((notice) => notice.message);
  for (const remark of new Set(remarks)) say(`       note: ${remark}`);
  if (call.channel) channel(call.channel);
  if (call.position) place(call, at, positionTime);
  answers(call);
  for (const caution of description.cautions) say(`       ! ${caution.text} (${caution.clause})`);
}

function whose(mmsi) {
  const identity = parseIdentity(mmsi);
  if (!identity.ok) return identity.issues[0].message;
  const { kind, mid } = identity.value;
  const row = mid === undefined ? undefined : administrationOf(mid);
  const issuer = row === undefined ? '' : `, number issued by ${administrationName(row)}`;
  return `${words(kind)}${issuer}`;
}

function channel(designator) {
  const found = findChannel(plan, designator);
  if (!found.ok) say(`       channel ${designator}: ${found.issues[0].message}`);
  else say(`       channel ${found.value.designator}: ${frequencies(found.value)}`);
}

function frequencies({ shipKHz, coastKHz }) {
  if (shipKHz === null || coastKHz === null || shipKHz === coastKHz)
    return `${formatMegahertz(shipKHz ?? coastKHz)} MHz, one frequency`;
  return `ship sends on ${formatMegahertz(shipKHz)} MHz, coast on ${formatMegahertz(coastKHz)} MHz`;
}

function place(call, at, positionTime) {
  const who = call.distressed ?? call.from;
  const centre = centreOf(call.position);
  const exact = call.position.fraction !== undefined;
  say(
    `       at ${formatPosition(centre, { style: 'degrees-minutes' })}${exact ? '' : ', middle of a box one minute wide'}`,
  );
  // The acknowledgement of an alert repeats its position without the decimals: the finer one is kept.
  const before = waypoints.get(who);
  if (exact || before === undefined || before.time !== positionTime?.at) {
    waypoints.set(who, {
      position: centre,
      name: known(who) ?? who,
      ...(positionTime && { time: positionTime.at }),
      description: describeCall(call, { directory: known }).sentence,
      type: words(call.kind),
    });
  }
  if (fix === null) return;
  const { metres, bearing } = rangeAndBearing(fix.position, centre);
  const bounds = boundsFrom(fix.position, call.position, { at: positionTime?.at ?? null, now: at, speed });
  say(
    `       from own fix ${miles(metres)}${bearing === null ? '' : `, bearing ${degrees(bearing)} true`}; ${describeBounds(bounds)}`,
  );
  const passage = fix.speed > 0 ? timeToReach(fix.position, centre, { speed: fix.speed }) : null;
  if (passage)
    say(`       ${Math.round(passage.seconds / 60)} minutes at own ${fix.speed} knots, if the way is clear`);
}

function answers(call) {
  if (!own) return;
  const position = fix && reportPosition(fix.position, { enhanced: true });
  const time = fix?.time && { hour: fix.time.hour, minute: fix.time.minute };
  const channels = workingChannels(plan, 'intership-non-commercial')
    .ranked.slice(0, 3)
    .map((one) => one.designator);
  const lawful = answersTo(call, { own: own.mmsi, position, time, channels });
  if (lawful.none) say(`       no answer by selective call: ${lawful.none.reason} (${lawful.none.clause})`);
  if (lawful.answers.length === 0) return;
  const able = lawful.answers.filter((answer) => answer.meaning !== 'unable');
  const unable = lawful.answers.length - able.length;
  say(
    `       may be answered: ${able.map((answer) => answer.label).join('; ')}${unable > 0 ? `; or unable, with one of ${unable} reasons` : ''}`,
  );
  say(
    `       the first as a sentence to the radio: ${writeSentences(lawful.answers[0].call, { direction: 'commanded' }).join(' ')}`,
  );
}

const lost = readings.filter((reading) => reading.kind === 'call').length === 0;
if (lost) say('\nNo call was found in this log.');

mkdirSync(options.out, { recursive: true });
const gpx = join(options.out, 'waypoints.gpx');
writeFileSync(gpx, toGpx([...waypoints.values()], { creator: 'seahail' }));
say(`\n${calls.size} calls, ${damaged} damaged lines, ${waypoints.size} waypoints written to ${gpx}`);
overTheAir();
if (waypoints.size > 0)
  say('A reported position may be old, cut or mistaken: keep a look-out, and do not steer by it alone.');
say('Do not send test calls in the distress format. National rules and the licence decide what may be sent.');

/** The same calls as sound: made by the library, saved, read and decoded again. Distress formats stay in the file. */
function overTheAir() {
  const sampleRate = 48_000;
  const parts = [...calls.values()]
    .filter((call) => call.from !== null && call.to?.mmsi !== null) // a sentence does not carry all of a call
    .map((call) => modulate(encodeCall(call), { sampleRate, staysOffAir: true, leadIn: 0.2, tail: 0.2 }));
  if (parts.length === 0) return;
  const samples = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let offset = 0;
  for (const part of parts) {
    samples.set(part, offset);
    offset += part.length;
  }
  const wav = join(options.out, 'calls.wav');
  writeFileSync(wav, writeWav(samples, { sampleRate }));
  const sound = readWav(readFileSync(wav));
  if (!sound.ok) stop(sound.issues[0].message);
  const heard = [];
  const receiver = createReceiver({
    sampleRate: sound.value.sampleRate,
    onReception: (burst) => heard.push(burst),
  });
  receiver.push(sound.value.samples);
  receiver.flush();
  say(`\nThe same calls as sound, ${wav}: ${parts.length} bursts made, ${heard.length} decoded`);
  for (const { reception, startSample } of heard) {
    const { sentence } = describeCall(reception.call, { directory: known, own: own?.mmsi });
    say(
      `  ${(startSample / sampleRate).toFixed(2).padStart(6)} s  ${reception.quality.verdict.padEnd(8)}  ${sentence}`,
    );
  }
}

function nameFor(mmsi) {
  const digits = formatIdentity(mmsi);
  return known(mmsi) === undefined ? digits : `${known(mmsi)} (${digits})`;
}

function required(name, result, wanted) {
  if (result.ok) return result.value;
  if (wanted) stop(`${name}: ${result.issues[0].message}`);
  return undefined;
}

function clock(at) {
  return at === null ? '--:--' : new Date(at).toISOString().slice(11, 16);
}

function miles(metres) {
  return `${(metres / 1852).toFixed(1)} M`;
}

function degrees(bearing) {
  return `${String(Math.round(bearing) % 360).padStart(3, '0')}°`;
}

function words(kind) {
  return kind.replaceAll('-', ' ');
}

function say(text) {
  console.log(text);
}

function stop(text) {
  console.error(text);
  process.exit(1);
}
