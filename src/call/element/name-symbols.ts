import {
  NO_INFORMATION,
  nameOfSymbol,
  type SymbolTable,
  symbolOfName,
  type UnknownSymbol,
} from '../symbol.ts';

/** The name of a symbol that was read; `null` for one that was not, or that is no symbol. */
export function readName<Name extends string>(
  table: SymbolTable<Name>,
  symbol: number | null,
): Name | UnknownSymbol | null {
  return isSymbol(symbol) ? nameOfSymbol(table, symbol) : null;
}

/** The same for a telecommand, where "no information" is `null` too. */
export function readTelecommand<Name extends string>(
  table: SymbolTable<Name>,
  symbol: number | null,
): Name | UnknownSymbol | null {
  return symbol === NO_INFORMATION ? null : readName(table, symbol);
}

/** The symbol of a name; `null` stays open. */
export function writeName<Name extends string>(
  table: SymbolTable<Name>,
  name: Name | UnknownSymbol | null,
): number | null {
  return name === null ? null : symbolOfName(table, name);
}

/** The symbol of a telecommand; `null` is "no information". */
export function writeTelecommand<Name extends string>(
  table: SymbolTable<Name>,
  name: Name | UnknownSymbol | null,
): number {
  return name === null ? NO_INFORMATION : symbolOfName(table, name);
}

function isSymbol(symbol: number | null): symbol is number {
  return symbol !== null && Number.isInteger(symbol) && symbol >= 0 && symbol <= 127;
}
