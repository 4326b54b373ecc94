import { type Composition, compositions } from '../call/index.ts';
import type { ComposedKind, EndOfSequence, FieldName, FormatSpecifier } from '../call/internal.ts';
import { endsOfSequence, formatSpecifiers, symbolOfName } from '../call/internal.ts';
import { type CharacterKind, fieldPriors } from './field-prior.ts';

/** One way a call may be put together: the kind of each character, and how usual that is. */
export interface CallShape {
  /** Kinds in order: format specifier once, up to and with the end of sequence. */
  readonly kinds: readonly CharacterKind[];
  /** Share of all calls that have this shape, an estimate (common practice, no source). */
  readonly share: number;
}

/** Most characters before the end of sequence that the decoder looks for, the format specifier counted once. */
export const LONGEST_CALL = 40;
/** Share of calls that fit none of the compositions. */
const UNUSUAL_SHARE = 0.03;
/** Share of calls that have a composition and more characters after it, up to so many. */
const MORE_SHARE = 0.05;
const MOST_MORE = 12;

const IDENTITY: readonly CharacterKind[] = ['identityFirst', 'pair', 'pair', 'pair', 'identityLast'];
const POSITION: readonly CharacterKind[] = ['quadrant', 'place', 'place', 'place', 'place'];
const TIME: readonly CharacterKind[] = ['hour', 'minute'];
const ELEMENT: readonly CharacterKind[] = ['elementFirst', 'elementSecond', 'elementThird'];
const LONG_ELEMENT: readonly CharacterKind[] = ['longElementFirst', 'pair', 'pair', 'pair'];

/** The kinds of character of each field; a telephone number is counted apart. */
const FIELDS: Readonly<Partial<Record<FieldName, readonly CharacterKind[]>>> = {
  address: IDENTITY,
  category: ['category'],
  self: IDENTITY,
  telecommand1: ['telecommand'],
  telecommand2: ['second'],
  distressed: ['unknownFirst', 'unknownPair', 'unknownPair', 'unknownPair', 'unknownLast'],
  nature: ['nature'],
  receive: ELEMENT,
  transmit: ELEMENT,
  header: ['header'],
  position: POSITION,
  time: TIME,
  subsequent: ['subsequent'],
};

/** Share of all calls that have the layout of a kind, by the first kind in the tables that has it: estimates (common practice, no source). */
const SHARES: Readonly<Partial<Record<ComposedKind, number>>> = {
  'distress-alert': 0.12,
  'distress-acknowledgement': 0.12,
  'distress-relay': 0.05,
  'all-ships-call': 0.12,
  'area-call': 0.4,
  'position-reply': 0.09,
  'automatic-service-call': 0.002,
};
/** Share of any other layout, and of the form that older sets give one. */
const SMALL_SHARE = 0.01;

/** The layouts of the compositions of ITU-R M.493, and what older sets send. */
function knownShapes(): readonly CallShape[] {
  const layouts = new Map<string, { readonly first: Composition; readonly ends: Set<EndOfSequence> }>();
  for (const row of compositions) {
    const key = kindsOf(row).join();
    const layout = layouts.get(key) ?? { first: row, ends: new Set() };
    layouts.set(key, layout);
    layout.ends.add(row.end);
  }
  return [...layouts.values()].flatMap(({ first, ends }) => {
    const kinds = kindsOf(first);
    const end = endKind(ends);
    const usual = SHARES[first.kind] ?? SMALL_SHARE;
    if (first.order.includes('telephone'))
      return numbered(0, 8, (digits) => shape(usual, [...kinds, ...telephone(digits), end]));
    return [
      shape(usual, [...kinds, end]),
      ...olderForms(first, kinds).map((form) => shape(SMALL_SHARE, [...form, end])),
    ];
  });
}

function kindsOf({ format, order }: Composition): CharacterKind[] {
  return order.flatMap((field): readonly CharacterKind[] => {
    if (field === 'format') return [formatKind(format)];
    if (order.includes('distressed') && field === 'category') return ['distressCategory'];
    if (field === 'telecommand1' && order.includes('position'))
      return [order.includes('distressed') ? 'distressTelecommand' : 'positionTelecommand'];
    return FIELDS[field] ?? [];
  });
}

function formatKind(format: FormatSpecifier): CharacterKind {
  if (format === 'distress') return 'distressFormat';
  if (format === 'all-ships') return 'allShipsFormat';
  return format === 'automatic-service' ? 'automaticFormat' : 'addressedFormat';
}

function endKind(ends: ReadonlySet<EndOfSequence>): CharacterKind {
  if (!ends.has('end-of-sequence') || ends.has('acknowledgement-requested')) return 'knownEnd';
  return ends.has('acknowledgement') ? 'relayEnd' : 'plainEnd';
}

function telephone(digits: number): CharacterKind[] {
  return digits === 0 ? [] : ['telephoneMark', ...repeat('pair', digits)];
}

/** Position replies without header, time or both, and frequencies of eight digits. deviation: D-call-10 */
function olderForms({ format, order }: Composition, kinds: readonly CharacterKind[]): CharacterKind[][] {
  if (order.includes('header')) {
    const head = kinds.slice(0, kinds.indexOf('header'));
    return [
      [...head, ...POSITION, ...TIME],
      [...head, 'header', ...POSITION],
      [...head, ...POSITION],
    ];
  }
  if (!order.includes('transmit') || format === 'all-ships') return [];
  const head = kinds.slice(0, kinds.indexOf('elementFirst'));
  return [
    [...head, ...LONG_ELEMENT, ...LONG_ELEMENT],
    [...head, ...LONG_ELEMENT, ...ELEMENT],
  ];
}

let workedOut: readonly CallShape[] | undefined;

/**
 * Every shape the decoder weighs against the others: the compositions, each with more after it than it should
 * have, and with a small share every length without any composition at all. Always the same list, worked out when
 * first asked for.
 */
export function callShapes(): readonly CallShape[] {
  workedOut ??= everyShape();
  return workedOut;
}

/** The same list, computed again. */
export function everyShape(): readonly CallShape[] {
  const known = knownShapes();
  return [
    ...known,
    ...known.flatMap(({ kinds, share }) =>
      numbered(1, MOST_MORE, (count) =>
        shape((share * MORE_SHARE) / MOST_MORE, [...kinds.slice(0, -1), ...repeat('free', count), 'anyEnd']),
      ),
    ),
    ...unusual(['distressFormat', ...IDENTITY]),
    ...unusual(['allShipsFormat', 'category', ...IDENTITY, 'telecommand']),
    ...unusual(['addressedFormat', ...IDENTITY, 'category', ...IDENTITY, 'telecommand']),
    ...unusual(['anyFormat']),
  ].filter(({ kinds }) => kinds.length <= LONGEST_CALL + 1);
}

function shape(share: number, kinds: readonly CharacterKind[]): CallShape {
  return { kinds, share };
}

/**
 * Whether a call has the length and the end of sequence of a composition with its format specifier.
 *
 * Only shapes of no composition, or with more after one, may end in any end of sequence.
 *
 * @param characters - format specifier once, up to and with the end of sequence
 */
export function isComposition(characters: readonly number[]): boolean {
  // deviation: D-burst-8 (no other call is received as clean).
  const format = characters[0] as number;
  const end = characters.at(-1) as number;
  return (
    compositions.some(
      (each) =>
        symbolOfName(formatSpecifiers, each.format) === format &&
        symbolOfName(endsOfSequence, each.end) === end,
    ) &&
    callShapes().some(
      ({ kinds }) =>
        kinds.length === characters.length &&
        kinds.at(-1) !== 'anyEnd' &&
        (fieldPriors()[kinds[0] as CharacterKind][format] as number) > -4,
    )
  );
}

/** A head, and after it anything at all, of every length. */
function unusual(head: readonly CharacterKind[]): CallShape[] {
  const most = LONGEST_CALL - head.length;
  return numbered(0, most, (count) =>
    shape(UNUSUAL_SHARE / 4 / (most + 1), [...head, ...repeat('free', count), 'anyEnd']),
  );
}

function numbered(first: number, last: number, make: (number: number) => CallShape): CallShape[] {
  return Array.from({ length: last - first + 1 }, (_, index) => make(first + index));
}

function repeat(kind: CharacterKind, count: number): CharacterKind[] {
  return Array.from({ length: count }, () => kind);
}
