import { failure, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import type { Channel } from './channel.ts';
import { plainText } from './plain-text.ts';

/**
 * A frequency in megahertz as tables print it.
 *
 * @param kHz - whole kilohertz
 * @returns megahertz with three decimals
 * @throws RangeError when `kHz` is not a whole number from 0 to 999999
 *
 * @example
 * ```ts
 * import { formatMegahertz } from 'seahail/channel';
 *
 * console.log(formatMegahertz(156800)); // 156.800
 * ```
 */
export function formatMegahertz(kHz: number): string {
  if (!isWholeKHz(kHz))
    throw new RangeError(`formatMegahertz: expected whole kilohertz from 0 to 999999, got ${kHz}`);
  return `${Math.floor(kHz / 1000)}.${String(kHz % 1000).padStart(3, '0')}`;
}

/** Frequencies of a channel in words, for messages. */
export function frequenciesInWords(channel: Channel): string {
  const { shipKHz, coastKHz } = channel;
  if (shipKHz === null) return `${formatMegahertz(coastKHz ?? 0)} MHz from the coast only`;
  if (coastKHz === null || coastKHz === shipKHz) return `${formatMegahertz(shipKHz)} MHz`;
  return `ships on ${formatMegahertz(shipKHz)} and coast stations on ${formatMegahertz(coastKHz)} MHz`;
}

/**
 * Whole hertz from what a person or program writes: a number is kilohertz; text with up to three digits
 * before the decimals is megahertz, with more digits kilohertz, unless it names its unit.
 */
export function readHertz(input: unknown): Result<number> {
  if (typeof input === 'number') {
    if (isWholeKHz(input)) return success(input * 1000);
    return failure({
      code: 'channel-frequency-number',
      message: `Frequency ${input} is not whole kilohertz: expected 156800 or the text '156.8'`,
      at: [],
      expected: 'whole kilohertz, or text in megahertz',
      received: String(input),
      clause: 'common practice',
    });
  }
  const text = typeof input === 'string' ? plainText(input) : undefined;
  const [, whole, decimals = '', unit] = /^(\d{1,6})(?:[.,](\d{1,6}))? ?(MHZ|KHZ)?$/.exec(text ?? '') ?? [];
  const places = (unit ?? (whole !== undefined && whole.length <= 3 ? 'MHZ' : 'KHZ')) === 'MHZ' ? 6 : 3;
  if (whole === undefined || /[1-9]/.test(decimals.slice(places))) {
    return failure({
      code: 'channel-frequency-malformed',
      message: `Frequency ${typeof input === 'string' ? quote(input) : `of type ${typeof input}`} is not readable: expected '156.8' or '156800'`,
      at: [],
      expected: "megahertz as in '156.800', or kilohertz as in '156800'",
      clause: 'common practice',
    });
  }
  return success(Number(whole + decimals.slice(0, places).padEnd(places, '0')));
}

function isWholeKHz(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= 999_999;
}
