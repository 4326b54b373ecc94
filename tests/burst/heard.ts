import { type CharacterTables, combineCopies, withFloor } from '../../src/burst/character-table.ts';
import { report } from '../../src/burst/decode-soft.ts';
import { hearCall } from '../../src/burst/hear-call.ts';
import type { Reception } from '../../src/burst/index.ts';
import type { Rescore } from '../../src/burst/judgement.ts';
import type { Result } from '../../src/result/index.ts';

/** A symbol that was heard clearly, several as likely as each other, or nothing heard (`null`). */
export type Word = number | readonly number[] | null;

/**
 * Metrics of words that are each as sure as `surety`: natural log of the likelihood against the mean over all 1024
 * words, as hearCall takes them.
 */
export function metricsOf(words: readonly Word[], surety = 0.99): Float64Array {
  const metrics = new Float64Array(128 * words.length);
  words.forEach((word, position) => {
    if (word === null) return;
    const symbols = typeof word === 'number' ? [word] : word;
    metrics.fill(Math.log(((1 - surety) / 127) * 1024), 128 * position, 128 * (position + 1));
    for (const symbol of symbols)
      metrics[128 * position + symbol] = Math.log((surety / symbols.length) * 1024);
  });
  return metrics;
}

/** The tables of a stream of such words. */
export function tablesOf(words: readonly Word[], surety = 0.99): CharacterTables {
  return combineCopies(withFloor(metricsOf(words, surety)));
}

/** Stream positions of character `index`, format specifier once (M.493: slot k of DX, slot k + 2 of RX). */
export const copiesOf = (index: number): [number, number] => [2 * (7 + index), 2 * (9 + index) + 1];

/** The stream with the words at some positions replaced. */
export function withWords(
  stream: readonly Word[],
  positions: readonly number[],
  word: (sent: Word, position: number) => Word,
): Word[] {
  return stream.map((sent, position) => (positions.includes(position) ? word(sent, position) : sent));
}

/** What is read from metrics of words, as the receiver of sound reads them. */
export function readMetrics(
  metrics: ArrayLike<number>,
  { rescore, lead }: { readonly rescore?: Rescore; readonly lead?: number } = {},
): Result<Reception> {
  return report(hearCall(metrics, rescore, lead).alone);
}
