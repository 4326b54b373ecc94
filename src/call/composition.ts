import type { Call } from './call.ts';
import type { CallFields } from './fields.ts';
import type { Category, EndOfSequence, FirstTelecommand, FormatSpecifier } from './symbol.ts';

/** Equipment of a station: A full, D fixed set of small craft, H hand-held, M man-overboard device, or a coast station. */
export type EquipmentClass = 'A' | 'D' | 'H' | 'M' | 'coast';

/** What a class may do: must be able to, may be able to, only behind a guard against misuse, not at all. */
export type Duty = 'required' | 'optional' | 'guarded' | 'none';

/** A kind of call that has a composition, which is every kind but the unrecognised. */
export type ComposedKind = Exclude<Call['kind'], 'unrecognised-call'>;

/** One row of the tables of compositions: a kind of call under one format specifier. */
export interface Composition {
  readonly kind: ComposedKind;
  readonly format: FormatSpecifier;
  /** Categories by the book, the usual one first; empty when the call carries none. */
  readonly categories: readonly Category[];
  /** First telecommands by the book; empty when the call carries none. */
  readonly telecommands: readonly FirstTelecommand[];
  /** Fields in the order on the air; of a field that occurs, how many symbols it has is in {@link fieldLengths}. */
  readonly order: readonly (keyof CallFields)[];
  readonly end: EndOfSequence;
  /** Count of information characters before the end of sequence, the format specifier counted twice. */
  readonly characters: number;
  /** Table of the Recommendation. */
  readonly clause: string;
  /** Which equipment may send it on VHF: a hint, never a reason to refuse what was received. */
  readonly senders: Readonly<Record<EquipmentClass, Duty>>;
}

/** Symbols a field takes on the air on VHF (the format specifier is sent twice, the header 55 is the reply's). */
export const fieldLengths: Readonly<Partial<Record<keyof CallFields, number>>> = {
  format: 2,
  address: 5,
  category: 1,
  self: 5,
  telecommand1: 1,
  telecommand2: 1,
  distressed: 5,
  nature: 1,
  header: 1,
  position: 5,
  time: 2,
  subsequent: 1,
  receive: 3,
  transmit: 3,
};

const ALERT: readonly (keyof CallFields)[] = ['format', 'self', 'nature', 'position', 'time', 'subsequent'];
const DISTRESS_TAIL: readonly (keyof CallFields)[] = [
  'category',
  'self',
  'telecommand1',
  'distressed',
  'nature',
  'position',
  'time',
  'subsequent',
];
const CHANNEL_TAIL: readonly (keyof CallFields)[] = [
  'category',
  'self',
  'telecommand1',
  'telecommand2',
  'receive',
  'transmit',
];
const REPLY_TAIL: readonly (keyof CallFields)[] = [
  'category',
  'self',
  'telecommand1',
  'telecommand2',
  'header',
  'position',
  'time',
];
const TELEPHONE_TAIL: readonly (keyof CallFields)[] = [
  'category',
  'self',
  'telecommand1',
  'telecommand2',
  'receive',
  'telephone',
];

const VOICE: readonly FirstTelecommand[] = ['telephony-simplex', 'telephony-duplex', 'telephony-j3e'];
const TRAFFIC: readonly FirstTelecommand[] = [...VOICE, 'data', 'teleprinter-fec', 'teleprinter-arq'];

const EVERYONE: Composition['senders'] = {
  A: 'required',
  D: 'required',
  H: 'required',
  M: 'none',
  coast: 'required',
};

/**
 * Every call of ITU-R M.493 that is sent on VHF (area calls and relays to an area are MF/HF practice),
 * by kind and format specifier.
 *
 * Source: ITU-R M.493-15 Annex 1 tables 4.1 to 4.10, from memory; the distress, test and urgency rows
 * agree with the national restatements in Japan, Radio Station Operation Regulations Art. 36-2 and
 * Ministry of Posts and Telecommunications Notification 567 of 1990. The classes that may send are
 * remembered with little confidence. Deviation: D-call-3 (ends of sequence of relays), D-call-4
 * (classes), D-call-5 (polling), D-call-6 (telephone service).
 */
export const compositions: readonly Composition[] = /* @__PURE__ */ (() => [
  {
    kind: 'distress-alert',
    format: 'distress',
    categories: [],
    telecommands: [],
    order: ALERT,
    end: 'end-of-sequence',
    characters: 16,
    clause: 'ITU-R M.493-15 Annex 1 table 4.1',
    senders: { A: 'required', D: 'required', H: 'required', M: 'required', coast: 'none' },
  },
  {
    kind: 'distress-acknowledgement',
    format: 'all-ships',
    categories: ['distress'],
    telecommands: ['distress-acknowledgement'],
    order: ['format', ...DISTRESS_TAIL],
    end: 'end-of-sequence',
    characters: 23,
    clause: 'ITU-R M.493-15 Annex 1 table 4.2',
    senders: { A: 'guarded', D: 'none', H: 'none', M: 'none', coast: 'required' },
  },
  {
    kind: 'distress-self-cancel',
    format: 'all-ships',
    categories: ['distress'],
    telecommands: ['distress-acknowledgement'],
    order: ['format', ...DISTRESS_TAIL],
    end: 'end-of-sequence',
    characters: 23,
    clause: 'ITU-R M.493-15 Annex 1 table 4.2',
    senders: { A: 'required', D: 'required', H: 'required', M: 'required', coast: 'none' },
  },
  // deviation: D-call-3
  ...relays('distress-relay', 'ITU-R M.493-15 Annex 1 table 4.3', {
    individual: 'acknowledgement-requested',
    broadcast: 'end-of-sequence',
  }),
  ...relays('distress-relay-acknowledgement', 'ITU-R M.493-15 Annex 1 table 4.4', {
    individual: 'acknowledgement',
    broadcast: 'acknowledgement',
  }),
  {
    kind: 'all-ships-call',
    format: 'all-ships',
    categories: ['urgency', 'safety'],
    telecommands: VOICE,
    order: ['format', ...CHANNEL_TAIL],
    end: 'end-of-sequence',
    characters: 16,
    clause: 'ITU-R M.493-15 Annex 1 table 4.5',
    senders: EVERYONE,
  },
  {
    kind: 'area-call',
    format: 'area',
    categories: ['urgency', 'safety'],
    telecommands: TRAFFIC,
    order: ['format', 'address', ...CHANNEL_TAIL],
    end: 'end-of-sequence',
    characters: 21,
    clause: 'ITU-R M.493-15 Annex 1 table 4.6',
    senders: { A: 'optional', D: 'none', H: 'none', M: 'none', coast: 'optional' },
  },
  {
    kind: 'group-call',
    format: 'group',
    categories: ['routine'],
    telecommands: TRAFFIC,
    order: ['format', 'address', ...CHANNEL_TAIL],
    end: 'end-of-sequence',
    characters: 21,
    clause: 'ITU-R M.493-15 Annex 1 table 4.8',
    senders: EVERYONE,
  },
  individual(
    'individual-call',
    ['routine', 'safety', 'urgency'],
    TRAFFIC,
    'acknowledgement-requested',
    '4.7 and 4.9',
  ),
  individual(
    'individual-acknowledgement',
    ['routine', 'safety', 'urgency'],
    TRAFFIC,
    'acknowledgement',
    '4.7 and 4.9',
  ),
  individual(
    'unable-to-comply',
    ['routine', 'safety', 'urgency'],
    ['unable-to-comply'],
    'acknowledgement',
    '4.7 and 4.9',
  ),
  individual('position-request', ['safety'], ['ship-position'], 'acknowledgement-requested', '4.7'),
  {
    kind: 'position-reply',
    format: 'individual',
    categories: ['safety'],
    telecommands: ['ship-position'],
    order: ['format', 'address', ...REPLY_TAIL],
    end: 'acknowledgement',
    characters: 23,
    clause: 'ITU-R M.493-15 Annex 1 table 4.7',
    senders: EVERYONE,
  },
  individual('test-call', ['safety'], ['test'], 'acknowledgement-requested', '4.7'),
  individual('test-acknowledgement', ['safety'], ['test'], 'acknowledgement', '4.7'),
  // deviation: D-call-5
  individual('polling-call', ['routine'], ['polling'], 'acknowledgement-requested', '4.9'),
  individual('polling-acknowledgement', ['routine'], ['polling'], 'acknowledgement', '4.9'),
  {
    // deviation: D-call-6
    kind: 'automatic-service-call',
    format: 'automatic-service',
    categories: ['routine'],
    telecommands: [...VOICE, 'data', 'unable-to-comply', 'end-of-call'],
    order: ['format', 'address', ...TELEPHONE_TAIL],
    end: 'acknowledgement-requested',
    characters: 18,
    clause: 'ITU-R M.493-15 Annex 1 table 4.10',
    senders: { A: 'optional', D: 'none', H: 'none', M: 'none', coast: 'optional' },
  },
])();

/** The composition of a kind, under a format specifier when the kind has several. */
export function compositionOf(kind: ComposedKind, format?: FormatSpecifier): Composition | null {
  return (
    compositions.find((row) => row.kind === kind && (format === undefined || row.format === format)) ?? null
  );
}

function relays(
  kind: 'distress-relay' | 'distress-relay-acknowledgement',
  clause: string,
  end: { readonly individual: EndOfSequence; readonly broadcast: EndOfSequence },
): Composition[] {
  // deviation: D-call-4
  const toOne: Composition['senders'] = {
    A: 'required',
    D: kind === 'distress-relay' ? 'optional' : 'none',
    H: kind === 'distress-relay' ? 'optional' : 'none',
    M: kind === 'distress-relay' ? 'required' : 'none',
    coast: 'required',
  };
  const toMany: Composition['senders'] = { A: 'guarded', D: 'none', H: 'none', M: 'none', coast: 'required' };
  const shared = {
    kind,
    categories: ['distress'],
    telecommands: ['distress-relay'],
    clause,
  } as const;
  const order: Composition['order'] = ['format', 'address', ...DISTRESS_TAIL];
  return [
    { ...shared, format: 'individual', order, end: end.individual, characters: 28, senders: toOne },
    {
      ...shared,
      format: 'all-ships',
      order: ['format', ...DISTRESS_TAIL],
      end: end.broadcast,
      characters: 23,
      senders: toMany,
    },
    { ...shared, format: 'area', order, end: end.broadcast, characters: 28, senders: toMany },
    {
      ...shared,
      format: 'group',
      order,
      end: end.broadcast,
      characters: 28,
      senders: { ...toOne, D: 'none', H: 'none' },
    },
  ];
}

function individual(
  kind: ComposedKind,
  categories: readonly Category[],
  telecommands: readonly FirstTelecommand[],
  end: EndOfSequence,
  tables: string,
): Composition {
  return {
    kind,
    format: 'individual',
    categories,
    telecommands,
    order: ['format', 'address', ...CHANNEL_TAIL],
    end,
    characters: 21,
    clause: `ITU-R M.493-15 Annex 1 table ${tables}`,
    senders: kind.startsWith('polling')
      ? { A: 'required', D: 'optional', H: 'optional', M: 'none', coast: 'required' }
      : EVERYONE,
  };
}
