import { type Call, type CallAddress, compositions, type EquipmentClass } from '../../call/index.ts';
import type { FormatSpecifier } from '../../call/internal.ts';

const formats: Readonly<Record<CallAddress['kind'], FormatSpecifier>> = {
  station: 'individual',
  group: 'group',
  area: 'area',
  'all-ships': 'all-ships',
  'all-stations': 'distress',
};

/** Whether a station acknowledges distress by DSC as a matter of duty: 47 CFR 80.103(c). */
export function isDesignated({
  equipment,
  designated,
}: {
  readonly equipment: EquipmentClass;
  readonly designated: boolean;
}): boolean {
  return equipment === 'coast' && designated;
}

/** Whether a class of equipment sends such a call at all, by the table of compositions. */
export function maySend(equipment: EquipmentClass, call: Pick<Call, 'kind' | 'to'>): boolean {
  if (call.to === null) return false;
  const format = formats[call.to.kind];
  return compositions.some(
    (row) => row.kind === call.kind && row.format === format && row.senders[equipment] !== 'none',
  );
}

/** Whether an identity is that of a coast station, or of a group of them (ITU-R M.585: 00 in front). */
export function isCoastIdentity(mmsi: string | null): boolean {
  return mmsi?.startsWith('00') ?? false;
}
