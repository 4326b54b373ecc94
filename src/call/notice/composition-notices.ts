import type { Notice } from '../../result/index.ts';
import { saysNothing } from '../element/channel-symbols.ts';
import { allFields, type CallFields, fieldForms, shown } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { ATIS_FORMAT, categories, isNamed, NO_INFORMATION, nameOfSymbol } from '../symbol.ts';
import { elementNotices } from './channel-notices.ts';
import { differenceNotice, hasGap } from './difference-notice.ts';

const RECOMMENDATION = 'ITU-R M.493-16 Annex 1';

/** Notices about fields that fit no kind of call. */
export function unrecognisedNotices(fields: CallFields): Notice[] {
  return [fields.format === ATIS_FORMAT ? atisNotice : unread(fields), ...missingCharacters(fields)];
}

const atisNotice: Notice = {
  code: 'call-atis',
  message: `Call: format ${ATIS_FORMAT} identifies a vessel on inland waters (ATIS) and is refused as a call`,
  at: ['format'],
  received: String(ATIS_FORMAT),
  clause: 'ETSI EN 300 698 Annex B, restated',
};

function unread(fields: CallFields): Notice {
  return {
    code: 'call-unrecognised',
    message: 'Call: format specifier and first telecommand match no kind of call in the tables',
    at: ['format'],
    received: `${shown(fields.format)}, ${shown(fields.telecommand1)}`,
    clause: RECOMMENDATION,
  };
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
    if (hasGap(field, fields[field]))
      notices.push({
        code: 'call-character-missing',
        message: `${fieldForms[field].label}: a character could not be read`,
        at: [field],
        received: shown(fields[field]),
        clause: RECOMMENDATION,
      });
  return notices;
}

function unknownSymbols(fields: CallFields, row: Composition): Notice[] {
  const notices: Notice[] = [];
  for (const field of row.order) {
    const symbol = fields[field];
    const { table, label } = fieldForms[field];
    if (table === undefined || typeof symbol !== 'number') continue;
    if (symbol === NO_INFORMATION && field !== 'category' && field !== 'nature') continue;
    if (isNamed(table, symbol)) continue;
    notices.push({
      code: 'call-symbol-unknown',
      message: `${label}: symbol ${symbol} has no name in the tables`,
      at: [field],
      received: String(symbol),
      clause: `${RECOMMENDATION} table of symbols`,
    });
  }
  return notices;
}

// deviation: D-call-11 (position calls, tests and announcements of older sets with other categories).
function categoryNotices(fields: CallFields, row: Composition): Notice[] {
  if (fields.category === null) return [];
  const category = nameOfSymbol(categories, fields.category);
  if (category === 'acs') {
    return [
      {
        code: 'call-category-acs',
        message:
          "Category: 106 is the automatic connection system (MF/HF), in sets built before M.493-16 ship's business",
        at: ['category'],
        received: '106',
        clause: 'ITU-R M.493-16 Annex 1 §6',
      },
    ];
  }
  const known = !category.startsWith('symbol-') && row.categories.length > 0;
  if (!known || row.categories.some((usual) => usual === category)) return [];
  const expected = row.categories.join(' or ');
  return [
    {
      code: 'call-category-unusual',
      message: `Category: ${expected} is usual in this call, got ${category}`,
      at: ['category'],
      expected,
      received: category,
      clause: row.clause,
    },
  ];
}

// deviation: D-call-9
function echoedChannel(fields: CallFields, row: Composition): Notice[] {
  if (row.kind !== 'unable-to-comply' || [fields.receive, fields.transmit].every(saysNothing)) return [];
  return [
    {
      code: 'call-channel-echoed',
      message: 'First frequency or channel element: an answer that cannot comply needs none',
      at: ['receive'],
      received: shown(fields.receive),
      clause: row.clause,
    },
  ];
}
