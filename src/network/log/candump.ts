import { want } from '../../result/internal.ts';
import { hexOf } from '../field/text.ts';
import type { NetworkFrame } from '../transport/frame.ts';

const MOST_LINE = 300;
/** `(1502984866.421964) can0 09F112CC#FF725AFF7FFF7FFD`, with or without its instant, anything after it. */
const COMPACT =
  /^(?:\((\d{1,10}(?:\.\d{1,9})?)\)\s+)?\S{1,32}\s+([0-9A-Fa-f]{3,8})#(#?)([0-9A-Fa-f.]*|R\d*)(?:\s|$)/;
/** `can0  09F8027F   [8]  00 FC 06 00`, with or without an instant before it and the direction. */
const SCREEN =
  /^(?:\(?\s*(\d{1,10}(?:\.\d{1,9})?)\)?\s+)?\S{1,32}\s+(?:[TR]X\s+\S\s+\S\s+)?([0-9A-Fa-f]{3,8})\s+\[(\d{1,2})\]\s*((?:[0-9A-Fa-f]{2}\s*)*|remote request)$/;
/** `<0x18eeff01> [8] 05 a0 be 1c`. */
const ANGLED = /^<0x([0-9A-Fa-f]{3,8})>\s+\[(\d)\]\s*((?:[0-9A-Fa-f]{2}\s*)*)$/;

/**
 * Reads one line of a text log in the forms that the general CAN tools of Linux write and print.
 *
 * Frames with an 11-bit identifier, remote frames, error frames and CAN FD frames are `'other-frame'`: the
 * network has none of them. Blank lines and comments are `'empty'`.
 *
 * Source: manual pages of can-utils (candump, canplayer), Debian 2020.11.
 */
export function readFrameLine(line: string): NetworkFrame | 'empty' | 'other-frame' | 'unreadable' {
  if (typeof line !== 'string' || line.length > MOST_LINE) return 'unreadable';
  const text = line.trim();
  if (text === '') return 'empty';
  const compact = COMPACT.exec(text);
  if (compact !== null) {
    const [, seconds, id = '', fd, data = ''] = compact;
    return fd === '#' || data.startsWith('R')
      ? 'other-frame'
      : frameOf(id, data.includes('.') ? data.replaceAll('.', '') : data, seconds);
  }
  const screen = SCREEN.exec(text);
  if (screen !== null) {
    const [, seconds, id = '', count = '', data = ''] = screen;
    return data === 'remote request' ? 'other-frame' : counted(id, count, data, seconds);
  }
  const angled = ANGLED.exec(text);
  if (angled !== null)
    return counted(angled[1] as string, angled[2] as string, angled[3] as string, undefined);
  return /^[#;/]/.test(text) ? 'empty' : 'unreadable';
}

function counted(
  id: string,
  count: string,
  data: string,
  seconds: string | undefined,
): ReturnType<typeof readFrameLine> {
  const hex = data.replace(/\s+/g, '');
  return hex.length === Number(count) * 2 ? frameOf(id, hex, seconds) : 'unreadable';
}

function frameOf(id: string, hex: string, seconds: string | undefined): ReturnType<typeof readFrameLine> {
  // Three digits are an 11-bit identifier, eight a 29-bit one; bits above are flags for errors.
  if (id.length === 3) return 'other-frame';
  const identifier = Number.parseInt(id, 16);
  if (id.length !== 8 || hex.length % 2 !== 0 || hex.length > 16) return 'unreadable';
  if (identifier > 0x1fffffff) return 'other-frame';
  const data = new Uint8Array(hex.length / 2);
  for (let index = 0; index < data.length; index++)
    data[index] = digit(hex.charCodeAt(2 * index)) * 16 + digit(hex.charCodeAt(2 * index + 1));
  return seconds === undefined ? { id: identifier, data } : { id: identifier, data, at: instantOf(seconds) };
}

/** The value of a hexadecimal digit, upper or lower case. */
function digit(code: number): number {
  return code < 58 ? code - 48 : (code & 31) + 9;
}

/** Seconds with decimals as milliseconds: by whole microseconds, or the last one is rounded away. */
function instantOf(text: string): number {
  const point = text.indexOf('.');
  if (point < 0 || text.length - point <= 7) return Math.round(Number(text) * 1e6) / 1e3;
  return Number(text.slice(0, point)) * 1000 + Number(`0${text.slice(point)}`) * 1000;
}

/**
 * Writes a frame as a line of a text log, without a line end.
 *
 * @param frame - the frame; without an instant the line has zero
 * @param port - name of the port that the line gives
 * @returns e.g. `(1502984866.421964) can0 09F112CC#FF725AFF7FFF7FFD`
 *
 * @example
 * ```ts
 * import { formatFrameLine } from 'seahail/network';
 *
 * console.log(formatFrameLine({ id: 0x09f80123, data: Uint8Array.of(1, 2), at: 1500 })); // (0000000001.500000) can0 09F80123#0102
 * ```
 */
export function formatFrameLine(frame: NetworkFrame, port: string = 'can0'): string {
  want('formatFrameLine', 'a frame', frame, 'id');
  const { id, data, at = 0 } = frame;
  const identifier = id.toString(16).padStart(8, '0');
  return `(${(at / 1000).toFixed(6).padStart(17, '0')}) ${port} ${`${identifier}#${hexOf(data)}`.toUpperCase()}`;
}
