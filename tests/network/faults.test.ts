import { describe, expect, it } from 'vitest';
import { english } from '../../src/locale/en.ts';
import { translate } from '../../src/locale/index.ts';
import type { NetworkFaultId } from '../../src/network/fault/fault-list.ts';
import {
  findNetworkFaults,
  formatFrameLine,
  NETWORK_FAULTS,
  type NetworkFrame,
  writeNodeFrames,
  writeWaypointFrames,
} from '../../src/network/index.ts';
import { bytesOf, framesOf } from './support.ts';
import { payloadOf } from './vectors.ts';

// Signs of trouble: common practice, no source. Stations and places are invented.
const START = Date.UTC(2026, 5, 1, 14, 0);
const logOf = (frames: readonly NetworkFrame[], step = 10): string =>
  frames.map((frame, index) => formatFrameLine({ ...frame, at: START + index * step })).join('\n');
const call = (id: string, sequence = 0): NetworkFrame[] => framesOf({ pgn: 129808 }, payloadOf(id), sequence);
const changed = (id: string, ...changes: [place: number, byte: number][]): NetworkFrame[] => {
  const payload = payloadOf(id);
  for (const [place, byte] of changes) payload[place] = byte;
  return framesOf({ pgn: 129808 }, payload);
};
const position = (source: number): NetworkFrame => ({
  id: 0x09f80100 + source,
  data: bytesOf('004b942188f71ffc'),
});
const node = (source: number, unique: number, deviceClass = 60): NetworkFrame[] =>
  writeNodeFrames(
    { unique, manufacturer: 2046, function: 1, deviceClass, model: 'M', software: '1', serial: '1' },
    { source },
  ).slice(0, 1);
const idsIn = (log: string, own?: string): NetworkFaultId[] =>
  findNetworkFaults(log, own === undefined ? {} : { own }).findings.map(({ id }) => id);

const place = { latitude: 56.3388, longitude: -6.502 };
const goTo = writeWaypointFrames(
  { position: place, name: 'T' },
  { source: 3, from: { distance: 9, bearing: 1 } },
).filter(({ id }) => ((id >>> 8) & 0x3ffff) === 129284);
const torn = [...call('distress-alert').slice(0, 4), ...Array.from({ length: 20 }, () => position(5))];
const late = torn.map((frame, index) => formatFrameLine({ ...frame, at: START + index * 200 })).join('\n');

describe('a log of the network', () => {
  it.each<[NetworkFaultId, string, string?]>([
    ['no-frames', ''],
    ['not-frames', `${logOf([position(5)])}\nnonsense`],
    ['packet-torn', `${late}\n${logOf([...call('position-request').slice(0, 1), position(5)])}`],
    ['no-call-message', logOf(node(9, 4, 70))],
    ['two-digit-codes', logOf(changed('individual-call', [0, 20]))],
    ['identity-code', logOf(call('identity-as-number'))],
    ['category-lost', logOf(changed('all-ships-urgency', [1, 255]))],
    ['message-cut-off', logOf(framesOf({ pgn: 129808 }, payloadOf('distress-alert').slice(0, -4)))],
    ['date-early', logOf(call('date-early'))],
    ['call-repeated', logOf([...call('distress-alert'), ...call('distress-alert', 1)])],
    ['no-address-claim', logOf([...node(9, 4), position(5), position(5)], 40_000)],
    ['address-disputed', logOf([...node(9, 4), ...node(9, 5)])],
    ['two-positions', logOf([position(5), position(6)])],
    ['own-report-as-target', logOf(framesOf({ pgn: 129038 }, payloadOf('ais-class-a'))), '232999218'],
    ['waypoint-not-listed', logOf(goTo)],
  ])('shows %s and nothing else', (id, log, own) => {
    expect(idsIn(log, own)).toEqual([id]);
    const [finding] = findNetworkFaults(log, own === undefined ? {} : { own }).findings;
    expect(finding).toMatchObject({
      why: { code: 'network-why', params: { fault: id } },
      remedy: { code: 'network-remedy', params: { fault: id } },
    });
    const texts = [finding?.why, finding?.remedy, finding?.sightings[0]?.seen].flatMap((text) =>
      typeof text === 'object' ? text : [],
    );
    expect(texts.map((text) => translate(text, english).text)).toEqual(texts.map(({ message }) => message));
  });

  it.each<[string, string, unknown]>([
    ['', 'no-frames', { code: 'network-seen-no-frames', params: { count: 0 } }],
    [
      `${logOf([position(5)])}\nnonsense`,
      'not-frames',
      { code: 'network-log-line', params: { received: "'nonsense'" } },
    ],
    [
      `${late}\n${logOf([...call('position-request').slice(0, 1), position(5)])}`,
      'packet-torn',
      // The first frame of a fast packet has 6 bytes of the payload, the others 7 (public descriptions of the network).
      {
        code: 'network-packet-torn',
        params: {
          pgn: 129808,
          source: 3,
          announced: 1 + Math.ceil((payloadOf('distress-alert').length - 6) / 7),
          received: '4',
        },
      },
    ],
    [logOf(node(9, 4, 70)), 'no-call-message', { code: 'network-seen-radio', params: { deviceClass: 70 } }],
    [
      logOf(changed('individual-call', [0, 20])),
      'two-digit-codes',
      { code: 'network-seen-format', params: { format: 20 } },
    ],
    [
      logOf([...call('distress-alert'), ...call('distress-alert', 1)]),
      'call-repeated',
      { code: 'network-seen-repeat', params: { event: 1, count: 2 } },
    ],
    [
      logOf([...node(9, 4), ...node(9, 5)]),
      'address-disputed',
      { code: 'network-seen-names', params: { address: 9, count: 2 } },
    ],
    [
      logOf([position(5), position(6)]),
      'two-positions',
      { code: 'network-seen-positions', params: { pgn: 129025, addresses: [5, 6] } },
    ],
  ])('%# is shown by data', (log, id, seen) => {
    const finding = findNetworkFaults(log).findings.find((each) => each.id === id);
    expect(finding?.sightings[0]?.seen).toMatchObject(seen as object);
  });

  it('has an example of every fault', () => {
    expect(NETWORK_FAULTS).toHaveLength(15);
  });

  it('that is sound shows none', () => {
    const report = findNetworkFaults(
      logOf([...call('distress-alert'), ...call('position-reply', 1), position(5)]),
    );
    expect(report).toMatchObject({ clean: true, messages: 3, calls: 2 });
    expect(report.outside.length).toBeGreaterThan(0);
  });

  it('keeps twenty sightings of a fault and counts the rest', () => {
    const [finding] = findNetworkFaults(new Array<string>(30).fill('nonsense').join('\n')).findings.slice(1);
    expect(finding).toMatchObject({ id: 'not-frames', count: 30, sightings: { length: 20 } });
  });
});
