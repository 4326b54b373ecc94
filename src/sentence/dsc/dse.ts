import type { Symbols } from '../../call/index.ts';
import { digitsOf, type ExpansionSet } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';
import { textAt } from '../field/text-at.ts';
import { escapeText, MOST_CHARACTERS, unescapeText } from '../frame/format.ts';
import { fieldNotice } from '../texts.ts';
import { codeOfSymbol, readIdentityField, stationKey, symbolOfCode, symbolsOfDigits } from './field.ts';

export interface DseReading {
  /** How many sentences carry the expansion, 1–9. */
  readonly total: number;
  /** Which of them this is, from 1. */
  readonly number: number;
  /** `'automatic'` (A), `'query'` (Q), `'reply'` (R), or `'unknown'` for any other flag. */
  readonly flag: 'automatic' | 'query' | 'reply' | 'unknown';
  /** Identity of the station the data is about: nine digits, or the field as it stood when it is none. */
  readonly station: string;
  readonly sets: readonly ExpansionSet[];
  readonly notices: Notice[];
}

const FLAGS = { A: 'automatic', Q: 'query', R: 'reply' } as const;
/** Symbols in place of data (ITU-R M.821): asked for, not available. */
const REQUESTED: Symbols = [110];
const NOT_AVAILABLE: Symbols = [126];
/** Data set whose data is text (ITU-R M.821 set 104). */
const STATION_NAME = 104;
const FIELDS_BEFORE_SETS = 4;

/**
 * Reads the fields of a `DSE` sentence: counts, flag, identity, then pairs of code and data. One that goes on from the
 * `DSE` sentence `before` it has its flag.
 *
 * Source: IEC 61162-1 ed. 4.0 clause 8.3.30, `DSE` sentence, as publicly restated: flags A, Q and R, sets 00 to 06, an
 * empty field of a query, `C10` and `C26` in place of data, and no flag and identity in the second and later sentences
 * of a group. deviation: D-sentence-5
 */
export function readDse(texts: readonly string[], before: DseReading | null = null): DseReading {
  const notices: Notice[] = [];
  const [count, place] = counts(textAt(texts, 0), textAt(texts, 1), notices);
  const flag = textAt(texts, 2);
  const station = textAt(texts, 3);
  const goesOn = flag === '' && before?.total === count && before.number === place - 1;
  const read = goesOn ? before.flag : flag === 'A' || flag === 'Q' || flag === 'R' ? FLAGS[flag] : 'unknown';
  if (read === 'unknown' && !goesOn) {
    notices.push(fieldNotice('sentence-expansion-flag', { formatter: 'DSE', field: 3 }, flag));
  }
  readIdentityField(station, 'DSE', 4, notices);
  return {
    total: count,
    number: place,
    flag: read,
    station: stationKey(station),
    sets: readSets(texts, read === 'query', notices),
    notices,
  };
}

/**
 * The fields of the `DSE` sentences that carry the sets, at most nine. A new one begins where the length
 * asks for it, and where sets asked for follow sets given or the reverse.
 */
export function dseFields(
  station: string,
  sets: readonly ExpansionSet[],
): {
  readonly sentences: readonly (readonly string[])[];
  /** The sets that no such sentence can carry. */
  readonly left: readonly ExpansionSet[];
} {
  const groups: { query: boolean; room: number; fields: string[] }[] = [];
  const left: ExpansionSet[] = [];
  for (const set of sets) {
    const query = isOnly(set, 110);
    const pair = [codeOfSymbol(set.specifier), dataField(set)];
    const length = pair.join(',').length + 1;
    const last = groups.at(-1);
    const fits = last !== undefined && last.query === query && last.room >= length;
    if (pair.includes(null) || length > MOST_PAIR_CHARACTERS || (!fits && groups.length === MOST_SENTENCES)) {
      left.push(set);
    } else if (fits) {
      last.fields.push(...(pair as string[]));
      last.room -= length;
    } else {
      groups.push({ query, room: MOST_PAIR_CHARACTERS - length, fields: pair as string[] });
    }
  }
  const sentences = groups.map(({ query, fields }, index) => [
    String(groups.length),
    String(index + 1),
    query ? 'Q' : 'A',
    station,
    ...fields,
  ]);
  return { sentences, left };
}

/** The counts of a `DSE` sentence have one digit. */
const MOST_SENTENCES = 9;
/** What is left of a sentence beside `$CDDSE,1,1,A,1234567890`, its checksum and its line end. */
const MOST_PAIR_CHARACTERS: number = MOST_CHARACTERS - '$CDDSE,1,1,A,1234567890*hh\r\n'.length;

function counts(total: string, number: string, notices: Notice[]): [total: number, number: number] {
  if (/^[1-9]$/.test(total) && /^[1-9]$/.test(number) && number <= total)
    return [Number(total), Number(number)];
  notices.push(fieldNotice('sentence-expansion-count', { formatter: 'DSE', field: 1 }, `${total},${number}`));
  return [1, 1];
}

function readSets(texts: readonly string[], query: boolean, notices: Notice[]): ExpansionSet[] {
  const sets: ExpansionSet[] = [];
  for (let index = FIELDS_BEFORE_SETS; index < texts.length; index += 2) {
    const codeText = textAt(texts, index);
    const data = textAt(texts, index + 1);
    if (codeText === '' && data === '') continue;
    const specifier = symbolOfCode(codeText);
    if (specifier === null) {
      notices.push(fieldNotice('sentence-expansion-code', { formatter: 'DSE', field: index + 1 }, codeText));
      continue;
    }
    sets.push(readSet(specifier, data, query, index + 2, notices));
  }
  return sets;
}

function readSet(
  specifier: number,
  data: string,
  query: boolean,
  field: number,
  notices: Notice[],
): ExpansionSet {
  if (data === '') return { specifier, symbols: query ? REQUESTED : NOT_AVAILABLE };
  if (data === 'C10') return { specifier, symbols: REQUESTED };
  if (data === 'C26') return { specifier, symbols: NOT_AVAILABLE };
  // The comma of a name is written as an apostrophe.
  if (specifier === STATION_NAME)
    return { specifier, symbols: [], text: unescapeText(data.replaceAll("'", ',')) };
  const symbols = symbolsOfDigits(data);
  if (symbols === null || (specifier === 100 && symbols.length !== 4)) {
    notices.push(fieldNotice('sentence-expansion-data', { formatter: 'DSE', field }, data));
    return { specifier, symbols: [], text: unescapeText(data) };
  }
  return { specifier, symbols };
}

/** `null` when the symbols have no digits: an empty field would say that there is no data. */
function dataField(set: ExpansionSet): string | null {
  if (set.text !== undefined)
    return set.specifier === STATION_NAME ? nameField(set.text) : escapeText(set.text);
  if (isOnly(set, 110)) return '';
  return isOnly(set, 126) ? 'C26' : digitsOf(set.symbols);
}

function nameField(text: string): string {
  const parts = text.split(',').map((part) => escapeText(part).replaceAll("'", '^27'));
  return parts.join("'");
}

function isOnly(set: ExpansionSet, symbol: number): boolean {
  return set.symbols.length === 1 && set.symbols[0] === symbol;
}
