import {
  composeGroupCall,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from '../../src/call/index.ts';
import type { ScriptLine, SimulatedStation } from '../../src/simulation/index.ts';

/** The invented evening on the Skerra Sound: every name and number is made up. */
const at = (latitude: number, longitude: number, antennaHeight: number) => ({
  position: { latitude: 56 + latitude / 60, longitude: -(6 + longitude / 60) },
  antennaHeight,
});
const person = { answers: 'able', delaySeconds: [4, 12], talkSeconds: [40, 90] } as const;
const club = ['023299905'];

export const evening: readonly SimulatedStation[] = [
  {
    name: 'Skerra Coastguard',
    settings: { mmsi: '002329990', equipment: 'coast', designated: true },
    ...at(20, 30, 120),
    person,
  },
  { name: 'Merrow', settings: { mmsi: '232999871', groups: club }, ...at(18, 35, 12), person },
  {
    name: 'Tern of Ardle',
    settings: { mmsi: '232999142', groups: club },
    ...at(21, 26, 7),
    person,
    clockErrorMs: 1500,
  },
  {
    name: 'Pellinore',
    settings: { mmsi: '232999563', groups: club },
    ...at(16, 38, 15),
    person: { ...person, answers: 'never' },
  },
  { name: 'Kittiwake II', settings: { mmsi: '823299904', equipment: 'H' }, ...at(19, 31, 1), person },
  { name: 'Bounty of Lorn', settings: { mmsi: '232999218' }, ...at(14, 41, 6), person },
];

export const eveningScript: readonly ScriptLine[] = [
  {
    afterSeconds: 5,
    station: 'Merrow',
    event: { kind: 'call', call: composeTestCall({ from: '232999871', to: '002329990' }) },
  },
  {
    afterSeconds: 60,
    station: 'Merrow',
    event: {
      kind: 'call',
      call: composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' }),
    },
  },
  {
    afterSeconds: 240,
    station: 'Tern of Ardle',
    event: { kind: 'call', call: composePositionRequest({ from: '232999142', to: '823299904' }) },
  },
  {
    afterSeconds: 400,
    station: 'Merrow',
    event: { kind: 'call', call: composeGroupCall({ from: '232999871', to: '023299905', channel: '77' }) },
  },
  { afterSeconds: 900, station: 'Bounty of Lorn', event: { kind: 'prepare-alert', nature: 'flooding' } },
  { afterSeconds: 902, station: 'Bounty of Lorn', event: { kind: 'press-alert' } },
];
