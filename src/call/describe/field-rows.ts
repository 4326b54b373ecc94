import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { addressOf } from '../element/address-symbols.ts';
import { readChannel, saysNothing } from '../element/channel-symbols.ts';
import { readExpansion } from '../element/expansion.ts';
import { identityOf, UNKNOWN_SHIP } from '../element/identity-symbols.ts';
import { lackOf, positionOf, timeOf, UNKNOWN_POSITION, UNKNOWN_TIME } from '../element/place-symbols.ts';
import { telephoneOf } from '../element/telephone-number.ts';
import { allFields, type CallFields, type ExpansionSet, POSITION_HEADER, type Symbols } from '../fields.ts';
import { same } from '../same.ts';
import {
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  isUnknown,
  NO_INFORMATION,
  nameOfSymbol,
  natures,
  type SymbolTable,
  secondTelecommands,
  type UnknownSymbol,
} from '../symbol.ts';
import { callTerms, categoryTerms, fieldTerms } from '../terms.ts';
import type { Caution } from './cautions.ts';
import { inWords, secondTelecommandInWords } from './in-words.ts';
import { addressWords, type ChannelOf, type NameOf, placeWords, timeWords } from './sentence.ts';

/** A call for people. */
export interface CallDescription {
  /** One plain English sentence, without a full stop. */
  readonly sentence: string;
  /** Every field in the order on the air. */
  readonly rows: readonly {
    readonly label: string;
    readonly value: string;
    /** The symbols of the field, `null` where one could not be read; absent when it was carried as text. */
    readonly symbols?: Symbols;
    readonly clause: string;
  }[];
  /** What to mind; never empty for a distress call or a position. */
  readonly cautions: readonly Caution[];
}

/** Every field of a call in the order on the air, then what does not belong to its composition. */
export function fieldRows(
  call: Call,
  nameOf: NameOf,
  channelOf: ChannelOf,
): CallDescription['rows'][number][] {
  const fields = calls.fieldsOf(call);
  const row = calls.rowOf(call);
  const clause = row?.clause ?? 'ITU-R M.493-16 Annex 1';
  const order = row?.order ?? [];
  const others = allFields.filter((field) => !order.includes(field));
  const rows = [...order, ...others].flatMap((field): CallDescription['rows'][number][] => {
    const symbols = symbolsIn(field, fields);
    if (symbols === null) return [];
    return [
      {
        label: fieldTerms[`call-field.${field}`],
        value: valueWords(field, fields, nameOf, channelOf),
        symbols,
        clause,
      },
    ];
  });
  return [...rows, ...fields.expansion.map(expansionRow)];
}

function symbolsIn(field: keyof CallFields, fields: CallFields): Symbols | null {
  if (field === 'expansion') return null;
  if (field === 'header') return fields.header ? [POSITION_HEADER] : null;
  const value = fields[field];
  if (typeof value === 'number') return [value];
  return field === 'rest' && value?.length === 0 ? null : value;
}

function valueWords(
  field: keyof CallFields,
  fields: CallFields,
  nameOf: NameOf,
  channelOf: ChannelOf,
): string {
  switch (field) {
    case 'format':
      return named(formatSpecifiers, (name) => inWords(callTerms, 'format-specifier', name), fields.format);
    case 'address': {
      const address = addressOf(fields);
      return address === null ? 'not understood' : addressWords(address, nameOf);
    }
    case 'category':
      return named(categories, (name) => inWords(categoryTerms, 'category', name), fields.category);
    case 'self':
      return nameOf(identityOf(fields.self));
    case 'telecommand1':
      return named(
        firstTelecommands,
        (name) => inWords(callTerms, 'first-telecommand', name),
        fields.telecommand1,
      );
    case 'telecommand2':
      return named(secondTelecommands, secondTelecommandInWords, fields.telecommand2);
    case 'distressed':
      return same(fields.distressed, UNKNOWN_SHIP) ? 'not known' : nameOf(identityOf(fields.distressed));
    case 'nature':
      return named(natures, (name) => inWords(callTerms, 'nature', name), fields.nature);
    case 'header':
      return 'a position follows';
    case 'position':
      return placeWords(positionOf(fields.position, null), lackOf(fields.position, UNKNOWN_POSITION));
    case 'time':
      return timeWords(timeOf(fields.time), lackOf(fields.time, UNKNOWN_TIME));
    case 'subsequent':
      return named(
        firstTelecommands,
        (name) => inWords(callTerms, 'first-telecommand', name),
        fields.subsequent,
      );
    case 'receive':
    case 'transmit':
      return elementWords(fields[field], channelOf);
    case 'telephone':
      return telephoneOf(fields.telephone) ?? 'not understood';
    case 'end':
      return named(endsOfSequence, (name) => inWords(callTerms, 'end-of-sequence', name), fields.end);
    default:
      return 'kept as received';
  }
}

function named<Name extends string>(
  table: SymbolTable<Name>,
  words: (name: Name | UnknownSymbol) => string,
  symbol: number | null,
): string {
  if (symbol === null) return 'not read';
  const name = nameOfSymbol(table, symbol);
  return symbol === NO_INFORMATION && isUnknown(name) ? 'no information' : words(name);
}

function elementWords(element: Symbols | null, channelOf: ChannelOf): string {
  const { channel, frequencies } = readChannel(element, null);
  if (channel !== null) return `channel ${channelOf(channel)}`;
  if (frequencies !== undefined) return `frequency digits ${frequencies.receive}`;
  return saysNothing(element) ? 'no information' : 'not understood';
}

const SETS: Readonly<Record<number, string>> = {
  100: 'finer position',
  101: 'source and datum of the fix',
  102: 'speed over ground',
  103: 'course over ground',
  104: 'another name of the station',
  105: 'finer area',
  106: 'persons on board',
};

function expansionRow(set: ExpansionSet): CallDescription['rows'][number] {
  const clause = 'ITU-R M.821-1, unverified';
  const label = `Expansion: ${SETS[set.specifier] ?? `set ${set.specifier}`}`;
  // Text of another station: its control characters are shown as the sign for what cannot be shown.
  if (set.text !== undefined && set.symbols.length === 0)
    return { label, value: set.text.replace(/\p{Cc}/gu, '\ufffd'), clause };
  return { label, value: setWords(set), symbols: set.symbols, clause };
}

function setWords(set: ExpansionSet): string {
  const { fraction, data } = readExpansion([set]);
  if (data?.requested !== undefined) return 'asked for';
  if (data?.unavailable !== undefined) return 'not available';
  if (fraction !== null) return `latitude .${fraction.slice(0, 4)}′, longitude .${fraction.slice(4)}′`;
  if (data?.source !== undefined) return data.source;
  if (data?.speed !== undefined) return `${data.speed} knots`;
  if (data?.course !== undefined) return `${data.course}° true`;
  if (data?.area !== undefined) {
    const { latitude, longitude, southward, eastward, speed, course } = data.area;
    return `corner ${latitude}′ of latitude and ${longitude}′ of longitude, sides ${southward}′ south and ${eastward}′ east, moving at ${speed} knots, ${course}° true`;
  }
  if (data?.personsOnBoard !== undefined) return `${data.personsOnBoard}`;
  return 'kept as received';
}
