import {
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  natures,
  type SymbolTable,
  secondTelecommands,
} from './symbol.ts';

/**
 * Symbol numbers 0–127 in order of transmission; `null` for a character that could not be read.
 */
export type Symbols = readonly (number | null)[];

/**
 * A call taken apart into the fields of ITU-R M.493, each as the symbols sent.
 *
 * It comes between a {@link Call} and the two ways it travels: as symbols on the air and as a
 * `DSC` sentence on a wire. A field the call does not carry is `null`; a frequency element of
 * three times 126 is carried and says "no information".
 */
export interface CallFields {
  /** Format specifier, e.g. 120. */
  readonly format: number | null;
  /** Five symbols: the called identity with its tenth digit, or an area. */
  readonly address: Symbols | null;
  readonly category: number | null;
  /** Self-identification: five symbols. */
  readonly self: Symbols | null;
  readonly telecommand1: number | null;
  readonly telecommand2: number | null;
  /** Identity of the ship in distress: five symbols, 126 five times when unknown. */
  readonly distressed: Symbols | null;
  readonly nature: number | null;
  /** Five symbols, without the header 55. */
  readonly position: Symbols | null;
  /** Whether the header symbol 55 stood before the position. */
  readonly header: boolean;
  /** Two symbols, hours and minutes UTC. */
  readonly time: Symbols | null;
  /** Type of subsequent communication (distress calls only). */
  readonly subsequent: number | null;
  /** First frequency or channel element: where the called station receives. Three symbols, four in newer MF/HF calls. */
  readonly receive: Symbols | null;
  /** Second element: where the called station transmits. */
  readonly transmit: Symbols | null;
  /** Telephone number of an automatic-service call, its odd/even symbol first. */
  readonly telephone: Symbols | null;
  /** Symbols of the message that fit none of the fields above. */
  readonly rest: Symbols;
  /** End-of-sequence character: 117, 122 or 127. */
  readonly end: number | null;
  /** The data sets of the expansion (ITU-R M.821). */
  readonly expansion: readonly {
    /** Expansion specifier, e.g. 100 for enhanced position resolution. */
    readonly specifier: number;
    /** The data symbols; `[110]` asks for the data, `[126]` says it is not available. */
    readonly symbols: Symbols;
    /** Data that a serial sentence carried as text and that has no agreed symbols. */
    readonly text?: string;
  }[];
}

export type ExpansionSet = CallFields['expansion'][number];

/** Fields with nothing in them, to build on. */
export const emptyFields: CallFields = /* @__PURE__ */ Object.freeze({
  format: null,
  address: null,
  category: null,
  self: null,
  telecommand1: null,
  telecommand2: null,
  distressed: null,
  nature: null,
  position: null,
  header: false,
  time: null,
  subsequent: null,
  receive: null,
  transmit: null,
  telephone: null,
  rest: /* @__PURE__ */ Object.freeze([]),
  end: null,
  expansion: /* @__PURE__ */ Object.freeze([]),
});

/** The fields of a call while they are put together. */
export type DraftFields = { -readonly [Name in keyof CallFields]: CallFields[Name] };

export type FieldName = keyof CallFields;

export interface FieldForm {
  /** One symbol, a row of them, a symbol that is there or not, or the sets of an expansion. */
  readonly holds: 'symbol' | 'symbols' | 'flag' | 'sets';
  /** How many symbols it takes on the air on VHF, where that is always the same. */
  readonly length?: number;
  /** The names of its symbols. */
  readonly table?: SymbolTable<string>;
}

/**
 * Every field, in the one order that holds for all compositions; the self-identification comes after the category.
 *
 * Source: ITU-R M.493-16 Annex 1; the format specifier is sent twice.
 */
export const fieldForms: Readonly<Record<FieldName, FieldForm>> = {
  format: { holds: 'symbol', length: 2, table: formatSpecifiers },
  address: { holds: 'symbols', length: 5 },
  category: { holds: 'symbol', length: 1, table: categories },
  self: { holds: 'symbols', length: 5 },
  telecommand1: { holds: 'symbol', length: 1, table: firstTelecommands },
  telecommand2: { holds: 'symbol', length: 1, table: secondTelecommands },
  distressed: { holds: 'symbols', length: 5 },
  nature: { holds: 'symbol', length: 1, table: natures },
  receive: { holds: 'symbols', length: 3 },
  transmit: { holds: 'symbols', length: 3 },
  telephone: { holds: 'symbols' },
  header: { holds: 'flag', length: 1 },
  position: { holds: 'symbols', length: 5 },
  time: { holds: 'symbols', length: 2 },
  subsequent: {
    holds: 'symbol',
    length: 1,
    table: firstTelecommands,
  },
  rest: { holds: 'symbols' },
  end: { holds: 'symbol', table: endsOfSequence },
  expansion: { holds: 'sets' },
};

export const allFields: readonly FieldName[] = /* @__PURE__ */ Object.keys(fieldForms) as FieldName[];

/** Symbol before the position of a reply (M.493-16; deviation: D-call-10). */
export const POSITION_HEADER = 55;

/** The fields with all their names: what is missing, or of another type, is not carried. */
export function wholeFields(fields: unknown): CallFields {
  const given = (fields ?? {}) as Partial<CallFields>;
  if (isWhole(given)) return given;
  return Object.fromEntries(
    allFields.map((name) => [name, fits(name, given[name]) ? given[name] : emptyFields[name]]),
  ) as unknown as CallFields;
}

function isWhole(given: Partial<CallFields>): given is CallFields {
  for (const name of allFields) if (!fits(name, given[name])) return false;
  return true;
}

function fits(name: FieldName, value: unknown): boolean {
  switch (fieldForms[name].holds) {
    case 'symbol':
      return value === null || typeof value === 'number';
    case 'flag':
      return typeof value === 'boolean';
    case 'symbols':
      return Array.isArray(value) || (value === null && name !== 'rest');
    case 'sets':
      return Array.isArray(value) && value.every((set) => Array.isArray(set?.symbols));
  }
}

/** Symbols as people write them down: `90 00 72`, two dashes for a character that could not be read. */
export function shown(value: CallFields[FieldName]): string {
  if (value === null || value === false) return 'none';
  if (value === true) return String(POSITION_HEADER);
  if (typeof value === 'number') return String(value);
  return value.slice(0, 30).map(twoDigits).join(' ');
}

function twoDigits(symbol: number | null | ExpansionSet): string {
  if (symbol === null) return '––';
  return String(typeof symbol === 'object' ? symbol.specifier : symbol).padStart(2, '0');
}

const PAIRS: readonly string[] = /* @__PURE__ */ Array.from({ length: 100 }, (_, symbol) =>
  String(symbol).padStart(2, '0'),
);

/** The decimal digits that symbols carry, two each; `null` without symbols or where one is no pair of digits (0 to 99). */
export function digitsOf(symbols: Symbols | null): string | null {
  if (symbols === null) return null;
  let digits = '';
  for (let index = 0; index < symbols.length; index += 1) {
    const symbol = symbols[index];
    const pair = typeof symbol === 'number' ? PAIRS[symbol] : undefined;
    if (pair === undefined) return null;
    digits += pair;
  }
  return digits;
}

const ZERO = 48;

/**
 * The symbols 0 to 99 that carry an even count of decimal digits, two each.
 *
 * @throws RangeError when the text is not an even count of the digits 0–9
 */
export function symbolsOf(digits: string): number[] {
  const symbols: number[] = [];
  for (let index = 0; index < digits.length; index += 2) {
    const [tens, ones] = [digits.charCodeAt(index) - ZERO, digits.charCodeAt(index + 1) - ZERO];
    if (!(tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9))
      throw new RangeError(`digits: expected an even count, got '${digits}'`);
    symbols.push(10 * tens + ones);
  }
  return symbols;
}
