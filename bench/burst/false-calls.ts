/**
 * How often decodeBits finds a call in bits that hold none.
 *
 *   npx esbuild bench/burst/false-calls.ts --bundle --platform=node --format=esm --outfile=out/false-calls.mjs
 *   nice node out/false-calls.mjs [millions of bits] [seed]
 */
import { decodeBits } from '../../src/burst/index.ts';
import { randomFrom } from './random.ts';

const [millions = '10', seed = '1'] = process.argv.slice(2);
const random = randomFrom(Number(seed));
const counts: Record<string, number> = { clean: 0, repaired: 0, doubtful: 0 };
for (let part = 0; part < 10 * Number(millions); part++) {
  const bits = Uint8Array.from({ length: 100_000 }, () => random.integer(0, 1));
  let from = 0;
  for (let result = decodeBits(bits); result.ok; result = decodeBits(bits, { from })) {
    counts[result.value.quality.verdict] = (counts[result.value.quality.verdict] ?? 0) + 1;
    from = Math.max(from + 1, result.value.quality.end);
  }
}
console.log(
  `${millions} million random bits (${(Number(millions) / 0.0012 / 3600).toFixed(2)} hours at 1200 baud):`,
  counts,
);
