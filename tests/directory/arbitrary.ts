import fc from 'fast-check';
import type { StationOrigin, StationUpdate } from '../../src/directory/index.ts';
import { fromPattern, hostile } from '../identity/arbitrary.ts';

const origin: fc.Arbitrary<StationOrigin> = fc.constantFrom('typed', 'imported', 'ais', 'heard');
const awkward = fc.constantFrom(
  ...hostile,
  '',
  ' ',
  '"',
  '""',
  'a,b',
  'a;b',
  'a\\b',
  'a\\nb',
  'a:b',
  '=1+1',
  "'=1",
  "'",
  '-',
  '@x',
  'x\r\ny',
  'x\ny',
  '\t',
  'ä',
  '🚤',
  ';',
  '|',
  'mmsi',
  'Name',
  'END:VCARD',
  '\ufeff',
);
const text = fc.oneof(awkward, fc.string({ unit: 'grapheme', maxLength: 90 }), fc.string({ maxLength: 12 }));
const time = fc.integer({ min: 0, max: 4e12 });
const few = fc.constantFrom('232999142', '232999563', '002329990', '023299905', '823299904');

export const update: fc.Arbitrary<StationUpdate> = fc.record(
  {
    mmsi: fc.oneof(few, fromPattern('MIDxxxxxx'), fromPattern('00MIDxxxx')),
    origin,
    name: text,
    callSign: text,
    notes: text,
    groups: fc.array(fc.oneof(fc.constant('023299905'), fromPattern('0MIDxxxxx'), fromPattern('111MID000')), {
      maxLength: 3,
    }),
    heardAt: time,
    calledAt: time,
    extra: fc.array(fc.record({ label: text, text }), { maxLength: 3 }),
  },
  { requiredKeys: ['mmsi', 'origin'] },
);

export const updates: fc.Arbitrary<StationUpdate[]> = fc.array(update, { maxLength: 8 });
