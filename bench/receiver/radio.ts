import { classicalCall } from './classical.ts';
import { crossing, decibelText, type Findings, type Size, table } from './figures.ts';
import { AUDIO_RATE, throughRadio } from './fm-channel.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';
import { hearAll, succeeded, type Trial } from './trial.ts';

const BEFORE = 0.06;
const CARRIER = 0.02;

/** Whole-call success through an FM channel against carrier-to-noise ratio in 15 kHz, with and without de-emphasis. */
export function radio(size: Size): Findings {
  const trials = size === 'full' ? 100 : 10;
  const levels = size === 'full' ? [-4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9] : [-2, 1, 4, 7];
  const rows: (string | number)[][] = [['C/N dB', 'flat', 'classical', 'de-emphasised', 'classical']];
  const curves: Record<string, { at: number; share: number }[]> = {
    flat: [],
    flatClassical: [],
    deEmphasised: [],
    deEmphasisedClassical: [],
  };
  let [clean, wrong] = [0, 0];
  for (const at of levels) {
    const row: (string | number)[] = [at];
    for (const [name, deEmphasis] of [
      ['flat', false],
      ['deEmphasised', true],
    ] as const) {
      const heard = [...bursts(at, deEmphasis, trials)];
      const outcomes = hearAll(heard, AUDIO_RATE);
      const own = outcomes.filter(succeeded).length;
      for (const { burst, match } of outcomes.flatMap(({ reports }) => reports)) {
        if (burst.reception.quality.verdict !== 'clean') continue;
        clean++;
        if (match === 'wrong') wrong++;
      }
      const first = (BEFORE + CARRIER) * AUDIO_RATE;
      const classical = heard.filter(
        ({ samples, sent }) =>
          String(classicalCall(samples, AUDIO_RATE, first, sent.bits.length)) === String(sent.information),
      ).length;
      (curves[name] as unknown[]).push({ at, share: own / trials });
      (curves[`${name}Classical`] as unknown[]).push({ at, share: classical / trials });
      row.push((own / trials).toFixed(3), (classical / trials).toFixed(3));
    }
    rows.push(row);
  }
  const half = Object.fromEntries(
    Object.entries(curves).map(([name, curve]) => [name, crossing(curve, 0.5)]),
  );
  return {
    figures: {
      size,
      trialsPerPoint: trials,
      characters: 22,
      noiseBandHz: 15_000,
      curves,
      half,
      clean,
      wrongAmongClean: wrong,
    },
    lines: [
      `through an FM channel, open squelch around the burst, 22 characters, ${trials} bursts a point`,
      ...table(rows),
      `clean: ${wrong} wrong of ${clean}`,
      `50 % at C/N ${decibelText(half.flat ?? null)} dB flat, ${decibelText(half.deEmphasised ?? null)} dB de-emphasised; classical ${decibelText(half.flatClassical ?? null)} and ${decibelText(half.deEmphasisedClassical ?? null)}`,
    ],
    shortcomings: wrong > clean * 1e-4 + 1 ? [`${wrong} wrong calls among ${clean} clean ones`] : [],
  };
}

function* bursts(carrierToNoiseDb: number, deEmphasis: boolean, trials: number): Generator<Trial> {
  const random = randomFrom(110_000 + Math.round(10 * carrierToNoiseDb));
  for (let trial = 0; trial < trials; trial++) {
    const sent = randomCall(random, 22);
    yield {
      sent,
      samples: throughRadio(sent.bits, { carrierToNoiseDb, deEmphasis, before: BEFORE, behind: 0.1 }, random),
    };
  }
}
