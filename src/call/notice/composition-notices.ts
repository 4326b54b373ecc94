import type { Notice } from '../../result/index.ts';
import { isNumbered, saysNothing, vhfChannelOf } from '../element/channel-symbols.ts';
import { allFields, type CallFields, fieldForms, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';
import { ATIS_FORMAT, categories, isNamed, isUnknown, NO_INFORMATION, nameOfSymbol } from '../symbol.ts';
import { receivedNotice } from '../texts.ts';
import { differenceNotice, hasGap } from './difference-notice.ts';

const RECOMMENDATION = 'ITU-R M.493-16 Annex 1';

/** Notices about fields that fit no kind of call. */
export function unrecognisedNotices(fields: CallFields): Notice[] {
  return [unread(fields), ...missingCharacters(fields)];
}

function unread(fields: CallFields): Notice {
  if (fields.format === ATIS_FORMAT) {
    const clause = 'ETSI EN 300 698 Annex B, restated';
    return receivedNotice('call-atis', { format: ATIS_FORMAT }, 'format', clause, String(ATIS_FORMAT));
  }
  const received = `${shown(fields.format)}, ${shown(fields.telecommand1)}`;
  return receivedNotice('call-unrecognised', {}, 'format', RECOMMENDATION, received);
}

/**
 * What a person should be told about the fields of a call of a known kind: where they differ from its
 * composition, and which symbols the tables do not name. Variants that mean the same (one channel
 * element filled or both) are passed over. `canonical` is `null` when the fields are what composing gives.
 */
export function compositionNotices(
  row: Composition,
  fields: CallFields,
  canonical: CallFields | null,
): Notice[] {
  const notices = [
    ...missingCharacters(fields),
    ...unknownSymbols(fields, row),
    ...categoryNotices(fields, row),
    ...echoedChannel(fields, row),
    ...elementNotices(fields, canonical, row),
  ];
  if (canonical !== null)
    for (const field of allFields) notices.push(...differenceNotice(field, fields, canonical, row));
  return notices;
}

// Plain loops: every call read from a sentence or a burst comes through here.
function missingCharacters(fields: CallFields): Notice[] {
  const notices: Notice[] = [];
  for (const field of allFields)
    if (hasGap(fields[field]))
      notices.push(
        receivedNotice('call-character-missing', { field }, field, RECOMMENDATION, shown(fields[field])),
      );
  return notices;
}

function unknownSymbols(fields: CallFields, row: Composition): Notice[] {
  const notices: Notice[] = [];
  for (const field of row.order) {
    const symbol = fields[field];
    const { table } = fieldForms[field];
    if (table === undefined || typeof symbol !== 'number') continue;
    if (symbol === NO_INFORMATION && field !== 'category' && field !== 'nature') continue;
    if (isNamed(table, symbol)) continue;
    notices.push(
      receivedNotice(
        'call-symbol-unknown',
        { field, symbol },
        field,
        `${RECOMMENDATION} table of symbols`,
        String(symbol),
      ),
    );
  }
  return notices;
}

// deviation: D-call-11 (position calls, tests and announcements of older sets with other categories).
function categoryNotices(fields: CallFields, row: Composition): Notice[] {
  if (fields.category === null) return [];
  const category = nameOfSymbol(categories, fields.category);
  if (category === 'acs') {
    const clause = 'ITU-R M.493-16 Annex 1 §6';
    return [receivedNotice('call-category-acs', {}, 'category', clause, '106')];
  }
  const usual = row.categories;
  if (isUnknown(category) || usual.length === 0 || usual.includes(category)) return [];
  return [receivedNotice('call-category-unusual', { usual, category }, 'category', row.clause, category)];
}

// deviation: D-call-9
function echoedChannel(fields: CallFields, row: Composition): Notice[] {
  if (row.kind !== 'unable-to-comply' || [fields.receive, fields.transmit].every(saysNothing)) return [];
  return [receivedNotice('call-channel-echoed', {}, 'receive', row.clause, shown(fields.receive))];
}

type Element = 'receive' | 'transmit';

/** What is to be said of the VHF channels that a call of a known kind names. */
function elementNotices(fields: CallFields, canonical: CallFields | null, row: Composition): Notice[] {
  const [first, second] = [vhfChannelOf(fields.receive), vhfChannelOf(fields.transmit)];
  const notices = [
    ...oneChannel('receive', first, fields, row),
    ...(same(fields.transmit, fields.receive) ? [] : oneChannel('transmit', second, fields, row)),
  ];
  if (first !== null && second !== null && first !== second) {
    const params = { channel: second, first, symbols: shown(fields.receive) };
    notices.push(
      receivedNotice('call-channels-differ', params, 'transmit', row.clause, shown(fields.transmit)),
    );
  }
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
  const seen = shown(fields[field]);
  if (!isNumbered(channel))
    return [receivedNotice('call-channel-unknown', { field, channel }, field, APPENDIX_18, seen)];
  // deviation: D-channel-7
  if (seen.startsWith('90')) return [];
  return [receivedNotice('call-channel-old-form', { field, channel }, field, ELEMENT, seen)];
}

const APPENDIX_18 = 'ITU-R M.1084 Annex 4; Radio Regulations Appendix 18';
const ELEMENT = 'ITU-R M.493-16, VHF channel element, unverified';
