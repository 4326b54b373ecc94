import type { Reading, Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { instantNear } from '../field/utc-field.ts';
import { readClock } from '../own/clock.ts';
import { type ReadFix, readOwnFix } from '../own/receiver-fix.ts';
import { readTarget } from '../point/target.ts';
import { readWaypoint } from '../point/waypoint.ts';

/** Where and when a sentence was read. */
export interface Place {
  readonly line: number;
  readonly offset: number;
  readonly at: number | null;
}

/** Place and time from a positioning sentence: the reader needs both before anything else. */
export interface OwnWord {
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
  if (formatter === 'ZDA' && word.instant !== null) {
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
