import type { AisReport } from '../../report/index.ts';
import { STATUSES } from '../../report/internal.ts';
import type { Notice } from '../../result/index.ts';
import { instantOf } from '../field/utc-field.ts';
import { issue } from '../texts.ts';
import { characters, type Payload, signed, unsigned } from './payload.ts';

/** A report, or `null` and a notice that says why there is none. */
export interface DecodedAis {
  readonly report: AisReport | null;
  readonly notices: readonly Notice[];
}

type Draft = { -readonly [Key in keyof AisReport]: AisReport[Key] };

const CLAUSE = 'ITU-R M.1371-6 Annex 7';
/** Bits without which a message says nothing of use: its last field that is read, some senders cut the rest. */
const LEAST_BITS: ReadonlyMap<number, number> = /* @__PURE__ */ new Map([
  [1, 137],
  [2, 137],
  [3, 137],
  [4, 134],
  [5, 240],
  [9, 128],
  [11, 134],
  [18, 133],
  [19, 271],
  [21, 219],
  [24, 132],
  [27, 94],
]);
/**
 * Reads an AIS message; others than 1–5, 9, 11, 18, 19, 21, 24 and 27 give a notice.
 *
 * Source: ITU-R M.1371-6 Annex 7, bit tables of these messages, as publicly restated. Two widely published sentences
 * decode to their published values, and the lengths add up to those of the tables.
 */
export function decodeAis(payload: Payload): DecodedAis {
  const message = unsigned(payload, 0, 6);
  const least = LEAST_BITS.get(message);
  if (least === undefined) return refused(issue('sentence-ais-unread', {}, about(String(message))));
  if (payload.length < least) {
    return refused(issue('sentence-ais-short', { message, least }, about(String(payload.length))));
  }
  const number = unsigned(payload, 8, 30);
  if (number > 999_999_999) {
    return refused(issue('sentence-ais-identity', {}, about(String(number))));
  }
  const draft: Draft = { message, mmsi: String(number).padStart(9, '0'), station: 'ship-class-a' };
  const notices: Notice[] = [];
  fill(draft, payload, notices);
  return { report: draft, notices };
}

function fill(draft: Draft, payload: Payload, notices: Notice[]): void {
  switch (draft.message) {
    case 1:
    case 2:
    case 3:
      if (/^97[024]/.test(draft.mmsi)) draft.station = 'locating-device';
      readStatus(draft, unsigned(payload, 38, 4));
      readMotion(draft, payload, { speed: 50, course: 116, heading: 128 });
      readPlace(draft, payload, 60, notices);
      readSecond(draft, unsigned(payload, 137, 6), payload.length >= 143);
      break;
    case 4:
    case 11:
      draft.station = draft.message === 4 ? 'base-station' : 'ship';
      readInstant(draft, payload);
      readPlace(draft, payload, 78, notices);
      break;
    case 5: {
      const imo = String(unsigned(payload, 40, 30));
      // Newer editions of the Recommendation let the field carry numbers of other schemes: an IMO number has seven digits.
      if (/^\d{7}$/.test(imo)) draft.imo = imo;
      readText(draft, 'callSign', payload, 70, 42);
      readText(draft, 'name', payload, 112, 120);
      readType(draft, unsigned(payload, 232, 8));
      break;
    }
    case 9: {
      draft.station = 'rescue-aircraft';
      const altitude = unsigned(payload, 38, 12);
      if (altitude !== 4095) draft.altitude = altitude;
      const speed = unsigned(payload, 50, 10);
      if (speed !== 1023) draft.speed = speed;
      readMotion(draft, payload, { course: 116 });
      readPlace(draft, payload, 60, notices);
      readSecond(draft, unsigned(payload, 128, 6), payload.length >= 134);
      break;
    }
    case 18:
    case 19:
      draft.station = 'ship-class-b';
      readMotion(draft, payload, { speed: 46, course: 112, heading: 124 });
      readPlace(draft, payload, 56, notices);
      readSecond(draft, unsigned(payload, 133, 6), payload.length >= 139);
      if (draft.message === 19) {
        readText(draft, 'name', payload, 143, 120);
        readType(draft, unsigned(payload, 263, 8));
      }
      break;
    case 21:
      draft.station = 'aid-to-navigation';
      readType(draft, unsigned(payload, 38, 5));
      readAidName(draft, payload);
      readPlace(draft, payload, 163, notices);
      readSecond(draft, unsigned(payload, 253, 6), payload.length >= 259);
      if (payload.length >= 260) draft.offPosition = unsigned(payload, 259, 1) === 1;
      if (payload.length >= 270) draft.virtual = unsigned(payload, 269, 1) === 1;
      break;
    case 24:
      draft.station = 'ship-class-b';
      if (unsigned(payload, 38, 2) === 0) readText(draft, 'name', payload, 40, 120);
      else {
        readType(draft, unsigned(payload, 40, 8));
        readText(draft, 'callSign', payload, 90, 42);
      }
      break;
    case 27:
      draft.station = 'ship';
      readStatus(draft, unsigned(payload, 40, 4));
      readLongRange(draft, payload, notices);
      break;
  }
}

interface MotionBits {
  readonly speed?: number;
  readonly course: number;
  readonly heading?: number;
}

function readMotion(draft: Draft, payload: Payload, at: MotionBits): void {
  if (at.speed !== undefined) {
    const tenths = unsigned(payload, at.speed, 10);
    if (tenths !== 1023) draft.speed = tenths / 10;
  }
  const tenths = unsigned(payload, at.course, 12);
  if (tenths < 3600) draft.course = tenths / 10;
  if (at.heading !== undefined) {
    const heading = unsigned(payload, at.heading, 9);
    if (heading < 360) draft.heading = heading;
  }
}

/** One bit of accuracy, 28 of longitude, 27 of latitude, in ten-thousandths of a minute. */
function readPlace(draft: Draft, payload: Payload, from: number, notices: Notice[]): void {
  const longitude = signed(payload, from + 1, 28) / 600_000;
  const latitude = signed(payload, from + 29, 27) / 600_000;
  place(draft, latitude, longitude, unsigned(payload, from, 1) === 1, notices);
}

/** Message 27: tenths of a minute, whole knots and degrees. */
function readLongRange(draft: Draft, payload: Payload, notices: Notice[]): void {
  const longitude = signed(payload, 44, 18) / 600;
  const latitude = signed(payload, 62, 17) / 600;
  place(draft, latitude, longitude, unsigned(payload, 38, 1) === 1, notices);
  const speed = unsigned(payload, 79, 6);
  if (speed !== 63) draft.speed = speed;
  const course = unsigned(payload, 85, 9);
  if (course < 360) draft.course = course;
}

/** 91 degrees of latitude and 181 of longitude mean that there is no position. */
function place(
  draft: Draft,
  latitude: number,
  longitude: number,
  accurate: boolean,
  notices: Notice[],
): void {
  if (latitude === 91 || longitude === 181) return;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
    const received = `${latitude}, ${longitude}`;
    notices.push(issue('sentence-ais-position', {}, about(received)));
    return;
  }
  draft.position = { latitude, longitude };
  draft.accurate = accurate;
}

function readStatus(draft: Draft, value: number): void {
  const status = STATUSES.get(value);
  if (status !== undefined) draft.status = status;
}

function readSecond(draft: Draft, value: number, present: boolean): void {
  if (present && value < 60 && draft.position !== undefined) draft.second = value;
}

function readType(draft: Draft, value: number): void {
  if (value > 0) draft.type = value;
}

function readText(
  draft: Draft,
  key: 'name' | 'callSign',
  payload: Payload,
  from: number,
  count: number,
): void {
  tell(draft, key, characters(payload, from, count));
}

/** Twenty characters, and up to fourteen more at the end of the message. */
function readAidName(draft: Draft, payload: Payload): void {
  const first = characters(payload, 43, 120);
  tell(draft, 'name', first.length < 20 ? first : first + characters(payload, 272, 84));
}

/** Blanks at the edges are none of the text. */
function tell(draft: Draft, key: 'name' | 'callSign', value: string): void {
  const text = value.trim();
  if (text !== '') draft[key] = text;
}

function readInstant(draft: Draft, payload: Payload): void {
  const year = unsigned(payload, 38, 14);
  const [hour, minute, second] = [
    unsigned(payload, 61, 5),
    unsigned(payload, 66, 6),
    unsigned(payload, 72, 6),
  ];
  if (year < 1900 || year > 9999 || hour > 23 || minute > 59 || second > 59) return;
  const [month, day] = [unsigned(payload, 52, 4), unsigned(payload, 56, 5)];
  const instant = instantOf(year, month, day, { hour, minute, second });
  if (instant !== null) draft.instant = instant;
}

function refused(notice: Notice): DecodedAis {
  return { report: null, notices: [notice] };
}

function about(received: string): Pick<Notice, 'at' | 'received' | 'clause'> {
  return { at: ['AIS'], received, clause: CLAUSE };
}
