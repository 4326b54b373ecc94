import { checkIdentity, type IdentityField } from '../../identity/index.ts';
import type { Notice } from '../../result/index.ts';
import { type ComposedCall, calls } from '../call-table.ts';
import { isAshore, isManOverboardDevice, stationIdentity } from '../element/identity-symbols.ts';
import type { EquipmentClass } from '../kinds.ts';
import { checkNotice } from '../texts.ts';

/** Whether each identity is allowed in its field. */
export function stationNotices(call: ComposedCall, equipment: EquipmentClass | undefined): Notice[] {
  const notices = ownNotices(call.from, equipment);
  const own = call.from ?? undefined;
  if (call.to.kind === 'station' && !isReceiptFor(call.to.mmsi, call))
    notices.push(...identityNotices('to', call.to.mmsi, { use: 'individual', own }));
  if (call.to.kind === 'group') notices.push(...identityNotices('to', call.to.mmsi, { use: 'group', own }));
  if ('distressed' in call)
    notices.push(...identityNotices('distressed', call.distressed, { use: 'distressed' }));
  return notices;
}

// The one call that a man-overboard device is sent: deviation D-identity-6.
function isReceiptFor(mmsi: string | null, { kind }: ComposedCall): boolean {
  return kind === 'distress-relay-acknowledgement' && isManOverboardDevice(mmsi);
}

function ownNotices(mmsi: string | null, equipment: EquipmentClass | undefined): Notice[] {
  const sender = equipment ?? (isAshore(mmsi) ? 'coast' : undefined);
  const station = sender === 'coast' ? 'coast' : sender === 'H' ? 'handheld' : 'fixed';
  const notices = identityNotices('from', mmsi, { use: 'own', station });
  // An identity is odd for a set of known class only, and a man-overboard device has one of its own.
  return equipment === undefined || equipment === 'M'
    ? notices.filter(({ grade }) => grade === 'error')
    : notices;
}

function identityNotices(at: string, mmsi: string | null, field: IdentityField): Notice[] {
  if (mmsi === null) return [];
  const identity = stationIdentity(mmsi);
  if (identity === undefined) {
    return [checkNotice('call-identity-form', {}, at, 'ITU-R M.585-10 Annex 1', mmsi)];
  }
  return checkIdentity(identity, field).map((notice) => ({ ...notice, at: [at, ...notice.at] }));
}

/** Whether the sender's equipment has such a call; deviation: D-call-4. */
export function equipmentNotices(call: ComposedCall, equipment: EquipmentClass | undefined): Notice[] {
  const sender = equipment ?? (isAshore(call.from) ? 'coast' : undefined);
  if (sender === undefined) return [];
  const duty = calls.rowOf(call).senders[sender];
  const clause = 'ITU-R M.493-16, equipment classes, unverified';
  if (duty !== 'none' && duty !== 'guarded') return [];
  const code = duty === 'none' ? 'call-class-none' : 'call-class-guarded';
  return [checkNotice(code, { equipment: sender }, 'kind', clause, call.kind)];
}
