import type {
  PollingAcknowledgement,
  PollingCall,
  PositionRequest,
  TestAcknowledgement,
  TestCall,
} from '../call.ts';
import { addressFields } from '../element/address-symbols.ts';
import { NO_CHANNEL } from '../element/channel-symbols.ts';
import { identityOf } from '../element/identity-symbols.ts';
import { readName, writeName } from '../element/name-symbols.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { categories, NO_INFORMATION } from '../symbol.ts';
import { readSender, senderFields } from './sender.ts';

/** The calls to one station that ask the set and not the person, and their plain answers. */
export type Enquiry = PositionRequest | TestCall | TestAcknowledgement | PollingCall | PollingAcknowledgement;

/** Reads the fields of an enquiry of a known kind. */
export function readEnquiry(kind: Enquiry['kind'], fields: CallFields): Enquiry {
  return {
    kind,
    to: { kind: 'station', mmsi: identityOf(fields.address) },
    ...readSender(fields),
    category: readName(categories, fields.category),
  };
}

/** The fields of an enquiry. */
export function enquiryFields(call: Enquiry): CallFields {
  return {
    ...emptyFields,
    ...addressFields(call.to),
    ...senderFields(call),
    category: writeName(categories, call.category),
    telecommand1: telecommandOf[call.kind],
    telecommand2: NO_INFORMATION,
    receive: NO_CHANNEL,
    transmit: NO_CHANNEL,
    end: call.kind.endsWith('acknowledgement') ? 122 : 117,
  };
}

const telecommandOf: Readonly<Record<Enquiry['kind'], number>> = {
  'position-request': 121,
  'test-call': 118,
  'test-acknowledgement': 118,
  'polling-call': 103,
  'polling-acknowledgement': 103,
};
