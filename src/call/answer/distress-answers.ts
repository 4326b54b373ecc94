import { type Identity, usesOf } from '../../identity/index.ts';
import type { Call } from '../call.ts';
import { composeDistressAcknowledgement, composeDistressRelayAcknowledgement } from '../compose/distress.ts';
import { stationIdentity } from '../element/identity-symbols.ts';
import { type AnsweringStation, answer, type LawfulAnswers, none, some } from './lawful-answers.ts';

/** Who may acknowledge an alert by DSC: 47 CFR 80.103(c), 80.1117(a), 80.1121. */
export function answersToAlert(
  call: Call<'distress-alert'>,
  { own, designated = false }: AnsweringStation,
  ashore: boolean,
): LawfulAnswers {
  if (!ashore) {
    return none('call-no-answer-ship-alert', 'RR 2024 No. 32.16; 47 CFR 80.1117(a), 80.1121(b)');
  }
  if (!designated) return none('call-no-answer-designated', '47 CFR 80.103(c), 80.1119(a)');
  if (!canBeInDistress(call.from)) {
    return none('call-no-answer-alert-sender', 'ITU-R M.493-16 table A1-4.2');
  }
  const acknowledgement = composeDistressAcknowledgement({ from: own, about: call });
  return some(answer('distress-acknowledgement', 'call-answer-alert', {}, acknowledgement));
}

/** Who may acknowledge a relay by DSC: the station it is addressed to, or a designated coast station. */
export function answersToRelay(
  call: Call<'distress-relay'>,
  { own, designated = false }: AnsweringStation,
  ashore: boolean,
): LawfulAnswers {
  if (call.to.kind !== 'station' && !(ashore && designated)) {
    return ashore
      ? none('call-no-answer-designated', '47 CFR 80.103(c), 80.1119(a)')
      : none('call-no-answer-ship-relay', 'ITU-R M.541-11 Annex 3 §1.5 and §1.6');
  }
  const sender = stationIdentity(call.from);
  if (
    sender === undefined ||
    !canBeToldOfReceipt(sender) ||
    !(call.distressed === null || canBeInDistress(call.distressed))
  ) {
    return none('call-no-answer-relay-sender', 'ITU-R M.493-16 table A1-4.4');
  }
  const acknowledgement = composeDistressRelayAcknowledgement({ from: own, about: call });
  return some(answer('relay-acknowledgement', 'call-answer-relay', {}, acknowledgement));
}

// A man-overboard device alerts its own ship by a relay, which can be acknowledged: ITU-R M.493-16, class M, from memory.
function canBeToldOfReceipt(sender: Identity): boolean {
  return usesOf(sender).individual || sender.kind === 'mob';
}

function canBeInDistress(mmsi: string | null): boolean {
  const identity = stationIdentity(mmsi);
  return identity !== undefined && usesOf(identity).own && identity.kind !== 'coast';
}
