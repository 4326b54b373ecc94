import { failure, type Notice, quote, type Result, success } from '../result/index.ts';
import { hasLegs, inAppendix18, isSingleFrequency, LEG_DISTANCE_KHZ, lowerLegKHz } from './appendix-18.ts';
import { noLegs } from './designator.ts';
import { plainText } from './plain-text.ts';

/**
 * A 12.5 kHz channel between two ordinary ones. Kept apart from every plan, because its number is read by
 * a rule that is not confirmed.
 */
export interface InterleavedChannel {
  readonly kind: 'interleaved-channel';
  /** `'260'`, or `'1260'` and `'2260'` for one leg alone. */
  readonly text: string;
  /** The ordinary channel just below in frequency. */
  readonly above: string;
  readonly leg: 'as-listed' | 'ship' | 'coast';
  /** Where ships transmit, kHz with one decimal, e.g. `'156037.5'`. */
  readonly shipKHz: string;
  /** Where coast stations transmit, kHz with one decimal. */
  readonly coastKHz: string;
  /** How sure the reading of the number is; the frequency follows from it exactly. */
  readonly certainty: 'medium' | 'low';
}

/**
 * Reads the number of a 12.5 kHz interleaved channel: `'2nn'`, or `'12nn'` and `'22nn'` for one leg alone.
 *
 * @param input - text; anything else gives an issue
 * @returns the channel, always with a notice that the numbering is not confirmed; an issue also for one leg of a
 * channel that has one frequency
 *
 * Source: ITU-R M.1084 Annex 4 and RR Appendix 18 note e), from memory: medium to low confidence.
 *
 * @example
 * ```ts
 * import { parseInterleavedChannel } from 'seahail/channel';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(parseInterleavedChannel('260'));
 * console.log(channel.shipKHz, channel.coastKHz, channel.certainty); // 156037.5 160637.5 medium
 * ```
 */
export function parseInterleavedChannel(input: unknown): Result<InterleavedChannel> {
  const body = typeof input === 'string' ? plainText(input) : undefined;
  const [, written = '', prefix, digits] = /^(?:CH(?:ANNEL)? ?)?(([012]?)2(\d\d))$/.exec(body ?? '') ?? [];
  const number = Number(digits);
  // Above 88 the block ends: there is no neighbour to lie between.
  if (digits === undefined || !inAppendix18(number) || number === 88) {
    return failure({
      code: 'channel-interleaved-malformed',
      message: `Channel ${typeof input === 'string' ? quote(input) : `of type ${typeof input}`} is no 12.5 kHz channel: 2nn, 12nn or 22nn wanted`,
      at: [],
      expected: "'2nn', '12nn' or '22nn' with nn from 01 to 28 or 60 to 87",
      clause: 'ITU-R M.1084 Annex 4',
    });
  }
  const leg = prefix === '1' ? 'ship' : prefix === '2' ? 'coast' : 'as-listed';
  const text = written.replace(/^0/, '');
  const listed = text.slice(-3);
  if (leg !== 'as-listed' && !hasLegs(number)) return failure(noLegs(listed, leg, text));
  const lower = lowerLegKHz(number) + 12.5;
  const upper = lower + LEG_DISTANCE_KHZ;
  // deviation: D-channel-5
  const oneFrequency = leg === 'as-listed' && isSingleFrequency(number);
  const shipKHz = leg === 'coast' ? upper : lower;
  const coastKHz = leg === 'ship' || oneFrequency ? lower : upper;
  return success(
    {
      kind: 'interleaved-channel',
      text,
      above: listed.slice(1),
      leg,
      shipKHz: shipKHz.toFixed(1),
      coastKHz: coastKHz.toFixed(1),
      certainty: leg === 'as-listed' ? 'medium' : 'low',
    },
    notices(text, [shipKHz, coastKHz]),
  );
}

/** RR Appendix 18 note e), AIS from memory: the channels that 12.5 kHz working must leave in peace, by their kHz. */
const PROTECTED: readonly (readonly [name: string, kHz: number])[] = [
  ['06', 156_300],
  ['13', 156_650],
  ['15', 156_750],
  ['16', 156_800],
  ['17', 156_850],
  ['70', 156_525],
  ['AIS 1', 161_975],
  ['AIS 2', 162_025],
];

function notices(text: string, used: readonly number[]): Notice[] {
  const unsure: Notice = {
    code: 'channel-interleaved-unsure',
    message: `Channel ${text} is read by a numbering of 12.5 kHz channels that is not confirmed`,
    at: [],
    clause: 'ITU-R M.1084 Annex 4, from memory',
  };
  const [touched] = PROTECTED.find(([, kHz]) => used.some((own) => Math.abs(own - kHz) === 12.5)) ?? [];
  if (touched === undefined) return [unsure];
  return [
    unsure,
    {
      code: 'channel-interleaved-protected',
      message: `Channel ${text} lies beside channel ${touched}, which 12.5 kHz working must leave in peace`,
      at: [],
      clause: `RR Appendix 18 note e)${touched.startsWith('AIS') ? ', from memory' : ''}`,
    },
  ];
}
