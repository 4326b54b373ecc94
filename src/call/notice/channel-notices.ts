import { channelFromDigits } from '../../channel/index.ts';
import type { Notice } from '../../result/index.ts';
import type { Composition } from '../composition.ts';
import { saysNothing, vhfChannelOf } from '../element/channel-symbols.ts';
import { type CallFields, digitsOf } from '../fields.ts';
import { same } from '../same.ts';
import { fieldNames, shown } from './field-names.ts';

/** What is to be said of the channels or frequencies that a call of a known kind carries. */
export function elementNotices(fields: CallFields, canonical: CallFields | null, row: Composition): Notice[] {
  // Where the call should name nothing, an element is told as unexpected already.
  const carried = (['receive', 'transmit'] as const).filter(
    (field) =>
      row.order.includes(field) &&
      !saysNothing(fields[field]) &&
      !(canonical !== null && saysNothing(canonical[field])),
  );
  return [...carried.flatMap((field) => digitNotices(field, fields)), ...differing(carried, fields, row)];
}

function digitNotices(field: 'receive' | 'transmit', fields: CallFields): Notice[] {
  if (field === 'transmit' && same(fields.transmit, fields.receive)) return [];
  const read = channelFromDigits(digitsOf(fields[field]) ?? '');
  if (!read.ok) return [];
  return read.notices.map((notice) => ({
    ...notice,
    message: `${fieldNames[field]}: ${notice.message}`,
    at: [field],
  }));
}

function differing(carried: readonly string[], fields: CallFields, row: Composition): Notice[] {
  const [first, second] = [vhfChannelOf(fields.receive), vhfChannelOf(fields.transmit)];
  if (carried.length < 2 || first === null || second === null || first === second) return [];
  return [
    {
      code: 'call-channels-differ',
      message: `${fieldNames.transmit}: channel ${second}, where the first names channel ${first}; a VHF call names one`,
      at: ['transmit'],
      expected: `${shown(fields.receive)}, or no information`,
      received: shown(fields.transmit),
      clause: row.clause,
    },
  ];
}
