import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import type { EquipmentClass } from '../composition.ts';
import { placeLack, timeLack } from '../element/place-symbols.ts';
import { isAshore, isManOverboardDevice } from '../element/station-identity.ts';

/** Who may speak in a distress, and whether the call says what it could. */
export function distressNotices(call: Call, equipment: EquipmentClass | undefined): Notice[] {
  if (!('subsequent' in call)) return [];
  return [...parts(call, equipment), ...place(call)];
}

function parts(call: Call, equipment: EquipmentClass | undefined): Notice[] {
  const ashore = isAshore(call.from);
  switch (call.kind) {
    case 'distress-acknowledgement':
      if (ashore || call.from === null) return [];
      return [
        {
          code: 'call-coast-acknowledges',
          message: 'Sender: normally only a coast station acknowledges an alert by selective calling',
          at: ['from'],
          clause: '47 CFR 80.1117(a), 80.1121(d)',
        },
      ];
    case 'distress-self-cancel':
      if (call.distressed === call.from) return [];
      return [
        {
          code: 'call-cancel-of-another',
          message: 'Vessel in distress: only the vessel that sent an alert cancels it',
          at: ['distressed'],
          clause: '47 CFR 80.335, edition of 2005',
        },
      ];
    case 'distress-relay':
      // A man-overboard device tells its own ship of its own distress by a relay: ITU-R M.493-15, from memory.
      if (equipment === 'M' || isManOverboardDevice(call.from)) return [];
      return [
        ...(call.from !== null && call.from === call.distressed ? [ownRelay] : []),
        ...(ashore || call.from === null ? [] : [relayCases]),
      ];
    default:
      return [];
  }
}

const ownRelay: Notice = {
  code: 'call-relay-of-own',
  message: 'Vessel in distress: own distress is told by an alert, not by a relay',
  at: ['distressed'],
  clause: 'ITU-R M.493-15 table 4.3, from memory',
};

const relayCases: Notice = {
  code: 'call-relay-cases',
  message:
    'Distress relay: from a ship on VHF only when the vessel in distress cannot alert herself and the master judges that more help is needed, never because an alert was heard',
  at: ['kind'],
  clause: 'IMO COMSAR/Circ.25; 47 CFR 80.1121(b), (c)',
};

function place(call: Extract<Call, { readonly subsequent: unknown }>): Notice[] {
  if (call.position === null) {
    // What could not be read has a notice of its own.
    if (placeLack(call) !== 'not-given') return [];
    return [
      {
        code: 'call-position-unknown',
        message: 'Position: not given; it is said by voice as soon as it is known',
        at: ['position'],
        clause: 'ITU-R M.541-8 Annex 1',
      },
    ];
  }
  if (call.time !== null || timeLack(call) !== 'not-given') return [];
  return [
    {
      code: 'call-time-unknown',
      message: 'Time of the position: not given, so the position may be old',
      at: ['time'],
      clause: 'ITU-R M.541-8 Annex 1',
    },
  ];
}
