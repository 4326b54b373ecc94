import type { HeardBurst } from 'seahail/audio';
import type { CharacterSource, Verdict } from 'seahail/burst';
import { describeCall } from 'seahail/call';
import { h } from '../frame/dom.ts';
import { cautionBox, findings, ledger, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';

const VERDICTS: Readonly<Record<Verdict, string>> = {
  clean: 'Received clean',
  repaired: 'Received with repair',
  doubtful: 'Doubtful: received in error, act on nothing',
};

const SOURCES: Readonly<Record<CharacterSource, string>> = {
  'both-copies': 'both copies agree',
  'one-copy': 'one copy says so',
  soft: 'both copies added up',
  repaired: 'repaired',
  unread: 'not read',
};

/** One call heard, with how sure it is. */
export function heardCard(heard: HeardBurst, sampleRate: number): HTMLElement {
  const { call, quality } = heard.reception;
  const description = describeCall(call, { directory: inventedName });
  return h(
    'article',
    { class: 'heard' },
    h('h3', {}, sentence(description.sentence)),
    h(
      'p',
      {},
      h('b', {}, VERDICTS[quality.verdict]),
      `, ${chance(quality.probability)} that all of it is right.`,
    ),
    cautionBox(description.cautions),
    h(
      'ol',
      { class: 'characters', 'aria-label': 'Characters of the call and how each was read' },
      quality.characters.map(({ symbol, source, probability }) =>
        h(
          'li',
          { class: source },
          h('b', {}, symbol ?? '?'),
          h('span', {}, `${SOURCES[source]}, ${chance(probability)}`),
        ),
      ),
    ),
    ledger([
      {
        what: 'When',
        answer: `${(heard.startSample / sampleRate).toFixed(3)} to ${(heard.endSample / sampleRate).toFixed(3)} s`,
      },
      { what: 'Signal to noise', answer: `${heard.snrDb.toFixed(1)} dB in 3 kHz, estimated` },
      { what: 'Level', answer: `${heard.levelDb.toFixed(1)} dB of full scale` },
      {
        what: 'Tones',
        answer: `${signed(heard.toneOffsetHz, 1)} Hz off, the high one ${signed(heard.toneBalanceDb, 1)} dB against the low one${heard.polarity === 'inverted' ? ', the wrong way round' : ''}`,
        clause: 'ITU-R M.493-15: 10 Hz allowed',
      },
      { what: 'Speed', answer: `${signed(heard.clockErrorPpm, 0)} millionths off 1200 baud` },
      {
        what: 'Words',
        answer: `${quality.words.differing} of ${quality.words.sent} say something else by themselves`,
      },
      {
        what: 'Error check',
        answer: {
          'as-sent': 'right as sent',
          'used-for-repair': 'used up in the repair',
          'not-received': 'not heard',
        }[quality.errorCheck],
      },
      quality.expansion === 'none'
        ? null
        : {
            what: 'Expansion',
            answer: quality.expansion === 'read' ? 'read, its own check right' : 'heard, not readable',
          },
    ]),
    findings(heard.notices),
  );
}

/** A probability that never claims more than it knows. */
function chance(probability: number): string {
  const percent = Math.floor(probability * 10_000) / 100;
  return percent > 99.99 ? 'over 99.99 %' : `${percent.toFixed(percent > 99 ? 2 : 0)} %`;
}

function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`;
}
