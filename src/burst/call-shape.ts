import { compositions, endsOfSequence, formatSpecifiers, symbolOfName } from '../call/index.ts';
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
/** Share of calls that have a composition and more characters behind it, up to so many. */
const MORE_SHARE = 0.05;
const MOST_MORE = 12;

const IDENTITY: readonly CharacterKind[] = ['identityFirst', 'pair', 'pair', 'pair', 'identityLast'];
const SHIP: readonly CharacterKind[] = [
  'unknownFirst',
  'unknownPair',
  'unknownPair',
  'unknownPair',
  'unknownLast',
];
const POSITION: readonly CharacterKind[] = ['quadrant', 'place', 'place', 'place', 'place'];
const TIME: readonly CharacterKind[] = ['hour', 'minute'];
const PARTICULARS: readonly CharacterKind[] = ['nature', ...POSITION, ...TIME, 'subsequent'];
const HEAD: readonly CharacterKind[] = ['category', ...IDENTITY, 'telecommand'];
const DISTRESS: readonly CharacterKind[] = [
  'distressCategory',
  ...IDENTITY,
  'distressTelecommand',
  ...SHIP,
  ...PARTICULARS,
];
const ELEMENT: readonly CharacterKind[] = ['elementFirst', 'elementSecond', 'elementThird'];
const LONG_ELEMENT: readonly CharacterKind[] = ['longElementFirst', 'pair', 'pair', 'pair'];
const REPLY: readonly CharacterKind[] = [
  ...IDENTITY,
  'category',
  ...IDENTITY,
  'positionTelecommand',
  'second',
];

/** The compositions of ITU-R M.493, and what older sets send. */
const knownShapes = (): readonly CallShape[] => [
  shape(0.12, ['distressFormat', ...IDENTITY, ...PARTICULARS, 'plainEnd']),
  shape(0.12, ['allShipsFormat', ...HEAD, 'second', ...ELEMENT, ...ELEMENT, 'plainEnd']),
  shape(0.12, ['allShipsFormat', ...DISTRESS, 'relayEnd']),
  shape(0.4, ['addressedFormat', ...IDENTITY, ...HEAD, 'second', ...ELEMENT, ...ELEMENT, 'knownEnd']),
  shape(0.09, ['addressedFormat', ...REPLY, 'header', ...POSITION, ...TIME, 'knownEnd']),
  shape(0.01, ['addressedFormat', ...REPLY, ...POSITION, ...TIME, 'knownEnd']),
  shape(0.01, ['addressedFormat', ...REPLY, 'header', ...POSITION, 'knownEnd']),
  shape(0.01, ['addressedFormat', ...REPLY, ...POSITION, 'knownEnd']),
  shape(0.05, ['addressedFormat', ...IDENTITY, ...DISTRESS, 'knownEnd']),
  shape(0.01, [
    'addressedFormat',
    ...IDENTITY,
    ...HEAD,
    'second',
    ...LONG_ELEMENT,
    ...LONG_ELEMENT,
    'knownEnd',
  ]),
  shape(0.01, ['addressedFormat', ...IDENTITY, ...HEAD, 'second', ...LONG_ELEMENT, ...ELEMENT, 'knownEnd']),
  ...numbered(0, 8, (digits) => {
    const mark: CharacterKind[] = digits === 0 ? [] : ['telephoneMark', ...repeat('pair', digits)];
    return shape(0.002, ['automaticFormat', ...IDENTITY, ...HEAD, 'second', ...ELEMENT, ...mark, 'knownEnd']);
  }),
];

let workedOut: readonly CallShape[] | undefined;

/**
 * Every shape the decoder weighs against the others: the compositions, each with more behind it than it should
 * have, and with a small share every length without any composition at all. Always the same list, worked out when
 * first asked for.
 */
export function callShapes(): readonly CallShape[] {
  workedOut ??= everyShape();
  return workedOut;
}

/** The same list, worked out anew. */
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
    ...unusual(['allShipsFormat', ...HEAD]),
    ...unusual(['addressedFormat', ...IDENTITY, ...HEAD]),
    ...unusual(['anyFormat']),
  ].filter(({ kinds }) => kinds.length <= LONGEST_CALL + 1);
}

function shape(share: number, kinds: readonly CharacterKind[]): CallShape {
  return { kinds, share };
}

/**
 * Whether a call has the length and the end of sequence of a composition with its format specifier.
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
    knownShapes().some(
      ({ kinds }) =>
        kinds.length === characters.length &&
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
