import { isDistressCall } from '../../call/index.ts';
import {
  type Coordinates,
  type ReportedPosition,
  rangeAndBearing,
  type TimeOfDay,
} from '../../position/index.ts';
import { cornerOf, resolveTime } from '../../position/internal.ts';
import type { Reading } from '../../report/index.ts';
import { rememberLatest } from '../../report/internal.ts';
import type { CodedText } from '../../result/index.ts';
import type { TermOf } from '../../result/internal.ts';
import { textAt } from '../field/text-at.ts';
import type { Collector } from './fault.ts';
import { callFields } from './line-fault.ts';
import { type faultTexts, said } from './texts.ts';

/** What the stream has told of places so far; bounded. */
export interface Places {
  own: Coordinates | null;
  /** Last place of each station by AIS. */
  readonly ais: Map<string, Coordinates>;
  /** Last report of each station by call. */
  readonly reports: Map<string, { readonly position: ReportedPosition; readonly time: TimeOfDay }>;
}

const NAUTICAL_MILE = 1852;
/** Farther than any VHF call is heard from deck to deck: some tens of miles are usual (common practice, no source). */
const BEYOND_VHF = 100 * NAUTICAL_MILE;
export const MOST_STATIONS = 1000;
/** An hour, give or take five minutes for the clocks, is a time zone; so is half an hour in some places. */
const HALF_HOUR = 1800;
const CLOCK_DOUBT = 300;
/** Minutes of arc left for movement between two sources of a position. */
const MOVEMENT = 0.15;

/** Adds what a report shows when held against own position, the clock and the ship's own other words. */
export function addPlausibility(
  reading: Reading<'call'>,
  position: ReportedPosition,
  time: TimeOfDay | null,
  places: Places,
  now: number | null,
  collector: Collector,
): void {
  const { line, call } = reading;
  const text = textAt(callFields(reading), 5);
  if (places.own !== null && isVhf(reading) && wouldBeNearMirrored(places.own, cornerOf(position))) {
    collector.add('wrong-quadrant', 'likely', { line, field: 6, seen: text });
  }
  if (call.from !== null) {
    const source = roundedBy(call.from, position, time, places);
    if (source !== null)
      collector.add('minutes-rounded', 'likely', {
        line,
        field: 6,
        seen: said('sentence-seen-minute-off', { position: text, source }),
      });
    if (time !== null) rememberLatest(places.reports, call.from, { position, time }, MOST_STATIONS);
  }
  if (time !== null) {
    const offset = zoneLike(reading.positionTime?.age ?? (now === null ? 0 : resolveTime(time, now).age));
    if (offset !== null) {
      const certainty = reading.positionTime === null ? 'possible' : 'likely';
      collector.add('wrong-time', certainty, { line, field: 7, seen: offsetSaid(offset) });
    }
  }
}

/** MF and HF calls come from anywhere. */
function isVhf({ talker, call }: Reading<'call'>): boolean {
  return talker !== 'CT' && !(isDistressCall(call) && call.subsequent === 'telephony-j3e');
}

function wouldBeNearMirrored(own: Coordinates, reported: Coordinates): boolean {
  const { latitude, longitude } = reported;
  if (isNear(own, reported)) return false;
  return isNear(own, { latitude: -latitude, longitude }) || isNear(own, { latitude, longitude: -longitude });
}

function isNear(one: Coordinates, other: Coordinates): boolean {
  return rangeAndBearing(one, other).metres <= BEYOND_VHF;
}

/**
 * Which word of the ship shows that her minutes are rounded and not cut: her AIS, or her last report of the
 * same minute, from which she cannot have gone a mile. Only decimals of a half and more can show it.
 */
function roundedBy(
  station: string,
  position: ReportedPosition,
  time: TimeOfDay | null,
  places: Places,
): TermOf<typeof faultTexts, 'minute-source'> | null {
  const { fraction } = position;
  if (fraction === undefined) return null;
  const rounded = { latitude: fraction.latitude >= 5000, longitude: fraction.longitude >= 5000 };
  const ais = places.ais.get(station);
  if (ais !== undefined) {
    const off = minutesBetween(cornerOf(position), ais, position);
    if (isMinuteOff(off.latitude, rounded.latitude) && isMinuteOff(off.longitude, rounded.longitude)) {
      if (rounded.latitude || rounded.longitude) return 'ais';
    }
    return null;
  }
  const last = places.reports.get(station);
  if (
    last?.position.fraction === undefined ||
    time?.hour !== last.time.hour ||
    time.minute !== last.time.minute
  ) {
    return null;
  }
  const before = last.position.fraction;
  const off = minutesBetween(cornerOf(position), cornerOf(last.position), position);
  const jumped = (minutes: number, half: boolean, decimals: number): boolean =>
    half && decimals < 5000 && isMinuteOff(minutes, true);
  return jumped(off.latitude, rounded.latitude, before.latitude) ||
    jumped(off.longitude, rounded.longitude, before.longitude)
    ? 'report'
    : null;
}

/** How many minutes of arc the first lies farther from the equator and from Greenwich than the second. */
function minutesBetween(one: Coordinates, other: Coordinates, position: ReportedPosition): Coordinates {
  const north = position.latitude.hemisphere === 'N' ? 60 : -60;
  const east = position.longitude.hemisphere === 'E' ? 60 : -60;
  return {
    latitude: (one.latitude - other.latitude) * north,
    longitude: (one.longitude - other.longitude) * east,
  };
}

/** A rounded axis is a minute too far out; one whose decimals lie below a half is where it should be. */
function isMinuteOff(minutes: number, rounded: boolean): boolean {
  return Math.abs(minutes - (rounded ? 1 : 0)) < MOVEMENT;
}

function offsetSaid(hours: number): CodedText {
  const code = hours > 0 ? 'sentence-seen-hours-before' : 'sentence-seen-hours-after';
  return said(code, { hours: Math.abs(hours) });
}

/** The offset in hours when an age looks like a time zone, else `null`. A time ahead of the receipt looks almost a day old. */
function zoneLike(age: number): number | null {
  const halves = Math.round(age / HALF_HOUR);
  if (halves < 2 || Math.abs(age - halves * HALF_HOUR) > CLOCK_DOUBT) return null;
  const hours = halves / 2;
  return hours > 12 ? hours - 24 : hours;
}
