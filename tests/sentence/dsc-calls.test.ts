import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/index.ts';
import { encodeFields } from '../../src/call/index.ts';
import type { Reading } from '../../src/report/index.ts';
import { readSentences, writeSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Field rules: IEC 61162-1, DSC and DSE sentences, as restated in equipment papers; symbols of ITU-R M.493, from memory.
const own = '232999871';
const readingOf = (body: string, direction: 'received' | 'commanded' = 'received'): Reading<'call'> =>
  readSentences(line(body), { own, direction })[0] as Reading<'call'>;
const callOf = (body: string, direction?: 'received' | 'commanded'): Call => readingOf(body, direction).call;
const codesOf = (body: string): string[] => readingOf(body).notices.map(({ code }) => code);

describe('a sentence with empty fields', () => {
  it('of an alert has no position, no time and no wish', () => {
    expect(callOf('CDDSC,12,2329992180,12,05,,,,,,S,')).toEqual({
      kind: 'distress-alert',
      to: { kind: 'all-stations' },
      from: '232999218',
      nature: 'sinking',
      position: null,
      time: null,
      subsequent: null,
    });
  });

  it('of an acknowledgement with a nature only is about a ship unknown', () => {
    expect(callOf('CDDSC,16,0023299900,12,10,,,,,05,S,')).toEqual({
      kind: 'distress-acknowledgement',
      to: { kind: 'all-ships' },
      from: '002329990',
      distressed: null,
      nature: 'sinking',
      position: null,
      time: null,
      subsequent: null,
    });
  });

  it('of an acknowledgement with a ship only has no nature', () => {
    expect(callOf('CDDSC,16,0023299900,,10,,,,2329992180,,S,')).toMatchObject({
      kind: 'distress-acknowledgement',
      distressed: '232999218',
      nature: null,
    });
  });

  it('of a distress category, without ship and nature, is about a ship in distress all the same', () => {
    expect(callOf('CDDSC,16,0023299900,12,12,,,,,,S,')).toEqual({
      kind: 'distress-relay',
      to: { kind: 'all-ships' },
      from: '002329990',
      distressed: null,
      nature: null,
      position: null,
      time: null,
      subsequent: null,
    });
  });

  it('of a position answer has no position; of a request none is wanted', () => {
    expect(callOf('CDDSC,20,2329991420,08,21,26,,,,,B,')).toEqual({
      kind: 'position-reply',
      to: { kind: 'station', mmsi: own },
      from: '232999142',
      category: 'safety',
      position: null,
      time: null,
      unsolicited: false,
    });
    expect(callOf('CDDSC,20,2329991420,08,21,26,,,,,R,')).toEqual({
      kind: 'position-request',
      to: { kind: 'station', mmsi: own },
      from: '232999142',
      category: 'safety',
    });
    expect(callOf('CDDSC,20,2329991420,08,21,26,1562000630,,,,B,')).toMatchObject({ time: null });
    expect(callOf('CDDSC,20,2329991420,08,21,26,1562000630,,,,B,')).not.toHaveProperty('asReceived');
  });

  it('of a call has no channel and no second telecommand', () => {
    expect(callOf('CDDSC,20,2329991420,00,00,,,,,,R,')).toEqual({
      kind: 'individual-call',
      to: { kind: 'station', mmsi: own },
      from: '232999142',
      category: 'routine',
      firstTelecommand: 'telephony-simplex',
      secondTelecommand: null,
      channel: null,
    });
  });

  it('in all of its places is no call that is known, and has no end', () => {
    expect(codesOf('CDDSC,,,,,,,,,,,')).toEqual(['sentence-acknowledgement', 'call-unrecognised']);
    expect(codesOf('CDDSC')).toEqual([
      'sentence-fields-missing',
      'sentence-acknowledgement',
      'call-unrecognised',
    ]);
  });
});

describe('field 2', () => {
  it.each([
    ['CDDSC,20,2329991420,00,00,26,,,,,R,', '232999142', { kind: 'station', mmsi: own }],
    ['CDDSC,23,2329991420,00,00,26,,,,,R,', '232999142', { kind: 'station', mmsi: own }],
    ['CDDSC,14,2329991420,00,00,26,,,,,S,', '232999142', { kind: 'group', mmsi: null }],
    ['CDDSC,16,2329991420,08,00,26,,,,,S,', '232999142', { kind: 'all-ships' }],
    ['CDDSC,12,2329992180,,05,00,,,,,S,', '232999218', { kind: 'all-stations' }],
    ['CDDSC,20,,00,00,26,,,,,R,', null, { kind: 'station', mmsi: own }],
  ])('of %s, received, is the caller', (body, from, to) => {
    expect(callOf(body)).toMatchObject({ from, to });
  });

  it.each([
    ['CDDSC,20,2329991420,00,00,26,,,,,R,', { kind: 'station', mmsi: '232999142' }],
    ['CDDSC,23,2329991420,00,00,26,,,,,R,', { kind: 'station', mmsi: '232999142' }],
    ['CDDSC,14,0232999050,00,00,26,,,,,S,', { kind: 'group', mmsi: '023299905' }],
    ['CDDSC,16,,08,00,26,,,,,S,', { kind: 'all-ships' }],
    ['CDDSC,12,,,05,00,,,,,S,', { kind: 'all-stations' }],
  ])('of %s, commanded, is the called', (body, to) => {
    expect(callOf(body, 'commanded')).toMatchObject({ from: own, to });
    expect(readingOf(body, 'commanded').notices).toEqual([]);
  });

  it('of a commanded call to all is left aside when it is filled', () => {
    for (const body of ['CDDSC,16,2329991420,08,00,26,,,,,S,', 'CDDSC,12,2329991420,,05,00,,,,,S,']) {
      expect(readingOf(body, 'commanded').notices.map(({ code }) => code)).toEqual([
        'sentence-address-unexpected',
      ]);
    }
  });

  it('of a received area call is the area when it reads as one', () => {
    expect(callOf('CDDSC,02,1511080405,10,00,26,,,,,S,')).toMatchObject({
      from: null,
      to: { area: { north: { hemisphere: 'N', degrees: 51 }, southward: 4, eastward: 5 } },
    });
    expect(callOf('CDDSC,02,1901800405,10,00,26,,,,,S,').from).toBeNull();
    expect(callOf('CDDSC,02,3511080405,10,00,26,,,,,S,').from).toBeNull();
    expect(callOf('CDDSC,02,1911000400,10,00,26,,,,,S,').from).toBe('191100040');
    expect(callOf('CDDSC,02,1901810400,10,00,26,,,,,S,').from).toBe('190181040');
    expect(callOf('CDDSC,02,4511080400,10,00,26,,,,,S,').from).toBe('451108040');
    expect(callOf('CDDSC,02,151108040,10,00,26,,,,,S,').from).toBe('151108040');
  });

  it.each([
    ['2350123450', true],
    ['3350123450', true],
    ['1350123450', false],
    ['2350123455', false],
  ])('of a received area call is doubtful when a ship may have it: %s', (text, doubtful) => {
    const codes = codesOf(`CDDSC,02,${text},10,00,26,,,,,S,`);
    expect(codes.includes('sentence-area-or-identity')).toBe(doubtful);
  });

  it('of a commanded area call is the area, whatever a ship may have', () => {
    const reading = readingOf('CDDSC,02,2350123450,10,00,26,,,,,S,', 'commanded');
    expect(reading.call).toMatchObject({
      from: own,
      to: { area: { north: { hemisphere: 'S', degrees: 35 }, west: { hemisphere: 'E', degrees: 12 } } },
    });
    expect(reading.notices).toEqual([]);
    for (const text of ['35012345', '235012345000', '235012345x']) {
      const odd = readingOf(`CDDSC,02,${text},10,00,26,,,,,S,`, 'commanded');
      expect(odd.call.to).toEqual({ kind: 'area', area: null });
      expect(odd.notices[0]?.code).toBe('sentence-area');
    }
  });
});

describe('field 6', () => {
  const call = (place: string): unknown => callOf(`CDDSC,20,2329991420,08,09,26,${place},,,,R,`);

  it.each([
    ['900072', { channel: '72' }],
    ['005750', { frequencies: { receive: '005750', transmit: null } }],
    ['005750006850', { frequencies: { receive: '005750', transmit: '006850' } }],
    ['00057500', { frequencies: { receive: '00057500', transmit: null } }],
    ['0005750000068500', { frequencies: { receive: '00057500', transmit: '00068500' } }],
  ])('of %s names where to talk', (place, wanted) => {
    expect(call(place)).toMatchObject(wanted);
  });

  it.each(['1', '12', '1234', '90007', '9000721', '12345678901', '12345678901234', '123456789012345678'])(
    'of %s is left aside',
    (place) => {
      expect(codesOf(`CDDSC,20,2329991420,08,09,26,${place},,,,R,`)).toEqual(['sentence-place']);
      expect(call(place)).toMatchObject({ channel: null });
    },
  );

  it('may be a position behind its header', () => {
    const fields = encodeFields(callOf('CDDSC,20,2329991420,08,09,26,551562000630,,,,R,'));
    expect([fields.header, fields.position, fields.receive]).toEqual([true, [15, 62, 0, 6, 30], null]);
  });
});

describe('field 7', () => {
  it.each([
    ['0612345678', '0612345678'],
    ['612345678', '612345678'],
    ['1', '1'],
    ['1234567890123456', '1234567890123456'],
  ])('of the telephone service holds the number %s', (text, telephone) => {
    const call = callOf(`CDDSC,23,2329991420,00,00,26,900027,${text},,,R,`);
    expect(call).toMatchObject({ kind: 'automatic-service-call', telephone, channel: '27' });
    const { sentences } = writeSentences(call, { direction: 'received' });
    expect(sentences[0]?.split(',')[7]).toBe(text);
  });

  it.each(['12345678901234567', '06 12', 'x1', '1x'])('of %j holds none', (text) => {
    expect(codesOf(`CDDSC,23,2329991420,00,00,26,900027,${text},,,R,`)).toContain('sentence-time');
  });

  it.each(['140', '14045', '14:4', 'x1404'])('of %j is no time', (text) => {
    expect(codesOf(`CDDSC,20,2329991420,08,21,26,1562000630,${text},,,B,`)).toContain('sentence-time');
  });
});

describe('the other fields', () => {
  it.each([
    ['R', 'individual-call'],
    ['B', 'individual-acknowledgement'],
  ])('end of sequence %s makes %s', (end, kind) => {
    expect(callOf(`CDDSC,20,2329991420,00,00,26,900072,,,,${end},`).kind).toBe(kind);
  });

  it.each(['0', '000', '/0', ':0', '0/', '0:', 'A0', '0A'])('%s is no code', (code) => {
    expect(codesOf(`CDDSC,20,2329991420,${code},00,26,900072,,,,R,`)).toEqual(
      expect.arrayContaining(['sentence-code']),
    );
  });

  it.each(['232999142/', '232999142:', '/329991420', ':329991420', '23299914', '23299914200', '23299914A'])(
    '%s is no identity',
    (text) => {
      expect(codesOf(`CDDSC,20,${text},00,00,26,900072,,,,R,`)).toContain('sentence-identity');
      expect(callOf(`CDDSC,20,${text},00,00,26,900072,,,,R,`).from).toBeNull();
    },
  );

  it('of an alert that name another ship, or her distress, are left aside', () => {
    for (const more of ['2329991420,', ',05', '2329991420,05']) {
      expect(codesOf(`CDDSC,12,2329992180,,05,00,1562000630,1404,${more},S,`)).toContain(
        'sentence-ship-unexpected',
      );
    }
    expect(codesOf('CDDSC,12,2329992180,,05,00,1562000630,1404,,,S,')).toEqual([]);
  });

  it('eleven are enough and none is too many', () => {
    expect(codesOf('CDDSC,20,2329991420,00,00,26,900072,,,,R,')).toEqual([]);
  });
});

describe('the older layout', () => {
  it.each([
    ['CDDSC,2329992180,12,12,05,1562000630,,S', ['sentence-legacy-layout', 'sentence-code']],
    ['CDDSC,2329992180,12,12,05,00,,S', ['sentence-legacy-layout']],
    ['CDDSC,232999218,12,12,05,00,,S', ['sentence-legacy-layout', 'sentence-identity-nine-digits']],
    ['CDDSC,2329991420,20,00,,00,26,R,X', ['sentence-legacy-layout', 'sentence-fields-surplus']],
    ['CDDSC,2329991420', ['sentence-legacy-layout', 'sentence-acknowledgement', 'call-unrecognised']],
  ])('of %s leaves %j', (body, codes) => {
    expect(codesOf(body)).toEqual(codes);
  });

  it('has nature and wish of an alert, the telecommands of a call, and the nature of a relay', () => {
    expect(callOf('CDDSC,2329992180,12,12,05,00,,S')).toMatchObject({
      kind: 'distress-alert',
      from: '232999218',
      nature: 'sinking',
      subsequent: 'telephony-simplex',
      position: null,
    });
    expect(callOf('CDDSC,2329991420,20,00,,00,26,R')).toMatchObject({
      kind: 'individual-call',
      from: '232999142',
      category: 'routine',
      firstTelecommand: 'telephony-simplex',
      secondTelecommand: null,
    });
    expect(callOf('CDDSC,0023299900,16,12,05,10,00,S')).toMatchObject({
      kind: 'distress-acknowledgement',
      nature: 'sinking',
      subsequent: 'telephony-simplex',
    });
  });

  it('begins with nine or ten digits, not with eight', () => {
    expect(codesOf('CDDSC,23299914,20,00,,00,26,R')).not.toContain('sentence-legacy-layout');
    expect(codesOf('CDDSC,232999142A,20,00,,00,26,R')).not.toContain('sentence-legacy-layout');
    expect(codesOf('CDDSC,A232999142,20,00,,00,26,R')).not.toContain('sentence-legacy-layout');
  });
});

describe('an expansion', () => {
  const call = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E');
  const joined = (sets: string): Reading<'call'> =>
    readSentences(call + line(`CDDSE,1,1,A,2329991420,${sets}`))[0] as Reading<'call'>;
  const alone = (fields: string): Reading => readSentences(line(`CDDSE,${fields}`))[0] as Reading;

  it.each([
    ['A', 'automatic'],
    ['Q', 'query'],
    ['R', 'reply'],
    ['X', 'unknown'],
    ['', 'unknown'],
  ])('of flag %j is %s', (letter, flag) => {
    const reading = alone(`1,1,${letter},2329991420,00,33001200`);
    expect(reading).toMatchObject({ kind: 'expansion', flag, station: '232999142' });
    expect(reading.notices.some(({ code }) => code === 'sentence-expansion-flag')).toBe(flag === 'unknown');
  });

  it.each(['0,1', '1,0', '1,2', '10,1', '1,10', 'x,1', '1,x', ','])(
    'of counts %s is none of several',
    (counts) => {
      expect(alone(`${counts},A,2329991420,00,33001200`).notices[0]?.code).toBe('sentence-expansion-count');
    },
  );

  it.each(['1,1', '9,9', '9,1'])('of counts %s is', (counts) => {
    expect(alone(`${counts},A,2329991420,00,33001200`).notices.map(({ code }) => code)).toEqual([
      'sentence-expansion-alone',
    ]);
  });

  it('has an empty set where nothing is known, or where it is asked for', () => {
    expect(alone('1,1,A,2329991420,01,,02,0125,,')).toMatchObject({
      sets: [
        { specifier: 101, symbols: [126] },
        { specifier: 102, symbols: [1, 25] },
      ],
    });
    expect(alone('1,1,Q,2329991420,01,')).toMatchObject({ sets: [{ specifier: 101, symbols: [110] }] });
    expect(alone('1,1,Q,2329991420,01').notices).toEqual([]);
  });

  it('has text in set 04, and keeps as text what does not fit', () => {
    expect(alone('1,1,A,2329991420,04,T^2C1,00,33^2C,02,01x5')).toMatchObject({
      sets: [
        { specifier: 104, symbols: [], text: 'T,1' },
        { specifier: 100, symbols: [], text: '33,' },
        { specifier: 102, symbols: [], text: '01x5' },
      ],
    });
    expect(joined('00,330012').call).not.toHaveProperty('position.fraction');
    expect(joined('00,33001200').call).toHaveProperty('position.fraction', {
      latitude: 3300,
      longitude: 1200,
    });
  });

  it('numbers the field it complains of', () => {
    const fieldsOf = (fields: string): unknown[] => alone(fields).notices.map(({ at }) => at.slice(0, 3));
    expect(fieldsOf('1,1,A,2329991420,00,33001200,x,1,02,12x')).toEqual([
      ['DSE', 'field', 7],
      ['DSE', 'field', 10],
      ['DSE', 'field', 4],
    ]);
  });
});

describe('writing a call', () => {
  const reply: Call = {
    kind: 'position-reply',
    to: { kind: 'station', mmsi: own },
    from: '232999142',
    category: 'safety',
    position: {
      kind: 'reported-position',
      latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
      longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
      fraction: { latitude: 3300, longitude: 1200 },
    },
    time: { hour: 14, minute: 4 },
    unsolicited: false,
  };

  it('as received names the caller, as commanded the called', () => {
    expect(writeSentences(reply, { direction: 'received' }).sentences).toEqual([
      line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E').trim(),
      line('CDDSE,1,1,A,2329991420,00,33001200').trim(),
    ]);
    expect(writeSentences(reply, { direction: 'commanded', talker: 'CV' }).sentences).toEqual([
      line(`CVDSC,20,${own}0,08,21,26,1562000630,1404,,,B,E`).trim(),
      line(`CVDSE,1,1,A,${own}0,00,33001200`).trim(),
    ]);
  });

  it.each([
    'CDDSC,12,2329992180,,05,00,1561800627,1404,,,S,',
    'CDDSC,16,0023299900,12,10,00,1561800627,1404,2329992180,05,S,',
    'CDDSC,20,2329991420,00,00,26,900072,,,,R,',
    'CDDSC,20,2329991420,00,00,26,900072,,,,B,',
    'CDDSC,20,2329991420,08,09,26,005750005750,,,,R,',
    'CDDSC,20,2329991420,08,09,26,005750006850,,,,R,',
    'CDDSC,02,1511080405,10,00,26,,,,,S,',
    'CDDSC,20,2329991420,08,09,26,551562000630,,,,R,',
    'CDDSC,20,2329991420,00,00,26,900072900073,,,,R,',
    'CDDSC,16,0023299900,12,12,00,1561800627,1404,,05,S,',
    'CDDSC,20,2329991420,08,99,50,,,,,R,',
    'CDDSC,20,2329991420,08,21,26,9999999999,8888,,,B,',
  ])('%s comes back as it was', (body) => {
    expect(writeSentences(callOf(body), { direction: 'received' })).toEqual({
      sentences: [line(body).trim()],
      notices: [],
    });
  });

  const expansionsOf = (expansion: Call['expansion']): string[] =>
    writeSentences({ ...reply, expansion } as Call, { direction: 'received' })
      .sentences.slice(1)
      .map((sentence) => sentence.slice(1, -3));
  const full = { source: '020000', speed: 12.5, course: 184 };

  it('begins another DSE sentence where the first is full: 82 characters with its line end', () => {
    const start = 'A,2329991420,00,33001200,01,020000,02,0125,03,1840';
    expect(expansionsOf({ ...full, stationName: 'ABCDEFGHI~', personsOnBoard: 4 })).toEqual([
      `CDDSE,2,1,${start},04,ABCDEFGHI^7E`,
      'CDDSE,2,2,A,2329991420,06,0004',
    ]);
    expect(expansionsOf({ ...full, stationName: 'ABCDEFGH~~', personsOnBoard: 4 })).toEqual([
      `CDDSE,2,1,${start}`,
      'CDDSE,2,2,A,2329991420,04,ABCDEFGH^7E^7E,06,0004',
    ]);
  });

  it('begins another DSE sentence where sets asked for follow sets given, and the reverse', () => {
    expect(expansionsOf({ speed: 12.5, requested: [105], unavailable: [103], personsOnBoard: 4 })).toEqual([
      'CDDSE,3,1,A,2329991420,00,33001200,02,0125,03,C26',
      'CDDSE,3,2,Q,2329991420,05,',
      'CDDSE,3,3,A,2329991420,06,0004',
    ]);
  });
});
