import type { ExpansionData } from '../call.ts';
import { digitsOf, type ExpansionSet, symbolsOf } from '../fields.ts';
import { noSymbols } from '../no-symbols.ts';

/** What the sets of an expansion say. */
export interface Expansion {
  /** Eight digits of the position's finer minutes (set 100), `null` when not given. */
  readonly fraction: string | null;
  readonly data: ExpansionData | null;
}

/** In place of data: the sender asks for it (ITU-R M.821-1). */
const REQUEST = 110;
/** In place of data: the sender has none (ITU-R M.821-1). */
const NOT_AVAILABLE = 126;

/**
 * Reads the sets of an expansion; of two alike the first counts, and a set that cannot be read says nothing.
 *
 * Source: ITU-R M.821-1 §2.1.2 tables 3 to 5, sets 100 to 106, read in a restatement.
 */
export function readExpansion(sets: readonly ExpansionSet[]): Expansion {
  let fraction: string | null = null;
  const data: { -readonly [Key in keyof ExpansionData]: ExpansionData[Key] } = {};
  const requested: number[] = [];
  const unavailable: number[] = [];
  for (const set of sets) {
    const digits = digitsOf(set.symbols);
    if (isOnly(set, REQUEST)) requested.push(set.specifier);
    else if (isOnly(set, NOT_AVAILABLE)) unavailable.push(set.specifier);
    else if (set.specifier === 100 && digits?.length === 8) fraction ??= digits;
    else if (set.specifier === 101 && digits?.length === 6) data.source ??= digits;
    else if (set.specifier === 102 && digits?.length === 4) data.speed ??= Number(digits) / 10;
    else if (set.specifier === 103 && digits?.length === 4 && Number(digits) < 3600)
      data.course ??= Number(digits) / 10;
    else if (set.specifier === 104 && set.symbols.length === 0 && set.text !== undefined)
      data.stationName ??= set.text;
    else if (set.specifier === 105 && digits?.length === 24) readArea(digits, data);
    else if (set.specifier === 106 && digits?.length === 4) data.personsOnBoard ??= Number(digits);
  }
  if (requested.length > 0) data.requested = requested;
  if (unavailable.length > 0) data.unavailable = unavailable;
  return { fraction, data: Object.keys(data).length > 0 ? data : null };
}

/** Corner and sides in hundredths of a minute, speed and course in tenths; none of it when one part is out of range. */
function readArea(digits: string, data: { area?: NonNullable<ExpansionData['area']> }): void {
  const at = (place: number): number => Number(digits.slice(4 * place, 4 * place + 4));
  const [latitude = 0, longitude = 0, southward = 0, eastward = 0] = [0, 1, 2, 3].map(
    (place) => at(place) / 100,
  );
  if (Math.max(latitude, longitude, southward, eastward) >= 60 || at(5) >= 3600) return;
  data.area ??= { latitude, longitude, southward, eastward, speed: at(4) / 10, course: at(5) / 10 };
}

function areaDigits({
  latitude,
  longitude,
  southward,
  eastward,
  speed,
  course,
}: NonNullable<ExpansionData['area']>): number[] {
  const minutes = [latitude, longitude, southward, eastward];
  return [
    ...minutes.flatMap((value) => fourDigits('area-minutes', value, 59.99, 100)),
    ...fourDigits('speed', speed, 999.9, 10),
    ...courseDigits(course),
  ];
}

/**
 * The sets of an expansion in the order of their specifiers.
 *
 * @throws RangeError when a value does not fit its digits
 */
export function expansionSets(data: ExpansionData | undefined, fraction: string | null): ExpansionSet[] {
  const sets: ExpansionSet[] = [];
  if (fraction !== null) sets.push({ specifier: 100, symbols: symbolsOf(fraction) });
  if (data?.source !== undefined) sets.push({ specifier: 101, symbols: symbolsOf(sixDigits(data.source)) });
  if (data?.speed !== undefined)
    sets.push({ specifier: 102, symbols: fourDigits('speed', data.speed, 999.9, 10) });
  if (data?.course !== undefined) sets.push({ specifier: 103, symbols: courseDigits(data.course) });
  if (data?.stationName !== undefined) sets.push({ specifier: 104, symbols: [], text: data.stationName });
  if (data?.area !== undefined) sets.push({ specifier: 105, symbols: areaDigits(data.area) });
  if (data?.personsOnBoard !== undefined) {
    sets.push({ specifier: 106, symbols: fourDigits('persons', data.personsOnBoard, 9999, 1) });
  }
  for (const specifier of data?.requested ?? []) sets.push({ specifier, symbols: [REQUEST] });
  for (const specifier of data?.unavailable ?? []) sets.push({ specifier, symbols: [NOT_AVAILABLE] });
  return sets.sort((one, other) => one.specifier - other.specifier);
}

function isOnly(set: ExpansionSet, symbol: number): boolean {
  return set.symbols.length === 1 && set.symbols[0] === symbol;
}

function sixDigits(source: string): string {
  if (!/^\d{6}$/.test(source)) throw noSymbols('source', `'${source}'`);
  return source;
}

/** A course that rounds up to a full circle is north again. */
function courseDigits(course: number): number[] {
  if (!(course >= 0 && course < 360)) throw noSymbols('course', `${course}`);
  return inFour(Math.round(course * 10) % 3600);
}

function fourDigits(
  name: 'speed' | 'persons' | 'area-minutes',
  value: number,
  most: number,
  steps: number,
): number[] {
  if (!(value >= 0 && value <= most)) throw noSymbols(name, `${value}`);
  return inFour(Math.round(value * steps));
}

function inFour(whole: number): number[] {
  return symbolsOf(String(whole).padStart(4, '0'));
}
