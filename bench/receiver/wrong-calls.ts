import { throughPath } from './channel.ts';
import { type Findings, type Size, table, upperBound } from './figures.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';
import { hearAll, type Trial } from './trial.ts';

const RATE = 8000;
const EDGES = [0, 0.1, 0.3, 0.5, 0.7, 0.9, 0.99, 0.999, 0.9999, 1];

/**
 * Of the calls reported with each verdict, how many hold a wrong symbol (one left open is none); and stated probability against
 * the share without one.
 */
export function wrongCalls(size: Size): Findings {
  const trials = size === 'full' ? 4000 : 40;
  const levels = size === 'full' ? [-3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 8, 10, 12] : [-1, 0, 1, 2, 3, 6];
  const counts = { clean: [0, 0], repaired: [0, 0], doubtful: [0, 0] } as Record<string, [number, number]>;
  const bins = EDGES.slice(1).map(() => ({ stated: 0, right: 0, count: 0 }));
  const rows: (string | number)[][] = [
    ['Eb/N0 dB', 'bursts', 'clean', 'wrong', 'repaired', 'wrong', 'doubtful', 'wrong', 'nothing'],
  ];
  for (const at of levels) {
    const here = { clean: [0, 0], repaired: [0, 0], doubtful: [0, 0] } as Record<string, [number, number]>;
    let silent = 0;
    for (const { reports } of hearAll(bursts(at, trials), RATE)) {
      if (reports.length === 0) silent++;
      for (const { burst, match } of reports) {
        const { verdict, probability } = burst.reception.quality;
        for (const each of [here, counts]) {
          const pair = each[verdict] as [number, number];
          pair[0]++;
          if (match === 'wrong') pair[1]++;
        }
        const place = EDGES.findLastIndex((edge, n) => probability >= edge && n < bins.length);
        const bin = bins[place] as (typeof bins)[number];
        bin.stated += probability;
        bin.right += Number(match !== 'wrong');
        bin.count++;
      }
    }
    rows.push([
      at,
      trials,
      ...['clean', 'repaired', 'doubtful'].flatMap((verdict) => here[verdict] as [number, number]),
      silent,
    ]);
  }
  const [clean, wrong] = counts.clean as [number, number];
  const bound = upperBound(wrong, clean);
  const calibration = bins.map(({ stated, right, count }, n) => ({
    from: EDGES[n] as number,
    to: EDGES[n + 1] as number,
    count,
    stated: count === 0 ? null : stated / count,
    right: count === 0 ? null : right / count,
  }));
  return {
    figures: {
      size,
      trialsPerPoint: trials,
      sampleRate: RATE,
      rows,
      counts,
      wrongAmongCleanUpper95: bound,
      calibration,
    },
    lines: [
      'calls reported by verdict, and how many of them are wrong',
      ...table(rows),
      `clean: ${wrong} wrong of ${clean}; with 95 % confidence fewer than ${bound.toExponential(1)}`,
      'stated probability against share right',
      ...table([
        ['from', 'to', 'calls', 'mean stated', 'share right'],
        ...calibration.map(({ from, to, count, stated, right }) => [
          from,
          to,
          count,
          stated?.toFixed(5) ?? '',
          right?.toFixed(5) ?? '',
        ]),
      ]),
    ],
    shortcomings: wrong > clean * 1e-4 + 1 ? [`${wrong} wrong calls among ${clean} clean ones`] : [],
  };
}

function* bursts(at: number, trials: number): Generator<Trial> {
  const random = randomFrom(70_000 + 10 * at);
  for (let trial = 0; trial < trials; trial++) {
    const sent = randomCall(random, trial % 2 === 0 ? 22 : 30);
    const [offsetHz, clockPpm] = [20 * random.even() - 10, 60 * random.even() - 30];
    const before = 0.05 + 0.01 * random.even();
    const path = { sampleRate: RATE, ebN0Db: at, offsetHz, clockPpm, before, behind: 0.1, gain: 0.1 };
    yield { sent, samples: throughPath(sent.bits, path, random) };
  }
}
