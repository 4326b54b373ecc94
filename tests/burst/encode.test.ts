import { describe, expect, it } from 'vitest';
import { encodeCall } from '../../src/burst/index.ts';
import { emptyFields } from '../../src/call/fields.ts';
import {
  composeGroupCall,
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
} from '../../src/call/index.ts';

// Invented stations of the demo scenario.
const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
const group = composeGroupCall({ from: '232999871', to: '023299905', channel: '77' });

describe('a call that is not whole', () => {
  // A sentence on the called ship's own wire leaves out whom the call was for: on the air it would be another call.
  it('is not encoded without its addressee or sender', () => {
    expect(() => encodeCall({ ...call, to: { kind: 'station', mmsi: null } })).toThrow(/address/);
    expect(() => encodeCall({ ...group, to: { kind: 'group', mmsi: null } })).toThrow(RangeError);
    expect(() => encodeCall({ ...call, from: null })).toThrow(/self-identification/);
  });

  it('is not encoded with an unreadable character', () => {
    const fields = { ...emptyFields, format: 99, rest: [1, null, 3], end: 127 };
    expect(() => encodeCall({ kind: 'unrecognised-call', from: null, to: null, asReceived: fields })).toThrow(
      /unreadable/,
    );
    const empty = { kind: 'unrecognised-call', from: null, to: null, asReceived: emptyFields } as const;
    expect(() => encodeCall(empty)).toThrow(RangeError);
  });

  it('is encoded when it fits no kind but every symbol is there', () => {
    const fields = { ...emptyFields, format: 99, rest: [1, 2, 3], end: 127 };
    const burst = encodeCall({ kind: 'unrecognised-call', from: null, to: null, asReceived: fields });
    expect(burst.information).toEqual([99, 99, 1, 2, 3, 127]);
  });

  it('is not encoded with expansion text that has no agreed symbols', () => {
    const request = composePositionRequest({ from: '232999871', to: '232999142' });
    const reply = composePositionReply({ call: request, position: null, time: null });
    expect(() => encodeCall({ ...reply, expansion: { stationName: 'MERROW' } })).toThrow(/text/);
  });
});

describe('a burst', () => {
  it('is plain data', () => {
    const burst = encodeCall(call);
    expect(JSON.parse(JSON.stringify(burst))).toEqual(burst);
    expect(structuredClone(burst)).toEqual(burst);
  });

  // ITU-R M.493: bits = 20 + 20 (N + 10), N counting the format specifier twice (by calculation).
  it('lasts 533.3 ms for an individual call at 1200 baud', () => {
    expect(encodeCall(call).bits.length / 1.2).toBeCloseTo(533.3, 1);
  });
});
