import type { EquipmentClass } from 'seahail/call';
import {
  composeGroupCall,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from 'seahail/call';
import type { Coordinates } from 'seahail/position';
import type { Policy, StationEvent } from 'seahail/station';

/** A station of a scene. */
export interface Role {
  readonly name: string;
  readonly callSign: string | null;
  readonly mmsi: string;
  readonly equipment: EquipmentClass;
  /** Acknowledges distress by DSC, as the coastguard does. */
  readonly designated?: boolean;
  readonly position: Coordinates;
  readonly groups?: readonly string[];
}

/** Two stations, and what sets them going. */
export interface Scene {
  readonly word: string;
  readonly title: string;
  readonly roles: readonly [Role, Role];
  /** What the first station's person does, in order, with milliseconds since the beginning. */
  readonly opening: readonly { readonly after: number; readonly event: StationEvent }[];
}

/** 14 August 2026, 18:00 UTC, an invented evening. */
export const BEGIN: number = Date.UTC(2026, 7, 14, 18, 0);

const merrow: Role = {
  name: 'Merrow',
  callSign: '2ZZM8',
  mmsi: '232999871',
  equipment: 'D',
  position: { latitude: 56.3667, longitude: -6.4 },
};
const tern: Role = {
  name: 'Tern of Ardle',
  callSign: '2ZZT4',
  mmsi: '232999142',
  equipment: 'D',
  position: { latitude: 56.3052, longitude: -6.5341 },
  groups: ['023299905'],
};
const bounty: Role = {
  name: 'Bounty of Lorn',
  callSign: null,
  mmsi: '232999218',
  equipment: 'D',
  position: { latitude: 56.4454, longitude: -6.0555 },
};
const coastguard: Role = {
  name: 'Skerra Coastguard',
  callSign: null,
  mmsi: '002329990',
  equipment: 'coast',
  designated: true,
  position: { latitude: 56.45, longitude: -6.2 },
};

const by = { from: merrow.mmsi, at: BEGIN } as const;

export const scenes: readonly Scene[] = [
  {
    word: 'talk',
    title: 'Merrow calls Tern of Ardle to channel 72',
    roles: [merrow, tern],
    opening: [
      {
        after: 0,
        event: {
          kind: 'call',
          at: BEGIN,
          call: composeIndividualCall({ from: by.from, to: tern.mmsi, channel: '72' }),
          attempts: 2,
        },
      },
    ],
  },
  {
    word: 'where',
    title: 'Merrow asks Tern of Ardle where she is',
    roles: [merrow, tern],
    opening: [
      {
        after: 0,
        event: { kind: 'call', at: BEGIN, call: composePositionRequest({ from: by.from, to: tern.mmsi }) },
      },
    ],
  },
  {
    word: 'test',
    title: 'Merrow tries her set with Skerra Coastguard',
    roles: [merrow, coastguard],
    opening: [
      {
        after: 0,
        event: { kind: 'call', at: BEGIN, call: composeTestCall({ from: by.from, to: coastguard.mmsi }) },
      },
    ],
  },
  {
    word: 'club',
    title: 'Merrow calls the sailing club to channel 77',
    roles: [merrow, tern],
    opening: [
      {
        after: 0,
        event: {
          kind: 'call',
          at: BEGIN,
          call: composeGroupCall({ from: by.from, to: '023299905', channel: '77' }),
        },
      },
    ],
  },
  {
    word: 'distress',
    title: 'Bounty of Lorn is flooding; Merrow hears her',
    roles: [bounty, merrow],
    opening: distressOpening(),
  },
  {
    word: 'answered',
    title: 'Bounty of Lorn is flooding; Skerra Coastguard hears her',
    roles: [bounty, coastguard],
    opening: distressOpening(),
  },
];

/** The cover lifted and the nature chosen, the key held until the alert goes out. */
function distressOpening(): Scene['opening'] {
  return [
    { after: 0, event: { kind: 'prepare-alert', at: BEGIN, nature: 'flooding' } },
    { after: 2000, event: { kind: 'press-alert', at: BEGIN } },
  ];
}

/** What the second station does about calls. */
export const manners: ReadonlyMap<string, Policy> = new Map<string, Policy>([
  ['by-hand', 'by-hand'],
  ['automatic', 'automatic'],
  ['busy', 'reject-busy'],
]);
