import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBridge } from '../../src/bridge/index.ts';
import { composePositionReply, composeTestCall } from '../../src/call/index.ts';
import { createNetworkReader, type NetworkReading, writeAisFrames } from '../../src/network/index.ts';
import { toReportedPosition } from '../../src/position/index.ts';
import type { AisReport, Reading } from '../../src/report/index.ts';
import { readSentences, writeAisSentences, writeSentences } from '../../src/sentence/index.ts';

// Stations of the demo scenario.
const OWN = '232999871';
const wire = (sentences: readonly string[]): string =>
  sentences.map((sentence) => `${sentence}\r\n`).join('');
const acrossToNetwork = (text: string): { readings: NetworkReading[]; codes: string[] } => {
  const bridge = createBridge({ source: 40 });
  const reader = createNetworkReader({ own: OWN });
  const done = readSentences(text, { own: OWN, now: Date.UTC(2026, 5, 1, 14, 10) }).map((reading) =>
    bridge.sentencesToNetwork(reading),
  );
  return {
    readings: done.flatMap(({ frames }) => frames.flatMap((frame) => reader.push(frame))),
    codes: done.flatMap(({ notices }) => notices.map(({ code }) => code)),
  };
};
const backToSentences = (readings: readonly NetworkReading[]): Reading[] => {
  const bridge = createBridge();
  return readSentences(wire(readings.flatMap((reading) => bridge.networkToSentences(reading).sentences)), {
    own: OWN,
  });
};

describe('a call', () => {
  const position = toReportedPosition({ latitude: 56.33, longitude: -6.502 });
  it.each([
    composePositionReply({ from: '232999142', to: OWN, position, time: { hour: 14, minute: 4 } }),
    composeTestCall({ from: '002329990', to: OWN }),
  ])('of kind $kind goes across and back', (call) => {
    const { readings, codes } = acrossToNetwork(
      wire(writeSentences(call, { direction: 'received' }).sentences),
    );
    expect(codes).toEqual([]);
    expect(readings).toMatchObject([{ kind: 'call', call }]);
    expect(backToSentences(readings)).toMatchObject([{ kind: 'call', call }]);
  });

  it('with an expansion goes across once, when it is final', () => {
    const text = wire([
      '$CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E*73',
      '$CDDSE,1,1,A,2329991420,00,50005000*19',
    ]);
    expect(acrossToNetwork(text).readings).toMatchObject([
      { call: { position: { fraction: { latitude: 5000, longitude: 5000 } } } },
    ]);
  });

  it('to be sent does not go across', () => {
    const [reading] = readSentences('$CDDSC,20,2329991420,08,21,26,,,,,R,*2D\r\n', {
      direction: 'commanded',
      own: OWN,
    });
    expect(createBridge({ source: 40 }).sentencesToNetwork(reading as Reading)).toMatchObject({
      frames: [],
      notices: [{ code: 'bridge-commanded-call', grade: 'note', params: {} }],
    });
  });
});

describe('own position and waypoints', () => {
  const rmc = '$GPRMC,141030.00,A,5620.3280,N,00630.1200,W,5.2,123.4,010626,,,A*45';
  it('go across with time, speed and course', () => {
    const { readings } = acrossToNetwork(`${rmc}\r\n`);
    expect(readings).toMatchObject([
      { kind: 'own-position', fix: { position: { latitude: 56.3388, longitude: -6.502 } } },
      { kind: 'motion', course: 123.398, speed: expect.closeTo(5.2, 1) },
      { kind: 'own-position', fix: { instant: Date.UTC(2026, 5, 1, 14, 10, 30), quality: 'autonomous' } },
    ]);
    expect(backToSentences(readings).filter(({ kind }) => kind === 'own-position')).toMatchObject([
      { fix: { formatter: 'GLL', position: { latitude: 56.3388, longitude: -6.502 } } },
      { fix: { formatter: 'RMC', instant: Date.UTC(2026, 5, 1, 14, 10, 30) } },
    ]);
  });

  it('are exact to 1e-8 degrees in PGN 129029, and to 1e-7 in PGN 129025', () => {
    const latitude = fc.integer({ min: -9e9, max: 9e9 }).map((steps) => steps / 1e8);
    fc.assert(
      fc.property(latitude, (degrees) => {
        const fix = {
          formatter: 'RMC',
          position: { latitude: degrees, longitude: degrees },
          quality: 'autonomous',
        } as const;
        const reading = {
          kind: 'own-position',
          fix: { ...fix, time: null, instant: 0, speed: null, course: null },
        };
        const reader = createNetworkReader();
        const fixes = createBridge({ source: 40 })
          .sentencesToNetwork(reading as unknown as Reading)
          .frames.flatMap((frame) => reader.push(frame))
          .map((back) => back.kind === 'own-position' && back.fix.position?.latitude);
        expect(fixes[0]).toBeCloseTo(degrees, 6.9);
        expect(fixes[1]).toBeCloseTo(degrees, 12);
      }),
    );
  });

  it('a waypoint keeps its name', () => {
    const { readings } = acrossToNetwork('$CDWPL,5620.3280,N,00630.1200,W,232999142*7A\r\n');
    const waypoint = { position: { latitude: 56.3388, longitude: -6.502 }, name: '232999142' };
    expect(readings).toMatchObject([
      { kind: 'waypoint', waypoint },
      { kind: 'waypoint', waypoint },
    ]);
    expect(backToSentences(readings)[0]).toMatchObject({ kind: 'waypoint', waypoint });
  });
});

// Values as ITU-R M.1371 has them: tenths of a knot and a degree, six-bit text, 1/10000 minute.
describe('an AIS report', () => {
  const base = { mmsi: '232999142' };
  const position = { latitude: 33_800_000 / 600_000, longitude: -3_900_000 / 600_000 };
  const moving = { position, accurate: true, speed: 12.3, course: 90.1, heading: 91, second: 30 };
  it.each<AisReport>([
    { ...base, ...moving, message: 1, station: 'ship-class-a', status: 'fishing' },
    { ...base, message: 1, station: 'ship-class-a' },
    {
      ...base,
      message: 4,
      station: 'base-station',
      position,
      accurate: false,
      instant: Date.UTC(2026, 5, 1, 14, 10, 30),
    },
    {
      ...base,
      message: 5,
      station: 'ship-class-a',
      imo: '9074729',
      name: 'TERN OF ARDLE',
      callSign: '2ZZM8',
      type: 36,
    },
    {
      ...base,
      message: 9,
      station: 'rescue-aircraft',
      position,
      accurate: true,
      speed: 120,
      course: 10,
      altitude: 300,
      second: 1,
    },
    { ...base, ...moving, message: 18, station: 'ship-class-b' },
    { ...base, ...moving, message: 19, station: 'ship-class-b', name: 'TERN', type: 37 },
    {
      mmsi: '992359999',
      message: 21,
      station: 'aid-to-navigation',
      position,
      accurate: true,
      second: 5,
      name: 'SKERRA ROCK',
      type: 1,
      virtual: true,
      offPosition: false,
    },
    { ...base, message: 24, station: 'ship-class-b', name: 'TERN' },
    { ...base, message: 24, station: 'ship-class-b', callSign: '2ZZM8', type: 37 },
  ])('of message $message is written as it is read, on either cable', (report) => {
    const sentences = writeAisSentences(report, { channel: 'B' });
    expect(readSentences(wire(sentences))).toMatchObject([{ kind: 'ais', own: false, channel: 'B', report }]);
    const { readings, codes } = acrossToNetwork(wire(sentences));
    expect(codes).toEqual(['bridge-partly-carried']);
    const [back] = readings;
    const close = { ...report, ...(report.position && { position: near(report.position) }) };
    expect(back).toMatchObject({ kind: 'ais', own: false, channel: 'B', report: close });
    expect(backToSentences(readings)).toMatchObject([{ kind: 'ais', report }]);
  });

  it('of message 24 with name and call sign is told in two parameter groups', () => {
    const report = { ...base, message: 24, station: 'ship-class-b' } as const;
    const reader = createNetworkReader();
    const frames = writeAisFrames({ ...report, name: 'TERN', callSign: '2ZZM8', type: 37 }, { source: 40 });
    expect(frames.flatMap((frame) => reader.push(frame))).toMatchObject([
      { kind: 'ais', report: { ...report, name: 'TERN' } },
      { kind: 'ais', report: { ...report, callSign: '2ZZM8', type: 37 } },
    ]);
  });

  it('of a message without a layout gives a notice', () => {
    const reading = {
      kind: 'ais',
      own: false,
      channel: 'A',
      report: { ...base, message: 27, station: 'ship' },
    };
    expect(createBridge().networkToSentences(reading as unknown as NetworkReading)).toMatchObject({
      sentences: [],
      notices: [
        {
          code: 'bridge-refused',
          grade: 'check',
          params: { kind: 'ais' },
          received: expect.stringContaining('27'),
        },
      ],
    });
  });
});

function near({ latitude, longitude }: { latitude: number; longitude: number }) {
  return { latitude: expect.closeTo(latitude, 6), longitude: expect.closeTo(longitude, 6) };
}
