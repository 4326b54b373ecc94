import type { Translatable } from 'seahail/locale';
import type { Issue } from 'seahail/result';
import { type Child, h } from './dom.ts';
import { said } from './language.ts';

/** One line of a ledger: what, the answer, and the rule it follows. */
export interface LedgerLine {
  readonly what: string;
  readonly answer: Child;
  readonly clause?: string | undefined;
}

/** Lines of answers, the rule of each in the margin; a rule that holds for several lines running is given once. */
export function ledger(lines: readonly (LedgerLine | null)[]): HTMLElement {
  let above: string | undefined;
  return h(
    'dl',
    { class: 'ledger' },
    lines
      .filter((line) => line !== null)
      .map(({ what, answer, clause }) => {
        const margin = clause === above ? undefined : clause;
        above = clause;
        return h(
          'div',
          {},
          h('dt', {}, what),
          h('dd', {}, answer),
          margin === undefined ? null : h('dd', { class: 'margin' }, margin),
        );
      }),
  );
}

/** Issues or notices, each with what was expected and by which rule; suggested readings are for a person to press. */
export function findings(
  issues: readonly Issue[],
  choose?: (suggestion: string) => void,
  nameOf: (suggestion: string) => string = () => '',
): HTMLElement | null {
  if (issues.length === 0) return null;
  return h(
    'ul',
    { class: 'findings' },
    issues.map((issue) => finding(issue, choose, nameOf)),
  );
}

function finding(
  issue: Issue,
  choose: ((suggestion: string) => void) | undefined,
  nameOf: (suggestion: string) => string,
): HTMLElement {
  const { suggestion } = issue;
  return h(
    'li',
    {},
    h('p', {}, said(issue, sentence)),
    suggestion === undefined || choose === undefined
      ? null
      : h(
          'p',
          {},
          h(
            'button',
            { type: 'button', class: 'reading', onclick: () => choose(suggestion) },
            'Read it as ',
            h('b', {}, suggestion),
            nameOf(suggestion),
          ),
        ),
    h(
      'p',
      { class: 'margin' },
      issue.clause ?? '',
      issue.clause === undefined ? '' : h('br'),
      h('code', {}, issue.code),
    ),
  );
}

/** A boxed caution: text and the rule it comes from. */
export function cautionBox(
  cautions: readonly (Translatable & { readonly clause: string })[],
): HTMLElement | null {
  if (cautions.length === 0) return null;
  return h(
    'div',
    { class: 'caution', role: 'note', 'aria-label': 'Caution' },
    h('p', { class: 'caution-word' }, 'Caution'),
    h(
      'ul',
      {},
      cautions.map((caution) =>
        h('li', {}, said(caution, sentence), ' ', h('span', { class: 'clause' }, caution.clause)),
      ),
    ),
  );
}

/** Begins with a capital and ends with a full stop. */
export function sentence(text: string): string {
  const first = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(first) ? first : `${first}.`;
}
