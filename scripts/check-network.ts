import { readFileSync } from 'node:fs';
import { plainText, readVariableText } from '../src/network/field/text.ts';
import { readNetworkLog } from '../src/network/index.ts';
import { PARAMETER_GROUPS } from '../src/network/message/layout.ts';
import { decodePayload, encodePayload, type ParameterGroup } from '../src/network/message/payload.ts';
import { installOther, ownPayloads } from './check-network/second-opinion.ts';

/** One field of a vector: the integer on the wire, or bytes, in wire order. */
interface VectorField {
  readonly name: string;
  readonly kind?: 'reserved' | 'spare';
  readonly bits?: number;
  readonly raw?: number;
  readonly special?: 'not-available' | 'out-of-range' | 'reserved-value';
  readonly bytes?: string;
}

interface Vector {
  readonly id: string;
  readonly pgn: number;
  readonly payload: string;
  readonly fields: readonly VectorField[];
}

interface Stream {
  readonly id: string;
  readonly lines: readonly string[];
  readonly messages: readonly {
    readonly pgn: number;
    readonly source: number;
    readonly destination: number;
    readonly priority: number;
    readonly payload: string;
  }[];
}

interface VectorFile {
  readonly vectors: readonly Vector[];
  readonly streams: readonly Stream[];
}

const bytesOf = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const hexOf = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

/**
 * Where the other decoder is known to be wrong: text of two bytes a character comes out with a NUL after each, and the
 * two values below "not available" come out as numbers (public list of parameter groups: out of range, reserved).
 */
const OTHER_IS_WRONG = /^(?:(?:\w\0)+\w \w+|\d+ (?:out-of-range|reserved))$/;

/** Fields that the vectors take for bits without a meaning. */
const UNUSED = /^($|regional|filling)/;

const problems: string[] = [];
const counts = { payloads: 0, fields: 0, streams: 0, messages: 0, kept: 0 };

const payloads: { id: string; pgn: number; payload: string }[] = [...ownPayloads()];
for (const path of process.argv.slice(2).filter((argument) => !argument.startsWith('--'))) {
  const { vectors, streams } = JSON.parse(readFileSync(path, 'utf8')) as VectorFile;
  for (const vector of vectors) checkVector(vector);
  payloads.push(...vectors);
  for (const stream of streams) checkStream(stream);
}
if (process.argv.includes('--second-opinion')) compareWithOther();

console.log(
  Object.entries(counts)
    .map(([what, count]) => `${count} ${what}`)
    .join(', '),
);
for (const problem of problems) console.error(problem);
console.log(problems.length === 0 ? 'all agree' : `${problems.length} differ`);
process.exitCode = problems.length === 0 ? 0 : 1;

function checkVector({ id, pgn, payload, fields }: Vector): void {
  const group = PARAMETER_GROUPS.find((row) => row.pgn === pgn);
  if (group === undefined) {
    counts.kept++;
    return;
  }
  counts.payloads++;
  const exact = withFillers(group);
  const { values } = decodePayload(exact, bytesOf(payload));
  const again = hexOf(encodePayload(exact, values));
  // A message cut short is written whole, and bytes after the last field are left out: what both have must be the same.
  const common = Math.min(again.length, payload.length);
  if (again.slice(0, common) !== payload.slice(0, common).toLowerCase())
    problems.push(`${id}: written as ${again}`);

  const ours = group.fields.filter(([name, kind]) => !UNUSED.test(name) && kind !== 'repeated');
  const theirs = fields.filter(({ name, kind }) => kind === undefined && !/Reserved|Spare/.test(name));
  for (const [index, field] of ours.entries()) {
    const said = theirs[index];
    if (said === undefined) break;
    const value = (values as Record<string, unknown>)[field[0]];
    const expected = expectedOf(said);
    const got = rawOf(value, field as readonly [string, string, number, number?]);
    counts.fields++;
    if (expected !== undefined && got !== expected)
      problems.push(`${id} ${said.name}: expected ${expected}, got ${got}`);
  }
}

/** Bits without a meaning read like any others, so that what is written can be compared byte for byte. */
function withFillers(group: ParameterGroup): ParameterGroup {
  const fields = group.fields.map((field, index) =>
    field[0] === '' ? ([`filler ${index}`, 'code', field[2] as number] as const) : field,
  );
  return { ...group, fields };
}

function expectedOf({ raw, special, bytes }: VectorField): string | undefined {
  if (bytes !== undefined) return bytes.toLowerCase();
  if (special !== undefined && special !== 'not-available') return special.replace('-value', '');
  return raw === undefined ? undefined : String(raw);
}

function rawOf(value: unknown, [, kind, bits, per = 1]: readonly [string, string, number, number?]): string {
  if (kind === 'pairs') return hexOf(Uint8Array.from(value as number[]));
  if (kind === 'text') return hexOf(Uint8Array.from(value as string, (c) => c.charCodeAt(0)));
  if (kind === 'variable text')
    return hexOf(Uint8Array.from((value as string).slice(2), (c) => c.charCodeAt(0)));
  if (kind === 'wide') {
    const [high, low] = (value ?? [0x7fffffff, 0xffffffff]) as [number, number];
    // The vectors have them as numbers of JSON, which round.
    return String(Number((BigInt(high) << 32n) + BigInt(low)));
  }
  if (value === null) return String(kind === 'signed' ? 2 ** (bits - 1) - 1 : 2 ** bits - 1);
  return typeof value === 'number' ? String(Math.round(value * per)) : String(value);
}

function compareWithOther(): void {
  const other = installOther();
  const seen = { payloads: 0, values: 0 };
  for (const { id, pgn, payload } of payloads) {
    const group = PARAMETER_GROUPS.find((row) => row.pgn === pgn);
    const theirs = group && other(pgn, payload);
    if (group === undefined || theirs === undefined) {
      console.log(`${id}: PGN ${pgn} is not read by both`);
      continue;
    }
    const { values } = decodePayload(group, bytesOf(payload));
    const ours = group.fields
      .filter(([name, kind]) => !UNUSED.test(name) && kind !== 'repeated')
      .flatMap((field): (string | null)[] => {
        const value = (values as Record<string, unknown>)[field[0]];
        if (field[1] === 'pairs')
          return (value as number[]).map((byte) => (byte === 255 ? null : String(byte)));
        if (field[1] === 'text') return [plainText(value as string)];
        if (field[1] === 'variable text') return [readVariableText(value as string).text];
        const raw = rawOf(value, field as readonly [string, string, number, number?]);
        const none =
          value === null || (field[1] === 'code' && field[2] > 1 && value === 2 ** (field[2] as number) - 1);
        return [none ? null : raw];
      });
    seen.payloads++;
    for (const [index, value] of ours.entries()) {
      const said = theirs[index];
      const text =
        said === null || said === undefined ? null : String(said).replace(/[\x7f\xff@ ]+$/, '') || null;
      seen.values++;
      if (text === value || OTHER_IS_WRONG.test(`${text} ${value}`)) continue;
      problems.push(`${id} (PGN ${pgn}) value ${index}: other ${JSON.stringify(text)}, ours ${value}`);
    }
  }
  console.log(`second opinion: ${seen.payloads} payloads, ${seen.values} values`);
}

function checkStream({ id, lines, messages }: Stream): void {
  counts.streams++;
  const key = (message: Omit<Stream['messages'][number], 'payload'> & { payload: string }): string =>
    [message.pgn, message.source, message.destination, message.priority, message.payload.toLowerCase()].join(
      ' ',
    );
  const expected = messages.map(key).sort();
  const got = readNetworkLog(lines.join('\n'))
    .filter(({ kind }) => kind !== 'damaged')
    .flatMap(({ sources }) => sources)
    .map(key)
    .sort();
  counts.messages += messages.length;
  if (expected.join('\n') !== got.join('\n'))
    problems.push(`${id}: expected ${expected.length} messages, got ${got.length}`);
}
