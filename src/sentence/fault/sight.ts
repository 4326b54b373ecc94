import type { Call } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import type { Reading, Sentence } from '../../report/index.ts';
import { rememberLatest } from '../../report/internal.ts';
import type { CodedText, Issue } from '../../result/index.ts';
import { textOf } from '../../result/internal.ts';
import { addCallFaults, type CallContext } from './call-fault.ts';
import { type Collector, createCollector, type Sighting } from './fault.ts';
import { addDamage, addLineFaults } from './line-fault.ts';
import { addPlausibility, MOST_STATIONS, type Places } from './plausibility.ts';
import { said } from './texts.ts';

export interface Tally {
  /** Sound sentences. */
  sentences: number;
  calls: number;
}

export interface Sight {
  look(reading: Reading): void;
  /** Looks at what was still held and at the whole. */
  end(): { readonly tally: Tally; readonly collector: Collector };
}

/** Calls held until nothing more can come for them. */
const MOST_HELD = 64;
/** Characters shown of a line that is no sentence. */
const MOST_SHOWN = 82;
/** Wrong checksums that must agree before a device is accused. */
const LEAST_WRONG = 3;

/** A look at the beginning of a stream. Its memory is bounded. */
export function createSight(context: CallContext, position: Coordinates | null, now: number | null): Sight {
  const collector = createCollector();
  const places: Places = { own: position, ais: new Map(), reports: new Map() };
  const tally: Tally = { sentences: 0, calls: 0 };
  const differences = new Set<string>();
  const held = new Map<string, Reading<'call'>>();
  /** Stations whose announced expansion did not come in time. */
  const unfinished = new Map<string, string>();
  /** Expansions without a call: of interest only when no damaged line explains them. */
  const strayed: Sighting[] = [];
  /** The first line that is no sentence at all: of interest only when none is. */
  let noSentence: Sighting | null = null;
  let wrong = 0;
  /** Whether the checksum of a sentence holds. */
  let isChecked = false;
  let hasPosition = false;
  const replies = new Set<'came' | 'polled' | 'doubtful'>();
  let polledAt: number | null = null;

  function hold(reading: Reading<'call'>): void {
    const key = `${reading.event} ${reading.repeat}`;
    if (!held.has(key)) tally.calls += 1;
    held.set(key, reading);
    const { from } = reading.call;
    if (from !== null && reading.notices.some(({ code }) => isUnfinished(code))) {
      rememberLatest(unfinished, from, from, MOST_STATIONS);
    }
    if (held.size <= MOST_HELD) return;
    for (const [oldest, call] of held) {
      held.delete(oldest);
      lookAtCall(call);
      return;
    }
  }

  function count(sentences: readonly Sentence[]): void {
    tally.sentences += sentences.length;
    if (sentences.some(({ checksum }) => checksum === 'right')) isChecked = true;
  }

  function lookAtCall(reading: Reading<'call'>): void {
    const { call } = reading;
    count(reading.sources);
    addLineFaults(reading, collector);
    addCallFaults(reading, context, collector);
    if (call.kind === 'polling-acknowledgement') polledAt ??= reading.line;
    if (call.kind === 'position-reply') hasPosition = true;
    noteReply(call);
    if ((call.kind === 'position-reply' || call.kind === 'distress-alert') && call.position !== null) {
      addPlausibility(reading, call.position, call.time, places, now, collector);
    }
  }

  /** A refusal is a reply, and so is a position that cannot be read: they are findings of their own. */
  function noteReply(call: Call): void {
    const { expected, own } = context;
    const refuses = call.kind === 'unable-to-comply' && (call.category === 'safety' || expected !== null);
    if (call.kind !== 'position-reply' && call.kind !== 'polling-acknowledgement' && !refuses) return;
    const { from } = call;
    const isHers = expected === null ? from !== own : from === expected;
    if (from !== null && !isHers) return;
    const kind = call.kind === 'polling-acknowledgement' ? 'polled' : 'came';
    replies.add(from === null ? 'doubtful' : kind);
  }

  /** An expansion that belongs to no open call: too late for its own, or of another station. */
  function lookAtExpansion({ line, station, notices }: Reading<'expansion'>): void {
    const sighting = { line, field: 4, seen: station };
    if (unfinished.has(station)) collector.add('expansion-late', 'certain', sighting);
    else if (notices.some(({ code }) => code === 'sentence-expansion-other-station')) {
      collector.add('expansion-mismatch', 'certain', sighting);
    } else if (strayed.length < MOST_HELD) strayed.push(sighting);
  }

  /** The expected call, when nothing else says where it is. */
  function lookForReply(): void {
    const whole = { line: null, field: null };
    if (tally.calls === 0) {
      // A damaged line, or an expansion on its own, says more about a missing call.
      const isTold = wrong > 0 || strayed.length > 0;
      if (tally.sentences === 0 || (isTold && !context.expects)) return;
      const seen = said('sentence-seen-no-call', { sentences: tally.sentences });
      collector.add('calls-filtered', context.expects ? 'likely' : 'possible', { ...whole, seen });
    } else if (context.expects && !replies.has('came') && !(replies.has('polled') && !hasPosition)) {
      const station = context.expected === null ? {} : { station: context.expected };
      const seen = said('sentence-seen-no-reply', { calls: tally.calls, ...station });
      // A damaged line, or a call whose station cannot be read, may be the reply.
      const certainty = replies.has('doubtful') || wrong > 0 ? 'possible' : 'likely';
      collector.add('reply-missing', certainty, { ...whole, seen });
    }
  }

  /** The beginning of the line, or why there is none to show. */
  function shown({ text, issues }: Reading<'damaged'>): string | CodedText {
    return text === '' ? textOf(issues[0] as Issue) : text.trim().slice(0, MOST_SHOWN);
  }

  return {
    look(reading) {
      if (reading.kind === 'call') return hold(reading);
      if (reading.kind === 'damaged') {
        wrong += addDamage(reading, collector, differences);
        noSentence ??= { line: reading.line, field: null, seen: shown(reading) };
        return;
      }
      count(reading.sources);
      addLineFaults(reading, collector);
      if (reading.kind === 'own-position') places.own = reading.fix.position ?? places.own;
      if (reading.kind === 'ais' && reading.report.position !== undefined) {
        rememberLatest(places.ais, reading.report.mmsi, reading.report.position, MOST_STATIONS);
      }
      if (reading.kind === 'expansion' && reading.flag !== 'query') lookAtExpansion(reading);
    },

    end() {
      for (const reading of held.values()) lookAtCall(reading);
      if (wrong === 0)
        for (const sighting of strayed) collector.add('expansion-mismatch', 'likely', sighting);
      if (tally.sentences === 0 && wrong === 0 && noSentence !== null) {
        collector.add('no-sentence', 'certain', noSentence);
      }
      if (polledAt !== null && !hasPosition) {
        collector.add('polled', context.expects ? 'likely' : 'possible', {
          line: polledAt,
          field: 4,
          seen: '03',
        });
      }
      lookForReply();
      // Where none has a checksum, none was lost with the end of a line.
      if (!isChecked) collector.confirm('checksum-missing');
      const [difference] = differences;
      if (difference && differences.size === 1 && wrong >= LEAST_WRONG && tally.sentences === 0) {
        const seen = said('sentence-seen-alike', { count: wrong, difference });
        collector.add('rewritten-between', 'likely', { line: null, field: null, seen });
      }
      return { tally, collector };
    },
  };
}

function isUnfinished(code: string): boolean {
  return code === 'sentence-expansion-missing' || code === 'sentence-expansion-incomplete';
}
