import type { SpokenScript } from 'seahail/speech';

import { h } from './dom.ts';
import { sentence } from './ledger.ts';

/** Words to be spoken, one line each; what the other station says is hers by name, and cautions come after. */
export function spokenList(lines: SpokenScript['lines'], other: string): HTMLElement | null {
  if (lines.length === 0) return null;
  return h(
    'ul',
    { class: 'spoken' },
    lines.map(({ say, who, note }) =>
      h(
        'li',
        { class: who ?? null },
        who === 'other' ? [h('i', {}, `${other} says`), ' '] : null,
        h('q', {}, say),
        note === undefined ? null : [' ', h('span', { class: 'mind' }, sentence(note))],
      ),
    ),
  );
}
