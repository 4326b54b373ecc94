import {
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  neverAssignable,
  parseDesignator,
  type WorkingPurpose,
} from '../../channel/index.ts';
import { frequencyOf } from '../../channel/internal.ts';
import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { isNumbered } from '../element/channel-symbols.ts';
import { isAshore, stationIdentity } from '../element/station-identity.ts';

/** Whether the channel that a call names is one to talk on. */
export function channelNotices(call: Call, plan: ChannelPlan | undefined): Notice[] {
  if (!announces(call)) return [];
  const purpose = purposeOf(call);
  if (call.channel === null) return noneNamed(call, purpose);
  // Digits that name no channel are told of the field they stand in.
  if (!isNumbered(call.channel)) return [];
  if (plan === undefined) return withoutPlan(call.channel, purpose);
  const found = findChannel(plan, call.channel);
  const notices = found.ok ? checkWorkingChannel(found.value, purpose) : found.issues;
  const remaining = isAshore(call.from) ? notices.filter(({ code }) => !LEFT_TO_COAST.has(code)) : notices;
  return remaining.map((notice) => ({ ...notice, at: ['channel', ...notice.at] }));
}

/** A coast station names the channels of its own waters: what a ship should mind in proposing one is not held up to it. */
const LEFT_TO_COAST: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'channel-restricted',
  'channel-caution',
  'channel-regional',
  'channel-coast-names-it',
  'channel-other-use',
  'channel-reserved',
]);

function announces(
  call: Call,
): call is Call<
  'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
> {
  return 'secondTelecommand' in call && call.kind !== 'automatic-service-call';
}

function purposeOf(
  call: Call<
    'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
  >,
): WorkingPurpose {
  if (call.category === 'safety' || call.category === 'urgency' || call.category === 'distress')
    return 'safety';
  const stations = [call.from, call.to.kind === 'station' ? call.to.mmsi : null];
  const ashore = stations.some((mmsi) => stationIdentity(mmsi)?.kind.startsWith('coast'));
  return ashore ? 'ship-to-coast' : 'intership-non-commercial';
}

function noneNamed(
  call: Call<
    'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
  >,
  purpose: WorkingPurpose,
): Notice[] {
  const spoken =
    call.firstTelecommand === 'telephony-simplex' || call.firstTelecommand === 'telephony-duplex';
  if (!spoken || call.frequencies !== undefined) return [];
  if (purpose === 'ship-to-coast' && call.kind === 'individual-call') return [];
  return [
    {
      code: 'call-channel-none',
      message: 'Channel: expected a working channel, got none; only a call to a coast station may omit it',
      at: ['channel'],
      clause: 'ITU-R M.541-11 Annex 3, unverified',
    },
  ];
}

/** What holds on every coast. */
function withoutPlan(channel: string, purpose: WorkingPurpose): Notice[] {
  if (channel === '70') {
    return [
      {
        code: 'call-channel-70',
        message: 'Channel: 70 carries DSC only, never speech',
        at: ['channel'],
        received: channel,
        clause: 'Radio Regulations Appendix 18 note j)',
      },
    ];
  }
  if (channel === '16' && purpose !== 'safety') {
    return [
      {
        code: 'call-channel-16-routine',
        message:
          'Channel: 16 is for distress, safety and calling; propose a working channel in a routine call',
        at: ['channel'],
        received: channel,
        clause: 'Radio Regulations Art. 52 and Appendix 18, unverified',
      },
    ];
  }
  const bar = neverAssignable(channel, purpose);
  if (bar !== null) return [{ ...bar, at: ['channel', ...bar.at] }];
  const designator = parseDesignator(channel);
  const sides = designator.ok ? frequencyOf(designator.value) : null;
  if (sides?.mode !== 'duplex' || purpose !== 'intership-non-commercial') return [];
  return [
    {
      code: 'call-channel-two-frequency',
      message: `Channel: ${channel} has two frequencies: two ships on it cannot hear each other`,
      at: ['channel'],
      received: channel,
      clause: 'Radio Regulations Appendix 18',
    },
  ];
}
