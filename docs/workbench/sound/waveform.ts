import type { HeardBurst } from 'seahail/audio';
import { h, s } from '../frame/dom.ts';

const [WIDTH, HEIGHT, COLUMNS] = [640, 96, 640];

/** The sound as it rises and falls, every call that was heard marked with the number of its card. */
export function waveform(
  samples: Float32Array,
  sampleRate: number,
  heard: readonly HeardBurst[],
): HTMLElement {
  const seconds = samples.length / sampleRate;
  const x = (sample: number): number => (sample / samples.length) * WIDTH;
  const spans = heard.map(({ startSample, endSample }, index) => {
    const [from, to] = [x(startSample), x(endSample)];
    return [
      s('rect', { class: 'span', x: from, y: 0, width: Math.max(2, to - from), height: HEIGHT }),
      s('text', { x: (from + to) / 2, y: HEIGHT + 16, 'text-anchor': 'middle', 'font-size': 13 }, index + 1),
    ];
  });
  const words = heard
    .map(({ startSample }, index) => `call ${index + 1} at ${(startSample / sampleRate).toFixed(1)} s`)
    .join(', ');
  return h(
    'figure',
    { class: 'wave' },
    s(
      'svg',
      {
        viewBox: `0 0 ${WIDTH} ${HEIGHT + 22}`,
        role: 'img',
        'aria-label': `The sound, ${seconds.toFixed(1)} s long: ${words === '' ? 'no call in it' : words}`,
      },
      spans,
      s('path', { class: 'level', d: outline(samples) }),
    ),
    h(
      'figcaption',
      { class: 'help' },
      `${seconds.toFixed(1)} s from left to right; marked, what was heard as a call.`,
    ),
  );
}

/** Highest and lowest sample of each column, the whole as one path. */
function outline(samples: Float32Array): string {
  const middle = HEIGHT / 2;
  let loudest = 1e-9;
  const columns = Array.from({ length: COLUMNS }, (_, column) => {
    const [from, to] = [column, column + 1].map((edge) => Math.floor((edge / COLUMNS) * samples.length));
    let [low, high] = [0, 0];
    for (const sample of samples.subarray(from, to)) {
      if (sample < low) low = sample;
      if (sample > high) high = sample;
    }
    loudest = Math.max(loudest, high, -low);
    return [low, high] as const;
  });
  const y = (value: number): string => (middle - (value / loudest) * (middle - 1)).toFixed(1);
  return columns.map(([low, high], column) => `M${column + 0.5} ${y(high)}V${y(low)}`).join('');
}
