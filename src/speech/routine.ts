import type { SpokenStation } from '../call/index.ts';
import type { Phrases } from './phrases.ts';
import { type Situation, type SpokenScript, script } from './script.ts';

const MANNERS =
  'Use low power where it is enough, be brief, and use a working channel only; leave channels 16 and 70 free';
const CLAUSE = 'ITU-R M.1171 Annex 1 (called station once, calling station twice on VHF), unverified';

/** The first words on the agreed channel, of the station that called. */
export function routineCall(
  { to, channel, toGroup = false }: Situation<'routine-call'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  return script({
    title: 'First words: the caller begins',
    channel,
    lines: [
      { say: say.name(to), note: 'On the channel agreed; listen first, and wait while others speak' },
      { say: 'THIS IS' },
      { say: `${say.name(own)}, ${say.name(own)}` },
      ...(toGroup
        ? [{ say: 'OVER', note: 'Then the members answer, one after the other' }]
        : [
            { say: 'OVER' },
            { say: `${say.name(own)}, THIS IS ${say.name(to)}, OVER`, who: 'other' as const },
          ]),
    ],
    caution: MANNERS,
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
    title: 'First words: the called station answers',
    channel,
    lines: [
      {
        say: `${say.name(group ?? own)}, THIS IS ${say.name(to)}, ${say.name(to)}, OVER`,
        who: 'other',
        note: 'Wait for the caller to begin',
      },
      { say: say.name(to) },
      { say: 'THIS IS' },
      { say: say.name(own) },
      { say: 'OVER' },
    ],
    caution: MANNERS,
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
    title: 'Radio check',
    channel,
    lines: [
      { say: say.name(to) },
      { say: 'THIS IS' },
      { say: `${say.name(own)}, ${say.callSign(own)}` },
      { say: 'RADIO CHECK, HOW DO YOU READ ME, OVER' },
      {
        say: `${say.name(own)}, THIS IS ${say.name(to)}, I READ YOU five, OVER`,
        who: 'other',
        note: 'Or another figure, from one, bad, to five, excellent',
      },
      { say: `${say.name(to)}, THIS IS ${say.name(own)}, THANK YOU, OUT` },
    ],
    caution:
      'On a working channel and no longer than 10 seconds a transmission; test the DSC function with a DSC test call, without speech',
    clause: 'IMO A.918(22) part A1 and ITU-R M.1171 (tests of at most 10 s), unverified',
  });
}
