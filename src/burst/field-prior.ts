import type { FirstTelecommand } from '../call/index.ts';
import type { EndOfSequence } from '../call/internal.ts';
import { endsOfSequence, firstTelecommands, symbolOfName } from '../call/internal.ts';

/**
 * How likely each symbol is in each field, before anything is heard.
 *
 * These are expectations, not rules: every symbol keeps a share everywhere but in the end of sequence of a known
 * composition, so that an unusual call costs a little certainty and is still read. The shares are our own estimates
 * (common practice, no source); the ranges are those of ITU-R M.493.
 */

type Part = readonly [share: number, symbols: readonly number[]];

const range = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

/** Natural log of a share for each of the 128 symbols: parts as given, what is left over spread over all. */
function spread(...parts: readonly Part[]): Float64Array {
  const given = parts.reduce((sum, [share]) => sum + share, 0);
  const shares = new Float64Array(128).fill(Math.max(1 - given, 0) / 128);
  for (const [share, symbols] of parts)
    for (const symbol of symbols) shares[symbol] = (shares[symbol] as number) + share / symbols.length;
  return shares.map(Math.log);
}

type FieldPriors = Readonly<Record<CharacterKind, Float64Array>>;

let workedOut: FieldPriors | undefined;

/** One expectation per kind of character, always the same object: worked out when first asked for. */
export function fieldPriors(): FieldPriors {
  workedOut ??= expectations();
  return workedOut;
}

const NO_INFORMATION = [126];

/** One expectation per kind of character, computed again. */
export function expectations(): FieldPriors {
  const digits = range(0, 99);
  const service = range(100, 127);
  const ends = endsOfSequence.rows.map(([symbol]) => symbol);
  const telecommand = (name: FirstTelecommand) => symbolOfName(firstTelecommands, name);
  const end = (name: EndOfSequence) => symbolOfName(endsOfSequence, name);
  return {
    distressFormat: spread([0.999, [112]]),
    allShipsFormat: spread([0.999, [116]]),
    addressedFormat: spread([0.85, [120]], [0.12, [114]], [0.029, [102]]),
    automaticFormat: spread([0.999, [123]]),
    anyFormat: spread([0.9, [102, 112, 114, 116, 120, 123]]),
    // First pair of an identity: a ship's country, a coast station's 00, a group's 0, special ones.
    identityFirst: spread([0.85, range(20, 79)], [0.07, [0]], [0.03, range(2, 7)], [0.045, digits]),
    pair: spread([0.995, digits]),
    // Ninth digit of an identity, and a tenth that is 0.
    identityLast: spread([0.97, range(0, 9).map((digit) => digit * 10)], [0.027, digits]),
    unknownFirst: spread([0.94, range(20, 79)], [0.03, NO_INFORMATION], [0.027, digits]),
    unknownPair: spread([0.967, digits], [0.03, NO_INFORMATION]),
    unknownLast: spread(
      [0.95, range(0, 9).map((digit) => digit * 10)],
      [0.03, NO_INFORMATION],
      [0.017, digits],
    ),
    category: spread(
      [0.45, [100]],
      [0.3, [108]],
      [0.17, [110]],
      [0.03, [112]],
      [0.01, [106]],
      [0.03, service],
    ),
    distressCategory: spread([0.995, [112]]),
    telecommand: spread(
      [0.45, [100]],
      [0.13, [telecommand('test')]],
      [0.13, [telecommand('ship-position')]],
      [0.2, [101, 103, 104, 109]],
      [0.08, service],
    ),
    distressTelecommand: spread([0.995, [110, 112]]),
    positionTelecommand: spread([0.98, [telecommand('ship-position')]], [0.015, service]),
    second: spread([0.88, NO_INFORMATION], [0.08, range(100, 113)], [0.03, service]),
    nature: spread([0.3, [107]], [0.69, range(100, 112)]),
    quadrant: spread([0.8, range(0, 39)], [0.19, [99]], [0.005, digits]),
    place: spread([0.85, digits], [0.145, [99]]),
    hour: spread([0.8, range(0, 23)], [0.19, [88]], [0.005, digits]),
    minute: spread([0.8, range(0, 59)], [0.19, [88]], [0.005, digits]),
    subsequent: spread([0.85, [100]], [0.06, [109]], [0.05, NO_INFORMATION], [0.035, service]),
    elementFirst: spread([0.6, [90]], [0.34, NO_INFORMATION], [0.05, digits]),
    elementSecond: spread([0.5, [0]], [0.34, NO_INFORMATION], [0.08, [1, 2, 10, 20]], [0.075, digits]),
    elementThird: spread([0.655, digits], [0.34, NO_INFORMATION]),
    longElementFirst: spread([0.95, range(40, 49)], [0.045, digits]),
    header: spread([0.995, [55]]),
    telephoneMark: spread([0.99, [105, 106]]),
    // No composition has an end of sequence before its end.
    free: spread([0.85, digits], [0.15 - 1e-3, service.filter((symbol) => !ends.includes(symbol))]),
    plainEnd: spread([1, [end('end-of-sequence')]]),
    relayEnd: spread([0.7, [end('end-of-sequence')]], [0.3, [end('acknowledgement')]]),
    knownEnd: spread([1, ends]),
    anyEnd: spread([0.9999, ends]),
    expansionSpecifier: spread([0.9, range(100, 106)], [0.05, service]),
  };
}

/** The kinds of character for which there is an expectation. */
export type CharacterKind =
  | 'distressFormat'
  | 'allShipsFormat'
  | 'addressedFormat'
  | 'automaticFormat'
  | 'anyFormat'
  | 'identityFirst'
  | 'pair'
  | 'identityLast'
  | 'unknownFirst'
  | 'unknownPair'
  | 'unknownLast'
  | 'category'
  | 'distressCategory'
  | 'telecommand'
  | 'distressTelecommand'
  | 'positionTelecommand'
  | 'second'
  | 'nature'
  | 'quadrant'
  | 'place'
  | 'hour'
  | 'minute'
  | 'subsequent'
  | 'elementFirst'
  | 'elementSecond'
  | 'elementThird'
  | 'longElementFirst'
  | 'header'
  | 'telephoneMark'
  | 'free'
  | 'plainEnd'
  | 'relayEnd'
  | 'knownEnd'
  | 'anyEnd'
  | 'expansionSpecifier';
