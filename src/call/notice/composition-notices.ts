import type { Notice } from '../../result/index.ts';
import { NO_CHANNEL } from '../element/channel-symbols.ts';
import { type ComposedKind, type Composition, compositionOf } from '../composition.ts';
import { fieldNames } from './field-names.ts';
import type { CallFields } from '../fields.ts';
import { same } from '../same.ts';
import {
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  NO_INFORMATION,
  nameOfSymbol,
  natures,
  secondTelecommands,
} from '../symbol.ts';

type Field = keyof CallFields;

const RECOMMENDATION = 'ITU-R M.493-15 Annex 1';
const FIELDS = Object.keys(fieldNames) as readonly Field[];

/** What a person should be told about fields that fit no kind of call. */
export function unrecognisedNotices(fields: CallFields): Notice[] {
  const unread: Notice = {
    code: 'call-unrecognised',
    message: 'Call: its format specifier and first telecommand belong to no kind of call in the tables',
    at: ['format'],
    received: `${shown(fields.format)}, ${shown(fields.telecommand1)}`,
    clause: RECOMMENDATION,
  };
  return [unread, ...missingCharacters(fields)];
}

/**
 * What a person should be told about the fields of a call of a known kind: where they differ from its
 * composition, and which symbols the tables do not name. Variants that mean the same (one channel
 * element filled or both) are passed over.
 */
export function compositionNotices(kind: ComposedKind, fields: CallFields, canonical: CallFields): Notice[] {
  const format = formatSpecifiers.rows.find(([symbol]) => symbol === fields.format)?.[1];
  const row = compositionOf(kind, format) ?? compositionOf(kind);
  if (row === null) return [];
  return [
    ...missingCharacters(fields),
    ...unknownSymbols(fields, row),
    ...categoryNotices(fields, row),
    ...echoedChannel(kind, fields, row),
    ...FIELDS.flatMap((field) => differenceNotice(field, fields, canonical, row)),
  ];
}

function missingCharacters(fields: CallFields): Notice[] {
  return FIELDS.filter((field) => {
    const value = fields[field];
    return field !== 'expansion' && Array.isArray(value) && value.includes(null);
  }).map((field) => ({
    code: 'call-character-missing',
    message: `${fieldNames[field]}: a character could not be read`,
    at: [field],
    received: shown(fields[field]),
    clause: RECOMMENDATION,
  }));
}

function unknownSymbols(fields: CallFields, row: Composition): Notice[] {
  const named = [
    ['category', categories],
    ['telecommand1', firstTelecommands],
    ['telecommand2', secondTelecommands],
    ['nature', natures],
    ['subsequent', firstTelecommands],
  ] as const;
  return named.flatMap(([field, table]) => {
    const symbol = fields[field];
    if (symbol === null || !row.order.includes(field)) return [];
    if (symbol === NO_INFORMATION && field !== 'category' && field !== 'nature') return [];
    if (!nameOfSymbol(table, symbol).startsWith('symbol-')) return [];
    return {
      code: 'call-symbol-unknown',
      message: `${fieldNames[field]}: symbol ${symbol} has no name in the tables`,
      at: [field],
      received: String(symbol),
      clause: `${RECOMMENDATION} table of symbols`,
    };
  });
}

// deviation: D-call-11 (position calls, tests and announcements of older sets with other categories).
function categoryNotices(fields: CallFields, row: Composition): Notice[] {
  if (fields.category === null) return [];
  const category = nameOfSymbol(categories, fields.category);
  if (category === 'ships-business') {
    return [
      {
        code: 'call-category-withdrawn',
        message: "Category: ship's business (106) is withdrawn; treat the call as routine",
        at: ['category'],
        received: '106',
        clause: `${RECOMMENDATION} table of symbols`,
      },
    ];
  }
  if (row.categories.length === 0 || row.categories.some((usual) => usual === category)) return [];
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
function echoedChannel(kind: ComposedKind, fields: CallFields, row: Composition): Notice[] {
  if (kind !== 'unable-to-comply' || [fields.receive, fields.transmit].every(saysNothing)) return [];
  return [
    {
      code: 'call-channel-echoed',
      message: 'First frequency or channel element: none is needed in an answer that cannot comply',
      at: ['receive'],
      received: shown(fields.receive),
      clause: row.clause,
    },
  ];
}

function differenceNotice(
  field: Field,
  fields: CallFields,
  canonical: CallFields,
  row: Composition,
): Notice[] {
  const received = fields[field];
  const expected = canonical[field];
  const isOpen = received === null && row.order.includes(field) && !(field in OFTEN_ABSENT);
  if (isOpen) return [notice('call-field-missing', field, 'not given', fields, row)];
  if (same(received, expected) || (received === null && field in OFTEN_ABSENT)) return [];
  if (Array.isArray(received) && field !== 'expansion' && received.includes(null)) return [];
  switch (field) {
    case 'header':
      return received === true
        ? [notice('call-field-unexpected', field, 'not part of this call, kept as received', fields, row)]
        : [notice('call-header-missing', field, '55 is usual before the position of a reply', fields, row)];
    case 'end':
      return [endNotice(fields, canonical, row)];
    case 'rest':
      return [notice('call-rest', field, 'symbols that fit no field are kept as received', fields, row)];
    case 'expansion':
      return [
        notice('call-expansion-unread', field, 'data sets not understood are kept as received', fields, row),
      ];
    case 'category':
      // A distress alert has none of its own; a sentence may carry 112 all the same.
      return [];
    case 'receive':
    case 'transmit':
      if (expected !== null) {
        const meansTheSame = same(received, NO_CHANNEL) || same(fields.receive, fields.transmit);
        if (meansTheSame) return [];
      }
      break;
    case 'address':
    case 'self':
    case 'distressed':
      if (expected !== null && sameButLastDigit(received, expected)) {
        return [
          notice('call-tenth-digit', field, 'the tenth digit of an identity is 0 for a station', fields, row),
        ];
      }
  }
  return row.order.includes(field)
    ? [notice('call-field-unread', field, 'not understood, kept as received', fields, row)]
    : [notice('call-field-unexpected', field, 'not part of this call, kept as received', fields, row)];
}

/** Fields that a sentence on the wire leaves out without meaning anything by it. */
const OFTEN_ABSENT: Partial<Record<Field, true>> = {
  address: true,
  self: true,
  receive: true,
  transmit: true,
  header: true,
};

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

function notice(code: string, field: Field, what: string, fields: CallFields, row: Composition): Notice {
  return {
    code,
    message: `${fieldNames[field]}: ${what}`,
    at: [field],
    received: shown(fields[field]),
    clause: row.clause,
  };
}

function sameButLastDigit(received: CallFields[Field], expected: CallFields[Field]): boolean {
  if (!Array.isArray(received) || !Array.isArray(expected) || received.length !== 5) return false;
  return (
    same(received.slice(0, 4), expected.slice(0, 4)) &&
    Math.floor(received[4] / 10) === Math.floor(expected[4] / 10)
  );
}

function saysNothing(element: CallFields['receive']): boolean {
  return element === null || element.every((symbol) => symbol === NO_INFORMATION);
}

/** Symbols as people write them down: `90 00 72`, a dash for a character that could not be read. */
function shown(value: CallFields[Field]): string {
  if (Array.isArray(value)) {
    return value
      .slice(0, 30)
      .map((symbol) =>
        typeof symbol === 'object'
          ? symbol === null
            ? '–'
            : symbol.specifier
          : String(symbol).padStart(2, '0'),
      )
      .join(' ');
  }
  return value === null ? 'none' : String(value);
}
