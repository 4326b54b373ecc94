import type { ChannelPlan } from '../../channel/index.ts';
import { decodeArea } from '../../position/internal.ts';
import type { Notice } from '../../result/index.ts';
import { safely } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { type CallFields, digitsOf } from '../fields.ts';
import type { EquipmentClass } from '../kinds.ts';
import { whyNoSymbols } from '../no-symbols.ts';
import { valueNotice } from '../texts.ts';
import { type WrongType, wrongType } from '../wrong-type.ts';
import { channelNotices } from './channel.ts';
import { distressNotices } from './distress.ts';
import { equipmentNotices, stationNotices } from './stations.ts';
import { telecommandNotices } from './telecommands.ts';

/**
 * What speaks against a call: how it differs from the tables of ITU-R M.493, and what good practice says of its
 * stations, channel, telecommands and sender. For a message builder before sending, and for a log after receiving;
 * it never refuses anything, and no notice does not mean leave to send: licence and operator decide.
 *
 * @param call - any call
 * @param options - equipment of the sender and channel plan, where known
 * @returns notices, each with its clause; empty when nothing is to be said. Never throws.
 *
 * @see {@link describeCall}
 *
 * @example
 * ```ts
 * import { checkCall, composeIndividualCall } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * console.log(checkCall({ ...call, channel: '16' })[0]?.code); // call-channel-16-routine
 * ```
 */
export function checkCall(
  call: Call,
  options: {
    /** Equipment of the sender; a coast identity counts as a coast station unless stated. */
    readonly equipmentClass?: EquipmentClass | undefined;
    /** The plan of the waters, to check the channel named. */
    readonly plan?: ChannelPlan | undefined;
  } = {},
): readonly Notice[] {
  return safely(
    () => {
      const wrong = wrongType(call);
      return wrong === null ? findings(call, options) : [typeNotice(wrong)];
    },
    () => [valueNotice('call-value-missing', {}, { clause: ANNEX })],
  );
}

function findings(call: Call, options: NonNullable<Parameters<typeof checkCall>[1]>): readonly Notice[] {
  if (call.kind === 'unrecognised-call') return calls.noticesOf(call.asReceived);
  return [
    ...fieldNotices(call),
    ...stationNotices(call, options.equipmentClass),
    ...equipmentNotices(call, options.equipmentClass),
    ...telecommandNotices(call),
    ...channelNotices(call, options.plan),
    ...distressNotices(call, options.equipmentClass),
  ];
}

function fieldNotices(call: Call): readonly Notice[] {
  try {
    const fields = calls.fieldsOf(call);
    return [...calls.noticesOf(fields), ...areaNotices(fields)];
  } catch (error) {
    const why = whyNoSymbols(error);
    if (why === undefined) throw error;
    const { value, ...received } = why;
    return [valueNotice('call-value', { value }, { ...received, clause: ANNEX })];
  }
}

function typeNotice({ path, at, type, received }: WrongType): Notice {
  return valueNotice('call-value-type', { path, type }, { at, received, clause: ANNEX });
}

const ANNEX = 'ITU-R M.493-16 Annex 1';

function areaNotices(fields: CallFields): readonly Notice[] {
  const area = fields.format === 102 ? decodeArea(digitsOf(fields.address)) : null;
  return area?.ok ? area.notices.map((notice) => ({ ...notice, at: ['to', 'area'] })) : [];
}
