import type { ExpansionSet } from '../../call/index.ts';
import type { Notice } from '../../result/index.ts';
import type { DseReading } from '../dsc/dse.ts';
import { stationKey } from '../dsc/identity-field.ts';
import type { DscReading } from '../dsc/read-dsc.ts';
import type { Sentence } from '../frame/sentence.ts';

/** When something was received, and by whose clock: only instants of one clock can be compared. */
export interface Receipt {
  readonly at: number | null;
  readonly clock: 'caller' | 'tag' | 'stream' | 'none';
}

/** A call that may still get its expansion. */
export interface OpenCall {
  readonly event: number;
  readonly repeat: number;
  readonly line: number;
  readonly offset: number;
  readonly receipt: Receipt;
  readonly dsc: DscReading;
  readonly notices: readonly Notice[];
  readonly sentences: Sentence[];
  /** What was said of its `DSE` sentences. */
  readonly said: Notice[];
  /** Data sets by number of their `DSE` sentence. */
  readonly parts: Map<number, readonly ExpansionSet[]>;
}

/** A call as it stands now. */
export interface CallState {
  readonly open: OpenCall;
  readonly stage: 'provisional' | 'final';
  readonly sets: readonly ExpansionSet[];
  readonly notices: readonly Notice[];
}

/** How long and how much to wait for. */
export interface PairingSettings {
  /** Milliseconds to wait for a `DSE` sentence, where times of receipt are known. */
  readonly wait: number;
  /** Sentences to let pass while waiting, where they are not. */
  readonly waitSentences: number;
}

/** Joins `DSC` and `DSE` sentences. */
export interface Pairing {
  /** Takes a call; returns how it stands before anything else came. */
  addCall(
    call: Omit<OpenCall, 'event' | 'repeat' | 'parts' | 'sentences' | 'said'>,
    sentence: Sentence,
  ): CallState;
  /** Takes an expansion; returns the call it completes, `'waiting'` for more of it, or notices why it belongs to none. */
  addExpansion(
    dse: DseReading,
    sentence: Sentence,
    said: readonly Notice[],
  ): CallState | 'waiting' | readonly Notice[];
  /** Counts a sentence and returns the calls that have waited long enough. */
  pass(receipt: Receipt): readonly CallState[];
  /** The same when no sentence came, only time went by. */
  wait(receipt: Receipt): readonly CallState[];
  /** Returns all calls that still wait. */
  end(): CallState[];
}

interface Entry {
  readonly open: OpenCall;
  readonly key: string;
  /** Sentences seen when the call came. */
  readonly since: number;
}

/** Calls that wait at one time. Thirty-two distress alerts within two seconds is more than channel 70 can carry. */
const MOST_OPEN = 32;
const NONE: readonly CallState[] = [];
/** Alerts and reports remembered in order to know their repeats. */
const MOST_REMEMBERED = 64;
const CLAUSE = 'IEC 61162-1, DSC and DSE sentences';

/**
 * A pairing at its beginning. Nothing in it reads a clock: time comes in with the sentences.
 *
 * An expansion joins the latest open call of the same station that still lacks it, calls of the same
 * talker first; never a call of another station.
 */
export function createPairing({ wait, waitSentences }: PairingSettings): Pairing {
  let entries: Entry[] = [];
  let seen = 0;
  let events = 0;
  const remembered = new Map<string, { event: number; repeat: number }>();

  function number(texts: readonly string[]): { event: number; repeat: number } {
    const key = repeatKey(texts);
    const known = key === null ? undefined : remembered.get(key);
    if (key === null || known === undefined) {
      events += 1;
      const first = { event: events, repeat: 0 };
      if (key !== null) remember(key, first);
      return first;
    }
    const again = { event: known.event, repeat: known.repeat + 1 };
    remembered.delete(key);
    remember(key, again);
    return again;
  }

  function remember(key: string, value: { event: number; repeat: number }): void {
    remembered.set(key, value);
    if (remembered.size > MOST_REMEMBERED) {
      for (const oldest of remembered.keys()) {
        remembered.delete(oldest);
        break;
      }
    }
  }

  function take(entry: Entry): void {
    entries = entries.filter((other) => other !== entry);
  }

  function settle(receipt: Receipt): readonly CallState[] {
    if (entries.length === 0) return NONE;
    const over = entries.filter(
      (entry, index) =>
        entries.length - index > MOST_OPEN || hasWaited(entry, receipt, seen, wait, waitSentences),
    );
    if (over.length === 0) return NONE;
    entries = entries.filter((entry) => !over.includes(entry));
    return over.flatMap(giveUp);
  }

  return {
    addCall(call, sentence) {
      const open: OpenCall = {
        ...call,
        ...number(sentence.fields),
        parts: new Map(),
        sentences: [sentence],
        said: [],
      };
      entries.push({ open, key: stationOf(sentence.fields), since: seen });
      const stage = open.dsc.expansionAnnounced ? 'provisional' : 'final';
      return { open, stage, sets: [], notices: [] };
    },

    addExpansion(dse, sentence, said) {
      const entry = choose(entries, dse, sentence.talker);
      // A query of its own accord belongs to no call; one behind a call that announced it does.
      if (dse.flag === 'query' && entry?.open.dsc.expansionAnnounced !== true) return [];
      if (entry === null) return [aloneNotice(dse, entries)];
      const { open } = entry;
      open.parts.set(dse.number, dse.sets);
      open.sentences.push(sentence);
      open.said.push(...said);
      if (open.parts.size < dse.total) return 'waiting';
      take(entry);
      const notices = [...open.said];
      if (!open.dsc.expansionAnnounced) notices.push(unannounced(dse));
      const between = seen - entry.since - dse.total;
      if (between > 0) notices.push(late(dse, between));
      return { open, stage: 'final', sets: setsOf(open), notices };
    },

    pass(receipt) {
      seen += 1;
      return settle(receipt);
    },

    wait: settle,

    end() {
      const over = entries;
      entries = [];
      return over.flatMap(giveUp);
    },
  };
}

function hasWaited(entry: Entry, now: Receipt, seen: number, wait: number, waitSentences: number): boolean {
  const { receipt } = entry.open;
  if (receipt.at !== null && now.at !== null && receipt.clock === now.clock && now.clock !== 'none') {
    return now.at - receipt.at > wait;
  }
  return seen - entry.since > waitSentences;
}

/** The same talker first, then the latest. */
function choose(entries: readonly Entry[], dse: DseReading, talker: string): Entry | null {
  let found: Entry | null = null;
  for (const entry of entries) {
    if (entry.key !== dse.station || entry.open.parts.has(dse.number)) continue;
    const better = found === null || speaks(entry, talker) || !speaks(found, talker);
    if (better) found = entry;
  }
  return found;
}

function speaks(entry: Entry, talker: string): boolean {
  return entry.open.sentences[0]?.talker === talker;
}

/** A call whose expansion never came is final as it stands; one that announced none has been final already. */
function giveUp({ open }: Entry): CallState[] {
  if (!open.dsc.expansionAnnounced && open.parts.size === 0) return [];
  return [{ open, stage: 'final', sets: setsOf(open), notices: [...open.said, missing(open)] }];
}

function setsOf(open: OpenCall): ExpansionSet[] {
  return [...open.parts].sort(([one], [other]) => one - other).flatMap(([, sets]) => sets);
}

function stationOf(texts: readonly string[]): string {
  const first = texts[0] ?? '';
  return stationKey(first.length > 2 ? first : (texts[1] ?? ''));
}

/**
 * What makes two sentences the same event: station, kind, nature, ship, position and time, for alerts and
 * for reports with a time (common practice, no source). Other calls may well be made twice.
 * deviation: D-sentence-8
 */
function repeatKey(texts: readonly string[]): string | null {
  const [format, , category, first, second, place = '', time = '', ship, nature, end] = texts;
  const distress = format === '12' || category === '12';
  const dated = place.length === 10 && time !== '' && time !== '8888' && place !== '9999999999';
  if (!distress && !dated) return null;
  return [
    format,
    stationOf(texts),
    distress ? '' : category,
    first,
    second,
    place,
    time,
    ship,
    nature,
    end,
  ].join();
}

function unannounced(dse: DseReading): Notice {
  return {
    code: 'sentence-expansion-unannounced',
    message: `The expansion for ${dse.station} was joined though the call did not announce it`,
    at: ['DSC', 'field', 11],
    expected: 'E',
    received: 'nothing',
    clause: CLAUSE,
  };
}

function late(dse: DseReading, between: number): Notice {
  return {
    code: 'sentence-expansion-late',
    message: `The expansion for ${dse.station} came ${between} sentences after its call, not directly behind it`,
    at: ['DSE'],
    expected: 'the very next sentence',
    received: `${between} sentences between`,
    clause: CLAUSE,
  };
}

function missing({ parts }: OpenCall): Notice {
  return {
    code: 'sentence-expansion-missing',
    message: 'The expansion of the call was announced and not received in full: its position stays as it is',
    at: ['DSC', 'field', 11],
    expected: 'DSE sentences directly behind the call',
    received: `${parts.size} of them`,
    clause: CLAUSE,
  };
}

function aloneNotice(dse: DseReading, entries: readonly Entry[]): Notice {
  const waiting = entries.find((entry) => entry.open.dsc.expansionAnnounced);
  if (waiting === undefined) {
    return {
      code: 'sentence-expansion-alone',
      message: `The expansion for ${dse.station} belongs to no call that was read`,
      at: ['DSE', 'field', 4],
      received: dse.station,
      clause: CLAUSE,
    };
  }
  return {
    code: 'sentence-expansion-other-station',
    message: `The expansion for ${dse.station} is not joined to the call of ${waiting.key}`,
    at: ['DSE', 'field', 4],
    expected: waiting.key,
    received: dse.station,
    clause: CLAUSE,
  };
}
