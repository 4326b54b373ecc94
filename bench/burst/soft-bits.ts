/**
 * Whole-call success, wrong calls and calibration of decodeSoft in white noise.
 *
 *   npx esbuild bench/burst/soft-bits.ts --bundle --platform=node --format=esm --outfile=out/soft-bits.mjs
 *   (a span of 0: opposite signals, every bit by itself)
 *   nice node out/soft-bits.mjs [calls per point] [span of bits] [kinds, comma between] [from dB] [to dB] [seed]
 */
import { decodeSoft, type Verdict } from '../../src/burst/index.ts';
import { DOT_PATTERN, streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { receivedBits, separateBits } from './phase-continuous.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';

type Tally = [right: number, wrong: number];
const [calls = '300', span = '5', kinds = '22,30', from = '-3', to = '6', seed = '1'] = process.argv.slice(2);
const edges = [0, 0.5, 0.9, 0.99, 0.999, 0.9999, 1.0001];
const bins = edges.slice(1).map(() => ({ count: 0, right: 0, stated: 0 }));
const cleanTotals = { count: 0, wrong: 0 };
console.log(`span ${span}, ${calls} calls a point, seed ${seed}`);
console.log('call  Eb/N0  wrong bits  success  clean (wrong)  repaired (wrong)  doubtful (right)  none');
for (const kind of kinds.split(',') as Parameters<typeof randomCall>[0][]) {
  for (let decibel = Number(from); decibel <= Number(to); decibel++) {
    const random = randomFrom(1000 * Number(seed) + 10 * decibel + kind.length);
    const tally: Record<Verdict, Tally> = { clean: [0, 0], repaired: [0, 0], doubtful: [0, 0] };
    let none = 0;
    let errors = 0;
    let sent = 0;
    for (let call = 0; call < Number(calls); call++) {
      const characters = randomCall(kind, random);
      const text = DOT_PATTERN + streamOf(characters).map(encodeSymbol).join('');
      const noise = Array.from({ length: 60 }, () => random.integer(0, 1));
      const bits = Uint8Array.from([...noise, ...[...text].map(Number), ...noise]);
      const ratio = 10 ** (decibel / 10);
      const llrs =
        span === '0' ? separateBits(bits, ratio, random) : receivedBits(bits, ratio, Number(span), random);
      llrs.forEach((llr, index) => {
        if (llr > 0 !== (bits[index] === 1)) errors++;
      });
      sent += bits.length;
      const result = decodeSoft(llrs);
      if (!result.ok) {
        none++;
        continue;
      }
      const { information, quality } = result.value;
      const read = quality.characters.slice(0, -1).map(({ symbol }) => symbol);
      const right = read.join() === characters.join();
      tally[quality.verdict][right ? 0 : 1]++;
      if (information.includes(null)) continue;
      const bin = bins.find((_, index) => quality.probability < (edges[index + 1] as number));
      if (bin !== undefined) {
        bin.count++;
        bin.stated += quality.probability;
        if (right) bin.right++;
      }
    }
    const success = (tally.clean[0] + tally.repaired[0]) / Number(calls);
    cleanTotals.count += tally.clean[0] + tally.clean[1];
    cleanTotals.wrong += tally.clean[1];
    console.log(
      `${kind.padEnd(5)} ${String(decibel).padStart(4)}  ${(errors / sent).toExponential(1)}  ${success.toFixed(3)}  ${tally.clean[0]} (${tally.clean[1]})  ${tally.repaired[0]} (${tally.repaired[1]})  ${tally.doubtful[1]} (${tally.doubtful[0]})  ${none}`,
    );
  }
}
console.log(`clean: ${cleanTotals.count}, wrong among them: ${cleanTotals.wrong}`);
console.log('stated probability  mean stated  share right  of');
bins.forEach(({ count, right, stated }, index) => {
  if (count > 0)
    console.log(
      `${edges[index]} to ${Math.min(edges[index + 1] as number, 1)}  ${(stated / count).toFixed(5)}  ${(right / count).toFixed(5)}  ${count}`,
    );
});
