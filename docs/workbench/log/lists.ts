import { describeCall } from 'seahail/call';
import { h } from '../frame/dom.ts';
import { leadOn } from '../frame/lead-on.ts';
import { cautionBox, ledger, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';
import type { CallEntry, FaultEntry, RepairedEntry } from './messages.ts';

/** One call of a log: its line and time in the margin, its sentence, and everything else on opening it. */
export function callItem({ reading, raw, again }: CallEntry): HTMLElement {
  const description = describeCall(reading.call, { directory: inventedName });
  const details = h('details', {}, h('summary', {}, 'Fields and what was received'));
  details.addEventListener(
    'toggle',
    () => {
      details.append(
        ledger(description.rows.map(({ label, value, clause }) => ({ what: label, answer: value, clause }))),
        h('pre', { class: 'lines', tabindex: 0, 'aria-label': 'Received' }, raw.join('\n')),
      );
    },
    { once: true },
  );
  return h(
    'li',
    { class: 'entry' },
    h(
      'p',
      { class: 'margin' },
      `line ${reading.line}`,
      reading.at === null ? '' : h('br'),
      reading.at === null ? '' : instant(reading.at),
    ),
    h(
      'div',
      {},
      h(
        'p',
        {},
        sentence(description.sentence),
        again === 0 ? '' : ` Sent ${(again + 1).toLocaleString('en')} times.`,
      ),
      reading.call.kind.startsWith('distress-') ? cautionBox(description.cautions) : null,
      leadOn(reading.call),
      details,
    ),
  );
}

/** One line with a fault, and what is wrong with it. */
export function faultItem({ line, text, issues, damaged }: FaultEntry): HTMLElement {
  return h(
    'li',
    { class: 'entry' },
    h('p', { class: 'margin' }, `line ${line}`, h('br'), damaged ? 'not read' : 'read'),
    h(
      'div',
      {},
      h('p', { class: 'wire' }, text === '' ? 'nothing that can be shown' : text),
      issues.map(({ message, clause }) =>
        h('p', { class: 'mind' }, sentence(message), ' ', h('span', { class: 'clause' }, clause ?? '')),
      ),
    ),
  );
}

/** A line as it came beside the line as it goes on. */
export function repairedItem({ line, was, now, faults }: RepairedEntry): HTMLElement {
  return h(
    'li',
    { class: 'entry' },
    h('p', { class: 'margin' }, `line ${line}`),
    h(
      'div',
      {},
      was === null || was === now ? null : h('p', { class: 'wire' }, h('del', {}, was)),
      h('p', { class: 'wire' }, h('ins', {}, now)),
      h(
        'p',
        { class: 'mind' },
        was === null
          ? 'Put in.'
          : was === now
            ? 'Moved up, after its call.'
            : sentence(faults.map((fault) => fault.replaceAll('-', ' ')).join(', ')),
      ),
    ),
  );
}

function instant(at: number): string {
  return `${new Date(at).toISOString().slice(0, 19).replace('T', ' ')} UTC`;
}
