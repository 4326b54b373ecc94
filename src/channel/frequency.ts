import { type CodedText, failure, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import type { Channel } from './channel.ts';
import { plainText } from './plain-text.ts';
import { issue, text } from './texts.ts';

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
export function frequenciesInWords({ shipKHz, coastKHz }: Channel): CodedText {
  const [ship, coast] = [formatMegahertz(shipKHz ?? 0), formatMegahertz(coastKHz ?? 0)];
  if (shipKHz === null) return text('channel-frequency-coast', { coast });
  if (coastKHz === null || coastKHz === shipKHz) return text('channel-frequency-one', { ship });
  return text('channel-frequency-two', { ship, coast });
}

/**
 * Whole hertz from what a person or program writes: a number is kilohertz; text with up to three digits
 * before the decimals is megahertz, with more digits kilohertz, unless it names its unit.
 */
export function readHertz(input: unknown): Result<number> {
  if (typeof input === 'number') {
    if (isWholeKHz(input)) return success(input * 1000);
    return failure(issue('channel-frequency-number', {}, { received: String(input), ...USUAL }));
  }
  if (typeof input !== 'string') {
    return failure(issue('channel-frequency-type', { type: typeof input }, USUAL));
  }
  const plain = plainText(input) ?? input;
  const [, whole, decimals = '', unit] = /^(\d{1,6})(?:[.,](\d{1,6}))? ?(MHZ|KHZ)?$/.exec(plain) ?? [];
  const isMegahertz = unit === undefined ? whole !== undefined && whole.length <= 3 : unit === 'MHZ';
  const places = isMegahertz ? 6 : 3;
  if (whole === undefined || /[1-9]/.test(decimals.slice(places))) {
    return failure(issue('channel-frequency-malformed', {}, { received: quote(input), ...USUAL }));
  }
  return success(Number(whole + decimals.slice(0, places).padEnd(places, '0')));
}

const USUAL = { clause: 'common practice' };

function isWholeKHz(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= 999_999;
}
