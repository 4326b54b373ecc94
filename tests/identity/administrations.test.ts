import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import table from '../../shared/identity/administrations.json' with { type: 'json' };
import {
  administrationName,
  administrationOf,
  administrationsEdition,
  allAdministrations,
  checkAssigned,
} from '../../src/identity/administrations.ts';
import { parseIdentity } from '../../src/identity/index.ts';
import { hostile } from './arbitrary.ts';

describe('administrations', () => {
  it('are those of the shared table', () => {
    const entries = table.entries.map(({ area, ...entry }) => ({
      ...entry,
      ...(area !== null && { area }),
    }));
    expect(allAdministrations()).toEqual(entries);
    expect(allAdministrations()).toHaveLength(administrationsEdition.entries);
  });

  // United States Coast Guard Navigation Center, MMSI formats: MIDs of the United States, and the range of all.
  it.each(['338', '366', '367', '368', '369'])('gives %s to the United States', (mid) => {
    expect(administrationOf(mid)).toEqual({ mid, administration: 'United States of America', iso3166: 'US' });
  });
  it.each([
    ['303', 'Alaska', 'US'],
    ['358', 'Puerto Rico', 'PR'],
    ['379', 'United States Virgin Islands', 'VI'],
    ['536', 'Northern Mariana Islands', 'MP'],
    ['559', 'American Samoa', 'AS'],
  ])('gives %s to the United States for %s', (mid, area, iso3166) => {
    expect(administrationOf(mid)).toEqual({ mid, administration: 'United States of America', area, iso3166 });
  });
  it('lie from 201 to 775, first digit 2 to 7, none twice', () => {
    const mids = allAdministrations().map(({ mid }) => mid);
    expect([mids[0], mids.at(-1)]).toEqual(['201', '775']);
    expect(new Set(mids).size).toBe(mids.length);
    for (const mid of mids) expect(mid).toMatch(/^[2-7][0-9]{2}$/);
  });
  // UK guidance on ship radio licences; Innovation, Science and Economic Development Canada; Australian AMSA.
  it.each([
    ['232', 'GB'],
    ['233', 'GB'],
    ['234', 'GB'],
    ['235', 'GB'],
    ['316', 'CA'],
    ['503', 'AU'],
    ['211', 'DE'],
    ['218', 'DE'],
  ])('%s is %s', (mid, iso3166) => {
    expect(administrationOf(mid)?.iso3166).toBe(iso3166);
  });

  it('have codes that Intl.DisplayNames, a general-purpose reference, resolves', () => {
    const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' });
    for (const { iso3166 } of allAdministrations()) {
      expect(names.of(iso3166), iso3166).toBeDefined();
      expect(['AN', 'SU', 'YU', 'CS', 'ZR']).not.toContain(iso3166); // withdrawn, but still resolved
    }
  });

  it('have names for people, in a language when asked', () => {
    const name = (mid: string, locale?: string): string => {
      const entry = administrationOf(mid);
      if (entry === undefined) throw new Error(mid);
      return administrationName(entry, locale);
    };
    expect(name('211')).toBe('Germany (Federal Republic of)');
    expect(name('211', 'de')).toBe('Deutschland');
    expect(name('231')).toBe('Denmark (Faroe Islands)');
    expect(name('231', 'en')).toBe('Faroe Islands');
    expect(name('204', 'en')).toBe('Portugal (Azores)');
    expect(name('303', 'es')).toBe('Estados Unidos (Alaska)');
    expect(() => name('211', 'not a locale')).toThrow(RangeError);
  });

  it('are not found under other names', () => {
    for (const mid of [...hostile, '', '0', '2', '200', '299', '999', '776', '2011', ' 201', '211 218']) {
      expect(administrationOf(mid)).toBeUndefined();
    }
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(administrationOf(text)?.mid ?? text).toBe(text);
      }),
    );
  });

  it('give a notice, no refusal, for a MID that is not listed', () => {
    const codes = (digits: string): readonly string[] => {
      const result = parseIdentity(digits);
      return result.ok ? checkAssigned(result.value).map(({ code }) => code) : ['refused'];
    };
    expect(codes('200123456')).toEqual(['identity-mid-unallocated']);
    expect(codes('222222222')).toEqual(['identity-mid-unallocated']);
    expect(codes('777777777')).toEqual(['identity-mid-unallocated']);
    expect(codes('555555555')).toEqual([]);
    expect(codes('232878000')).toEqual([]);
    expect(codes('970011234')).toEqual([]);
    expect(codes('009990000')).toEqual([]);
  });

  it('say what they were given in place of an entry or an identity', () => {
    expect(() => administrationName(administrationOf('200') as never)).toThrow(
      'administrationName: expected an administration, got undefined',
    );
    expect(() => administrationName('211' as never)).toThrow("got '211'");
    expect(() => checkAssigned(parseIdentity('232878000') as never)).toThrow(
      'checkAssigned: expected an identity, got a result: look at .ok first, then use .value',
    );
    for (const odd of [null, 5, '232878000']) expect(() => checkAssigned(odd as never)).toThrow(TypeError);
  });
});
