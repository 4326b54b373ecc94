// Throws mutated input at every parser and decoder of the built package, time-boxed and seeded.
//
//   node scripts/fuzz.mjs --seconds 60 --seed 1      all targets share the time
//   node scripts/fuzz.mjs --replay                   only the kept corpus
//
// An input that made something throw is kept in tests/fuzz/corpus.json and replayed from then on.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { targets } from '../tests/fuzz/targets.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const corpusFile = join(root, 'tests/fuzz/corpus.json');
const { values: options } = parseArgs({
  options: {
    seconds: { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    replay: { type: 'boolean', default: false },
  },
});

let state = Number(options.seed) >>> 0 || 1;
/** Marsaglia's 32-bit xorshift: the seed gives the run again. */
function random(below) {
  state ^= state << 13;
  state ^= state >>> 17;
  state ^= state << 5;
  return (state >>> 0) % below;
}

/** Every text in the vectors of shared/, so that mutation starts from input that means something. */
function seeds() {
  const found = new Set(['', '0', '__proto__', 'constructor', 'toString', '\u0000', '\ud800']);
  const collect = (value) => {
    if (typeof value === 'string' && value.length < 4000) found.add(value);
    else if (Array.isArray(value))
      value.length > 8 && value.every((one) => typeof one === 'number' && one < 256)
        ? found.add(String.fromCharCode(...value))
        : value.forEach(collect);
    else if (value !== null && typeof value === 'object') Object.values(value).forEach(collect);
  };
  for (const entry of readdirSync(join(root, 'shared'), { recursive: true, withFileTypes: true })) {
    if (entry.isFile() && entry.name.endsWith('.json')) {
      const text = readFileSync(join(entry.parentPath, entry.name), 'utf8');
      if (text.length < 20_000) found.add(text);
      collect(JSON.parse(text));
    }
  }
  return [...found];
}

const interesting = [
  '0',
  '9',
  '9'.repeat(10),
  '$',
  '!',
  '\\',
  '*',
  ',',
  ',,,,',
  '\r\n',
  '"',
  '126',
  '\u00a0',
  '°',
  '′',
  '٣',
  '\uff12',
  'E',
  '-',
  'NaN',
  '{}',
  '[]',
  'null',
  '1e999',
  '\u0000',
  '\u00ff',
  'RIFF',
  'data',
];
function mutate(text, others) {
  let out = text;
  for (let times = 1 + random(4); times > 0; times -= 1) {
    const at = random(out.length + 1);
    const length = random(1 + Math.min(16, out.length - at));
    const piece = [
      () => '',
      () => String.fromCharCode(random(256)),
      () => interesting[random(interesting.length)],
      () => String.fromCodePoint(random(0x11000)),
      () => out.slice(at, at + length).repeat(1 + random(20)),
      () => others[random(others.length)].slice(0, 200),
      () => [...out.slice(at, at + length)].reverse().join(''),
    ][random(7)]();
    out = out.slice(0, at) + piece + out.slice(at + length);
  }
  return out.slice(0, 20_000);
}

const corpus = JSON.parse(readFileSync(corpusFile, 'utf8'));
const failures = [];
function attempt(name, text) {
  try {
    structuredClone(targets[name](text));
    return true;
  } catch (error) {
    failures.push(name);
    console.error(
      `${name} threw on ${JSON.stringify(text).slice(0, 300)}\n${error.stack?.split('\n').slice(0, 4).join('\n')}`,
    );
    return false;
  }
}

for (const { target, input } of corpus) attempt(target, input);
console.log(`${corpus.length} kept inputs replayed`);

if (!options.replay) {
  const start = seeds();
  const names = Object.keys(targets);
  const share = (Number(options.seconds) * 1000) / names.length;
  for (const name of names) {
    const until = performance.now() + share;
    let count = 0;
    while (performance.now() < until) {
      const text = mutate(start[random(start.length)], start);
      count += 1;
      if (!attempt(name, text)) {
        corpus.push({ target: name, input: text });
        break;
      }
    }
    console.log(`${name.padEnd(24)} ${count} inputs`);
  }
  if (failures.length > 0) writeFileSync(corpusFile, `${JSON.stringify(corpus, null, 2)}\n`);
}
console.log(
  `fuzzing: ${failures.length === 0 ? 'nothing thrown' : `${failures.length} failures in ${[...new Set(failures)].join(', ')}`}`,
);
process.exitCode = failures.length === 0 ? 0 : 1;
