import type { Call, SpokenStation, StationNames } from '../call/index.ts';
import { isAshore, isMfHf, stationNamed } from '../call/internal.ts';
import type { TimeOfDay } from '../position/index.ts';
import type { CodedText } from '../result/index.ts';
import { type CodeOf, want } from '../result/internal.ts';
import { cancelAlert, mayday, maydayRelay, receivedMayday, receivedMaydayRelay } from './distress.ts';
import { type Phrases, phrasesWith } from './phrases.ts';
import { radioCheck, routineAnswer, routineCall } from './routine.ts';
import { noted, type Situation, type SpokenScript, script } from './script.ts';
import { type NothingToSay, situationOf } from './situation-of.ts';
import { type SpeechTexts, text } from './texts.ts';
import { panPan, securite } from './urgency.ts';

/**
 * The words to say on the voice channel: in a situation, or after a call was sent or received. Call signs and
 * figures come spelled, positions and times one figure at a time, and what is not known is in brackets for the speaker
 * to fill in.
 *
 * A prompt for a person, not a replacement for training: the operator's certificate and national rules decide.
 *
 * @param subject - a call, sent by the vessel when its `from` is the vessel's identity, else received; or a situation
 * @param vessel - own vessel
 * @param options - names of other stations, form of the figures, time of the own alert
 * @returns the lines in order, each with a gloss; none where a call is followed by no speech, and the caution then says
 * what to do
 * @throws TypeError without a call or situation, or without a vessel
 *
 * Source: RR 2024 Art. 32 and 33, ITU-R M.1171, IMO A.918(22); acknowledgement: RR No. 32.28, 47 CFR 80.1117(c),
 * ITU-R M.541-11 Annex 3 §1.5.
 *
 * @see {@link spell}
 *
 * @example
 * ```ts
 * import { spokenScript } from 'seahail/speech';
 *
 * const merrow = { name: 'Merrow', callSign: '2ZZM8', mmsi: '232999871' };
 * const { lines, blanks } = spokenScript({ kind: 'mayday', nature: 'flooding' }, merrow);
 * console.log(lines[2]?.say); // Merrow, Merrow, Merrow
 * console.log(lines[3]?.say); // call sign two Zulu Zulu Mike eight
 * console.log(blanks); // [ 'position, or bearing and distance from a known place', 'number' ]
 * ```
 */
export function spokenScript(
  subject: Call | Situation,
  vessel: SpokenStation,
  options: {
    /** Names and call signs of stations: a directory, or a function such as `(mmsi) => stationOf(directory, mmsi)`. */
    readonly directory?: StationNames | undefined;
    /** `'plain'` unless stated. */
    readonly figures?: 'plain' | 'figure-code' | undefined;
    /** UTC at which the own alert was sent, for its cancellation: the cancelling call does not carry it. */
    readonly alertTime?: TimeOfDay | null | undefined;
    /** Own coast station is designated to acknowledge distress by DSC; not unless stated. */
    readonly designated?: boolean | undefined;
  } = {},
): SpokenScript {
  want('spokenScript', 'a call or a situation', subject, 'kind');
  want('spokenScript', 'the own vessel', vessel);
  const say = phrasesWith(options.figures ?? 'plain');
  const { alertTime = null, designated = false } = options;
  const made = (situation: Situation | NothingToSay): SpokenScript =>
    scriptFor(
      situation.kind === 'cancel-alert' ? { ...situation, time: situation.time ?? alertTime } : situation,
      vessel,
      say,
      designated && isAshore(vessel.mmsi ?? null),
    );
  if (!('from' in subject) || subject.kind === 'received-mayday-relay') return made(subject);
  const stationOf = (mmsi: string | null): SpokenStation => ({
    mmsi,
    ...(mmsi === null ? undefined : stationNamed(options.directory, mmsi)),
  });
  const words = made(situationOf(subject, vessel.mmsi ?? null, stationOf));
  return isMfHf(subject) ? onTheBand(words) : words;
}

/** The words of a distress on MF or HF, which no VHF channel carries. 47 CFR 80.1123(d): watch on the
 * radiotelephone frequency associated with the band. */
function onTheBand(made: SpokenScript): SpokenScript {
  const lines = made.lines.map(({ note: _, noteText, ...spoken }) =>
    noteText === undefined ? spoken : { ...spoken, ...noted(away(noteText)) },
  );
  const caution = away(made.cautionText);
  const cautionText = lines.length === 0 ? caution : text('speech-on-the-band', { where: 'mf-hf', caution });
  return { ...made, lines, channel: null, caution: cautionText.message, cautionText };
}

/** A text that says where, said of the band instead of channel 16. */
function away(said: CodedText): CodedText {
  return 'where' in said.params ? text(said.code as CodeOf<SpeechTexts>, { where: 'mf-hf' } as never) : said;
}

function scriptFor(
  situation: Situation | NothingToSay,
  vessel: SpokenStation,
  say: Phrases,
  designated: boolean,
): SpokenScript {
  switch (situation.kind) {
    case 'mayday':
      return mayday(situation, vessel, say);
    case 'mayday-relay':
      return maydayRelay(situation, vessel, say);
    case 'received-mayday':
      return receivedMayday(situation, vessel, say, designated);
    case 'received-mayday-relay':
      return receivedMaydayRelay(situation, vessel, say, designated);
    case 'cancel-alert':
      return cancelAlert(situation.time, vessel, say);
    case 'pan-pan':
      return panPan(situation, vessel, say);
    case 'securite':
      return securite(situation, vessel, say);
    case 'routine-call':
      return routineCall(situation, vessel, say);
    case 'routine-answer':
      return routineAnswer(situation, vessel, say);
    case 'radio-check':
      return radioCheck(situation, vessel, say);
    case 'nothing-to-say':
      return script({
        title: 'speech-title-nothing',
        channel: null,
        lines: [],
        caution: situation.why,
        clause: situation.clause,
      });
  }
}
