import { expect } from 'vitest';
import {
  checkCallSign,
  checkIdentity,
  decodeCallAddress,
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
const noticesOf = (digits: string, field: IdentityField): number =>
  checkIdentity(identity(digits), field).filter(({ grade }) => grade !== 'error').length;

export const deviations: Record<string, () => void> = {
  'D-identity-4': () => {
    expect(checkCallSign('no call sign at all')).toMatchObject([{ code: 'identity-call-sign-shape' }]);
  },
  'D-identity-5': () => {
    expect(decodeCallAddress('2328780003')).toMatchObject({
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
      expect(form?.source).toBe(kind === 'amrd-b' ? 'seen' : 'memory');
      expect(form?.since).toContain('not confirmed');
    }
  },
  'D-identity-9': () => {
    expect(noticesOf('235912345', { use: 'own' })).toBe(1);
    expect(noticesOf('235912345', { use: 'own', station: 'handheld' })).toBe(0);
    expect(noticesOf('235812345', { use: 'own', station: 'handheld' })).toBe(1);
  },
};
