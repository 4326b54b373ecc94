import type { Notice } from '../../result/index.ts';
import { NO_CHANNEL, vhfChannelOf } from '../element/channel-symbols.ts';
import { identityOf } from '../element/identity-symbols.ts';
import { type CallFields, type Symbols, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';
import { receivedNotice } from '../texts.ts';

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
  const { clause } = row;
  const seen = shown(received);
  if (received === null && belongs)
    return [receivedNotice('call-field-missing', { field }, field, clause, seen)];
  if (same(received, expected) || hasGap(received)) return [];
  switch (field) {
    case 'category':
      // A distress alert has none on the air; a sentence may carry 112 all the same.
      return [];
    case 'end': {
      const params = { usual: Number(canonical.end), symbol: fields.end ?? undefined };
      return [receivedNotice('call-end-unusual', params, field, clause, seen)];
    }
    case 'header':
      if (expected === false) break;
      return [receivedNotice('call-header-missing', {}, field, clause, seen)];
    case 'rest':
      return [receivedNotice('call-rest', {}, field, clause, seen)];
    case 'expansion':
      return [receivedNotice('call-expansion-unread', {}, field, 'ITU-R M.821-1, unverified', seen)];
    case 'receive':
    case 'transmit':
      if (belongs && sameChannel(received, expected)) return [];
      // One number applies to both directions: repeated or left open, it means the same.
      if (field === 'transmit' && belongs && (same(received, NO_CHANNEL) || same(received, fields.receive)))
        return [];
      break;
    case 'address':
    case 'self':
    case 'distressed': {
      const digit = tenthDigit(received as Symbols | null, expected as Symbols | null);
      if (digit === null) break;
      return [receivedNotice('call-tenth-digit', { field, digit }, field, 'ITU-R M.1080, unverified', seen)];
    }
  }
  const code = belongs ? 'call-field-unread' : 'call-field-unexpected';
  return [receivedNotice(code, { field }, field, clause, seen)];
}

/** Whether a character is open, which is told by a notice of its own. */
export function hasGap(value: CallFields[Field]): boolean {
  return Array.isArray(value) && value.includes(null);
}

// The channel was read, and its older form has a notice of its own; deviation: D-channel-7
function sameChannel(received: CallFields[Field], expected: CallFields[Field]): boolean {
  const [one, other] = [received, expected].map((value) => vhfChannelOf(value as Symbols | null));
  return one !== null && one === other;
}

/** The tenth digit of an identity that was read, where nothing else differs from what composing gives. */
function tenthDigit(received: Symbols | null, expected: Symbols | null): number | null {
  const identity = identityOf(received);
  return identity !== null && identity === identityOf(expected)
    ? Number((received as Symbols)[4]) % 10
    : null;
}
