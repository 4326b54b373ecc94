import type { UnableToComply } from '../call.ts';
import { addressFields } from '../element/address-symbols.ts';
import { channelFields, readChannel } from '../element/channel-symbols.ts';
import { identityOf } from '../element/identity-symbols.ts';
import { readName, readTelecommand, writeName, writeTelecommand } from '../element/name-symbols.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { categories, secondTelecommands } from '../symbol.ts';
import { readSender, senderFields } from './sender.ts';

/** Reads an answer "unable to comply"; an older set repeats the channel that was proposed. */
export function readUnableToComply(fields: CallFields): UnableToComply {
  return {
    kind: 'unable-to-comply',
    to: { kind: 'station', mmsi: identityOf(fields.address) },
    ...readSender(fields),
    category: readName(categories, fields.category),
    reason: readTelecommand(secondTelecommands, fields.telecommand2),
    ...readChannel(fields.receive, fields.transmit),
  };
}

/** The fields of an answer "unable to comply"; both elements say nothing unless it names a channel. */
export function unableToComplyFields(call: UnableToComply): CallFields {
  return {
    ...emptyFields,
    ...addressFields(call.to),
    ...senderFields(call),
    category: writeName(categories, call.category),
    telecommand1: 104,
    telecommand2: writeTelecommand(secondTelecommands, call.reason),
    // deviation: D-call-9
    ...channelFields(call, 'repeated'),
    end: 122,
  };
}
