import { createReceiver } from '../../src/audio/index.ts';
import { throughPath } from './channel.ts';
import { goertzel } from './classical.ts';
import { type Findings, type Size, table } from './figures.ts';
import { randomFrom } from './random.ts';
import { randomCall } from './random-call.ts';

const RATE = 48_000;

/** Processor time per second of 48 kHz sound against a bare two-tone Goertzel pass over the same samples, and memory over an hour. */
export function speed(size: Size): Findings {
  const seconds = size === 'full' ? 120 : 20;
  const random = randomFrom(60_000);
  const noise = Float32Array.from({ length: seconds * RATE }, () => 0.1 * random.normal());
  const call = randomCall(random, 22);
  const burst = throughPath(
    call.bits,
    { sampleRate: RATE, ebN0Db: 10, before: 0, behind: 0, gain: 0.1 },
    random,
  );
  const busy = new Float32Array(seconds * RATE);
  for (let at = 0; at + burst.length <= busy.length; at += burst.length) busy.set(burst, at);

  const rows = [
    ['two-tone Goertzel pass', timeOf(() => goertzelPass(noise)) / seconds],
    ['receiver, white noise', timeOf(() => listen(noise)) / seconds],
    ['receiver, bursts without a pause', timeOf(() => listen(busy)) / seconds],
  ] as const;
  const bare = rows[0][1];
  const memory = memoryOverTime(size === 'full' ? 60 : 5, noise, busy);
  const growth = (memory.at(-1) as number) - (memory[Math.floor(memory.length / 4)] as number);
  return {
    figures: {
      size,
      rows: rows.map(([name, ms]) => ({ name, msPerSecond: ms, ratio: ms / bare })),
      memoryMegabytes: memory,
    },
    lines: [
      'processor time per second of sound at 48 kHz',
      ...table([
        ['', 'ms', 'ratio'],
        ...rows.map(([name, ms]) => [name, ms.toFixed(2), (ms / bare).toFixed(1)]),
      ]),
      `memory in use by the minute, MB: ${memory.map((value) => value.toFixed(1)).join(' ')}`,
    ],
    shortcomings: growth > 5 ? [`memory grew by ${growth.toFixed(1)} MB`] : [],
  };
}

/** Milliseconds of processor time, the best of three runs. */
function timeOf(work: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 3; run++) {
    const before = process.cpuUsage();
    work();
    best = Math.min(best, process.cpuUsage(before).user / 1000);
  }
  return best;
}

function listen(samples: Float32Array): void {
  const receiver = createReceiver({ sampleRate: RATE, onReception: () => {} });
  receiver.push(samples);
  receiver.flush();
}

function goertzelPass(samples: Float32Array): number {
  let ones = 0;
  for (let at = 0; at + 40 <= samples.length; at += 40) {
    ones += Number(goertzel(samples, at, at + 40, 1300 / RATE) > goertzel(samples, at, at + 40, 2100 / RATE));
  }
  return ones;
}

/** Memory after each minute of sound, half of it noise and half bursts, in one stream. */
function memoryOverTime(minutes: number, noise: Float32Array, busy: Float32Array): number[] {
  const receiver = createReceiver({ sampleRate: RATE, onReception: () => {} });
  const used: number[] = [];
  for (let minute = 0; minute < minutes; minute++) {
    for (let second = 0; second < 60; second++) {
      const from = ((second % 20) * RATE) % noise.length;
      receiver.push((second % 30 === 0 ? busy : noise).subarray(from, from + RATE));
    }
    (globalThis as { gc?: () => void }).gc?.();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    used.push((heapUsed + arrayBuffers) / 1e6);
  }
  return used;
}
