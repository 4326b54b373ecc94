import type { CodedText } from '../../result/index.ts';
import type { TermOf } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { addressOf } from '../element/address-symbols.ts';
import { readChannel, saysNothing } from '../element/channel-symbols.ts';
import { readExpansion } from '../element/expansion.ts';
import { identityOf, UNKNOWN_SHIP } from '../element/identity-symbols.ts';
import { lackOf, positionOf, timeOf, UNKNOWN_POSITION, UNKNOWN_TIME } from '../element/place-symbols.ts';
import { telephoneOf } from '../element/telephone-number.ts';
import { allFields, type CallFields, type ExpansionSet, POSITION_HEADER, type Symbols } from '../fields.ts';
import type { Composition } from '../kinds.ts';
import { same } from '../same.ts';
import {
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  isReason,
  isUnknown,
  NO_INFORMATION,
  nameOfSymbol,
  natures,
  type SymbolTable,
  secondTelecommands,
} from '../symbol.ts';
import { type describeTexts, describing } from '../texts.ts';
import type { Caution } from './cautions.ts';
import { addressWords, type ChannelOf, type NameOf, placeWords, type Said, timeWords } from './sentence.ts';

/** A call for people. `translate` of `seahail/locale` says the coded texts in another language. */
export interface CallDescription {
  /** One plain English sentence, without a full stop. */
  readonly sentence: string;
  /** The sentence with its data. */
  readonly sentenceText: CodedText;
  /** Every field in the order on the air. */
  readonly rows: readonly {
    readonly label: string;
    readonly labelText: CodedText;
    readonly value: string;
    /** The value as a text; absent where it is a name, digits or a place, the same in every language. */
    readonly valueText?: CodedText;
    /** The symbols of the field, `null` where one could not be read; absent when it was carried as text. */
    readonly symbols?: Symbols;
    readonly clause: string;
  }[];
  /** What to mind; never empty for a distress call or a position. */
  readonly cautions: readonly Caution[];
}

type Row = CallDescription['rows'][number];

/** Every field of a call in the order on the air, then what does not belong to its composition. */
export function fieldRows(call: Call, nameOf: NameOf, channelOf: ChannelOf): Row[] {
  const fields = calls.fieldsOf(call);
  const { order, clause }: Pick<Composition, 'order' | 'clause'> =
    call.kind === 'unrecognised-call' ? { order: [], clause: 'ITU-R M.493-16 Annex 1' } : calls.rowOf(call);
  const others = allFields.filter((field) => !order.includes(field));
  const rows = [...order, ...others].flatMap((field): Row[] => {
    const symbols = symbolsIn(field, fields);
    if (symbols === null) return [];
    const label = describing('call-label', { field });
    return [{ ...rowOf(label, valueWords(field, symbols, fields, nameOf, channelOf)), symbols, clause }];
  });
  return [...rows, ...fields.expansion.map(expansionRow)];
}

function rowOf(labelText: CodedText, value: Said): Omit<Row, 'symbols' | 'clause'> {
  const label = { label: labelText.message, labelText };
  return typeof value === 'string'
    ? { ...label, value }
    : { ...label, value: value.message, valueText: value };
}

function symbolsIn(field: keyof CallFields, fields: CallFields): Symbols | null {
  if (field === 'expansion') return null;
  if (field === 'header') return fields.header ? [POSITION_HEADER] : null;
  if (field === 'rest' && fields.rest.length === 0) return null;
  const value = fields[field];
  return typeof value === 'number' ? [value] : value;
}

function valueWords(
  field: keyof CallFields,
  symbols: Symbols,
  fields: CallFields,
  nameOf: NameOf,
  channelOf: ChannelOf,
): Said {
  const symbol = Number(symbols[0]);
  switch (field) {
    case 'format':
      return symbolSaid(formatSpecifiers, symbol, (format) => describing('call-says-format', { format }));
    case 'address': {
      const address = addressOf(fields);
      return address === null ? describing('call-says-not-understood', {}) : addressWords(address, nameOf);
    }
    case 'category':
      return symbolSaid(categories, symbol, (category) => describing('call-says-category', { category }));
    case 'self':
      return nameOf(identityOf(symbols));
    case 'telecommand1':
    case 'subsequent':
      return symbolSaid(firstTelecommands, symbol, (telecommand) =>
        describing('call-says-first-telecommand', { telecommand }),
      );
    case 'telecommand2':
      return symbolSaid(secondTelecommands, symbol, (telecommand) =>
        isReason(telecommand)
          ? describing('call-says-reason', { reason: telecommand })
          : describing('call-says-second-telecommand', { telecommand }),
      );
    case 'distressed':
      return same(symbols, UNKNOWN_SHIP) ? describing('call-says-unknown', {}) : nameOf(identityOf(symbols));
    case 'nature':
      return symbolSaid(natures, symbol, (nature) => describing('call-says-nature', { nature }));
    case 'header':
      return describing('call-says-position-follows', {});
    case 'position':
      return placeWords(positionOf(symbols, null), lackOf(symbols, UNKNOWN_POSITION));
    case 'time':
      return timeWords(timeOf(symbols), lackOf(symbols, UNKNOWN_TIME));
    case 'receive':
    case 'transmit':
      return elementWords(symbols, channelOf);
    case 'telephone':
      return telephoneOf(symbols) ?? describing('call-says-not-understood', {});
    case 'end':
      return symbolSaid(endsOfSequence, symbol, (end) => describing('call-says-end', { end }));
    default:
      return describing('call-says-kept', {});
  }
}

function symbolSaid<Name extends string>(
  table: SymbolTable<Name>,
  symbol: number,
  say: (name: Name) => CodedText,
): CodedText {
  const name = nameOfSymbol(table, symbol);
  if (!isUnknown(name)) return say(name);
  return symbol === NO_INFORMATION
    ? describing('call-says-no-information', {})
    : describing('call-symbol', { symbol });
}

function elementWords(element: Symbols, channelOf: ChannelOf): CodedText {
  const { channel, frequencies } = readChannel(element, null);
  if (channel !== null) return describing('call-where-channel', { channel: channelOf(channel) });
  if (frequencies?.receive != null) return describing('call-element-digits', { digits: frequencies.receive });
  return describing(saysNothing(element) ? 'call-says-no-information' : 'call-says-not-understood', {});
}

type KnownSet = TermOf<typeof describeTexts, 'expansion'>;

const KNOWN_SETS: readonly KnownSet[] = ['100', '101', '102', '103', '104', '105', '106'];

function expansionRow(set: ExpansionSet): Row {
  const clause = 'ITU-R M.821-1, unverified';
  const known = KNOWN_SETS.find((each) => each === String(set.specifier));
  const label =
    known === undefined
      ? describing('call-label-unknown-set', { set: set.specifier })
      : describing('call-label-expansion', { set: known });
  // Text of another station: its control characters are shown as the sign for what cannot be shown.
  if (set.text !== undefined && set.symbols.length === 0)
    return { ...rowOf(label, set.text.replace(/\p{Cc}/gu, '\ufffd')), clause };
  return { ...rowOf(label, setWords(set)), symbols: set.symbols, clause };
}

function setWords(set: ExpansionSet): Said {
  const { fraction, data } = readExpansion([set]);
  if (data?.requested !== undefined) return describing('call-says-asked-for', {});
  if (data?.unavailable !== undefined) return describing('call-says-unavailable', {});
  if (fraction !== null) {
    const [latitude, longitude] = [fraction.slice(0, 4), fraction.slice(4)];
    return describing('call-says-minutes', { latitude, longitude });
  }
  if (data?.source !== undefined) return data.source;
  if (data?.speed !== undefined) return describing('call-says-speed', { speed: data.speed });
  if (data?.course !== undefined) return describing('call-says-course', { course: data.course });
  if (data?.area !== undefined) return describing('call-says-area', data.area);
  if (data?.personsOnBoard !== undefined) return `${data.personsOnBoard}`;
  return describing('call-says-kept', {});
}
