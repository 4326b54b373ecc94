import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeAllShipsCall,
  composeDistressAlert,
  composeIndividualCall,
  composePositionReply,
} from '../../src/call/index.ts';
import { createNetworkReader, type NetworkReading, writeCallFrames } from '../../src/network/index.ts';
import { formatReportedPosition, toReportedPosition } from '../../src/position/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { bytesOf, framesOf } from './support.ts';
import { payloadOf, recorded } from './vectors.ts';

const OWN = '232999871';
const read = (payload: Uint8Array, at?: number): NetworkReading[] => {
  const reader = createNetworkReader({ own: OWN });
  return framesOf({ pgn: 129808 }, payload).flatMap((frame) =>
    reader.push(at === undefined ? frame : { ...frame, at }),
  );
};
const codes = ([reading]: NetworkReading[]) => reading?.notices.map(({ code }) => code);
const callOf = ([reading]: NetworkReading[]): Call => {
  if (reading?.kind !== 'call') throw new Error(`a call, not ${reading?.kind}`);
  return reading.call;
};

describe('recorded calls say what three decoders read in them', () => {
  it.each(recorded.messages)('$id', ({ payload, says }) => {
    const call = callOf(read(bytesOf(payload)));
    const position =
      'position' in call && call.position !== null ? formatReportedPosition(call.position) : undefined;
    expect({ ...call, position }).toMatchObject(says);
  });

  it('keeps the finest position although the set that carries it is cut off', () => {
    const [alert] = recorded.messages;
    expect(codes(read(bytesOf(alert?.payload ?? '')))).toEqual(['network-text-cut-off']);
  });
});

// Field 4 and 5 by format or category: public list of parameter groups. deviation D-network-3 for the last two.
describe('a constructed call', () => {
  it.each([
    ['distress-alert', { kind: 'distress-alert', from: '232999218', nature: 'flooding' }, []],
    ['distress-alert-no-category', { kind: 'distress-alert', nature: 'flooding' }, []],
    [
      'position-request',
      { kind: 'position-request', from: '232999142', to: { kind: 'station', mmsi: OWN } },
      [],
    ],
    [
      'position-reply',
      { kind: 'position-reply', expansion: { speed: 6.2, course: 123.4, personsOnBoard: 4 } },
      [],
    ],
    ['individual-call', { kind: 'individual-call', category: 'routine', channel: '72' }, []],
    ['unable', { kind: 'unable-to-comply', reason: 'busy' }, []],
    ['all-ships-urgency', { kind: 'all-ships-call', category: 'urgency', channel: '16' }, []],
    ['relay', { kind: 'distress-relay', distressed: '232999218' }, ['network-distress-one-field']],
    ['acknowledgement-nature', { from: '002329990' }, ['network-distress-one-field']],
    ['identity-as-number', {}, ['network-identity-tenth-digit']],
  ])('%s is read', (id, says, notices) => {
    const readings = read(payloadOf(id));
    const [reading] = readings;
    expect(reading?.kind === 'call' && reading.call).toMatchObject(says);
    for (const code of notices) expect(codes(readings)).toContain(code);
    if (notices.length === 0) expect(codes(readings)).toEqual([]);
  });

  // One field of PGN 129808 is named "Nature of Distress or 1st Telecommand" in the public list of parameter groups.
  it.each([
    ['relay', 'telecommand'],
    ['acknowledgement-nature', 'nature'],
  ])('%s says whether the shared field is the telecommand or the nature', (id, meaning) => {
    const notices = read(payloadOf(id)).flatMap((reading) => reading.notices);
    expect(notices.find(({ code }) => code === 'network-distress-one-field')).toMatchObject({
      grade: 'check',
      params: { pgn: 129808, field: 'Nature of Distress or 1st Telecommand', meaning },
    });
  });

  it('tells a date that is 1024 weeks early, and uses the instant of the log', () => {
    const at = Date.UTC(2026, 5, 1, 10, 0, 5);
    const readings = read(payloadOf('date-early'), at);
    expect(codes(readings)).toContain('network-date-early');
    expect(readings[0]?.at).toBe(at);
  });

  it('counts a call that is written twice as one event', () => {
    const reader = createNetworkReader();
    const payload = payloadOf('distress-alert');
    const again = Uint8Array.from(payload);
    // The message number of the second differs: field 20, before the one expansion set of 11 bytes.
    again[again.length - 13] = 9;
    const events = [payload, again].flatMap((bytes, sequence) =>
      framesOf({ pgn: 129808 }, bytes, sequence).flatMap((frame) => reader.push({ ...frame, at: sequence })),
    );
    expect(events.map((event) => event.kind === 'call' && [event.event, event.repeat])).toEqual([
      [1, 0],
      [1, 1],
    ]);
  });
});

describe('the memory for repeats', () => {
  const at = 1_780_323_000_000;
  const written = (callers: readonly number[]) => {
    const reader = createNetworkReader();
    return callers
      .map((caller) => composeIndividualCall({ from: String(caller), to: OWN, channel: '72' }))
      .flatMap((call) => valueOf(writeCallFrames(call, { source: 3 })))
      .flatMap((frame) => reader.push({ ...frame, at }))
      .map((reading) => reading.kind === 'call' && reading.repeat);
  };
  const first = 232_999_001;
  const others = (count: number) => Array.from({ length: count }, (_, index) => first + 1 + index);

  // The number is the library's own: a bound of memory.
  it('holds 64 calls and forgets the one not heard for longest', () => {
    expect(written([first, ...others(63), first]).at(-1)).toBe(1);
    expect(written([first, ...others(64), first]).at(-1)).toBe(0);
    expect(written([first, ...others(63), first, ...others(64).slice(-1), first]).at(-1)).toBe(2);
  });
});

describe('a call written and read again', () => {
  const position = toReportedPosition({ latitude: 56.33, longitude: -6.502 });
  it.each<[string, Call]>([
    [
      'position reply',
      composePositionReply({ from: '232999142', to: OWN, position, time: { hour: 14, minute: 4 } }),
    ],
    ['individual call', composeIndividualCall({ from: '232999142', to: OWN, channel: '72' })],
    ['all ships call', composeAllShipsCall({ from: '002329990', category: 'safety', channel: '16' })],
    [
      'distress alert',
      composeDistressAlert({ from: '232999218', nature: 'sinking', position, time: { hour: 1, minute: 2 } }),
    ],
  ])('%s comes back the same', (_, call) => {
    const frames = valueOf(writeCallFrames(call, { source: 40, receivedAt: Date.UTC(2026, 5, 1, 14, 5) }));
    const reader = createNetworkReader({ own: OWN });
    expect(callOf(frames.flatMap((frame) => reader.push(frame)))).toEqual(call);
  });
});
