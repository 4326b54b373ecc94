import { decodeFields, type Symbols } from '../../call/index.ts';
import { unnamedChannelNotices } from '../../call/internal.ts';
import { type Coordinates, resolveTime, type TimeOfDay } from '../../position/index.ts';
import type { NetworkMessage, Reading, Readings } from '../../report/index.ts';
import { createRepeats, FIX_QUALITIES, HALF_DAY, type Numbered } from '../../report/internal.ts';
import type { Notice } from '../../result/index.ts';
import type { Quantity } from '../field/field.ts';
import { hexOf, plainText, readVariableText } from '../field/text.ts';
import { AIS_REPORT_GROUPS, readAisReport } from '../message/ais-report.ts';
import { readDscCall } from '../message/dsc-call.ts';
import {
  ADDRESS_CLAIM,
  AIS_ADDRESSED_TEXT,
  AIS_TEXT,
  COURSE_AND_SPEED,
  DSC_CALL,
  GNSS_POSITION,
  HEADING,
  MAN_OVERBOARD,
  NAVIGATION,
  POSITION,
  PRODUCT,
  RADIO,
  ROUTE,
  SYSTEM_TIME,
  TIME_AND_DATE,
  VARIATION,
  WAYPOINTS,
} from '../message/layout.ts';
import { decodePayload } from '../message/payload.ts';
import { degreesOf, degreesOfWide, instantOf, knotsOf, known, signedDegrees } from '../message/quantity.ts';
import { fieldNotice } from '../texts.ts';

type MessageReading = Reading<keyof Readings, NetworkMessage>;
type Base = Pick<MessageReading, 'line' | 'offset' | 'at' | 'notices' | 'sources'>;

/** What the reader keeps from message to message. */
export interface Context {
  readonly own: Symbols | null;
  /** Numbers a call, by what it says; `span`: within how many milliseconds the same is the same call. */
  readonly numberOf: (key: string, when: CallInstant) => Numbered;
}

export function createContext(own: Symbols | null): Context {
  return { own, numberOf: createRepeats<CallInstant>(isApart) };
}

interface CallInstant {
  readonly at: number | null;
  readonly span: number;
}

function isApart(before: CallInstant, { at, span }: CallInstant): boolean {
  return at !== null && before.at !== null && Math.abs(at - before.at) > span;
}

/** Reads the messages of one parameter group. */
export type MessageReader = (
  payload: Uint8Array,
  base: Base,
  context: Context,
) => MessageReading | MessageReading[];

/** What reads the messages of each parameter group that a reading has a kind for. */
export const READERS: ReadonlyMap<number, MessageReader> = /* @__PURE__ */ new Map([
  [DSC_CALL.pgn, callReading],
  [POSITION.pgn, positionReading],
  [GNSS_POSITION.pgn, gnssReading],
  [TIME_AND_DATE.pgn, clockReading],
  [SYSTEM_TIME.pgn, clockReading],
  [COURSE_AND_SPEED.pgn, courseReading],
  [HEADING.pgn, headingReading],
  [VARIATION.pgn, variationReading],
  [RADIO.pgn, radioReading],
  [MAN_OVERBOARD.pgn, manOverboard],
  [NAVIGATION.pgn, waypointReadings],
  [ROUTE.pgn, waypointReadings],
  [WAYPOINTS.pgn, waypointReadings],
  [AIS_TEXT.pgn, safetyText],
  [AIS_ADDRESSED_TEXT.pgn, safetyText],
  [ADDRESS_CLAIM.pgn, nodeReading],
  [PRODUCT.pgn, nodeReading],
  ...AIS_REPORT_GROUPS.map((pgn): [number, MessageReader] => [pgn, aisReading]),
]);

/** A radio that writes a call twice does so within this. Common practice, no source. */
const SAME_CALL_MS = 10_000;
/** A clock that has lost 1024 weeks is this much early. */
const ROLLOVER = 1024 * 7 * 86_400_000;

/** Field by field: a spread costs more than all else that is done for most messages. */
export function other({ line, offset, at, notices, sources }: Base): MessageReading {
  return { kind: 'other', line, offset, at, notices, sources };
}

function aisReading(payload: Uint8Array, base: Base): MessageReading {
  const ais = readAisReport((base.sources[0] as NetworkMessage).pgn, payload);
  if (ais === null) return other(base);
  const { report, own, channel, notices } = ais;
  return { kind: 'ais', ...withNotices(base, notices), own, channel, report };
}

function positionReading(payload: Uint8Array, base: Base): MessageReading {
  const { latitude, longitude } = decodePayload(POSITION, payload).values;
  return ownFix(POSITION.pgn, base, placeOf(latitude, longitude), 'unstated', null);
}

function withNotices(base: Base, notices: readonly Notice[]): Base {
  return notices.length === 0 ? base : { ...base, notices: [...base.notices, ...notices] };
}

function callReading(
  payload: Uint8Array,
  base: Base,
  { own, numberOf }: Context,
): Reading<'call', NetworkMessage> {
  const { values, short } = decodePayload(DSC_CALL, payload);
  const { fields, receivedAt, notices } = readDscCall(values, own);
  const read = decodeFields(fields);
  const more: Notice[] = [];
  const { pgn } = DSC_CALL;
  if (short)
    more.push(fieldNotice('network-message-short', { pgn, field: 'payload' }, String(payload.length)));
  if (receivedAt !== null && base.at !== null && isRolledOver(receivedAt, base.at)) {
    const date = new Date(receivedAt).toISOString().slice(0, 10);
    more.push(fieldNotice('network-date-early', { pgn, field: 'Date of Receipt' }, date));
  }
  // The message number and the instant differ when one call is written twice.
  const { messageId: _, receiptDate: _d, receiptTime: _t, ...content } = values;
  const dated = fields.position !== null && fields.time !== null;
  const distress = fields.format === 112 || fields.category === 112;
  const span = distress || dated ? HALF_DAY : SAME_CALL_MS;
  const at = base.at ?? receivedAt;
  return {
    kind: 'call',
    ...withNotices(base, [...notices, ...more, ...read.notices, ...unnamedChannelNotices(read.call)]),
    at,
    ...numberOf(JSON.stringify(content), { at, span }),
    stage: 'final',
    call: read.call,
    direction: 'received',
    talker: '',
    positionTime: 'time' in read.call ? resolved(read.call.time, at) : null,
  };
}

function resolved(time: TimeOfDay | null, at: number | null): Reading<'call'>['positionTime'] {
  return time === null || at === null ? null : resolveTime(time, at);
}

/** Whether a date is 1024 weeks, or a multiple, before another, give or take a day. */
function isRolledOver(date: number, at: number): boolean {
  const cycles = Math.round((at - date) / ROLLOVER);
  return cycles > 0 && Math.abs(at - date - cycles * ROLLOVER) < 2 * 86_400_000;
}

function placeOf(latitude: Quantity, longitude: Quantity): Coordinates | null {
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return null;
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

type Fix = Reading<'own-position'>['fix'];

function ownFix(
  pgn: number,
  base: Base,
  position: Coordinates | null,
  quality: Fix['quality'],
  instant: number | null,
): MessageReading {
  const time = instant === null ? null : timeOf(instant);
  const fix: Fix = { formatter: `PGN ${pgn}`, position, quality, time, instant, speed: null, course: null };
  const { line, offset, at, notices, sources } = base;
  return { kind: 'own-position', line, offset, at, notices, sources, fix };
}

function timeOf(instant: number): NonNullable<Fix['time']> {
  const seconds = (((instant % 86_400_000) + 86_400_000) % 86_400_000) / 1000;
  return { hour: Math.floor(seconds / 3600), minute: Math.floor(seconds / 60) % 60, second: seconds % 60 };
}

function gnssReading(payload: Uint8Array, base: Base): MessageReading {
  const { values } = decodePayload(GNSS_POSITION, payload);
  const quality = FIX_QUALITIES[values.method ?? 0] ?? 'none';
  const usable = quality !== 'none' && quality !== 'simulated';
  const wide = (value: typeof values.latitude): number | null =>
    value === null ? null : degreesOfWide(value);
  const place = placeOf(wide(values.latitude), wide(values.longitude));
  return ownFix(GNSS_POSITION.pgn, base, usable ? place : null, quality, instantOf(values.date, values.time));
}

function clockReading(payload: Uint8Array, base: Base): MessageReading {
  const { date, time } =
    base.sources[0]?.pgn === SYSTEM_TIME.pgn
      ? decodePayload(SYSTEM_TIME, payload).values
      : decodePayload(TIME_AND_DATE, payload).values;
  const instant = instantOf(date, time);
  return instant === null ? other(base) : { kind: 'clock', ...base, instant };
}

type Motion = { -readonly [Key in keyof MotionReading]: MotionReading[Key] };
type MotionReading = Reading<'motion', NetworkMessage>;

function motion({ line, offset, at, notices, sources }: Base): Motion {
  return { kind: 'motion', line, offset, at, notices, sources };
}

function variationReading(payload: Uint8Array, base: Base): MessageReading {
  const reading = motion(base);
  const variation = known(decodePayload(VARIATION, payload).values.variation);
  if (variation !== undefined) reading.variation = signedDegrees(variation);
  return reading;
}

function headingReading(payload: Uint8Array, base: Base): MessageReading {
  const { values } = decodePayload(HEADING, payload);
  const reading = motion(base);
  const [heading, variation] = [known(values.heading), known(values.variation)];
  if (heading !== undefined && values.reference === 0) reading.heading = degreesOf(heading);
  if (heading !== undefined && values.reference === 1) reading.magneticHeading = degreesOf(heading);
  if (variation !== undefined) reading.variation = signedDegrees(variation);
  return reading;
}

function courseReading(payload: Uint8Array, base: Base): MessageReading {
  const { values } = decodePayload(COURSE_AND_SPEED, payload);
  const reading = motion(base);
  const [course, speed] = [known(values.course), known(values.speed)];
  if (course !== undefined && values.reference === 0) reading.course = degreesOf(course);
  if (course !== undefined && values.reference === 1) reading.magneticCourse = degreesOf(course);
  if (speed !== undefined) reading.speed = knotsOf(speed);
  return reading;
}

function radioReading(payload: Uint8Array, base: Base): MessageReading {
  const { values } = decodePayload(RADIO, payload);
  return {
    kind: 'radio',
    ...base,
    receiveKHz: kHzOf(values.receive),
    transmitKHz: kHzOf(values.transmit),
    channel: plainText(values.channel),
    power: known(values.power) ?? null,
  };
}

/** Frequencies travel in steps of ten hertz. */
function kHzOf(value: Quantity): number | null {
  return typeof value === 'number' && value > 0 ? value / 100 : null;
}

function manOverboard(payload: Uint8Array, base: Base): MessageReading {
  const { values } = decodePayload(MAN_OVERBOARD, payload);
  const { status, mmsi } = values;
  return {
    kind: 'man-overboard',
    ...base,
    status: status === 0 || status === 1 ? 'activated' : status === 2 ? 'test' : null,
    position: placeOf(values.latitude, values.longitude),
    instant: instantOf(values.date, values.time),
    mmsi: typeof mmsi === 'number' && mmsi > 0 && mmsi <= 999_999_999 ? nineDigits(mmsi) : null,
  };
}

function nineDigits(number: number): string {
  return String(number).padStart(9, '0');
}

function waypointReadings(payload: Uint8Array, base: Base): MessageReading | MessageReading[] {
  const pgn = base.sources[0]?.pgn;
  if (pgn === NAVIGATION.pgn) {
    const { latitude, longitude } = decodePayload(NAVIGATION, payload).values;
    const position = placeOf(latitude, longitude);
    return [
      position === null ? other(base) : { kind: 'waypoint', ...base, waypoint: { position, name: '' } },
    ];
  }
  const { waypoints } =
    pgn === ROUTE.pgn ? decodePayload(ROUTE, payload).values : decodePayload(WAYPOINTS, payload).values;
  const readings = waypoints.flatMap(({ name, latitude, longitude }): MessageReading[] => {
    const position = placeOf(latitude, longitude);
    const waypoint = position && { position, name: readVariableText(name).text ?? '' };
    return waypoint === null ? [] : [{ kind: 'waypoint', ...base, waypoint }];
  });
  return readings.length === 0 ? [other(base)] : readings;
}

function safetyText(payload: Uint8Array, base: Base): MessageReading {
  const addressed =
    base.sources[0]?.pgn === AIS_ADDRESSED_TEXT.pgn
      ? decodePayload(AIS_ADDRESSED_TEXT, payload).values
      : null;
  const { mmsi, text } = addressed ?? decodePayload(AIS_TEXT, payload).values;
  const said = readVariableText(text).text;
  if (mmsi === null || said === null) return other(base);
  const to = addressed?.to ?? null;
  return {
    kind: 'safety-text',
    ...base,
    from: nineDigits(mmsi),
    to: to === null ? null : nineDigits(to),
    text: said,
  };
}

function nodeReading(payload: Uint8Array, base: Base): MessageReading {
  const { pgn, source } = base.sources[0] as NetworkMessage;
  if (pgn === PRODUCT.pgn) {
    const { values } = decodePayload(PRODUCT, payload);
    const nothing = { name: null, manufacturer: null, function: null, deviceClass: null };
    return { kind: 'node', ...base, source, ...nothing, model: plainText(values.model) };
  }
  const { values } = decodePayload(ADDRESS_CLAIM, payload);
  const whole = payload.length >= 8;
  return {
    kind: 'node',
    ...base,
    source,
    name: whole ? hexOf(payload.slice(0, 8).reverse()) : null,
    manufacturer: values.manufacturer,
    function: values.function,
    deviceClass: values.deviceClass,
    model: null,
  };
}
