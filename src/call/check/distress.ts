import type { Notice } from '../../result/index.ts';
import type { Call, DistressCall } from '../call.ts';
import { isAshore, isManOverboardDevice } from '../element/identity-symbols.ts';
import { placeLack, timeLack } from '../element/place-symbols.ts';
import { type EquipmentClass, isDistressCall } from '../kinds.ts';
import { checkNotice } from '../texts.ts';

/** Who sends which distress call, and what the call leaves out. */
export function distressNotices(call: Call, equipment: EquipmentClass | undefined): Notice[] {
  if (!isDistressCall(call)) return [];
  return [...parts(call, equipment), ...place(call)];
}

function parts(call: Call, equipment: EquipmentClass | undefined): Notice[] {
  const ashore = isAshore(call.from);
  switch (call.kind) {
    case 'distress-acknowledgement':
      if (ashore || call.from === null) return [];
      return [
        checkNotice('call-coast-acknowledges', {}, 'from', 'MSC.1/Circ.1657; 47 CFR 80.103(c), 80.1121(d)'),
      ];
    case 'distress-self-cancel':
      if (call.distressed === call.from) return [];
      return [checkNotice('call-cancel-of-another', {}, 'distressed', 'RR 2024 Nos. 32.53B to 32.53E')];
    case 'distress-relay':
      // A man-overboard device relays its own distress to its own ship: ITU-R M.493-16, class M, from memory.
      if (equipment === 'M' || isManOverboardDevice(call.from)) return [];
      return [
        ...(call.from !== null && call.from === call.distressed
          ? [checkNotice('call-relay-of-own', {}, 'distressed', 'ITU-R M.493-16 table A1-4.3')]
          : []),
        ...(ashore || call.from === null || isToCoastStation(call)
          ? []
          : [checkNotice('call-relay-cases', {}, 'to', RELAYS)]),
      ];
    default:
      return [];
  }
}

const RELAYS = 'RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657; 47 CFR 80.1121(b)';

function isToCoastStation({ to }: Call<'distress-relay'>): boolean {
  return to.kind === 'station' && isAshore(to.mmsi);
}

function place(call: DistressCall): Notice[] {
  if (call.position === null) {
    // What could not be read has a notice of its own.
    if (placeLack(call) !== 'not-given') return [];
    return [checkNotice('call-position-unknown', {}, 'position', 'ITU-R M.541-11 Annex 1')];
  }
  if (call.time !== null || timeLack(call) !== 'not-given') return [];
  return [checkNotice('call-time-unknown', {}, 'time', 'ITU-R M.541-11 Annex 1')];
}
