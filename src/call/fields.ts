/**
 * Symbol numbers 0–127 in order of transmission; `null` stands for a character that could not be read.
 */
export type Symbols = readonly (number | null)[];

/** One data set of the expansion (ITU-R M.821): its specifier 100–106 and what followed it. */
export interface ExpansionSet {
  /** Expansion specifier, e.g. 100 for enhanced position resolution. */
  readonly specifier: number;
  /** The data symbols; `[110]` asks for the data, `[126]` says it is not available. */
  readonly symbols: Symbols;
  /** Data that a serial sentence carried as text and that has no agreed symbols. */
  readonly text?: string;
}

/**
 * A call taken apart into the fields of ITU-R M.493, each as the symbols sent.
 *
 * It stands between a {@link Call} and the two ways it travels: as symbols on the air and as a
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
  readonly expansion: readonly ExpansionSet[];
}

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

/**
 * The decimal digits that symbols carry, two each.
 *
 * @param symbols - symbols of a field, or `null` for a field that is not there
 * @returns the digits; `null` when one symbol is no pair of digits (0 to 99)
 *
 * @example
 * ```ts
 * import { digitsOf } from 'seahail/call';
 *
 * console.log(digitsOf([90, 0, 72])); // 900072
 * console.log(digitsOf([126, 126, 126])); // null
 * ```
 */
export function digitsOf(symbols: Symbols | null): string | null {
  if (symbols === null) return null;
  let digits = '';
  for (const symbol of symbols) {
    if (symbol === null || !(Number.isInteger(symbol) && symbol >= 0 && symbol <= 99)) return null;
    digits += String(symbol).padStart(2, '0');
  }
  return digits;
}

/**
 * The symbols that carry an even count of decimal digits, two each.
 *
 * @param digits - ASCII digits
 * @returns symbols 0 to 99
 * @throws RangeError when the text is not an even count of the digits 0–9
 *
 * @example
 * ```ts
 * import { symbolsOf } from 'seahail/call';
 *
 * console.log(symbolsOf('2329998710')); // [ 23, 29, 99, 87, 10 ]
 * ```
 */
export function symbolsOf(digits: string): number[] {
  if (!/^(?:\d\d)*$/.test(digits)) throw new RangeError(`digits: an even count is needed, not '${digits}'`);
  const symbols: number[] = [];
  for (let index = 0; index < digits.length; index += 2) symbols.push(Number(digits.slice(index, index + 2)));
  return symbols;
}
