import { createReceiver, type HeardBurst } from '../../src/audio/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { throughPath } from './channel.ts';
import { crossing, decibelText, type Findings, type Size, table } from './figures.ts';
import { AUDIO_RATE, throughRadio } from './fm-channel.ts';
import { type Random, randomFrom } from './random.ts';

const RATE = 8000;
const CALLS = 5;
const CARRIER = 0.02;
const BEFORE = 0.06;

/** A distress alert of no vessel in particular. */
interface Alert {
  readonly information: string;
  /** Dot pattern first. */
  readonly bits: string;
}

interface Point {
  readonly at: number;
  readonly share: number;
  readonly clean: number;
}

/**
 * Distress attempts of five alerts beside one alert: on plain audio, through an FM channel, and through one that fades.
 *
 * An alert counts as heard when it is reported right, clean or repaired, at least once.
 */
export function attempts(size: Size): Findings {
  const trials = size === 'full' ? 200 : 8;
  const radioTrials = size === 'full' ? 100 : 3;
  const counts = { clean: 0, repaired: 0, wrongClean: 0, wrongRepaired: 0 };
  const plain = (calls: number, levels: readonly number[]): Point[] =>
    levels.map((at) => {
      const random = randomFrom(150_000 + 100 * calls + Math.round(10 * at));
      return pointOf(at, trials, counts, () => {
        const alert = randomAlert(random);
        const [offsetHz, clockPpm] = [20 * random.even() - 10, 60 * random.even() - 30];
        const before = 0.05 + 0.02 * random.even();
        const path = { sampleRate: RATE, ebN0Db: at, offsetHz, clockPpm, before, behind: 0.1, gain: 0.1 };
        return { alert, heard: hear(throughPath(alert.bits.repeat(calls), path, random), RATE) };
      });
    });
  const radio = (calls: number, levels: readonly number[]): Point[] =>
    levels.map((at) => {
      const random = randomFrom(160_000 + 100 * calls + Math.round(10 * at));
      return pointOf(at, radioTrials, counts, () => {
        const alert = randomAlert(random);
        const path = { carrierToNoiseDb: at, deEmphasis: true, before: BEFORE, behind: 0.1 };
        return { alert, heard: hear(throughRadio(alert.bits.repeat(calls), path, random), AUDIO_RATE) };
      });
    });
  const curves = {
    plainOne: plain(1, [-2, -1, -0.5, 0, 0.5, 1, 2, 3, 4]),
    plainFive: plain(CALLS, [-8, -7, -6.5, -6, -5, -4, -3, -2]),
    radioOne: radio(1, [-1, 0, 1, 2, 3, 4, 5]),
    radioFive: radio(CALLS, [-5, -4, -3, -2, -1, 0, 1]),
  };
  const points = Object.entries(curves).map(([name, curve]) => ({
    name,
    half: crossing(curve, 0.5),
    most: crossing(curve, 0.99),
  }));
  const fading = [1, 8].flatMap((fadingHz) =>
    [2, 4, 8].map((at) => fadingPoint(fadingHz, at, radioTrials, counts)),
  );
  return {
    figures: { size, trials, radioTrials, curves, points, fading, counts },
    lines: [
      `distress alerts heard, clean or repaired: one alone, and five in a row; ${trials} at each point, ${radioTrials} through the radio`,
      ...table([
        ['', 'dB', 'heard', 'clean'],
        ...Object.entries(curves).flatMap(([name, curve]) =>
          curve.map(({ at, share, clean }) => [name, at, share.toFixed(3), clean.toFixed(3)]),
        ),
      ]),
      ...table([
        ['', '50 % at dB', '99 % at dB'],
        ...points.map(({ name, half, most }) => [name, decibelText(half), decibelText(most)]),
      ]),
      'attempts heard through a fading FM channel',
      ...table([
        ['fading Hz', 'C/N dB', 'joined', 'any of five alone', 'joined, clean', 'any alone, clean'],
        ...fading.map(({ fadingHz, at, joined, alone }) => [
          fadingHz,
          at,
          joined.share.toFixed(3),
          alone.share.toFixed(3),
          joined.clean.toFixed(3),
          alone.clean.toFixed(3),
        ]),
      ]),
      `of ${counts.clean} clean reports ${counts.wrongClean} wrong, of ${counts.repaired} repaired ${counts.wrongRepaired}`,
    ],
    shortcomings: counts.wrongClean > 0 ? [`${counts.wrongClean} wrong among the clean ones`] : [],
  };
}

interface Counts {
  clean: number;
  repaired: number;
  wrongClean: number;
  wrongRepaired: number;
}

interface Heard {
  readonly alert: Alert;
  readonly heard: readonly HeardBurst[];
}

function pointOf(at: number, trials: number, counts: Counts, trial: () => Heard): Point {
  let [share, clean] = [0, 0];
  for (let n = 0; n < trials; n++) {
    const found = trial();
    share += Number(isHeard(found, ['clean', 'repaired'], counts));
    clean += Number(isHeard(found, ['clean']));
  }
  return { at, share: share / trials, clean: clean / trials };
}

/** The same sound heard as a whole, and cut into its five calls, each by a receiver of its own. */
function fadingPoint(
  fadingHz: number,
  at: number,
  trials: number,
  counts: Counts,
): { fadingHz: number; at: number; joined: Point; alone: Point } {
  const random = randomFrom(170_000 + 1000 * fadingHz + 10 * at);
  const trialsHeard = Array.from({ length: trials }, () => {
    const alert = randomAlert(random);
    const path = { carrierToNoiseDb: at, deEmphasis: true, before: BEFORE, behind: 0.1, fadingHz };
    const samples = throughRadio(alert.bits.repeat(CALLS), path, random);
    const call = (alert.bits.length / 1200) * AUDIO_RATE;
    const alone = Array.from({ length: CALLS }, (_, n) => {
      const from = Math.round((BEFORE + CARRIER) * AUDIO_RATE + n * call);
      return hear(samples.subarray(from, Math.round(from + call)), AUDIO_RATE);
    }).flat();
    return { joined: { alert, heard: hear(samples, AUDIO_RATE) }, alone: { alert, heard: alone } };
  });
  const joined = trialsHeard.map((each) => each.joined).values();
  const alone = trialsHeard.map((each) => each.alone).values();
  return {
    fadingHz,
    at,
    joined: pointOf(at, trials, counts, () => joined.next().value as Heard),
    alone: pointOf(at, trials, counts, () => alone.next().value as Heard),
  };
}

function isHeard({ alert, heard }: Heard, verdicts: readonly string[], counts?: Counts): boolean {
  let found = false;
  for (const { reception } of heard) {
    const { verdict } = reception.quality;
    const right = reception.information.join() === alert.information;
    if (right && verdicts.includes(verdict)) found = true;
    if (counts === undefined || verdict === 'doubtful') continue;
    counts[verdict]++;
    if (!right) counts[verdict === 'clean' ? 'wrongClean' : 'wrongRepaired']++;
  }
  return found;
}

function hear(samples: Float32Array, sampleRate: number): HeardBurst[] {
  const heard: HeardBurst[] = [];
  const receiver = createReceiver({ sampleRate, onReception: (burst) => heard.push(burst) });
  receiver.push(samples);
  receiver.flush();
  return heard;
}

function randomAlert(random: Random): Alert {
  const pair = (): number => random.below(100);
  const characters = [
    112,
    ...[20 + random.below(58), pair(), pair(), pair(), 10 * random.below(10)],
    100 + random.below(8),
    ...[10 * random.below(4) + random.below(9), random.below(60), random.below(18), random.below(60), pair()],
    ...[random.below(24), random.below(60)],
    100,
    127,
  ];
  const bits = streamOf(characters).map(encodeSymbol).join('');
  return { information: [112, ...characters].join(), bits: `10101010101010101010${bits}` };
}
