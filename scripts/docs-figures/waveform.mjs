import { readFileSync } from 'node:fs';
import { modulate } from 'seahail/audio';
import { accent, box, heading, label, line, n, picture } from './svg.mjs';

const LEFT = 64;
const BIT = 44;
const BAUD = 1200;
const SAMPLE_RATE = 96_000;
const CODE = JSON.parse(
  readFileSync(new URL('../../shared/burst/ten-bit-code.json', import.meta.url), 'utf8'),
);

/** The last bits of the dot pattern and one word: its bits, the tone of each, and the sound. */
export function waveform({ id, symbol, title }) {
  const dots = '1010';
  const code = CODE.rows[symbol].bits;
  const bits = dots + code;
  const end = LEFT + bits.length * BIT;
  const lines = [heading(title), label(0, 92, 'bits'), label(0, 150, 'tone'), label(0, 238, 'sound')];
  const brackets = [
    [0, 4, 'dot pattern ends'],
    [4, 11, `symbol ${symbol}, least significant bit first`],
    [11, 14, 'how many zeros'],
  ];
  for (const [from, to, name] of brackets) {
    const [x1, x2] = [LEFT + from * BIT + 3, LEFT + to * BIT - 3];
    lines.push(
      line([
        [x1, 66],
        [x1, 60],
        [x2, 60],
        [x2, 66],
      ]),
      label((x1 + x2) / 2, 52, name, { anchor: 'middle' }),
    );
  }
  const steps = [];
  [...bits].forEach((bit, index) => {
    const x = LEFT + index * BIT;
    lines.push(
      box(x + 1, 72, BIT - 2, 30, { tint: bit === '1' ? 0.16 : 0, stroke: 1 }),
      label(x + BIT / 2, 92, bit, { anchor: 'middle', size: 14 }),
      line(
        [
          [x, 112],
          [x, 290],
        ],
        { width: 0.6, opacity: 0.3 },
      ),
    );
    const y = bit === '1' ? 164 : 132;
    steps.push([x, y], [x + BIT, y]);
  });
  lines.push(
    line(steps, { width: 2 }),
    label(end + 8, 136, '2100 Hz'),
    label(end + 8, 168, '1300 Hz'),
    line(wave(bits), { width: 1.6, colour: accent }),
    line([
      [LEFT, 296],
      [LEFT + BIT, 296],
    ]),
    label(LEFT, 314, `one bit: 1/${BAUD} s, ${n(1000 / BAUD)} ms`),
  );
  const description = `Bits ${dots} and ${code}. A one is 1300 hertz, a zero 2100 hertz, ${BAUD} bits a second; the phase runs on without a jump. The last three bits of the word count the zeros among the seven before them.`;
  return picture({ id, width: end + 66, height: 322, title, description }, lines);
}

function wave(bits) {
  const samples = modulate(bits, { sampleRate: SAMPLE_RATE, amplitude: 1 });
  const step = (BIT * BAUD) / SAMPLE_RATE;
  return Array.from(samples, (sample, index) => [LEFT + index * step, 234 - 44 * sample]);
}
