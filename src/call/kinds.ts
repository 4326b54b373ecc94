import { want } from '../result/internal.ts';
import type { Call, CallKind, DistressCall } from './call.ts';
import { ADDRESS_KINDS } from './element/address-symbols.ts';
import { NO_CHANNEL } from './element/channel-symbols.ts';
import { identityOf, identitySymbols, UNKNOWN_SHIP } from './element/identity-symbols.ts';
import { positionOf, positionSymbols, timeOf, timeSymbols } from './element/place-symbols.ts';
import { telephoneOf, telephoneSymbols } from './element/telephone-number.ts';
import {
  type CallFields,
  type DraftFields,
  emptyFields,
  type FieldName,
  fieldForms,
  type Symbols,
} from './fields.ts';
import { noSymbols } from './no-symbols.ts';
import {
  channels,
  fixed,
  isRecord,
  type MessageProperty,
  named,
  nothing,
  type Part,
  property,
  TEXT,
} from './part.ts';
import {
  type Category,
  categories,
  type EndOfSequence,
  endsOfSequence,
  type FirstTelecommand,
  type FormatSpecifier,
  firstTelecommands,
  NO_INFORMATION,
  natures,
  secondTelecommands,
  symbolOfName,
} from './symbol.ts';

/** Equipment of a station: A full, D fixed set of small craft, H hand-held, M man-overboard device, or a coast station. */
export type EquipmentClass = 'A' | 'D' | 'H' | 'M' | 'coast';

/** A kind of call that has a composition, which is every kind but the unrecognised. */
export type ComposedKind = Composition['kind'];

/** One row of the tables of compositions: a kind of call under one format specifier. */
export interface Composition {
  readonly kind: Exclude<CallKind, 'unrecognised-call'>;
  /** Whom a call is for and what shape it has. */
  readonly format: 'area' | 'distress' | 'group' | 'all-ships' | 'individual' | 'automatic-service';
  /** Categories by the book, the usual one first; empty when the call carries none. */
  readonly categories: readonly Category[];
  /** First telecommands by the book; empty when the call carries none. */
  readonly telecommands: readonly FirstTelecommand[];
  /** Fields in the order on the air; how many symbols a field has is in {@link fieldLengths}. */
  readonly order: readonly (keyof CallFields)[];
  readonly end: 'acknowledgement-requested' | 'acknowledgement' | 'end-of-sequence';
  /** Count of information characters before the end of sequence, the format specifier counted twice. */
  readonly characters: number;
  /** Table of the Recommendation. */
  readonly clause: string;
  /**
   * What each class of equipment does with it on VHF: must be able to send it, may be able to, only behind a guard
   * against misuse, or not at all. A hint, never a reason to refuse what was received.
   */
  readonly senders: Readonly<Record<EquipmentClass, 'required' | 'optional' | 'guarded' | 'none'>>;
}

/** A composition with the parts that read and write its message. */
export interface KindRow extends Composition {
  readonly message: readonly Part[];
  /** The fields of its calls before any property is written: what is always the same, and "no information". */
  readonly unsaid: () => CallFields;
}

type CallOf<Kind> = Extract<Call, { readonly kind: Kind }>;
type Senders = Composition['senders'];
type RowOf<Kind extends ComposedKind> = readonly [
  kind: Kind,
  format: FormatSpecifier,
  table: string,
  message: readonly Part<MessageProperty<CallOf<Kind>>>[],
  end: EndOfSequence,
  categories: readonly Category[],
  telecommands: readonly FirstTelecommand[],
  senders: Senders,
];
type Row = { readonly [Kind in ComposedKind]: RowOf<Kind> }[ComposedKind];

// A row of ITU-R M.493 is made of these.

/** The sender, whom every call names. */
export const SELF: Part<never> = { fields: ['self'], properties: {}, read: nothing, write: nothing };
const FIXED_CATEGORY = /* @__PURE__ */ fixed(['category'], ({ categories: [name] }) => ({
  category: name === undefined ? null : symbolOfName(categories, name),
}));
export const FIXED_TELECOMMAND: Part<never> = /* @__PURE__ */ fixed(
  ['telecommand1'],
  ({ telecommands: [name] }) => ({
    telecommand1: name === undefined ? null : symbolOfName(firstTelecommands, name),
  }),
);
export const CATEGORY: Part<'category'> = /* @__PURE__ */ named('category', 'category', categories, null);
const FIRST_TELECOMMAND = /* @__PURE__ */ named(
  'firstTelecommand',
  'telecommand1',
  firstTelecommands,
  NO_INFORMATION,
);
const SECOND_TELECOMMAND = /* @__PURE__ */ named(
  'secondTelecommand',
  'telecommand2',
  secondTelecommands,
  NO_INFORMATION,
);
const REASON = /* @__PURE__ */ named('reason', 'telecommand2', secondTelecommands, NO_INFORMATION);
export const NO_REMARK: Part<never> = /* @__PURE__ */ fixed(['telecommand2'], () => ({
  telecommand2: NO_INFORMATION,
}));
const SHIP = /* @__PURE__ */ property('distressed', 'distressed', identityOf, shipSymbols);
/** The sender itself is in distress. */
const OWN_SHIP = /* @__PURE__ */ property(
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
const NATURE = /* @__PURE__ */ named('nature', 'nature', natures, null);
const POSITION = /* @__PURE__ */ property(
  'position',
  'position',
  (symbols, { fraction }) => positionOf(symbols, fraction),
  positionSymbols,
  [
    'position',
    (value) => value === null || (isRecord(value) && isRecord(value.latitude) && isRecord(value.longitude)),
  ],
);
const TIME = /* @__PURE__ */ property('time', 'time', timeOf, timeSymbols, [
  'time',
  (value) => value === null || isRecord(value),
]);
const SUBSEQUENT = /* @__PURE__ */ named('subsequent', 'subsequent', firstTelecommands, NO_INFORMATION);
/** Precedes the position of a reply, which has one whatever its end. deviation: D-call-10 */
const HEADER = /* @__PURE__ */ fixed(
  ['header'],
  () => ({ header: true }),
  ({ position }) => position !== null,
);
const CHANNEL_TWICE = /* @__PURE__ */ channels('repeated');
const CHANNEL_ONCE = /* @__PURE__ */ channels('no-information');
// deviation: D-call-6
const ONE_ELEMENT = /* @__PURE__ */ channels('not-sent');
const NO_CHANNELS = /* @__PURE__ */ fixed(['receive', 'transmit'], () => ({
  receive: NO_CHANNEL,
  transmit: NO_CHANNEL,
}));
const TELEPHONE = /* @__PURE__ */ property('telephone', 'telephone', telephoneOf, telephoneSymbols);
/** A position that nobody asked for ends like a call that asks for no answer. */
const UNSOLICITED: Part<'unsolicited'> = {
  fields: [],
  properties: {},
  read: ({ end }, into) => {
    into.unsolicited = end !== symbolOfName(endsOfSequence, 'acknowledgement');
  },
  write: (call, into) => {
    if (call.unsolicited) into.end = symbolOfName(endsOfSequence, 'end-of-sequence');
  },
};
const END: Part<'end'> = {
  fields: [],
  properties: {},
  read: ({ end }, into) => {
    const sent = (each: keyof typeof ENDS): boolean => symbolOfName(endsOfSequence, ENDS[each]) === end;
    into.end = (Object.keys(ENDS) as (keyof typeof ENDS)[]).find(sent) ?? 'request';
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

function shipSymbols(mmsi: string | null): Symbols {
  return identitySymbols(mmsi) ?? UNKNOWN_SHIP;
}

// What follows the format specifier and the address.
const ALERT = [SELF, NATURE, POSITION, TIME, SUBSEQUENT];
const ABOUT = [FIXED_CATEGORY, SELF, FIXED_TELECOMMAND, SHIP, NATURE, POSITION, TIME, SUBSEQUENT];
const OWN = [FIXED_CATEGORY, SELF, FIXED_TELECOMMAND, OWN_SHIP, NATURE, POSITION, TIME, SUBSEQUENT];
const TO_MANY = [CATEGORY, SELF, FIRST_TELECOMMAND, SECOND_TELECOMMAND, CHANNEL_ONCE];
const TO_ONE = [CATEGORY, SELF, FIRST_TELECOMMAND, SECOND_TELECOMMAND, CHANNEL_TWICE];
// deviation: D-call-9
const UNABLE = [CATEGORY, SELF, FIXED_TELECOMMAND, REASON, CHANNEL_TWICE];
const ENQUIRY = [CATEGORY, SELF, FIXED_TELECOMMAND, NO_REMARK, NO_CHANNELS];
const REPORT = [CATEGORY, SELF, FIXED_TELECOMMAND, NO_REMARK, HEADER, POSITION, TIME, UNSOLICITED];
const DIAL = [CATEGORY, SELF, FIRST_TELECOMMAND, SECOND_TELECOMMAND, ONE_ELEMENT, TELEPHONE, END];

const RQ = 'acknowledgement-requested';
const BQ = 'acknowledgement';
const EOS = 'end-of-sequence';

const VOICE = ['telephony-simplex', 'telephony-duplex', 'telephony-j3e'] as const;
const voiceAnd = (...others: readonly FirstTelecommand[]): readonly FirstTelecommand[] => [
  ...VOICE,
  ...others,
];
const TRAFFIC = /* @__PURE__ */ voiceAnd('data', 'teleprinter-fec', 'teleprinter-arq');
const SERVICE = /* @__PURE__ */ voiceAnd('data', 'unable-to-comply', 'end-of-call');
const URGENT = ['urgency', 'safety'] as const;
const ANY = ['routine', 'safety', 'urgency'] as const;
const ACK = ['distress-acknowledgement'] as const;
const RELAY = ['distress-relay'] as const;

// deviation: D-call-4
const ALL: Senders = { A: 'required', D: 'required', H: 'required', M: 'none', coast: 'required' };
const IN_DISTRESS: Senders = { A: 'required', D: 'required', H: 'required', M: 'required', coast: 'none' };
const RESCUE: Senders = { A: 'guarded', D: 'none', H: 'none', M: 'none', coast: 'required' };
const TELL_ONE: Senders = { A: 'required', D: 'optional', H: 'optional', M: 'required', coast: 'required' };
const TELL_GROUP: Senders = { A: 'required', D: 'none', H: 'none', M: 'required', coast: 'required' };
const TOLD: Senders = { A: 'required', D: 'none', H: 'none', M: 'none', coast: 'required' };
const POLL: Senders = { A: 'required', D: 'optional', H: 'optional', M: 'none', coast: 'required' };
const FEW: Senders = { A: 'optional', D: 'none', H: 'none', M: 'none', coast: 'optional' };

// Of rows that differ only in the end of sequence, the call comes before its answer.
// biome-ignore format: one line a row, as the tables have it
const ROWS: readonly Row[] = [
  ['distress-alert', 'distress', 'A1-4.1', ALERT, EOS, [], [], IN_DISTRESS],
  ['distress-acknowledgement', 'all-ships', 'A1-4.2', ABOUT, EOS, ['distress'], ACK, RESCUE],
  ['distress-self-cancel', 'all-ships', 'A1-4.2', OWN, EOS, ['distress'], ACK, IN_DISTRESS],
  // ITU-R M.493-16 §9: 117 asks for an acknowledgement, 122 gives one, 127 ends all other calls.
  ['distress-relay', 'individual', 'A1-4.3', ABOUT, RQ, ['distress'], RELAY, TELL_ONE],
  ['distress-relay', 'all-ships', 'A1-4.3', ABOUT, EOS, ['distress'], RELAY, RESCUE],
  ['distress-relay', 'area', 'A1-4.3', ABOUT, EOS, ['distress'], RELAY, RESCUE],
  ['distress-relay', 'group', 'A1-4.3', ABOUT, EOS, ['distress'], RELAY, TELL_GROUP],
  ['distress-relay-acknowledgement', 'individual', 'A1-4.4', ABOUT, BQ, ['distress'], RELAY, TOLD],
  ['distress-relay-acknowledgement', 'all-ships', 'A1-4.4', ABOUT, BQ, ['distress'], RELAY, RESCUE],
  ['distress-relay-acknowledgement', 'area', 'A1-4.4', ABOUT, BQ, ['distress'], RELAY, RESCUE],
  ['distress-relay-acknowledgement', 'group', 'A1-4.4', ABOUT, BQ, ['distress'], RELAY, TOLD],
  ['all-ships-call', 'all-ships', 'A1-4.5', TO_MANY, EOS, URGENT, VOICE, ALL],
  ['area-call', 'area', 'A1-4.6', TO_MANY, EOS, URGENT, TRAFFIC, FEW],
  ['group-call', 'group', 'A1-4.8', TO_MANY, EOS, ['routine'], TRAFFIC, ALL],
  ['individual-call', 'individual', 'A1-4.7 and A1-4.9', TO_ONE, RQ, ANY, TRAFFIC, ALL],
  ['individual-acknowledgement', 'individual', 'A1-4.7 and A1-4.9', TO_ONE, BQ, ANY, TRAFFIC, ALL],
  ['unable-to-comply', 'individual', 'A1-4.7 and A1-4.9', UNABLE, BQ, ANY, ['unable-to-comply'], ALL],
  ['position-request', 'individual', 'A1-4.7', ENQUIRY, RQ, ['safety'], ['ship-position'], ALL],
  ['position-reply', 'individual', 'A1-4.7', REPORT, BQ, ['safety'], ['ship-position'], ALL],
  ['test-call', 'individual', 'A1-4.7', ENQUIRY, RQ, ['safety'], ['test'], ALL],
  ['test-acknowledgement', 'individual', 'A1-4.7', ENQUIRY, BQ, ['safety'], ['test'], ALL],
  // deviation: D-call-5
  ['polling-call', 'individual', 'A1-4.9', ENQUIRY, RQ, ['routine'], ['polling'], POLL],
  ['polling-acknowledgement', 'individual', 'A1-4.9', ENQUIRY, BQ, ['routine'], ['polling'], POLL],
  // deviation: D-call-6
  ['automatic-service-call', 'automatic-service', 'A1-4.9', DIAL, RQ, ['routine'], SERVICE, FEW],
];

/** Every kind of call: all that is known of it is in its row, and everything else follows from there. */
export const kinds: readonly KindRow[] = /* @__PURE__ */ ROWS.map(kindRow);

/** A row with what follows from it. */
export function kindRow(row: Row): KindRow {
  let without: CallFields | undefined;
  const [kind, format, table, message, end, categories, telecommands, senders] = row;
  const head: readonly FieldName[] = ADDRESS_KINDS[format].startsWith('all-')
    ? ['format']
    : ['format', 'address'];
  const order = [...head, ...message.flatMap(({ fields }) => fields)];
  return {
    kind,
    format,
    categories,
    telecommands,
    order,
    end,
    characters: order.reduce((sum, field) => sum + (fieldForms[field].length ?? 0), 0),
    clause: `ITU-R M.493-16 Annex 1 ${table.includes(' and ') ? 'tables' : 'table'} ${table}`,
    senders,
    message,
    unsaid() {
      without ??= unsaid(row);
      return without;
    },
  };
}

function unsaid([, , , message, end, categories, telecommands]: Row): CallFields {
  const fields: DraftFields = { ...emptyFields, end: symbolOfName(endsOfSequence, end) };
  for (const { fields: carried, properties, fixed, write } of message) {
    Object.assign(fields, fixed?.({ categories, telecommands }));
    const nothing = Object.fromEntries(Object.keys(properties).map((name) => [name, null]));
    if (carried.length > 0) write(nothing, fields);
  }
  return fields;
}

/**
 * Every kind of call, by format specifier. Area calls and relays to an area are practice of MF and HF.
 *
 * Source: ITU-R M.493-16 Annex 1 tables A1-4.1 to A1-4.9, from memory; order of alert, acknowledgement, relay and
 * urgency call: Japan, Radio Station Operation Regulations Art. 36-2; test call: Japan, MPT Notification 567 of
 * 1990 figure 5. The numbers of the tables follow M.493-16, which renumbered them. deviation: D-call-17 (which number is
 * whose). Who may send what is remembered with little confidence.
 */
export const compositions: readonly Composition[] = /* @__PURE__ */ kinds.map(
  ({ message: _, unsaid: __, ...composition }) => composition,
);

/** Symbols a field takes on the air on VHF (the format specifier is sent twice, the header 55 is the reply's). */
export const fieldLengths: Readonly<Partial<Record<keyof CallFields, number>>> =
  /* @__PURE__ */ Object.fromEntries(
    /* @__PURE__ */ Object.entries(fieldForms).flatMap(([name, { length }]) =>
      length === undefined ? [] : [[name, length]],
    ),
  );

export const DISTRESS_KINDS: readonly DistressCall['kind'][] = /* @__PURE__ */ distressKinds();

function distressKinds(): DistressCall['kind'][] {
  const rows = kinds.filter(({ order }) => order.includes('nature'));
  return [...new Set(rows.map(({ kind }) => kind as DistressCall['kind']))];
}

/**
 * Whether a call is about a distress: an alert, a relay, their acknowledgements, and the cancellation of an alert.
 *
 * @param call - any call
 * @returns true for the calls of ITU-R M.493-16 tables A1-4.1 to A1-4.4
 *
 * @example
 * ```ts
 * import { composeDistressAlert, composeTestCall, isDistressCall } from 'seahail/call';
 *
 * console.log(isDistressCall(composeDistressAlert({ from: '232999218' }))); // true
 * console.log(isDistressCall(composeTestCall({ from: '232999871', to: '002329990' }))); // false
 * ```
 */
export function isDistressCall<Any extends Pick<Call, 'kind'>>(call: Any): call is Any & DistressCall {
  want('isDistressCall', 'a call', call, 'kind');
  return (DISTRESS_KINDS as readonly CallKind[]).includes(call.kind);
}
