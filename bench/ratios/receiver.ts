import { createReceiver } from 'seahail/audio';
import { throughPath } from '../receiver/channel.ts';
import { goertzel } from '../receiver/classical.ts';
import { randomFrom } from '../receiver/random.ts';
import { randomCall } from '../receiver/random-call.ts';
import { type Figure, ratioOf } from './ratio.ts';

const RATE = 48_000;
const SECONDS = 2;

export function receiverFigures(): Figure[] {
  const random = randomFrom(60_000);
  const noise = Float32Array.from({ length: SECONDS * RATE }, () => 0.1 * random.normal());
  const path = { sampleRate: RATE, ebN0Db: 10, before: 0, behind: 0, gain: 0.1 };
  const bursts = Array.from({ length: 9 }, () => throughPath(randomCall(random, 22).bits, path, random));
  const busy = new Float32Array(bursts.reduce((sum, { length }) => sum + length, 0));
  bursts.reduce((at, burst) => {
    busy.set(burst, at);
    return at + burst.length;
  }, 0);
  const unit = randomCall(random, 22).bits.slice(20, 140);
  const phasing = throughPath(unit.repeat(48), path, random);
  return (
    [
      ['noise', noise, 12],
      ['bursts without a pause', busy, 150],
      ['phasing without end', phasing, 150],
    ] as const
  ).map(([what, samples, goal]) => ({
    what: `receiver, ${what}, 48 kHz`,
    beside: 'two-tone Goertzel pass',
    goal,
    ratio: ratioOf({ subject: () => listen(samples), yardstick: () => goertzelPass(samples) }),
  }));
}

function listen(samples: Float32Array): number {
  let heard = 0;
  const receiver = createReceiver({
    sampleRate: RATE,
    onReception: () => {
      heard++;
    },
  });
  receiver.push(samples);
  receiver.flush();
  return heard;
}

function goertzelPass(samples: Float32Array): number {
  let ones = 0;
  for (let at = 0; at + 40 <= samples.length; at += 40) {
    ones += Number(goertzel(samples, at, at + 40, 1300 / RATE) > goertzel(samples, at, at + 40, 2100 / RATE));
  }
  return ones;
}
