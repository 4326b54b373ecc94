import {
  type Channel,
  type ChannelPlan,
  channelsAt,
  findChannel,
  formatMegahertz,
  planText,
  type WorkingChannels,
} from 'seahail/channel';
import { h } from '../frame/dom.ts';
import { said } from '../frame/language.ts';
import { findings, sentence } from '../frame/ledger.ts';
import { allPlans } from '../frame/plans.ts';

const FREQUENCY = /^\d{3}[.,]\d+|^\d{6}$|hz$/i;

/** What a name or a frequency means in each plan, those that have it first. */
export function lookUp(name: string): HTMLElement | null {
  const text = name.trim();
  if (text === '') return null;
  const answers = allPlans.map((plan) =>
    FREQUENCY.test(text) ? atFrequency(plan, text) : byName(plan, text),
  );
  const has = (answer: HTMLElement): boolean => answer.querySelector('.channel') !== null;
  return h(
    'div',
    { class: 'plans' },
    answers.filter(has),
    answers.filter((answer) => !has(answer)),
  );
}

/** Whether a named channel serves the talk that was chosen, and why not. */
export function forThisTalk(name: string, { ranked, ruledOut }: WorkingChannels): HTMLElement | null {
  const plans = new Set([...ranked, ...ruledOut].flatMap(({ channels }) => channels.map(({ plan }) => plan)));
  const meant = allPlans
    .filter(({ name }) => plans.has(name))
    .map((plan) => findChannel(plan, name.trim()))
    .flatMap((found) => (found.ok ? [found.value] : []));
  const isMeant = ({ channels }: { readonly channels: readonly Channel[] }): boolean =>
    channels.some(({ plan, designator }) =>
      meant.some((each) => each.plan === plan && each.designator === designator),
    );
  const serves = ranked.find(isMeant);
  if (serves !== undefined)
    return h(
      'p',
      {},
      h('b', {}, `Channel ${serves.designator} fits this talk. `),
      said({ ...serves, message: serves.reason }, sentence),
    );
  const ruled = ruledOut.find(isMeant);
  if (ruled === undefined) return null;
  return h(
    'p',
    {},
    h('b', {}, `Not channel ${ruled.designator} for this talk. `),
    said(ruled.notices[0], sentence),
    ' ',
    h('span', { class: 'clause' }, ruled.notices[0].clause ?? ''),
  );
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
  const { evidence } = channel;
  const remembered = [evidence.frequency, evidence.use].some(({ basis }) => basis === 'memory');
  return h(
    'div',
    { class: 'channel' },
    h('b', {}, channel.designator),
    h(
      'div',
      {},
      h('p', {}, said(planText(channel.note), sentence)),
      h('p', {}, frequencies(channel)),
      channel.powerRule === null
        ? null
        : h('p', { class: 'mind' }, said(planText(channel.powerRule), sentence)),
      channel.caution === null ? null : h('p', { class: 'mind' }, said(planText(channel.caution), sentence)),
      channel.region === null
        ? null
        : h('p', { class: 'mind' }, 'Where: ', said(planText(channel.region), sentence)),
      channel.aliases.length === 0
        ? null
        : h('p', { class: 'mind' }, `Also written ${channel.aliases.join(', ')}.`),
      h('p', { class: 'clause' }, evidence.frequency.source, remembered ? ', partly unverified' : ''),
    ),
  );
}

/** The frequencies of both sides, in words. */
export function frequencies(channel: Channel | undefined): string {
  const { shipKHz: ship, coastKHz: coast } = channel ?? { shipKHz: null, coastKHz: null };
  if (ship === null) return `Coast stations send on ${formatMegahertz(coast ?? 0)} MHz; ships only listen.`;
  if (coast === null) return `${formatMegahertz(ship)} MHz, between ships only.`;
  if (coast === ship) return `${formatMegahertz(ship)} MHz, one frequency for both sides.`;
  return `Ships send on ${formatMegahertz(ship)} MHz, coast stations on ${formatMegahertz(coast)} MHz.`;
}
