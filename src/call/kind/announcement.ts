import type {
  AllShipsCall,
  AreaCall,
  GroupCall,
  IndividualAcknowledgement,
  IndividualCall,
} from '../call.ts';
import { addressFields } from '../element/address-symbols.ts';
import { channelFields, readChannel } from '../element/channel-symbols.ts';
import { identityOf } from '../element/identity-symbols.ts';
import { readName, readTelecommand, writeName, writeTelecommand } from '../element/name-symbols.ts';
import { areaOf } from '../element/place-symbols.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { categories, firstTelecommands, secondTelecommands } from '../symbol.ts';
import { readSender, senderFields } from './sender.ts';

/** The calls that announce traffic: ITU-R M.493 tables A1-4.5 to A1-4.9. */
export type AnnouncementCall =
  | AllShipsCall
  | AreaCall
  | GroupCall
  | IndividualCall
  | IndividualAcknowledgement;

/** Reads the fields of an announcing call of a known kind. */
export function readAnnouncement(kind: AnnouncementCall['kind'], fields: CallFields): AnnouncementCall {
  const sender = readSender(fields);
  const content = {
    category: readName(categories, fields.category),
    communication: readTelecommand(firstTelecommands, fields.telecommand1),
    remark: readTelecommand(secondTelecommands, fields.telecommand2),
    ...readChannel(fields.receive, fields.transmit),
  };
  switch (kind) {
    case 'all-ships-call':
      return { kind, to: { kind: 'all-ships' }, ...sender, ...content };
    case 'area-call':
      return { kind, to: { kind: 'area', area: areaOf(fields.address) }, ...sender, ...content };
    case 'group-call':
      return { kind, to: { kind: 'group', mmsi: identityOf(fields.address) }, ...sender, ...content };
    case 'individual-call':
    case 'individual-acknowledgement':
      return { kind, to: { kind: 'station', mmsi: identityOf(fields.address) }, ...sender, ...content };
  }
}

/** The fields of an announcing call. */
export function announcementFields(call: AnnouncementCall): CallFields {
  return {
    ...emptyFields,
    ...addressFields(call.to),
    ...senderFields(call),
    category: writeName(categories, call.category),
    telecommand1: writeTelecommand(firstTelecommands, call.communication),
    telecommand2: writeTelecommand(secondTelecommands, call.remark),
    // deviation: D-call-8
    ...channelFields(call, call.to.kind === 'station' ? 'repeated' : 'no-information'),
    end: endOf(call.kind),
  };
}

function endOf(kind: AnnouncementCall['kind']): number {
  if (kind === 'individual-call') return 117;
  return kind === 'individual-acknowledgement' ? 122 : 127;
}
