// The main job on a recorded log of the serial cable, the network or both: who called, what was said, what may be
// answered, where they are.
// `npm run demo -- --help` tells the options.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { answersTo, checkCall, describeCall } from 'seahail/call';
import { findChannel, formatMegahertz, workingChannels } from 'seahail/channel';
import { stationOf } from 'seahail/directory';
import { formatIdentity, identityForms, parseIdentity } from 'seahail/identity';
import { administrationName, administrationOf } from 'seahail/identity/administrations';
import { findNetworkFaults, readNetworkLog } from 'seahail/network';
import {
  boundsFrom,
  centreOf,
  describeBounds,
  formatPosition,
  rangeAndBearing,
  resolveTime,
  timeToReach,
  toGpx,
  toReportedPosition,
} from 'seahail/position';
import { readSentences, writeSentences } from 'seahail/sentence';
import { spokenScript } from 'seahail/speech';
import { createClock, duration, timeOfDay } from './evening-watch/clock.mjs';
import { readOptions, stop } from './evening-watch/options.mjs';
import { canBeSent, overTheAir } from './evening-watch/over-the-air.mjs';
import { pairCalls } from './evening-watch/two-cables.mjs';

/** A position older than this is not given to others: ITU-R M.821-1 and M.493-15, from memory. */
const STALE = 23.5 * 3600;
const DAMAGED_SHOWN = 3;
const BURSTS_MADE = 20;
const ANSWERS = new Set([
  'individual-acknowledgement',
  'unable-to-comply',
  'position-reply',
  'test-acknowledgement',
  'polling-acknowledgement',
]);

const { title, serial, network, own, directory, plan, speed, out } = readOptions();
const known = (mmsi) => stationOf(directory, mmsi)?.name;
const clock = createClock();
const calls = new Map();
const waypoints = new Map();
const cited = new Set();
let fix = null;
let damaged = 0;
let damagedRun = 0;
let commanded = false;

say(title);
say(`Plan of the waters: ${plan.name}. Times are UTC`);
if (own) say(`Own station: ${nameFor(own.mmsi)}`);
else say('Own identity not given (--own): no answers are composed');

const asOwn = own && { own: own.mmsi };
for (const reading of serial ? readSentences(serial, asOwn) : readNetworkLog(network, asOwn)) {
  clock.hear(reading);
  if (reading.kind === 'own-position' && reading.fix.position !== null) {
    const { fix: latest, at } = reading;
    fix = {
      ...latest,
      speed: latest.speed ?? fix?.speed ?? 0,
      at: clock.at(reading),
      dated: at !== null,
    };
  }
  // The network has the speed in a message of its own.
  if (reading.kind === 'motion' && fix !== null && reading.speed !== undefined)
    fix.speed = Math.round(reading.speed * 10) / 10;
  if (reading.kind === 'damaged') damage(reading);
  if (reading.kind === 'call' && reading.stage === 'final') {
    endOfDamage();
    const day = clock.newDay(reading);
    if (day !== undefined) say(`\n${day}`);
    tell(reading, clock.at(reading));
  }
}
endOfDamage();
if (serial && network) bothCables();
finish();

function damage({ line, issues }) {
  damaged += 1;
  damagedRun += 1;
  if (damagedRun <= DAMAGED_SHOWN) say(`\n       line ${line} is damaged: ${issues[0].message}`);
}

function endOfDamage() {
  const more = damagedRun - DAMAGED_SHOWN;
  if (more > 0) say(`\n       and ${counted(more, 'damaged line')} more before the next call`);
  damagedRun = 0;
}

function tell({ call, line, notices, event, repeat, at: received }, at) {
  if (repeat > 0) {
    say(`\n${timeOfDay(at)}  ${sentence(words(call.kind))} of ${nameFor(call.from)} again, line ${line}`);
    return;
  }
  calls.set(event, call);
  const description = describeCall(call, { directory: known, own: own?.mmsi });
  say(`\n${timeOfDay(at)}  ${description.sentence}`);
  if (call.from !== null) say(`       number ${formatIdentity(call.from)}: ${whose(call.from)}`);
  const remarks = [...notices, ...checkCall(call, { plan })]
    .filter(({ code }) => code !== 'call-position-unknown') // a caution says it
    .map(({ message }) => message);
  for (const remark of new Set(remarks)) say(`       note: ${remark}`);
  if (call.channel) channel(call.channel);
  if (call.position) place(call, at, received !== null);
  answers(call, at);
  for (const { text, clause } of description.cautions) say(`       ! ${cite(text, clause)}`);
  speech(call);
}

function whose(mmsi) {
  const identity = parseIdentity(mmsi);
  if (!identity.ok) return identity.issues[0].message;
  const { kind, mid } = identity.value;
  const row = mid === undefined ? undefined : administrationOf(mid);
  const form = identityForms.find((one) => one.kind === kind).name;
  return row === undefined ? form : `${form}; administration: ${administrationName(row, 'en')}`;
}

function channel(designator) {
  const found = findChannel(plan, designator);
  if (found.ok) say(`       channel ${found.value.designator}: ${frequencies(found.value)}`);
}

function frequencies({ shipKHz, coastKHz }) {
  if (shipKHz === null || coastKHz === null || shipKHz === coastKHz)
    return `${formatMegahertz(shipKHz ?? coastKHz)} MHz, one frequency`;
  return `ship sends on ${formatMegahertz(shipKHz)} MHz, coast on ${formatMegahertz(coastKHz)} MHz`;
}

function place(call, at, dated) {
  const who = call.distressed ?? call.from ?? 'vessel not known';
  const centre = centreOf(call.position);
  const exact = call.position.fraction !== undefined;
  const middle = exact ? '' : ', middle of a box one minute wide';
  say(`       at ${formatPosition(centre, { style: 'degrees-minutes' })}${middle}`);
  const fixedAt = at === null || call.time === null ? null : resolveTime(call.time, at).at;
  // The acknowledgement of an alert repeats its position without the decimals: the finer one is kept.
  const before = waypoints.get(who);
  if (exact || before === undefined || before.fixedAt !== fixedAt) {
    waypoints.set(who, { fixedAt, waypoint: waypoint(call, who, centre, dated ? fixedAt : null) });
  }
  if (fix === null) return;
  const bounds = boundsFrom(fix.position, call.position, { at: fixedAt, now: at ?? 0, speed });
  const { metres, bearing } = rangeAndBearing(fix.position, centre);
  // Where the bounds leave every bearing open, that of the middle would mislead.
  const towards = bounds.sector === null || bearing === null ? '' : `, bearing ${degrees(bearing)} true`;
  const age = ageOfFix(at);
  const old = age >= 120 ? ` of ${duration(age)} before` : '';
  say(`       from own fix${old} ${miles(metres)}${towards}; ${describeBounds(bounds)}`);
  const passage = fix.speed > 0 ? timeToReach(fix.position, centre, { speed: fix.speed }) : null;
  if (passage && passage.seconds < 86_400)
    say(`       ${duration(passage.seconds)} at own ${fix.speed} knots, if the way is clear`);
}

function waypoint(call, who, position, time) {
  return {
    position,
    name: known(who) ?? who,
    ...(time !== null && { time }),
    description: describeCall(call, { directory: known }).sentence,
    source: 'Position reported by DSC: may be cut, old or typed by hand',
    type: words(call.kind),
  };
}

function answers(call, at) {
  if (!own) return;
  const given = fix !== null && ageOfFix(at) < STALE;
  const position = given ? toReportedPosition(fix.position, { enhanced: true }) : null;
  const time = given && fix.time ? { hour: fix.time.hour, minute: fix.time.minute } : null;
  const lawful = answersTo(call, { own: own.mmsi, plan, position, time, channels: othersToOffer(call) });
  const distress = call.kind.startsWith('distress'); // the cautions say what to do
  if (lawful.none && !distress && !ANSWERS.has(call.kind))
    say(`       no answer by selective call: ${cite(lawful.none.reason, lawful.none.clause)}`);
  const able = lawful.answers.filter((answer) => answer.meaning !== 'unable');
  const unable = lawful.answers.filter((answer) => answer.meaning === 'unable');
  const labels = able.map((answer) => answer.label);
  if (unable.length > 0)
    labels.push(`${labels.length > 0 ? 'or ' : ''}unable, for one of ${unable.length} reasons`);
  if (labels.length === 0) return;
  say(`       may be answered: ${labels.join('; ')}`);
  const [first] = [...able, ...unable];
  const { sentences } = writeSentences(first.call, { direction: 'commanded' });
  say(`       the first of these as a sentence to the radio: ${sentences.join(' ')}`);
  commanded = true;
}

/** Other channels to offer a ship; a coast station names the channel itself. */
function othersToOffer({ from, channel: named }) {
  if (isAshore(from) || named == null) return [];
  return workingChannels(plan, 'intership-non-commercial')
    .ranked.slice(0, 3)
    .map(({ designator }) => designator);
}

function isAshore(mmsi) {
  const identity = parseIdentity(mmsi ?? '');
  return identity.ok && identity.value.kind.startsWith('coast');
}

/** The words for the voice channel, where a distress may ask for them. */
function speech(call) {
  if (!own || (call.kind !== 'distress-alert' && call.kind !== 'distress-relay')) return;
  const station = { ...stationOf(directory, own.mmsi), mmsi: own.mmsi };
  const script = spokenScript(call, station, { directory: (mmsi) => stationOf(directory, mmsi) });
  if (script.lines.length === 0) return;
  const spoken = script.lines.map((line) => line.say).join(' / ');
  say(`       words for channel ${script.channel}, should it fall to this station: ${spoken}`);
}

/** Seconds between own fix and a reading; less than a day when the fix has no date. */
function ageOfFix(at) {
  if (at === null || fix.at === null) return 0;
  const seconds = (at - fix.at) / 1000;
  return fix.dated ? Math.max(0, seconds) : ((seconds % 86_400) + 86_400) % 86_400;
}

/** The same hours on the other cable: what each alone brought, and where they differ. */
function bothCables() {
  const readings = readNetworkLog(network, asOwn);
  const heard = readings.filter(({ kind, repeat }) => kind === 'call' && repeat === 0);
  const rows = pairCalls(
    [...calls.values()],
    heard.map(({ call }) => call),
  );
  const alike = rows.filter((row) => row.serial && row.network && row.differ.length === 0).length;
  say(`\nThe same on the network: ${counted(heard.length, 'call')}, ${alike} of them alike on both cables`);
  for (const row of rows) {
    const description = describeCall(row.network ?? row.serial, { directory: known, own: own?.mmsi });
    if (row.serial === null) say(`  network only  ${description.sentence}`);
    else if (row.network === null) say(`  serial only   ${description.sentence}`);
    else if (row.differ.length > 0) say(`  not alike     ${description.sentence}: ${row.differ.join(', ')}`);
  }
  for (const { id, certainty, remedy } of findNetworkFaults(network, asOwn).findings)
    say(`  fault         ${words(id)}, ${certainty}: ${remedy.message}`);
}

function finish() {
  if (calls.size === 0) say('\nNo call was found in this log.');
  if (waypoints.size > 0 && fix === null)
    say('\nNo own position was found in this log: no range or bearing.');
  try {
    mkdirSync(out, { recursive: true });
    const gpx = join(out, 'waypoints.gpx');
    const points = [...waypoints.values()].map(({ waypoint: point }) => point);
    writeFileSync(gpx, toGpx(points, { creator: 'seahail' }));
    say(
      `\n${counted(calls.size, 'call')}, ${counted(damaged, 'damaged line')}, ${counted(points.length, 'waypoint')} in ${gpx}`,
    );
    sound(join(out, 'calls.wav'));
  } catch (error) {
    if (error.code === undefined) throw error;
    stop(`--out ${out}: cannot be written to (${error.code})`);
  }
  if (waypoints.size > 0)
    say(
      'A reported position may be old, truncated or wrong: keep a look-out, and do not steer by a report alone.',
    );
  if (commanded)
    say('A sentence sent to the radio can make it transmit: only a person who may operate it decides that.');
  say('Never test with a distress alert. National rules and the licence decide what may be sent.');
}

/** The calls once more as sound, as far as the cable said everything of them. */
function sound(file) {
  const whole = [...calls.values()].filter(canBeSent);
  const made = whole.slice(0, BURSTS_MADE);
  if (made.length === 0) return;
  const heard = overTheAir(made, file);
  const left = calls.size - made.length;
  say(
    `\nThe same calls as sound, ${file}: ${counted(made.length, 'burst')} made, ${heard.length} decoded${left > 0 ? `; ${left} left out, as a cable does not always say everything of a call` : ''}`,
  );
  if (whole.length > made.length) say(`  only the first ${BURSTS_MADE}`);
  for (const { seconds, call, verdict } of heard) {
    const description = describeCall(call, { directory: known, own: own?.mmsi });
    say(`  ${seconds.toFixed(2).padStart(6)} s  ${verdict.padEnd(8)}  ${description.sentence}`);
  }
  if (made.some((call) => call.kind.startsWith('distress')))
    say('This sound holds a distress call: never play it into a transmitter.');
}

function nameFor(mmsi) {
  if (mmsi === null) return 'a station not named';
  const name = known(mmsi);
  return name === undefined ? mmsi : `${name} (${mmsi})`;
}

/** A rule with its clause, the clause once. */
function cite(text, clause) {
  if (cited.has(text)) return text;
  cited.add(text);
  return `${text} (${clause})`;
}

function miles(metres) {
  return `${(metres / 1852).toFixed(1)} M`;
}

function degrees(bearing) {
  return `${String(Math.round(bearing) % 360).padStart(3, '0')}°`;
}

function counted(number, thing) {
  return `${number} ${thing}${number === 1 ? '' : 's'}`;
}

function words(kind) {
  return kind.replaceAll('-', ' ');
}

function sentence(text) {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

function say(text) {
  console.log(text);
}
