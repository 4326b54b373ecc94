import type { SpokenStation } from '../call/index.ts';
import type { Phrases } from './phrases.ts';
import { line, type Situation, type SpokenLine, type SpokenScript, script } from './script.ts';

const CLAUSE = 'ITU-R M.1171 Annex 1 (called station once, calling station twice on VHF), unverified';

/** The first words on the agreed channel, of the station that called. */
export function routineCall(
  { to, channel, toGroup = false }: Situation<'routine-call'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  return script({
    title: 'speech-title-caller',
    channel,
    lines: [
      line(say.name(to), 'speech-call-once', 'speech-note-listen-first'),
      line('THIS IS', 'speech-say-this-is'),
      line(`${say.name(own)}, ${say.name(own)}`, 'speech-own-twice'),
      ...(toGroup
        ? [line('OVER', 'speech-over', 'speech-note-members')]
        : [
            line('OVER', 'speech-over'),
            other(line(`${say.name(own)}, THIS IS ${say.name(to)}, OVER`, 'speech-other-answers')),
          ]),
    ],
    caution: 'speech-manners',
    clause: CLAUSE,
  });
}

/** The first words on the agreed channel, of the station that was called. */
export function routineAnswer(
  { to, channel, group }: Situation<'routine-answer'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  return script({
    title: 'speech-title-called',
    channel,
    lines: [
      other(
        line(
          `${say.name(group ?? own)}, THIS IS ${say.name(to)}, ${say.name(to)}, OVER`,
          'speech-other-calls',
          'speech-note-wait',
        ),
      ),
      line(say.name(to), 'speech-name-caller'),
      line('THIS IS', 'speech-say-this-is'),
      line(say.name(own), 'speech-own-once'),
      line('OVER', 'speech-over'),
    ],
    caution: 'speech-manners',
    clause: CLAUSE,
  });
}

/** Is my transmission heard? */
export function radioCheck(
  { to, channel }: Situation<'radio-check'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  return script({
    title: 'speech-title-radio-check',
    channel,
    lines: [
      line(say.name(to), 'speech-call-once'),
      line('THIS IS', 'speech-say-this-is'),
      line(`${say.name(own)}, ${say.callSign(own)}`, 'speech-own-name-sign'),
      line('RADIO CHECK, HOW DO YOU READ ME, OVER', 'speech-ask-readability'),
      other(
        line(
          `${say.name(own)}, THIS IS ${say.name(to)}, I READ YOU five, OVER`,
          'speech-other-reads',
          'speech-note-figure',
        ),
      ),
      line(`${say.name(to)}, THIS IS ${say.name(own)}, THANK YOU, OUT`, 'speech-thank'),
    ],
    caution: 'speech-radio-check',
    clause: 'IMO A.918(22) part A1 and ITU-R M.1171 (tests of at most 10 s), unverified',
  });
}

/** A line that the other station says. */
function other(spoken: SpokenLine): SpokenLine {
  return { ...spoken, who: 'other' };
}
