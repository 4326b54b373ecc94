import { h, s } from '../frame/dom.ts';
import type { Mark } from './messages.ts';

const WIDTH = 640;

/** Every call of a log along its time, or along its lines where they have no time; strokes of distress are taller. */
export function timeLine(marks: readonly Mark[], lines: number): HTMLElement | null {
  if (marks.length < 2) return null;
  const timed = marks.every(({ at }) => at !== null);
  const place = ({ at, line }: Mark): number => (timed ? (at ?? 0) : line);
  const from = timed ? Math.min(...marks.map(place)) : 1;
  const to = timed ? Math.max(...marks.map(place)) : lines;
  const x = (mark: Mark): number => 8 + ((place(mark) - from) / Math.max(1, to - from)) * (WIDTH - 16);
  const ends = timed ? [from, to].map(clock) : [`line ${from}`, `line ${to}`];
  const distress = marks.filter((mark) => mark.distress).length;
  return h(
    'figure',
    { class: 'times' },
    s(
      'svg',
      {
        viewBox: `0 0 ${WIDTH} 62`,
        role: 'img',
        'aria-label': `${marks.length} calls from ${ends[0]} to ${ends[1]}, ${distress} of them distress`,
      },
      s('path', { class: 'axis', d: `M4 44H${WIDTH - 4}` }),
      marks.map((mark) =>
        s('path', {
          class: mark.distress ? 'distress' : '',
          d: `M${x(mark).toFixed(1)} ${mark.distress ? 6 : 24}V44`,
        }),
      ),
      s('text', { x: 4, y: 60, 'font-size': 13 }, ends[0]),
      s('text', { x: WIDTH - 4, y: 60, 'text-anchor': 'end', 'font-size': 13 }, ends[1]),
    ),
    h('figcaption', { class: 'help' }, 'Each stroke is a call; the tall ones are distress.'),
  );
}

function clock(at: number): string {
  return `${new Date(at).toISOString().slice(11, 19)} UTC`;
}
