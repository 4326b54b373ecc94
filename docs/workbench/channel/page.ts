import {
  type RuledOutChannel,
  type WorkingChannels,
  type WorkingPurpose,
  workingChannels,
} from 'seahail/channel';
import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { sentence } from '../frame/ledger.ts';
import { planOf } from '../frame/plans.ts';
import { lookUp } from './look-up.ts';

const FITNESS = { preferred: 'first choice', allowed: 'allowed', restricted: 'with limits' } as const;
const SHOWN = 8;

const REASONS: Readonly<Record<string, string>> = {
  'channel-calls-only': 'Digital calls only',
  'channel-receive-only': 'Ships only listen',
  'channel-data-only': 'Not for speech',
  'channel-reserved': 'Kept for authorities',
  'channel-not-to-be-named': 'Not to be named in a call',
  'channel-distress-and-calling': 'For distress and calling',
  'channel-ships-only': 'No coast station there',
  'channel-two-frequency': 'Two frequencies, so ships do not hear each other',
  'channel-not-intership': 'Not for this talk between ships',
  'channel-other-use': 'For another use',
  'channel-meaning-differs': 'The same name, another meaning',
  'channel-not-in-plan': 'Missing from one plan',
};

bindShare(bindFinding(byId<HTMLFormElement>('question'), answer));

function answer(question: Question): void {
  const [here, there] = [planOf(question['here']), planOf(question['there'])];
  const found = workingChannels(here === there ? here : [here, there], question['purpose'] as WorkingPurpose);
  const [best] = found.ranked;
  announce(
    best === undefined
      ? 'No channel serves both.'
      : `Channel ${best.designator} first, of ${found.ranked.length} that ${here === there ? 'serve' : 'serve both'}.`,
  );
  fill(byId('answer'), ranked(found));
  fill(byId('ruled-out'), ruledOut(found));
  fill(byId('look-up'), lookUp(question['wanted'] ?? ''));
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
        h('p', {}, h('i', {}, FITNESS[channel.fitness]), '. ', sentence(channel.reason)),
        channel.notices.map((notice) =>
          h(
            'p',
            { class: 'mind' },
            sentence(notice.message),
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
      h('summary', {}, `${rows.length - SHOWN} more that serve`),
      h('ol', { class: 'channels', start: SHOWN + 1 }, rows.slice(SHOWN)),
    ),
  ];
}

/** Every other channel, gathered by the rule that speaks against it. */
function ruledOut(found: WorkingChannels): readonly HTMLElement[] {
  const groups = new Map<string, RuledOutChannel[]>();
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
        channels.map(({ reason, notices }) =>
          h('li', {}, sentence(reason), ' ', h('span', { class: 'clause' }, notices[0].clause ?? '')),
        ),
      ),
    ),
  );
}
