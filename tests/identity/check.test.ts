import { describe, expect, it } from 'vitest';
import callSigns from '../../shared/identity/call-signs.json' with { type: 'json' };
import {
  checkCallSign,
  checkIdentity,
  type Identity,
  type IdentityField,
  type IdentityKind,
  identityForms,
  parseIdentity,
  usesOf,
} from '../../src/identity/index.ts';

const identity = (digits: string): Identity => {
  const result = parseIdentity(digits);
  if (!result.ok) throw new Error(result.issues[0].message);
  return result.value;
};

/** ITU-R M.585-10 and M.493-16, from memory: own, individual, group. */
const uses: Record<IdentityKind, string> = {
  ship: 'yes yes no',
  'ship-group': 'no no yes',
  coast: 'yes yes no',
  'coast-all-national': 'no yes no',
  'coast-all': 'no yes no',
  'sar-aircraft': 'yes yes no',
  'sar-aircraft-all-national': 'no no yes',
  craft: 'yes yes no',
  handheld: 'yes yes no',
  mob: 'yes no no',
  aton: 'no no no',
  'ais-sart': 'no no no',
  'epirb-ais': 'no no no',
  'amrd-b': 'no no no',
};

const sample: Record<IdentityKind, string> = {
  ship: '232878000',
  'ship-group': '023288998',
  coast: '002320014',
  'coast-all-national': '002320000',
  'coast-all': '009990000',
  'sar-aircraft': '111366770',
  'sar-aircraft-all-national': '111366000',
  craft: '982321234',
  handheld: '850300001',
  mob: '972232123',
  aton: '993161001',
  'ais-sart': '970011234',
  'epirb-ais': '974011234',
  'amrd-b': '979123456',
};

const kinds = identityForms.map(({ kind }) => kind);
const verdict = (digits: string, field: IdentityField): string => {
  const [notice] = checkIdentity(identity(digits), field);
  return notice === undefined ? 'ok' : notice.grade === 'error' ? notice.code : 'notice';
};

describe('usesOf', () => {
  it.each(kinds)('answers for %s', (kind) => {
    const [own, individual, group] = uses[kind].split(' ').map((answer) => answer === 'yes');
    expect(usesOf({ kind })).toEqual({ own, individual, group });
  });

  // United States Coast Guard Navigation Center, guidance for search and rescue watchstanders: identities valid in a
  // DSC distress alert are those with a MID in front, 98 and 972.
  it.each(['366123450', '982321234', '972232123'])('lets %s stand in a distress alert', (digits) => {
    expect(usesOf(identity(digits)).own).toBe(true);
  });
});

describe('checkIdentity', () => {
  it.each(kinds)('agrees with usesOf for %s as address', (kind) => {
    for (const use of ['individual', 'group'] as const) {
      expect(verdict(sample[kind], { use })).toBe(usesOf({ kind })[use] ? 'ok' : 'identity-use');
    }
  });

  // Common practice, no source, but for the UK and US lines, which follow Ofcom and United States Coast Guard guidance.
  it.each([
    ['ship', 'ok', 'notice', 'identity-use'],
    ['ship-group', 'identity-use', 'identity-use', 'identity-use'],
    ['coast', 'identity-use', 'identity-use', 'ok'],
    ['coast-all-national', 'identity-use', 'identity-use', 'identity-use'],
    ['coast-all', 'identity-use', 'identity-use', 'identity-use'],
    ['sar-aircraft', 'notice', 'notice', 'identity-use'],
    ['sar-aircraft-all-national', 'identity-use', 'identity-use', 'identity-use'],
    ['craft', 'notice', 'ok', 'identity-use'],
    ['handheld', 'notice', 'ok', 'identity-use'],
    ['mob', 'notice', 'notice', 'identity-use'],
    ['aton', 'identity-use', 'identity-use', 'identity-use'],
    ['ais-sart', 'identity-use', 'identity-use', 'identity-use'],
    ['epirb-ais', 'identity-use', 'identity-use', 'identity-use'],
    ['amrd-b', 'identity-use', 'identity-use', 'identity-use'],
  ] as const)('as own identity, %s: fixed set %s, hand-held %s, coast %s', (kind, fixed, handheld, coast) => {
    expect(verdict(sample[kind], { use: 'own' })).toBe(fixed);
    expect(verdict(sample[kind], { use: 'own', station: 'fixed' })).toBe(fixed);
    expect(verdict(sample[kind], { use: 'own', station: 'handheld' })).toBe(handheld);
    expect(verdict(sample[kind], { use: 'own', station: 'coast' })).toBe(coast);
  });

  it('names as vessel in distress whatever may stand as own, but no coast station', () => {
    for (const kind of kinds) {
      const may = usesOf({ kind }).own && kind !== 'coast';
      expect(verdict(sample[kind], { use: 'distressed' })).toBe(may ? 'ok' : 'identity-use');
    }
  });

  it('notices a call to oneself', () => {
    expect(verdict('232878000', { use: 'individual', own: '232878000' })).toBe('identity-own-called');
    expect(verdict('232878000', { use: 'individual', own: '366123450' })).toBe('ok');
    expect(verdict('232878000', { use: 'own', own: '232878000' })).toBe('ok');
  });

  it('says which call reaches a group', () => {
    expect(checkIdentity(identity('023288998'), { use: 'individual' })).toMatchObject([
      { code: 'identity-use', params: { reason: 'called-group' } },
    ]);
  });
});

describe('checkCallSign', () => {
  it.each(callSigns.plausible)('$sign is plausible: $reason ($source)', ({ sign }) => {
    expect(checkCallSign(sign)).toEqual([]);
  });

  it.each(callSigns.doubtful)("'$sign' is doubtful: $reason ($source)", ({ sign, code }) => {
    expect(checkCallSign(sign)).toMatchObject([{ code }]);
  });

  it('takes blanks anywhere, in a text of at most a hundred characters', () => {
    expect(checkCallSign(` 2 ZZM8${' '.repeat(93)}`)).toEqual([]);
    expect(checkCallSign(` 2 ZZM8${' '.repeat(94)}`)).toMatchObject([{ code: 'identity-call-sign-shape' }]);
  });

  it('ends for ten million characters', () => {
    expect(checkCallSign('A'.repeat(10_000_000))).toMatchObject([{ code: 'identity-call-sign-shape' }]);
  });
});

const noUse = 'checkIdentity: expected use to be one of own, individual, group, distressed';
const noStation = 'checkIdentity: expected station to be one of fixed, handheld, coast';
it.each([
  [{ use: 'xyz' }, noUse],
  [{ use: undefined }, noUse],
  [{ use: 'toString' }, noUse],
  [{ use: 'own', station: 'mast' }, noStation],
  [{ use: 'own', station: null }, noStation],
])('checkIdentity throws on %j, which is no field', (field, message) => {
  const check = () => checkIdentity(identity('232878000'), field as unknown as IdentityField);
  expect(check).toThrow(RangeError);
  expect(check).toThrow(message);
});
