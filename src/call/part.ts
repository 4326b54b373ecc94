import type { TermOf } from '../result/internal.ts';
import type { Call } from './call.ts';
import { type ChannelElements, channelFields, readChannel } from './element/channel-symbols.ts';
import type { Expansion } from './element/expansion.ts';
import type { CallFields, DraftFields, FieldName } from './fields.ts';
import {
  type Category,
  type FirstTelecommand,
  nameOfSymbol,
  type SymbolTable,
  symbolOfName,
  type UnknownSymbol,
} from './symbol.ts';
import type { typeTerms } from './terms.ts';

/** The properties of a kind of call that its message carries. */
export type MessageProperty<Any = Call> = Any extends unknown
  ? Exclude<keyof Any & string, 'kind' | 'to' | 'from' | 'expansion' | 'asReceived'>
  : never;

/** The properties of a call by name, while it is read or written. */
export type Properties = Record<string, unknown>;

/** What a property holds: the term for it, and whether a value is of that type. */
export type ValueType = readonly [
  expected: TermOf<{ readonly terms: typeof typeTerms }, 'value-type'>,
  fits: (value: unknown) => boolean,
];

/** What a row says of its category and first telecommand, the usual one first. */
export interface FixedBy {
  readonly categories: readonly Category[];
  readonly telecommands: readonly (FirstTelecommand | UnknownSymbol)[];
}

/** A part of the message of a call: its fields, and the properties they become. */
export interface Part<Name extends string = string> {
  /** Fields in the order on the air; none where the end of sequence carries it. */
  readonly fields: readonly FieldName[];
  /** Properties of the call, each with its type. */
  readonly properties: { readonly [Each in Name]?: ValueType };
  readonly read: (fields: CallFields, into: Properties, expansion: Expansion) => void;
  readonly write: (call: Properties, into: DraftFields) => void;
  /** Whether fields are of this kind although they end like another. */
  readonly matches?: (fields: CallFields) => boolean;
  /** Fields that are the same in all calls of a row. */
  readonly fixed?: (row: FixedBy) => Partial<CallFields>;
}

export const TEXT: ValueType = ['text-or-null', (value) => value === null || typeof value === 'string'];
export const RECORD_IF_ANY: ValueType = ['object', (value) => value === undefined || isRecord(value)];
export const nothing = (): void => {};

export function isRecord(value: unknown): value is Readonly<Properties> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A property that is one field. */
export function property<Name extends MessageProperty, Field extends FieldName, Value>(
  name: Name,
  field: Field,
  read: (symbols: CallFields[Field], expansion: Expansion) => Value,
  write: (value: Value) => CallFields[Field],
  type: ValueType = TEXT,
  matches?: Part['matches'],
): Part<Name> {
  return {
    fields: [field],
    properties: { [name]: type } as Part<Name>['properties'],
    read: (fields, into, expansion) => {
      into[name] = read(fields[field], expansion);
    },
    write: (call, into) => {
      (into as Record<Field, CallFields[Field]>)[field] = write(call[name] as Value);
    },
    ...(matches && { matches }),
  };
}

/** A property that names a symbol; `open` is what a telecommand without one carries. */
export function named<Name extends MessageProperty, Known extends string>(
  name: Name,
  field: 'category' | 'nature' | 'telecommand1' | 'telecommand2' | 'subsequent',
  table: SymbolTable<Known>,
  open: number | null,
): Part<Name> {
  return property(
    name,
    field,
    (symbol) => (isSymbol(symbol) && symbol !== open ? nameOfSymbol(table, symbol) : null),
    (value: Known | UnknownSymbol | null) => (value === null ? open : symbolOfName(table, value)),
  );
}

function isSymbol(symbol: number | null): symbol is number {
  return Number.isInteger(symbol) && Number(symbol) >= 0 && Number(symbol) <= 127;
}

/** Fields that carry no property: the row, or the kind of call, says what is in them. */
export function fixed(
  fields: readonly FieldName[],
  values: Part['fixed'] & {},
  matches?: Part['matches'],
): Part<never> {
  return {
    fields,
    properties: {},
    read: nothing,
    write: nothing,
    fixed: values,
    ...(matches && { matches }),
  };
}

/** Both channel elements; one VHF channel applies to both directions. deviation: D-call-8 */
export function channels(
  second: 'repeated' | 'no-information' | 'not-sent',
): Part<'channel' | 'frequencies'> {
  return {
    fields: second === 'not-sent' ? ['receive'] : ['receive', 'transmit'],
    properties: { channel: TEXT, frequencies: RECORD_IF_ANY },
    read: ({ receive, transmit }, into) => {
      Object.assign(into, readChannel(receive, transmit));
    },
    write: (call, into) => {
      const { receive, transmit } = channelFields(call as unknown as ChannelElements, second === 'repeated');
      into.receive = receive;
      if (second !== 'not-sent') into.transmit = transmit;
    },
  };
}
