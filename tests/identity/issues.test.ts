import { describe, expect, it } from 'vitest';
import { checkAssigned } from '../../src/identity/administrations.ts';
import {
  checkCallSign,
  checkIdentity,
  decodeCallAddress,
  encodeCallAddress,
  formatIdentity,
  type Identity,
  type IdentityField,
  identitySchema,
  mmsi,
  parseIdentity,
} from '../../src/identity/index.ts';
import type { Issue } from '../../src/result/index.ts';

// What a person reads, word for word. The wording is ours; the clauses are those the rules come from.

const identity = (digits: string): Identity => {
  const result = parseIdentity(digits);
  if (!result.ok) throw new Error(result.issues[0].message);
  return result.value;
};

describe('what parseIdentity tells', () => {
  const told = (input: unknown): readonly Issue[] => {
    const result = parseIdentity(input);
    return result.ok ? result.notices : result.issues;
  };

  it.each([
    ['\u200b232999871', 'identity-invisible', 'read without invisible characters'],
    ['２３２９９９８７１', 'identity-digits', 'read with digits of another script'],
    ['232 999 871', 'identity-blanks', 'read without blanks'],
    ["'002329990", 'identity-apostrophe', 'read without apostrophe'],
    ['MMSI: 232999871', 'identity-label', 'read without label'],
    ['232,999,871', 'identity-thousands', 'read without commas'],
    ['232-999-871', 'identity-separators', 'read without separators'],
    ['222222222', 'identity-repeated-digit', 'has nine identical digits'],
    ['', 'identity-empty', 'is empty'],
    ['1'.repeat(201), 'identity-too-long', 'has 201 characters'],
    ['2.32E+08', 'identity-scientific', 'has an exponent: digits may be lost'],
    ['IMO 9074729', 'identity-imo-number', 'looks like an IMO number, not an MMSI'],
    ['2ZZM8', 'identity-call-sign', 'looks like a call sign'],
    ['123456789', 'identity-placeholder', 'is a placeholder'],
    ['100234567', 'identity-unassigned', 'has no assigned format: none starts with 10023'],
    ['232999', 'identity-digit-count', 'needs 9 digits, has 6'],
    ['hello', 'identity-character', "has the character 'h'"],
  ])('about %s: %s', (input, code, words) => {
    expect(told(input)).toStrictEqual([
      {
        code,
        message: `Identity ${words}`,
        at: [],
        expected: '9 digits',
        received: input.length > 40 ? `'${input.slice(0, 39)}…'` : `'${input}'`,
        clause: 'ITU-R M.585-10',
      },
    ]);
  });

  it.each([
    ['-232999871', 'identity-sign', 'has a sign', '232999871'],
    ['2.32999871E+08', 'identity-scientific', 'has an exponent: digits may be lost', '232999871'],
    ['232999871.0', 'identity-decimal', 'has a decimal part', '232999871'],
    ['23299987l', 'identity-letter', 'has letters that look like digits', '232999871'],
    ['232999871 Merrow', 'identity-character', "has the character 'M'", '232999871'],
    ['2329990', 'identity-leading-zeros', 'is missing digits: spreadsheets drop leading zeros', '002329990'],
    ['0023299900', 'identity-call-address', 'has ten digits, the form used on the air', '002329990'],
    ['9232999871', 'identity-atis', 'looks like an inland waterway ATIS code', '232999871'],
  ])('about %s, with what may be meant: %s', (input, code, words, suggestion) => {
    expect(told(input)).toStrictEqual([
      {
        code,
        message: `Identity ${words}; perhaps ${suggestion}`,
        at: [],
        expected: '9 digits',
        received: `'${input}'`,
        clause: 'ITU-R M.585-10',
        suggestion,
      },
    ]);
  });

  it('about blanks around an identity, in a text of at most 200 characters', () => {
    expect(told('232999871'.padStart(200))).toMatchObject([{ code: 'identity-blanks' }]);
    expect(told('232999871'.padStart(201))).toMatchObject([{ code: 'identity-too-long' }]);
  });

  it('about eight digits, first that one is missing: a ship is likelier than a group without its zero', () => {
    expect(told('23299914')).toMatchObject([
      { code: 'identity-digit-count', message: 'Identity needs 9 digits, has 8' },
      { code: 'identity-leading-zeros', suggestion: '023299914' },
    ]);
    expect(told('23299914')[0]).not.toHaveProperty('suggestion');
    // A number lost its zeros before anything else.
    expect(told(23299914)).toMatchObject([{ code: 'identity-number', suggestion: '023299914' }]);
  });

  it('about two numbers, once for each', () => {
    expect(told('232999871/232999142').map(({ message }) => message)).toEqual([
      'Identity holds two numbers; perhaps 232999871',
      'Identity holds two numbers; perhaps 232999142',
    ]);
  });

  it('about a number, though its digits be an IMO number', () => {
    const common = { at: [], expected: '9 digits', received: "'9074729'", clause: 'ITU-R M.585-10' };
    expect(told(9074729)).toStrictEqual([
      {
        ...common,
        code: 'identity-number',
        message: 'Identity is a number: pass text, numbers drop zeros',
      },
      {
        ...common,
        code: 'identity-imo-number',
        message: 'Identity looks like an IMO number, not an MMSI',
      },
    ]);
  });

  it('about what is no text: of which type it was', () => {
    expect(told(true)).toStrictEqual([
      {
        code: 'identity-not-text',
        message: 'Identity is not text',
        at: [],
        expected: '9 digits',
        received: 'boolean',
        clause: 'ITU-R M.585-10',
      },
    ]);
    expect(told(undefined)[0]).toMatchObject({ message: 'Identity is empty', received: 'undefined' });
  });
});

describe('what checkIdentity tells', () => {
  const own = { use: 'own' } as const;
  const individual = { use: 'individual' } as const;

  it.each<[string, IdentityField, string]>([
    [
      '232999871',
      { use: 'own', station: 'coast' },
      'Own identity is not a coast station: theirs begin with 00 and a MID',
    ],
    ['023299905', own, "Own identity begins with 0, which marks a group: a ship's begins with 2 to 7"],
    [
      '002329990',
      own,
      "Own identity begins with 00, which marks coast stations: a ship's begins with 2 to 7",
    ],
    [
      '002320000',
      own,
      "Own identity begins with 00, which marks coast stations: a ship's begins with 2 to 7",
    ],
    [
      '009990000',
      own,
      "Own identity begins with 00, which marks coast stations: a ship's begins with 2 to 7",
    ],
    ['111232000', own, 'Own identity is a group of aircraft: expected a single station'],
    ['992321234', own, 'Own identity belongs to an AIS device, which takes no part in calls'],
    ['970011234', own, 'Own identity belongs to an AIS device, which takes no part in calls'],
    ['023299905', individual, 'Address is a group: a group call reaches it, not a call to one station'],
    ['111232000', individual, 'Address is a group: a group call reaches it, not a call to one station'],
    ['972009914', individual, 'Address is a man-overboard device, which does not take ordinary calls'],
    ['972009914', { use: 'group' }, 'Address is a man-overboard device, which does not take ordinary calls'],
    ['974011234', individual, 'Address belongs to an AIS device, which takes no part in calls'],
    [
      '232999142',
      { use: 'group' },
      'Address is not a group: the identity of a group of ships begins with one 0',
    ],
    [
      '002329990',
      { use: 'group' },
      'Address is not a group: the identity of a group of ships begins with one 0',
    ],
    [
      '002329990',
      { use: 'distressed' },
      'Vessel in distress has an identity that no vessel, aircraft or person uses in calls',
    ],
  ])('refusing %s for %j', (digits, field, message) => {
    expect(checkIdentity(identity(digits), field)).toStrictEqual({
      ok: false,
      issues: [{ code: 'identity-use', message, at: [], received: `'${digits}'`, clause: 'ITU-R M.585-10' }],
    });
  });

  it.each(['individual', 'group'] as const)('of a call to oneself, %s', (use) => {
    const digits = use === 'group' ? '023299905' : '232999871';
    expect(checkIdentity(identity(digits), { use, own: digits })).toStrictEqual({
      ok: false,
      issues: [
        {
          code: 'identity-own-called',
          message: 'Address is the own identity: expected another station',
          at: [],
          received: `'${digits}'`,
          clause: 'common practice',
        },
      ],
    });
  });

  const ukPortable = 'Own identity begins with 2359, usually a UK portable radio: check the licence';
  const shipInHand =
    'Own identity is a ship: countries differ on whether a hand-held radio may use it, check the licence';
  const mob = 'Own identity is for a man-overboard device, but this radio is not one';
  const aircraft = 'Own identity is for an aircraft, but this radio is aboard a vessel';

  it.each<[string, 'fixed' | 'handheld' | 'coast', string]>([
    ['235912345', 'fixed', ukPortable], // invented number of the block for portable sets
    ['232999871', 'handheld', shipInHand],
    ['232992359', 'handheld', shipInHand], // 2359 at the end says nothing
    ['823299904', 'fixed', 'Own identity is for a hand-held radio, but this radio is fixed'],
    ['982329990', 'fixed', "Own identity is for a tender or survival craft, not for the ship's radio"],
    ['972009914', 'fixed', mob],
    ['972009914', 'handheld', mob],
    ['111232501', 'fixed', aircraft],
    ['111232501', 'handheld', aircraft],
  ])('of %s in a set that is %s, without refusing', (digits, station, message) => {
    expect(checkIdentity(identity(digits), { use: 'own', station })).toStrictEqual({
      ok: true,
      value: identity(digits),
      notices: [
        { code: 'identity-station', message, at: [], received: `'${digits}'`, clause: 'common practice' },
      ],
    });
  });

  it.each<[string, 'fixed' | 'handheld' | 'coast']>([
    ['232999871', 'fixed'],
    ['232992359', 'fixed'],
    ['235912345', 'handheld'],
    ['823299904', 'handheld'],
    ['982329990', 'handheld'],
    ['002329990', 'coast'],
  ])('nothing of %s in a set that is %s', (digits, station) => {
    expect(checkIdentity(identity(digits), { use: 'own', station })).toMatchObject({ ok: true, notices: [] });
  });
});

describe('what the other checks tell', () => {
  it('of a MID outside the table', () => {
    expect(checkAssigned(identity('200123456'))).toStrictEqual([
      {
        code: 'identity-mid-unallocated',
        message: 'Identity has the MID 200, which is not allocated to any country in the list of 2026-10',
        at: [],
        received: "'200123456'",
        clause: 'ITU Table of Maritime Identification Digits',
      },
    ]);
  });

  it('of an identity in the field for a call sign', () => {
    expect(checkCallSign('232 999 871')).toStrictEqual([
      {
        code: 'identity-call-sign-digits',
        message: 'Call sign has nine digits, as an MMSI has: it belongs in another field',
        at: [],
        received: "'232 999 871'",
        clause: 'Radio Regulations Article 19 Section III',
      },
    ]);
  });

  it('of a call sign of an unknown shape', () => {
    expect(checkCallSign('Merrow')).toStrictEqual([
      {
        code: 'identity-call-sign-shape',
        message: "Call sign 'Merrow' does not look like a ship’s: check the licence",
        at: [],
        received: "'Merrow'",
        clause: 'Radio Regulations Article 19 Section III',
      },
    ]);
  });

  it('of a kind that a form does not want', () => {
    const { validate } = identitySchema({ accept: ['ship', 'handheld'] })['~standard'];
    expect(validate('002329990')).toStrictEqual({
      issues: [
        {
          code: 'identity-kind',
          message: 'Identity: expected ship or handheld, got coast',
          at: [],
          expected: 'ship or handheld',
          received: "'002329990'",
          clause: 'ITU-R M.585-10',
        },
      ],
    });
  });
});

describe('what decodeCallAddress tells', () => {
  it.each([
    ['002329990', "'002329990'"],
    [23299900, 'number'],
    [['0023299900'], 'object'],
  ])('refusing %j', (value, received) => {
    expect(decodeCallAddress(value)).toStrictEqual({
      ok: false,
      issues: [
        {
          code: 'identity-address-shape',
          message: 'Call address: expected 10 digits',
          at: [],
          expected: '10 digits',
          received,
          clause: 'ITU-R M.493-16',
        },
      ],
    });
  });

  it('of a tenth digit other than 0, and of nine digits without a form, keeping both', () => {
    expect(decodeCallAddress('1000000007')).toStrictEqual({
      ok: true,
      value: { digits: '100000000', tenthDigit: '7' },
      notices: [
        {
          code: 'identity-tenth-digit',
          message: 'Call address ends in 7, not 0: several radios share one identity, or it was damaged',
          at: [],
          received: "'1000000007'",
          clause: 'ITU-R M.493-16',
        },
        {
          code: 'identity-unassigned',
          message: 'Call address holds 100000000, which has no assigned format',
          at: [],
          received: "'1000000007'",
          clause: 'ITU-R M.585-10',
        },
      ],
    });
  });
});

describe('what a programmer is told', () => {
  it.each<[string, () => unknown]>([
    ['mmsi: expected nine digits in an assigned format', () => mmsi('123456789')],
    ['formatIdentity: expected nine digits', () => formatIdentity('1232999871')],
    ['formatIdentity: expected nine digits', () => formatIdentity('2329998711')],
    ['encodeCallAddress: expected nine digits', () => encodeCallAddress('1002329990')],
    ['encodeCallAddress: expected nine digits', () => encodeCallAddress('0023299900')],
    ['encodeCallAddress: expected one tenth digit', () => encodeCallAddress('002329990', '00')],
    ['identitySchema: expected at least one kind to accept', () => identitySchema({ accept: [] })],
    [
      'identitySchema: expected JSON Schema draft-2020-12, draft-07 or openapi-3.0',
      () => identitySchema()['~standard'].jsonSchema.input({ target: 'draft-01' }),
    ],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
