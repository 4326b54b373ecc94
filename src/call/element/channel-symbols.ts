import { type ChannelPlan, findChannel } from '../../channel/index.ts';
import { channelNamedBy, digitsNaming } from '../../channel/internal.ts';
import { type CallFields, digitsOf, type Symbols, symbolsOf } from '../fields.ts';
import { noSymbols } from '../no-symbols.ts';
import { NO_INFORMATION } from '../symbol.ts';

/** What the two frequency or channel elements of a call say. */
export interface ChannelElements {
  readonly channel: string | null;
  readonly frequencies?: { readonly receive: string | null; readonly transmit: string | null };
}

export const NO_CHANNEL: Symbols = /* @__PURE__ */ Object.freeze([
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
]);

/**
 * Reads both elements. The second may repeat the VHF channel, say nothing, or be absent: one number
 * applies to both directions.
 */
export function readChannel(receive: Symbols | null, transmit: Symbols | null): ChannelElements {
  const channel = vhfChannelOf(receive);
  const second = vhfChannelOf(transmit);
  if (channel !== null && (second === channel || saysNothing(transmit))) return { channel };
  const frequencies = { receive: frequencyOf(receive), transmit: frequencyOf(transmit) };
  return frequencies.receive === null && frequencies.transmit === null
    ? { channel: null }
    : { channel: null, frequencies };
}

/**
 * Both elements of a call; the second repeats a VHF channel or says nothing.
 *
 * @throws RangeError when the channel or a frequency has no digits in a call
 */
export function channelFields(
  elements: ChannelElements,
  isRepeated: boolean,
): Pick<CallFields, 'receive' | 'transmit'> {
  if (elements.channel !== null) {
    const symbols = vhfChannelSymbols(elements.channel);
    return { receive: symbols, transmit: isRepeated ? symbols : NO_CHANNEL };
  }
  return {
    receive: frequencySymbols(elements.frequencies?.receive ?? null),
    transmit: frequencySymbols(elements.frequencies?.transmit ?? null),
  };
}

/** The VHF channel that an element names, `null` when it names none. */
export function vhfChannelOf(element: Symbols | null): string | null {
  const digits = digitsOf(element);
  return digits === null ? null : channelNamedBy(digits);
}

/** Whether digits are those of a numbered channel, or of one leg of it: Radio Regulations Appendix 18, ITU-R M.1084. */
export function isNumbered(channel: string): boolean {
  return /^(?:[12]0)?(?:0[1-9]|1\d|2[0-8]|[67]\d|8[0-8])$/.test(channel);
}

// What channelNamedBy can give.
const CHANNEL = /^(?:0000|(?!00)\d\d|[1-9]\d{2,3})$/;

function vhfChannelSymbols(channel: string): number[] {
  if (typeof channel !== 'string') throw new TypeError('channel: expected text such as 72 or 1022');
  if (!CHANNEL.test(channel)) {
    throw noSymbols('channel', `'${channel}'`);
  }
  return symbolsOf(digitsNaming(channel));
}

/** The digits of an element that carries some: six, or eight in newer MF/HF calls. */
function frequencyOf(element: Symbols | null): string | null {
  return element !== null && (element.length === 3 || element.length === 4) ? digitsOf(element) : null;
}

function frequencySymbols(digits: string | null): Symbols {
  if (digits === null) return NO_CHANNEL;
  if (!/^\d{6}(?:\d\d)?$/.test(digits)) {
    throw noSymbols('frequency', `'${digits}'`);
  }
  return symbolsOf(digits);
}

/** Whether an element is left open, or is not there. */
export function saysNothing(element: Symbols | null): boolean {
  return element === null || element.every((symbol) => symbol === NO_INFORMATION);
}

/** What people of the waters call a channel, `'22A'` for 1022 in Canada; its digits without a plan. */
export function channelName(channel: string, plan: ChannelPlan | undefined): string {
  const found = plan && findChannel(plan, channel);
  return found?.ok ? found.value.designator : channel;
}
