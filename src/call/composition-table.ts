import type { ComposedKind, Composition } from './composition.ts';
import type { Category, EndOfSequence, FirstTelecommand, FormatSpecifier } from './symbol.ts';

type Order = Composition['order'];
type Senders = Composition['senders'];
type Row = readonly [
  kind: ComposedKind,
  format: FormatSpecifier,
  table: string,
  message: Order,
  characters: number,
  end: 117 | 122 | 127,
  categories: readonly Category[],
  telecommands: readonly FirstTelecommand[],
  senders: Senders,
];

// What follows the format specifier and the address.
const ALERT: Order = ['self', 'nature', 'position', 'time', 'subsequent'];
const ABOUT: Order = [
  'category',
  'self',
  'telecommand1',
  'distressed',
  'nature',
  'position',
  'time',
  'subsequent',
];
const CHANNEL: Order = ['category', 'self', 'telecommand1', 'telecommand2', 'receive', 'transmit'];
const PLACE: Order = ['category', 'self', 'telecommand1', 'telecommand2', 'header', 'position', 'time'];
const DIAL: Order = ['category', 'self', 'telecommand1', 'telecommand2', 'receive', 'telephone'];

const VOICE = ['telephony-simplex', 'telephony-duplex', 'telephony-j3e'] as const;
const TRAFFIC = [
  'telephony-simplex',
  'telephony-duplex',
  'telephony-j3e',
  'data',
  'teleprinter-fec',
  'teleprinter-arq',
] as const;
const SERVICE = [
  'telephony-simplex',
  'telephony-duplex',
  'telephony-j3e',
  'data',
  'unable-to-comply',
  'end-of-call',
] as const;
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

// biome-ignore format: one line a row, as the tables have it
const ROWS: readonly Row[] = [
  ['distress-alert', 'distress', 'A1-4.1', ALERT, 16, 127, [], [], IN_DISTRESS],
  ['distress-acknowledgement', 'all-ships', 'A1-4.2', ABOUT, 23, 127, ['distress'], ACK, RESCUE],
  ['distress-self-cancel', 'all-ships', 'A1-4.2', ABOUT, 23, 127, ['distress'], ACK, IN_DISTRESS],
  // ITU-R M.493-16 §9: 117 asks for an acknowledgement, 122 gives one, 127 ends all other calls.
  ['distress-relay', 'individual', 'A1-4.3', ABOUT, 28, 117, ['distress'], RELAY, TELL_ONE],
  ['distress-relay', 'all-ships', 'A1-4.3', ABOUT, 23, 127, ['distress'], RELAY, RESCUE],
  ['distress-relay', 'area', 'A1-4.3', ABOUT, 28, 127, ['distress'], RELAY, RESCUE],
  ['distress-relay', 'group', 'A1-4.3', ABOUT, 28, 127, ['distress'], RELAY, TELL_GROUP],
  ['distress-relay-acknowledgement', 'individual', 'A1-4.4', ABOUT, 28, 122, ['distress'], RELAY, TOLD],
  ['distress-relay-acknowledgement', 'all-ships', 'A1-4.4', ABOUT, 23, 122, ['distress'], RELAY, RESCUE],
  ['distress-relay-acknowledgement', 'area', 'A1-4.4', ABOUT, 28, 122, ['distress'], RELAY, RESCUE],
  ['distress-relay-acknowledgement', 'group', 'A1-4.4', ABOUT, 28, 122, ['distress'], RELAY, TOLD],
  ['all-ships-call', 'all-ships', 'A1-4.5', CHANNEL, 16, 127, URGENT, VOICE, ALL],
  ['area-call', 'area', 'A1-4.6', CHANNEL, 21, 127, URGENT, TRAFFIC, FEW],
  ['group-call', 'group', 'A1-4.8', CHANNEL, 21, 127, ['routine'], TRAFFIC, ALL],
  ['individual-call', 'individual', 'A1-4.7 and A1-4.9', CHANNEL, 21, 117, ANY, TRAFFIC, ALL],
  ['individual-acknowledgement', 'individual', 'A1-4.7 and A1-4.9', CHANNEL, 21, 122, ANY, TRAFFIC, ALL],
  ['unable-to-comply', 'individual', 'A1-4.7 and A1-4.9', CHANNEL, 21, 122, ANY, ['unable-to-comply'], ALL],
  ['position-request', 'individual', 'A1-4.7', CHANNEL, 21, 117, ['safety'], ['ship-position'], ALL],
  ['position-reply', 'individual', 'A1-4.7', PLACE, 23, 122, ['safety'], ['ship-position'], ALL],
  ['test-call', 'individual', 'A1-4.7', CHANNEL, 21, 117, ['safety'], ['test'], ALL],
  ['test-acknowledgement', 'individual', 'A1-4.7', CHANNEL, 21, 122, ['safety'], ['test'], ALL],
  // deviation: D-call-5
  ['polling-call', 'individual', 'A1-4.9', CHANNEL, 21, 117, ['routine'], ['polling'], POLL],
  ['polling-acknowledgement', 'individual', 'A1-4.9', CHANNEL, 21, 122, ['routine'], ['polling'], POLL],
  // deviation: D-call-6
  ['automatic-service-call', 'automatic-service', 'A1-4.9', DIAL, 18, 117, ['routine'], SERVICE, FEW],
];

/**
 * Every kind of call, by format specifier. Area calls and relays to an area are practice of MF and HF.
 *
 * Source: ITU-R M.493-16 Annex 1 tables A1-4.1 to A1-4.9, from memory; order of alert, acknowledgement, relay and
 * urgency call: Japan, Radio Station Operation Regulations Art. 36-2; test call: Japan, MPT Notification 567 of
 * 1990 figure 5. The numbers of the tables follow M.493-16, which renumbered them. Who may send what is remembered with
 * little confidence.
 *
 * @see {@link compositionOf}
 * @see {@link fieldLengths}
 */
export const compositions: readonly Composition[] = /* @__PURE__ */ ROWS.map(
  ([kind, format, table, message, characters, end, categories, telecommands, senders]) => ({
    kind,
    format,
    categories,
    telecommands,
    order: hasAddress(format) ? ['format', 'address', ...message] : ['format', ...message],
    end: endName(end),
    characters,
    clause: `ITU-R M.493-16 Annex 1 ${table.includes(' and ') ? 'tables' : 'table'} ${table}`,
    senders,
  }),
);

function hasAddress(format: FormatSpecifier): boolean {
  return format !== 'distress' && format !== 'all-ships';
}

function endName(symbol: 117 | 122 | 127): EndOfSequence {
  return symbol === 117
    ? 'acknowledgement-requested'
    : symbol === 122
      ? 'acknowledgement'
      : 'end-of-sequence';
}
