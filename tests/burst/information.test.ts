import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeCharacters, encodeCharacters } from '../../src/burst/information.ts';
import { emptyFields } from '../../src/call/internal.ts';

const symbol = fc.integer({ min: 0, max: 127 });
const format = fc.oneof(fc.constantFrom(102, 112, 114, 116, 120, 123), symbol);
const telecommand = fc.oneof(fc.constantFrom(100, 110, 112, 121), symbol);
const filler = (length: number) => fc.array(symbol, { minLength: length, maxLength: length });
const end = fc.oneof(fc.constantFrom(117, 122, 127), symbol);

/** Calls of every shape with anything in them, longer and shorter than they should be. */
const shaped = fc
  .tuple(
    format,
    fc.integer({ min: 0, max: 12 }),
    filler(40),
    telecommand,
    fc.integer({ min: 0, max: 26 }),
    end,
  )
  .chain(([first, headed, values, command, length, last]) =>
    fc.constantFrom(55, 105, 41, 90, 126).map((mark) => {
      const message = [
        ...values.slice(0, headed),
        112,
        ...values.slice(12, 17),
        command,
        126,
        mark,
        ...values.slice(17),
      ];
      return [first, ...message.slice(0, length), last];
    }),
  );

describe('characters and fields', () => {
  it('come back unchanged, whatever the symbols', () => {
    fc.assert(
      fc.property(fc.oneof(shaped, fc.array(symbol, { maxLength: 40 })), (characters) => {
        expect(encodeCharacters(decodeCharacters(characters))).toEqual(characters);
      }),
      { numRuns: 2000 },
    );
  });

  it('keep gaps where a later field shows that something was sent', () => {
    const characters = [
      120,
      20,
      80,
      0,
      20,
      20,
      null,
      25,
      20,
      null,
      10,
      10,
      100,
      null,
      90,
      0,
      72,
      90,
      0,
      72,
      117,
    ];
    expect(encodeCharacters(decodeCharacters(characters))).toEqual(characters);
  });

  it('never throw, whatever is unreadable', () => {
    fc.assert(
      fc.property(fc.array(fc.option(symbol), { maxLength: 40 }), (characters) => {
        expect(encodeCharacters(decodeCharacters(characters)).length).toBeLessThanOrEqual(characters.length);
      }),
    );
  });

  it('are none where they cannot be read at all', () => {
    const throwing = new Proxy([112, 127], {
      get: () => {
        throw new Error('not to be read');
      },
    });
    for (const given of [throwing, null, 5, []])
      expect(decodeCharacters(given as number[])).toEqual(emptyFields);
  });

  const head = [120, 25, 20, 0, 10, 10, 108, 20, 80, 0, 20, 20];
  const position = [13, 60, 80, 5, 21];

  // Header 55 and time in a position reply: M.493 from memory; each form is read (deviation D-call-10).
  it.each([
    ['header and time', [55, ...position, 9, 15], { header: true, position, time: [9, 15] }],
    ['time alone', [...position, 9, 15], { header: false, position, time: [9, 15] }],
    ['header alone', [55, ...position], { header: true, position, time: null }],
    ['neither', position, { header: false, position, time: null }],
  ])('read a position reply with %s', (_, message, fields) => {
    expect(decodeCharacters([...head, 121, 126, ...message, 122])).toMatchObject({ ...fields, rest: [] });
  });

  // Eight-digit elements in steps of 10 Hz: M.493-16 table A1-5, as publicly restated.
  it.each([
    ['both elements', [40, 21, 82, 0, 40, 21, 82, 0], [40, 21, 82, 0], [40, 21, 82, 0]],
    ['the first', [40, 21, 82, 0, 126, 126, 126], [40, 21, 82, 0], [126, 126, 126]],
    ['the second', [2, 18, 20, 40, 21, 82, 0], [2, 18, 20], [40, 21, 82, 0]],
  ])('read eight digits in %s', (_, message, receive, transmit) => {
    expect(decodeCharacters([...head, 109, 126, ...message, 117])).toMatchObject({
      receive,
      transmit,
      rest: [],
    });
  });

  it('read a position in place of the frequency (M.493, from memory)', () => {
    const fields = decodeCharacters([...head, 109, 126, 55, ...position, 117]);
    expect(fields).toMatchObject({ header: true, position, receive: null, rest: [] });
  });

  it('read the telephone number of the automatic service (M.493, from memory)', () => {
    const fields = decodeCharacters([123, ...head.slice(1), 100, 126, 90, 0, 26, 105, 4, 41, 22, 33, 117]);
    expect(fields).toMatchObject({ receive: [90, 0, 26], telephone: [105, 4, 41, 22, 33], rest: [] });
  });

  it('leave what fits no field in the rest', () => {
    const fields = decodeCharacters([...head, 100, 126, 90, 0, 72, 90, 0, 72, 5, 6, 117]);
    expect(fields).toMatchObject({ transmit: [90, 0, 72], rest: [5, 6], end: 117 });
    expect(decodeCharacters([99, 1, 2, 3])).toMatchObject({
      format: 99,
      self: null,
      rest: [1, 2],
      end: 3,
    });
  });
});
