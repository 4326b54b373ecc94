/**
 * Which administration a MID is allocated to: the table that `parseIdentity` does without.
 *
 * @packageDocumentation
 */
import type { Notice } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import { type AdministrationRow, administrationRows } from './administration-table.ts';
import type { Identity } from './identity.ts';
import { issue } from './texts.ts';

/** One allocated MID. */
export interface Administration {
  /** Maritime identification digits, three. */
  readonly mid: string;
  /** English name in the form the ITU uses: for display, not a key. */
  readonly administration: string;
  /** English name of the territory the MID is for, where it is for one. */
  readonly area?: string;
  /** ISO 3166-1 alpha-2 code: of the area where it has one, otherwise of the administration. */
  readonly iso3166: string;
}

/** State of the table: allocations made later are missing from it. */
export const administrationsEdition: {
  readonly document: string;
  readonly asOf: string;
  readonly entries: number;
} = {
  document: 'ITU Table of Maritime Identification Digits',
  asOf: '2026-10',
  entries: 292,
};

function entryOf(mid: string, [iso3166, administration, , area]: AdministrationRow): Administration {
  return { mid, administration, ...(area !== undefined && { area }), iso3166 };
}

/**
 * The administration a MID is allocated to. It issued the number; it need not be the ship's flag today, and says
 * neither where the ship is nor that the number is genuine.
 *
 * @param mid - three digits
 * @returns the entry, or `undefined` where this edition of the table has none: perhaps allocated since
 *
 * Source: ITU Table of Maritime Identification Digits, see {@link administrationsEdition}.
 *
 * @see {@link administrationName}
 * @see {@link checkAssigned}
 *
 * @example
 * ```ts
 * import { administrationOf } from 'seahail/identity/administrations';
 *
 * console.log(administrationOf('316')?.administration); // Canada
 * console.log(administrationOf('231')?.area); // Faroe Islands
 * ```
 */
export function administrationOf(mid: string): Administration | undefined {
  if (typeof mid !== 'string' || !/^\d{3}$/.test(mid)) return undefined;
  const row = administrationRows.find(([, , mids]) => mids.includes(mid));
  return row && entryOf(mid, row);
}

/**
 * Every allocated MID of this edition, in order.
 *
 * @returns a new list of {@link administrationsEdition}`.entries` entries
 *
 * @example
 * ```ts
 * import { allAdministrations } from 'seahail/identity/administrations';
 *
 * const canada = allAdministrations().filter((entry) => entry.iso3166 === 'CA');
 * console.log(canada.map((entry) => entry.mid)); // [ '316' ]
 * ```
 */
export function allAdministrations(): readonly Administration[] {
  return administrationRows
    .flatMap((row) => row[2].split(' ').map((mid) => entryOf(mid, row)))
    .sort((a, b) => Number(a.mid) - Number(b.mid));
}

/**
 * Name of an administration for people. Show it as "number issued by", not as "flag".
 *
 * @param entry - what {@link administrationOf} gave
 * @param locale - BCP 47 tag; the name then comes from `Intl.DisplayNames`, the area's own English name after it
 * where the code covers more than the area. Without it: the English name the ITU uses
 * @returns the name
 * @throws TypeError when there is no entry; RangeError when the locale is not a well-formed tag
 *
 * @example
 * ```ts
 * import { administrationName, administrationOf } from 'seahail/identity/administrations';
 *
 * const azores = administrationOf('204');
 * if (azores) console.log(administrationName(azores)); // Portugal (Azores)
 * const germany = administrationOf('211');
 * if (germany) console.log(administrationName(germany, 'fr')); // Allemagne
 * ```
 */
export function administrationName(entry: Administration, locale?: string): string {
  want('administrationName', 'an administration', entry, 'iso3166');
  const { administration, area, iso3166 } = entry;
  const name =
    locale === undefined ? administration : new Intl.DisplayNames(locale, { type: 'region' }).of(iso3166);
  const areaHasCode = administrationRows.every(([code, , , other]) => code !== iso3166 || other === area);
  const named = area === undefined || (locale !== undefined && areaHasCode);
  return named ? (name ?? administration) : `${name} (${area})`;
}

/**
 * Whether the MID of an identity is allocated: the second question, after well-formed and before sensible. The table
 * grows without notice, so an unknown MID is a reason to look again, not to refuse.
 *
 * @param identity - the identity as `parseIdentity` gave it
 * @returns one notice where the MID is not in this edition; none where it is, or where the form has no MID
 * @throws TypeError when the value is no identity
 *
 * @example
 * ```ts
 * import { parseIdentity } from 'seahail/identity';
 * import { checkAssigned } from 'seahail/identity/administrations';
 *
 * const result = parseIdentity('200123456');
 * if (result.ok) console.log(checkAssigned(result.value)[0]?.code); // identity-mid-unallocated
 * ```
 */
export function checkAssigned(identity: Identity): readonly Notice[] {
  want('checkAssigned', 'an identity', identity, 'mmsi');
  if (!('mid' in identity) || administrationOf(identity.mid) !== undefined) return [];
  return [
    issue(
      'identity-mid-unallocated',
      { mid: identity.mid, edition: administrationsEdition.asOf },
      { received: quote(identity.mmsi), clause: administrationsEdition.document },
    ),
  ];
}
