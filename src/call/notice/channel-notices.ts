import type { Notice } from '../../result/index.ts';
import { isNumbered, saysNothing, vhfChannelOf } from '../element/channel-symbols.ts';
import { type CallFields, fieldForms, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';

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
      notice(
        'call-channels-differ',
        'transmit',
        `channel ${second}, where the first names channel ${first}; a VHF call names one`,
        fields,
        row.clause,
        `${shown(fields.receive)}, or no information`,
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
  if (!isNumbered(channel))
    return [notice('call-channel-unknown', field, `${channel} names no channel`, fields, APPENDIX_18)];
  // deviation: D-channel-7
  if (fields[field]?.[0] === 90) return [];
  return [
    notice(
      'call-channel-old-form',
      field,
      `read as channel ${channel}, in the form of older sets`,
      fields,
      ELEMENT,
    ),
  ];
}

const APPENDIX_18 = 'ITU-R M.1084 Annex 4; Radio Regulations Appendix 18';
const ELEMENT = 'ITU-R M.493-16, VHF channel element, unverified';

function notice(
  code: string,
  field: Element,
  what: string,
  fields: CallFields,
  clause: string,
  expected?: string,
): Notice {
  return {
    code,
    message: `${fieldForms[field].label}: ${what}`,
    at: [field],
    ...(expected !== undefined && { expected }),
    received: shown(fields[field]),
    clause,
  };
}
