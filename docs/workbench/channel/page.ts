import { type WorkingChannels, type WorkingPurpose, workingChannels } from 'seahail/channel';
import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { said } from '../frame/language.ts';
import { sentence } from '../frame/ledger.ts';
import { planOf } from '../frame/plans.ts';
import { forThisTalk, frequencies, lookUp } from './look-up.ts';

const FITNESS = { preferred: 'first choice', allowed: 'allowed', restricted: 'with limits' } as const;
const SHOWN = 8;

const LEFT_TO_COAST = 'channel-coast-names-it';
/** The reason of a channel holds these in brackets. */
const IN_REASON: ReadonlySet<string> = new Set(['channel-caution', 'channel-restricted', LEFT_TO_COAST]);

const REASONS: Readonly<Record<string, string>> = {
  'channel-calls-only': 'Digital calls only',
  'channel-receive-only': 'Ships only listen',
  'channel-data-only': 'Not for speech',
  'channel-reserved': 'Kept for authorities',
  'channel-not-to-be-named': 'Cannot be proposed in a call',
  'channel-distress-and-calling': 'For distress and calling',
  'channel-ships-only': 'No coast station there',
  'channel-two-frequency': 'Two frequencies, so ships do not hear each other',
  'channel-not-intership': 'Not for this talk between ships',
  'channel-other-use': 'For another use',
  'channel-meaning-differs': 'The same name, another meaning',
  'channel-not-in-plan': 'Missing from one plan',
  'channel-selective-calls-restricted': 'No selective calls for talk in these waters',
};

bindShare(bindFinding(byId<HTMLFormElement>('question'), answer));

function answer(question: Question): void {
  const [here, there] = [planOf(question['here']), planOf(question['there'])];
  const found = workingChannels(here === there ? here : [here, there], question['purpose'] as WorkingPurpose);
  announce(inShort(found));
  fill(byId('answer'), leftToCoast(found), ranked(found));
  fill(byId('ruled-out'), ruledOut(found));
  const name = question['channel-name'] ?? '';
  fill(byId('look-up'), forThisTalk(name, found), lookUp(name));
}

function inShort({ ranked, plans, purpose }: WorkingChannels): string {
  const [best, ...others] = ranked;
  const both = plans.length > 1 ? ' both' : '';
  if (best === undefined) return both === '' ? 'No channel fits.' : 'No channel fits both.';
  if (others.length === 0) return `Only channel ${best.designator} fits${both}.`;
  return purpose === 'ship-to-coast'
    ? `The coast station chooses: ${ranked.length} channels are possible${both}.`
    : `Use channel ${best.designator}; ${ranked.length - 1} others would also do${both}.`;
}

/** What holds for every channel with a coast station is said once. */
function leftToCoast({ ranked }: WorkingChannels): HTMLElement | null {
  const [notice] = ranked.flatMap(({ notices }) => notices.filter(({ code }) => code === LEFT_TO_COAST));
  return notice === undefined
    ? null
    : h(
        'p',
        {},
        'To propose a channel is optional: a coast station normally names it. ',
        h('span', { class: 'clause' }, notice.clause ?? ''),
      );
}

function ranked(found: WorkingChannels): readonly HTMLElement[] {
  const rows = found.ranked.map((channel) =>
    h(
      'li',
      { class: 'channel' },
      h('b', {}, channel.designator),
      h(
        'div',
        {},
        h(
          'p',
          {},
          h('i', {}, FITNESS[channel.fitness]),
          '. ',
          said({ ...channel, message: channel.reason }, sentence),
        ),
        h('p', { class: 'mind' }, frequencies(channel.channels[0])),
        channel.notices
          .filter(({ code }) => !IN_REASON.has(code))
          .map((notice) =>
            h(
              'p',
              { class: 'mind' },
              said(notice, sentence),
              ' ',
              h('span', { class: 'clause' }, notice.clause ?? ''),
            ),
          ),
      ),
    ),
  );
  const list = h('ol', { class: 'channels' }, rows.slice(0, SHOWN));
  if (rows.length <= SHOWN) return [list];
  return [
    list,
    h(
      'details',
      {},
      h('summary', {}, `${rows.length - SHOWN} more`),
      h('ol', { class: 'channels', start: SHOWN + 1 }, rows.slice(SHOWN)),
    ),
  ];
}

/** Every other channel, gathered by the rule that speaks against it. */
function ruledOut(found: WorkingChannels): readonly HTMLElement[] {
  const groups = new Map<string, WorkingChannels['ruledOut'][number][]>();
  for (const channel of found.ruledOut) {
    const [{ code }] = channel.notices;
    groups.set(code, [...(groups.get(code) ?? []), channel]);
  }
  return [...groups].map(([code, channels]) =>
    h(
      'details',
      {},
      h('summary', {}, `${REASONS[code] ?? code}: `, channels.map(({ designator }) => designator).join(', ')),
      h(
        'ul',
        { class: 'reasons' },
        channels.map(({ notices: [bar] }) =>
          h('li', {}, said(bar, sentence), ' ', h('span', { class: 'clause' }, bar.clause ?? '')),
        ),
      ),
    ),
  );
}
