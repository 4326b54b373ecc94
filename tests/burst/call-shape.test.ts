import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type CallShape,
  callShapes,
  everyShape,
  isComposition,
  LONGEST_CALL,
} from '../../src/burst/call-shape.ts';
import { fieldPriors } from '../../src/burst/field-prior.ts';
import { anyCharacters } from './compositions.ts';

const shapes = everyShape();
const freeOf = ({ kinds }: CallShape) => kinds.filter((kind) => kind === 'free').length;
const sumOf = (some: readonly CallShape[]) => some.reduce((sum, { share }) => sum + share, 0);
/** Less than this a symbol has only of what is left over for those that nobody expects. */
const EXPECTED = Math.log(1e-4);

/** The shapes in which every character of a call is expected, without any that could be anything. */
function fitting(characters: readonly number[]): readonly CallShape[] {
  return shapes.filter(
    (shape) =>
      freeOf(shape) === 0 &&
      shape.kinds.length === characters.length &&
      shape.kinds.every(
        (kind, index) => (fieldPriors()[kind][characters[index] as number] as number) > EXPECTED,
      ),
  );
}

// Invented identities throughout.
const own = [23, 29, 99, 87, 10];
const friend = [23, 29, 99, 14, 20];
const place = [5, 62, 0, 6, 30];

describe('shapes of calls', () => {
  it('hold every composition in the tables', () => {
    for (const characters of fc.sample(anyCharacters, { numRuns: 400, seed: 1 }))
      expect(fitting(characters).length, characters.join(' ')).toBeGreaterThan(0);
  });

  // Forms of a position reply and eight-digit elements: M.493 from memory (deviation D-call-10).
  const reply = [120, ...friend, 108, ...own, 121, 126];
  const working = [120, ...friend, 108, ...own, 109, 126];
  const long = [40, 21, 82, 0];
  const short = [2, 18, 20];
  it.each<[string, number[]]>([
    ['position reply with header and time', [...reply, 55, ...place, 9, 15, 122]],
    ['position reply with time', [...reply, ...place, 9, 15, 122]],
    ['position reply with header', [...reply, 55, ...place, 122]],
    ['position reply with neither', [...reply, ...place, 122]],
    ['eight digits twice', [...working, ...long, ...long, 117]],
    ['eight digits and six', [...working, ...long, ...short, 117]],
    [
      'distress relay to one station',
      [120, ...friend, 112, ...own, 112, 23, 29, 99, 21, 80, 105, ...place, 9, 15, 100, 117],
    ],
    [
      'distress relay of an unknown ship',
      [116, 112, ...own, 112, 126, 126, 126, 126, 126, 105, ...place, 88, 88, 100, 127],
    ],
    ['alert with nothing known', [112, ...own, 107, 99, 99, 99, 99, 99, 88, 88, 100, 127]],
  ])('hold one for a %s', (_, characters) => {
    expect(fitting(characters)).not.toEqual([]);
  });

  it.each(Array.from({ length: 9 }, (_, digits) => digits))(
    'hold the automatic service with %i symbols of a telephone number',
    (digits) => {
      const number = digits === 0 ? [] : [105, ...Array.from({ length: digits }, () => 12)];
      expect(fitting([123, ...friend, 100, ...own, 109, 126, 90, 0, 26, ...number, 117])).not.toEqual([]);
    },
  );

  it('begin with a format specifier and end with an end of sequence, and are not too long', () => {
    for (const { kinds, share } of shapes) {
      expect(kinds[0]).toMatch(/Format$/);
      expect(kinds.at(-1)).toMatch(/End$/);
      expect(kinds.slice(0, -1).join()).not.toMatch(/End/);
      expect(kinds.length).toBeLessThanOrEqual(LONGEST_CALL + 1);
      expect(share).toBeGreaterThan(0);
    }
  });

  it('leave 3 % to calls of no composition, of every length', () => {
    const unusual = shapes.filter(({ kinds }) => kinds[0] === 'anyFormat');
    expect(unusual.map(({ kinds }) => kinds.length)).toEqual(
      Array.from({ length: LONGEST_CALL }, (_, index) => index + 2),
    );
    expect(sumOf(unusual)).toBeCloseTo(0.03 / 4, 12);
    expect(new Set(unusual.map(({ share }) => share)).size).toBe(1);
    expect(unusual[2]?.kinds).toEqual(['anyFormat', 'free', 'free', 'anyEnd']);
  });

  it.each([
    ['distressFormat', 6, 'identityLast'],
    ['allShipsFormat', 8, 'telecommand'],
    ['addressedFormat', 13, 'telecommand'],
  ])('leave as much of it to calls of which only the head is usual: %s', (format, head, last) => {
    // The one with nothing behind its head is in no other list: a distress alert always has particulars.
    const bare = shapes.filter(({ kinds }) => kinds[0] === format && kinds.length === head + 1);
    expect(bare).toHaveLength(1);
    expect(bare[0]?.kinds[head - 1]).toBe(last);
    expect(bare[0]?.kinds[head]).toBe('anyEnd');
    expect(bare[0]?.share).toBeCloseTo(0.03 / 4 / (LONGEST_CALL - head + 1), 12);
    const longest = shapes.filter(({ kinds, share }) => kinds[0] === format && share === bare[0]?.share);
    expect(longest.map(({ kinds }) => kinds.length)).toEqual(
      Array.from({ length: LONGEST_CALL - head + 1 }, (_, index) => head + 1 + index),
    );
  });

  it('give a twentieth of the share of an alert to alerts with one to twelve characters too many', () => {
    const alerts = shapes.filter(({ kinds }) => kinds[0] === 'distressFormat' && kinds[6] === 'nature');
    const [usual, ...more] = alerts;
    expect(usual?.kinds).toHaveLength(16);
    expect(more.map(freeOf)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(more.map(({ kinds }) => kinds.slice(0, 15))).toEqual(more.map(() => usual?.kinds.slice(0, 15)));
    expect(sumOf(more)).toBeCloseTo(0.05 * (usual?.share ?? 0), 12);
  });

  it('are worked out once', () => {
    expect(callShapes()).toEqual(shapes);
    expect(callShapes()).toBe(callShapes());
  });
});

describe('what may be received as clean', () => {
  const alert = [112, ...own, 107, ...place, 9, 15, 100, 127];
  const reply = [120, ...friend, 108, ...own, 121, 126, 55, ...place, 9, 15, 122];

  it('is every composition in the tables', () => {
    for (const characters of fc.sample(anyCharacters, { numRuns: 400, seed: 2 }))
      expect(isComposition(characters), characters.join(' ')).toBe(true);
  });

  it.each<[string, readonly number[]]>([
    ['an end of sequence that its format specifier never has', [...alert.slice(0, -1), 122]],
    ['a character more', [...alert.slice(0, -1), 0, 127]],
    ['a character less', [...alert.slice(0, -2), 127]],
    ['a format specifier that calls of its length never have', [123, ...alert.slice(1, -1), 117]],
    ['no format specifier', [0, ...reply.slice(1)]],
    ['no end of sequence', [...reply.slice(0, -1), 0]],
    ['nothing', []],
  ])('is no call with %s', (_, characters) => {
    expect(isComposition(characters)).toBe(false);
  });
});
