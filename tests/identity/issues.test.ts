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

// Codes and params; the wording is in english.txt. The clauses are those the rules come from.

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
    ['\u200b232999871', 'identity-invisible', {}],
    ['２３２９９９８７１', 'identity-digits', {}],
    ['232 999 871', 'identity-blanks', {}],
    ["'002329990", 'identity-apostrophe', {}],
    ['MMSI: 232999871', 'identity-label', {}],
    ['232,999,871', 'identity-thousands', {}],
    ['232-999-871', 'identity-separators', {}],
    ['222222222', 'identity-repeated-digit', {}],
    ['', 'identity-empty', {}],
    ['1'.repeat(201), 'identity-too-long', { count: 201 }],
    ['2.32E+08', 'identity-scientific', {}],
    ['IMO 9074729', 'identity-imo-number', {}],
    ['2ZZM8', 'identity-call-sign', {}],
    ['123456789', 'identity-placeholder', {}],
    ['100234567', 'identity-unassigned', { start: '10023' }],
    ['232999', 'identity-digit-count', { count: 6 }],
    ['hello', 'identity-character', { character: "'h'" }],
  ])('about %s: %s', (input, code, params) => {
    const [{ grade, expected }] = told(input) as [Issue];
    expect(expected).toBe(grade === 'error' ? '9 digits' : undefined);
    expect(told(input)).toMatchObject([
      {
        code,
        params,
        at: [],
        received: input.length > 40 ? `'${input.slice(0, 39)}…'` : `'${input}'`,
        clause: 'ITU-R M.585-10',
      },
    ]);
  });

  it.each([
    ['-232999871', 'identity-sign', {}, '232999871'],
    ['2.32999871E+08', 'identity-scientific', {}, '232999871'],
    ['232999871.0', 'identity-decimal', {}, '232999871'],
    ['23299987l', 'identity-letter', {}, '232999871'],
    ['232999871 Merrow', 'identity-character', { character: "'M'" }, '232999871'],
    ['2329990', 'identity-leading-zeros', {}, '002329990'],
    ['0023299900', 'identity-call-address', {}, '002329990'],
    ['9232999871', 'identity-atis', {}, '232999871'],
  ])('about %s, with what may be meant: %s', (input, code, params, suggestion) => {
    expect(told(input)).toMatchObject([
      {
        code,
        params,
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
      { code: 'identity-digit-count', params: { count: 8 } },
      { code: 'identity-leading-zeros', suggestion: '023299914' },
    ]);
    expect(told('23299914')[0]).not.toHaveProperty('suggestion');
    // A number lost its zeros before anything else.
    expect(told(23299914)).toMatchObject([{ code: 'identity-number', suggestion: '023299914' }]);
  });

  it('about two numbers, once for each', () => {
    expect(told('232999871/232999142').map(({ code, suggestion }) => [code, suggestion])).toEqual([
      ['identity-two-numbers', '232999871'],
      ['identity-two-numbers', '232999142'],
    ]);
  });

  it('about a number, though its digits be an IMO number', () => {
    const common = { at: [], expected: '9 digits', received: "'9074729'", clause: 'ITU-R M.585-10' };
    expect(told(9074729)).toMatchObject([
      { ...common, code: 'identity-number' },
      { ...common, code: 'identity-imo-number' },
    ]);
  });

  it('about what is no text: of which type it was', () => {
    expect(told(true)).toMatchObject([
      {
        code: 'identity-not-text',
        at: [],
        expected: '9 digits',
        received: 'boolean',
        clause: 'ITU-R M.585-10',
      },
    ]);
    expect(told(undefined)[0]).toMatchObject({ code: 'identity-empty', received: 'undefined' });
  });
});

describe('what checkIdentity tells', () => {
  const own = { use: 'own' } as const;
  const individual = { use: 'individual' } as const;

  it.each<[string, IdentityField, string]>([
    ['232999871', { use: 'own', station: 'coast' }, 'own-not-coast'],
    ['023299905', own, 'own-group'],
    ['002329990', own, 'own-coast'],
    ['002320000', own, 'own-coast'],
    ['009990000', own, 'own-coast'],
    ['111232000', own, 'own-aircraft-group'],
    ['992321234', own, 'own-ais'],
    ['970011234', own, 'own-ais'],
    ['023299905', individual, 'called-group'],
    ['111232000', individual, 'called-group'],
    ['972009914', individual, 'called-mob'],
    ['972009914', { use: 'group' }, 'called-mob'],
    ['974011234', individual, 'called-ais'],
    ['232999142', { use: 'group' }, 'called-single'],
    ['002329990', { use: 'group' }, 'called-single'],
    ['002329990', { use: 'distressed' }, 'distressed'],
  ])('refusing %s for %j: %s', (digits, field, reason) => {
    expect(checkIdentity(identity(digits), field)).toMatchObject([
      {
        code: 'identity-use',
        grade: 'error',
        params: { reason },
        at: [],
        received: `'${digits}'`,
        clause: 'ITU-R M.585-10',
      },
    ]);
  });

  it.each(['individual', 'group'] as const)('of a call to oneself, %s', (use) => {
    const digits = use === 'group' ? '023299905' : '232999871';
    expect(checkIdentity(identity(digits), { use, own: digits })).toMatchObject([
      {
        code: 'identity-own-called',
        grade: 'error',
        at: [],
        received: `'${digits}'`,
        clause: 'common practice',
      },
    ]);
  });

  it.each<[string, 'fixed' | 'handheld' | 'coast', string]>([
    ['235912345', 'fixed', 'uk-portable'], // invented number of the block for portable sets
    ['232999871', 'handheld', 'ship-handheld'],
    ['232992359', 'handheld', 'ship-handheld'], // 2359 at the end says nothing
    ['823299904', 'fixed', 'handheld-fixed'],
    ['982329990', 'fixed', 'craft'],
    ['972009914', 'fixed', 'mob'],
    ['972009914', 'handheld', 'mob'],
    ['111232501', 'fixed', 'aircraft'],
    ['111232501', 'handheld', 'aircraft'],
  ])('of %s in a set that is %s, without refusing: %s', (digits, station, reason) => {
    expect(checkIdentity(identity(digits), { use: 'own', station })).toMatchObject([
      {
        code: 'identity-station',
        grade: 'check',
        params: { reason },
        at: [],
        received: `'${digits}'`,
        clause: 'common practice',
      },
    ]);
  });

  it.each<[string, 'fixed' | 'handheld' | 'coast']>([
    ['232999871', 'fixed'],
    ['232992359', 'fixed'],
    ['235912345', 'handheld'],
    ['823299904', 'handheld'],
    ['982329990', 'handheld'],
    ['002329990', 'coast'],
  ])('nothing of %s in a set that is %s', (digits, station) => {
    expect(checkIdentity(identity(digits), { use: 'own', station })).toEqual([]);
  });
});

describe('what the other checks tell', () => {
  it('of a MID outside the table', () => {
    expect(checkAssigned(identity('200123456'))).toMatchObject([
      {
        code: 'identity-mid-unallocated',
        params: { mid: '200', edition: '2026-10' },
        at: [],
        received: "'200123456'",
        clause: 'ITU Table of Maritime Identification Digits',
      },
    ]);
  });

  it('of something else than text for a call sign', () => {
    expect(checkCallSign(5 as unknown as string)).toMatchObject([
      {
        code: 'identity-call-sign-type',
        params: { type: 'number' },
        received: 'number',
        clause: 'Radio Regulations Article 19 Section III',
      },
    ]);
  });

  it('of an identity in the field for a call sign', () => {
    expect(checkCallSign('232 999 871')).toMatchObject([
      {
        code: 'identity-call-sign-digits',
        at: [],
        received: "'232 999 871'",
        clause: 'Radio Regulations Article 19 Section III',
      },
    ]);
  });

  it('of a call sign of an unknown shape', () => {
    expect(checkCallSign('Merrow')).toMatchObject([
      {
        code: 'identity-call-sign-shape',
        at: [],
        received: "'Merrow'",
        clause: 'Radio Regulations Article 19 Section III',
      },
    ]);
  });

  it('of a kind that a form does not want', () => {
    const { validate } = identitySchema({ accept: ['ship', 'handheld'] })['~standard'];
    expect(validate('002329990')).toMatchObject({
      issues: [
        {
          code: 'identity-kind',
          params: { kind: 'coast', accepted: ['ship', 'handheld'] },
          at: [],
          expected: 'ship or hand-held radio',
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
    expect(decodeCallAddress(value)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'identity-address-shape',
          at: [],
          expected: '10 digits',
          received,
          clause: 'ITU-R M.493-16',
        },
      ],
    });
  });

  it('of a tenth digit other than 0, and of nine digits without a form, keeping both', () => {
    expect(decodeCallAddress('1000000007')).toMatchObject({
      ok: true,
      value: { digits: '100000000', tenthDigit: '7' },
      notices: [
        {
          code: 'identity-tenth-digit',
          params: { digit: '7' },
          at: [],
          received: "'1000000007'",
          clause: 'ITU-R M.493-16',
        },
        {
          code: 'identity-address-unassigned',
          params: { digits: '100000000' },
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
