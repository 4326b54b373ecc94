import { type ChannelPlan, findChannel, neverAssignable } from '../../channel/index.ts';
import { isWorkingChannelAllowed } from '../../channel/internal.ts';
import { usesOf } from '../../identity/index.ts';
import { formatReportedPosition } from '../../position/internal.ts';
import { want } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { type ComposedCall, calls } from '../call-table.ts';
import {
  composeIndividualAcknowledgement,
  composePollingAcknowledgement,
  composePositionReply,
  composeTestAcknowledgement,
  composeUnableToComply,
} from '../compose/answer.ts';
import { ownIdentity, stationAddress } from '../compose/arguments.ts';
import { isMooredVesselAlarm } from '../element/announcement.ts';
import { channelName, isNumbered } from '../element/channel-symbols.ts';
import { isAshore, stationIdentity } from '../element/identity-symbols.ts';
import { type Reason, reasons } from '../symbol.ts';
import { answersToAlert, answersToRelay } from './distress-answers.ts';
import {
  type AnsweringStation,
  answer,
  type LawfulAnswer,
  type LawfulAnswers,
  none,
  some,
} from './lawful-answers.ts';

/**
 * Every lawful DSC answer to a call, ready to send; or why there is none and what to do instead. Which of them a radio
 * may send automatically is another matter: position, test and polling where the owner allows it, never one about
 * distress.
 *
 * @param call - the call received
 * @param station - own identity and class of equipment, and whether a coast station is designated to acknowledge distress; position and time for a position reply; other channels to offer; the plan of the
 * waters, whose unfit channels are then left out and whose names the labels use
 * @returns the answers in the order a person would choose from, and the reason when there are none. Throws nothing
 * for any call received.
 * @throws TypeError without a call or a station; RangeError when `own` cannot be a station's own identity or a channel to offer has no digits
 *
 * Source: ITU-R M.493-16 tables A1-4.2 to A1-4.9; distress: 47 CFR 80.103(c), 80.1117(a), 80.1121.
 *
 * @see {@link describeCall}
 *
 * @example
 * ```ts
 * import { answersTo, composeIndividualCall } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * const { answers } = answersTo(call, { own: '232999142', channels: ['77'] });
 * console.log(answers.length); // 12
 * console.log(answers[0]?.label); // Able to comply, channel 72
 * console.log(answers[1]?.label); // Able to comply, channel 77 instead
 * ```
 */
export function answersTo(call: Call, station: AnsweringStation): LawfulAnswers {
  want('answersTo', 'a call', call, 'kind');
  want('answersTo', 'the answering station', station);
  const lawful = ofAnyClass(call, station);
  const isShipsRelay = call.kind === 'distress-relay' && !isAshore(station.own);
  const sender = station.equipmentClass ?? (isShipsRelay ? 'D' : undefined);
  if (sender === undefined) return lawful;
  const answers = lawful.answers.filter(
    (each) => calls.rowOf(each.call as ComposedCall).senders[sender] !== 'none',
  );
  if (answers.length > 0 || lawful.none !== null) return { answers, none: lawful.none };
  return call.kind === 'distress-relay'
    ? none('call-no-answer-class-relay', 'ITU-R M.493-16 table A1-4.4, unverified')
    : none('call-no-answer-class', 'ITU-R M.493-16, unverified');
}

function ofAnyClass(call: Call, station: AnsweringStation): LawfulAnswers {
  const { own } = station;
  if (call.from === own) {
    return none('call-no-answer-own', 'ITU-R M.493-16 Annex 1, self-identification');
  }
  if (call.to?.kind === 'station' && call.to.mmsi !== null && call.to.mmsi !== own) {
    return none('call-no-answer-other', 'ITU-R M.493-16 Annex 1, address');
  }
  const ashore = isAshore(own);
  switch (call.kind) {
    case 'distress-alert':
      return answersToAlert(call, station, ashore);
    case 'distress-relay':
      return answersToRelay(call, station, ashore);
    case 'individual-call':
      if (isMooredVesselAlarm(call)) {
        return none('call-no-answer-moored-vessel', '47 CFR 80.179(e)');
      }
      return toSender(call, () => [...able(call, station), ...unable(call, own)]);
    case 'position-request':
      return toSender(call, () => [position(call, station), ...unable(call, own)]);
    case 'test-call':
      return toSender(call, () => [
        answer('test', 'call-answer-test', {}, composeTestAcknowledgement({ call, from: own })),
      ]);
    case 'polling-call':
      return toSender(call, () => [
        answer('polling', 'call-answer-polling', {}, composePollingAcknowledgement({ call, from: own })),
      ]);
    case 'automatic-service-call':
      return call.end === 'request'
        ? toSender(call, () => telephone(call, station))
        : none('call-no-answer-is-answer', 'ITU-R M.493-16 table A1-4.9');
    default:
      return unanswered(call.kind);
  }
}

function toSender(call: Call, answers: () => readonly LawfulAnswer[]): LawfulAnswers {
  const sender = stationIdentity(call.from);
  if (sender === undefined || !usesOf(sender).individual) {
    return none('call-no-answer-sender', 'ITU-R M.493-16 Annex 1, self-identification');
  }
  return some(...answers());
}

function able(call: Call<'individual-call'>, station: AnsweringStation): LawfulAnswer[] {
  const from = station.own;
  const fits = (channel: string | null) => isFitChannel(channel, call, from, station.plan);
  const asAsked = answer(
    'able',
    'call-answer-able',
    onChannel(call, station),
    composeIndividualAcknowledgement({ call, from }),
  );
  const others = (station.channels ?? [])
    .map((channel) => composeIndividualAcknowledgement({ call, from, channel }))
    .filter((other) => other.channel !== call.channel && fits(other.channel))
    .map((other) =>
      answer('able-on-another-channel', 'call-answer-able-instead', onChannel(other, station), other),
    );
  return fits(call.channel) ? [asAsked, ...others] : others;
}

function unable(call: Call<'individual-call'> | Call<'position-request'>, from: string): LawfulAnswer[] {
  return reasons.rows.flatMap(([, reason]) =>
    call.kind === 'position-request' && OF_A_PROPOSAL.includes(reason)
      ? []
      : [answer('unable', 'call-answer-unable', { reason }, composeUnableToComply({ call, from, reason }))],
  );
}

// A request for a position proposes neither channel nor mode.
const OF_A_PROPOSAL: readonly Reason[] = ['channel-unusable', 'mode-unusable'];

function position(call: Call<'position-request'>, station: AnsweringStation): LawfulAnswer {
  const { own: from, position: place = null, time = null } = station;
  const reply = composePositionReply({ call, from, position: place, time });
  return place === null
    ? answer('position', 'call-answer-position-unknown', {}, reply)
    : answer('position', 'call-answer-position', { position: formatReportedPosition(place) }, reply);
}

function telephone(call: Call<'automatic-service-call'>, station: AnsweringStation): LawfulAnswer[] {
  const { asReceived: _, expansion: __, ...asked } = call;
  const back = {
    ...asked,
    to: stationAddress(call.from),
    from: ownIdentity(station.own),
    category: call.category ?? 'routine',
    end: 'answer',
  } as const;
  return [
    answer('able', 'call-answer-able', onChannel(call, station), back),
    ...reasons.rows.map(([, reason]) =>
      answer(
        'unable',
        'call-answer-unable',
        { reason },
        {
          ...back,
          firstTelecommand: 'unable-to-comply',
          secondTelecommand: reason,
        },
      ),
    ),
  ];
}

function unanswered(kind: Call['kind']): LawfulAnswers {
  switch (kind) {
    case 'group-call':
    case 'all-ships-call':
    case 'area-call':
      return none('call-no-answer-to-many', 'ITU-R M.493-16 tables A1-4.5, A1-4.6 and A1-4.8');
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay-acknowledgement':
      return none('call-no-answer-distress-end', '47 CFR 80.1121');
    case 'unrecognised-call':
      return none('call-no-answer-not-understood', 'ITU-R M.493-16 Annex 1');
    default:
      return none('call-no-answer-is-answer', 'ITU-R M.493-16 Annex 1, end of sequence');
  }
}

function onChannel(
  { channel }: { readonly channel: string | null },
  { plan }: AnsweringStation,
): { readonly channel?: string } {
  return channel === null ? {} : { channel: channelName(channel, plan) };
}

/** Whether the two stations of a call may talk on a channel, according to a plan. */
function isFitChannel(
  channel: string | null,
  call: Call<'individual-call'>,
  own: string,
  plan: ChannelPlan | undefined,
): boolean {
  if (channel === null) return true;
  // A coast station knows its own channels: ITU-R M.541-11 Annex 3, from memory. What carries no speech has none of them.
  const ashore = isAshore(own) || isAshore(call.from);
  const ordinary = call.category === 'routine' && !ashore;
  if (!isNumbered(channel)) return false;
  if (neverAssignable(channel, ordinary ? 'intership-non-commercial' : 'safety') !== null) return false;
  if (plan === undefined || ashore) return true;
  const found = findChannel(plan, channel);
  if (!found.ok) return false;
  const safety = call.category !== 'routine' && isWorkingChannelAllowed(found.value, 'safety');
  return safety || isWorkingChannelAllowed(found.value, 'intership-non-commercial');
}
