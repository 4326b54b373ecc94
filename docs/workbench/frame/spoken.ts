import type { SpokenScript } from 'seahail/speech';

import { h } from './dom.ts';
import { isForeign, said } from './language.ts';
import { sentence } from './ledger.ts';

/** Words to be spoken, one line each, in English on any channel, with what they mean beside them in another language; what the other station says is hers by name, and cautions come after. */
export function spokenList(lines: SpokenScript['lines'], other: string): HTMLElement | null {
  if (lines.length === 0) return null;
  return h(
    'ul',
    { class: 'spoken' },
    lines.map(({ say, gloss, who, note, noteText }) =>
      h(
        'li',
        { class: who ?? null },
        who === 'other' ? [h('i', {}, `${other} says`), ' '] : null,
        h('q', {}, say),
        isForeign() ? [' ', h('span', { class: 'mind' }, said(gloss, sentence))] : null,
        note === undefined
          ? null
          : [' ', h('span', { class: 'mind' }, said(noteText ?? { text: note }, sentence))],
      ),
    ),
  );
}
