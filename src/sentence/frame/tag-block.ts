import type { TagBlock } from '../../report/internal.ts';
import type { Notice } from '../../result/index.ts';
import { checksumBetween, hexValue } from './checksum.ts';
import { tagChecksum } from './framing-issue.ts';

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
  const stated =
    star >= 0 && inside.length === star + 3
      ? hexValue(inside.charCodeAt(star + 1)) * 16 + hexValue(inside.charCodeAt(star + 2))
      : Number.NaN;
  const computed = checksumBetween(inside, 0, star < 0 ? inside.length : star);
  if (stated !== computed) return { block: null, notice: tagChecksum(inside, computed) };

  const parameters = inside.slice(0, star).split(',').map(letterAndValue);
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
