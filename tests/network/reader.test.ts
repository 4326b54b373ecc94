import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createNetworkReader,
  formatFrameLine,
  isNetworkLog,
  type NetworkFrame,
  type NetworkReading,
  readNetworkLog,
  writeNodeFrames,
  writeWaypointFrames,
} from '../../src/network/index.ts';
import { PARAMETER_GROUPS } from '../../src/network/message/layout.ts';
import { stationUpdates } from '../../src/report/index.ts';
import { bytesOf, framesOf } from './support.ts';
import { messageOf } from './vectors.ts';

const framesFor = (id: string): NetworkFrame[] => {
  const message = messageOf(id);
  const payload = bytesOf(message.payload);
  const fast = PARAMETER_GROUPS.find(({ pgn }) => pgn === message.pgn)?.fast;
  const [frame] = framesOf({ pgn: message.pgn }, payload);
  return fast ? framesOf({ pgn: message.pgn }, payload) : [{ id: (frame as NetworkFrame).id, data: payload }];
};
const read = (...ids: string[]): NetworkReading[] => {
  const reader = createNetworkReader();
  return ids.flatMap(framesFor).flatMap((frame) => reader.push(frame));
};

// Fields: public list of parameter groups of IEC 61162-3; units converted by hand.
describe('a message is read as', () => {
  it.each([
    ['position', { kind: 'own-position', fix: { formatter: 'PGN 129025', quality: 'unstated' } }],
    ['position-not-available', { kind: 'own-position', fix: { position: null } }],
    ['course-and-speed', { kind: 'motion', course: 123.398, speed: 6.201 }],
    ['variation', { kind: 'motion', variation: -2.498 }],
    [
      'gnss',
      {
        kind: 'own-position',
        fix: {
          position: { latitude: 56.3388, longitude: -6.502 },
          quality: 'differential',
          instant: Date.UTC(2026, 5, 1, 14, 10, 30),
          time: { hour: 14, minute: 10, second: 30 },
        },
      },
    ],
    [
      'ais-class-a',
      {
        kind: 'ais',
        own: false,
        channel: 'A',
        report: { mmsi: '232999218', speed: 12.3, course: 90, heading: 90, status: 'fishing', second: 30 },
      },
    ],
    ['ais-name', { kind: 'ais', channel: 'B', report: { message: 24, mmsi: '232999871', name: 'MERROW' } }],
    ['ais-safety-text', { kind: 'safety-text', from: '970999123', to: null, text: 'SART TEST' }],
    [
      'ais-addressed-safety-text',
      { kind: 'safety-text', from: '970999123', to: '232999871', text: 'SART TEST' },
    ],
    ['radio', { kind: 'radio', receiveKHz: 156800, transmitKHz: 156800, channel: '900016', power: 25 }],
    ['man-overboard', { kind: 'man-overboard', status: 'activated', mmsi: '232999871' }],
    ['address-claim', { kind: 'node', source: 3, manufacturer: 2046, function: 190, deviceClass: 70 }],
    [
      'waypoint-list',
      { kind: 'waypoint', waypoint: { position: { latitude: 56.3388, longitude: -6.502 }, name: 'TERN' } },
    ],
  ])('%s', (id, says) => {
    expect(read(id)).toMatchObject([says]);
    expect(read(id)[0]?.notices).toEqual([]);
  });

  it('something without a known meaning is kept whole', () => {
    const reader = createNetworkReader();
    expect(reader.push({ id: 0x09f10d03, data: Uint8Array.of(1, 2, 3) })).toMatchObject([
      { kind: 'other', sources: [{ pgn: 127245, payload: '010203' }] },
    ]);
  });
});

describe('a group that no reading has a kind for', () => {
  const rudder = { id: 0x09f10d03, data: Uint8Array.of(1, 2, 3) };
  const [satellites] = framesOf({ pgn: 129540 }, new Uint8Array(30)) as [NetworkFrame];

  it('is skipped on request, with what is torn of it, and nothing else is', () => {
    const skipping = createNetworkReader({ other: 'skip' });
    const frames = [rudder, satellites, ...framesFor('position'), ...framesFor('ais-class-a')];
    const kinds = frames.flatMap((frame) => skipping.push(frame)).map(({ kind }) => kind);
    expect([kinds, skipping.flush()]).toEqual([['own-position', 'ais'], []]);
  });

  it('is kept otherwise', () => {
    const keeping = createNetworkReader({ other: 'keep' });
    const kinds = [rudder, satellites].flatMap((frame) => keeping.push(frame)).map(({ kind }) => kind);
    expect([kinds, keeping.flush().map(({ kind }) => kind)]).toEqual([['other'], ['damaged']]);
    expect(() => createNetworkReader({ other: 'drop' as never })).toThrow(TypeError);
  });
});

describe('readings of the network', () => {
  it('tell a directory who was heard', () => {
    const updates = stationUpdates(read('ais-name', 'position-reply'));
    expect(updates).toMatchObject([
      { mmsi: '232999871', origin: 'ais', name: 'MERROW' },
      { mmsi: '232999142', origin: 'heard' },
    ]);
  });

  it('are plain data', () => {
    const readings = read('gnss', 'ais-class-a', 'position-reply', 'address-claim');
    expect(JSON.parse(JSON.stringify(readings))).toEqual(readings);
  });
});

describe('what was written', () => {
  const position = { latitude: 56.3388, longitude: -6.502 };
  it('as a waypoint is read as a waypoint, thrice with the place to go to', () => {
    const reader = createNetworkReader();
    const from = { distance: 1852, bearing: 45 };
    const readings = writeWaypointFrames({ position, name: 'TERN' }, { source: 40, from }).flatMap((frame) =>
      reader.push(frame),
    );
    expect(readings.map((reading) => reading.kind === 'waypoint' && reading.waypoint)).toEqual([
      { position, name: 'TERN' },
      { position, name: 'TERN' },
      { position, name: '' },
    ]);
  });

  it('as a node is read as a node', () => {
    const reader = createNetworkReader();
    const node = {
      unique: 9,
      manufacturer: 2046,
      function: 190,
      deviceClass: 70,
      model: 'Skerra',
      software: '1',
      serial: '7',
    };
    expect(writeNodeFrames(node, { source: 40 }).flatMap((frame) => reader.push(frame))).toMatchObject([
      { kind: 'node', source: 40, manufacturer: 2046, function: 190, deviceClass: 70 },
      { kind: 'node', source: 40, model: 'Skerra' },
    ]);
  });

  it.each([
    () => writeWaypointFrames({ position, name: 'X' }, { source: 252 }),
    () => writeWaypointFrames({ position, name: 'X'.repeat(254) }, { source: 40 }),
    () => writeWaypointFrames({ position, name: 'X' }, { source: 40, number: -1 }),
    () => writeWaypointFrames({ position: { latitude: 91, longitude: 0 }, name: 'X' }, { source: 40 }),
    () => writeWaypointFrames({ position, name: 'X' }, { source: 40, sequence: 8 }),
  ])('is refused out of range: %#', (write) => {
    expect(write).toThrow(RangeError);
  });
});

// Forms: manual pages of can-utils (candump, canplayer), Debian 2020.11; link type 227 of the list of link-layer headers.
describe('a log', () => {
  const line = '(1780322400.250000) can0 09F80123#004B942188F71FFC';
  it.each([
    line,
    '(1780322400.250000) can0 09f80123#004b942188f71ffc R',
    '(1780322400.250000)  can0  09F80123   [8]  00 4B 94 21 88 F7 1F FC',
    '(1780322400.250000)  can0  RX - -  09F80123   [8]  00 4B 94 21 88 F7 1F FC',
    'can0  09F80123   [8]  00 4B 94 21 88 F7 1F FC',
    '<0x09f80123> [8] 00 4b 94 21 88 f7 1f fc',
  ])('with %s gives a position', (text) => {
    expect(readNetworkLog(`${text}\r\n`)).toMatchObject([
      { kind: 'own-position', at: text.startsWith('(') ? 1780322400250 : null, line: 1 },
    ]);
  });

  it('passes over frames that the network does not have, comments and blank lines', () => {
    const others = [
      '# comment',
      '',
      '(1.0) can0 123#0102',
      '(1.0) can0 09F80123#R8',
      '(1.0) can0 09F80123##1AABB',
      '(1.0) can0 20000004#0000000000000000',
    ];
    expect(readNetworkLog(others.join('\n'))).toEqual([]);
  });

  it.each([
    'nonsense',
    '(1.0) can0 09F80123#012',
    '(1.0) can0 09F8012#01',
    'can0 09F80123 [8] 00',
    'x'.repeat(400),
  ])('tells that %s is not a frame', (text) => {
    expect(readNetworkLog(text)).toMatchObject([{ kind: 'damaged', issues: [{ code: 'network-log-line' }] }]);
  });

  it('has the lines of the file as its line numbers, whatever ends them', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const log = ['', line, '', '# comment', 'nonsense', '\u0000nonsense', line, ''].join(end);
      expect(readNetworkLog(log).map(({ kind, line: number }) => [kind, number])).toEqual([
        ['own-position', 2],
        ['damaged', 5],
        ['damaged', 6],
        ['own-position', 7],
      ]);
    }
  });

  it('is known by its beginning', () => {
    const bytes = new TextEncoder().encode(line);
    for (const log of [line, `cut off\n# comment\n\n${line}`, bytes, capture(227), capture(227, 4)])
      expect(isNetworkLog(log)).toBe(true);
    const sentence = '$GPGLL,5620.1999,N,00630.0833,W,141000,A,A*4F\r\n';
    const others = ['', sentence, 'nonsense', capture(1), new Uint8Array(8), '(1.0) can0 123#0102'];
    for (const log of [...others, undefined, null, 7, {}]) expect(isNetworkLog(log as never)).toBe(false);
  });

  it('is the same as text and as bytes of text', () => {
    expect(readNetworkLog(new TextEncoder().encode(line))).toEqual(readNetworkLog(line));
  });

  it('writes a frame as it is read', () => {
    const frame = { id: 0x09f80123, data: bytesOf('004b942188f71ffc'), at: 1780322400250 };
    expect(formatFrameLine(frame)).toBe(line);
  });

  const capture = (linkType: number, cut = 0) => {
    const bytes = new Uint8Array(24 + 32 - cut);
    const view = new DataView(bytes.buffer);
    view.setUint32(0, 0xa1b2c3d4, true);
    view.setUint32(20, linkType, true);
    view.setUint32(24, 1780322400, true);
    view.setUint32(28, 250000, true);
    view.setUint32(32, 16, true);
    if (cut > 0) return bytes;
    view.setUint32(40, 0x89f80123, false);
    bytes[44] = 8;
    bytes.set(bytesOf('004b942188f71ffc'), 48);
    return bytes;
  };
  it('is read from a capture file of link type 227', () => {
    expect(readNetworkLog(capture(227))).toEqual(readNetworkLog(line));
  });
  it.each([
    [capture(1), 'network-log-link-type'],
    [capture(227, 4), 'network-log-cut-off'],
  ])('that is another capture file, or cut off, says so: %#', (bytes, code) => {
    expect(readNetworkLog(bytes)).toMatchObject([{ kind: 'damaged', issues: [{ code }] }]);
  });
});

describe('nothing throws', () => {
  it('whatever frames come', () => {
    const frame = fc.record({
      id: fc.oneof(
        fc.integer({ min: 0, max: 0x1fffffff }),
        fc.constantFrom(...PARAMETER_GROUPS.map(({ pgn }) => 4 * 2 ** 26 + pgn * 256 + 3)),
      ),
      data: fc.uint8Array({ maxLength: 8 }),
      at: fc.option(fc.double({ noNaN: true, min: -1e15, max: 1e15 }), { nil: undefined as never }),
    });
    fc.assert(
      fc.property(fc.array(frame, { maxLength: 60 }), (frames) => {
        const reader = createNetworkReader({ own: '232999871' });
        for (const one of frames) reader.push(one);
        reader.flush();
      }),
    );
  });

  it.each([
    null,
    undefined,
    7,
    {},
    { id: -1, data: new Uint8Array(8) },
    { id: 1, data: [1, 2] },
    { id: 1, data: new Uint8Array(9) },
    { id: 1, data: new Uint8Array(8), at: Number.NaN },
  ])('whatever is no frame: %o', (value) => {
    expect(createNetworkReader().push(value as never)).toMatchObject([
      { kind: 'damaged', issues: [{ code: 'network-not-a-frame' }] },
    ]);
  });

  it('whatever a getter throws', () => {
    const frame = {
      get id(): number {
        throw new Error('a getter');
      },
    };
    expect(createNetworkReader().push(frame as never)).toMatchObject([{ kind: 'damaged' }]);
  });

  it('whatever a log holds', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.uint8Array({ maxLength: 300 })), (log) => {
        readNetworkLog(log);
      }),
    );
    expect(readNetworkLog(undefined as never)).toMatchObject([
      { issues: [{ code: 'network-log-not-text' }] },
    ]);
  });
});
