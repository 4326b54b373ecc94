import { type Identity, usesOf } from '../../identity/index.ts';
import type { DistressAlert, DistressRelay } from '../call.ts';
import { composeDistressAcknowledgement, composeDistressRelayAcknowledgement } from '../compose/distress.ts';
import { stationIdentity } from '../element/station-identity.ts';
import { answer, type LawfulAnswers, none, some } from './lawful-answers.ts';

/** Who may acknowledge an alert: 47 CFR 80.1117(a), 80.1121. */
export function answersToAlert(call: DistressAlert, own: string, ashore: boolean): LawfulAnswers {
  if (!ashore) {
    return none(
      'only coast stations answer an alert by selective calling, since that stops its repeats: keep watch on channel 16, and if no coast station acknowledges within 5 minutes and you are near, acknowledge by voice and tell a coast station',
      '47 CFR 80.1117(a), 80.1121(b)',
    );
  }
  if (!canBeInDistress(call.from)) {
    return none('the alert does not say which vessel sent it', 'ITU-R M.493-15 table 4.2, from memory');
  }
  const acknowledgement = composeDistressAcknowledgement({ from: own, about: call });
  return some(answer('distress-acknowledgement', 'Acknowledge the alert', acknowledgement));
}

/** Who may acknowledge a relay: ITU-R M.541 Annex 3, from memory. */
export function answersToRelay(call: DistressRelay, own: string, ashore: boolean): LawfulAnswers {
  if (!ashore && call.to.kind !== 'station') {
    return none(
      'a ship acknowledges a relay by voice on channel 16, to the station that sent it',
      'ITU-R M.541 Annex 3, from memory',
    );
  }
  const sender = stationIdentity(call.from);
  if (
    sender === undefined ||
    !canBeToldOfReceipt(sender) ||
    !(call.distressed === null || canBeInDistress(call.distressed))
  ) {
    return none(
      'the relay does not say who sent it or which vessel it is about',
      'ITU-R M.493-15 table 4.4, from memory',
    );
  }
  const acknowledgement = composeDistressRelayAcknowledgement({ from: own, about: call });
  return some(answer('relay-acknowledgement', 'Acknowledge the relay', acknowledgement));
}

// A man-overboard device tells its own ship by a relay, and can be told that it was heard: ITU-R M.493-15, from memory.
function canBeToldOfReceipt(sender: Identity): boolean {
  return usesOf(sender).individual || sender.kind === 'mob';
}

function canBeInDistress(mmsi: string | null): boolean {
  const identity = stationIdentity(mmsi);
  return identity !== undefined && usesOf(identity).own && identity.kind !== 'coast';
}
