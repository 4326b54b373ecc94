import type { Sentence } from '../../report/index.ts';
import type { TagBlock } from '../../report/internal.ts';
import { failure, type Notice, type Result, success } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { textAt } from '../field/text-at.ts';
import { issue } from '../texts.ts';
import { about, checksumBetween, hexOf, tagChecksum } from './checksum.ts';

/** What was cut at the commas of a sentence. */
export interface Cut {
  /** Address and fields. */
  readonly texts: string[];
  /** Whether there may be a blank or a tab in them. */
  readonly blank: boolean;
}

/** The sentence of an address and its fields; it keeps the list. */
export function dissect(
  { texts: fields, blank }: Cut,
  checksum: Sentence['checksum'],
  tag: TagBlock | null,
  raw: string,
  notices: Notice[],
): Result<Sentence> {
  const address = trimBlanks(textAt(fields, 0));
  fields.shift();
  if (blank) trimFields(fields, notices);
  const form = formOf(address);
  if (form === null) return failure(issue('sentence-address', {}, about(address, [0])));
  const cut = form === 'proprietary' ? 1 : 2;
  return success(
    {
      kind: 'sentence',
      start: raw.startsWith('$') ? '$' : '!',
      form,
      talker: address.slice(0, cut),
      formatter: address.slice(cut),
      fields,
      checksum,
      tag,
      raw,
    },
    notices,
  );
}

function trimFields(fields: string[], notices: Notice[]): void {
  for (const [index, field] of fields.entries()) {
    const trimmed = trimBlanks(field);
    if (trimmed.length === field.length) continue;
    fields[index] = trimmed;
    const number = index + 1;
    const params = { field: number, trimmed: quote(trimmed) };
    // Only a blank at the edge of a field is a fault; one inside may belong to a name.
    notices.push(issue('sentence-blank-sent', params, about(field, ['field', number])));
  }
}

/** Without the blanks and tabs at its edges, and nothing else: whatever other blanks a text has were never sent as such. */
function trimBlanks(text: string): string {
  let from = 0;
  let to = text.length;
  while (isBlank(text.charCodeAt(from))) from += 1;
  while (isBlank(text.charCodeAt(to - 1))) to -= 1;
  return text.slice(from, to);
}

function isBlank(code: number): boolean {
  return code === 0x20 || code === 0x09;
}

/** Capitals and digits: five of them, or `P` and three or more. */
function formOf(address: string): Sentence['form'] | null {
  for (let index = 0; index < address.length; index += 1) {
    const code = address.charCodeAt(index);
    if (!((code >= 0x41 && code <= 0x5a) || (code >= 0x30 && code <= 0x39))) return null;
  }
  if (address.charCodeAt(0) === 0x50 && address.length >= 4) return 'proprietary';
  if (address.length !== 5) return null;
  return address.charCodeAt(4) === 0x51 ? 'query' : 'standard';
}

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

/** Unix times at or above this are milliseconds: as seconds they would lie in the year 5138, as milliseconds in 1973. */
const LEAST_MILLISECONDS = 1e11;

/**
 * Reads the inside of a TAG block, from after its first backslash to before its second.
 *
 * A block whose checksum is missing or wrong is not believed: `block` is `null`, and the notice says why.
 */
export function readTagBlock(inside: string): { block: TagBlock | null; notice: Notice | null } {
  const star = inside.lastIndexOf('*');
  const body = star < 0 ? inside : inside.slice(0, star);
  const computed = checksumBetween(body, 0, body.length);
  if (inside.slice(-3).toUpperCase() !== `*${hexOf(computed)}`)
    return { block: null, notice: tagChecksum(inside, computed) };

  const parameters = body.split(',').map(letterAndValue);
  const block: Writable<TagBlock> = { parameters };
  for (const [letter, value] of parameters) {
    if (letter === 's') block.source = value;
    else if (letter === 'd') block.destination = value;
    else if (letter === 't') block.text = value;
    else if (letter === 'c' && isNumber(value)) block.time = milliseconds(Number(value));
    else if (letter === 'n' && isNumber(value)) block.lineCount = Number(value);
    else if (letter === 'r' && isNumber(value)) block.relativeTime = Number(value);
    else if (letter === 'g') {
      const parts = value.split('-');
      if (parts.length === 3 && parts.every(isNumber)) {
        block.group = { number: Number(parts[0]), total: Number(parts[1]), id: Number(parts[2]) };
      }
    }
  }
  return { block, notice: null };
}

function letterAndValue(parameter: string): readonly [string, string] {
  const colon = parameter.indexOf(':');
  return colon < 0 ? ['', parameter] : [parameter.slice(0, colon).trim(), parameter.slice(colon + 1)];
}

function isNumber(text: string): boolean {
  return /^\d{1,15}(?:\.\d{1,9})?$/.test(text);
}

// deviation: D-sentence-1
function milliseconds(unixTime: number): number {
  return unixTime < LEAST_MILLISECONDS ? unixTime * 1000 : unixTime;
}
