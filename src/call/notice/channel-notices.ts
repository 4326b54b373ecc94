import type { Notice } from '../../result/index.ts';
import { isNumbered, saysNothing, vhfChannelOf } from '../element/channel-symbols.ts';
import { type CallFields, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';
import { receivedNotice } from '../texts.ts';

type Element = 'receive' | 'transmit';

/** What is to be said of the VHF channels that a call of a known kind names. */
export function elementNotices(fields: CallFields, canonical: CallFields | null, row: Composition): Notice[] {
  const [first, second] = [vhfChannelOf(fields.receive), vhfChannelOf(fields.transmit)];
  const notices = [
    ...oneChannel('receive', first, fields, row),
    ...(same(fields.transmit, fields.receive) ? [] : oneChannel('transmit', second, fields, row)),
  ];
  if (first !== null && second !== null && first !== second)
    notices.push(
      receivedNotice(
        'call-channels-differ',
        { channel: second, first, symbols: shown(fields.receive) },
        { at: ['transmit'], received: shown(fields.transmit), clause: row.clause },
      ),
    );
  // Where the call should name nothing, an element is told as unexpected already.
  return canonical !== null && saysNothing(canonical.receive) && saysNothing(canonical.transmit)
    ? []
    : notices;
}

function oneChannel(
  field: Element,
  channel: string | null,
  fields: CallFields,
  { order }: Composition,
): Notice[] {
  if (channel === null || !order.includes(field)) return [];
  const found = { at: [field], received: shown(fields[field]) };
  if (!isNumbered(channel))
    return [receivedNotice('call-channel-unknown', { field, channel }, { ...found, clause: APPENDIX_18 })];
  // deviation: D-channel-7
  if (fields[field]?.[0] === 90) return [];
  return [receivedNotice('call-channel-old-form', { field, channel }, { ...found, clause: ELEMENT })];
}

const APPENDIX_18 = 'ITU-R M.1084 Annex 4; Radio Regulations Appendix 18';
const ELEMENT = 'ITU-R M.493-16, VHF channel element, unverified';
