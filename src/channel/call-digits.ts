import { failure, type Notice, type Result, success } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import type { Channel, ChannelPlan } from './channel.ts';
import { type Designator, parseDesignator } from './designator.ts';
import { channelsNumbered, findChannel, isPlan, noPlan } from './find-channel.ts';
import { issue } from './texts.ts';

/**
 * The six digits by which a call names a VHF channel: 90 and four digits.
 *
 * Letters are never sent: 22A goes out as 1022. Whether a call may name the channel is another
 * question: {@link checkWorkingChannel}.
 *
 * @param channel - a plan's channel, or a designator
 * @returns six digits, e.g. `'901022'`
 * @throws RangeError for a channel no digits name: weather channels, 0, M, M2 and private numbers
 *
 * Source: ITU-R M.493-16, frequency and channel information, from memory.
 *
 * @see {@link decodeChannel}
 *
 * @example
 * ```ts
 * import { encodeChannel, findChannel } from 'seahail/channel';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(encodeChannel(valueOf(findChannel(unitedStatesPlan, '22A')))); // 901022
 * ```
 */
export function encodeChannel(channel: Channel | Designator): string {
  want('encodeChannel', 'a channel or a designator', channel, 'm1084');
  if (channel.m1084 === null) {
    const name = channel.kind === 'channel' ? channel.designator : channel.text;
    throw new RangeError(
      `encodeChannel: expected a channel with digits of ITU-R M.1084, got ${name}, which has none`,
    );
  }
  // ITU-R M.493-16 table A1-5, as publicly restated: 90 and the four digits of M.1084.
  return digitsNaming(channel.m1084);
}

/**
 * Reads one frequency or channel element of a call.
 *
 * A channel is given as received. Some sets send 900022 and mean 22A: with a plan that has only 22A the
 * answer is still 22, with no channel, and a notice that says what the plan has.
 *
 * @param digits - six digits, or eight when the first is 4; empty, or 126 three times, for an element left open
 * @param plan - the plan of the waters, to name the channel; without one the designator is used alone
 * @returns the element with its digits as received; an issue only for text that is no such element
 *
 * Source: ITU-R M.493-16, frequency and channel information; first digits 3, 4 and 8 with
 * medium to low confidence.
 *
 * @see {@link encodeChannel}
 *
 * @example
 * ```ts
 * import { decodeChannel } from 'seahail/channel';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 *
 * const read = decodeChannel('900022', unitedStatesPlan);
 * if (read.ok) console.log(read.value.kind, read.notices[0]?.suggestion); // vhf-channel 1022
 * ```
 */
export function decodeChannel(
  digits: string,
  plan?: ChannelPlan | undefined,
): Result<
  | {
      /** A VHF channel as a call names it. */
      readonly kind: 'vhf-channel';
      /** The digits as received. */
      readonly digits: string;
      /** The channel exactly as received: `'22'` stays `'22'` wherever the call was heard. */
      readonly designator: string;
      /** The plan's channel of that name; `null` without a plan, or when the plan has none. */
      readonly channel: Channel | null;
    }
  | {
      /** A frequency as a call names it. */
      readonly kind: 'frequency';
      readonly digits: string;
      /** Kilohertz, a decimal string: `'2182.0'` in steps of 100 Hz, `'2187.50'` in steps of 10 Hz. */
      readonly kHz: string;
    }
  | {
      /** The number of an MF or HF working channel as a call names it. */
      readonly kind: 'hf-channel';
      readonly digits: string;
      /** Five digits. */
      readonly number: string;
    }
  | {
      /** A channel of the automatic VHF telephone service. */
      readonly kind: 'automatic-service';
      readonly digits: string;
    }
  | {
      /** The call leaves the element open. */
      readonly kind: 'no-information';
      readonly digits: '';
    }
  | {
      /** Digits whose first has no known meaning. */
      readonly kind: 'unknown';
      readonly digits: string;
    }
> {
  if (digits === '' || digits === '126126126') return success({ kind: 'no-information', digits: '' });
  if (typeof digits !== 'string' || !/^(?:4\d{7}|\d{6})$/.test(digits)) {
    const received = typeof digits === 'string' ? quote(digits) : typeof digits;
    return failure(issue('channel-digits-malformed', {}, { received, clause: M493 }));
  }
  const first = digits.charAt(0);
  if (first === '9') return readChannel(digits, plan);
  // deviation: D-channel-7
  if (first === '3') return success({ kind: 'hf-channel', digits, number: digits.slice(1) });
  if (first === '8') return success({ kind: 'automatic-service', digits });
  if (/[012]/.test(first)) return success({ kind: 'frequency', digits, kHz: decimal(digits, 1) });
  if (digits.length === 8) return success({ kind: 'frequency', digits, kHz: decimal(digits.slice(1), 2) });
  return success({ kind: 'unknown', digits }, [
    issue('channel-digits-unknown', { digit: first }, { received: digits, clause: M493 }),
  ]);
}

const M493 = 'ITU-R M.493-16, frequency and channel information, unverified';

/** `'021820'` with one decimal is `'2182.0'`. */
function decimal(digits: string, places: number): string {
  return `${Number(digits.slice(0, -places))}.${digits.slice(-places)}`;
}

/**
 * The channel that the six digits of an element name, in digits of ITU-R M.1084: `'72'` of 900072, `'1022'` of 901022,
 * and of 910022 too, the form that older sets are reported to send; `null` when they name no VHF channel. 900000 gives
 * `'0000'`, which no plan has: channel 0 of the United Kingdom has no digits in a call.
 */
export function channelNamedBy(digits: string): string | null {
  // deviation: D-channel-7
  const older = /^9([12])00(\d\d)$/.exec(digits);
  if (older !== null) return `${older[1]}0${older[2]}`;
  if (!/^90\d{4}$/.test(digits)) return null;
  return digits === '900000' ? '0000' : String(Number(digits.slice(2))).padStart(2, '0');
}

/** The six digits of an element that name a channel, by its digits of ITU-R M.1084. */
export function digitsNaming(m1084: string): string {
  return `90${m1084.padStart(4, '0')}`;
}

function readChannel(digits: string, plan: ChannelPlan | undefined): ReturnType<typeof decodeChannel> {
  const name = channelNamedBy(digits);
  const second = digits.charAt(1);
  const by = { received: digits, clause: M493 };
  if (name === null) {
    return success({ kind: 'unknown', digits }, [issue('channel-digits-second', { digit: second }, by)]);
  }
  const notices: Notice[] = second === '0' ? [] : [issue('channel-digits-old-form', { channel: name }, by)];
  const read = parseDesignator(name.padStart(4, '0'));
  const designator = read.ok ? read.value.text : name;
  const element = { kind: 'vhf-channel', digits, designator, channel: null } as const;
  if (!read.ok) return success(element, [...notices, ...read.issues]);
  if (plan === undefined) return success(element, [...notices, ...read.notices]);
  if (!isPlan(plan)) return success(element, [...notices, ...read.notices, noPlan(plan)]);
  const found = findChannel(plan, read.value);
  if (found.ok) return success({ ...element, channel: found.value }, [...notices, ...read.notices]);
  return success(element, [...notices, singleLegOnly(plan, designator) ?? found.issues[0]]);
}

/** The leg that a plan has where the call names both; a name of four digits is of one leg already, and finds none. */
function singleLegOnly(plan: ChannelPlan, channel: string): Notice | undefined {
  const leg = channelsNumbered(plan, Number(channel)).find(({ receiveOnly }) => !receiveOnly);
  if (leg === undefined) return undefined;
  return issue(
    'channel-digits-single-leg-only',
    { channel, plan: plan.name },
    { received: channel, clause: plan.edition, suggestion: leg.designator },
  );
}
