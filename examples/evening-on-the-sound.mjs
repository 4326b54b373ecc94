// An evening on the Skerra Sound: six invented stations on one channel 70, run by the machine of seahail/station.
// A radio check with the coast, a call to a friend, a position request, the club on a working channel, and then a
// vessel in trouble. Prints the evening as a log book would have it; the same every time.
//
//   npm run build:js && node examples/evening-on-the-sound.mjs
//
// Everything in it is made up. A distress alert is sent only by a vessel in grave and imminent danger; real sets want
// a licence, a trained operator and the rules of your administration.
import {
  composeGroupCall,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from 'seahail/call';
import { simulate, writeTimeLine } from 'seahail/simulation';

const merrow = '232999871';
const tern = '232999142';
const kittiwake = '823299904';
const coastguard = '002329990';
const sailingClub = '023299905';

/** Minutes north of 56° and west of 6°, metres of antenna above the sea. */
const at = (north, west, antennaHeight) => ({
  position: { latitude: 56 + north / 60, longitude: -(6 + west / 60) },
  antennaHeight,
});
const person = { answers: 'able', delaySeconds: [4, 12], talkSeconds: [40, 90] };
const groups = [sailingClub];

const stations = [
  {
    name: 'Skerra Coastguard',
    settings: { mmsi: coastguard, equipment: 'coast' },
    ...at(20, 30, 120),
    person,
  },
  { name: 'Merrow', settings: { mmsi: merrow, groups }, ...at(18, 35, 12), person },
  { name: 'Tern of Ardle', settings: { mmsi: tern, groups }, ...at(21, 26, 7), person },
  {
    name: 'Pellinore',
    settings: { mmsi: '232999563', groups },
    ...at(16, 38, 15),
    person: { ...person, answers: 'never' },
  },
  { name: 'Kittiwake II', settings: { mmsi: kittiwake, equipment: 'H' }, ...at(19, 31, 1), person },
  { name: 'Bounty of Lorn', settings: { mmsi: '232999218' }, ...at(14, 41, 6), person },
];

const calls = (seconds, station, call) => ({ afterSeconds: seconds, station, event: { kind: 'call', call } });
const script = [
  calls(5, 'Merrow', composeTestCall({ from: merrow, to: coastguard })),
  calls(60, 'Merrow', composeIndividualCall({ from: merrow, to: tern, channel: '72' })),
  calls(240, 'Tern of Ardle', composePositionRequest({ from: tern, to: kittiwake })),
  calls(400, 'Merrow', composeGroupCall({ from: merrow, to: sailingClub, channel: '77' })),
  { afterSeconds: 900, station: 'Bounty of Lorn', event: { kind: 'prepare-alert', nature: 'flooding' } },
  { afterSeconds: 902, station: 'Bounty of Lorn', event: { kind: 'press-alert' } },
];

const evening = simulate(stations, script, { seed: 7, durationSeconds: 1800, bitErrorRate: 1e-4 });
for (const line of writeTimeLine(evening, { names: { [sailingClub]: 'Ardle Sailing Club' } }))
  console.log(line);

const { bursts, erlang } = evening.channel70;
console.log(`\n${bursts} bursts on channel 70, ${(100 * erlang).toFixed(2)} % of the half hour`);
