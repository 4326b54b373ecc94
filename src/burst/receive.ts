import { decodeFields, type Symbols } from '../call/index.ts';
import type { ExpansionSet } from '../call/internal.ts';
import type { Notice } from '../result/index.ts';
import { isComposition } from './call-shape.ts';
import { type CharacterTables, combineCopies, LONGEST_STREAM, rowOf, withFloor } from './character-table.ts';
import { type CopyReport, compareCopies, mostLikely } from './copies.ts';
import { errorCheckOf } from './error-check.ts';
import { readExpansion } from './expansion-reading.ts';
import { decodeCharacters } from './information.ts';
import { CALL_ODDS, type Judgement, judge, type Rescore, type Tempering } from './judgement.ts';
import { heardOfStream, lostShares, receivedShares } from './loss.ts';
import { receptionNotices } from './notices.ts';
import type {
  CharacterQuality,
  CharacterSource,
  ErrorCheck,
  Reception,
  ReceptionQuality,
  Verdict,
} from './reception.ts';
import { streamLength, streamOf } from './sequence.ts';
import { heardWithoutExpansion } from './trailing.ts';
import { holds, weighWholeCall } from './whole-call.ts';

const CLEAN = 0.9999;
const REPAIRED = 0.99;
/** In a doubtful call, a character less sure than this is left open. */
const LEGIBLE = 0.9;
/** A burst of which fewer characters than this can be read is no call to report. */
const LEAST_READ = 3;
/** Natural log of the least odds for a call worth a closer look. */
const LEAST = -5;
// deviation: D-burst-7 (the rule is remembered).
/** Without an address, a wrong format specifier would raise an alarm: it must be received twice (M.493). */
const WITHOUT_ADDRESS: readonly number[] = [112, 116];
const SYMBOLS = 128;

/** Where the words of a burst come from. */
export interface Words {
  /** `metrics[128 * position + symbol]`: natural log of the likelihood given the symbol, against ten random bits. */
  readonly metrics: Float64Array;
  /** Natural log of what was heard of the dot pattern, against random bits. */
  readonly lead: number;
  /** How far differences of what was heard can be believed. */
  readonly tempering: Tempering;
  readonly polarity: 'normal' | 'inverted';
  /** Index of the first phasing bit in what the caller gave. */
  readonly start: number;
  /** Index after the last bit that the caller passed. */
  readonly given: number;
  /** How many shapes of call are looked into; as many as are worth it by default. */
  readonly most?: number | undefined;
}

/** A reception with its notices, and how sure it is that there is a call at all. */
export interface Received {
  readonly reception: Reception;
  readonly notices: readonly Notice[];
  readonly callProbability: number;
  /** Natural log of the odds for a call against none. */
  readonly evidence: number;
  /** Every symbol of the most likely call, those left open in the reception included. */
  readonly stream: readonly number[];
  /** For each symbol of it, how likely it is that it was received. */
  readonly received: Float64Array;
  /** What it was read from. */
  readonly words: Words;
}

/**
 * Read the most likely call from the words of a burst whose phasing begins at the first of them.
 *
 * @param heard - the words softened by the chance that they were lost
 * @returns `null` when there is none
 */
export function receive(
  words: Words,
  rescore?: Rescore,
  heard: Float64Array = withLossFloor(words.metrics),
): Received | null {
  const tables = combineCopies(heard);
  const whole = weighWholeCall(tables, LEAST - CALL_ODDS - words.lead, words.most);
  if (whole === null) return null;
  const ofWords: Rescore = (streams) => streams.map((stream) => heardOfStream(words.metrics, stream));
  const alone = aloneOf(words.metrics);
  const isAsReceived = (reading: readonly number[], other: readonly number[]): boolean =>
    compareCopies(tables, alone, reading).sources.every(
      (source, index) =>
        source === 'both-copies' || (source === 'one-copy' && reading[index] === other[index]),
    );
  const judgement = judge(whole, words.lead, words.tempering, rescore ?? ofWords, isAsReceived);
  const { characters } = judgement.reading;
  const end = characters.length - 2;
  const report = compareCopies(tables, alone, characters);
  const verdict = verdictOf(judgement, report, whole.changed);
  const errorCheck = errorCheckIn(characters, report);
  const qualities = characters.map((symbol, index): CharacterQuality => {
    const probability = judgement.characterProbabilities[index] as number;
    const source = report.sources[index] as CharacterSource;
    // What was expected is no reading: a character of which nothing came in stays unread.
    const isLegible = probability >= LEGIBLE || (errorCheck.kind === 'wrong' && source === 'both-copies');
    if (verdict === 'doubtful' && (!isLegible || !wasHeard(tables, index, end)))
      return { symbol: null, source: 'unread', probability };
    return { symbol, source, probability };
  });
  const read: Symbols = qualities.slice(0, -1).map(({ symbol }) => symbol);
  const expansion = readExpansion(tables, end, heardWithoutExpansion(tables, end));
  const sets: readonly ExpansionSet[] = expansion.kind === 'read' ? expansion.sets : [];
  const { call, notices } = decodeFields({ ...decodeCharacters(read), expansion: sets });
  const stream = streamOf(characters.slice(0, -1), [], characters.at(-1));
  const used = expansion.kind === 'read' ? expansion.end : streamLength(end);
  const quality: ReceptionQuality = {
    verdict,
    probability: judgement.probability,
    margin: judgement.margin,
    runnerUp: judgement.runnerUp === null ? null : informationOf(judgement.runnerUp.characters.slice(0, -1)),
    errorCheck,
    characters: qualities,
    words: {
      sent: stream.length,
      differing: stream.filter((symbol, position) => alone[position] !== symbol).length,
    },
    polarity: words.polarity,
    calls: 1,
    expansion: expansion.kind,
    start: words.start,
    end: Math.min(words.start + 10 * used, words.given),
  };
  const cut = words.start + 10 * streamLength(end) > words.given;
  return {
    reception: { call, information: informationOf(read), quality },
    notices: [
      ...receptionNotices(quality, { cut, formatCopies: report.formatCopies, expansion }),
      ...notices,
    ],
    callProbability:
      read.filter((symbol) => symbol !== null).length < LEAST_READ ? 0 : judgement.callProbability,
    evidence: judgement.evidence,
    stream,
    received: receivedShares(words.metrics, stream),
    words,
  };
}

/** What each word says, softened by the chance that reception was lost there. */
export function withLossFloor(metrics: Float64Array): Float64Array {
  return withFloor(metrics, lostShares(metrics));
}

function verdictOf({ reading, probability }: Judgement, report: CopyReport, changed: number): Verdict {
  const { characters } = reading;
  if (!holds(characters)) return 'doubtful';
  const once = WITHOUT_ADDRESS.includes(characters[0] as number) && report.formatCopies < 2;
  if (probability >= CLEAN && report.asSent && isComposition(characters.slice(0, -1)) && !once)
    return 'clean';
  // How often two sets send in step is little known: were it ten times as often as thought, a repaired call is still one.
  return probability >= REPAIRED && changed <= (1 - REPAIRED) / 10 ? 'repaired' : 'doubtful';
}

function errorCheckIn(characters: readonly number[], report: CopyReport): ErrorCheck {
  if (!report.checkHeard) return { kind: 'not-read' };
  if (!holds(characters)) {
    const received = characters.at(-1) as number;
    return { kind: 'wrong', received, computed: errorCheckOf(characters.slice(0, -1)) };
  }
  return { kind: report.asSent ? 'as-sent' : 'used-for-repair' };
}

/** Whether anything at all was heard of a character: without, every symbol is as likely as any other. */
function wasHeard(tables: CharacterTables, index: number, end: number): boolean {
  const row = rowOf(index === end ? tables.end : tables.character, index, null);
  return row.some((value) => value !== row[0]);
}

/** The format specifier is sent twice. */
function informationOf<Symbol extends number | null>(characters: readonly Symbol[]): Symbol[] {
  return [...characters.slice(0, 1), ...characters];
}

function aloneOf(metrics: Float64Array): Int16Array {
  const alone = new Int16Array(LONGEST_STREAM).fill(-1);
  const count = Math.min(metrics.length / SYMBOLS, LONGEST_STREAM);
  for (let position = 0; position < count; position++)
    alone[position] = mostLikely(metrics, SYMBOLS * position);
  return alone;
}
