// A call that was received, however strange, and written as a sentence (docs/guide/sentence.md, docs/guide/call.md:
// unknown symbols are kept, nothing is made up): none changes its kind without a notice, none becomes distress.
//
// A symbol from 100 is written as its last two digits (note 4 to the `DSC` sentence of IEC 61162-1, as restated in
// equipment papers), so a code in a field has one symbol only that it can come from; 28 to 99 have no symbol of 100 more.
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { decodeCharacters } from '../../../src/burst/information.ts';
import { type Call, type CallFields, decodeFields } from '../../../src/call/index.ts';
import { readSentences, writeSentences } from '../../../src/sentence/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { strangeCharacters, strangeFields } from '../support/strange.ts';

/** Tries of `npm run attack`. */
export const usual = 40_000;

const isDistress = (kind: string): boolean => kind.startsWith('distress-');

/** The two-digit codes of the sentence that no symbol of the call stands for. */
function inventedCodes(sentence: string, fields: CallFields): string[] {
  const codes = sentence.slice(1, sentence.lastIndexOf('*')).split(',');
  const wrong: string[] = [];
  const may = (field: number, ...symbols: (number | null)[]): void => {
    const code = codes[field];
    if (code === undefined || code === '' || !/^\d\d$/.test(code)) return;
    const symbol = Number(code) < 28 ? 100 + Number(code) : Number(code);
    if (!symbols.includes(symbol)) wrong.push(`field ${field} is ${code}, of ${symbols.join('/')}`);
  };
  may(1, fields.format);
  // An alert has no category on the air, and a sentence may state it all the same.
  may(3, fields.category, fields.format === 112 ? 112 : null);
  may(4, fields.telecommand1, fields.nature);
  may(5, fields.telecommand2, fields.subsequent);
  may(9, fields.nature);
  return wrong;
}

function strangeCall(random: Random): {
  readonly call: Call;
  readonly fields: CallFields;
  readonly from: string;
} {
  if (random.below(3) > 0) {
    const characters = strangeCharacters(random);
    const fields = decodeCharacters(characters);
    return { call: decodeFields(fields).call, fields, from: `characters ${characters.join(' ')}` };
  }
  const fields = strangeFields(random);
  return { call: decodeFields(fields).call, fields, from: `fields ${show(fields)}` };
}

function refuses(run: () => unknown): boolean {
  try {
    run();
    return false;
  } catch (error) {
    return error instanceof RangeError;
  }
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const { call, fields, from } = strangeCall(random);
    for (const direction of ['received', 'commanded'] as const) {
      notes.count(`${direction}: calls`);
      // A radio that is commanded inserts its own identity as the caller's.
      const own = direction === 'commanded' ? (call.from ?? undefined) : '232999871';
      if (
        direction === 'commanded' &&
        fields.format === 112 &&
        !refuses(() => writeSentences(call, { direction }))
      ) {
        notes.broken('a distress alert is commanded without a word', from);
      }
      let written: ReturnType<typeof writeSentences>;
      try {
        written = writeSentences(call, { direction, allowDistress: true });
      } catch (error) {
        notes.count(`${direction}: refused`);
        if (direction === 'received' || !(error instanceof RangeError || error instanceof TypeError)) {
          notes.broken(`writing fails (${direction})`, `${String(error)}: ${from}`);
        }
        continue;
      }
      const { sentences } = written;
      for (const sentence of sentences) {
        // 82 characters with the line end, capitals and signs of ASCII (IEC 61162-1, as restated).
        if (sentence.length > 80 || !/^\$[\x20-\x7e]+\*[0-9A-F]{2}$/.test(sentence)) {
          notes.broken('a sentence that is none', `${from}: ${sentence}`);
        }
      }
      const invented = inventedCodes(sentences[0] ?? '', fields);
      if (invented.length > 0)
        notes.broken(`a code for another symbol (${direction})`, `${invented[0]}: ${from}: ${sentences[0]}`);
      const calls = readSentences(`${sentences.join('\r\n')}\r\n`, { own, direction }).filter(
        (one) => one.kind === 'call',
      );
      const [read] = calls;
      if (read === undefined || calls.length > 1) {
        notes.broken('a written call is not read once', `${from}: ${sentences.join(' ')}`);
        continue;
      }
      const { kind } = read.call;
      if (kind === call.kind) notes.count(`${direction}: same kind`);
      else if (isDistress(kind) && !isDistress(call.kind)) {
        notes.broken(`becomes distress (${direction})`, `${call.kind} to ${kind}: ${from}: ${sentences[0]}`);
      } else if (read.notices.length + written.notices.length === 0) {
        notes.broken(
          `changes kind in silence (${direction})`,
          `${call.kind} to ${kind}: ${from}: ${sentences[0]}`,
        );
      } else notes.count(`${direction}: other kind, with a notice`);
    }
  }
  return notes.outcome();
};
