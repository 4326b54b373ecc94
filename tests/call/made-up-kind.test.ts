import { describe, expect, it } from 'vitest';
import { callTable } from '../../src/call/call-table.ts';
import { type Call, type CallFields, decodeFields, encodeFields } from '../../src/call/index.ts';
import { CATEGORY, FIXED_TELECOMMAND, kindRow, kinds, NO_REMARK, SELF } from '../../src/call/kinds.ts';
import type { Part } from '../../src/call/part.ts';
import { sampleCalls } from './sample-calls.ts';

// Invented: no standard has a call that asks for a forecast of so many hours. It borrows first telecommand 106 (data).
const HOURS: Part = {
  fields: ['time'],
  properties: { hours: ['number', (value) => typeof value === 'number'] },
  read: ({ time }, into) => {
    into.hours = time?.[1] ?? null;
  },
  write: ({ hours }, into) => {
    into.time = [0, hours as number];
  },
};
const message = [CATEGORY, SELF, FIXED_TELECOMMAND, NO_REMARK, HOURS];
const senders = { A: 'optional', D: 'optional', H: 'none', M: 'none', coast: 'required' };
const rowOf = (kind: string, end: string) =>
  kindRow([kind, 'individual', '9.9', message, end, ['safety'], ['data'], senders] as never);
const table = callTable([
  ...kinds,
  rowOf('forecast-request', 'acknowledgement-requested'),
  rowOf('forecast', 'acknowledgement'),
]);

const fields: CallFields = {
  ...encodeFields(sampleCalls['test-call to station'] as Call),
  telecommand1: 106,
  receive: null,
  transmit: null,
  time: [0, 24],
};
const request = {
  kind: 'forecast-request',
  to: { kind: 'station', mmsi: '002329990' },
  from: '232999871',
  category: 'safety',
  hours: 24,
};

describe('a kind of call that is added as a row', () => {
  it('is told, read and written', () => {
    expect(table.read(fields)).toMatchObject({ call: request, notices: [] });
    expect(table.read({ ...fields, end: 122 }).call.kind).toBe('forecast');
    expect(table.fieldsOf(request as unknown as Call)).toEqual(fields);
  });

  it('has its composition, its count of characters and its senders', () => {
    const row = table.rowOf(request as unknown as Call);
    expect(row).toMatchObject({ clause: 'ITU-R M.493-16 Annex 1 table 9.9', characters: 17, senders });
    expect(row?.order.slice(-4)).toEqual(['self', 'telecommand1', 'telecommand2', 'time']);
  });

  it('keeps what was received beside it, with notices', () => {
    const received = { ...fields, category: 100, header: true };
    const { call, notices } = table.read(received);
    expect(call).toMatchObject({ ...request, category: 'routine', asReceived: received });
    expect(notices.map(({ code }) => code)).toEqual(['call-category-unusual', 'call-field-unexpected']);
    expect(table.fieldsOf(call)).toBe(call.asReceived);
    const changed = { ...call, hours: 12 } as unknown as Call;
    expect(table.fieldsOf(changed)).toEqual({ ...fields, category: 100, time: [0, 12] });
  });

  it('changes no other kind', () => {
    expect(decodeFields(fields).call.kind).toBe('individual-call');
    for (const call of Object.values(sampleCalls)) {
      const sent = encodeFields(call);
      expect(table.read(sent)).toMatchObject(decodeFields(sent));
    }
  });
});
