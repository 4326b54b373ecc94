import type { TermOf } from '../result/internal.ts';
import type { Call } from './call.ts';
import { type ChannelElements, channelFields, NO_CHANNEL, readChannel } from './element/channel-symbols.ts';
import type { Expansion } from './element/expansion.ts';
import { identityOf, identitySymbols, UNKNOWN_SHIP } from './element/identity-symbols.ts';
import { positionOf, positionSymbols, timeOf, timeSymbols } from './element/place-symbols.ts';
import { telephoneOf, telephoneSymbols } from './element/telephone-number.ts';
import type { CallFields, DraftFields, FieldName, Symbols } from './fields.ts';
import { noSymbols } from './no-symbols.ts';
import {
  type Category,
  categories,
  type EndOfSequence,
  endsOfSequence,
  type FirstTelecommand,
  firstTelecommands,
  NO_INFORMATION,
  nameOfSymbol,
  natures,
  type SymbolTable,
  secondTelecommands,
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
const nothing = (): void => {};

export function isRecord(value: unknown): value is Readonly<Properties> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A property that is one field. */
function property<Name extends MessageProperty, Field extends FieldName, Value>(
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

function shipSymbols(mmsi: string | null): Symbols {
  return identitySymbols(mmsi) ?? UNKNOWN_SHIP;
}

/** A property that names a symbol; `open` is what a telecommand without one carries. */
function named<Name extends MessageProperty, Known extends string>(
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
  return symbol !== null && Number.isInteger(symbol) && symbol >= 0 && symbol <= 127;
}

/** Fields that carry no property: the row, or the kind of call, says what is in them. */
function fixed(
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
function channels(second: 'repeated' | 'no-information' | 'not-sent'): Part<'channel' | 'frequencies'> {
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

// A row of ITU-R M.493 is made of these.

/** The sender, whom every call names. */
export const SELF: Part<never> = { fields: ['self'], properties: {}, read: nothing, write: nothing };
export const FIXED_CATEGORY: Part<never> = /* @__PURE__ */ fixed(['category'], ({ categories: [name] }) => ({
  category: name === undefined ? null : symbolOfName(categories, name),
}));
export const FIXED_TELECOMMAND: Part<never> = /* @__PURE__ */ fixed(
  ['telecommand1'],
  ({ telecommands: [name] }) => ({
    telecommand1: name === undefined ? null : symbolOfName(firstTelecommands, name),
  }),
);
export const CATEGORY: Part<'category'> = /* @__PURE__ */ named('category', 'category', categories, null);
export const FIRST_TELECOMMAND: Part<'firstTelecommand'> = /* @__PURE__ */ named(
  'firstTelecommand',
  'telecommand1',
  firstTelecommands,
  NO_INFORMATION,
);
export const SECOND_TELECOMMAND: Part<'secondTelecommand'> = /* @__PURE__ */ named(
  'secondTelecommand',
  'telecommand2',
  secondTelecommands,
  NO_INFORMATION,
);
export const REASON: Part<'reason'> = /* @__PURE__ */ named(
  'reason',
  'telecommand2',
  secondTelecommands,
  NO_INFORMATION,
);
export const NO_REMARK: Part<never> = /* @__PURE__ */ fixed(['telecommand2'], () => ({
  telecommand2: NO_INFORMATION,
}));
export const SHIP: Part<'distressed'> = /* @__PURE__ */ property(
  'distressed',
  'distressed',
  identityOf,
  shipSymbols,
);
/** The sender itself is in distress. */
export const OWN_SHIP: Part<'distressed'> = /* @__PURE__ */ property(
  'distressed',
  'distressed',
  identityOf,
  shipSymbols,
  TEXT,
  ({ self, distressed }) => {
    const ship = identityOf(distressed);
    return ship !== null && ship === identityOf(self);
  },
);
export const NATURE: Part<'nature'> = /* @__PURE__ */ named('nature', 'nature', natures, null);
export const POSITION: Part<'position'> = /* @__PURE__ */ property(
  'position',
  'position',
  (symbols, { fraction }) => positionOf(symbols, fraction),
  positionSymbols,
  [
    'position',
    (value) => value === null || (isRecord(value) && isRecord(value.latitude) && isRecord(value.longitude)),
  ],
);
export const TIME: Part<'time'> = /* @__PURE__ */ property('time', 'time', timeOf, timeSymbols, [
  'time',
  (value) => value === null || isRecord(value),
]);
export const SUBSEQUENT: Part<'subsequent'> = /* @__PURE__ */ named(
  'subsequent',
  'subsequent',
  firstTelecommands,
  NO_INFORMATION,
);
/** Precedes the position of a reply, which has one whatever its end. deviation: D-call-10 */
export const HEADER: Part<never> = /* @__PURE__ */ fixed(
  ['header'],
  () => ({ header: true }),
  ({ position }) => position !== null,
);
export const CHANNEL_TWICE: Part<'channel' | 'frequencies'> = /* @__PURE__ */ channels('repeated');
export const CHANNEL_ONCE: Part<'channel' | 'frequencies'> = /* @__PURE__ */ channels('no-information');
// deviation: D-call-6
export const ONE_ELEMENT: Part<'channel' | 'frequencies'> = /* @__PURE__ */ channels('not-sent');
export const NO_CHANNELS: Part<never> = /* @__PURE__ */ fixed(['receive', 'transmit'], () => ({
  receive: NO_CHANNEL,
  transmit: NO_CHANNEL,
}));
export const TELEPHONE: Part<'telephone'> = /* @__PURE__ */ property(
  'telephone',
  'telephone',
  telephoneOf,
  telephoneSymbols,
);
/** A position that nobody asked for ends like a call that asks for no answer. */
export const UNSOLICITED: Part<'unsolicited'> = {
  fields: [],
  properties: {},
  read: ({ end }, into) => {
    into.unsolicited = nameOfEnd(end) !== 'acknowledgement';
  },
  write: (call, into) => {
    if (call.unsolicited) into.end = symbolOfName(endsOfSequence, 'end-of-sequence');
  },
};
export const END: Part<'end'> = {
  fields: [],
  properties: {},
  read: ({ end }, into) => {
    const name = nameOfEnd(end);
    into.end = (Object.keys(ENDS) as (keyof typeof ENDS)[]).find((each) => ENDS[each] === name) ?? 'request';
  },
  write: ({ end }, into) => {
    if (!Object.hasOwn(ENDS, String(end))) throw noSymbols('end', `'${end}'`);
    into.end = symbolOfName(endsOfSequence, ENDS[end as keyof typeof ENDS]);
  },
};

const ENDS: Readonly<Record<Call<'automatic-service-call'>['end'], EndOfSequence>> = {
  request: 'acknowledgement-requested',
  answer: 'acknowledgement',
  end: 'end-of-sequence',
};

function nameOfEnd(end: number | null): string | null {
  return end === null ? null : nameOfSymbol(endsOfSequence, end);
}
