import type { Reading, Sentence } from '../../report/index.ts';
import type { Issue, Notice } from '../../result/index.ts';
import { createAisAssembly } from '../ais/assembly.ts';
import { requireInstant } from '../arguments.ts';
import { type DseReading, readDse } from '../dsc/dse.ts';
import { readDsc } from '../dsc/read-dsc.ts';
import { createDecoder, notText, pieceOf } from '../frame/encoding.ts';
import { createLineSplitter, type Line, MOST_LINE_CHARACTERS } from '../frame/lines.ts';
import { takeSentence } from '../frame/parse.ts';
import { issue } from '../texts.ts';
import { type ReaderOptions, settingsOf } from './options.ts';
import { type CallState, createPairing } from './pairing.ts';
import {
  type AboutPart,
  aisReadings,
  callReading,
  lostAis,
  ownWord,
  type Place,
  plainReading,
} from './readings.ts';
import type { Receipt } from './repeats.ts';

/** Issues told of one damaged stretch. */
const MOST_ISSUES = 4;

/** Reads a serial stream piece by piece. */
export interface SentenceReader {
  /**
   * Takes the next piece of the stream.
   *
   * @param chunk - text, or bytes as they came from the port
   * @param at - instant of receipt, epoch milliseconds; an empty chunk with an instant only lets time pass
   * @returns what the lines completed by this piece say, in order; whatever is neither text nor bytes is told as damage
   * @throws RangeError when the instant is none
   */
  push(chunk: string | Uint8Array, at?: number): Reading[];
  /** Ends the stream: reads a last line without an end and settles every call that still waits. */
  flush(): Reading[];
}

/**
 * A reader for the stream of a serial port. Chunks may be cut anywhere; memory is bounded; nothing that
 * arrives makes it throw.
 *
 * A call is given out at once, marked provisional while its expansion is awaited; distress alerts too are
 * never held back.
 *
 * @param options - direction, own identity, waiting time
 * @returns the reader
 * @throws RangeError when an option is out of range, TypeError when the own identity is no text
 *
 * @see {@link readSentences}
 *
 * @example
 * ```ts
 * import { createSentenceReader } from 'seahail/sentence';
 *
 * const reader = createSentenceReader({ own: '232999871' });
 * console.log(reader.push('$CDDSC,20,2329991420,08,21,26,156200').length); // 0
 * for (const reading of reader.push('0630,1404,,,B,*39\r\n', Date.UTC(2026, 5, 1, 14, 10))) {
 *   if (reading.kind === 'call') console.log(reading.call.kind, reading.call.from); // position-reply 232999142
 * }
 * ```
 */
export function createSentenceReader(options: ReaderOptions = {}): SentenceReader {
  const settings = settingsOf(options);
  const splitter = createLineSplitter();
  const decoder = createDecoder();
  let isBegun = false;
  const pairing = createPairing(settings);
  const assembly = createAisAssembly<AboutPart>();
  let streamClock: number | null = null;
  let lastDse: DseReading | null = null;
  let readings: Reading[] = [];

  /** The byte-order mark of a text that was decoded already is no part of its first line. */
  function takeText(text: string, at: number | undefined): void {
    const from = !isBegun && text.startsWith('\ufeff') ? 1 : 0;
    isBegun ||= text !== '';
    splitter.push(text.slice(from), (line) => takeLine(line, at));
  }

  function takeLine(line: Line, at: number | undefined): void {
    if (line.dropped > 0) readings.push(damagedReading(line, lastKnown(at), '', [endless(line)]));
    let issues: Issue[] = [];
    let damagedFrom = 0;
    for (let from = 0; from < line.text.length; ) {
      const { result, next } = takeSentence(line.text, from, settings.unchecked);
      if (!result.ok) issues.push(...result.issues);
      // Whatever is damaged between two sound sentences is one reading, however many pieces it fell into.
      if (issues.length > 0 && (result.ok || next === line.text.length)) {
        readings.push(
          damagedReading(line, lastKnown(at), line.text.slice(damagedFrom, result.ok ? from : next), issues),
        );
        issues = [];
      }
      if (result.ok) {
        takeSound(result.value, result.notices, line, at);
        damagedFrom = next;
      }
      from = next;
    }
  }

  function takeSound(
    sentence: Sentence,
    notices: readonly Notice[],
    line: Line,
    at: number | undefined,
  ): void {
    const formatter = sentence.form === 'standard' ? sentence.formatter : '';
    const word = ownWord(formatter, sentence);
    streamClock = word.instant ?? streamClock;
    const receipt = receiptOf(sentence, at);
    for (const state of pairing.pass(receipt)) readings.push(reading(state));

    const { number, offset } = line;
    const place = { line: number, offset, at: receipt.at ?? settings.now };
    if (formatter === 'DSC') {
      const dsc = readDsc(sentence.fields, settings);
      readings.push(reading(pairing.addCall({ line: number, offset, receipt, dsc, notices }, sentence)));
    } else if (formatter === 'DSE') {
      const dse = readDse(sentence.fields, lastDse);
      lastDse = dse;
      const joined = pairing.addExpansion(dse, sentence, [...notices, ...dse.notices]);
      if (joined === 'waiting') return;
      if ('open' in joined) readings.push(reading(joined));
      else readings.push(expansionReading(dse, sentence, place, [...notices, ...dse.notices, ...joined]));
    } else if (formatter === 'VDM' || formatter === 'VDO') {
      takeAis(sentence, place, notices);
    } else {
      readings.push(plainReading(formatter, sentence, word, place, notices));
    }
  }

  function takeAis(sentence: Sentence, place: Place, notices: readonly Notice[]): void {
    const { whole, givenUp } = assembly.add({ sentence, about: { place, notices } });
    for (const lost of givenUp) readings.push(lostAis(lost));
    if (whole !== null) readings.push(...aisReadings(whole));
  }

  function reading(state: CallState): Reading {
    return callReading(state, settings);
  }

  /** When something that carries no time of its own was received, as far as can be told. */
  function lastKnown(at: number | undefined): number | null {
    return at ?? streamClock ?? settings.now;
  }

  function receiptOf(sentence: Sentence, at: number | undefined): Receipt {
    if (at !== undefined) return { at, clock: 'caller' };
    const time = sentence.tag?.time;
    if (time !== undefined) return { at: time, clock: 'tag' };
    return streamClock === null ? { at: null, clock: 'none' } : { at: streamClock, clock: 'stream' };
  }

  function given(): Reading[] {
    const out = readings;
    readings = [];
    return out;
  }

  return {
    push(chunk, at) {
      if (at !== undefined) requireInstant('at', at);
      const piece = pieceOf(chunk);
      if (piece === null) readings.push(strange(chunk, splitter.place(), lastKnown(at)));
      else if (typeof piece === 'string') takeText(piece, at);
      else decoder.decode(piece, (text) => takeText(text, at));
      if (at !== undefined) readings.push(...pairing.wait({ at, clock: 'caller' }).map(reading));
      return given();
    },
    flush() {
      decoder.flush((text) => takeText(text, undefined));
      splitter.flush((line) => takeLine(line, undefined));
      readings.push(...pairing.end().map(reading), ...assembly.end().map(lostAis));
      return given();
    },
  };
}

function expansionReading(
  { station, flag, sets }: DseReading,
  sentence: Sentence,
  place: Place,
  notices: readonly Notice[],
): Reading {
  return { kind: 'expansion', ...place, notices, station, flag, sets, sources: [sentence] };
}

function damagedReading(
  line: Omit<Line, 'text'>,
  at: number | null,
  text: string,
  issues: readonly Issue[],
): Reading {
  return {
    kind: 'damaged',
    line: line.number,
    offset: line.offset,
    at,
    notices: [],
    sources: [],
    text,
    dropped: line.dropped,
    issues: issues.slice(0, MOST_ISSUES),
  };
}

/** Something that a program without types pushed, and that is no piece of a stream. */
function strange(value: unknown, place: Pick<Line, 'number' | 'offset'>, at: number | null): Reading {
  return damagedReading({ ...place, dropped: 0 }, at, '', [notText(value, 'stream')]);
}

function endless({ dropped }: Line): Issue {
  return issue(
    'sentence-line-endless',
    { limit: MOST_LINE_CHARACTERS },
    { at: [0], received: String(dropped), clause: 'IEC 61162-1, sentence structure' },
  );
}
