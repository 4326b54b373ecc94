import { type Failure, failure, type Issue, quote, type Result, success } from '../result/index.ts';
import type { Coordinates } from './coordinates.ts';
import { plainText, type Token, textIssue, tokensOf } from './position-text.ts';

type Axis = 'latitude' | 'longitude';
type NumberToken = Extract<Token, { kind: 'number' }>;

const LONGEST = 200;
const LIMIT = { latitude: 90, longitude: 180 } as const;

/**
 * Reads a position as people and instruments write it.
 *
 * Decimal degrees, degrees and minutes, or degrees, minutes and seconds; hemisphere letters or words before or after,
 * or signs (latitude first); any Unicode marks, dashes and common digits; decimal points or commas; also the packed
 * forms `5620.33N 00630.12W` and ISO 6709 (`+5620.33-00630.12/`). What can be read in two ways is not read at all: the
 * issue names the doubt and, where one reading is likely, offers it as `suggestion`.
 *
 * @param text - the position, at most 200 characters; anything that is not a string is an issue
 * @returns coordinates, degrees on WGS 84 (the datum is assumed, not known), or issues. Never throws.
 *
 * Source: common practice; ISO 6709 (signs, packed forms), from memory.
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
export function parsePosition(text: unknown): Result<Coordinates> {
  if (typeof text !== 'string')
    return failure(textIssue('position-not-text', null, 'text', `a value of type ${typeof text}`));
  if (text.length > LONGEST) {
    return failure(
      textIssue('position-too-long', null, `at most ${LONGEST} characters`, `${text.length} characters`),
    );
  }
  const plain = plainText(text);
  const packed = /^\s*([+-]\d+(?:\.\d+)?)([+-]\d+(?:\.\d+)?)\/?\s*$/.exec(plain);
  if (packed !== null) return parseIso6709(packed[1] as string, packed[2] as string);
  const decimalCommas = plain.replace(/(?<=\d),(?=\d)/g, '.');
  const asBreaks = readPlain(plain);
  if (decimalCommas === plain) return asBreaks;
  const asDecimals = readPlain(decimalCommas);
  if (asDecimals.ok) return asBreaks.ok ? ambiguousComma(text) : asDecimals;
  // 56,5 may be two whole numbers or half of a position: only a decimal point elsewhere settles it.
  if (asBreaks.ok && !plain.includes('.')) return ambiguousComma(text, plain.replaceAll(/\s*,\s*/g, ', '));
  return asBreaks.ok || plain.includes('.') ? asBreaks : asDecimals;
}

function readPlain(plain: string): Result<Coordinates> {
  const cut = tokensOf(plain);
  if (!cut.ok) return cut;
  const tokens = cut.value;
  if (!tokens.some((token) => token.kind === 'number'))
    return failure(textIssue('position-form', null, 'latitude and longitude', quote(plain)));
  return tokens.some((token) => token.kind === 'letter') ? readLettered(tokens) : readSigned(plain, tokens);
}

/** `N 56 20.33 W 006 30.12` and `56 20.33 N 006 30.12 W`, either coordinate first. */
function readLettered(tokens: readonly Token[]): Result<Coordinates> {
  const letters = tokens.flatMap((token, index) =>
    token.kind === 'letter' ? [{ letter: token.letter, index }] : [],
  );
  const [first, second] = letters;
  const axisOf = (letter: string): Axis => (letter === 'N' || letter === 'S' ? 'latitude' : 'longitude');
  if (
    first === undefined ||
    second === undefined ||
    letters.length > 2 ||
    axisOf(first.letter) === axisOf(second.letter)
  ) {
    const received = quote(letters.map(({ letter }) => letter).join(' '));
    return failure(textIssue('position-hemisphere', null, 'one of N or S and one of E or W', received));
  }
  const before = trimmed(tokens.slice(0, first.index));
  const between = trimmed(tokens.slice(first.index + 1, second.index));
  const after = trimmed(tokens.slice(second.index + 1));
  const [one, other, rest] = before.length === 0 ? [between, after, before] : [before, between, after];
  if (rest.length > 0) return failure(formIssue(rest));
  const value = { latitude: 0, longitude: 0 };
  for (const [{ letter }, group] of [
    [first, one],
    [second, other],
  ] as const) {
    const sign = group.find((token) => token.kind === 'sign');
    if (sign !== undefined) {
      return failure(
        textIssue(
          'position-sign-and-letter',
          sign.offset,
          'either a sign or a hemisphere letter',
          `both a sign and ${letter}`,
        ),
      );
    }
    const axis = axisOf(letter);
    const magnitude = readGroup(group, axis, true);
    if (!magnitude.ok) return magnitude;
    value[axis] = (letter === 'S' || letter === 'W' ? -magnitude.value : magnitude.value) + 0;
  }
  return success(value);
}

/** `56.3388, -6.502` and `56°20.33', -6°30.12'`: latitude first. */
function readSigned(plain: string, all: readonly Token[]): Result<Coordinates> {
  const tokens = trimmed(all);
  const dash = tokens.find((token) => token.kind === 'dash');
  const start = secondStart(tokens);
  if (dash !== undefined) {
    const issue = textIssue(
      'position-ambiguous',
      dash.offset,
      'hemisphere letters, or a blank before a minus',
      quote(plain),
    );
    const numbers = tokens.filter((token) => token.kind === 'number');
    if (numbers.length !== 2) return failure(issue);
    return failure({
      ...issue,
      suggestion: `${plain.slice(0, dash.offset).trim()}, -${plain.slice(dash.offset + 1).trim()}`,
    });
  }
  if (start === null) return failure(formIssue(tokens));
  const groups = [trimmed(tokens.slice(0, start)), trimmed(tokens.slice(start))] as const;
  const latitude = readSignedGroup(groups[0], 'latitude');
  const longitude = readSignedGroup(groups[1], 'longitude');
  if (!latitude.ok) {
    const swapped = readSignedGroup(groups[1], 'latitude');
    const [issue] = latitude.issues;
    if (
      issue.code !== 'position-latitude-range' ||
      !swapped.ok ||
      !readSignedGroup(groups[0], 'longitude').ok
    )
      return latitude;
    const cut = groups[1][0]?.offset ?? 0;
    const bare = (text: string) => text.replace(/^[\s,;/]+|[\s,;/]+$/g, '');
    return failure({ ...issue, suggestion: `${bare(plain.slice(cut))}, ${bare(plain.slice(0, cut))}` });
  }
  if (!longitude.ok) return longitude;
  const parts = tokens.filter((token) => token.kind === 'number').length;
  if (parts > 2 && !tokens.some((token) => token.kind === 'sign')) {
    return failure(textIssue('position-hemisphere', null, 'N or S and E or W, or signs', 'neither'));
  }
  return success({ latitude: latitude.value, longitude: longitude.value });
}

/** Where the second coordinate begins when no letter says so: at the break, the sign, the second degree mark, the middle. */
function secondStart(tokens: readonly Token[]): number | null {
  const indexesOf = (wanted: (token: Token) => boolean) =>
    tokens.flatMap((token, index) => (wanted(token) ? [index] : []));
  const breaks = indexesOf((token) => token.kind === 'break');
  if (breaks.length > 1) return null;
  if (breaks[0] !== undefined) return breaks[0];
  const signs = indexesOf((token) => token.kind === 'sign').filter((index) => index > 0);
  if (signs.length > 1) return null;
  if (signs[0] !== undefined) return signs[0];
  const degrees = indexesOf((token) => token.kind === 'mark' && token.unit === 0);
  if (degrees.length === 2) return (degrees[1] as number) - 1;
  const numbers = indexesOf((token) => token.kind === 'number');
  return numbers.length % 2 === 0 ? (numbers[numbers.length / 2] ?? null) : null;
}

function readSignedGroup(group: readonly Token[], axis: Axis): Result<number> {
  const [first, ...rest] = group;
  if (first?.kind !== 'sign') return readGroup(group, axis, false);
  const magnitude = readGroup(rest, axis, false);
  return magnitude.ok ? success((first.negative ? -magnitude.value : magnitude.value) + 0) : magnitude;
}

/** One to three numbers with or without their marks. Packed digits (DDMM.mm) only where `packed` allows. */
function readGroup(group: readonly Token[], axis: Axis, packed: boolean): Result<number> {
  const numbers: NumberToken[] = [];
  let marked = false;
  for (const token of group) {
    if (token.kind === 'number') {
      numbers.push(token);
    } else if (token.kind === 'mark') {
      if (token.unit !== numbers.length - 1) return failure(formIssue([token]));
      marked = true;
    } else if (token.kind !== 'dash' && token.kind !== 'colon') {
      return failure(formIssue([token]));
    }
  }
  const [degrees, minutes, seconds] = numbers;
  if (degrees === undefined || numbers.length > 3) return failure(formIssue(group));
  for (const earlier of numbers.slice(0, -1)) {
    if (earlier.text.includes('.')) {
      return failure(
        textIssue('position-decimals', earlier.offset, 'decimals only in the last part', quote(earlier.text)),
      );
    }
  }
  if (packed && numbers.length === 1 && !marked) {
    const parts = unpacked(degrees.text, axis);
    if (parts !== null) return inRange(parts, axis, degrees.offset);
  }
  return inRange(
    [Number(degrees.text), Number(minutes?.text ?? 0), Number(seconds?.text ?? 0)],
    axis,
    degrees.offset,
  );
}

/** `+56.3388-006.502/`, `+5620.33-00630.12/`, `+562019.8-0063007.2/`: the count of whole digits tells which. */
function parseIso6709(first: string, second: string): Result<Coordinates> {
  const value = { latitude: 0, longitude: 0 };
  for (const [axis, text] of [
    ['latitude', first],
    ['longitude', second],
  ] as const) {
    const digits = text.slice(1);
    const whole = digits.split('.', 1)[0] as string;
    const parts =
      whole.length === (axis === 'latitude' ? 2 : 3)
        ? ([Number(digits), 0, 0] as const)
        : unpacked(digits, axis);
    if (parts === null) {
      const issue = textIssue(
        'position-ambiguous',
        0,
        'the digits of ISO 6709, or a blank between the coordinates',
        quote(first + second),
      );
      return failure({ ...issue, clause: 'ISO 6709', suggestion: `${first}, ${second}` });
    }
    const magnitude = inRange(parts, axis, 0);
    if (!magnitude.ok) return magnitude;
    value[axis] = (text.startsWith('-') ? -magnitude.value : magnitude.value) + 0;
  }
  return success(value);
}

/** Degrees, minutes and seconds written without a gap: DDMM, DDMMSS for latitude, one digit more for longitude. */
function unpacked(text: string, axis: Axis): readonly [number, number, number] | null {
  const wide = axis === 'latitude' ? 2 : 3;
  const whole = text.split('.', 1)[0] as string;
  if (whole.length === wide + 2) return [Number(text.slice(0, wide)), Number(text.slice(wide)), 0];
  if (whole.length !== wide + 4) return null;
  return [Number(text.slice(0, wide)), Number(text.slice(wide, wide + 2)), Number(text.slice(wide + 2))];
}

function inRange(
  [degrees, minutes, seconds]: readonly [number, number, number],
  axis: Axis,
  offset: number,
): Result<number> {
  if (minutes >= 60)
    return failure(textIssue('position-minutes', offset, 'minutes below 60', String(minutes)));
  if (seconds >= 60)
    return failure(textIssue('position-seconds', offset, 'seconds below 60', String(seconds)));
  const value = degrees + minutes / 60 + seconds / 3600;
  if (value <= LIMIT[axis]) return success(value);
  const code = axis === 'latitude' ? 'position-latitude-range' : 'position-longitude-range';
  return failure(textIssue(code, offset, `${axis} up to ${LIMIT[axis]} degrees`, String(value)));
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

function formIssue(tokens: readonly Token[]): Issue {
  return textIssue(
    'position-form',
    tokens[0]?.offset ?? null,
    'latitude and longitude, each of one to three numbers',
  );
}

function ambiguousComma(text: string, suggestion?: string): Failure {
  const issue = textIssue(
    'position-ambiguous',
    text.indexOf(','),
    'a comma that can only be read in one way',
    quote(text),
  );
  return failure(suggestion === undefined ? issue : { ...issue, suggestion });
}
