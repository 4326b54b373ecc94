import { describe, expect, it } from 'vitest';
import { type CallFields, emptyFields } from '../../src/call/fields.ts';
import { fillWhatIsUnsaid } from '../../src/call/internal.ts';
import { workedSequences } from './worked-sequences.ts';

const filled = (fields: Partial<CallFields>): CallFields => {
  const draft = { ...emptyFields, ...fields };
  fillWhatIsUnsaid(draft);
  return draft;
};
/** The fields of a worked sequence as they are on the air. */
const worked = (name: string): CallFields =>
  workedSequences.find((row) => row.name === name)?.fields as CallFields;

const NO_INFORMATION = [126, 126, 126];
/** Ten 9s and 8888 for a position and a time that are not known: ITU-R M.541-11 Annex 1 §2. */
const NO_POSITION = [99, 99, 99, 99, 99];
const NO_TIME = [88, 88];
const ship = [23, 29, 99, 21, 80];
const position = [15, 62, 0, 6, 30];

// deviation: D-sentence-9; ITU-R M.493-16, symbols for "no information".
describe('what a cable leaves empty and the air carries', () => {
  const left = { position: null, time: null, header: false, subsequent: null, receive: null, transmit: null };

  it.each(['test-call', 'position-request'])(
    'is "no information" in both channel elements of a %s',
    (name) => {
      expect(filled({ ...worked(name), ...left })).toEqual(worked(name));
    },
  );

  it.each([
    ['distress-alert-full', { subsequent: 126 }],
    ['distress-acknowledgement', { subsequent: 126 }],
    ['position-reply', { header: true }],
  ])('is an unknown position at an unknown time in a %s', (name, others) => {
    const fields = worked(name);
    expect(filled({ ...fields, ...left })).toEqual({
      ...fields,
      position: NO_POSITION,
      time: NO_TIME,
      ...others,
    });
  });

  it('is only what is empty', () => {
    const fields = worked('distress-alert-full');
    expect(filled({ ...fields, time: null, subsequent: null })).toEqual({
      ...fields,
      time: NO_TIME,
      subsequent: 126,
    });
    for (const { name, fields: whole } of workedSequences) expect(filled(whole), name).toEqual(whole);
  });
});

// deviation: D-call-8
describe('a second channel element left empty', () => {
  const individual = worked('individual-routine-request');

  it('repeats the VHF channel of a call to one station', () => {
    expect(filled({ ...individual, transmit: null })).toEqual(individual);
    expect(filled({ ...individual, receive: [90, 0, 77], transmit: [90, 0, 6] }).transmit).toEqual([
      90, 0, 6,
    ]);
  });

  it('says nothing beside a frequency, or in a call to many', () => {
    expect(filled({ ...individual, receive: [2, 18, 20], transmit: null }).transmit).toEqual(NO_INFORMATION);
    expect(filled({ ...worked('group-routine'), transmit: null })).toEqual(worked('group-routine'));
  });

  it('stays empty where the call has no second element', () => {
    const reply = { ...worked('position-reply'), receive: [90, 0, 72] };
    expect(filled(reply)).toEqual(reply);
  });
});

// What makes a distress: ITU-R M.493-16 tables A1-4.2 to A1-4.4, from memory.
describe('a call of which too little came', () => {
  it.each([{ distressed: ship }, { nature: 101 }])(
    'is filled as a distress call where it has a part of one: %j',
    (sign) => {
      const heard = { ...emptyFields, format: 116, category: 112, ...sign };
      expect(filled(heard)).toEqual({ ...heard, position: NO_POSITION, time: NO_TIME, subsequent: 126 });
    },
  );

  it('is left alone where it has none', () => {
    for (const heard of [{ format: 118 }, { format: 118, receive: [90, 0, 72] }])
      expect(filled(heard)).toEqual({ ...emptyFields, ...heard });
  });

  it('is left alone where it has a position that its kind does not carry', () => {
    const odd = { ...worked('test-call'), position, receive: null, transmit: null };
    expect(filled(odd)).toEqual(odd);
  });
});
