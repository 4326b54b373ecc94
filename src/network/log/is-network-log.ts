import { readFrameLine } from './candump.ts';
import { latinText, linesOf } from './lines.ts';
import { readCapture } from './pcap.ts';

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
