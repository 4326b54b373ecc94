import { type Path, throughPath } from './channel.ts';
import { crossing, decibelText, type Findings, type Size, table } from './figures.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';
import { hearAll, shareOf, succeeded, type Trial } from './trial.ts';

const plain: Path = { sampleRate: 48_000, ebN0Db: 0, before: 0.05, behind: 0.1, gain: 0.1 };

const CASES: readonly (readonly [name: string, path: Partial<Path>, inverted?: true])[] = [
  ['nothing amiss', {}],
  ['2100 Hz 6 dB stronger', { balanceDb: 6 }],
  ['1300 Hz 6 dB stronger', { balanceDb: -6 }],
  ['tones 30 Hz high', { offsetHz: 30 }],
  ['tones 30 Hz low', { offsetHz: -30 }],
  ['clock 200 ppm fast', { clockPpm: 200 }],
  ['clock 200 ppm slow', { clockPpm: -200 }],
  ['offset of 3 amplitudes', { dc: 3 }],
  ['tones the wrong way round', {}, true],
  ['level -60 dB', { gain: 0.001 }],
  ['level -20 dB', { gain: 0.1 }],
  ['8 kHz sampling', { sampleRate: 8000 }],
];

/** What each fault costs: Eb/N0 for half of all calls, the same calls and much the same noise throughout. */
export function robustness(size: Size): Findings {
  const trials = size === 'full' ? 250 : 12;
  const levels = size === 'full' ? [-0.5, 0, 0.5, 1, 1.5] : [0, 1, 2, 3];
  const found = CASES.map(([name, path, inverted]) => {
    const curve = levels.map((at) => ({
      at,
      share: share({ ...plain, ...path, ebN0Db: at }, inverted === true, trials),
    }));
    return { name, curve, half: crossing(curve, 0.5) };
  });
  const reference = found[0]?.half ?? Number.NaN;
  const losses = found.map(({ name, curve, half }) => ({
    name,
    curve,
    half,
    loss: half === null ? null : half - reference,
  }));
  return {
    figures: { size, trialsPerPoint: trials, characters: 22, losses },
    lines: [
      `loss by faults of the signal, 22 characters, ${trials} bursts a point`,
      ...table([
        ['', '50 % at dB', 'loss dB'],
        ...losses.map(({ name, half, loss }) => [name, decibelText(half), decibelText(loss)]),
      ]),
    ],
    shortcomings: losses
      .filter(({ loss }) => !(loss !== null && loss < (size === 'full' ? 0.5 : 1.5)))
      .map(({ name, loss }) => `${name}: loss ${decibelText(loss)} dB`),
  };
}

function share(path: Path, inverted: boolean, trials: number): number {
  return shareOf(hearAll(bursts(path, inverted, trials), path.sampleRate), succeeded);
}

function* bursts(path: Path, inverted: boolean, trials: number): Generator<Trial> {
  const random = randomFrom(90_000 + Math.round(10 * path.ebN0Db));
  for (let trial = 0; trial < trials; trial++) {
    const sent = randomCall(random, 22);
    const bits = inverted ? sent.bits.replace(/[01]/g, (bit) => (bit === '1' ? '0' : '1')) : sent.bits;
    yield { sent, samples: throughPath(bits, path, random) };
  }
}
