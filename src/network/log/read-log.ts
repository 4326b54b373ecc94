import type { Issue } from '../../result/index.ts';
import { quote, safely } from '../../result/internal.ts';
import { createNumberedReader, type NetworkReaderOptions, type NetworkReading } from '../reader/reader.ts';
import { issue } from '../texts.ts';
import { readFrameLine } from './candump.ts';
import { readCapture } from './pcap.ts';

const CLAUSE = 'common practice: text logs of can-utils, capture files of link type 227';
const MOST_TEXT = 120;

/**
 * Reads a log of the network: text in the forms that the general CAN tools of Linux write, or a capture file of link
 * type 227.
 *
 * @param log - text, or bytes of a text or of a capture file
 * @param options - own identity, and an instant for lines without one
 * @returns what its messages say, in order; a line that is not a frame gives a `damaged` reading
 * @throws TypeError when the own identity is not text, RangeError when it is not nine digits or the instant is not finite
 *
 * @see {@link createNetworkReader}
 *
 * @example
 * ```ts
 * import { readNetworkLog } from 'seahail/network';
 *
 * const [reading] = readNetworkLog('(1780323000.000000) can0 09F80123#004B942188F71FFC');
 * if (reading?.kind === 'own-position') console.log(reading.fix.position); // { latitude: 56.3366656, longitude: -6.501388 }
 * ```
 */
export function readNetworkLog(
  log: string | Uint8Array,
  options: NetworkReaderOptions = {},
): NetworkReading[] {
  const reader = createNumberedReader(options);
  const readings: NetworkReading[] = [];
  const spoilt = (line: number, text: string, issue: Issue): void => {
    readings.push({
      kind: 'damaged',
      line,
      offset: 0,
      at: options?.now ?? null,
      notices: [],
      sources: [],
      text: text.slice(0, MOST_TEXT),
      dropped: 0,
      issues: [issue],
    });
  };
  let line = 0;
  if (typeof log !== 'string' && !isBytes(log)) {
    spoilt(0, '', issue('network-log-not-text', {}, { received: typeof log, clause: CLAUSE }));
    return readings;
  }
  const capture = typeof log === 'string' ? null : readCapture(log);
  if (capture === null) {
    for (const text of linesOf(typeof log === 'string' ? log : latinText(log))) {
      line++;
      const frame: ReturnType<typeof readFrameLine> = readFrameLine(text);
      if (frame === 'unreadable') {
        spoilt(line, text, issue('network-log-line', {}, { received: quote(text), clause: CLAUSE }));
      } else if (typeof frame !== 'string')
        for (const reading of reader.push(frame, line)) readings.push(reading);
    }
  } else {
    for (const frame of capture.frames) {
      line++;
      if (frame !== null) readings.push(...reader.push(frame, line));
    }
    if (capture.fault !== null) {
      const code = capture.fault === 'cut-off' ? 'network-log-cut-off' : 'network-log-link-type';
      spoilt(line + 1, '', issue(code, {}, { clause: CLAUSE }));
    }
  }
  readings.push(...reader.flush(line));
  return readings;
}

function isBytes(given: unknown): given is Uint8Array {
  return safely(
    () => given instanceof Uint8Array,
    () => false,
  );
}

/** The beginning is enough, and a first line may be cut off. */
const LOOKED_AT = 4096;

/**
 * Whether a log is one of the network, by its beginning: a capture file, or text with a line that is a frame. What
 * sentences look like is never a frame.
 *
 * @param log - text or bytes; the first 4096 are enough
 * @returns whether {@link readNetworkLog} reads it; `false` for a capture file of another link type and for anything else
 *
 * @example
 * ```ts
 * import { isNetworkLog } from 'seahail/network';
 *
 * console.log(isNetworkLog('(1780323000.000000) can0 09F80123#004B942188F71FFC')); // true
 * console.log(isNetworkLog('$GPGLL,5620.1999,N,00630.0833,W,141000,A,A*4F')); // false
 * ```
 */
export function isNetworkLog(log: string | Uint8Array): boolean {
  if (typeof log !== 'string' && !(log instanceof Uint8Array)) return false;
  const beginning = log.slice(0, LOOKED_AT);
  if (typeof beginning !== 'string') {
    const capture = readCapture(beginning);
    if (capture !== null) return capture.fault !== 'link-type';
  }
  for (const line of linesOf(typeof beginning === 'string' ? beginning : latinText(beginning))) {
    if (typeof readFrameLine(line) !== 'string') return true;
  }
  return false;
}

/** The lines of a text; they end with CR LF, LF or CR. */
function linesOf(text: string): readonly string[] {
  const lines = text.split(/\r\n?|\n/);
  if (lines.at(-1) === '') lines.pop();
  return lines;
}

/** Frames are written in ASCII: what is not becomes a character that no frame has. */
function latinText(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += 4096)
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 4096)));
  return parts.join('');
}
