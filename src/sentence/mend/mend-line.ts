import type { Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { takeSentence } from '../frame/parse.ts';
import { elevenFields, paddedFields, rewritten } from './correct.ts';

/** Faults that can be mended on the way without guessing. */
export type MendableFault =
  | 'tag-block'
  | 'blank-damage'
  | 'blank-sent'
  | 'checksum-lower-case'
  | 'fields-missing'
  | 'talker'
  | 'identity-nine-digits'
  | 'expansion-late';

/** All of them. */
export const MENDABLE_FAULTS: readonly MendableFault[] = [
  'tag-block',
  'blank-damage',
  'blank-sent',
  'checksum-lower-case',
  'fields-missing',
  'talker',
  'identity-nine-digits',
  'expansion-late',
];

/** A line as it goes on, with what was mended in it and the sound sentences it holds. */
export interface MendedLine {
  readonly text: string;
  readonly mended: readonly MendableFault[];
  readonly sentences: readonly Sentence[];
}

/** Mends the chosen faults of one line; everything else stays character for character. */
export function mendLine(line: string, chosen: ReadonlySet<MendableFault>): MendedLine {
  const mended = new Set<MendableFault>();
  const sentences: Sentence[] = [];
  let text = '';
  let from = 0;
  while (from < line.length) {
    const { result, start, end, next } = takeSentence(line, from, false);
    if (result.ok) {
      const { value: sentence, notices } = result;
      const between = line.slice(from, start);
      text += chosen.has('tag-block') ? withoutTags(between, mended) : between;
      text += mendSentence(sentence, notices, line.slice(start, end), chosen, mended);
      text += line.slice(end, next);
      sentences.push(sentence);
    } else {
      text += line.slice(from, next);
    }
    from = next;
  }
  return { text, mended: [...mended], sentences };
}

function mendSentence(
  sentence: Sentence,
  notices: readonly Notice[],
  asReceived: string,
  chosen: ReadonlySet<MendableFault>,
  mended: Set<MendableFault>,
): string {
  let changed = false;
  const has = (code: string): boolean => notices.some((notice) => notice.code === code);
  const change = (fault: MendableFault, due: boolean): boolean => {
    if (!due || !chosen.has(fault)) return false;
    mended.add(fault);
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

function withoutTags(text: string, mended: Set<MendableFault>): string {
  const stripped = text.replace(/\\[^\\]*\\/g, '');
  if (stripped !== text) mended.add('tag-block');
  return stripped;
}
