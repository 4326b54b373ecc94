import { failure, type Result, success } from '../result/index.ts';
import { type CodeOf, type Failure, quote } from '../result/internal.ts';
import type { WrittenPosition } from './coordinates.ts';
import { type Axis, refused, type Token, textIssue } from './position-text.ts';
import { rangeIssue, type rangeTexts } from './texts.ts';

/** Degrees, minutes and seconds as written, and the last digit of them in degrees. */
interface Parts {
  readonly degrees: number;
  readonly minutes: number;
  readonly seconds: number;
  readonly step: number;
}

/** One coordinate without its sign: degrees, and what its last digit is worth, degrees. */
export interface Magnitude {
  readonly degrees: number;
  readonly step: number;
}

const LIMIT = { latitude: 90, longitude: 180 } as const;

/**
 * The magnitude of one coordinate, without letter, sign or label: one to three numbers with or without their marks.
 * `packed`: whether digits without a gap (DDMM.mm) may stand for parts.
 */
export function readCoordinate(group: readonly Token[], axis: Axis, packed: boolean): Result<Magnitude> {
  const numbers: Extract<Token, { kind: 'number' }>[] = [];
  let marked = false;
  for (const token of group) {
    if (token.kind === 'number') {
      numbers.push(token);
    } else if (token.kind === 'mark') {
      if (token.unit !== numbers.length - 1) return notTwoCoordinates([token]);
      marked = true;
    } else if (token.kind !== 'dash' && token.kind !== 'colon') {
      return notTwoCoordinates([token]);
    }
  }
  const [degrees, minutes, seconds] = numbers;
  if (degrees === undefined || numbers.length > 3) return notTwoCoordinates(group);
  const early = numbers.slice(0, -1).find(({ text }) => text.includes('.'));
  if (early !== undefined) {
    return refused('position-decimals', early.offset, quote(early.text));
  }
  const parts = packed && numbers.length === 1 && !marked ? unpacked(degrees.text, axis) : null;
  return inRange(parts ?? written(degrees.text, minutes?.text, seconds?.text), axis, degrees.offset);
}

/** `+56.3388-006.502/`, `+5620.33-00630.12/`, `+562019.8-0063007.2/`: the count of whole digits decides which. */
export function readIso6709(first: string, second: string): Result<WrittenPosition> {
  const value = { latitude: 0, longitude: 0, step: 0 };
  for (const [axis, text] of [
    ['latitude', first],
    ['longitude', second],
  ] as const) {
    const digits = text.slice(1);
    const plain = wholeDigits(digits) === widthOf(axis);
    const parts = plain ? written(digits) : unpacked(digits, axis);
    if (parts === null) {
      const issue = textIssue('position-packed', 0, quote(first + second), `${first}, ${second}`);
      return failure({ ...issue, clause: 'ISO 6709' });
    }
    const magnitude = inRange(parts, axis, 0);
    if (!magnitude.ok) return magnitude;
    const { degrees, step } = magnitude.value;
    value[axis] = (text.startsWith('-') ? -degrees : degrees) + 0;
    value.step = Math.max(value.step, step);
  }
  return success(value);
}

/** The issue for tokens that are no latitude and longitude. */
export function notTwoCoordinates(tokens: readonly Token[]): ReturnType<typeof refused> {
  return refused('position-form', tokens[0]?.offset ?? null);
}

/** Parts written without a gap: DDMM, DDMMSS for latitude, one digit more for longitude; `null` for other counts. */
function unpacked(text: string, axis: Axis): Parts | null {
  const wide = widthOf(axis);
  const [degrees, rest] = [text.slice(0, wide), text.slice(wide)];
  if (wholeDigits(text) === wide + 2) return written(degrees, rest);
  if (wholeDigits(text) !== wide + 4) return null;
  return written(degrees, rest.slice(0, 2), rest.slice(2));
}

function written(degrees: string, minutes?: string, seconds?: string): Parts {
  const last = seconds ?? minutes ?? degrees;
  const unit = seconds !== undefined ? 3600 : minutes !== undefined ? 60 : 1;
  const [, decimals = ''] = last.split('.');
  return {
    degrees: Number(degrees),
    minutes: Number(minutes ?? 0),
    seconds: Number(seconds ?? 0),
    step: 1 / (unit * 10 ** decimals.length),
  };
}

function widthOf(axis: Axis): number {
  return axis === 'latitude' ? 2 : 3;
}

function wholeDigits(text: string): number {
  const point = text.indexOf('.');
  return point < 0 ? text.length : point;
}

function inRange({ degrees, minutes, seconds, step }: Parts, axis: Axis, offset: number): Result<Magnitude> {
  const past = (code: CodeOf<typeof rangeTexts>, received: number): Failure =>
    failure(rangeIssue(code, {}, { at: [offset], received: String(received) }));
  if (minutes >= 60) return past('position-minutes', minutes);
  if (seconds >= 60) return refused('position-seconds', offset, String(seconds));
  const value = degrees + minutes / 60 + seconds / 3600;
  if (value <= LIMIT[axis]) return success({ degrees: value, step });
  return past(axis === 'latitude' ? 'position-latitude-range' : 'position-longitude-range', value);
}
