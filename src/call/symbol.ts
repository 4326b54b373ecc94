/**
 * The service symbols 100–127 by field, and their names in this library.
 *
 * Source: ITU-R M.493-16 Annex 1 table A1-3 and §6, read in restatements of its symbol lists; rows up to 116 agree
 * with Japan, Ministry of Posts and Telecommunications Notification 567 of 1990 (prints of 1998–2002). Withdrawn
 * values are kept, so that what a radio of an older edition sends still has its name.
 */

import { noSymbols } from './no-symbols.ts';

/** A value the tables do not name, kept as received: `'symbol-107'`. */
export type UnknownSymbol = `symbol-${number}`;

/**
 * Format specifier: whom a call is for and what shape it has (M.493-16 table of symbols).
 */
export type FormatSpecifier =
  | 'area'
  | 'distress'
  | 'group'
  | 'all-ships'
  | 'individual'
  | 'automatic-service';
/**
 * Category of a call. `'acs'` (106), the automatic connection system of MF and HF, is only received; in sets built
 * before M.493-16 it is ship's business.
 */
export type Category = 'routine' | 'acs' | 'safety' | 'urgency' | 'distress';
/**
 * Nature of distress. `'epirb-emission'` (112) left M.493-16 and is only received.
 */
export type NatureOfDistress =
  | 'fire-explosion'
  | 'flooding'
  | 'collision'
  | 'grounding'
  | 'listing'
  | 'sinking'
  | 'disabled-adrift'
  | 'undesignated'
  | 'abandoning-ship'
  | 'piracy'
  | 'man-overboard'
  | 'epirb-emission';
/**
 * First telecommand, and type of subsequent communication. 126 (no information) is `null` in a call.
 */
export type FirstTelecommand =
  | 'telephony-simplex'
  | 'telephony-duplex'
  | 'polling'
  | 'unable-to-comply'
  | 'end-of-call'
  | 'data'
  | 'telephony-j3e'
  | 'distress-acknowledgement'
  | 'telephony-h3e'
  | 'distress-relay'
  | 'teleprinter-fec'
  | 'teleprinter-arq'
  | 'teleprinter-receive'
  | 'test'
  | 'ship-position'
  | 'morse';
/**
 * Why a station cannot comply: second telecommand 100–109 (M.493, with first telecommand 104 only).
 */
export type Reason =
  | 'no-reason'
  | 'switching-centre-congested'
  | 'busy'
  | 'queue'
  | 'station-barred'
  | 'no-operator'
  | 'operator-unavailable'
  | 'equipment-disabled'
  | 'channel-unusable'
  | 'mode-unusable';
/**
 * Second telecommand. 126 (no information) is `null` in a call. `'acs-remaining-0'` to `'acs-remaining-5'` count the
 * transmissions still to come in the automatic connection system, and are only received.
 */
export type SecondTelecommand =
  | Reason
  | 'neutral-craft'
  | 'medical-transport'
  | 'pay-phone'
  | 'facsimile'
  | 'data-modem-115'
  | 'data-modem-116'
  | 'acs-remaining-0'
  | 'acs-remaining-1'
  | 'acs-remaining-2'
  | 'acs-remaining-3'
  | 'acs-remaining-4'
  | 'acs-remaining-5';
/**
 * End-of-sequence character: RQ (117), BQ (122) or the plain end (127).
 */
export type EndOfSequence = 'acknowledgement-requested' | 'acknowledgement' | 'end-of-sequence';

/** One field's table of symbols, both ways. */
export interface SymbolTable<Name extends string> {
  /** The field of a call, in words. */
  readonly field: string;
  /** Symbol and name of each row, in order. */
  readonly rows: readonly (readonly [symbol: number, name: Name])[];
}

export const formatSpecifiers: SymbolTable<FormatSpecifier> = {
  field: 'format specifier',
  rows: [
    [102, 'area'],
    [112, 'distress'],
    [114, 'group'],
    [116, 'all-ships'],
    [120, 'individual'],
    [123, 'automatic-service'],
  ],
};
export const categories: SymbolTable<Category> = {
  field: 'category',
  rows: [
    [100, 'routine'],
    [106, 'acs'],
    [108, 'safety'],
    [110, 'urgency'],
    [112, 'distress'],
  ],
};
/** Natures of distress. */
export const natures: SymbolTable<NatureOfDistress> = {
  field: 'nature of distress',
  // 112 left the table in M.493-16 and is still read from older sets.
  rows: [
    [100, 'fire-explosion'],
    [101, 'flooding'],
    [102, 'collision'],
    [103, 'grounding'],
    [104, 'listing'],
    [105, 'sinking'],
    [106, 'disabled-adrift'],
    [107, 'undesignated'],
    [108, 'abandoning-ship'],
    [109, 'piracy'],
    [110, 'man-overboard'],
    [112, 'epirb-emission'],
  ],
};
export const firstTelecommands: SymbolTable<FirstTelecommand> = {
  field: 'first telecommand',
  // 124 and the withdrawn rows come from older prints; 121 is ship position or location registration updating.
  rows: [
    [100, 'telephony-simplex'],
    [101, 'telephony-duplex'],
    [103, 'polling'],
    [104, 'unable-to-comply'],
    [105, 'end-of-call'],
    [106, 'data'],
    [109, 'telephony-j3e'],
    [110, 'distress-acknowledgement'],
    [111, 'telephony-h3e'],
    [112, 'distress-relay'],
    [113, 'teleprinter-fec'],
    [115, 'teleprinter-arq'],
    [116, 'teleprinter-receive'],
    [118, 'test'],
    [121, 'ship-position'],
    [124, 'morse'],
  ],
};
/** Reasons for being unable to comply. */
export const reasons: SymbolTable<Reason> = {
  field: 'reason',
  rows: [
    [100, 'no-reason'],
    [101, 'switching-centre-congested'],
    [102, 'busy'],
    [103, 'queue'],
    [104, 'station-barred'],
    [105, 'no-operator'],
    [106, 'operator-unavailable'],
    [107, 'equipment-disabled'],
    [108, 'channel-unusable'],
    [109, 'mode-unusable'],
  ],
};
/** Second telecommands, the reasons among them. */
export const secondTelecommands: SymbolTable<SecondTelecommand> = {
  field: 'second telecommand',
  rows: /* @__PURE__ */ (reasons as SymbolTable<SecondTelecommand>).rows.concat([
    [110, 'neutral-craft'],
    [111, 'medical-transport'],
    [112, 'pay-phone'],
    [113, 'facsimile'],
    [115, 'data-modem-115'],
    [116, 'data-modem-116'],
    [120, 'acs-remaining-0'],
    [121, 'acs-remaining-1'],
    [122, 'acs-remaining-2'],
    [123, 'acs-remaining-3'],
    [124, 'acs-remaining-4'],
    [125, 'acs-remaining-5'],
  ]),
};
export const endsOfSequence: SymbolTable<EndOfSequence> = {
  field: 'end of sequence',
  rows: [
    [117, 'acknowledgement-requested'],
    [122, 'acknowledgement'],
    [127, 'end-of-sequence'],
  ],
};

/** Format specifier by which sets on inland waters identify themselves on a voice channel. deviation: D-burst-9 */
export const ATIS_FORMAT = 121;

/** Symbol for "no information" in a telecommand or a frequency element (M.493). */
export const NO_INFORMATION = 126;

/** The name of a symbol (0 to 127) in a table, or `'symbol-n'` when the table has no such row. */
export function nameOfSymbol<Name extends string>(
  table: SymbolTable<Name>,
  symbol: number,
): Name | UnknownSymbol {
  for (const row of table.rows) if (row[0] === symbol) return row[1];
  return `symbol-${symbol}`;
}

/** Whether a second telecommand is a reason for being unable to comply. */
export function isReason(name: string | null): name is Reason {
  return reasons.rows.some((row) => row[1] === name);
}

/** Whether a name is that of a symbol that its table does not have. */
export function isUnknown(name: string): name is UnknownSymbol {
  return name.startsWith('symbol-');
}

/** Whether a table names a symbol. */
export function isNamed(table: SymbolTable<string>, symbol: number): boolean {
  for (const row of table.rows) if (row[0] === symbol) return true;
  return false;
}

/**
 * The symbol of a name in a table (0 to 127), `'symbol-n'` included.
 *
 * @throws RangeError when the name is in neither the table nor of the form `'symbol-0'` to `'symbol-127'`
 */
export function symbolOfName<Name extends string>(
  table: SymbolTable<Name>,
  name: Name | UnknownSymbol,
): number {
  for (const row of table.rows) if (row[1] === name) return row[0];
  const symbol = /^symbol-(\d{1,3})$/.exec(name)?.[1];
  if (symbol === undefined || Number(symbol) > 127) {
    const names = table.rows.map(([, each]) => each).join(', ');
    const error = new RangeError(`${table.field}: expected one of ${names}, got '${name}'`);
    throw noSymbols('name', `'${name}'`, error);
  }
  return Number(symbol);
}
