import { classify } from '../../identity/classify.ts';
import { usesOf } from '../../identity/uses.ts';
import { formatReportedPosition, type ReportedPosition } from '../../position/reported-position.ts';
import type { TimeOfDay } from '../../position/time.ts';
import type {
  AutomaticServiceCall,
  Call,
  DistressAlert,
  DistressRelay,
  IndividualCall,
  PositionRequest,
  UnrecognisedCall,
} from '../call.ts';
import {
  composeIndividualAcknowledgement,
  composePollingAcknowledgement,
  composePositionReply,
  composeTestAcknowledgement,
  composeUnableToComply,
} from '../compose/answer.ts';
import { ownIdentity, stationAddress } from '../compose/arguments.ts';
import { composeDistressAcknowledgement, composeDistressRelayAcknowledgement } from '../compose/distress.ts';
import { compositionOf } from '../composition.ts';
import { reasonWords } from '../describe/words.ts';
import { reasons } from '../symbol.ts';

/** Own station, for its answers. */
export interface AnsweringStation {
  /** Own identity, nine digits. */
  readonly own: string;
  /** Own position, when a position may be given. */
  readonly position?: ReportedPosition | null | undefined;
  /** UTC of the position. */
  readonly time?: TimeOfDay | null | undefined;
  /** Other channels to offer, best first, e.g. from `workingChannels`. */
  readonly channels?: readonly string[] | undefined;
}

/** What an answer says. */
export type AnswerMeaning =
  | 'able'
  | 'able-on-another-channel'
  | 'unable'
  | 'position'
  | 'test'
  | 'polling'
  | 'distress-acknowledgement'
  | 'relay-acknowledgement';

/** One lawful answer, ready to send. */
export interface LawfulAnswer {
  readonly meaning: AnswerMeaning;
  /** For people, e.g. `'Able, on channel 72'`. */
  readonly label: string;
  readonly call: Call;
  readonly clause: string;
}

/** Why a call is not answered by a selective call, and what is done instead. */
export interface NoAnswer {
  readonly reason: string;
  readonly clause: string;
}

/** The answers to a call; when there are none, `none` says why. */
export interface LawfulAnswers {
  readonly answers: readonly LawfulAnswer[];
  readonly none: NoAnswer | null;
}

/**
 * Every lawful answer to a call by selective calling, ready to send; or why there is none and what is done instead.
 * Which answers a set may send by itself is another matter: position, test and polling where the owner allows it,
 * never one of a distress.
 *
 * @param call - the call received
 * @param station - own identity; position and time for a position reply; other channels to offer
 * @returns the answers in the order a person would choose from, and the reason when there are none. Throws nothing
 * for any call received.
 * @throws RangeError when `own` cannot be a station's own identity or a channel to offer has no digits
 *
 * Source: ITU-R M.493-15 tables 4.2 to 4.9, from memory; distress: 47 CFR 80.1117(a), 80.1121.
 *
 * @example
 * ```ts
 * import { answersTo, composeIndividualCall } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * const { answers } = answersTo(call, { own: '232999142', channels: ['77'] });
 * console.log(answers.length); // 12
 * console.log(answers[0]?.label); // Able, on channel 72
 * console.log(answers[1]?.label); // Able, on channel 77 instead
 * ```
 */
export function answersTo(call: Call, station: AnsweringStation): LawfulAnswers {
  const { own } = station;
  if (call.to?.kind === 'station' && call.to.mmsi !== null && call.to.mmsi !== own) {
    return none('the call is for another station', 'ITU-R M.493-15 Annex 1, address');
  }
  const ashore = classify(own)?.kind === 'coast';
  if (call.kind === 'distress-alert') return toAlert(call, own, ashore);
  switch (call.kind) {
    case 'distress-relay':
      return toRelay(call, own, ashore);
    case 'individual-call':
      return toSender(call, () => [...able(call, station), ...unable(call, own)]);
    case 'position-request':
      return toSender(call, () => [position(call, station), ...unable(call, own)]);
    case 'test-call':
      return toSender(call, () => [
        answer('test', 'Test received', composeTestAcknowledgement({ call, from: own })),
      ]);
    case 'polling-call':
      return toSender(call, () => [
        answer('polling', 'In range', composePollingAcknowledgement({ call, from: own })),
      ]);
    case 'automatic-service-call':
      return call.end === 'request'
        ? toSender(call, () => telephone(call, own))
        : none('the call is itself an answer', 'ITU-R M.493-15 table 4.10, from memory');
    default:
      return unanswered(call.kind);
  }
}

function toSender(call: Call, answers: () => readonly LawfulAnswer[]): LawfulAnswers {
  const sender = call.from === null ? undefined : classify(call.from);
  if (sender === undefined || !usesOf(sender).individual) {
    return none('the call does not say which station sent it', 'ITU-R M.493-15 Annex 1, self-identification');
  }
  return { answers: answers(), none: null };
}

function able(call: IndividualCall, station: AnsweringStation): LawfulAnswer[] {
  const from = station.own;
  const same = answer('able', onChannel('Able', call), composeIndividualAcknowledgement({ call, from }));
  const others = (station.channels ?? [])
    .map((channel) => composeIndividualAcknowledgement({ call, from, channel }))
    .filter((other) => other.channel !== call.channel)
    .map((other) => answer('able-on-another-channel', `${onChannel('Able', other)} instead`, other));
  return [same, ...others];
}

function unable(call: IndividualCall | PositionRequest, from: string): LawfulAnswer[] {
  return reasons.rows.map(([, reason]) =>
    answer('unable', `Unable: ${reasonWords[reason]}`, composeUnableToComply({ call, from, reason })),
  );
}

function position(call: PositionRequest, station: AnsweringStation): LawfulAnswer {
  const { own: from, position: place = null, time = null } = station;
  const label = place === null ? 'Position: not known' : `Position: ${formatReportedPosition(place)}`;
  return answer('position', label, composePositionReply({ call, from, position: place, time }));
}

function telephone(call: AutomaticServiceCall, own: string): LawfulAnswer[] {
  const { asReceived: _, expansion: __, ...asked } = call;
  const back = {
    ...asked,
    to: stationAddress(call.from),
    from: ownIdentity(own),
    category: call.category ?? 'routine',
    end: 'answer',
  } as const;
  return [
    answer('able', onChannel('Able', call), back),
    ...reasons.rows.map(([, reason]) =>
      answer('unable', `Unable: ${reasonWords[reason]}`, {
        ...back,
        communication: 'unable-to-comply',
        remark: reason,
      }),
    ),
  ];
}

function toAlert(call: DistressAlert, own: string, ashore: boolean): LawfulAnswers {
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

function toRelay(call: DistressRelay, own: string, ashore: boolean): LawfulAnswers {
  if (!ashore && call.to.kind !== 'station') {
    return none(
      'a ship acknowledges a relay by voice on channel 16, to the station that sent it',
      'ITU-R M.541 Annex 3, from memory',
    );
  }
  const sender = call.from === null ? undefined : classify(call.from);
  if (
    sender === undefined ||
    !usesOf(sender).individual ||
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

function canBeInDistress(mmsi: string | null): boolean {
  const identity = mmsi === null ? undefined : classify(mmsi);
  return identity !== undefined && usesOf(identity).own && identity.kind !== 'coast';
}

function unanswered(kind: Call['kind']): LawfulAnswers {
  switch (kind) {
    case 'group-call':
    case 'all-ships-call':
    case 'area-call':
      return none(
        'a call to many is not answered by selective calling: listen on the channel it names',
        'ITU-R M.493-15 tables 4.5, 4.6 and 4.8, from memory',
      );
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay-acknowledgement':
      return none(
        'it ends an alert or relay and wants no answer: keep watch on channel 16',
        '47 CFR 80.1121',
      );
    case 'unrecognised-call':
      return none('the call was not understood', 'ITU-R M.493-15 Annex 1');
    default:
      return none('the call is itself an answer', 'ITU-R M.493-15 Annex 1, end of sequence');
  }
}

function onChannel(word: string, call: { readonly channel: string | null }): string {
  return call.channel === null ? word : `${word}, on channel ${call.channel}`;
}

function answer(meaning: AnswerMeaning, label: string, call: Exclude<Call, UnrecognisedCall>): LawfulAnswer {
  return { meaning, label, call, clause: `${compositionOf(call.kind)?.clause}, from memory` };
}

function some(...answers: readonly LawfulAnswer[]): LawfulAnswers {
  return { answers, none: null };
}

function none(reason: string, clause: string): LawfulAnswers {
  return { answers: [], none: { reason, clause } };
}
