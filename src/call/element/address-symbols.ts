import type { CallAddress, DistressRelay } from '../call.ts';
import type { CallFields } from '../fields.ts';
import { identityOf, identitySymbols } from './identity-symbols.ts';
import { areaOf, areaSymbols } from './place-symbols.ts';

/** Whom a call is for, by its format specifier; `null` when that is none of the table. */
export function addressOf(fields: CallFields): CallAddress | null {
  switch (fields.format) {
    case 112:
      return { kind: 'all-stations' };
    case 102:
      return { kind: 'area', area: areaOf(fields.address) };
    case 114:
      return { kind: 'group', mmsi: identityOf(fields.address) };
    case 116:
      return { kind: 'all-ships' };
    case 120:
    case 123:
      return { kind: 'station', mmsi: identityOf(fields.address) };
    default:
      return null;
  }
}

/** The address of a relay, which may go to one, some or all: no other call is read as a relay. */
export function relayAddressOf(fields: CallFields): DistressRelay['to'] {
  return addressOf(fields) as DistressRelay['to'];
}

/** Format specifier and address of a call; the automatic service has its own format specifier. */
export function addressFields(address: CallAddress): Pick<CallFields, 'format' | 'address'> {
  switch (address.kind) {
    case 'all-stations':
      return { format: 112, address: null };
    case 'all-ships':
      return { format: 116, address: null };
    case 'area':
      return { format: 102, address: areaSymbols(address.area) };
    case 'group':
      return { format: 114, address: identitySymbols(address.mmsi) };
    case 'station':
      return { format: 120, address: identitySymbols(address.mmsi) };
  }
}
