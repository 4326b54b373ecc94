import type { Call } from '../../call/index.ts';
import type { Reading, Sentence } from '../../report/index.ts';
import type { CodedText, Notice } from '../../result/index.ts';
import { textOf } from '../../result/internal.ts';
import { inEleven, isLegacy } from '../dsc/layout.ts';
import { textAt } from '../field/text-at.ts';
import { elevenFields, paddedFields, rewritten } from '../repair/repair-line.ts';
import { writeSentences } from '../write-sentences.ts';
import type { Collector, FaultId, Finding } from './fault.ts';
import { callFields, certaintyOf, faultsOf, fieldOf, receivedIn } from './line-fault.ts';
import { said } from './texts.ts';

export interface CallContext {
  /** Own identity, nine digits. */
  readonly own: string | null;
  /** Whether a position was asked for. */
  readonly expects: boolean;
  /** The station it was asked of, `null` when that was not told. */
  readonly expected: string | null;
}

/** Faults that the reader's notices about a call show. */
const BY_NOTICE: readonly (readonly [code: string, id: FaultId])[] = [
  ['sentence-legacy-layout', 'legacy-layout'],
  ['sentence-fields-missing', 'fields-missing'],
  ['sentence-expansion-missing', 'expansion-missing'],
  ['sentence-expansion-incomplete', 'expansion-missing'],
  ['sentence-expansion-late', 'expansion-late'],
  ['sentence-expansion-unannounced', 'expansion-unannounced'],
  ['sentence-identity-nine-digits', 'identity-nine-digits'],
];
/** Faults that writing the sentences again repairs. */
const MENDED_BY_WRITING: readonly FaultId[] = [
  'fields-missing',
  'expansion-late',
  'expansion-unannounced',
  'identity-nine-digits',
];
const UNKNOWN_POSITION = '9999999999';

export function addCallFaults(reading: Reading<'call'>, context: CallContext, collector: Collector): void {
  const add: Add = (id, certainty, field, seen) => {
    const corrected = correctedFor(id, reading);
    const sighting = { line: reading.line, field, seen, ...(corrected !== null && { corrected }) };
    collector.add(id, certaintyOf(certainty, reading.sources), sighting);
  };
  const fields = callFields(reading);
  const texts = inEleven(fields);

  for (const [id, notice] of faultsOf(reading.notices, BY_NOTICE))
    add(id, 'certain', fieldOf(notice), seenIn(notice));
  // The examples of the standard have ten fields, and a listener that counts to eleven drops them all the same.
  if (fields.length === 10) add('fields-missing', 'possible', null, '10');
  if (reading.talker !== 'CD') add('talker', 'possible', null, reading.talker);
  if (!isLegacy(fields)) addFieldFaults(reading, texts, add);
  addKindFaults(reading.call, context, texts, add);
  if (context.own !== null && reading.call.from === context.own) add('own-call', 'likely', 2, context.own);
  if (reading.repeat > 0)
    add('duplicates', 'certain', null, said('sentence-seen-repeat', { count: reading.repeat + 1 }));
}

type Add = (
  id: FaultId,
  certainty: Finding['certainty'],
  field: number | null,
  seen: string | CodedText,
) => void;

function addFieldFaults(reading: Reading<'call'>, texts: readonly string[], add: Add): void {
  const place = textAt(texts, 5);
  const time = textAt(texts, 6);
  for (const field of [2, 8]) {
    const text = textAt(texts, field - 1);
    if (/^\d{7,8}$/.test(text)) add('leading-zero-lost', 'likely', field, text);
    else if (/^\d{9}[1-9]$/.test(text) && reading.call.to?.kind !== 'area')
      add('identity-last-digit', 'certain', field, text);
  }
  if (/^\d{9}$/.test(place)) add('leading-zero-lost', 'likely', 6, place);
  else if (reading.notices.some(({ code }) => code === 'sentence-place'))
    add('bad-position', 'certain', 6, place);
  else if (isWrongPlace(reading.call, place)) add('bad-position', 'certain', 6, place);
  if (/^\d{1,3}$/.test(time) && reading.call.kind !== 'automatic-service-call')
    add('leading-zero-lost', 'likely', 7, time);
}

function addKindFaults(call: Call, { expected }: CallContext, texts: readonly string[], add: Add): void {
  const place = textAt(texts, 5);
  if (call.kind === 'position-reply' || call.kind === 'distress-alert') {
    if (place === UNKNOWN_POSITION) add('no-fix', 'certain', 6, place);
    if (call.position !== null) {
      if (texts[6] === '' || texts[6] === '8888') add('no-time', 'certain', 7, texts[6]);
      if (call.position.fraction === undefined) {
        if (texts[10] !== 'E') add('no-expansion', 'certain', 11, said('sentence-seen-no-expansion', {}));
      } else if (call.position.fraction.latitude === 0 && call.position.fraction.longitude === 0) {
        add('no-expansion', 'possible', null, said('sentence-seen-zero-decimals', {}));
      }
    }
  }
  if (call.kind === 'position-reply') {
    if (place === '') add('refused', 'likely', 6, said('sentence-seen-empty-position', {}));
    else if (call.unsolicited) add('acknowledgement', 'possible', 10, textAt(texts, 9));
  }
  if ((call.kind === 'position-reply' || call.kind === 'position-request') && call.category !== 'safety') {
    add('category', 'possible', 3, textAt(texts, 2));
  }
  if (call.kind === 'unable-to-comply' && (call.category === 'safety' || call.from === expected)) {
    add('refused', 'certain', 4, `${textAt(texts, 3)},${textAt(texts, 4)}`);
  }
}

/** Ten digits that are no position, or anything else in a position reply, a frequency for one. */
function isWrongPlace(call: Call, place: string): boolean {
  if (!('position' in call) || call.position !== null || place === UNKNOWN_POSITION) return false;
  return place.length === 10 || (call.kind === 'position-reply' && place !== '');
}

/** The call as it should have come over the wire, or `null` where that would be a guess. */
function correctedFor(id: FaultId, reading: Reading<'call'>): readonly string[] | null {
  const { sources: sentences, call } = reading;
  // A line without a checksum may be cut short: a checksum of ours would vouch for what nobody knows.
  if (sentences.some(({ checksum }) => checksum === 'unchecked')) return null;
  const strict = (change: { readonly talker?: string }): readonly string[] =>
    sentences.map((each) => rewritten(each, { ...change, fields: strictFields(each, sentences.length > 1) }));
  if (id === 'legacy-layout') {
    const written = writeSentences(call, { direction: 'received', talker: 'CD' });
    // Sentences that carry only part of the call would not be those that should have come.
    return written.notices.length === 0 ? written.sentences : null;
  }
  if (id === 'talker') return strict({ talker: 'CD' });
  return MENDED_BY_WRITING.includes(id) ? strict({}) : null;
}

function strictFields(sentence: Sentence, expanded: boolean): readonly string[] {
  const fields = paddedFields(sentence);
  if (sentence.formatter !== 'DSC') return fields;
  return elevenFields(fields).map((field, index) => (index === 10 && expanded ? 'E' : field));
}

/** What was received, where that is what the sentence holds; of an expansion, what is said of it. */
function seenIn(notice: Notice): string | CodedText {
  return notice.code.includes('-expansion-') ? textOf(notice) : receivedIn(notice);
}
