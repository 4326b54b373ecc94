import type { NetworkFaultReport } from 'seahail/network';
import type { FaultReport } from 'seahail/sentence';
import { h } from '../frame/dom.ts';
import { said } from '../frame/language.ts';
import { sentence } from '../frame/ledger.ts';

const CERTAINTY = { certain: 'Certain', likely: 'Likely', possible: 'Possible' } as const;

/** What a technician would look at, in order, each with what to do. */
export function reportOf(
  report: FaultReport | NetworkFaultReport,
  cut: boolean,
): readonly (HTMLElement | null)[] {
  return [
    cut ? h('p', { class: 'mind' }, 'Only the first 32 MB were read.') : null,
    report.clean
      ? h('p', {}, 'Nothing on this wire explains it.')
      : h('ol', { class: 'entries' }, report.findings.map(findingItem)),
    h(
      'details',
      {},
      h('summary', {}, 'What cannot be seen from the wire'),
      h(
        'ul',
        { class: 'reasons' },
        report.outside.map((text) => h('li', {}, said(text, sentence))),
      ),
    ),
  ];
}

function findingItem(finding: (FaultReport | NetworkFaultReport)['findings'][number]): HTMLElement {
  const { id, certainty, why, remedy, count, sightings } = finding;
  const step = 'step' in finding ? `${finding.step}, ` : '';
  return h(
    'li',
    { class: 'entry' },
    h(
      'p',
      { class: 'margin' },
      CERTAINTY[certainty],
      h('br'),
      `${step}${count === 1 ? 'once' : `${count.toLocaleString('en')} times`}`,
    ),
    h(
      'div',
      {},
      h('p', {}, said(why, sentence)),
      h('p', {}, h('i', {}, 'What to do: '), said(remedy, sentence)),
      h(
        'details',
        {},
        h('summary', {}, 'Where'),
        h(
          'ul',
          { class: 'reasons' },
          sightings.map((sighting) => {
            const { line, seen } = sighting;
            const corrected = 'corrected' in sighting ? sighting.corrected : undefined;
            return h(
              'li',
              {},
              line === null ? '' : `Line ${line}: `,
              h('span', typeof seen === 'string' ? { class: 'wire' } : {}, wording(seen)),
              corrected === undefined
                ? null
                : [', should have been ', h('ins', { class: 'wire' }, corrected.join(' '))],
            );
          }),
        ),
      ),
      h('p', { class: 'clause' }, h('code', {}, id)),
    ),
  );
}

/** Of what was seen: the characters themselves, or the text. */
function wording(seen: string | FaultReport['summary']): string {
  return typeof seen === 'string' ? seen : seen.message;
}
