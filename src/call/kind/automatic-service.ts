import type { AutomaticServiceCall } from '../call.ts';
import { channelFields, readChannel } from '../element/channel-symbols.ts';
import { identityOf, identitySymbols } from '../element/identity-symbols.ts';
import { readName, readTelecommand, writeName, writeTelecommand } from '../element/name-symbols.ts';
import { telephoneOf, telephoneSymbols } from '../element/telephone-number.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { categories, firstTelecommands, secondTelecommands } from '../symbol.ts';
import { readSender, senderFields } from './sender.ts';

/** Reads a call of the semi-automatic or automatic telephone service. */
export function readAutomaticService(fields: CallFields): AutomaticServiceCall {
  return {
    kind: 'automatic-service-call',
    to: { kind: 'station', mmsi: identityOf(fields.address) },
    ...readSender(fields),
    category: readName(categories, fields.category),
    communication: readTelecommand(firstTelecommands, fields.telecommand1),
    remark: readTelecommand(secondTelecommands, fields.telecommand2),
    ...readChannel(fields.receive, fields.transmit),
    telephone: telephoneOf(fields.telephone),
    end: fields.end === 122 ? 'answer' : fields.end === 127 ? 'end' : 'request',
  };
}

/** The fields of a call of the telephone service: one channel element, then the number. */
export function automaticServiceFields(call: AutomaticServiceCall): CallFields {
  return {
    ...emptyFields,
    format: 123,
    address: identitySymbols(call.to.mmsi),
    ...senderFields(call),
    category: writeName(categories, call.category),
    telecommand1: writeTelecommand(firstTelecommands, call.communication),
    telecommand2: writeTelecommand(secondTelecommands, call.remark),
    // deviation: D-call-6
    receive: channelFields(call, 'no-information').receive,
    telephone: telephoneSymbols(call.telephone),
    end: endSymbol(call.end),
  };
}

function endSymbol(end: AutomaticServiceCall['end']): number {
  switch (end) {
    case 'request':
      return 117;
    case 'answer':
      return 122;
    case 'end':
      return 127;
    default:
      throw new RangeError(`end: one of request, answer, end is needed, not '${end}'`);
  }
}
