import { failure, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import type { WrittenPosition } from './coordinates.ts';
import { type Axis, plainText, refused, type Token, textIssue, tokensOf } from './position-text.ts';
import { type Magnitude, notTwoCoordinates, readCoordinate, readIso6709 } from './read-coordinate.ts';
import { writtenIssue } from './texts.ts';

const LONGEST = 200;

/**
 * Reads a position as people and instruments write it.
 *
 * Decimal degrees, degrees and minutes, or degrees, minutes and seconds; hemisphere letters or words before or after,
 * or signs (latitude first); any Unicode marks, dashes and common digits; decimal points or commas; also the packed
 * forms `5620.33N 00630.12W` and ISO 6709 (`+5620.33-00630.12/`), and `geo:` URIs. What can be read in two ways is not read at all: the
 * issue names the doubt and, where one reading is likely, offers it as `suggestion`.
 *
 * @param text - the position, at most 200 characters; anything that is not a string is an issue
 * @returns coordinates, degrees on WGS 84 (the datum is assumed, not known), with the step they were written in, or issues; a notice where a `geo:` URI
 * had an altitude or parameters, which are left out. Never throws.
 *
 * Source: common practice; ISO 6709 (signs, packed forms), from memory; RFC 5870.
 *
 * @see {@link formatPosition}
 * @see {@link boundsFrom}
 * @see {@link toGeoUri}
 * @see {@link rangeAndBearing}
 *
 * @example
 * ```ts
 * import { formatPosition, parsePosition } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(formatPosition(valueOf(parsePosition('N 56° 20,33’ W 6° 30,12’')))); // 56°20.33′ N 006°30.12′ W
 * console.log(valueOf(parsePosition('56.5, -6.25')).longitude); // -6.25
 *
 * const doubtful = parsePosition('56,5');
 * console.log(doubtful.ok ? '' : doubtful.issues[0].suggestion); // 56, 5
 * ```
 */
export function parsePosition(text: unknown): Result<WrittenPosition> {
  if (typeof text !== 'string') {
    return refused('position-not-text', null, typeof text);
  }
  if (text.length > LONGEST) {
    return failure(writtenIssue('position-too-long', { count: text.length }));
  }
  const [, scheme, place, extra] = GEO_URI.exec(text) ?? [];
  if (scheme !== undefined) return readGeoUri(`${' '.repeat(scheme.length)}${place}`, extra as string);
  const plain = plainText(text);
  const iso = /^\s*([+-]\d+(?:\.\d+)?)([+-]\d+(?:\.\d+)?)\/?\s*$/.exec(plain);
  if (iso !== null) return readIso6709(iso[1] as string, iso[2] as string);
  const decimalCommas = plain.replace(/(?<=\d),(?=\d)/g, '.');
  const asBreaks = readPlain(plain);
  if (decimalCommas === plain) return asBreaks;
  const asDecimals = readPlain(decimalCommas);
  if (asDecimals.ok) return asBreaks.ok ? ambiguousComma(text) : asDecimals;
  // 56,5 may be two whole numbers or half of a position: only a decimal point elsewhere settles it.
  if (asBreaks.ok && !plain.includes('.')) return ambiguousComma(text, plain.replaceAll(/\s*,\s*/g, ', '));
  return asBreaks.ok || plain.includes('.') ? asBreaks : asDecimals;
}

/** RFC 5870 §3.3: `geo:`, latitude and longitude, then an altitude and parameters. */
const GEO_URI = /^(\s*geo:)(-?\d+(?:\.\d+)?,-?\d+(?:\.\d+)?)((?:,-?\d+(?:\.\d+)?)?(?:;[^;\s]+)*)\s*$/i;

function readGeoUri(place: string, extra: string): Result<WrittenPosition> {
  const [whole = '', crs = 'wgs84'] = /;crs=([^;]*)/i.exec(extra) ?? [];
  if (crs.toLowerCase() !== 'wgs84') return refused('position-geo-crs', null, quote(crs));
  const read = readPlain(place);
  const rest = extra.replace(whole, '');
  if (!read.ok || rest === '') return read;
  return success(read.value, [textIssue('position-geo-rest', null, quote(rest))]);
}

function readPlain(plain: string): Result<WrittenPosition> {
  const cut = tokensOf(plain);
  if (!cut.ok) return cut;
  const tokens = cut.value;
  if (!tokens.some(({ kind }) => kind === 'number')) return notTwoCoordinates([]);
  const labels = tokens.flatMap((token) => (token.kind === 'label' ? [token.axis] : []));
  if (labels.length !== 0 && (labels.length !== 2 || labels[0] === labels[1])) {
    return refused('position-labels', null);
  }
  return tokens.some(({ kind }) => kind === 'letter')
    ? readLettered(tokens, labels[0])
    : readSigned(plain, tokens, labels[0] ?? 'latitude');
}

/** `N 56 20.33 W 006 30.12` and `56 20.33 N 006 30.12 W`, either coordinate first. */
function readLettered(all: readonly Token[], label: Axis | undefined): Result<WrittenPosition> {
  const tokens = all.filter(({ kind }) => kind !== 'label');
  const letters = tokens.flatMap((token, index) =>
    token.kind === 'letter' ? [{ letter: token.letter, index }] : [],
  );
  const axisOf = (letter: string): Axis => (letter === 'N' || letter === 'S' ? 'latitude' : 'longitude');
  const [first, second] = letters;
  if (!first || !second || letters.length > 2 || axisOf(first.letter) === axisOf(second.letter)) {
    return refused('position-hemisphere', null, quote(letters.map(({ letter }) => letter).join(' ')));
  }
  if (label !== undefined && label !== axisOf(first.letter)) {
    return refused('position-label-and-letter', null, quote(`${label} ${first.letter}`));
  }
  const before = trimmed(tokens.slice(0, first.index));
  const between = trimmed(tokens.slice(first.index + 1, second.index));
  const after = trimmed(tokens.slice(second.index + 1));
  const [one, other, rest] = before.length === 0 ? [between, after, before] : [before, between, after];
  if (rest.length > 0) return notTwoCoordinates(rest);
  const value = { latitude: 0, longitude: 0, step: 0 };
  for (const [{ letter }, group] of [
    [first, one],
    [second, other],
  ] as const) {
    const sign = group.find(({ kind }) => kind === 'sign');
    if (sign !== undefined) return refused('position-sign-and-letter', sign.offset);
    const magnitude = readCoordinate(group, axisOf(letter), true);
    if (!magnitude.ok) return magnitude;
    const { degrees, step } = magnitude.value;
    value[axisOf(letter)] = (letter === 'S' || letter === 'W' ? -degrees : degrees) + 0;
    value.step = Math.max(value.step, step);
  }
  return success(value);
}

/** `56.3388, -6.502` and `56°20.33', -6°30.12'`: latitude first, unless labels say otherwise. */
function readSigned(plain: string, all: readonly Token[], firstAxis: Axis): Result<WrittenPosition> {
  const tokens = trimmed(all);
  const dash = tokens.find(({ kind }) => kind === 'dash');
  if (dash !== undefined) return ambiguousDash(plain, tokens, dash.offset);
  const start = secondStart(tokens);
  if (start === null) return notTwoCoordinates(tokens);
  const groups = [trimmed(tokens.slice(0, start)), trimmed(tokens.slice(start))] as const;
  const secondAxis = firstAxis === 'latitude' ? 'longitude' : 'latitude';
  const [one, other] = [readSignedGroup(groups[0], firstAxis), readSignedGroup(groups[1], secondAxis)];
  if (!one.ok) {
    const [issue] = one.issues;
    const swapped = readSignedGroup(groups[0], secondAxis).ok && readSignedGroup(groups[1], firstAxis).ok;
    if (issue.code !== 'position-latitude-range' || !swapped) return one;
    const cut = groups[1][0]?.offset ?? 0;
    return failure({ ...issue, suggestion: `${bare(plain.slice(cut))}, ${bare(plain.slice(0, cut))}` });
  }
  if (!other.ok) return other;
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  if (numbers > 2 && !tokens.some(({ kind }) => kind === 'sign')) {
    return refused('position-no-hemisphere', null);
  }
  const [latitude, longitude] = firstAxis === 'latitude' ? [one, other] : [other, one];
  const step = Math.max(latitude.value.step, longitude.value.step);
  return success({ latitude: latitude.value.degrees, longitude: longitude.value.degrees, step });
}

/** Where the second coordinate begins when no letter says so: its label, the break, the sign, its degree mark, the middle. */
function secondStart(tokens: readonly Token[]): number | null {
  const where = (test: (token: Token) => boolean) => tokens.flatMap((token, i) => (test(token) ? [i] : []));
  const [, label] = where(({ kind }) => kind === 'label');
  if (label !== undefined) return label;
  const breaks = where(({ kind }) => kind === 'break');
  if (breaks.length > 0) return breaks.length === 1 ? (breaks[0] ?? null) : null;
  const signs = where(({ kind }) => kind === 'sign').filter((index) => index > 0);
  if (signs.length > 0) return signs.length === 1 ? (signs[0] ?? null) : null;
  const degrees = where((token) => token.kind === 'mark' && token.unit === 0);
  if (degrees.length === 2) return (degrees[1] ?? 0) - 1;
  const numbers = where(({ kind }) => kind === 'number');
  return numbers.length % 2 === 0 ? (numbers[numbers.length / 2] ?? null) : null;
}

function readSignedGroup(group: readonly Token[], axis: Axis): Result<Magnitude> {
  const [first, ...rest] = trimmed(group.filter(({ kind }) => kind !== 'label'));
  if (first?.kind !== 'sign') return readCoordinate(first === undefined ? [] : [first, ...rest], axis, false);
  const magnitude = readCoordinate(rest, axis, false);
  if (!magnitude.ok) return magnitude;
  const { degrees, step } = magnitude.value;
  return success({ degrees: (first.negative ? -degrees : degrees) + 0, step });
}

/** The tokens without breaks, colons and dashes at either end. */
function trimmed(tokens: readonly Token[]): readonly Token[] {
  const loose = (token: Token | undefined) =>
    token?.kind === 'break' || token?.kind === 'colon' || token?.kind === 'dash';
  let from = 0;
  let to = tokens.length;
  while (loose(tokens[from])) from += 1;
  while (to > from && loose(tokens[to - 1])) to -= 1;
  return tokens.slice(from, to);
}

function bare(text: string): string {
  return text.replace(/^[\s,;/]+|[\s,;/]+$/g, '');
}

function ambiguousDash(plain: string, tokens: readonly Token[], offset: number): Result<never> {
  const isPair = tokens.filter(({ kind }) => kind === 'number').length === 2;
  const suggestion = `${plain.slice(0, offset).trim()}, -${plain.slice(offset + 1).trim()}`;
  return refused('position-dash', offset, quote(plain), isPair ? suggestion : undefined);
}

function ambiguousComma(text: string, suggestion?: string): Result<never> {
  return refused('position-comma', text.indexOf(','), quote(text), suggestion);
}
