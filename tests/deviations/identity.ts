import { expect } from 'vitest';
import table from '../../shared/identity/administrations.json' with { type: 'json' };
import { administrationsEdition, checkAssigned } from '../../src/identity/administrations.ts';
import {
  checkCallSign,
  checkIdentity,
  fromCallAddress,
  type Identity,
  type IdentityField,
  identityForms,
  parseIdentity,
  usesOf,
} from '../../src/identity/index.ts';

const identity = (digits: string): Identity => {
  const result = parseIdentity(digits);
  if (!result.ok) throw new Error(result.issues[0].message);
  return result.value;
};
const noticesOf = (digits: string, field: IdentityField): number => {
  const result = checkIdentity(identity(digits), field);
  return result.ok ? result.notices.length : Number.NaN;
};

export const deviations: Record<string, () => void> = {
  'D-identity-1': () => {
    expect(identity('002325001')).toMatchObject({ kind: 'coast', categoryHint: 'ais-base' });
    expect(identity('992328001')).toMatchObject({ kind: 'aton', categoryHint: 'mobile' });
    expect(identity('111232501')).toMatchObject({ kind: 'sar-aircraft', categoryHint: 'helicopter' });
    expect(identity('003669999')).not.toHaveProperty('categoryHint');
    expect(identity('002320014')).not.toHaveProperty('categoryHint');
  },
  'D-identity-2': () => {
    expect(identity('979123456')).toEqual({ kind: 'amrd-b', mmsi: '979123456', serial: '123456' });
  },
  'D-identity-3': () => {
    expect(identityForms.find(({ kind }) => kind === 'coast-all')).toMatchObject({
      pattern: '009990000',
      name: 'all VHF coast stations',
    });
  },
  'D-identity-4': () => {
    expect(checkCallSign('no call sign at all')).toMatchObject([{ code: 'identity-call-sign-shape' }]);
  },
  'D-identity-5': () => {
    expect(fromCallAddress('2328780003')).toMatchObject({
      ok: true,
      value: { digits: '232878000', tenthDigit: '3' },
      notices: [{ code: 'identity-tenth-digit' }],
    });
  },
  'D-identity-6': () => {
    expect(usesOf({ kind: 'mob' })).toEqual({ own: true, individual: false, group: false });
  },
  'D-identity-7': () => {
    for (const kind of ['coast', 'coast-all-national', 'coast-all'] as const) {
      expect(usesOf({ kind })).toMatchObject({ individual: true, group: false });
    }
  },
  'D-identity-8': () => {
    for (const kind of ['amrd-b', 'sar-aircraft-all-national']) {
      const form = identityForms.find((each) => each.kind === kind);
      expect(form?.source).toBe('memory');
      expect(form?.since).toContain('not confirmed');
    }
  },
  'D-identity-9': () => {
    expect(noticesOf('235912345', { use: 'own' })).toBe(1);
    expect(noticesOf('235912345', { use: 'own', station: 'handheld' })).toBe(0);
    expect(noticesOf('235812345', { use: 'own', station: 'handheld' })).toBe(1);
  },
  'D-identity-10': () => {
    const seen = table.entries.filter(({ basis }) => basis === 'seen');
    expect([seen.length, table.entries.length - seen.length]).toEqual([114, 178]);
    expect(administrationsEdition).toMatchObject({ asOf: '2021', entries: 292 });
    expect(checkAssigned(identity('299123456'))).toMatchObject([{ code: 'identity-mid-unallocated' }]);
  },
};
