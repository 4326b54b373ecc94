import type { Notice } from '../../result/index.ts';
import { NO_CHANNEL, vhfChannelOf } from '../element/channel-symbols.ts';
import { type CallFields, fieldForms, type Symbols, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';
import { endsOfSequence, nameOfSymbol } from '../symbol.ts';

type Field = keyof CallFields;

/** Fields that a sentence on the wire leaves out without meaning anything by it. */
const OFTEN_ABSENT: readonly Field[] = ['address', 'self', 'receive', 'transmit'];

/** What to say of one field that differs from its composition; nothing when the difference means nothing. */
export function differenceNotice(
  field: Field,
  fields: CallFields,
  canonical: CallFields,
  row: Composition,
): Notice[] {
  const [received, expected] = [fields[field], canonical[field]];
  const belongs = row.order.includes(field);
  if (received === null && OFTEN_ABSENT.includes(field)) return [];
  if (received === null && belongs) return [finding('call-field-missing', field, 'not given', fields, row)];
  if (same(received, expected) || hasGap(field, received)) return [];
  switch (field) {
    case 'category':
      // A distress alert has none on the air; a sentence may carry 112 all the same.
      return [];
    case 'end':
      return [endNotice(fields, canonical, row)];
    case 'header':
      if (expected === false) break;
      return [
        finding('call-header-missing', field, '55 is usual before the position of a reply', fields, row),
      ];
    case 'rest':
      return [
        finding('call-rest', field, 'symbols that belong to no field are kept as received', fields, row),
      ];
    case 'expansion':
      return [
        {
          ...finding('call-expansion-unread', field, 'sets not understood are kept as received', fields, row),
          clause: 'ITU-R M.821-1, unverified',
        },
      ];
    case 'receive':
    case 'transmit':
      if (belongs && sameChannel(received, expected)) return [];
      // One number applies to both directions: repeated or left open, it means the same.
      if (field === 'transmit' && belongs && (same(received, NO_CHANNEL) || same(received, fields.receive)))
        return [];
      break;
    case 'address':
    case 'self':
    case 'distressed':
      if (!onlyTenthDigitDiffers(received, expected)) break;
      return [
        {
          ...finding(
            'call-tenth-digit',
            field,
            'the tenth digit of an identity is 0 for a station',
            fields,
            row,
          ),
          clause: 'ITU-R M.1080, unverified',
        },
      ];
  }
  return belongs
    ? [finding('call-field-unread', field, 'not in the form of the tables, kept as received', fields, row)]
    : [finding('call-field-unexpected', field, 'not part of this call, kept as received', fields, row)];
}

/** Whether a character is open, which is told by a notice of its own. */
export function hasGap(field: Field, value: CallFields[Field]): boolean {
  return field !== 'expansion' && Array.isArray(value) && value.includes(null);
}

function endNotice(fields: CallFields, canonical: CallFields, row: Composition): Notice {
  const name = (symbol: number | null) => (symbol === null ? 'none' : nameOfSymbol(endsOfSequence, symbol));
  return {
    code: 'call-end-unusual',
    message: `End of sequence: ${name(canonical.end)} is usual in this call, got ${name(fields.end)}`,
    at: ['end'],
    expected: String(canonical.end),
    received: String(fields.end),
    clause: row.clause,
  };
}

function finding(code: string, field: Field, what: string, fields: CallFields, row: Composition): Notice {
  return {
    code,
    message: `${fieldForms[field].label}: ${what}`,
    at: [field],
    received: shown(fields[field]),
    clause: row.clause,
  };
}

// The channel was read, and its older form has a notice of its own; deviation: D-channel-7
function sameChannel(received: CallFields[Field], expected: CallFields[Field]): boolean {
  const [one, other] = [received, expected].map((value) => vhfChannelOf(value as Symbols | null));
  return one !== null && one === other;
}

function onlyTenthDigitDiffers(received: CallFields[Field], expected: CallFields[Field]): boolean {
  if (!Array.isArray(received) || !Array.isArray(expected) || received.length !== 5) return false;
  const nine = (symbols: readonly number[]) => [...symbols.slice(0, 4), Math.floor((symbols[4] ?? 0) / 10)];
  return same(nine(received), nine(expected));
}
