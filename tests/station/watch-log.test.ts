import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeIndividualCall } from '../../src/call/index.ts';
import { readRecords } from '../../src/directory/csv-record.ts';
import { extendWatchLog, type LogEntry, writeLogCsv, writeLogJson } from '../../src/station/index.ts';
import { coast, friend, own } from './happenings.ts';
import { Radio } from './radio.ts';

const recordsOf = (text: string) => [...readRecords(text)];

/** A watch with a call sent, one heard, and a correction. */
function watch(): readonly LogEntry[] {
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'fix', position: { latitude: 56.34, longitude: -6.5 }, source: 'instrument' });
  radio.give({ kind: 'call', call: composeIndividualCall({ from: own, to: coast }) });
  radio.finish();
  radio.give({
    kind: 'received',
    call: composeIndividualCall({ from: friend, to: own, channel: '72' }),
    verdict: 'repaired',
  });
  radio.give({ kind: 'note', text: 'Wind "south-west", 4\r\nbarometer falling' });
  radio.give({ kind: 'note', text: 'Wind was south-south-west', corrects: 3 });
  return radio.log;
}

describe('the watch log', () => {
  it('has every call heard and sent, when, where, and how well', () => {
    expect(watch()).toMatchObject([
      {
        number: 1,
        what: 'sent',
        call: { to: { mmsi: coast } },
        position: { latitude: 56.34, longitude: -6.5 },
      },
      { number: 2, what: 'received', call: { from: friend }, verdict: 'repaired' },
      { number: 3, what: 'note' },
      { number: 4, what: 'correction', corrects: 3 },
    ]);
  });

  it('grows at its end only', () => {
    const [first, second, ...others] = watch() as [LogEntry, LogEntry, ...LogEntry[]];
    const log = extendWatchLog([], [first]);
    expect(extendWatchLog(log, [second, ...others])).toEqual([first, second, ...others]);
    expect(log).toEqual([first]);
    expect(() => extendWatchLog(log, [first]), 'twice').toThrow(RangeError);
    expect(() => extendWatchLog(log, others), 'a gap').toThrow('expected entry 2 next, got 3');
  });

  it('logs what is meant for others only where the owner wants it', () => {
    const call = composeIndividualCall({ from: friend, to: coast });
    for (const logOthers of [false, true]) {
      const radio = new Radio({ mmsi: own, logOthers });
      radio.give({ kind: 'received', call, verdict: 'clean' });
      expect(radio.log).toHaveLength(logOthers ? 1 : 0);
      expect(radio.phases).toEqual([]);
    }
  });

  it('is written as CSV after RFC 4180: a reader gets the same fields back', () => {
    const log = watch();
    const [head, ...records] = recordsOf(writeLogCsv(log));
    expect(head?.fields.slice(0, 4)).toEqual(['number', 'time', 'what', 'text']);
    expect(records.map(({ fields }) => fields[3])).toEqual(log.map(({ text }) => text));
    expect(records[1]?.fields).toEqual([
      '2',
      '2026-06-01T18:00:00.600Z',
      'received',
      expect.stringContaining('individual call'),
      'individual-call',
      friend,
      own,
      'repaired',
      '56.340000',
      '-6.500000',
      '',
      '',
    ]);
  });

  it('lets no spreadsheet take a note for a formula', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'note', text: '=1+1' });
    expect(recordsOf(writeLogCsv(radio.log))[1]?.fields[3]).toBe("'=1+1");
  });

  it('survives any text and any instant', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.double(), (text, at) => {
        const entry: LogEntry = {
          kind: 'log-entry',
          number: 1,
          at,
          what: 'note',
          text,
          dialogue: null,
          position: null,
        };
        const marked = /^'*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
        expect(recordsOf(writeLogCsv([entry]))[1]?.fields[3]).toBe(marked);
      }),
    );
  });

  it('is written as JSON with nothing left out', () => {
    const log = watch();
    expect(JSON.parse(writeLogJson(log))).toEqual(log);
    expect(JSON.parse(writeLogJson([]))).toEqual([]);
  });
});
