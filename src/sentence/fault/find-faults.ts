import type { Coordinates } from '../../position/index.ts';
import { quote } from '../../result/internal.ts';
import { requireIdentityText, requireInstant } from '../arguments.ts';
import { requireCoordinates } from '../field/coordinate-fields.ts';
import { createDecoder } from '../frame/encoding.ts';
import { pieceOf } from '../frame/piece.ts';
import { createSentenceReader } from '../reader/reader.ts';
import { type ByteCount, countBytes, isGarbage } from './byte-count.ts';
import { createCollector } from './collector.ts';
import { counted } from './counted.ts';
import type { FaultReport, Finding } from './fault.ts';
import { createSight, type Tally } from './sight.ts';

const CHUNK = 4096;

const OUTSIDE: readonly string[] = [
  'which sentences the display accepts: see its manual; some displays draw distress alerts and no other calls, and WPL or TLL may work instead',
  'whether the radio sends calls on another network of the boat and not on this line',
  'what the display does with the tenth digit of an identity: a padding zero on the chart is cosmetic, but lists then do not match',
  'whether the other vessel received the request, and whether its set is set to answer, to ask or to refuse',
];

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
  checkOptions({ own, position, now, expect });
  const bytes: ByteCount = { count: 0, visible: 0, foreign: 0, smeared: 0, lines: 0, last: null };
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

  const lifeless = isStream && (bytes.visible === 0 || isGarbage(bytes, tally.sentences));
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
    outside: OUTSIDE,
  };
}

function checkOptions({ own, position, now, expect }: NonNullable<Parameters<typeof findFaults>[1]>): void {
  for (const [name, identity] of [
    ['own', own],
    ['station', expect?.station],
  ] as const) {
    if (identity === undefined) continue;
    requireIdentityText(name, identity);
    if (!/^\d{9}$/.test(identity))
      throw new RangeError(`${name}: expected nine digits, got ${quote(identity)}`);
  }
  if (position !== undefined) requireCoordinates(position);
  if (now !== undefined) requireInstant('now', now);
}

function lifelessFindings(bytes: ByteCount): Finding[] {
  const collector = createCollector();
  const whole = { line: null, field: null };
  if (bytes.visible === 0) {
    collector.add('no-data', 'certain', {
      ...whole,
      seen: bytes.count === 0 ? 'no byte' : 'spaces and line ends only',
    });
  } else {
    const hint =
      bytes.smeared * 2 > bytes.foreign ? ', most of them as a slow line looks to a fast port' : '';
    collector.add('wrong-speed', 'likely', {
      ...whole,
      seen: `${bytes.foreign} of ${bytes.count} bytes cannot be in a sentence${hint}`,
    });
  }
  return collector.findings();
}

function summaryOf(findings: readonly Finding[], { sentences, calls }: Tally): string {
  const among = calls === 0 ? 'without a call' : `with ${counted(calls, 'call')}`;
  const looked = sentences === 0 ? 'and no sentence' : `in ${counted(sentences, 'sentence')} ${among}`;
  if (findings.length === 0) return `No fault found ${looked}: check the display and its settings`;
  return `${counted(findings.length, 'fault')} found ${looked}: start with ${findings[0]?.id ?? ''}`;
}
