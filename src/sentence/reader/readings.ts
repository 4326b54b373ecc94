import { expandFields, readFields, unnamedChannelNotices } from '../../call/internal.ts';
import type { TimeOfDay } from '../../position/index.ts';
import { resolveTime } from '../../position/internal.ts';
import type { Reading, Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import type { AssembledAis, GivenUp } from '../ais/assembly.ts';
import { decodeAis } from '../ais/decode.ts';
import { isLegacy } from '../dsc/layout.ts';
import { instantNear } from '../field/utc-field.ts';
import { type ReadFix, readClock, readOwnFix } from '../own/receiver-fix.ts';
import { readTarget, readWaypoint } from '../point/waypoint-and-target.ts';
import type { ReaderSettings } from './options.ts';
import type { CallState } from './pairing.ts';

export type Place = Pick<Reading, 'line' | 'offset' | 'at'>;

/** Place and time from a positioning sentence: the reader needs both before anything else. */
interface OwnWord {
  readonly fix: ReadFix | null;
  /** Epoch milliseconds, from a sentence that carries a date and is to be believed. */
  readonly instant: number | null;
}

/** Reads own position and clock sentences; nothing of any other. */
export function ownWord(formatter: string, sentence: Sentence): OwnWord {
  if (formatter === 'ZDA') return { fix: null, instant: readClock(sentence.fields) };
  const fix = readOwnFix(formatter, sentence.fields);
  return { fix, instant: fix === null || fix.fix.position === null ? null : fix.fix.instant };
}

/** Reading of a sentence that needs no other; a valid one without a known meaning is kept as `'other'`. */
export function plainReading(
  formatter: string,
  sentence: Sentence,
  word: OwnWord,
  place: Place,
  notices: readonly Notice[],
): Reading {
  const sources = [sentence];
  if (word.fix !== null) {
    const { fix, notices: said } = word.fix;
    const reference = fix.instant ?? place.at;
    const instant = fix.time === null || reference === null ? null : instantNear(fix.time, reference);
    return {
      kind: 'own-position',
      ...place,
      notices: [...notices, ...said],
      fix: { ...fix, instant },
      sources,
    };
  }
  if (word.instant !== null) {
    return { kind: 'clock', ...place, notices, instant: word.instant, sources };
  }
  if (formatter === 'WPL') {
    const waypoint = readWaypoint(sentence.fields);
    if (waypoint !== null) return { kind: 'waypoint', ...place, notices, waypoint, sources };
  }
  if (formatter === 'TLL') {
    const target = readTarget(sentence.fields);
    if (target !== null) return { kind: 'target', ...place, notices, target, sources };
  }
  return { kind: 'other', ...place, notices, sources };
}

/** What the reader knows of one sentence of an AIS message. */
export interface AboutPart {
  readonly place: Place;
  readonly notices: readonly Notice[];
}

/** What a whole message says; when it says nothing that is read, its sentences as they are. */
export function aisReadings({ payload, channel, parts }: AssembledAis<AboutPart>): Reading[] {
  const { report, notices } = decodeAis(payload);
  if (report === null) {
    return parts.map(({ sentence, about }) => ({
      kind: 'other',
      ...about.place,
      notices: [...about.notices, ...notices],
      sources: [sentence],
    }));
  }
  const [first] = parts;
  return [
    {
      kind: 'ais',
      ...first.about.place,
      notices:
        parts.length === 1
          ? [...first.about.notices, ...notices]
          : [...parts.flatMap(({ about }) => about.notices), ...notices],
      own: first.sentence.formatter === 'VDO',
      channel,
      report,
      sources: parts.map(({ sentence }) => sentence),
    },
  ];
}

/** A sentence of a message that came to nothing. */
export function lostAis({ sentence, about, notice }: GivenUp<AboutPart>): Reading {
  return { kind: 'other', ...about.place, notices: [...about.notices, notice], sources: [sentence] };
}

/** Reading of a call, with the finer position and the data of its expansion. */
export function callReading(
  { open, stage, sets, notices }: CallState,
  settings: ReaderSettings,
): Reading<'call'> {
  const { dsc, receipt } = open;
  const at = receipt.at ?? settings.now;
  open.read ??= readFields(dsc.fields);
  const read = sets.length === 0 ? open.read : expandFields(open.read, sets);
  // The older layout has no field for a channel, and a commanded call leaves it to the radio.
  const mayName = settings.direction === 'received' && !isLegacy(open.sentences[0].fields);
  const unnamed = mayName ? unnamedChannelNotices(read.call) : [];
  return {
    kind: 'call',
    line: open.line,
    offset: open.offset,
    at,
    notices: [...open.notices, ...dsc.notices, ...read.notices, ...unnamed, ...notices],
    event: open.event,
    repeat: open.repeat,
    stage,
    call: read.call,
    direction: settings.direction,
    talker: open.sentences[0].talker,
    positionTime: 'time' in read.call ? dated(read.call.time, at) : null,
    sources: open.sentences.slice(),
  };
}

function dated(time: TimeOfDay | null, at: number | null): ReturnType<typeof resolveTime> | null {
  return time === null || at === null ? null : resolveTime(time, at);
}
