import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findNetworkFaults, isNetworkLog, readNetworkLog } from '../../src/network/index.ts';
import type { Reading } from '../../src/report/index.ts';
import { readSentences } from '../../src/sentence/index.ts';

const file = (name: string) =>
  readFileSync(join(import.meta.dirname, '../../examples/evening-watch', name), 'latin1');
const own = { own: '232999871' };
const [serial, network] = [file('serial.log'), file('network.log')];
const callsOf = (readings: readonly { kind: string }[]) =>
  readings
    .filter((reading): reading is Reading<'call'> => reading.kind === 'call')
    .filter(({ stage, repeat }) => stage === 'final' && repeat === 0)
    .map(({ call }) => call);

// The invented evening of the examples: scripts/evening-network.mjs.
describe('the invented evening', () => {
  it('is told apart by its cable', () => {
    expect([isNetworkLog(serial), isNetworkLog(network)]).toEqual([false, true]);
  });

  it('has the same calls on both cables, but for what each lost and what PGN 129808 cannot say', () => {
    const ofSerial = callsOf(readSentences(serial, own));
    const ofNetwork = callsOf(readNetworkLog(network, own));
    const lost = ofSerial.filter(({ kind }) => kind === 'unable-to-comply');
    const gained = ofNetwork.filter(
      (call) => call.kind === 'position-reply' && call.from === '232999142' && call.time?.minute === 9,
    );
    expect([lost.length, gained.length]).toEqual([1, 1]);
    const expected = ofSerial
      .filter((call) => !lost.includes(call))
      .map((call) => (call.kind === 'distress-acknowledgement' ? { ...call, nature: null } : call));
    expect(ofNetwork.filter((call) => !gained.includes(call))).toEqual(expected);
  });

  it('has a torn message and a call that came twice', () => {
    const { findings } = findNetworkFaults(network, own);
    expect(findings.map(({ id, count }) => [id, count])).toEqual([
      ['packet-torn', 1],
      ['call-repeated', 1],
    ]);
  });
});
