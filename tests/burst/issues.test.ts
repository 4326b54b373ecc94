import { describe, expect, it } from 'vitest';
import { charactersFromSets } from '../../src/burst/expansion.ts';
import { decodeAttempt, decodeBits, decodeSoft, decodeStream, encodeCall } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { emptyFields } from '../../src/call/fields.ts';
import {
  composeAllShipsCall,
  composeDistressAlert,
  composeIndividualCall,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { english } from '../../src/locale/en.ts';
import { type TextParams, type Translatable, translate } from '../../src/locale/index.ts';
import { readMetrics } from './heard.ts';

type Decode = (given: never) => unknown;
type Input = TextParams['burst-input'];
const bits: Input = { subject: 'bits', accepted: 'bits' };
const numbers: Input = { subject: 'soft-bits', accepted: 'numbers' };
const symbols: Input = { subject: 'symbols', accepted: 'symbols' };
const bit = (which: number): Input => ({ subject: 'bit', which, accepted: 'bit' });
const symbol = (which: number): Input => ({ subject: 'symbol', which, accepted: 'symbol' });

/** A list that cannot be read, as one behind a proxy may be. */
const unreadable = Object.defineProperty([], '0', {
  enumerable: true,
  get: () => {
    throw new Error('not to be read');
  },
});

const wrong: [name: string, decode: Decode, given: unknown, params: Input, received: string][] = [
  ['no bits at all', decodeBits, undefined, bits, 'undefined'],
  ['null for bits', decodeBits, null, bits, 'null'],
  ['one number for bits', decodeBits, 1101, bits, '1101'],
  ['an object for bits', decodeBits, { length: 3 }, bits, 'object'],
  ['a buffer without a length', decodeBits, new DataView(new ArrayBuffer(8)), bits, 'object'],
  ['another letter', decodeBits, '01 x', bit(2), "'x'"],
  ['another number', decodeBits, [1, 0, 0, 2], bit(3), '2'],
  ['half a bit', decodeBits, new Float32Array([0.5]), bit(0), '0.5'],
  ['truth for a bit', decodeBits, [true], bit(0), 'boolean'],
  ['an array with a hole', decodeBits, [1, undefined], bit(1), 'undefined'],
  ['text for soft bits', decodeSoft, '0101', numbers, "'0101'"],
  ['null for soft bits', decodeSoft, null, numbers, 'null'],
  ['text for symbols', decodeStream, '125', symbols, "'125'"],
  ['128', decodeStream, [125, 111, 128], symbol(2), '128'],
  ['-1', decodeStream, [-1], symbol(0), '-1'],
  ['a broken number', decodeStream, [125, 1.5], symbol(1), '1.5'],
  ['digits as text', decodeStream, ['125'], symbol(0), "'125'"],
  ['a hole among symbols', decodeStream, [undefined], symbol(0), 'undefined'],
  ['bits that throw', decodeBits, unreadable, bits, 'object'],
  ['soft bits that throw', decodeSoft, unreadable, numbers, 'object'],
  ['symbols that throw', decodeStream, unreadable, symbols, 'object'],
  ['calls that throw', decodeAttempt, unreadable, { subject: 'calls', accepted: 'calls' }, 'object'],
];

describe('what is not the kind of input that is read', () => {
  it.each(wrong)('is named: %s', (_, decode, given, params, received) => {
    const issue = {
      code: 'burst-input',
      grade: 'error',
      params,
      at: params.which === undefined ? [] : [params.which],
      received,
    } as const;
    const { text: message, expected } = translate(issue as Translatable, english);
    expect(decode(given as never)).toEqual({ ok: false, issues: [{ ...issue, message, expected }] });
  });

  it('is not white space among bits, nor a bit as text in an array', () => {
    const { bits } = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));
    const spaced = bits.replace(/.{10}/g, '$& \t\n');
    expect(decodeBits(spaced)).toEqual(decodeBits(bits));
    expect(decodeBits([...bits] as never)).toEqual(decodeBits(bits));
    expect(decodeBits(Uint8Array.from(bits, Number))).toEqual(decodeBits(bits));
  });
});

describe('where there is no call', () => {
  it.each<[string, Decode, unknown]>([
    ['no bits', decodeBits, ''],
    ['no soft bits', decodeSoft, []],
    ['no symbols', decodeStream, []],
    ['no metrics', readMetrics, []],
    ['forty bits not heard', decodeBits, '?'.repeat(40)],
  ])('%s: it is said that none is found', (_, decode, given) => {
    expect(decode(given as never)).toEqual({
      ok: false,
      issues: [
        {
          code: 'burst-not-found',
          grade: 'error',
          params: { sure: 0 },
          message: expect.any(String),
          at: [],
          expected: 'phasing and what follows it',
          clause: 'ITU-R M.493 phasing sequence',
        },
      ],
    });
  });
});

describe('a call that cannot be sent', () => {
  // Invented stations of the demo scenario.
  const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
  const alert = composeDistressAlert({ from: '232999218', nature: 'sinking' });
  const toAll = composeAllShipsCall({ from: '232999871', category: 'safety', channel: '16' });
  const unrecognised = (fields: object) =>
    ({
      kind: 'unrecognised-call',
      from: null,
      to: null,
      asReceived: { ...emptyFields, ...fields },
    }) as const;

  it.each([
    ['without addressee', { ...call, to: { kind: 'station', mmsi: null } }, 'without address'],
    ['without sender', { ...call, from: null }, 'without self-identification'],
    [
      'without either',
      { ...call, from: null, to: { kind: 'station', mmsi: null } },
      'without address, self-identification',
    ],
    ['an alert without sender', { ...alert, from: null }, 'without self-identification'],
    ['an all-ships call without sender', { ...toAll, from: null }, 'without self-identification'],
  ] as const)('says what it lacks: %s', (_, lacking, words) => {
    expect(() => encodeCall(lacking)).toThrow(new RangeError(`the call cannot be sent ${words}`));
  });

  // As a sentence from a set may leave a field out.
  it.each([
    [toAll, { category: null }, 'category'],
    [toAll, { telecommand1: null }, 'first telecommand'],
    [call, { category: null, telecommand1: null }, 'category, first telecommand'],
    [alert, { position: null }, 'position'],
    [alert, { position: null, subsequent: null }, 'position'],
    [alert, { time: null }, 'time'],
    [alert, { position: null, time: null }, 'position, time'],
  ])('says which field it lacks: %j, %j', (whole, gone, names) => {
    const { call: lacking } = decodeFields({ ...encodeFields(whole), ...gone });
    expect(lacking.kind).toBe(whole.kind);
    expect(() => encodeCall(lacking)).toThrow(new RangeError(`the call cannot be sent without ${names}`));
  });

  it.each([
    [
      [{ specifier: 106, symbols: [], text: 'MERROW' }],
      'expansion set 106 holds text, which has no standard symbols',
    ],
    [[{ specifier: 100, symbols: [41, null, 90, 70] }], 'expansion set 100 holds an unreadable symbol'],
  ])('says which set of its expansion has no symbols: %j', (sets, message) => {
    expect(() => charactersFromSets(sets)).toThrow(new RangeError(message));
  });

  it('takes a set with text and symbols, and one without either', () => {
    const sets = [
      { specifier: 106, symbols: [0, 4], text: 'as received' },
      { specifier: 101, symbols: [] },
    ];
    expect(charactersFromSets(sets)).toEqual([106, 0, 4, 101]);
  });

  it('has symbols from 0 to 127, and one at least', () => {
    expect(() => encodeSymbol(128)).toThrow(new RangeError('a symbol is an integer from 0 to 127, not 128'));
    expect(() => streamOf([])).toThrow(new RangeError('a call has at least one character'));
  });

  it.each([
    [
      { format: 99, rest: [1, null, 3], end: 127 },
      'character 2 of the call is unreadable and cannot be sent',
    ],
    [{}, 'a call needs a format specifier and an end of sequence'],
    [{ format: 112 }, 'a call needs a format specifier and an end of sequence'],
  ])('says which symbol it lacks: %j', (fields, message) => {
    expect(() => encodeCall(unrecognised(fields))).toThrow(new RangeError(message));
  });
});
