import { spawnSync } from 'node:child_process';
import { createReceiver, readWav } from '../../src/audio/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { type Findings, type Size, table } from './figures.ts';
import { type Random, randomFrom } from './random.ts';

const RATE = 11_025;
const NOISE_RATE = 8000;

/** What is reported where there is no call: white noise, speech, chords, sweeping tones, other signalling at 1200 baud. */
export function falseCalls(size: Size): Findings {
  const hours = size === 'full' ? 1 : 1 / 60;
  const noiseHours = size === 'full' ? 24 : 1 / 12;
  const random = (n: number): Random => randomFrom(50_001 + n);
  const found = [
    listen('white noise', NOISE_RATE, noiseHours, whiteNoise(random(0))),
    listen('speech', speechRate(), hours, speech(random(1))),
    listen('chords', RATE, hours, chords(random(2))),
    listen('sweeping tones', RATE, hours, sweeps(random(3))),
    listen('random bits, 1300 and 2100 Hz', RATE, hours, shiftKeying(random(4), 1300, 2100, randomBits)),
    listen('framed data, 1200 and 2200 Hz', RATE, hours, shiftKeying(random(5), 1200, 2200, framedBits)),
    listen(
      'minimum-shift data, 1200 and 1800 Hz',
      RATE,
      hours,
      shiftKeying(random(6), 1200, 1800, framedBits),
    ),
    listen('clicks, as of an engine', RATE, hours, clicks(random(7))),
  ];
  return {
    figures: { size, found },
    lines: [
      'calls reported where there are none',
      ...table([
        ['sound', 'hours', 'samples a second', 'reported'],
        ...found.map(({ name, hours: h, rate, calls }) => [name, h.toFixed(2), rate, calls]),
      ]),
    ],
    shortcomings: found
      .filter(({ calls }) => calls > 0)
      .map(({ name, calls }) => `${calls} calls heard in ${name}`),
  };
}

/** Fills a block of samples; is asked again and again. */
type Source = (block: Float32Array) => void;

function listen(
  name: string,
  rate: number,
  hours: number,
  source: Source,
): { name: string; hours: number; rate: number; calls: number } {
  let calls = 0;
  const receiver = createReceiver({ sampleRate: rate, onReception: () => calls++ });
  const block = new Float32Array(8192);
  for (let left = hours * 3600 * rate; left > 0; left -= block.length) {
    source(block);
    receiver.push(block);
  }
  receiver.flush();
  return { name, hours, rate, calls };
}

function whiteNoise(random: Random): Source {
  return (block) => {
    for (let n = 0; n < block.length; n++) block[n] = 0.1 * random.normal();
  };
}

const SPEECH_WORDS =
  'mayday relay securite pan all ships vessel harbour master pilot tug lifeboat channel sixteen six seven two position latitude longitude degrees minutes north west wind gale warning sea area visibility poor rain showers good tide high water buoy light extinguished over out received standing by say again slowly boat in tow crew of four engine failure anchor dragging seventy two hello this is the evening forecast one three zero five twenty one hundred'.split(
    ' ',
  );

/** A minute of text, spoken by the synthesiser of Debian's package espeak-ng, in one of several voices and speeds. */
function spokenMinute(random: Random): Float32Array {
  const text = Array.from({ length: 220 }, (_, n) => {
    const word = SPEECH_WORDS[random.below(SPEECH_WORDS.length)] as string;
    return n % 12 === 11 ? `${word}.` : word;
  }).join(' ');
  const voice = ['en', 'en-us', 'de', 'fr', 'es', 'en+f3', 'en+m4'][random.below(7)] as string;
  const options = [
    '--stdout',
    '-v',
    voice,
    '-s',
    String(130 + random.below(90)),
    '-p',
    String(20 + random.below(60)),
  ];
  const spoken = spawnSync('espeak-ng', [...options, text], { maxBuffer: 1e8 });
  if (spoken.status !== 0) throw new Error('espeak-ng is needed for this section: apt-get install espeak-ng');
  return valueOf(readWav(new Uint8Array(spoken.stdout))).samples;
}

function speechRate(): number {
  const { stdout } = spawnSync('espeak-ng', ['--stdout', 'one'], { maxBuffer: 1e8 });
  return stdout ? valueOf(readWav(new Uint8Array(stdout))).sampleRate : RATE;
}

function speech(random: Random): Source {
  let minute = new Float32Array(0);
  let at = 0;
  return (block) => {
    for (let n = 0; n < block.length; n++) {
      if (at === minute.length) {
        minute = new Float32Array(spokenMinute(random));
        at = 0;
      }
      block[n] = (minute[at++] as number) + 1e-4 * random.normal();
    }
  };
}

/** Three or four notes of an equally tempered scale with four harmonics each, changed every quarter of a second or so. */
function chords(random: Random): Source {
  let left = 0;
  let tones: { phase: number; step: number; level: number }[] = [];
  return (block) => {
    for (let n = 0; n < block.length; n++) {
      if (left-- <= 0) {
        left = Math.round(RATE * (0.1 + 0.4 * random.even()));
        tones = Array.from({ length: 3 + random.below(2) }, () => 110 * 2 ** (random.below(48) / 12)).flatMap(
          (note) =>
            [1, 2, 3, 4]
              .filter((harmonic) => note * harmonic < RATE / 2)
              .map((harmonic) => ({
                phase: random.even(),
                step: (note * harmonic) / RATE,
                level: 0.1 / harmonic,
              })),
        );
      }
      let sum = 0;
      for (const tone of tones) {
        tone.phase += tone.step;
        sum += tone.level * Math.sin(2 * Math.PI * tone.phase);
      }
      block[n] = sum;
    }
  };
}

/** Tones that glide between random frequencies, at rates from 10 Hz to 10 kHz a second. */
function sweeps(random: Random): Source {
  let [phase, hertz, slope, left] = [0, 1000, 0, 0];
  return (block) => {
    for (let n = 0; n < block.length; n++) {
      if (left-- <= 0) {
        const speed = 10 ** (1 + 3 * random.even());
        const target = 200 + 3800 * random.even();
        left = Math.max(1, Math.round((Math.abs(target - hertz) / speed) * RATE));
        slope = (target - hertz) / left;
      }
      hertz += slope;
      phase += hertz / RATE;
      block[n] = 0.3 * Math.sin(2 * Math.PI * phase);
    }
  };
}

/** The ringing of a filter after each spark, at engine speeds that come and go, over weak noise. */
function clicks(random: Random): Source {
  let [toNext, sparksPerSecond, left, level] = [0, 20, 0, 0];
  let [ring, hertz] = [0, 1500];
  return (block) => {
    for (let n = 0; n < block.length; n++) {
      if (left-- <= 0) {
        left = Math.round(RATE * (1 + 9 * random.even()));
        sparksPerSecond = 10 + 290 * random.even();
      }
      if (toNext-- <= 0) {
        toNext = Math.round((RATE / sparksPerSecond) * (0.95 + 0.1 * random.even()));
        [ring, hertz, level] = [0, 900 + 1600 * random.even(), 0.5 * random.even()];
      }
      ring++;
      block[n] =
        level * Math.exp((-400 * ring) / RATE) * Math.sin((2 * Math.PI * hertz * ring) / RATE) +
        0.003 * random.normal();
    }
  };
}

/** Continuous-phase keying at 1200 baud between two tones. */
function shiftKeying(
  random: Random,
  one: number,
  zero: number,
  bits: (random: Random) => () => boolean,
): Source {
  const next = bits(random);
  let [phase, time, bit] = [0, 0, true];
  return (block) => {
    for (let n = 0; n < block.length; n++) {
      time += 1200 / RATE;
      if (time >= 1) {
        time -= 1;
        bit = next();
      }
      phase += (bit ? one : zero) / RATE;
      block[n] = 0.3 * Math.sin(2 * Math.PI * phase) + 0.003 * random.normal();
    }
  };
}

function randomBits(random: Random): () => boolean {
  return () => random.even() < 0.5;
}

/** Frames of data: flags, a zero after five ones, a change of tone for each zero, as in amateur and telemetry packets. */
function framedBits(random: Random): () => boolean {
  let [level, ones, left, flag] = [true, 0, 0, 0];
  const keyed = (bit: boolean): boolean => {
    if (!bit) level = !level;
    return level;
  };
  return () => {
    if (flag > 0) {
      flag--;
      ones = 0;
      return keyed(flag % 8 !== 0 && flag % 8 !== 7);
    }
    if (left-- <= 0) {
      left = 200 + random.below(2000);
      flag = 8 * (2 + random.below(40));
    }
    if (ones === 5) {
      ones = 0;
      return keyed(false);
    }
    const bit = random.even() < 0.5;
    ones = bit ? ones + 1 : 0;
    return keyed(bit);
  };
}
