import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as call from '../../src/call/symbol.ts';

interface Row {
  readonly symbol: number;
  readonly name: string;
  readonly source: string;
}

const path = join(import.meta.dirname, '../../shared/call/symbols.json');
const { tables } = JSON.parse(readFileSync(path, 'utf8')) as {
  readonly tables: Record<string, readonly Row[]>;
};
const shipped: Record<string, call.SymbolTable<string>> = {
  formatSpecifiers: call.formatSpecifiers,
  categories: call.categories,
  natures: call.natures,
  firstTelecommands: call.firstTelecommands,
  reasons: call.reasons,
  secondTelecommands: call.secondTelecommands,
  endsOfSequence: call.endsOfSequence,
};

describe.each(Object.entries(tables))('%s', (table, rows) => {
  it.each(rows.map((row) => [row.symbol, row.name, row.source] as const))('%i is %s (%s)', (symbol, name) => {
    expect(call.nameOfSymbol(shipped[table] as call.SymbolTable<string>, symbol)).toBe(name);
  });

  it('has no other row', () => {
    expect(shipped[table]?.rows).toEqual(rows.map((row) => [row.symbol, row.name]));
  });

  it('names every symbol, both ways', () => {
    for (let symbol = 0; symbol < 128; symbol++) {
      const names = shipped[table] as call.SymbolTable<string>;
      expect(call.symbolOfName(names, call.nameOfSymbol(names, symbol))).toBe(symbol);
    }
  });
});

describe('names of no symbol', () => {
  it.each(['symbol-128', 'symbol--1', 'symbol-', 'constructor', '__proto__', ''])('%s throws', (name) => {
    expect(() => call.symbolOfName(shipped.natures as call.SymbolTable<string>, name)).toThrow(RangeError);
  });

  it('names what there is to one who gives another name', () => {
    const leak = () => call.symbolOfName(shipped.natures as call.SymbolTable<string>, 'leak');
    expect(leak).toThrow(/^nature of distress: expected one of .*flooding, .*, got 'leak'$/);
  });
});
