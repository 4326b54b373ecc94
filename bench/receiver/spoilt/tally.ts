import type { Verdict } from '../../../src/burst/index.ts';
import type { SentCall } from '../random-call.ts';

/** Of the calls with each verdict: how many there were, and how many hold a wrong symbol. */
export type Tally = Record<Verdict, [count: number, wrong: number]> & { silent: number };

export const emptyTally = (): Tally => ({ clean: [0, 0], repaired: [0, 0], doubtful: [0, 0], silent: 0 });

/** Whether a reading is none of the calls that were sent; characters left open are not wrong. */
export function isWrong(read: readonly (number | null)[], sent: readonly SentCall[]): boolean {
  return !sent.some(
    ({ information }) =>
      information.length === read.length &&
      read.every((symbol, at) => symbol === null || symbol === information[at]),
  );
}
