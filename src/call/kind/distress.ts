import type {
  DistressAcknowledgement,
  DistressAlert,
  DistressRelay,
  DistressRelayAcknowledgement,
  DistressSelfCancel,
} from '../call.ts';
import { addressFields, relayAddressOf } from '../element/address-symbols.ts';
import { identityOf, identitySymbols, UNKNOWN_SHIP } from '../element/identity-symbols.ts';
import { readName, readTelecommand, writeName, writeTelecommand } from '../element/name-symbols.ts';
import { positionSymbols, timeOf, timeSymbols } from '../element/place-symbols.ts';
import { type CallFields, emptyFields } from '../fields.ts';
import { firstTelecommands, natures } from '../symbol.ts';
import { readPosition, readSender, senderFields } from './sender.ts';

/** The calls of ITU-R M.493 tables A1-4.1 to A1-4.4. */
export type DistressCall =
  | DistressAlert
  | DistressAcknowledgement
  | DistressSelfCancel
  | DistressRelay
  | DistressRelayAcknowledgement;

/** Reads the fields of a distress call of a known kind. */
export function readDistress(kind: DistressCall['kind'], fields: CallFields): DistressCall {
  const sender = readSender(fields);
  const details = {
    nature: readName(natures, fields.nature),
    position: readPosition(fields),
    time: timeOf(fields.time),
    subsequent: readTelecommand(firstTelecommands, fields.subsequent),
  };
  const distressed = identityOf(fields.distressed);
  switch (kind) {
    case 'distress-alert':
      return { kind, to: { kind: 'all-stations' }, ...sender, ...details };
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
      return { kind, to: { kind: 'all-ships' }, ...sender, distressed, ...details };
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
      return { kind, to: relayAddressOf(fields), ...sender, distressed, ...details };
  }
}

/** The fields of a distress call, in the composition of its table. */
export function distressFields(call: DistressCall): CallFields {
  const details: CallFields = {
    ...emptyFields,
    ...addressFields(call.to),
    ...senderFields(call, call.position),
    nature: writeName(natures, call.nature),
    position: positionSymbols(call.position),
    time: timeSymbols(call.time),
    subsequent: writeTelecommand(firstTelecommands, call.subsequent),
  };
  switch (call.kind) {
    case 'distress-alert':
      return { ...details, end: 127 };
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
      return { ...details, ...aboutShip(call.distressed), telecommand1: 110, end: 127 };
    case 'distress-relay':
      // ITU-R M.493-16 §9.
      return {
        ...details,
        ...aboutShip(call.distressed),
        telecommand1: 112,
        end: call.to.kind === 'station' ? 117 : 127,
      };
    case 'distress-relay-acknowledgement':
      return { ...details, ...aboutShip(call.distressed), telecommand1: 112, end: 122 };
  }
}

function aboutShip(distressed: string | null): Pick<CallFields, 'category' | 'distressed'> {
  return { category: 112, distressed: identitySymbols(distressed) ?? UNKNOWN_SHIP };
}
