import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { calls } from '../call-table.ts';
import { isAshore } from '../element/station-identity.ts';
import type { EquipmentClass } from '../kinds.ts';

const WHO: Readonly<Record<EquipmentClass, string>> = {
  A: 'a class A set',
  D: 'a class D set',
  H: 'a hand-held set',
  M: 'a man-overboard device',
  coast: 'a coast station',
};

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
      {
        code: 'call-class-none',
        message: `Sender: ${WHO[sender]} does not usually send this kind of call`,
        at: ['kind'],
        received: call.kind,
        clause,
      },
    ];
  }
  if (duty !== 'guarded') return [];
  return [
    {
      code: 'call-class-guarded',
      message: `Sender: ${WHO[sender]} sends this kind of call only from under a protective cover, on the order of the master`,
      at: ['kind'],
      received: call.kind,
      clause,
    },
  ];
}
