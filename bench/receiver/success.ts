import { throughPath } from './channel.ts';
import { classicalCall } from './classical.ts';
import { crossing, decibelText, type Findings, type Size, table } from './figures.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';
import { hearAll, type Outcome, shareOf, succeeded, type Trial } from './trial.ts';

const RATE = 48_000;

/**
 * Eb/N0 in dB for half and for 99 % of all calls, computed beforehand for ideal receivers that are told phase, instant and
 * clock and know no noise but white: what nobody can beat by much, and what ordinary ways of working come to.
 */
const IDEAL = {
  22: { limit: [-0.6, 2.7], envelopes: [9.3, 11.8], discriminator: [5.7, 8.6] },
  30: { limit: [0.0, 2.7], envelopes: [9.5, 12.5], discriminator: [6.0, 8.7] },
} as const;

/** Goals for the 30-character call. */
const GOAL = { half: 2.5, most: 4.5 };

/** Whole-call success against Eb/N0 with real audio at 48 kHz; start, phase, clock (30 ppm) and offset (10 Hz) unknown. */
export function success(size: Size): Findings {
  const trials = size === 'full' ? 300 : 25;
  const fine = size === 'full' ? [-1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 5] : [0, 1, 2, 3, 4];
  const coarse = size === 'full' ? [6, 7, 8, 9, 10, 11, 12, 13] : [8, 9, 10, 11, 12];
  const lines: string[] = [];
  const shortcomings: string[] = [];
  const figures: Record<string, unknown> = { size, trialsPerPoint: trials, sampleRate: RATE };
  for (const length of [22, 30] as const) {
    const receiver = fine.map((at) => receiverPoint(length, at, trials));
    const classical = coarse.map((at) => classicalPoint(length, at, trials));
    const points = {
      half: crossing(receiver, 0.5),
      most: crossing(receiver, 0.99),
      classicalHalf: crossing(classical, 0.5),
      classicalMost: crossing(classical, 0.99),
    };
    const ideal = IDEAL[length];
    figures[`characters${length}`] = { receiver, classical, ...points, ideal };
    lines.push(
      `whole-call success, ${length} characters, ${trials} bursts a point`,
      ...table([
        ['Eb/N0 dB', 'clean', 'clean or repaired', 'right at all'],
        ...receiver.map(({ at, clean, share, right }) => [
          at,
          clean.toFixed(3),
          share.toFixed(3),
          right.toFixed(3),
        ]),
      ]),
      ...table([
        ['Eb/N0 dB for', '50 %', '99 %'],
        ['this receiver', decibelText(points.half), decibelText(points.most)],
        [
          'classical chain, measured here',
          decibelText(points.classicalHalf),
          decibelText(points.classicalMost),
        ],
        ['classical, ideal envelopes', ...ideal.envelopes],
        ['classical, ideal discriminator', ...ideal.discriminator],
        ['limit, ideal coherent', ...ideal.limit],
      ]),
    );
    if (length === 30 && !((points.half ?? 99) <= GOAL.half))
      shortcomings.push(`50 % at ${decibelText(points.half)} dB, wanted ${GOAL.half}`);
    if (length === 30 && !((points.most ?? 99) <= GOAL.most))
      shortcomings.push(`99 % at ${decibelText(points.most)} dB, wanted ${GOAL.most}`);
  }
  return { figures, lines, shortcomings };
}

interface Point {
  readonly at: number;
  readonly share: number;
  readonly clean: number;
  readonly right: number;
}

function receiverPoint(length: 22 | 30, at: number, trials: number): Point {
  const outcomes = hearAll(bursts(length, at, trials), RATE);
  const isClean = ({ reports }: Outcome): boolean =>
    reports.some(({ burst, match }) => match === 'right' && burst.reception.quality.verdict === 'clean');
  const isRight = ({ reports }: Outcome): boolean => reports.some(({ match }) => match === 'right');
  return {
    at,
    share: shareOf(outcomes, succeeded),
    clean: shareOf(outcomes, isClean),
    right: shareOf(outcomes, isRight),
  };
}

function* bursts(length: 22 | 30, at: number, trials: number): Generator<Trial> {
  const random = randomFrom(1000 * length + Math.round(10 * at));
  for (let trial = 0; trial < trials; trial++) {
    const sent = randomCall(random, length);
    const before = 0.05 + 0.02 * random.even();
    const [offsetHz, clockPpm] = [20 * random.even() - 10, 60 * random.even() - 30];
    const path = { sampleRate: RATE, ebN0Db: at, offsetHz, clockPpm, before, behind: 0.1, gain: 0.1 };
    yield { sent, samples: throughPath(sent.bits, path, random) };
  }
}

function classicalPoint(length: 22 | 30, at: number, trials: number): { at: number; share: number } {
  const random = randomFrom(2000 * length + Math.round(10 * at));
  let right = 0;
  for (let trial = 0; trial < trials; trial++) {
    const call = randomCall(random, length);
    const samples = throughPath(
      call.bits,
      { sampleRate: RATE, ebN0Db: at, before: 0.01, behind: 0.01 },
      random,
    );
    right += Number(
      String(classicalCall(samples, RATE, 0.01 * RATE, call.bits.length)) === String(call.information),
    );
  }
  return { at, share: right / trials };
}
