// Draws the figures of the docs site with the library itself, docs/generated/figures/*.svg. Run after `npm run build`.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeCall } from 'seahail/burst';
import { composeIndividualCall, composePositionRequest } from 'seahail/call';
import { internationalPlan } from 'seahail/channel/international';
import { unitedStatesPlan } from 'seahail/channel/united-states';
import { boundsFrom, decodePosition } from 'seahail/position';
import { plotBearings } from 'seahail/position/plot';
import { valueOf } from 'seahail/result';
import { phaseTable, transitionTable } from 'seahail/station';
import { callStream } from './docs-figures/call-stream.mjs';
import { channelBand } from './docs-figures/channel-band.mjs';
import { identityAnatomy } from './docs-figures/identity-anatomy.mjs';
import { minuteBox } from './docs-figures/minute-box.mjs';
import { radioCurves } from './docs-figures/radio-curves.mjs';
import { receiverCurves } from './docs-figures/receiver-curves.mjs';
import { rooms } from './docs-figures/rooms.mjs';
import { stateDiagram } from './docs-figures/state-diagram.mjs';
import { timeLine } from './docs-figures/time-line.mjs';
import { waveform } from './docs-figures/waveform.mjs';
import { wiring } from './docs-figures/wiring.mjs';

const out = fileURLToPath(new URL('../docs/generated/figures', import.meta.url));
mkdirSync(out, { recursive: true });
const write = (name, svg) => writeFileSync(join(out, `${name}.svg`), svg.replace(/\n\s*\n/g, '\n'));

write('rooms', rooms({ id: 'rooms', title: 'The modules of the library' }));

write(
  'identity-anatomy',
  identityAnatomy({ id: 'identity-anatomy', title: 'Nine digits and what they say' }),
);
write(
  'channel-band',
  channelBand({
    id: 'channel-band',
    title: 'The VHF band in two plans, and what boats of both may talk on',
    plans: [internationalPlan, unitedStatesPlan],
    purpose: 'intership-non-commercial',
  }),
);
write('wiring', wiring({ id: 'wiring', title: 'One call, two cables' }));

const call = composePositionRequest({ from: '232999871', to: '232999142' });
const title = 'Merrow asks Tern of Ardle for her position: the words on the air';
write('call-stream', callStream({ id: 'call-stream', call, burst: encodeCall(call), title }));
write(
  'waveform',
  waveform({ id: 'waveform', symbol: 125, title: 'The first word of a call: bits, tones and sound' }),
);

// Measured by scripts/bench.mjs, which takes its time, and kept.
const { radio, success } = JSON.parse(
  readFileSync(new URL('../docs/figures/receiver.json', import.meta.url), 'utf8'),
);
write('receiver', receiverCurves({ id: 'receiver', title: 'How weak a call may be', success }));
write('radio', radioCurves({ id: 'radio', title: 'The same through an FM radio', radio }));

const tern = valueOf(decodePosition('1561800632'));
write('minute-box', minuteBox({ id: 'minute-box', position: tern, title: 'What whole minutes leave open' }));

const merrow = { latitude: 56.3667, longitude: -6.4 };
const now = Date.UTC(2026, 5, 1, 14, 4);
const pellinore = valueOf(decodePosition('1562400618', '31000500'));
const stations = [
  { name: 'Tern of Ardle', bounds: boundsFrom(merrow, tern, { at: now - 14 * 60_000, now, speed: 6 }) },
  { name: 'Pellinore', bounds: boundsFrom(merrow, pellinore, { at: now - 2 * 60_000, now, speed: 5 }) },
];
const plot = plotBearings(merrow, stations, { title: 'Seen from Merrow', ownName: 'Merrow' });
write('plot', plot);
// The picture of the README: in the package too, so that its page can show it.
writeFileSync(fileURLToPath(new URL('../docs/plot.svg', import.meta.url)), plot);

const procedures = {
  outgoing: 'A call this station sends',
  incoming: 'A call this station receives',
  'own-distress': 'Own distress',
  'heard-distress': 'The distress of another vessel',
};
for (const [procedure, title] of Object.entries(procedures)) {
  const ofIt = (row) => row.procedure === procedure;
  const phases = phaseTable().filter(ofIt);
  const transitions = transitionTable().filter(ofIt);
  write(`station-${procedure}`, stateDiagram({ procedure, title, phases, transitions }));
}

const person = { answers: 'able', delaySeconds: [5, 9], talkSeconds: [60, 90] };
const stationOf = (name, settings, latitude, longitude) => ({
  name,
  settings,
  position: { latitude, longitude },
  antennaHeight: 12,
  person,
});
const caller = stationOf('Merrow', { mmsi: '232999871' }, 56.3667, -6.4);
const friend = stationOf('Tern of Ardle', { mmsi: '232999142' }, 56.3052, -6.5341);
const casualty = stationOf('Bounty of Lorn', { mmsi: '232999218' }, 56.4454, -6.0555);
const coast = {
  ...stationOf('Skerra Coastguard', { mmsi: '002329990', equipment: 'coast', designated: true }, 56.45, -6.2),
  person: undefined,
};
const byKey = (call, words) => [{ afterSeconds: 5, station: 'Merrow', event: { kind: 'call', call }, words }];
const alert = [
  {
    afterSeconds: 5,
    station: 'Bounty of Lorn',
    event: { kind: 'prepare-alert', nature: 'flooding' },
    words: 'lifts the cover, chooses flooding',
  },
  {
    afterSeconds: 8,
    station: 'Bounty of Lorn',
    event: { kind: 'press-alert' },
    words: 'holds the distress key down',
  },
];
write(
  'time-line-individual',
  timeLine({
    id: 'time-line-individual',
    title: 'A call to one station, from the key to the talk',
    stations: [caller, friend],
    script: byKey(
      composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' }),
      'proposes channel 72',
    ),
    durationSeconds: 60,
  }),
);
write(
  'time-line-position',
  timeLine({
    id: 'time-line-position',
    title: 'Where is she? A position request and its reply',
    stations: [caller, friend],
    script: byKey(composePositionRequest({ from: '232999871', to: '232999142' }), 'asks for the position'),
    durationSeconds: 60,
  }),
);
write(
  'time-line-distress',
  timeLine({
    id: 'time-line-distress',
    title: 'A distress attempt and its acknowledgement',
    stations: [casualty, coast],
    script: [
      ...alert,
      {
        afterSeconds: 40,
        station: 'Skerra Coastguard',
        event: { kind: 'acknowledge', dialogue: 0 },
        words: 'decides to acknowledge',
      },
      {
        afterSeconds: 42,
        station: 'Skerra Coastguard',
        event: { kind: 'confirm', dialogue: 0 },
        words: 'confirms',
      },
    ],
    durationSeconds: 90,
  }),
);
write(
  'time-line-cancel',
  timeLine({
    id: 'time-line-cancel',
    title: 'An alert sent by mistake, cancelled at once',
    stations: [casualty, coast],
    script: [
      ...alert,
      {
        afterSeconds: 20,
        station: 'Bounty of Lorn',
        event: { kind: 'cancel-alert' },
        words: 'sees the mistake and cancels',
      },
      {
        afterSeconds: 24,
        station: 'Bounty of Lorn',
        event: { kind: 'confirm', dialogue: 0 },
        words: 'confirms: it was false',
      },
    ],
    durationSeconds: 60,
  }),
);
