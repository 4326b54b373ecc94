import type { Burst } from 'seahail/burst';
import { h, s } from '../frame/dom.ts';

/** Every word of the burst in order of transmission: ten strokes, tall for the low tone, short for the high one. */
export function bitDrawing(burst: Burst): HTMLElement {
  return h(
    'div',
    {},
    h(
      'p',
      {},
      `${burst.bits.length} bits, ${(burst.bits.length / 1.2).toFixed(0)} ms: 20 bits of dot pattern, then ${burst.stream.length} words of ten bits. Every character goes twice, its copy four words behind; the copies stand lower. A tall stroke is a 1, sent as 1300 Hz.`,
    ),
    h(
      'ol',
      { class: 'words', 'aria-label': 'Words of the burst in order of transmission' },
      burst.stream.map((symbol, index) =>
        h(
          'li',
          { class: index % 2 === 0 ? 'dx' : 'rx' },
          strokes(burst.bits.slice(20 + index * 10, 30 + index * 10)),
          h('span', {}, symbol),
        ),
      ),
    ),
    h(
      'details',
      {},
      h('summary', {}, 'The same as figures'),
      h('p', {}, 'Information symbols: ', h('span', { class: 'wire' }, burst.information.join(' '))),
      h('p', {}, 'Error check: ', h('span', { class: 'wire' }, burst.errorCheck)),
      burst.expansion === undefined
        ? null
        : h(
            'p',
            {},
            'Expansion: ',
            h('span', { class: 'wire' }, burst.expansion.information.join(' ')),
            ', error check ',
            h('span', { class: 'wire' }, burst.expansion.errorCheck),
          ),
      h('p', {}, 'Bits: ', h('span', { class: 'wire bits' }, burst.bits)),
    ),
  );
}

function strokes(word: string): SVGElement {
  const path = [...word].map((bit, index) => `M${index * 3 + 1.5} 12V${bit === '1' ? 1 : 8}`).join('');
  return s(
    'svg',
    { viewBox: '0 0 30 13', width: 45, height: 19.5, 'aria-hidden': 'true', focusable: 'false' },
    s('path', { d: path, fill: 'none', stroke: 'currentColor', 'stroke-width': 1.4 }),
  );
}
