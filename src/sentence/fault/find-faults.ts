import type { Coordinates } from '../../position/index.ts';
import type { CodedText } from '../../result/index.ts';
import { requireIdentity, requireInstant } from '../arguments.ts';
import { requireCoordinates } from '../field/coordinate-fields.ts';
import { createDecoder, pieceOf } from '../frame/encoding.ts';
import { createSentenceReader } from '../reader/reader.ts';
import { type ByteCount, countBytes, isGarbage } from './byte-count.ts';
import { createCollector, type FaultReport, type Finding } from './fault.ts';
import { createSight, type Tally } from './sight.ts';
import { said } from './texts.ts';

const CHUNK = 4096;

const OUTSIDE = ['accepted', 'network', 'tenth-digit', 'other-vessel'] as const;

/**
 * Finds why a reply never appeared on the display, in what came down the wire: a log, a capture, raw bytes.
 *
 * The findings stand in the order in which a technician would look: bytes, lines, checksums, calls, position,
 * expansion, identity, type of call, plausibility. Each says what was seen and where, why it matters, what to
 * do and how certain it is, and the sentence as it should be where that is not a guess. A clean stream says so
 * and names what cannot be seen from it.
 *
 * @param input - text or bytes, as received
 * @param options - own identity and position, time of receipt, and what was expected
 * @returns the findings; never throws on any input: what is neither text nor bytes holds no sentence
 * @throws TypeError when an identity in the options is no text
 * @throws RangeError when it is not nine digits, or the position or the instant is none
 *
 * @see {@link createSentenceRepairer}
 * @see {@link FAULTS}
 *
 * @example
 * ```ts
 * import { findFaults } from 'seahail/sentence';
 *
 * const report = findFaults('$CVDSC,20,2329991420,08,21,26,1562000630,1404,,,B,*2B\r\n');
 * for (const { id, certainty } of report.findings) console.log(id, certainty);
 * // talker possible
 * // no-expansion certain
 * ```
 */
export function findFaults(
  input: string | Uint8Array,
  options: {
    /** Own identity, nine digits. */
    readonly own?: string | undefined;
    /** Own position, used until the stream gives one. */
    readonly position?: Coordinates | undefined;
    /** When the stream was received, epoch milliseconds, if its own lines do not say. */
    readonly now?: number | undefined;
    /** That a position was asked for and should be in the stream: `{}`, or the station it was asked of. */
    readonly expect?:
      | {
          /** Nine digits. */
          readonly station?: string | undefined;
        }
      | undefined;
  } = {},
): FaultReport {
  const { own, position, now, expect } = options ?? {};
  if (own !== undefined) requireIdentity('own', own);
  if (expect?.station !== undefined) requireIdentity('station', expect.station);
  if (position !== undefined) requireCoordinates(position);
  if (now !== undefined) requireInstant('now', now);
  const bytes: ByteCount = { count: 0, visible: false, foreign: 0, smeared: 0, lines: 0, last: null };
  const sight = createSight(
    { own: own ?? null, expects: expect !== undefined, expected: expect?.station ?? null },
    position ?? null,
    now ?? null,
  );
  const reader = createSentenceReader({ unchecked: true });
  const stream = pieceOf(input);
  const isStream = stream !== null;
  const take = (piece: string): void => {
    countBytes(bytes, piece);
    for (const reading of reader.push(piece)) sight.look(reading);
  };
  if (stream === null) for (const reading of reader.push(input)) sight.look(reading);
  else if (typeof stream === 'string')
    for (let from = 0; from < stream.length; from += CHUNK) take(stream.slice(from, from + CHUNK));
  else {
    const decoder = createDecoder();
    decoder.decode(stream, take);
    decoder.flush(take);
  }
  for (const reading of reader.flush()) sight.look(reading);
  const { tally, collector } = sight.end();

  const lifeless = isStream && (!bytes.visible || isGarbage(bytes, tally.sentences));
  const findings = lifeless ? lifelessFindings(bytes) : collector.findings();
  return {
    kind: 'fault-report',
    findings,
    clean: findings.length === 0,
    summary: summaryOf(findings, tally),
    characters: bytes.count,
    lines: bytes.lines,
    sentences: tally.sentences,
    calls: tally.calls,
    outside: OUTSIDE.map((check) => said('sentence-outside', { check })),
  };
}

function lifelessFindings(bytes: ByteCount): Finding[] {
  const collector = createCollector();
  const whole = { line: null, field: null };
  if (!bytes.visible) {
    collector.add('no-data', 'certain', {
      ...whole,
      seen: said(bytes.count === 0 ? 'sentence-seen-no-byte' : 'sentence-seen-blank', {}),
    });
  } else {
    const { count, foreign, smeared } = bytes;
    const code = smeared * 2 > foreign ? 'sentence-seen-slow' : 'sentence-seen-foreign';
    collector.add('wrong-speed', 'likely', { ...whole, seen: said(code, { foreign, count }) });
  }
  return collector.findings();
}

function summaryOf(findings: readonly Finding[], { sentences, calls }: Tally): CodedText {
  const [first] = findings;
  return first === undefined
    ? said('sentence-report-clean', { sentences, calls })
    : said('sentence-report-faults', { faults: findings.length, sentences, calls, first: first.id });
}
