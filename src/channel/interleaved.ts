import { failure, type Notice, quote, type Result, success } from '../result/index.ts';
import { inAppendix18, isSingleFrequency, LEG_DISTANCE_KHZ, lowerLegKHz } from './appendix-18.ts';
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
 * @returns the channel, always with a notice that the numbering is not confirmed
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
      message: `channel ${typeof input === 'string' ? quote(input) : `of type ${typeof input}`} is no 12.5 kHz channel: 2nn, 12nn or 22nn wanted`,
      at: [],
      expected: "'2nn', '12nn' or '22nn' with nn from 01 to 28 or 60 to 87",
      clause: 'ITU-R M.1084 Annex 4',
    });
  }
  const leg = prefix === '1' ? 'ship' : prefix === '2' ? 'coast' : 'as-listed';
  const lower = lowerLegKHz(number) + 12.5;
  const upper = lower + LEG_DISTANCE_KHZ;
  // deviation: D-channel-5
  const text = written.replace(/^0/, '');
  const oneFrequency = leg === 'as-listed' && isSingleFrequency(number);
  return success(
    {
      kind: 'interleaved-channel',
      text,
      above: String(number).padStart(2, '0'),
      leg,
      shipKHz: (leg === 'coast' ? upper : lower).toFixed(1),
      coastKHz: (leg === 'ship' || oneFrequency ? lower : upper).toFixed(1),
      certainty: leg === 'as-listed' ? 'medium' : 'low',
    },
    notices(text, number, leg),
  );
}

/** RR Appendix 18 note e): the channels that 12.5 kHz working must leave in peace. */
const PROTECTED = [6, 13, 15, 16, 17, 70];

function notices(text: string, number: number, leg: InterleavedChannel['leg']): Notice[] {
  const unsure: Notice = {
    code: 'channel-interleaved-unsure',
    message: `channel ${text} is read by a numbering of 12.5 kHz channels that is not confirmed`,
    at: [],
    clause: 'ITU-R M.1084 Annex 4, from memory',
  };
  // The channels to protect lie in the lower block: an upper leg alone is beside none of them.
  if (leg === 'coast') return [unsure];
  const neighbours = [number, number < 60 ? number + 60 : number - 59];
  const touched = neighbours.find((neighbour) => PROTECTED.includes(neighbour));
  if (touched === undefined) return [unsure];
  return [
    unsure,
    {
      code: 'channel-interleaved-protected',
      message: `channel ${text} lies beside channel ${String(touched).padStart(2, '0')}, which 12.5 kHz working must leave in peace`,
      at: [],
      clause: 'RR Appendix 18 note e)',
    },
  ];
}
