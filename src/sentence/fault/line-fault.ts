import type { Reading, Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { hexOf } from '../frame/checksum.ts';
import { rewritten } from '../repair/repair-line.ts';
import type { Collector, FaultId, Finding } from './fault.ts';
import { said } from './texts.ts';

/** Faults that the framing shows, by the notice the reader gave. */
const BY_NOTICE: readonly (readonly [code: string, id: FaultId])[] = [
  ['sentence-length', 'too-long'],
  ['sentence-tag-checksum', 'tag-block'],
  ['sentence-tag-unclosed', 'tag-block'],
  ['sentence-blank-damage', 'blank-damage'],
  ['sentence-blank-sent', 'blank-sent'],
  ['sentence-unchecked', 'checksum-missing'],
  ['sentence-checksum-lower-case', 'checksum-lower-case'],
];
const WRONG_CHECKSUM: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'sentence-checksum-wrong',
  'sentence-checksum-impossible',
  'sentence-checksum-malformed',
]);
/** Faults that writing the sentence again repairs. A missing checksum is not one. */
const MENDED_BY_WRITING: readonly FaultId[] = [
  'tag-block',
  'blank-damage',
  'blank-sent',
  'checksum-lower-case',
];

/** The notices that show a fault, each with the fault. */
export function faultsOf(
  notices: readonly Notice[],
  table: readonly (readonly [code: string, id: FaultId])[],
): readonly (readonly [FaultId, Notice])[] {
  return notices.flatMap((notice) =>
    table.filter(([code]) => code === notice.code).map(([, id]) => [id, notice] as const),
  );
}

/** The fields of the `DSC` sentence of a call. */
export function callFields({ sources }: Reading<'call'>): readonly string[] {
  return sources[0]?.fields ?? [];
}

/** The characters that a notice is about. */
export function receivedIn({ received }: Notice): string {
  return received ?? '';
}

/** Adds what the framing of a sound sentence shows, whatever the sentence is about. */
export function addLineFaults(reading: Exclude<Reading, Reading<'damaged'>>, collector: Collector): void {
  const { sources: sentences } = reading;
  // Without its checksum nobody knows whether a sentence is whole.
  const corrected = (): { readonly corrected?: readonly string[] } =>
    sentences.every(({ checksum }) => checksum === 'right')
      ? { corrected: sentences.map((each) => rewritten(each, {})) }
      : {};
  const [tag] = sentences.flatMap((sentence) => sentence.tag ?? []);
  if (tag !== undefined) {
    const seen = tag.parameters.map(([letter, value]) => `${letter}:${value}`).join(',');
    collector.add('tag-block', 'possible', {
      line: reading.line,
      field: null,
      seen: `\\${seen}\\`,
      ...corrected(),
    });
  }
  for (const [id, notice] of faultsOf(reading.notices, BY_NOTICE)) {
    const certainty = id === 'tag-block' ? 'possible' : 'certain';
    const isWhole = id === 'checksum-missing' && sentences.every(looksWhole);
    collector.add(id, isWhole ? certainty : certaintyOf(certainty, sentences), {
      line: reading.line,
      field: fieldOf(notice),
      seen: receivedIn(notice),
      ...(MENDED_BY_WRITING.includes(id) && corrected()),
    });
  }
}

/** Adds a damaged line, and remembers by what its checksum was off; returns how many checksums were wrong. */
export function addDamage(
  reading: Reading<'damaged'>,
  collector: Collector,
  differences: Set<string>,
): number {
  let wrong = 0;
  for (const issue of reading.issues) {
    if (!WRONG_CHECKSUM.has(issue.code)) continue;
    wrong += 1;
    const { computed } = issue.params;
    const stated = receivedIn(issue);
    differences.add(differenceOf(issue));
    const line = reading.text.trim();
    const seen =
      computed === undefined
        ? said('sentence-seen-no-checksum', { line, stated })
        : said('sentence-seen-checksum', { line, computed, stated });
    collector.add('checksum-wrong', 'certain', { line: reading.line, field: null, seen });
  }
  return wrong;
}

/** Whether a sentence has all the fields of its kind: a line that is broken ends sooner. */
function looksWhole({ formatter, fields }: Sentence): boolean {
  if (formatter === 'DSE') return fields.length >= 6 && fields.length % 2 === 0;
  return formatter === 'DSC' && fields.length >= 10;
}

/** A sentence without its checksum may be part of a broken line: what it seems to lack is never certain. */
export function certaintyOf(
  certainty: Finding['certainty'],
  sentences: readonly Sentence[],
): Finding['certainty'] {
  const isFragment = sentences.some(({ checksum }) => checksum === 'unchecked');
  return certainty === 'certain' && isFragment ? 'likely' : certainty;
}

/** Number of the field that a notice is about, if it is about one. */
export function fieldOf({ at }: Notice): number | null {
  const place = at.indexOf('field');
  return place < 0 ? null : Number(at[place + 1]);
}

/** The bits in which the stated checksum differs, as two hexadecimal digits; empty when there is none to compare with. */
function differenceOf(notice: Notice): string {
  const { expected } = notice;
  if (expected === undefined) return '';
  const byteOf = (text: string): number => Number.parseInt(text.replace(/[^0-9A-Fa-f]/g, ''), 16) & 0xff;
  return hexOf(byteOf(expected) ^ byteOf(receivedIn(notice)));
}
