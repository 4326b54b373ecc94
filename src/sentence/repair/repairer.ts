import { centreOf, cornerOf } from '../../position/internal.ts';
import type { Reading, Sentence } from '../../report/index.ts';
import { requireOneOf } from '../arguments.ts';
import { type DseReading, readDse } from '../dsc/dse.ts';
import { stationKey } from '../dsc/field.ts';
import { inEleven } from '../dsc/layout.ts';
import { PIECE_WANTED, pieceOf, typeName } from '../frame/encoding.ts';
import { lineEnd, MOST_LINE_CHARACTERS } from '../frame/lines.ts';
import { writeTarget, writeWaypoint } from '../point/waypoint-and-target.ts';
import { createSentenceReader } from '../reader/reader.ts';
import { REPAIRABLE_FAULTS, type RepairableFault, repairLine } from './repair-line.ts';

export type Change = RepairedChunk['changes'][number];

/** Output of a repairer for one chunk of the stream, with every change. */
export interface RepairedChunk {
  /** To be sent on, one character a byte (ISO 8859-1). */
  readonly output: string;
  readonly changes: readonly {
    readonly kind: 'replaced' | 'moved' | 'inserted';
    /** Line of the input, counted from 1. */
    readonly line: number;
    /** Faults that were repaired; empty when a line was inserted. */
    readonly faults: readonly RepairableFault[];
    /** The line as it came, `null` when it is inserted. */
    readonly before: string | null;
    /** The line as it goes on. */
    readonly after: string;
  }[];
}

/** Passes a stream on. */
export interface SentenceRepairer {
  /**
   * Takes the next piece, text or bytes.
   *
   * @throws TypeError when it is neither: there is no place in the output to tell it
   */
  push(chunk: string | Uint8Array): RepairedChunk;
  /** Ends the stream: gives whatever was held. */
  flush(): RepairedChunk;
}

interface HeldLine {
  readonly text: string;
  readonly ending: string;
}

/** A call whose expansion is awaited, and the lines that came meanwhile. */
interface Waiting {
  readonly station: string;
  readonly lines: HeldLine[];
}

const BYTES_AT_ONCE = 4096;
/** Two digits of a `TLL` sentence. */
const MOST_TARGETS = 100;
const REPORTS = ['waypoint', 'target'] as const;

/**
 * A filter for the wire between a radio and a display: repairs chosen faults, logs every change, and passes
 * everything else on byte for byte.
 *
 * A mark made from a call is a single report, perhaps old, and within a mile when the call had no decimals
 * (the middle of the possible area is written then): tell the person who steers by the display.
 *
 * @param options - which faults, and what else to write
 * @returns the filter; no text and no bytes make it throw
 * @throws RangeError when a fault cannot be repaired, a report is neither waypoint nor target, or `mostHeld` is no count
 *
 * @see {@link findFaults}
 * @see {@link writeWaypoint}
 *
 * @example
 * ```ts
 * import { createSentenceRepairer } from 'seahail/sentence';
 *
 * const repairer = createSentenceRepairer({ repair: ['identity-nine-digits'], reportAs: ['waypoint'] });
 * const { output } = repairer.push('$CDDSC,20,232999142,08,21,26,1562000630,1404,,,B,*09\r\n');
 * console.log(output.split('\r\n')[0]); // $CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,*39
 * console.log(output.split('\r\n')[1]); // $CDWPL,5620.5000,N,00630.5000,W,232999142*70
 * ```
 */
export function createSentenceRepairer(
  options: {
    /** Faults to be repaired. */
    readonly repair?: readonly RepairableFault[] | undefined;
    /**
     * What else to write, once, for every position that a station answers or reports, for displays that know no
     * `DSC`. A waypoint claims less than a target, which a display draws as if it were tracked.
     */
    readonly reportAs?: readonly ('waypoint' | 'target')[] | undefined;
    /**
     * Lines that may be held back while a late expansion is awaited (`'expansion-late'` only); 8 unless given.
     * A call is never held back.
     */
    readonly mostHeld?: number | undefined;
  } = {},
): SentenceRepairer {
  const { repair = [], reportAs = [], mostHeld = 8 } = options ?? {};
  for (const fault of repair) requireOneOf('repair', fault, REPAIRABLE_FAULTS);
  for (const kind of reportAs) requireOneOf('reportAs', kind, REPORTS);
  if (!Number.isInteger(mostHeld) || mostHeld < 0)
    throw new RangeError(`mostHeld: expected a count, got ${mostHeld}`);
  const chosen = new Set(repair);
  const reader = createSentenceReader();
  const targets: string[] = [];
  let nextTarget = 0;
  let buffer = '';
  let passing = false;
  let number = 1;
  let waiting: Waiting | null = null;
  let output = '';
  let changes: Change[] = [];

  function takeText(text: string): void {
    buffer += text;
    let from = 0;
    for (;;) {
      const end = lineEnd(buffer, from);
      // A carriage return at the end of what is here may still get its line feed.
      if (end < 0 || (buffer[end] === '\r' && end === buffer.length - 1)) break;
      const next = buffer[end] === '\r' && buffer[end + 1] === '\n' ? end + 2 : end + 1;
      takeLine(buffer.slice(from, end), buffer.slice(end, next));
      from = next;
    }
    buffer = buffer.slice(from);
    if (buffer.length > MOST_LINE_CHARACTERS + 1) {
      release();
      // The carriage return stays: it ends the line, and its line feed may still come.
      const kept = buffer.endsWith('\r') ? buffer.length - 1 : buffer.length;
      output += buffer.slice(0, kept);
      buffer = buffer.slice(kept);
      passing = true;
    }
  }

  function takeLine(line: string, ending: string): void {
    if (passing || line.length > MOST_LINE_CHARACTERS) {
      release();
      output += line + ending;
      passing = false;
    } else {
      const { text, repaired, sentences } = repairLine(line, chosen);
      if (text !== line)
        changes.push({ kind: 'replaced', line: number, faults: repaired, before: line, after: text });
      if (chosen.has('expansion-late')) order({ text, ending }, sentences);
      else emit({ text, ending });
    }
    number += 1;
  }

  /** Lets an awaited expansion go before the lines that came between. */
  function order(line: HeldLine, sentences: readonly Sentence[]): void {
    const call = onlyOf('DSC', sentences);
    const expansion = onlyOf('DSE', sentences);
    const dse = expansion && readDse(expansion);
    if (call !== null) {
      release();
      emit(line);
      if (inEleven(call)[10] === 'E') waiting = { station: stationKey(call[1] as string), lines: [] };
    } else if (waiting === null) {
      emit(line);
    } else if (dse !== null && belongsTo(dse, waiting.station)) {
      if (waiting.lines.length > 0) {
        const { text } = line;
        changes.push({ kind: 'moved', line: number, faults: ['expansion-late'], before: text, after: text });
      }
      emit(line);
      if (dse.number === dse.total) release();
    } else {
      waiting.lines.push(line);
      if (waiting.lines.length > mostHeld) release();
    }
  }

  function release(): void {
    const lines = waiting?.lines ?? [];
    waiting = null;
    for (const line of lines) emit(line);
  }

  function emit({ text, ending }: HeldLine): void {
    output += text + ending;
    if (reportAs.length === 0) return;
    for (const reading of reader.push(`${text}\r\n`)) {
      if (reading.kind === 'call' && reading.stage === 'final' && reading.repeat === 0) report(reading);
    }
  }

  function report({ call }: Reading<'call'>): void {
    if (call.kind !== 'position-reply' || call.position === null || call.from === null) return;
    const { fraction } = call.position;
    const position = fraction === undefined ? centreOf(call.position) : cornerOf(call.position);
    const time = call.time === null ? null : { ...call.time, second: 0 };
    for (const kind of reportAs) {
      const after =
        kind === 'waypoint'
          ? writeWaypoint({ position, name: call.from })
          : writeTarget({ number: targetOf(call.from), position, name: call.from, time });
      output += `${after}\r\n`;
      changes.push({ kind: 'inserted', line: number, faults: [], before: null, after });
    }
  }

  /** Her target number. When all are taken, the station that has had hers longest gives it up. */
  function targetOf(station: string): number {
    const known = targets.indexOf(station);
    if (known >= 0) return known;
    const free = nextTarget;
    targets[free] = station;
    nextTarget = (free + 1) % MOST_TARGETS;
    return free;
  }

  function given(): RepairedChunk {
    const piece = { output, changes };
    output = '';
    changes = [];
    return piece;
  }

  return {
    push(chunk) {
      const piece = pieceOf(chunk);
      if (piece === null) throw new TypeError(`push: expected ${PIECE_WANTED}, got ${typeName(chunk)}`);
      if (typeof piece === 'string') takeText(piece);
      else {
        for (let from = 0; from < piece.length; from += BYTES_AT_ONCE) {
          takeText(String.fromCharCode(...piece.subarray(from, from + BYTES_AT_ONCE)));
        }
      }
      return given();
    },
    flush() {
      if (buffer !== '') {
        const end = lineEnd(buffer, 0);
        takeLine(end < 0 ? buffer : buffer.slice(0, end), end < 0 ? '' : buffer.slice(end));
        buffer = '';
      }
      release();
      return given();
    },
  };
}

/** The fields of the only sentence of a line, when it is one of this formatter. */
function onlyOf(formatter: 'DSC' | 'DSE', sentences: readonly Sentence[]): readonly string[] | null {
  const [sentence, ...others] = sentences;
  const isOne = sentence?.form === 'standard' && sentence.formatter === formatter && others.length === 0;
  return isOne ? sentence.fields : null;
}

/** Later sentences of a group may leave the identity out (IEC 61162-1, `DSE` sentence, as publicly restated). */
function belongsTo({ station, number }: DseReading, waiting: string): boolean {
  return station === waiting || (station === '' && number > 1);
}
