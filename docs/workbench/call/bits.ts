import type { Burst } from 'seahail/burst';
import { h, s } from '../frame/dom.ts';

/** Bits before the first word: the dot pattern. */
const DOTS = 20;
const WORD = 10;
/** Which bit of a damaged word came wrong. */
const WRONG = 3;

/** The words that a text such as `20.25` names, as the page keeps them in its address. */
export function damagedWords(text: string, burst: Burst): readonly number[] {
  const words = text
    .split('.')
    .filter((part) => /^\d{1,3}$/.test(part))
    .map(Number);
  return [...new Set(words)].filter((word) => word < burst.stream.length).sort((a, b) => a - b);
}

/** The bits of a burst as they would be received with one bit wrong in each of these words. */
export function bitsWith({ bits }: Burst, damaged: readonly number[]): string {
  const wrong = new Set(damaged.map((word) => DOTS + word * WORD + WRONG));
  return [...bits].map((bit, index) => (wrong.has(index) ? (bit === '1' ? '0' : '1') : bit)).join('');
}

/**
 * Every word of the burst in order of transmission: ten strokes, tall for the low tone, short for the high one. Each is
 * a button that damages its word; the arrow keys go from one to the next, so that the words are one stop of the Tab key.
 */
export function bitDrawing(
  burst: Burst,
  damaged: readonly number[],
  damage: (words: readonly number[]) => void,
): HTMLElement {
  const bits = bitsWith(burst, damaged);
  return h(
    'div',
    {},
    h(
      'p',
      {},
      `${burst.bits.length} bits, ${(burst.bits.length / 1.2).toFixed(0)} ms: 20 bits of dot pattern, then ${burst.stream.length} words of ten bits. Every character goes twice, its copy five words later with four between; the copies stand lower. A tall stroke is a 1, sent as 1300 Hz.`,
    ),
    h(
      'p',
      { id: 'words-help' },
      'Press a word, or go to it with the arrow keys and press Space, and one of its bits is received wrong. What a radio would make of it is shown below.',
    ),
    h(
      'ol',
      {
        class: 'words',
        'aria-label': 'Words of the burst in order of transmission',
        'aria-describedby': 'words-help',
        onkeydown: (event) => moveAlong(event as KeyboardEvent),
        onfocusin: (event) => tie(event.target),
        onmouseover: (event) => tie(event.target),
        onmouseleave: () => tie(null),
      },
      burst.stream.map((symbol, index) =>
        h(
          'li',
          { class: index % 2 === 0 ? 'dx' : 'rx' },
          h(
            'button',
            {
              type: 'button',
              tabindex: index === 0 ? 0 : -1,
              'aria-pressed': String(damaged.includes(index)),
              'aria-label': `Word ${index + 1}, symbol ${symbol}`,
              onclick: () => {
                damage(
                  damaged.includes(index) ? damaged.filter((word) => word !== index) : [...damaged, index],
                );
                focusWord(index);
              },
            },
            strokes(bits.slice(DOTS + index * WORD, DOTS + (index + 1) * WORD)),
            h('span', {}, symbol),
          ),
        ),
      ),
    ),
    damaged.length === 0
      ? null
      : h(
          'p',
          {},
          h(
            'button',
            {
              type: 'button',
              onclick: () => {
                damage([]);
                focusWord(0);
              },
            },
            'Restore every word',
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

/** Words of phasing in either pass, which have no copy; then a character and its copy stand five words apart. */
const PHASING = 12;
const APART = 5;

/** Marks the copy of the word that is pointed at. */
function tie(target: EventTarget | null): void {
  const all = buttons();
  const at = target instanceof Element ? all.indexOf(target.closest('button') as HTMLButtonElement) : -1;
  const other = at % 2 === 0 ? at + APART : at - APART;
  const tied = at >= PHASING && other >= PHASING ? [at, other] : [];
  for (const [index, button] of all.entries()) button.classList.toggle('tied', tied.includes(index));
}

function buttons(): readonly HTMLButtonElement[] {
  return [...document.querySelectorAll<HTMLButtonElement>('.words button')];
}

/** The one word that the Tab key stops at is the one that was used last. */
function focusWord(index: number): void {
  const all = buttons();
  const target = all[Math.max(0, Math.min(index, all.length - 1))];
  for (const button of all) button.tabIndex = button === target ? 0 : -1;
  target?.focus();
}

function moveAlong(event: KeyboardEvent): void {
  const at = buttons().indexOf(document.activeElement as HTMLButtonElement);
  const to = {
    ArrowRight: at + 1,
    ArrowLeft: at - 1,
    ArrowDown: inNextRow(at, 1),
    ArrowUp: inNextRow(at, -1),
    Home: 0,
    End: Infinity,
  }[event.key];
  if (at < 0 || to === undefined) return;
  event.preventDefault();
  focusWord(to);
}

/** The word right below (1) or above (-1): rows are as long as the page is wide. The same word when there is none. */
function inNextRow(at: number, way: 1 | -1): number {
  const places = buttons().map((button) => button.getBoundingClientRect());
  const here = places[at];
  if (here === undefined) return at;
  let [to, least] = [at, Infinity];
  for (const [index, place] of places.entries()) {
    const beyond = (place.top - here.top) * way;
    if (Math.abs(place.left - here.left) > here.width * 0.75 || beyond < 1 || beyond >= least) continue;
    [to, least] = [index, beyond];
  }
  return to;
}

function strokes(word: string): SVGElement {
  const path = [...word].map((bit, index) => `M${index * 3 + 1.5} 12V${bit === '1' ? 1 : 8}`).join('');
  return s(
    'svg',
    { viewBox: '0 0 30 13', width: 45, height: 19.5, 'aria-hidden': 'true', focusable: 'false' },
    s('path', { d: path, fill: 'none', stroke: 'currentColor', 'stroke-width': 1.4 }),
  );
}
