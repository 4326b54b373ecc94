import { throughPath } from './channel.ts';
import { type Findings, keptFigures, type Size, table, upperBound } from './figures.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';
import { hearAll, type Outcome, type Trial } from './trial.ts';

const RATE = 8000;
/** Bursts in one stream. */
const TOGETHER = 500;
/** Bursts of one part, and parts of one run at most. */
const PART = 50_000;
const MOST_PARTS = 4;
/** None wrong among so many is a share below 1e-4, with 95 % confidence. */
const ENOUGH = 30_000;
const GOAL = 1e-4;

/** Eb/N0 in dB, each a section of its own: what is weak takes its time. */
export const CLEAN_LEVELS: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 8, 10, 12];

/** What was heard at one Eb/N0 so far. */
interface Heard {
  readonly bursts: number;
  readonly clean: number;
  readonly wrong: number;
  /** Calls by the least probability that they reported: how many would be wrong by it, and how many were. */
  readonly judged: readonly Judged[];
}

interface Judged {
  readonly from: number;
  readonly calls: number;
  readonly expected: number;
  readonly wrong: number;
}

/** Of `repaired` calls, of those nearly clean, of `clean` ones. */
const PROBABILITIES = [0.99, 0.999, 0.9999];
const NOTHING: Heard = {
  bursts: 0,
  clean: 0,
  wrong: 0,
  judged: PROBABILITIES.map((from) => ({ from, calls: 0, expected: 0, wrong: 0 })),
};

/**
 * Of the calls reported `clean` at one Eb/N0, how many are wrong: as many bursts as it takes to hear enough of them, in parts
 * with a seed of their own. A full run that ended too soon is gone on with from the kept figures, which must go when the
 * receiver changes.
 */
export function cleanCalls(at: number, size: Size): Findings {
  const full = size === 'full';
  const kept = full ? (keptFigures(`clean${at}`) as Heard | undefined) : undefined;
  let heard = kept !== undefined && kept.clean < ENOUGH ? kept : NOTHING;
  const most = full ? heard.bursts + MOST_PARTS * PART : 20;
  while (heard.clean < ENOUGH && heard.bursts < most) {
    heard = together(heard, cleanPart(at, heard.bursts / PART, ENOUGH - heard.clean, Math.min(PART, most)));
  }
  const { bursts, clean, wrong, judged } = heard;
  const bound = upperBound(wrong, clean);
  const shortcomings: string[] = [];
  if (wrong > 0) shortcomings.push(`${at} dB: ${wrong} wrong calls among ${clean} clean ones`);
  if (full && !(bound < GOAL)) shortcomings.push(`${at} dB: only ${clean} clean calls in ${bursts} bursts`);
  return {
    figures: { size, at, bursts, characters: 22, clean, wrong, upper95: bound, judged },
    lines: [
      ...table([
        ['Eb/N0 dB', 'bursts', 'clean', 'wrong', 'share below, with 95 % confidence'],
        [at, bursts, clean, wrong, bound.toExponential(1)],
      ]),
      ...table([
        ['probability from', 'calls', 'wrong', 'by the probabilities'],
        ...judged.map((each) => [each.from, each.calls, each.wrong, each.expected.toFixed(2)]),
      ]),
    ],
    shortcomings,
  };
}

/** One part of it, which ends early when enough clean calls were heard. */
export function cleanPart(at: number, part: number, enough: number, most: number): Heard {
  const random = randomFrom(170_000 + 10 * at + 1000 * part);
  let heard = NOTHING;
  while (heard.clean < enough && heard.bursts < most) {
    const count = Math.min(TOGETHER, most - heard.bursts);
    const outcomes = hearAll(sent(at, count, random), RATE);
    const reports = outcomes
      .flatMap((outcome) => outcome.reports)
      .filter(({ burst }) => burst.reception.quality.verdict !== 'doubtful');
    const clean = reports.filter(({ burst }) => burst.reception.quality.verdict === 'clean');
    heard = together(heard, {
      bursts: count,
      clean: clean.length,
      wrong: wrongIn(clean),
      judged: PROBABILITIES.map((from, n) => {
        const below = PROBABILITIES[n + 1] ?? Number.POSITIVE_INFINITY;
        const calls = reports.filter(({ burst: { reception } }) => {
          const { probability } = reception.quality;
          return probability >= from && probability < below;
        });
        const expected = calls.reduce((sum, { burst }) => sum + 1 - burst.reception.quality.probability, 0);
        return { from, calls: calls.length, expected, wrong: wrongIn(calls) };
      }),
    });
  }
  return heard;
}

function wrongIn(reports: Outcome['reports']): number {
  return reports.filter(({ match }) => match === 'wrong').length;
}

function together(one: Heard, other: Heard): Heard {
  return {
    bursts: one.bursts + other.bursts,
    clean: one.clean + other.clean,
    wrong: one.wrong + other.wrong,
    judged: one.judged.map((each, n) => {
      const { calls, expected, wrong } = other.judged[n] as Judged;
      return {
        ...each,
        calls: each.calls + calls,
        expected: each.expected + expected,
        wrong: each.wrong + wrong,
      };
    }),
  };
}

function* sent(at: number, count: number, random: ReturnType<typeof randomFrom>): Generator<Trial> {
  for (let trial = 0; trial < count; trial++) {
    const call = randomCall(random, 22);
    const [offsetHz, clockPpm] = [20 * random.even() - 10, 60 * random.even() - 30];
    const before = 0.05 + 0.01 * random.even();
    const path = { sampleRate: RATE, ebN0Db: at, offsetHz, clockPpm, before, behind: 0.1, gain: 0.1 };
    yield { sent: call, samples: throughPath(call.bits, path, random) };
  }
}
