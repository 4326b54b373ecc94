import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import addresses from '../../shared/identity/call-address.json' with { type: 'json' };
import { createDirectory, findStations, nameOf } from '../../src/directory/index.ts';
import { isMmsi } from '../../src/identity/classify.ts';
import {
  checkCallSign,
  decodeCallAddress,
  encodeCallAddress,
  formatIdentity,
  type Identity,
  mmsi,
  parseIdentity,
} from '../../src/identity/index.ts';
import { assigned, hostile, nineDigits } from './arbitrary.ts';

describe('formatIdentity', () => {
  it.each([
    ['002111240', '00 211 1240', 'Bremen Rescue, as German guidance writes it'],
    ['227160100', '227 160 100', 'French licensing text'],
    ['023288998', '0 232 88998', 'prefix, MID, rest'],
    ['002320000', '00 232 0000', 'prefix, MID, rest'],
    ['009990000', '00 999 0000', 'prefix, 999, rest'],
    ['111366770', '111 366 770', 'prefix, MID, rest'],
    ['850300001', '8 503 00001', 'prefix, MID, rest'],
    ['982321234', '98 232 1234', 'prefix, MID, rest'],
    ['993161001', '99 316 1001', 'prefix, MID, rest'],
    ['970011234', '970 01 1234', 'prefix, manufacturer, serial'],
    ['972232123', '972 23 2123', 'prefix, manufacturer, serial'],
    ['974011234', '974 01 1234', 'prefix, manufacturer, serial'],
    ['979123456', '979 123 456', 'prefix, rest in threes'],
    ['000000000', '000 000 000', 'no form: threes'],
  ])('%s is %s for people: %s', (digits, people) => {
    expect(formatIdentity(digits)).toBe(people);
    expect(formatIdentity(digits, 'people')).toBe(people);
    expect(formatIdentity(digits, 'machine')).toBe(digits);
  });

  it('is read back in both styles', () => {
    fc.assert(
      fc.property(assigned, fc.constantFrom('people' as const, 'machine' as const), (digits, style) => {
        const parsed = parseIdentity(digits);
        if (!parsed.ok) throw new Error('assigned');
        expect(formatIdentity(parsed.value, style)).toBe(formatIdentity(digits, style));
        const again = parseIdentity(formatIdentity(parsed.value, style));
        expect(again.ok && again.value).toEqual(parsed.value);
      }),
    );
  });

  it('throws on what is not nine digits', () => {
    for (const text of [...hostile, '', '12345678', '232 878 000', '232878000\n']) {
      expect(() => formatIdentity(text)).toThrow(RangeError);
    }
  });
});

describe('a number is no identity: leading zeros are lost in numbers', () => {
  it.each([
    () => encodeCallAddress(232999142 as unknown as string),
    () => encodeCallAddress('232999142', 0 as unknown as string),
    () => formatIdentity(232999142 as unknown as string),
    () => formatIdentity({ kind: 'ship', mmsi: 232999142, mid: '232' } as unknown as Identity),
    () => mmsi(232999142 as unknown as string),
  ])('%s', (use) => expect(use).toThrow(RangeError));

  it('is only read, and gives what there is to say of it', () => {
    expect(isMmsi(232999142)).toBe(false);
    expect(checkCallSign(232999142 as unknown as string)).toMatchObject([
      { code: 'identity-call-sign-type', params: { type: 'number' } },
    ]);
    const directory = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' });
    for (const given of [232999142, null, undefined, {}] as unknown as string[]) {
      expect(findStations(directory, given)).toEqual([]);
      expect(nameOf(directory, given)).toBe(given);
    }
  });
});

describe('address of a call', () => {
  it.each(addresses.vectors)('$mmsi is $tenDigits ($source)', ({ mmsi, tenDigits }) => {
    expect(encodeCallAddress(mmsi)).toBe(tenDigits);
    const address = decodeCallAddress(tenDigits);
    expect(address).toMatchObject({
      ok: true,
      value: { digits: mmsi, tenthDigit: '0', identity: { mmsi } },
      notices: [],
    });
  });

  it('keeps whatever ten digits were received', () => {
    fc.assert(
      fc.property(nineDigits, fc.integer({ min: 0, max: 9 }), (digits, tenth) => {
        const address = decodeCallAddress(`${digits}${tenth}`);
        if (!address.ok) throw new Error('ten digits');
        expect(encodeCallAddress(address.value.digits, address.value.tenthDigit)).toBe(`${digits}${tenth}`);
        const codes = address.notices.map(({ code }) => code);
        expect(codes.includes('identity-tenth-digit')).toBe(tenth !== 0);
        expect(codes.includes('identity-address-unassigned')).toBe(address.value.identity === undefined);
        expect(JSON.parse(JSON.stringify(address))).toEqual(address);
      }),
    );
  });

  it('never throws on reading, and refuses every other shape', () => {
    for (const value of [
      ...hostile,
      '',
      '002320014',
      '00232001400',
      '00232001 40',
      '0023200140\n',
      23200140,
      null,
      {},
    ]) {
      expect(decodeCallAddress(value)).toMatchObject({
        ok: false,
        issues: [{ code: 'identity-address-shape' }],
      });
    }
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(typeof decodeCallAddress(value).ok).toBe('boolean');
      }),
    );
    expect(decodeCallAddress('0'.repeat(10_000_000)).ok).toBe(false);
  });

  it('throws on writing what is no identity', () => {
    expect(() => encodeCallAddress('2320014')).toThrow(RangeError);
    expect(() => encodeCallAddress('002320014', '')).toThrow(RangeError);
    expect(() => encodeCallAddress('002320014', '10')).toThrow(RangeError);
  });
});
