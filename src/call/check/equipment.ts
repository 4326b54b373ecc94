import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { isAshore } from '../element/station-identity.ts';
import type { EquipmentClass } from '../kinds.ts';
import { checkNotice } from '../texts.ts';

/** Whether the sender's equipment has such a call; deviation: D-call-4. */
export function equipmentNotices(
  call: Exclude<Call, Call<'unrecognised-call'>>,
  equipment: EquipmentClass | undefined,
): Notice[] {
  const sender = equipment ?? (isAshore(call.from) ? 'coast' : undefined);
  if (sender === undefined) return [];
  const duty = calls.rowOf(call)?.senders[sender];
  const clause = 'ITU-R M.493-16, equipment classes, unverified';
  if (duty === 'none') {
    return [
      checkNotice('call-class-none', { equipment: sender }, { at: ['kind'], received: call.kind, clause }),
    ];
  }
  if (duty !== 'guarded') return [];
  return [
    checkNotice('call-class-guarded', { equipment: sender }, { at: ['kind'], received: call.kind, clause }),
  ];
}
