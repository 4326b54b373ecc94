import type { Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { inEleven } from '../dsc/layout.ts';
import { checksumOf } from '../frame/checksum.ts';
import { takeSentence } from '../frame/parse.ts';

/** Faults that can be repaired on the way without guessing. */
export type RepairableFault =
  | 'tag-block'
  | 'blank-damage'
  | 'blank-sent'
  | 'checksum-lower-case'
  | 'fields-missing'
  | 'talker'
  | 'identity-nine-digits'
  | 'expansion-late';

export const REPAIRABLE_FAULTS: readonly RepairableFault[] = [
  'tag-block',
  'blank-damage',
  'blank-sent',
  'checksum-lower-case',
  'fields-missing',
  'talker',
  'identity-nine-digits',
  'expansion-late',
];

/** A line as it goes on, with what was repaired in it and the sound sentences it holds. */
interface RepairedLine {
  readonly text: string;
  readonly repaired: readonly RepairableFault[];
  readonly sentences: readonly Sentence[];
}

/** Mends the chosen faults of one line; everything else stays character for character. */
export function repairLine(line: string, chosen: ReadonlySet<RepairableFault>): RepairedLine {
  const repaired = new Set<RepairableFault>();
  const sentences: Sentence[] = [];
  let text = '';
  let from = 0;
  while (from < line.length) {
    const { result, start, end, next } = takeSentence(line, from, false);
    if (result.ok) {
      const { value: sentence, notices } = result;
      const between = line.slice(from, start);
      text += chosen.has('tag-block') ? withoutTags(between, repaired) : between;
      text += repairSentence(sentence, notices, line.slice(start, end), chosen, repaired);
      text += line.slice(end, next);
      sentences.push(sentence);
    } else {
      text += line.slice(from, next);
    }
    from = next;
  }
  return { text, repaired: [...repaired], sentences };
}

function repairSentence(
  sentence: Sentence,
  notices: readonly Notice[],
  asReceived: string,
  chosen: ReadonlySet<RepairableFault>,
  repaired: Set<RepairableFault>,
): string {
  let changed = false;
  const has = (code: string): boolean => notices.some((notice) => notice.code === code);
  const change = (fault: RepairableFault, due: boolean): boolean => {
    if (!due || !chosen.has(fault)) return false;
    repaired.add(fault);
    changed = true;
    return true;
  };
  const damaged = has('sentence-blank-damage');
  if (damaged && !change('blank-damage', true)) return asReceived;

  const { formatter, form } = sentence;
  const isCall = form === 'standard' && (formatter === 'DSC' || formatter === 'DSE');
  let fields = change('blank-sent', has('sentence-blank-sent')) ? sentence.fields : fieldsAsSent(sentence);
  if (isCall) {
    const padded = paddedFields({ ...sentence, fields });
    if (
      change(
        'identity-nine-digits',
        padded.some((field, index) => field !== fields[index]),
      )
    )
      fields = padded;
    const short = formatter === 'DSC' && fields.length >= LEAST_FIELDS && fields.length < 11;
    if (change('fields-missing', short)) fields = elevenFields(fields);
  }
  const talker = change('talker', isCall && sentence.talker !== 'CD') ? 'CD' : sentence.talker;
  change('checksum-lower-case', has('sentence-checksum-lower-case'));
  return changed ? rewritten(sentence, { talker, fields }) : asReceived;
}

/** With fewer fields a sentence has the older layout of seven, or lost more than empty ones. */
const LEAST_FIELDS = 8;

function fieldsAsSent({ raw }: Sentence): readonly string[] {
  return raw.slice(0, raw.lastIndexOf('*')).split(',').slice(1);
}

function withoutTags(text: string, repaired: Set<RepairableFault>): string {
  const stripped = text.replace(/\\[^\\]*\\/g, '');
  if (stripped !== text) repaired.add('tag-block');
  return stripped;
}

/** The sentence written again, with another talker or other fields, and the checksum that belongs to it. */
export function rewritten(
  { start, talker, formatter, fields }: Sentence,
  change: { readonly talker?: string; readonly fields?: readonly string[] },
): string {
  const body = [`${change.talker ?? talker}${formatter}`, ...(change.fields ?? fields)].join(',');
  return `${start}${body}*${checksumOf(body)}`;
}

/** The fields with the padding zero after nine-digit identities: fields 2 and 8 of `DSC`, else field 4 of `DSE`. */
export function paddedFields({ formatter, fields }: Sentence): readonly string[] {
  const identities = formatter === 'DSC' ? [1, 7] : [3];
  return fields.map((field, index) =>
    identities.includes(index) && /^\d{9}$/.test(field) ? `${field}0` : field,
  );
}

/** The fields of a `DSC` sentence with the empty ones at the end put back. */
export function elevenFields(fields: readonly string[]): readonly string[] {
  const known = inEleven(fields);
  return [...known, ...Array<string>(Math.max(0, 11 - known.length)).fill('')];
}
