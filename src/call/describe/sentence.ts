import { channelNamedBy } from '../../channel/internal.ts';
import type { GeographicArea, ReportedPosition, TimeOfDay } from '../../position/index.ts';
import { formatReportedPosition } from '../../position/internal.ts';
import type { CodedText } from '../../result/index.ts';
import type { Call, CallAddress, DistressCall } from '../call.ts';
import { type Announcement, isMooredVesselAlarm } from '../element/announcement.ts';
import { type Lack, placeLack, timeLack } from '../element/place-symbols.ts';
import {
  ATIS_FORMAT,
  isReason,
  isUnknown,
  type Reason,
  type SecondTelecommand,
  type UnknownSymbol,
} from '../symbol.ts';
import { describing } from '../texts.ts';

/** A name, digits or a place as they are, or a text. */
export type Said = string | CodedText;

export type NameOf = (mmsi: string | null) => Said;

/** How a channel is named, by the digits of a call. */
export type ChannelOf = (channel: string) => string;

export function sentenceOf(call: Call, nameOf: NameOf, channelOf: ChannelOf): CodedText {
  const from = nameOf(call.from);
  const to = call.to === null ? nameOf(null) : addressWords(call.to, nameOf);
  const between = { from, to };
  switch (call.kind) {
    case 'distress-alert':
      return describing('call-is-alert', { from, ...distressWords(call) });
    case 'distress-acknowledgement':
      return describing('call-is-distress-acknowledgement', {
        from,
        vessel: vessel(call.distressed, nameOf),
        ...distressWords(call),
      });
    case 'distress-self-cancel':
      return describing('call-is-self-cancel', { from, ...distressWords(call) });
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
      return describing(call.kind === 'distress-relay' ? 'call-is-relay' : 'call-is-relay-acknowledgement', {
        ...between,
        vessel: vessel(call.distressed, nameOf),
        ...distressWords(call),
      });
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
      if (isMooredVesselAlarm(call)) return describing('call-is-moored-vessel-alarm', between);
      return describing('call-is-announcement', {
        opening: opening(call),
        ...between,
        ...invitation(call, channelOf),
      });
    case 'individual-acknowledgement':
      return describing('call-is-able', { ...between, ...invitation(call, channelOf) });
    case 'unable-to-comply':
      return call.reason === null
        ? describing('call-is-unable-unstated', between)
        : describing('call-is-unable', { ...between, ...second(call.reason) });
    case 'position-request':
      return describing('call-is-position-request', between);
    case 'position-reply':
      return describing(call.unsolicited ? 'call-is-position-report' : 'call-is-position-reply', {
        ...between,
        ...placeAndTime(call),
      });
    case 'test-call':
      return describing('call-is-test', between);
    case 'test-acknowledgement':
      return describing('call-is-test-acknowledgement', between);
    case 'polling-call':
      return describing('call-is-polling', between);
    case 'polling-acknowledgement':
      return describing('call-is-polling-acknowledgement', between);
    case 'automatic-service-call': {
      const { end: part, telephone } = call;
      return telephone === null
        ? describing('call-is-telephone-unnumbered', { part, ...between })
        : describing('call-is-telephone', { part, ...between, telephone });
    }
    case 'unrecognised-call':
      if (call.asReceived.format === ATIS_FORMAT) return describing('call-is-atis', {});
      return describing('call-is-unrecognised', between);
  }
}

export function addressWords(address: CallAddress, nameOf: NameOf): Said {
  switch (address.kind) {
    case 'station':
      return nameOf(address.mmsi);
    case 'group':
      return address.mmsi === null
        ? describing('call-unnamed-group', {})
        : describing('call-group', { group: nameOf(address.mmsi) });
    case 'area':
      return areaWords(address.area);
    case 'all-ships':
      return describing('call-all-ships', {});
    case 'all-stations':
      return describing('call-all-stations', {});
  }
}

/** The ships in a rectangle. */
function areaWords(area: GeographicArea | null): CodedText {
  if (area === null) return describing('call-unknown-area', {});
  const { north, west, southward, eastward } = area;
  const corner = `${pad(north.degrees, 2)}° ${north.hemisphere} ${pad(west.degrees, 3)}° ${west.hemisphere}`;
  return describing('call-area', { corner, southward, eastward });
}

/** A position, no finer than it came. */
export function placeWords(position: ReportedPosition | null, lack: Lack): Said {
  return position === null ? describing('call-place-lack', { lack }) : formatReportedPosition(position);
}

export function timeWords(time: TimeOfDay | null, lack: Lack): Said {
  return time === null
    ? describing('call-time-lack', { lack })
    : `${pad(time.hour, 2)}:${pad(time.minute, 2)} UTC`;
}

/** A name of a table, or the number of a symbol without one. */
export function named<Name extends string>(name: Name | UnknownSymbol): Name | CodedText {
  return isUnknown(name) ? describing('call-symbol', { symbol: numberOf(name) }) : name;
}

function numberOf(name: UnknownSymbol): number {
  return Number(name.replace('symbol-', ''));
}

function placeAndTime(call: DistressCall | Call<'position-reply'>) {
  return {
    place: placeWords(call.position, placeLack(call)),
    time: timeWords(call.time, timeLack(call)),
  };
}

function vessel(mmsi: string | null, nameOf: NameOf): Said {
  return mmsi === null ? describing('call-unidentified-vessel', {}) : nameOf(mmsi);
}

function distressWords(call: DistressCall) {
  const nature = call.nature === null ? describing('call-nature-unknown', {}) : named(call.nature);
  return { nature, ...placeAndTime(call) };
}

function opening({ category }: Announcement) {
  if (category === null) return 'none';
  return isUnknown(category) ? describing('call-symbol-opening', { symbol: numberOf(category) }) : category;
}

function invitation(call: Announcement, channelOf: ChannelOf) {
  const { firstTelecommand: first } = call;
  return {
    where: where(call, channelOf),
    ...(first !== null && !first.startsWith('telephony') && { how: named(first) }),
    ...second(call.secondTelecommand),
  };
}

/** A second telecommand, which may be a reason for being unable. */
function second(name: SecondTelecommand | UnknownSymbol | null) {
  if (name === null) return {};
  return isReason(name) ? { reason: name } : { remark: named<Exclude<SecondTelecommand, Reason>>(name) };
}

function where({ channel, frequencies }: Announcement, channelOf: ChannelOf): CodedText {
  if (channel !== null) return describing('call-where-channel', { channel: channelOf(channel) });
  if (frequencies === undefined) return describing('call-where-none', {});
  const { receive, transmit } = frequencies;
  const channels = [receive, transmit].map((digits) => digits && channelNamedBy(digits));
  if (channels.every((each) => each === null)) {
    const none = describing('call-no-digits', {});
    return describing('call-where-frequencies', { receive: receive ?? none, transmit: transmit ?? none });
  }
  const [one, other] = channels.map((each) => each && channelOf(each));
  if (one != null && other != null) return describing('call-where-channels', { first: one, second: other });
  return describing('call-where-both', {
    first: elementSaid(one, receive),
    second: elementSaid(other, transmit),
  });
}

function elementSaid(channel: string | null | undefined, digits: string | null): CodedText {
  if (channel != null) return describing('call-where-channel', { channel });
  return digits === null
    ? describing('call-element-none', {})
    : describing('call-element-digits', { digits });
}

function pad(value: number, length: number): string {
  return String(value).padStart(length, '0');
}
