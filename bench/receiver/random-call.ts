import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import type { Random } from './random.ts';

/** A call to be sent: its symbols and bits. Identities are random, no station's in particular. */
export interface SentCall {
  /** Format specifier twice, up to and with one end of sequence. */
  readonly information: readonly number[];
  readonly stream: readonly number[];
  /** Dot pattern first. */
  readonly bits: string;
}

/**
 * An individual routine call of 22 different characters, end of sequence and error check included, or of 30: the same with
 * eight two-digit characters of any value behind the channels.
 */
export function randomCall(random: Random, length: 22 | 30): SentCall {
  const pair = (): number => random.below(100);
  const ship = (): number[] => [20 + random.below(58), pair(), pair(), pair(), 10 * random.below(10)];
  const channel = [90, 0, [6, 8, 10, 13, 67, 69, 72, 73, 77][random.below(9)] as number];
  const characters = [
    120,
    ...ship(),
    100,
    ...ship(),
    100,
    126,
    ...channel,
    ...(random.even() < 0.5 ? channel : [126, 126, 126]),
    ...Array.from({ length: length - 22 }, pair),
    [117, 122][random.below(2)] as number,
  ];
  const stream = streamOf(characters);
  return {
    information: [120, ...characters],
    stream,
    bits: `10101010101010101010${stream.map(encodeSymbol).join('')}`,
  };
}
