import type { PositionReply } from '../call.ts';
import { addressFields } from '../element/address-symbols.ts';
import { identityOf } from '../element/identity-symbols.ts';
import { readName, writeName } from '../element/name-symbols.ts';
import { positionSymbols, timeOf, timeSymbols } from '../element/place-symbols.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { categories, NO_INFORMATION } from '../symbol.ts';
import { readPosition, readSender, senderFields } from './sender.ts';

/** Reads a position report, with or without the header symbol, asked for or not. */
export function readPositionReply(fields: CallFields): PositionReply {
  return {
    kind: 'position-reply',
    to: { kind: 'station', mmsi: identityOf(fields.address) },
    ...readSender(fields),
    category: readName(categories, fields.category),
    position: readPosition(fields),
    time: timeOf(fields.time),
    unasked: fields.end !== 122,
  };
}

/** The fields of a position report; one that nobody asked for ends like a call that wants no answer. */
export function positionReplyFields(call: PositionReply): CallFields {
  return {
    ...emptyFields,
    ...addressFields(call.to),
    ...senderFields(call, call.position),
    category: writeName(categories, call.category),
    telecommand1: 121,
    telecommand2: NO_INFORMATION,
    // deviation: D-call-10
    header: true,
    position: positionSymbols(call.position),
    time: timeSymbols(call.time),
    end: call.unasked ? 127 : 122,
  };
}
