import { decodeBits } from '../../../src/burst/index.ts';
import { randomFrom } from '../random.ts';
import { anyCall } from './any-call.ts';
import { emptyTally, isWrong, type Tally } from './tally.ts';
import { besides, type Spoil, WAYS } from './ways.ts';

/** Lets hard bits be decoded that were spoilt in some ways, `trials` bursts each. */
export function spoiltBits(
  trials: number,
  seed: number,
  ways: Readonly<Record<string, Spoil>> = WAYS,
): Record<string, Tally> {
  return Object.fromEntries(
    Object.entries(ways).map(([way, spoil], number) => {
      const random = randomFrom(seed + 1000 * number);
      const tally = emptyTally();
      for (let trial = 0; trial < trials; trial++) {
        const sent = anyCall(random);
        const other = anyCall(random);
        const bits = '0110100'.slice(random.below(7)) + besides(spoil(sent.bits, other.bits, random), random);
        const result = decodeBits(bits);
        if (!result.ok) {
          tally.silent++;
          continue;
        }
        const { information, quality } = result.value;
        tally[quality.verdict][0]++;
        if (isWrong(information, [sent, other])) tally[quality.verdict][1]++;
      }
      return [way, tally];
    }),
  );
}
