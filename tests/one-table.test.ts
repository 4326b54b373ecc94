import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = join(import.meta.dirname, '../src');

/** Symbols that tell one kind of call from another: test, ship position and the three ends of sequence. */
const TELLING = /(?<![\w.])(?:117|118|121|122|127)(?![\w.])/;

/** Where such a number is the table of symbols, the last symbol of all, or no symbol. */
const allowed: Readonly<Record<string, RegExp>> = {
  // The signal of inland waters has a layout of its own.
  'call/symbol.ts': /^ {4}\[1(?:17|18|21|22|27), '|> 127\)|const ATIS_FORMAT = /,
  'call/part.ts': /<= 127/,
  'burst/symbol-code.ts': /<= 127|0 to 127/,
  'burst/texts.ts': /from 0 to 127/,
  'burst/field-prior.ts': /range\(100, 127\)/,
  'sentence/dsc/field.ts': /symbol <= 127/,
  'network/message/dsc-call.ts': /value > 127/,
  'network/write/write-node.ts': /\['deviceClass', 127\]/,
  'burst/atis.ts': /const END = /,
  'network/fault/texts.ts': /symbols of 100 to 127/,
};

const lines = ['call', 'burst', 'sentence', 'station', 'speech', 'audio', 'network'].flatMap((room) =>
  readdirSync(join(src, room), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => {
      const code = readFileSync(join(src, room, file), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');
      return code
        .split('\n')
        .map((line) => [`${room}/${file}` as string, line.replace(/\s*\/\/.*/, '')] as const);
    }),
);

describe('the table of kinds', () => {
  it('is the one place that says which symbols a kind of call has', () => {
    const others = lines.filter(([file, line]) => TELLING.test(line) && !allowed[file]?.test(line));
    expect(others.map(([file, line]) => `${file}: ${line.trim()}`)).toEqual([]);
  });

  it('has no exception that is not used', () => {
    const used = new Set(lines.filter(([file, line]) => allowed[file]?.test(line)).map(([file]) => file));
    expect(Object.keys(allowed).filter((file) => !used.has(file))).toEqual([]);
  });
});
