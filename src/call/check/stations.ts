import { checkIdentity, type IdentityField } from '../../identity/index.ts';
import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { isAshore, isManOverboardDevice, stationIdentity } from '../element/identity-symbols.ts';
import type { EquipmentClass } from '../kinds.ts';
import { checkNotice } from '../texts.ts';

/** Whether each identity is allowed in its field. */
export function stationNotices(
  call: Exclude<Call, Call<'unrecognised-call'>>,
  equipment: EquipmentClass | undefined,
): Notice[] {
  const notices = ownNotices(call.from, equipment);
  const own = call.from === null ? {} : { own: call.from };
  if (call.to.kind === 'station' && !tellsOfReceipt(call))
    notices.push(...identityNotices('to', call.to.mmsi, { use: 'individual', ...own }));
  if (call.to.kind === 'group')
    notices.push(...identityNotices('to', call.to.mmsi, { use: 'group', ...own }));
  if ('distressed' in call)
    notices.push(...identityNotices('distressed', call.distressed, { use: 'distressed' }));
  return notices;
}

// The one call that a man-overboard device is sent: deviation D-identity-6.
function tellsOfReceipt(call: Call): boolean {
  return (
    call.kind === 'distress-relay-acknowledgement' &&
    call.to.kind === 'station' &&
    isManOverboardDevice(call.to.mmsi)
  );
}

function ownNotices(mmsi: string | null, equipment: EquipmentClass | undefined): Notice[] {
  if (equipment === 'M') return identityNotices('from', mmsi, { use: 'own' }, 'refusals');
  if (equipment !== undefined) {
    const station = equipment === 'coast' ? 'coast' : equipment === 'H' ? 'handheld' : 'fixed';
    return identityNotices('from', mmsi, { use: 'own', station });
  }
  const station = isAshore(mmsi) ? 'coast' : 'fixed';
  return identityNotices('from', mmsi, { use: 'own', station }, 'refusals');
}

function identityNotices(
  at: string,
  mmsi: string | null,
  field: IdentityField,
  which: 'all' | 'refusals' = 'all',
): Notice[] {
  if (mmsi === null) return [];
  const identity = stationIdentity(mmsi);
  if (identity === undefined) {
    return [checkNotice('call-identity-form', {}, at, 'ITU-R M.585-10 Annex 1', mmsi)];
  }
  return checkIdentity(identity, field)
    .filter(({ grade }) => which === 'all' || grade === 'error')
    .map((notice) => ({ ...notice, at: [at, ...notice.at] }));
}

/** Whether the sender's equipment has such a call; deviation: D-call-4. */
export function equipmentNotices(
  call: Exclude<Call, Call<'unrecognised-call'>>,
  equipment: EquipmentClass | undefined,
): Notice[] {
  const sender = equipment ?? (isAshore(call.from) ? 'coast' : undefined);
  if (sender === undefined) return [];
  const duty = calls.rowOf(call)?.senders[sender];
  const clause = 'ITU-R M.493-16, equipment classes, unverified';
  if (duty !== 'none' && duty !== 'guarded') return [];
  const code = duty === 'none' ? 'call-class-none' : 'call-class-guarded';
  return [checkNotice(code, { equipment: sender }, 'kind', clause, call.kind)];
}
