import { channelNamedBy } from '../../channel/internal.ts';
import type { GeographicArea, ReportedPosition, TimeOfDay } from '../../position/index.ts';
import { formatReportedPosition } from '../../position/internal.ts';
import type { Call, CallAddress, DistressCall } from '../call.ts';
import { isMooredVesselAlarm } from '../element/moored-vessel.ts';
import { type Lack, placeLack, timeLack } from '../element/place-symbols.ts';
import { ATIS_FORMAT } from '../symbol.ts';
import { callTerms, categoryTerms } from '../terms.ts';
import { inWords, secondTelecommandInWords } from './in-words.ts';

/** How a station is named. */
export type NameOf = (mmsi: string | null) => string;

/** How a channel is named, by the digits of a call. */
export type ChannelOf = (channel: string) => string;

/** A call in one sentence. */
export function sentenceOf(call: Call, nameOf: NameOf, channelOf: ChannelOf): string {
  const from = nameOf(call.from);
  const to = call.to === null ? 'an unnamed station' : addressWords(call.to, nameOf);
  switch (call.kind) {
    case 'distress-alert':
      return `Distress alert from ${from}: ${distressWords(call)}`;
    case 'distress-acknowledgement':
      return `Distress acknowledgement from ${from} of the alert of ${vessel(call.distressed, nameOf)}: ${distressWords(call)}`;
    case 'distress-self-cancel':
      return `Distress alert cancelled by its sender, ${from}: ${distressWords(call)}`;
    case 'distress-relay':
      return `Distress relay from ${from} to ${to} for ${vessel(call.distressed, nameOf)}: ${distressWords(call)}`;
    case 'distress-relay-acknowledgement':
      return `Distress relay acknowledged by ${from} to ${to}, for ${vessel(call.distressed, nameOf)}: ${distressWords(call)}`;
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
      if (isMooredVesselAlarm(call)) {
        return `Possible automatic alarm of a moored vessel, ${from}, to ${to}: danger not stated`;
      }
      return `${opening(call)} from ${from} to ${to}: ${invitation(call, channelOf)}`;
    case 'individual-acknowledgement':
      return `Answer from ${from} to ${to}: able to comply, ${invitation(call, channelOf)}`;
    case 'unable-to-comply':
      return `Answer from ${from} to ${to}: unable to comply, ${call.reason === null ? 'reason not stated' : secondTelecommandInWords(call.reason)}`;
    case 'position-request':
      return `Position request from ${from} to ${to}`;
    case 'position-reply':
      return `Position of ${from}, ${call.unsolicited ? 'sent unsolicited' : 'in reply'} to ${to}: ${placeAndTime(call)}`;
    case 'test-call':
      return `Test call from ${from} to ${to}`;
    case 'test-acknowledgement':
      return `Test call of ${to} answered by ${from}`;
    case 'polling-call':
      return `Polling call from ${from} to ${to}: are you in range`;
    case 'polling-acknowledgement':
      return `Polling of ${to} answered by ${from}: in range`;
    case 'automatic-service-call':
      return `Telephone-service ${call.end === 'request' ? 'call' : call.end === 'answer' ? 'answer' : 'end'} from ${from} to ${to}: ${call.telephone === null ? 'no number' : `number ${call.telephone}`}`;
    case 'unrecognised-call':
      if (call.asReceived.format === ATIS_FORMAT)
        return 'Identification of a vessel on inland waters (ATIS), not a call';
      return `Unrecognised call, from ${from} to ${to}`;
  }
}

/** Whom a call is for. */
export function addressWords(address: CallAddress, nameOf: NameOf): string {
  switch (address.kind) {
    case 'station':
      return nameOf(address.mmsi);
    case 'group':
      return address.mmsi === null ? 'an unnamed group' : `group ${nameOf(address.mmsi)}`;
    case 'area':
      return `ships ${areaWords(address.area)}`;
    case 'all-ships':
      return 'all ships';
    case 'all-stations':
      return 'all stations';
  }
}

/** A rectangle. */
export function areaWords(area: GeographicArea | null): string {
  if (area === null) return 'in an unknown area';
  const { north, west, southward, eastward } = area;
  const corner = `${pad(north.degrees, 2)}° ${north.hemisphere} ${pad(west.degrees, 3)}° ${west.hemisphere}`;
  return `in the area from ${corner}, ${southward}° southward and ${eastward}° eastward`;
}

/** A position, no finer than it came. */
export function placeWords(position: ReportedPosition | null, lack: Lack): string {
  return position === null ? `position ${LACKING[lack]}` : formatReportedPosition(position);
}

/** A time of day. */
export function timeWords(time: TimeOfDay | null, lack: Lack): string {
  return time === null ? `time ${LACKING[lack]}` : `${pad(time.hour, 2)}:${pad(time.minute, 2)} UTC`;
}

const LACKING: Readonly<Record<Lack, string>> = {
  'not-given': 'not known',
  'not-read': 'could not be read',
  impossible: 'received is impossible',
};

function placeAndTime(call: DistressCall | Call<'position-reply'>): string {
  return `${placeWords(call.position, placeLack(call))}, ${timeWords(call.time, timeLack(call))}`;
}

function vessel(mmsi: string | null, nameOf: NameOf): string {
  return mmsi === null ? 'an unidentified vessel' : nameOf(mmsi);
}

function distressWords(call: DistressCall): string {
  const nature = call.nature === null ? 'nature not known' : inWords(callTerms, 'nature', call.nature);
  return `${nature}, ${placeAndTime(call)}`;
}

function opening(
  call: Call<
    'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
  >,
): string {
  if (call.category === null) return 'Call';
  const word = inWords(categoryTerms, 'category', call.category);
  return `${word.charAt(0).toUpperCase()}${word.slice(1)} call`;
}

function invitation(
  call: Call<
    'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
  >,
  channelOf: ChannelOf,
): string {
  const parts = [where(call, channelOf)];
  const spoken = call.firstTelecommand?.startsWith('telephony') === true;
  if (call.firstTelecommand !== null && !spoken)
    parts.push(inWords(callTerms, 'first-telecommand', call.firstTelecommand));
  if (call.secondTelecommand !== null) parts.push(secondTelecommandInWords(call.secondTelecommand));
  return parts.join(', ');
}

function where(
  {
    channel,
    frequencies,
  }: Call<'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'>,
  channelOf: ChannelOf,
): string {
  if (channel !== null) return `channel ${channelOf(channel)}`;
  if (frequencies === undefined) return 'no channel named';
  const { receive, transmit } = frequencies;
  const channels = [receive, transmit].map((digits) => (digits === null ? null : channelNamedBy(digits)));
  if (channels.every((each) => each === null))
    return `frequency digits ${receive ?? 'none'} and ${transmit ?? 'none'}`;
  const [first, second] = channels.map((each) => (each === null ? null : channelOf(each)));
  if (first != null && second != null) return `channels ${first} and ${second}`;
  return `${elementSaid(first, receive)} and ${elementSaid(second, transmit)}`;
}

function elementSaid(channel: string | null | undefined, digits: string | null): string {
  if (channel != null) return `channel ${channel}`;
  return digits === null ? 'no channel' : `frequency digits ${digits}`;
}

function pad(value: number, length: number): string {
  return String(value).padStart(length, '0');
}
