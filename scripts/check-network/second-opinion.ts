import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';

/** A general CAN library with tables of its own (Apache-2.0), installed for the run and never shipped. */
const [LIBRARY, TABLES, VERSION] = ['@canboat/canboatjs', '@canboat/ts-pgns', '3.20.0'] as const;
const FOLDER = resolve('out/second-opinion');
/** Parameter group numbers that nobody uses: definitions without the library's faults are tried under them. */
const FIRST_UNUSED = 200_000;
const DSC_CALL = 129_808;

interface Definition {
  readonly PGN: number;
  readonly Fallback?: boolean;
  readonly Id: string;
  readonly Fields: readonly DefinedField[];
}

interface DefinedField {
  readonly Id: string;
  readonly FieldType: string;
  readonly BitLength?: number;
  readonly Signed?: boolean;
}

interface Parser {
  parseString(line: string): { fields: Record<string, unknown> } | undefined;
}

interface Library {
  readonly FromPgn: new (options: object) => Parser;
  readonly addCustomPgns: (pgns: { PGNs: Definition[] }, setter: string) => void;
}

/** What the other decoder reads in a payload: integers, texts and bytes in wire order, bits without a meaning left out. */
export type OtherDecoder = (pgn: number, payload: string) => readonly (number | string | null)[] | undefined;

/**
 * Installs the library and hands out its decoder. Every number is read as the plain integer on the wire, and the two
 * identities of PGN 129808 as five bytes each: the library itself reads them as one number and loses a byte.
 */
export function installOther(): OtherDecoder {
  if (!existsSync(`${FOLDER}/node_modules/${LIBRARY}`)) {
    const install = ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--prefix', FOLDER];
    execFileSync('npm', [...install, `${LIBRARY}@${VERSION}`], { stdio: 'ignore' });
  }
  const require = createRequire(`${FOLDER}/node_modules/`);
  const { FromPgn, addCustomPgns } = require(LIBRARY) as Library;
  const { getPGNWithNumber } = require(TABLES) as { getPGNWithNumber(pgn: number): Definition[] | undefined };
  const known = new Map<number, Definition | undefined>();
  const parser = new FromPgn({ format: 1, useCamel: true, returnNulls: true, resolveEnums: false });
  return (pgn, payload) => {
    if (!known.has(pgn)) {
      const all = getPGNWithNumber(pgn);
      // Of the two definitions of PGN 129808 the last is the general one.
      const found = pgn === DSC_CALL ? all?.at(-1) : all?.find(({ Fallback }) => Fallback !== true);
      const plain = found && {
        ...found,
        PGN: FIRST_UNUSED + known.size,
        Fields: found.Fields.flatMap(plainFields),
      };
      if (plain !== undefined) addCustomPgns({ PGNs: [plain] }, 'check-network');
      known.set(pgn, plain);
    }
    const definition = known.get(pgn);
    if (definition === undefined) return undefined;
    const bytes = payload.match(/../g) ?? [];
    const head = ['2026-06-01T14:10:00.000Z', 4, definition.PGN, 3, 255, bytes.length];
    const fields = parser.parseString([...head, ...bytes].join(','))?.fields;
    if (fields === undefined) return undefined;
    return definition.Fields.filter(({ FieldType }) => FieldType !== 'RESERVED' && FieldType !== 'SPARE').map(
      ({ Id }) => (fields[Id] ?? null) as number | string | null,
    );
  };
}

function plainFields(field: DefinedField): DefinedField[] {
  const { Id, FieldType, BitLength = 0 } = field;
  if (FieldType === 'DECIMAL') {
    return [0, 1, 2, 3, 4].map((index) => plainNumber(`${Id}${index}`, 8, false));
  }
  if (/^(STRING|RESERVED|SPARE|BINARY)/.test(FieldType)) return [field];
  return [plainNumber(Id, BitLength, field.Signed === true)];
}

function plainNumber(Id: string, BitLength: number, Signed: boolean): DefinedField & Record<string, unknown> {
  return { Id, Name: Id, FieldType: 'NUMBER', BitLength, Signed, Resolution: 1 };
}

/** Payloads of the project's own. */
export function ownPayloads(): readonly { id: string; pgn: number; payload: string }[] {
  const { constructed, recorded } = JSON.parse(readFileSync('shared/network/messages.json', 'utf8'));
  return [...constructed.messages, ...recorded.messages];
}
