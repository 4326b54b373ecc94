import { type Findings, type Size, table, upperBound } from '../figures.ts';
import { spoiltBits } from './spoilt-bits.ts';
import { spoiltSound } from './spoilt-sound.ts';
import type { Tally } from './tally.ts';
import { IN_STEP } from './ways.ts';

/** Bursts spoilt in each way, in bits and in sound. */
const TRIALS = { quick: { bits: 60, sound: 12 }, full: { bits: 7200, sound: 400 } };
/** Goals: clean calls to count, the upper bound for wrong ones among them, and the share of repaired ones that are right. */
const LEAST_CLEAN = 30_000;
const WRONG_AMONG_CLEAN = 1.5e-4;
const REPAIRED_RIGHT = 0.99;

/**
 * Of the calls reported with each verdict, how many hold a wrong symbol, when bursts lose their tail or head, slip, are hit by
 * noise or by another burst, fade or pass a squelch.
 */
export function spoilt(size: Size): Findings {
  const trials = TRIALS[size];
  const seed = 130_000;
  const named = (prefix: string, tallies: Record<string, Tally>) =>
    Object.entries(tallies).map(([way, tally]) => ({ way: `${prefix}: ${way}`, tally }));
  const ways = [
    ...named('bits', spoiltBits(trials.bits, seed)),
    ...named('sound', spoiltSound(trials.sound, seed)),
  ];
  // Not in the total: see there.
  const inStep = named('bits', spoiltBits(trials.bits / 4, seed + 500, { 'two calls in step': IN_STEP }));
  const [clean, wrong] = total(ways.map(({ tally }) => tally.clean));
  const [repaired, repairedWrong] = total(ways.map(({ tally }) => tally.repaired));
  const bound = upperBound(wrong, clean);
  return {
    figures: {
      size,
      trials,
      ways,
      inStep,
      clean,
      wrong,
      wrongAmongCleanUpper95: bound,
      repaired,
      repairedWrong,
    },
    lines: [
      `calls reported from bursts spoilt in every way, ${trials.bits} of bits and ${trials.sound} of sound each, and how many are wrong`,
      ...table([
        ['', 'clean', 'wrong', 'repaired', 'wrong', 'doubtful', 'nothing'],
        ...[...ways, ...inStep].map(({ way, tally }) => [
          way,
          ...tally.clean,
          ...tally.repaired,
          tally.doubtful[0],
          tally.silent,
        ]),
      ]),
      `clean: ${wrong} wrong of ${clean}; with 95 % confidence fewer than ${bound.toExponential(1)} (two calls in step not counted)`,
      `repaired: ${repairedWrong} wrong of ${repaired}`,
    ],
    shortcomings: [
      ...(wrong > 0 ? [`${wrong} wrong calls among ${clean} clean ones`] : []),
      ...(size === 'full' && (clean < LEAST_CLEAN || bound > WRONG_AMONG_CLEAN)
        ? [`${clean} clean calls are too few to tell`]
        : []),
      ...[...ways, ...inStep]
        .filter(({ tally }) => !repairedHold(tally))
        .map(({ way, tally }) => `${way}: ${tally.repaired[1]} wrong of ${tally.repaired[0]} repaired`),
    ],
  };
}

/** Whether so many wrong calls among the repaired ones may be chance, if 99 of 100 are right: four deviations and one call. */
function repairedHold({ repaired: [count, wrong] }: Tally): boolean {
  const mean = count * (1 - REPAIRED_RIGHT);
  return wrong <= mean + 1 + 4 * Math.sqrt(mean);
}

function total(pairs: readonly (readonly [number, number])[]): [number, number] {
  return pairs.reduce<[number, number]>(([a, b], [c, d]) => [a + c, b + d], [0, 0]);
}
