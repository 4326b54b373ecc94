import type { HeardBurst } from 'seahail/audio';
import type { Reception, Verdict } from 'seahail/burst';
import { describeCall } from 'seahail/call';
import { type Child, h } from '../frame/dom.ts';
import { cautionBox, findings, ledger, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';

type Quality = Reception['quality'];
type CharacterQuality = Quality['characters'][number];

const VERDICTS: Readonly<Record<Verdict, string>> = {
  clean: 'Received clean',
  repaired: 'Received with repair',
  doubtful: 'Doubtful: received with errors. Do not act on it',
};

const SOURCES: Readonly<Record<CharacterQuality['source'], string>> = {
  'both-copies': 'both copies agree',
  'one-copy': 'from one copy',
  soft: 'from both copies combined',
  repaired: 'repaired',
  unread: 'not read',
};

/** One call heard in a sound, with how sure it is and how it came in; `more` comes under what it says. */
export function heardCard(
  heard: HeardBurst,
  sampleRate: number,
  more: Child = null,
  channel: number | null = null,
): HTMLElement {
  const { quality } = heard.reception;
  return h(
    'article',
    { class: 'heard' },
    receptionOf(heard.reception, more),
    ledger([
      {
        what: 'When',
        answer: `${(heard.startSample / sampleRate).toFixed(3)} to ${(heard.endSample / sampleRate).toFixed(3)} s`,
      },
      quality.calls === 1
        ? null
        : { what: 'Rests on', answer: `${quality.calls} calls of one attempt, added together` },
      channel === null ? null : { what: 'Channel of the file', answer: String(channel) },
      { what: 'Signal to noise', answer: `${minus(heard.snrDb.toFixed(1))} dB in 3 kHz, estimated` },
      { what: 'Level', answer: `${minus(heard.levelDb.toFixed(1))} dB of full scale` },
      {
        what: 'Tones',
        answer: `${signed(heard.toneOffsetHz, 1)} Hz off, the high one ${signed(heard.toneBalanceDb, 1)} dB against the low one${heard.polarity === 'inverted' ? ', the wrong way round' : ''}`,
        clause: 'ITU-R M.493-16: 10 Hz allowed',
      },
      { what: 'Speed', answer: `${signed(heard.clockErrorPpm, 0)} ppm from 1200 baud` },
      {
        what: 'Words',
        answer: `${quality.words.differing} of ${quality.words.sent} words arrived wrong`,
      },
      {
        what: 'Error check',
        answer: errorCheckAnswer(quality.errorCheck),
      },
      quality.expansion === 'none'
        ? null
        : {
            what: 'Expansion',
            answer: quality.expansion === 'read' ? 'read, its own check passes' : 'heard, not readable',
          },
    ]),
    findings(heard.notices),
  );
}

function errorCheckAnswer(check: Quality['errorCheck']): string {
  switch (check.kind) {
    case 'as-sent':
      return 'passes';
    case 'used-for-repair':
      return 'used for the repair, so it confirms nothing';
    case 'wrong':
      return `wrong: ${check.received} received, ${check.computed} computed`;
    default:
      return 'not read';
  }
}

/** What a reception says, and how sure each character of it is. */
export function receptionOf({ call, quality }: Reception, more: Child = null): Child {
  const description = describeCall(call, { directory: inventedName });
  return [
    h('h3', {}, sentence(description.sentence)),
    h(
      'p',
      {},
      h('b', {}, VERDICTS[quality.verdict]),
      `, ${chance(quality.probability)} that all of it is right.`,
    ),
    cautionBox(description.cautions),
    more,
    h('p', { class: 'mind' }, commonCase(quality.characters)),
    h(
      'ol',
      { class: 'characters', 'aria-label': 'Characters of the call and how each was read' },
      quality.characters.map((character) =>
        h(
          'li',
          { class: character.source },
          h('b', {}, character.symbol ?? '?'),
          isCommon(character) ? null : h('span', {}, howRead(character)),
        ),
      ),
    ),
  ];
}

function howRead({ symbol, source, probability }: CharacterQuality): string {
  return symbol === null ? SOURCES[source] : `${SOURCES[source]}, ${chance(probability)}`;
}

/** What holds for most characters is said once, and only the others are annotated. */
function commonCase(characters: readonly CharacterQuality[]): string {
  const count = characters.filter(isCommon).length;
  const how = `${SOURCES['both-copies']}, ${chance(1)}`;
  if (count === characters.length) return `All ${count} characters: ${how}.`;
  return count === 0
    ? 'No character came whole in both copies.'
    : `${count} of ${characters.length} characters: ${how}. The others:`;
}

function isCommon({ source, probability }: CharacterQuality): boolean {
  return source === 'both-copies' && chance(probability) === chance(1);
}

/** A probability that never claims more than it knows. */
function chance(probability: number): string {
  const percent = Math.floor(probability * 10_000) / 100;
  return percent >= 99.99 ? 'over 99.99 %' : `${percent.toFixed(percent > 99 ? 2 : 0)} %`;
}

function minus(text: string): string {
  return text.replace('-', '−');
}

function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`;
}
