import type { ExpansionSet, ReadFields } from '../../call/internal.ts';
import type { Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import type { DseReading } from '../dsc/dse.ts';
import type { DscReading } from '../dsc/read-dsc.ts';
import { aloneNotice, lateNotice, missingNotice, unannouncedNotice } from './expansion-notice.ts';
import type { ReaderSettings } from './options.ts';
import { between, callStation, createSentenceRepeats, type Receipt } from './repeats.ts';

/** A call that may still get its expansion. */
export interface OpenCall {
  readonly event: number;
  readonly repeat: number;
  readonly line: number;
  readonly offset: number;
  readonly receipt: Receipt;
  readonly dsc: DscReading;
  /** What its fields mean without the expansion, once they were read. */
  read: ReadFields | null;
  readonly notices: readonly Notice[];
  readonly sentences: [Sentence, ...Sentence[]];
  /** What was said of its `DSE` sentences. */
  readonly said: Notice[];
  /** Data sets by number of their `DSE` sentence. */
  readonly parts: Map<number, readonly ExpansionSet[]>;
}

export interface CallState {
  readonly open: OpenCall;
  readonly stage: 'provisional' | 'final';
  readonly sets: readonly ExpansionSet[];
  readonly notices: readonly Notice[];
}

export interface Pairing {
  /** Takes a call; returns its reading before anything else arrived. */
  addCall(
    call: Pick<OpenCall, 'line' | 'offset' | 'receipt' | 'dsc' | 'notices'>,
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

/**
 * A pairing at its beginning. Nothing in it reads a clock: time comes in with the sentences.
 *
 * An expansion joins the latest open call of the same station that still lacks it, calls of the same
 * talker first; never a call of another station.
 */
export function createPairing({ waitMs, waitSentences }: ReaderSettings): Pairing {
  let entries: Entry[] = [];
  let seen = 0;
  const numberOf = createSentenceRepeats();

  function take(entry: Entry): void {
    entries = entries.filter((other) => other !== entry);
  }

  function settle(receipt: Receipt): readonly CallState[] {
    if (entries.length === 0) return NONE;
    const over = entries.filter(
      (entry, index) =>
        entries.length - index > MOST_OPEN || hasWaited(entry, receipt, seen, waitMs, waitSentences),
    );
    entries = entries.filter((entry) => !over.includes(entry));
    return over.flatMap(giveUp);
  }

  return {
    addCall({ line, offset, receipt, dsc, notices }, sentence) {
      const { event, repeat } = numberOf(sentence.fields, receipt);
      const open: OpenCall = {
        event,
        repeat,
        line,
        offset,
        receipt,
        dsc,
        read: null,
        notices,
        sentences: [sentence],
        said: [],
        parts: new Map(),
      };
      entries.push({ open, key: callStation(sentence.fields), since: seen });
      const stage = open.dsc.expansionAnnounced ? 'provisional' : 'final';
      return { open, stage, sets: [], notices: [] };
    },

    addExpansion(dse, sentence, said) {
      const entry = choose(entries, dse, sentence.talker);
      // A query of its own accord belongs to no call; one after a call that announced it does.
      if (dse.flag === 'query' && entry?.open.dsc.expansionAnnounced !== true) return [];
      if (entry === null) {
        // Without an identity nothing says that it is another station's.
        const waiting =
          dse.station === '' ? undefined : entries.find(({ open }) => open.dsc.expansionAnnounced);
        return [aloneNotice(dse.station, waiting?.key ?? null)];
      }
      const { open } = entry;
      open.parts.set(dse.number, dse.sets);
      open.sentences.push(sentence);
      open.said.push(...said);
      if (open.parts.size < dse.total) return 'waiting';
      take(entry);
      const notices = [...open.said];
      if (!open.dsc.expansionAnnounced) notices.push(unannouncedNotice(dse.station));
      const between = seen - entry.since - dse.total;
      if (between > 0) notices.push(lateNotice(dse.station, between));
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

function hasWaited(entry: Entry, now: Receipt, seen: number, waitMs: number, waitSentences: number): boolean {
  const waited = between(entry.open.receipt, now);
  return waited === null ? seen - entry.since > waitSentences : waited > waitMs;
}

/** The same talker first, then the latest. */
function choose(entries: readonly Entry[], dse: DseReading, talker: string): Entry | null {
  let found: Entry | null = null;
  for (const entry of entries) {
    const { parts } = entry.open;
    // A later sentence of a group may leave the identity out: it goes on from the one before.
    const goesOn = dse.station === '' && parts.has(dse.number - 1);
    const isOf = goesOn || entry.key === dse.station;
    if (!isOf || parts.has(dse.number)) continue;
    const better = found === null || speaks(entry, talker) || !speaks(found, talker);
    if (better) found = entry;
  }
  return found;
}

function speaks(entry: Entry, talker: string): boolean {
  return entry.open.sentences[0].talker === talker;
}

/** A call whose expansion never came is final as it is; one that announced none has been final already. */
function giveUp({ open }: Entry): CallState[] {
  if (!open.dsc.expansionAnnounced && open.parts.size === 0) return [];
  return [
    {
      open,
      stage: 'final',
      sets: setsOf(open),
      notices: [...open.said, missingNotice(open.parts.size, setsOf(open))],
    },
  ];
}

function setsOf(open: OpenCall): readonly ExpansionSet[] {
  if (open.parts.size === 1) for (const sets of open.parts.values()) return sets;
  return [...open.parts].sort(([one], [other]) => one - other).flatMap(([, sets]) => sets);
}
