/**
 * Whole-call success from hard bits with independent errors: plain decoders that are told where the call stands and
 * how long it is, beside decodeBits, which is told neither.
 *
 *   npx esbuild bench/burst/hard-bits.ts --bundle --platform=node --format=esm --outfile=out/hard-bits.mjs
 *   nice node out/hard-bits.mjs [calls per point] [seed]
 */
import { decodeBits, type Verdict } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { addedCopies, firstCopy, firstCopyRepaired } from './hard-decoders.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';

type Tally = [right: number, wrong: number];
const [calls = '300', seed = '1'] = process.argv.slice(2);
const plain = [firstCopy, firstCopyRepaired, addedCopies];
console.log(`${calls} calls a point, seed ${seed}; right (wrong) as shares of all calls`);
console.log(
  'call  wrong bits  first copy  and repaired  added copies  decodeBits: clean  repaired  doubtful  read in full and right',
);
for (const kind of ['22', '30'] as const)
  for (const rate of [1e-3, 3e-3, 1e-2, 2e-2, 3e-2, 5e-2, 7e-2, 1e-1]) {
    const random = randomFrom(Number(seed) + 1000 * rate);
    const tallies = plain.map((): Tally => [0, 0]);
    const verdicts: Record<Verdict, Tally> = { clean: [0, 0], repaired: [0, 0], doubtful: [0, 0] };
    let full = 0;
    for (let call = 0; call < Number(calls); call++) {
      const characters = randomCall(kind, random);
      const sent = [...streamOf(characters).map(encodeSymbol).join('')];
      const bits = Uint8Array.from(sent, (bit) => Number(bit) ^ (random.next() < rate ? 1 : 0));
      plain.forEach((decode, index) => {
        const read = decode(bits, characters.length - 1);
        if (read !== null)
          (tallies[index] as Tally)[read.slice(0, -1).join() === characters.join() ? 0 : 1]++;
      });
      const result = decodeBits(bits);
      if (!result.ok) continue;
      const { quality } = result.value;
      const right =
        quality.characters
          .slice(0, -1)
          .map(({ symbol }) => symbol)
          .join() === characters.join();
      verdicts[quality.verdict][right ? 0 : 1]++;
      if (right) full++;
    }
    const share = ([right, wrong]: readonly number[]) =>
      `${((right as number) / Number(calls)).toFixed(3)} (${((wrong as number) / Number(calls)).toFixed(3)})`;
    const { clean, repaired, doubtful } = verdicts;
    console.log(
      [
        kind,
        rate,
        ...tallies.map(share),
        share(clean),
        share(repaired),
        share(doubtful),
        (full / Number(calls)).toFixed(3),
      ].join('  '),
    );
  }
