// Writes the network log of the invented evening, from its serial log: `node scripts/evening-network.mjs`.
// The radio (address 3) and the receiver of positions (address 35) are on the bus. The line that the serial cable
// damaged is whole here, and one message lacks a frame instead.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createBridge } from 'seahail/bridge';
import { formatFrameLine, writeNodeFrames } from 'seahail/network';
import { formatSentence, readSentences } from 'seahail/sentence';

const file = (name) => fileURLToPath(new URL(`../examples/evening-watch/${name}`, import.meta.url));
const fields = '20,2329991420,08,21,26,1562100622,1809,,,B,'.split(',');
const serial = readFileSync(file('serial.log'), 'latin1').replace(
  /^\$CDDSC,20,2329991420,0.*#.*$/m,
  formatSentence({ talker: 'CD', formatter: 'DSC', fields }),
);
const [RADIO, RECEIVER] = [3, 35];
const cables = { [RADIO]: createBridge({ source: RADIO }), [RECEIVER]: createBridge({ source: RECEIVER }) };
const node = { manufacturer: 2046, software: '1.0' };
const radio = { ...node, unique: 101, function: 190, deviceClass: 70, model: 'Radio', serial: '101' };
const receiver = { ...node, unique: 102, function: 145, deviceClass: 60, model: 'Receiver', serial: '102' };
const lines = [];
let at = Date.UTC(2026, 7, 14, 17, 59, 58);
const send = (frames) => {
  for (const { id, data } of frames) {
    lines.push(formatFrameLine({ id, data, at }));
    at += 0.4;
  }
};

send(writeNodeFrames(radio, { source: RADIO }));
send(writeNodeFrames(receiver, { source: RECEIVER }));
for (const reading of readSentences(serial, { own: '232999871' })) {
  const source = reading.kind === 'own-position' ? RECEIVER : RADIO;
  const { frames } = cables[source].sentencesToNetwork(reading);
  if (reading.at !== null) at = Math.max(at, reading.at + (source === RADIO ? 200 : 0));
  const lost = reading.kind === 'call' && reading.call.kind === 'unable-to-comply';
  send(lost ? frames.toSpliced(4, 1) : frames);
}
writeFileSync(file('network.log'), `${lines.join('\n')}\n`);
