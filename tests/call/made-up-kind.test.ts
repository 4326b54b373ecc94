import { describe, expect, it } from 'vitest';
import { type ComposedCall, callTable } from '../../src/call/call-table.ts';
import { emptyFields } from '../../src/call/fields.ts';
import {
  type Call,
  type CallFields,
  composeAutomaticServiceCall,
  compositions,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { CATEGORY, FIXED_TELECOMMAND, kindRow, kinds, NO_REMARK, SELF } from '../../src/call/kinds.ts';
import type { Part } from '../../src/call/part.ts';
import { sampleCalls } from './sample-calls.ts';
import { workedSequences } from './worked-sequences.ts';

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
const senders = { A: 'optional', D: 'optional', H: 'none', M: 'none', coast: 'required' };
const rowOf = (kind: string, end: string, hours = HOURS) => {
  const message = [CATEGORY, SELF, FIXED_TELECOMMAND, NO_REMARK, hours];
  return kindRow([kind, 'individual', '9.9', message, end, ['safety'], ['data'], senders] as never);
};
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
    const row = table.rowOf(request as unknown as ComposedCall);
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

  it('is told from its answer in a table of the two', () => {
    const two = callTable([
      rowOf('forecast-request', 'acknowledgement-requested'),
      rowOf('forecast', 'acknowledgement'),
    ]);
    expect(two.read(fields).call.kind).toBe('forecast-request');
    expect(two.read({ ...fields, end: 122 }).call.kind).toBe('forecast');
  });

  it('changes no other kind', () => {
    expect(decodeFields(fields).call.kind).toBe('individual-call');
    for (const call of Object.values(sampleCalls)) {
      const sent = encodeFields(call);
      expect(table.read(sent)).toMatchObject(decodeFields(sent));
    }
  });
});

describe('what was read', () => {
  /** A table of the invented kind alone that counts how often it reads one. */
  function counting() {
    const count = { reads: 0 };
    const read: Part['read'] = (...message) => {
      count.reads += 1;
      HOURS.read(...message);
    };
    const row = rowOf('forecast-request', 'acknowledgement-requested', { ...HOURS, read });
    return { ...callTable([row]), count };
  }
  const odd: CallFields = {
    ...fields,
    category: 100,
    expansion: [{ specifier: 107, symbols: [1, null], text: 'A' }],
  };
  const persons = [{ specifier: 106, symbols: [0, 3] }];

  it('is not read again while call and fields stay as they are', () => {
    const { read, fieldsOf, noticesOf, count } = counting();
    const { call, notices } = read(odd);
    expect(fieldsOf(call)).toBe(call.asReceived);
    expect(noticesOf(call.asReceived as CallFields)).toBe(notices);
    expect(count.reads).toBe(1);
  });

  it('is read once more after it was stored and restored', () => {
    const { read, fieldsOf, count } = counting();
    const copy = structuredClone(read(odd).call);
    for (const _ of [1, 2]) expect(fieldsOf(copy)).toBe(copy.asReceived);
    expect(count.reads).toBe(2);
  });

  it('is read again when the fields were changed in place', () => {
    const { read, fieldsOf, noticesOf } = counting();
    const { call } = read(odd);
    const received = call.asReceived as { time: number[]; category: number } & CallFields;
    expect(noticesOf(received).map(({ code }) => code)).toContain('call-category-unusual');
    received.time = [0, 12];
    expect(fieldsOf(call)).toEqual({ ...fields, category: 100 });
    received.category = 108;
    expect(noticesOf(received).map(({ code }) => code)).not.toContain('call-category-unusual');
  });

  it('is not read again when an expansion that is understood comes later', () => {
    const { read, expand, count } = counting();
    const before = read(fields);
    const later = expand(before, persons);
    expect(later).toEqual({
      call: { ...request, expansion: { personsOnBoard: 3 } },
      notices: [],
      exact: true,
      fields: { ...fields, expansion: persons },
    });
    expect(count.reads).toBe(1);
    expect(expand(later, [])).toEqual(read(fields));
  });

  it('is read again with an expansion that is not understood, or beside what is odd already', () => {
    const { read, expand } = counting();
    expect(expand(read(fields), odd.expansion)).toEqual(read({ ...fields, expansion: odd.expansion }));
    expect(expand(read(odd), persons)).toEqual(read({ ...odd, expansion: persons }));
    const strange = { ...emptyFields, format: 113 };
    expect(expand(read(strange), persons)).toEqual(read({ ...strange, expansion: persons }));
  });
});

// An alert has no category and nothing follows a message: ITU-R M.493-16 Annex 1 tables, from memory.
describe('a call that was received otherwise than the tables compose it', () => {
  const heard = (name: string, change: Partial<CallFields>) =>
    decodeFields({ ...encodeFields(sampleCalls[name] as Call), ...change }).call;

  it('is composed again when one of its values was changed in place', () => {
    const alert = heard('distress-alert to all-stations', { category: 112 }) as Call<'distress-alert'>;
    expect(encodeFields(alert).category).toBe(112);
    (alert.position as { latitude: { degrees: number } }).latitude.degrees = 55;
    expect(encodeFields(alert)).toMatchObject({ category: null, position: [15, 52, 0, 6, 30] });
  });

  it('is composed where what was received no longer means the same', () => {
    const test = heard('test-call to station', {
      rest: [9],
      expansion: [{ specifier: 106, symbols: [0, 3] }],
    });
    expect(encodeFields(test).rest).toEqual([9]);
    (test.asReceived?.expansion[0]?.symbols as number[])[1] = 4;
    expect(encodeFields(test)).toMatchObject({ rest: [], expansion: [{ specifier: 106, symbols: [0, 3] }] });
  });

  it('is composed whole where some of what was received is missing', () => {
    const test = heard('test-call to station', { rest: [9] });
    const { telephone: _, ...some } = test.asReceived as CallFields;
    expect(encodeFields({ ...test, asReceived: some as CallFields })).toEqual({
      ...some,
      telephone: null,
      rest: [],
    });
  });
});

// Worked sequences: their sources are in shared/call/worked-sequences.json.
describe('a table that is built again from its rows', () => {
  const again = () =>
    kinds.map(({ kind, format, clause, message, end, categories, telecommands, senders }) =>
      kindRow([
        kind,
        format,
        clause.replace(/.* tables? /, ''),
        message,
        end,
        categories,
        telecommands,
        senders,
      ] as never),
    );

  it('reads and composes the worked sequences', () => {
    const built = callTable(again());
    for (const { name, fields: sent, call } of workedSequences) {
      expect(built.read(sent), name).toMatchObject({ call, notices: [] });
      expect(built.compose(call), name).toEqual(sent);
    }
  });

  // Ten 9s and 8888: ITU-R M.541-11 Annex 1 §2.
  it('leaves a position and a time unknown', () => {
    for (const { order, unsaid } of again().filter((row) => row.order.includes('position')))
      expect(unsaid(), order.join()).toMatchObject({ position: [99, 99, 99, 99, 99], time: [88, 88] });
  });

  it('is the same table', () => {
    const built = callTable(again());
    const dialled = composeAutomaticServiceCall({ from: '232999871', to: '002329990', telephone: '5550123' });
    for (const call of [...Object.values(sampleCalls), dialled]) {
      expect(built.read(built.compose(call))).toMatchObject({ call, notices: [] });
      expect(built.compose(call)).toEqual(encodeFields(call));
    }
    expect(again().map(({ message: _, unsaid: __, ...composition }) => composition)).toEqual(compositions);
  });
});
