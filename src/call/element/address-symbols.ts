import type { CallAddress } from '../call.ts';
import type { CallFields, Symbols } from '../fields.ts';
import { type FormatSpecifier, formatSpecifiers, symbolOfName } from '../symbol.ts';
import { identityOf, identitySymbols } from './identity-symbols.ts';
import { areaOf, areaSymbols } from './place-symbols.ts';

/** The address that goes with each format specifier; of two for one address the usual one comes first. */
export const ADDRESS_KINDS: Readonly<Record<FormatSpecifier, CallAddress['kind']>> = {
  distress: 'all-stations',
  'all-ships': 'all-ships',
  area: 'area',
  group: 'group',
  individual: 'station',
  'automatic-service': 'station',
};

/** The format specifier of a symbol, `undefined` when the table has no such symbol. */
export function formatOf(symbol: number | null): FormatSpecifier | undefined {
  return formatSpecifiers.rows.find((row) => row[0] === symbol)?.[1];
}

/** Whom a call is for, by its format specifier; `null` when that is none of the table. */
export function addressOf({ format, address }: CallFields): CallAddress | null {
  const name = formatOf(format);
  return name === undefined ? null : readAddress(name, address);
}

/** The address of a call under a known format specifier. */
export function readAddress(format: FormatSpecifier, address: Symbols | null): CallAddress {
  const kind = ADDRESS_KINDS[format];
  switch (kind) {
    case 'all-stations':
    case 'all-ships':
      return { kind };
    case 'area':
      return { kind, area: areaOf(address) };
    default:
      return { kind, mmsi: identityOf(address) };
  }
}

/** Format specifier and address of a call; `usual` is the format specifier of its row. */
export function addressFields(
  to: CallAddress,
  usual: FormatSpecifier,
): Pick<CallFields, 'format' | 'address'> {
  const format = ADDRESS_KINDS[usual] === to.kind ? usual : formatFor(to.kind);
  return { format: symbolOfName(formatSpecifiers, format ?? usual), address: addressSymbols(to) };
}

function formatFor(kind: CallAddress['kind']): FormatSpecifier | undefined {
  return (Object.keys(ADDRESS_KINDS) as FormatSpecifier[]).find((name) => ADDRESS_KINDS[name] === kind);
}

function addressSymbols(to: CallAddress): Symbols | null {
  if (to.kind === 'area') return areaSymbols(to.area);
  return 'mmsi' in to ? identitySymbols(to.mmsi) : null;
}
