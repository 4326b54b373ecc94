import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { randomFrom } from '../bench/receiver/random.ts';
import { createReceiver, modulate, readWav, writeWav } from '../src/audio/index.ts';
import { valueOf } from '../src/result/index.ts';

/**
 * Run by scripts/check-modem.sh. Settings of the modem: bandwidth 100 Hz, so that both tones fall on its grid; frames of 60
 * raw bits, so that it seldom searches for the bit clock anew; only whole frames come out, so filler follows each burst.
 */
const RATE = 48_000;
const FILLER = '10'.repeat(60);

const { sequences } = JSON.parse(readFileSync('shared/burst/worked-sequences.json', 'utf8')) as {
  sequences: { name: string; bits: string; information: number[] }[];
};
const folder = mkdtempSync(join(tmpdir(), 'check-modem-'));
let failures = 0;

function tell(good: boolean, what: string): void {
  if (!good) failures++;
  console.log(`${good ? 'right' : 'WRONG'}  ${what}`);
}

/** White noise at an energy per bit over noise density; amplitude of the tones is `amplitude`. */
function withNoise(samples: Float32Array, amplitude: number, ebN0Db: number, seed: number): Float32Array {
  const { normal } = randomFrom(seed);
  const sigma = amplitude * Math.sqrt(((10 ** (-ebN0Db / 10) / 2400) * RATE) / 2);
  return samples.map((sample) => sample + sigma * normal());
}

/** What the modem makes of a sound. */
function readByModem(samples: Float32Array): string {
  const file = join(folder, 'ours.wav');
  writeFileSync(file, writeWav(samples, { sampleRate: RATE }));
  const options = [
    '-f',
    file,
    '1200',
    '-M',
    '1300',
    '-S',
    '2100',
    '-b',
    '100',
    '--startbits',
    '0',
    '--stopbits',
    '0',
  ];
  const { stdout } = spawnSync('minimodem', ['--rx', ...options, '--binary-raw', '60', '-c', '1.2'], {
    encoding: 'utf8',
  });
  return stdout.replace(/\s/g, '');
}

/** The sound that the modem makes of some bits: packed eight to a byte, the first in the lowest place. */
function madeByModem(bits: string): Float32Array {
  const padded = bits.padEnd(Math.ceil(bits.length / 8) * 8, '10');
  const bytes = Uint8Array.from({ length: padded.length / 8 }, (_, n) =>
    [...padded.slice(8 * n, 8 * n + 8)].reduce((byte, bit, place) => byte | (Number(bit) << place), 0),
  );
  const file = join(folder, 'theirs.wav');
  const options = [
    '-f',
    file,
    '-8',
    '--startbits',
    '0',
    '--stopbits',
    '0',
    '-M',
    '1300',
    '-S',
    '2100',
    '-R',
    String(RATE),
    '1200',
  ];
  spawnSync('minimodem', ['--tx', ...options], { input: bytes });
  return valueOf(readWav(new Uint8Array(readFileSync(file)))).samples;
}

for (const ebN0Db of [Number.POSITIVE_INFINITY, 20, 16, 14]) {
  const noise = ebN0Db === Number.POSITIVE_INFINITY ? 'without noise' : `at Eb/N0 = ${ebN0Db} dB`;
  let wrongBits = 0;
  let read = 0;
  for (const [n, { bits }] of sequences.entries()) {
    const sound = modulate(bits + FILLER, {
      sampleRate: RATE,
      amplitude: 0.2,
      leadInSeconds: 0.05 + n / 1e4,
      tailSeconds: 0.05,
      allowDistress: true,
    });
    const found = readByModem(withNoise(sound, 0.2, ebN0Db, 100 + n));
    // The first bits of the dot pattern may be missing while it finds the carrier; the rest is compared bit for bit.
    const after = bits.slice(20);
    if (found.includes(after)) read++;
    wrongBits += fewestDifferences(found, after);
  }
  const share = wrongBits / sequences.reduce((sum, { bits }) => sum + bits.length - 20, 0);
  // At 14 dB the modem itself errs in 3 of 10 000 bits: a one-bit non-coherent detector.
  tell(
    ebN0Db >= 16 ? read === sequences.length : share < 2e-3,
    `modem reads ${read} of ${sequences.length} of our bursts bit for bit ${noise} (${wrongBits} bits wrong)`,
  );
}

for (const ebN0Db of [Number.POSITIVE_INFINITY, 20, 14, 8]) {
  const noise = ebN0Db === Number.POSITIVE_INFINITY ? 'without noise' : `at Eb/N0 = ${ebN0Db} dB`;
  let read = 0;
  for (const [n, { bits, information }] of sequences.entries()) {
    const sound = madeByModem(bits);
    const amplitude = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    const receiver = createReceiver({
      sampleRate: RATE,
      onReception: ({ reception }) => {
        if (reception.quality.verdict === 'clean' && String(reception.information) === String(information))
          read++;
      },
    });
    receiver.push(withNoise(sound, amplitude, ebN0Db, 200 + n));
    receiver.flush();
  }
  tell(
    read === sequences.length,
    `we read ${read} of ${sequences.length} of the modem's bursts clean ${noise}`,
  );
}

rmSync(folder, { recursive: true });
process.exit(failures === 0 ? 0 : 1);

/** Least number of bits that differ at any place where `wanted` may begin. */
function fewestDifferences(found: string, wanted: string): number {
  let fewest = wanted.length;
  for (let at = 0; at + wanted.length <= found.length; at++) {
    let differing = 0;
    for (let k = 0; k < wanted.length && differing < fewest; k++)
      if (found[at + k] !== wanted[k]) differing++;
    fewest = Math.min(fewest, differing);
  }
  return fewest;
}
