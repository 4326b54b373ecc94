import { type Channel, type ChannelPlan, channelsAt, findChannel, formatMegahertz } from 'seahail/channel';
import { h } from '../frame/dom.ts';
import { findings, sentence } from '../frame/ledger.ts';
import { allPlans } from '../frame/plans.ts';

/** What a name or a frequency means in each plan. */
export function lookUp(wanted: string): HTMLElement | null {
  const text = wanted.trim();
  if (text === '') return null;
  const isFrequency = /^\d{3}[.,]\d+|^\d{6}$|hz$/i.test(text);
  const answers = allPlans.map((plan) => (isFrequency ? atFrequency(plan, text) : byName(plan, text)));
  return h('div', { class: 'plans' }, answers);
}

function byName(plan: ChannelPlan, text: string): HTMLElement {
  const found = findChannel(plan, text);
  return h('section', {}, h('h3', {}, plan.name), found.ok ? card(found.value) : findings(found.issues));
}

function atFrequency(plan: ChannelPlan, text: string): HTMLElement {
  const found = channelsAt(plan, text);
  if (!found.ok) return h('section', {}, h('h3', {}, plan.name), findings(found.issues));
  return h(
    'section',
    {},
    h('h3', {}, plan.name),
    found.value.length === 0 ? h('p', {}, 'No channel uses it.') : null,
    found.value.map(({ channel, side }) => [
      h('p', {}, side === 'both' ? 'Both sides transmit on it:' : `The ${side} transmits on it:`),
      card(channel),
    ]),
  );
}

function card(channel: Channel): HTMLElement {
  const { shipKHz, coastKHz, evidence } = channel;
  const remembered = [evidence.frequency, evidence.use].some(({ basis }) => basis === 'memory');
  return h(
    'div',
    { class: 'channel' },
    h('b', {}, channel.designator),
    h(
      'div',
      {},
      h('p', {}, sentence(channel.note)),
      h('p', {}, frequencies(shipKHz, coastKHz)),
      channel.powerRule === null ? null : h('p', { class: 'mind' }, sentence(channel.powerRule)),
      channel.caution === null ? null : h('p', { class: 'mind' }, sentence(channel.caution)),
      channel.region === null ? null : h('p', { class: 'mind' }, `Where: ${sentence(channel.region)}`),
      channel.aliases.length === 0
        ? null
        : h('p', { class: 'mind' }, `Also written ${channel.aliases.join(', ')}.`),
      h('p', { class: 'clause' }, evidence.frequency.source, remembered ? ', partly from memory' : ''),
    ),
  );
}

function frequencies(ship: number | null, coast: number | null): string {
  if (ship === null) return `Coast stations send on ${formatMegahertz(coast ?? 0)} MHz; ships only listen.`;
  if (coast === null) return `${formatMegahertz(ship)} MHz, between ships only.`;
  if (coast === ship) return `${formatMegahertz(ship)} MHz, one frequency for both sides.`;
  return `Ships send on ${formatMegahertz(ship)} MHz, coast stations on ${formatMegahertz(coast)} MHz.`;
}
