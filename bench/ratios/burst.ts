import { decodeBits, decodeSoft } from 'seahail/burst';
import { receivedBits } from '../burst/phase-continuous.ts';
import { randomFrom as bitNoise } from '../burst/random.ts';
import { throughPath } from '../receiver/channel.ts';
import { classicalCall } from '../receiver/classical.ts';
import { randomFrom } from '../receiver/random.ts';
import { randomCall } from '../receiver/random-call.ts';
import { type Figure, ratioOf } from './ratio.ts';

const RATE = 48_000;
/** Eb/N0 at which the classical chain still gets through. */
const EB_N0_DB = 12;

export function burstFigures(): Figure[] {
  const bursts = Array.from({ length: 8 }, (_, seed) => {
    const { bits } = randomCall(randomFrom(seed), 22);
    const path = { sampleRate: RATE, ebN0Db: EB_N0_DB, before: 0, behind: 0 };
    const samples = throughPath(bits, path, randomFrom(seed));
    const ratio = 10 ** (EB_N0_DB / 10);
    return { bits, samples, soft: receivedBits(Uint8Array.from(bits, Number), ratio, 5, bitNoise(seed + 1)) };
  });
  const classical = () =>
    count(bursts, ({ samples, bits }) => classicalCall(samples, RATE, 0, bits.length) !== null);
  const beside = 'the classical chain, 48 kHz sound to characters';
  return [
    {
      what: 'decodeSoft, one burst of soft bits',
      beside,
      ratio: ratioOf({
        subject: () => count(bursts, ({ soft }) => decodeSoft(soft).ok),
        yardstick: classical,
      }),
    },
    {
      what: 'decodeBits, one burst of hard bits',
      beside,
      ratio: ratioOf({
        subject: () => count(bursts, ({ bits }) => decodeBits(bits).ok),
        yardstick: classical,
      }),
    },
  ];
}

function count<T>(list: readonly T[], good: (each: T) => boolean): number {
  let sum = 0;
  for (const each of list) if (good(each)) sum++;
  return sum;
}
