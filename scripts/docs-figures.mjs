// Draws the figures of the docs site with the library itself, docs/generated/figures/*.svg. Run after `npm run build`.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { encodeCall } from 'seahail/burst';
import { composePositionRequest } from 'seahail/call';
import { boundsFrom, decodePosition } from 'seahail/position';
import { plotBearings } from 'seahail/position/plot';
import { valueOf } from 'seahail/result';
import { phaseTable, transitionTable } from 'seahail/station';
import { callStream } from './docs-figures/call-stream.mjs';
import { minuteBox } from './docs-figures/minute-box.mjs';
import { radioCurves } from './docs-figures/radio-curves.mjs';
import { receiverCurves } from './docs-figures/receiver-curves.mjs';
import { rooms } from './docs-figures/rooms.mjs';
import { stateDiagram } from './docs-figures/state-diagram.mjs';
import { waveform } from './docs-figures/waveform.mjs';

const out = fileURLToPath(new URL('../docs/generated/figures', import.meta.url));
mkdirSync(out, { recursive: true });
const write = (name, svg) => writeFileSync(join(out, `${name}.svg`), svg.replace(/\n\s*\n/g, '\n'));

write('rooms', rooms({ id: 'rooms', title: 'The rooms of the library' }));

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
write('plot', plotBearings(merrow, stations, { title: 'Seen from Merrow', ownName: 'Merrow' }));

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
