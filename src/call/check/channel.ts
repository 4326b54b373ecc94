import {
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  neverAssignable,
  parseDesignator,
  planText,
  type WorkingPurpose,
} from '../../channel/index.ts';
import { frequencyOf } from '../../channel/internal.ts';
import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { type Announcement, announces, unnamedChannelNotices } from '../element/announcement.ts';
import { isNumbered } from '../element/channel-symbols.ts';
import { isAshore, stationIdentity } from '../element/identity-symbols.ts';
import { isDistressCall } from '../kinds.ts';
import { checkNotice } from '../texts.ts';

/** Whether the channel that a call names is one to talk on. */
export function channelNotices(call: Call, plan: ChannelPlan | undefined): Notice[] {
  const named = announces(call) ? call.channel : null;
  if (!announces(call) || named === null) {
    const restricted = plan === undefined ? [] : callNotices(call, plan);
    return [...unnamedChannelNotices(call), ...restricted];
  }
  const purpose = purposeOf(call);
  // Digits that name no channel are told of the field they stand in.
  if (!isNumbered(named)) return [];
  if (plan === undefined) return withoutPlan(named, purpose);
  const found = findChannel(plan, named);
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

function purposeOf(call: Announcement): WorkingPurpose {
  if (call.category === 'safety' || call.category === 'urgency' || call.category === 'distress')
    return 'safety';
  const to: { readonly kind: string; readonly mmsi?: string | null } = call.to;
  const ashore = [call.from, to.mmsi ?? null].some((mmsi) => stationIdentity(mmsi)?.kind.startsWith('coast'));
  return ashore ? 'ship-to-coast' : 'intership-non-commercial';
}

/** Whether the waters restrict selective calls that are not about distress, urgency or safety. */
function callNotices(call: Call, { name, edition, channels }: ChannelPlan): Notice[] {
  if (isDistressCall(call) || (announces(call) && purposeOf(call) === 'safety')) return [];
  const rule = channels.find(({ selectiveCallRule }) => selectiveCallRule !== null)?.selectiveCallRule;
  return rule == null
    ? []
    : [checkNotice('call-restricted', { plan: name, rule: planText(rule) }, 'kind', edition)];
}

/** What holds on every coast. */
function withoutPlan(channel: string, purpose: WorkingPurpose): Notice[] {
  if (channel === '70') {
    return [checkNotice('call-channel-70', {}, 'channel', 'Radio Regulations Appendix 18 note j)', channel)];
  }
  if (channel === '16' && purpose !== 'safety') {
    return [
      checkNotice(
        'call-channel-16-routine',
        {},
        'channel',
        'Radio Regulations Art. 52 and Appendix 18, unverified',
        channel,
      ),
    ];
  }
  const bar = neverAssignable(channel, purpose);
  if (bar !== null) return [{ ...bar, at: ['channel', ...bar.at] }];
  const designator = parseDesignator(channel);
  const sides = designator.ok ? frequencyOf(designator.value) : null;
  if (sides?.mode !== 'duplex' || purpose !== 'intership-non-commercial') return [];
  return [
    checkNotice(
      'call-channel-two-frequency',
      { channel },
      'channel',
      'Radio Regulations Appendix 18',
      channel,
    ),
  ];
}
