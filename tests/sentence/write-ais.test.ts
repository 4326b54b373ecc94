import { describe, expect, it } from 'vitest';
import type { AisReport } from '../../src/report/index.ts';
import { readSentences, writeAisSentences } from '../../src/sentence/index.ts';
import { checksumByBits } from '../oracle/sentence.ts';
import { bitsIn, bitsOf, rowsOf } from '../oracle/sentence-ais.ts';

// Bit tables and values: ITU-R M.1371-6 Annex 7, from memory; armour and sentences: IEC 61162-1, as restated in
// equipment papers. Stations are invented, except in the published sentences.
const mmsi = '232999142';
const none = '0'.repeat(30);

function reportIn(sentences: readonly string[]): AisReport {
  const [reading] = readSentences(sentences.join('\r\n'));
  if (reading?.kind !== 'ais') throw new Error(`no AIS was read, but ${reading?.kind}`);
  return reading.report;
}

/** The bits that sentences carry, by their fields 5 and 6. */
function bitsCarried(sentences: readonly string[]): string {
  return sentences
    .map((sentence) => sentence.split('*')[0]?.split(',') ?? [])
    .map(([, , , , , payload = '', fill]) => bitsIn(payload, Number(fill)))
    .join('');
}

const written = (report: Partial<AisReport>): string =>
  bitsCarried(writeAisSentences({ mmsi, station: 'ship', message: 1, ...report }));

// Widely published sample sentences, from memory; their checksums hold.
describe('a published message, read and written', () => {
  it.each([
    [
      '1',
      ['!AIVDM,1,1,,B,177KQJ5000G?tO`K>RA1wUbN0TKH,0*5C'],
      { turn: '10000000', radio: none.slice(0, 19) },
    ],
    [
      '1',
      ['!AIVDM,1,1,,A,14eG;o@034o8sd<L9i:a;WF>062D,0*7D'],
      { turn: '10000000', radio: none.slice(0, 19) },
    ],
    [
      '4',
      ['!AIVDM,1,1,,A,403OviQuMGCqWrRO9>E6fE700@GO,0*4D'],
      { device: '0000', raim: '0', radio: none.slice(0, 19) },
    ],
    [
      '5',
      [
        '!AIVDM,2,1,1,A,55?MbV02;H;s<HtKR20EHE:0@T4@Dn2222222216L961O5Gf0NSQEp6ClRp8,0*1C',
        '!AIVDM,2,2,1,A,88888888880,2*25',
      ],
      {
        // Filled with @, where the sender filled with blanks.
        callSign: rowsOf('5', bitsOf('5', { callSign: '3FOF8' })).callSign,
        name: rowsOf('5', bitsOf('5', { name: 'EVER DIADEM' })).name,
        dimensions: none,
        device: '0000',
        arrival: none.slice(0, 20),
        draught: '00000000',
        destination: none.repeat(4),
        terminal: '1',
      },
    ],
    ['9', ['!AIVDM,1,1,,B,91b55wi;hbOS@OdQAC062Ch2089h,0*30'], {}],
    ['18', ['!AIVDM,1,1,,A,B52K>;h00Fc>jpUlNV@ikwpUoP06,0*4C'], {}],
    [
      '19',
      ['!AIVDM,1,1,,B,C5N3SRgPEnJGEBT>NhWAwwo862PaLELTBJ:V00000000S0D:R220,0*0B'],
      { dimensions: none, device: '0000' },
    ],
    [
      '21',
      ['!AIVDM,1,1,,B,E>kb9O9aS@7PUh10dh19@;0Tah2cWrfP:l?M`00003vP100,0*01'],
      { dimensions: none, device: '0000', second: '111100' },
    ],
    [
      '24B',
      ['!AIVDM,1,1,,A,H42O55lti4hhhilD3nink000?050,0*40'],
      { vendor: none + none.slice(0, 12), dimensions: none, device: '0000' },
    ],
  ] as [string, string[], Record<string, string>][])(
    'of table %s says the same in every row that a report holds: %s',
    (table, published, other) => {
      const sentences = writeAisSentences(reportIn(published));
      const { nameMore: _, ...rows } = rowsOf(table, bitsCarried(published));
      expect(rowsOf(table, bitsCarried(sentences))).toEqual({ ...rows, ...other });
      expect(reportIn(sentences)).toEqual(reportIn(published));
    },
  );

  it('24 of a name alone is the same to the letter', () => {
    const published = '!AIVDM,1,1,,A,H42O55i18tMET00000000000000,2*6D';
    expect(writeAisSentences(reportIn([published]), { channel: 'A' })).toEqual([published]);
  });

  it('21 keeps the thirteen characters that its name has beyond twenty', () => {
    const published = [
      '!AIVDM,2,1,4,A,E1c2;q@b44ah4ah0h:2ab@70VRpU<Bgpm4:gP50HH`Th`QF5,0*7B',
      '!AIVDM,2,2,4,A,1CQ1A83PCAH0,0*60',
    ];
    const report = reportIn(published);
    expect(report.name).toBe('THIS IS A TEST NAME1EXTENDED NAME');
    const bits = written(report);
    expect(bits.slice(272, 272 + 13 * 6)).toBe(bitsCarried(published).slice(272, 272 + 13 * 6));
    // Two spare bits make whole bytes.
    expect(bits.slice(272 + 13 * 6)).toBe('00');
    expect(reportIn(writeAisSentences(report))).toEqual(report);
  });
});

describe('a message of which nothing is known', () => {
  const NO_PLACE = { longitude: 181 * 600_000, latitude: 91 * 600_000 };
  const NO_MOTION = { ...NO_PLACE, speed: 1023, course: 3600, heading: 511, second: 60 };

  it.each([
    [1, '1', { status: 15, turn: -128, ...NO_MOTION }],
    [2, '2', { status: 15, turn: -128, ...NO_MOTION }],
    [3, '3', { status: 15, turn: -128, ...NO_MOTION }],
    [4, '4', { ...NO_PLACE, hour: 24, minute: 60, second: 60 }],
    [11, '4', { ...NO_PLACE, hour: 24, minute: 60, second: 60 }],
    [5, '5', { terminal: 1 }],
    [9, '9', { ...NO_PLACE, altitude: 4095, speed: 1023, course: 3600, second: 60 }],
    [18, '18', NO_MOTION],
    [24, '24A', {}],
  ])('%i says so in every row', (message, table, values) => {
    expect(written({ message })).toBe(bitsOf(table, { message, mmsi: 232_999_142, ...values }));
  });

  it('19 says so in every row, and that no terminal is available', () => {
    const bits = bitsOf('19', { message: 19, mmsi: 232_999_142, ...NO_MOTION });
    // Of the spare bits at the end the first are RAIM and terminal.
    expect(written({ message: 19 })).toBe(`${bits.slice(0, 305)}0100000`);
  });

  it('21 says so in every row, and has no bits for more of a name', () => {
    const bits = bitsOf('21', { message: 21, mmsi: 232_999_142, ...NO_PLACE, second: 60 });
    expect(written({ message: 21 })).toBe(bits.slice(0, 272));
  });
});

describe('a message of which much is known', () => {
  const position = { latitude: -56.3388, longitude: -6.502 };
  const place = { latitude: -33_803_280, longitude: -3_901_200, accuracy: 1 };
  const instant = Date.UTC(2026, 10, 9, 7, 8, 5);

  it.each([
    [
      '1',
      { status: 'towing-astern', speed: 12.3, course: 184.5, heading: 181, second: 7 },
      { status: 11, turn: -128, speed: 123, course: 1845, heading: 181, second: 7, ...place },
    ],
    ['4', { instant }, { year: 2026, month: 11, day: 9, hour: 7, minute: 8, second: 5, ...place }],
    [
      '9',
      { altitude: 303, speed: 42, course: 0.5, second: 59 },
      { altitude: 303, speed: 42, course: 5, second: 59, ...place },
    ],
    [
      '18',
      { speed: 5, course: 359.9, heading: 0, second: 0 },
      { speed: 50, course: 3599, heading: 0, second: 0, ...place },
    ],
    [
      '21',
      { type: 31, name: 'SKERRA ROCK', second: 41, offPosition: true, virtual: true },
      { type: 31, name: 'SKERRA ROCK', second: 41, offPosition: 1, virtual: 1, ...place },
    ],
  ] as [string, Partial<AisReport>, Record<string, number | string>][])(
    '%s has it in its rows',
    (table, told, values) => {
      const message = Number(table);
      const bits = bitsOf(table, { message, mmsi: 232_999_142, ...values });
      expect(written({ message, position, accurate: true, ...told })).toBe(
        table === '21' ? bits.slice(0, 272) : bits,
      );
    },
  );

  it('5 has name, call sign, number and type', () => {
    const told = { imo: '9999993', callSign: '2ZZM8', name: 'TERN OF ARDLE', type: 255 };
    const values = { message: 5, mmsi: 232_999_142, ...told, imo: 9_999_993, terminal: 1 };
    expect(written({ message: 5, ...told })).toBe(bitsOf('5', values));
  });

  it.each([
    ['A', { name: 'TERN OF ARDLE' }, {}],
    ['B', { callSign: '2ZZM8' }, { part: 1 }],
    ['B', { type: 37 }, { part: 1 }],
    ['B', { callSign: '2ZZM8', type: 37 }, { part: 1 }],
  ])('24 is part %s of %j', (part, told, values) => {
    expect(written({ message: 24, ...told })).toBe(
      bitsOf(`24${part}`, { message: 24, mmsi: 232_999_142, ...told, ...values }),
    );
  });

  it('24 of a name and a call sign is parts A and B', () => {
    const report = { message: 24, mmsi, station: 'ship-class-b', name: 'TERN OF ARDLE', type: 37 } as const;
    const sentences = writeAisSentences({ ...report, callSign: '2ZZM8' });
    const { type: _, ...named } = report;
    const { name: __, ...data } = report;
    expect(sentences.map((sentence) => reportIn([sentence]))).toEqual([
      named,
      { ...data, callSign: '2ZZM8' },
    ]);
    expect(writeAisSentences(report).map((sentence) => reportIn([sentence]))).toEqual([named, data]);
  });

  it('and an identity with leading zeros keeps its thirty bits', () => {
    expect(rowsOf('4', written({ message: 4, mmsi: '002329990' })).mmsi).toBe(
      '000000001000111000110110000110',
    );
  });
});

describe('a value', () => {
  const rowOf = (table: string, report: Partial<AisReport>, row: string): number =>
    Number.parseInt(rowsOf(table, written({ message: Number(table), ...report }))[row] ?? '', 2);

  it.each([
    ['1', { speed: 0 }, 'speed', 0],
    ['1', { speed: 5.04 }, 'speed', 50],
    ['1', { speed: 5.06 }, 'speed', 51],
    ['1', { speed: 102.2 }, 'speed', 1022],
    ['1', { speed: 102.3 }, 'speed', 1022],
    ['18', { speed: 400 }, 'speed', 1022],
    ['1', { course: 0.04 }, 'course', 0],
    ['1', { course: 359.94 }, 'course', 3599],
    ['1', { course: 359.96 }, 'course', 0],
    ['1', { heading: 358.6 }, 'heading', 359],
    ['1', { heading: 359.6 }, 'heading', 0],
    ['9', { speed: 120.4 }, 'speed', 120],
    ['9', { speed: 1022 }, 'speed', 1022],
    ['9', { speed: 1030 }, 'speed', 1022],
    ['9', { altitude: 303.5 }, 'altitude', 304],
    ['9', { altitude: 4094 }, 'altitude', 4094],
    ['9', { altitude: 4100 }, 'altitude', 4094],
    // A helicopter on a low deck: receivers give heights below the sea.
    ['9', { altitude: -3 }, 'altitude', 0],
    ['1', { status: 'under-way-using-engine' }, 'status', 0],
    ['1', { accurate: false }, 'accuracy', 0],
    ['21', { offPosition: false, virtual: false }, 'offPosition', 0],
    ['21', { offPosition: true, virtual: false }, 'virtual', 0],
    ['21', { offPosition: false, virtual: true }, 'virtual', 1],
  ] as [string, Partial<AisReport>, string, number][])(
    'in message %s of %j is in its row %s sent as %i',
    (table, told, row, sent) => {
      expect(rowOf(table, told, row)).toBe(sent);
    },
  );

  // Two's complement in 28 and 27 bits, ten-thousandths of a minute.
  it.each([
    [0, 0, '0'.repeat(28), '0'.repeat(27)],
    [1 / 600_000, 1 / 600_000, '1'.padStart(28, '0'), '1'.padStart(27, '0')],
    [-1 / 600_000, -1 / 600_000, '1'.repeat(28), '1'.repeat(27)],
    [0.4 / 600_000, -0.6 / 600_000, '1'.repeat(28), '0'.repeat(27)],
    [90, 180, '0110011011111111001100000000', '011001101111111100110000000'],
    [-90, -180, '1001100100000000110100000000', '100110010000000011010000000'],
  ])('of a place at %d and %d is two-complement', (latitude, longitude, east, north) => {
    const rows = rowsOf('18', written({ message: 18, position: { latitude, longitude } }));
    expect([rows.longitude, rows.latitude]).toEqual([east, north]);
  });
});

describe('text', () => {
  const nameOf = (message: number, name: string): string | undefined =>
    rowsOf(String(message), written({ message, name })).name;
  const six = (name: string): string | undefined => rowsOf('19', bitsOf('19', { name })).name;

  it.each([
    ['every character of the first half', '@ABCDEFGHIJKLMNO'],
    ['every character of the second', 'PQRSTUVWXYZ[\\]^_'],
    ['signs', ' !"#$%&\'()*+,-./'],
    ['digits', '0123456789:;<=>?'],
  ])('keeps %s of six-bit ASCII', (_, name) => {
    expect(nameOf(19, name)).toBe(six(name));
  });

  it.each([
    ['tern', 'TERN'],
    ['Äöé~`{\u001f\u007f€', '         '],
    ['TERN OF ARDLE AND SKERRA', 'TERN OF ARDLE AND SK'],
  ])('of %j is sent as %j', (name, sent) => {
    expect(nameOf(19, name)).toBe(six(sent));
    expect(nameOf(5, name)).toBe(six(sent));
    expect(nameOf(21, name)).toBe(six(sent));
  });

  it.each([
    ['SKERRA SOUND NORTH C', 272],
    ['SKERRA SOUND NORTH CA', 280],
    ['SKERRA SOUND NORTH CAR', 288],
    ['SKERRA SOUND NORTH CARDINAL', 320],
    ['SKERRA SOUND NORTH CARDINAL LIGHTS', 360],
    ['SKERRA SOUND NORTH CARDINAL LIGHTS X', 360],
    ['SKERRA SOUND IN FRONT OF ARDLE', 336],
    ['SKERRA SOUND NORTHER CARDINAL', 328],
  ])('%s of an aid to navigation takes %i bits in all', (name, bits) => {
    const report = { message: 21, mmsi: '992359999', station: 'aid-to-navigation', name } as const;
    expect(written(report)).toHaveLength(bits);
    expect(reportIn(writeAisSentences(report)).name).toBe(name.slice(0, 34));
  });
});

describe('the sentences', () => {
  const eighteen = { message: 18, mmsi, station: 'ship-class-b' } as const;
  const five = { message: 5, mmsi, station: 'ship-class-a', name: 'TERN' } as const;
  const fieldsOf = (sentence: string): string[] => sentence.slice(1, -3).split(',');

  it('of a short message are one, without sequence number and fill bits', () => {
    const [sentence = '', ...more] = writeAisSentences(eighteen, { sequence: 7 });
    expect(more).toEqual([]);
    expect(sentence[0]).toBe('!');
    expect(fieldsOf(sentence)).toEqual(['AIVDM', '1', '1', '', '', expect.stringMatching(/^.{28}$/), '0']);
    expect(sentence.slice(-3)).toBe(`*${checksumByBits(sentence.slice(1, -3))}`);
  });

  it.each([
    [{}, ['AIVDM', '']],
    [{ own: false, channel: null }, ['AIVDM', '']],
    [{ own: true, channel: 'A' }, ['AIVDO', 'A']],
    [{ channel: 'B' }, ['AIVDM', 'B']],
  ] as [Parameters<typeof writeAisSentences>[1], string[]][])(
    'with %j begin %j',
    (options, [address, channel]) => {
      const [sentence = ''] = writeAisSentences(eighteen, options);
      expect(fieldsOf(sentence)[0]).toBe(address);
      expect(fieldsOf(sentence)[4]).toBe(channel);
    },
  );

  it('of a long message are two: the first has 82 characters with its line end, the second has the fill bits', () => {
    const sentences = writeAisSentences(five, { channel: 'B', sequence: 3 });
    expect(sentences.map((sentence) => sentence.length + 2)).toEqual([82, 33]);
    expect(sentences.map((sentence) => fieldsOf(sentence).toSpliced(5, 1))).toEqual([
      ['AIVDM', '2', '1', '3', 'B', '0'],
      ['AIVDM', '2', '2', '3', 'B', '2'],
    ]);
    expect(reportIn(sentences)).toEqual(five);
  });

  it('of a long message have the sequence number 0 unless told, and at most 9', () => {
    expect(writeAisSentences(five).map((sentence) => fieldsOf(sentence)[3])).toEqual(['0', '0']);
    expect(writeAisSentences(five, { sequence: 9 }).map((sentence) => fieldsOf(sentence)[3])).toEqual([
      '9',
      '9',
    ]);
  });

  it('of sixty characters are one', () => {
    const report = { message: 21, mmsi, station: 'aid-to-navigation', name: 'S'.repeat(34) } as const;
    const [sentence = '', ...more] = writeAisSentences(report, { channel: 'A' });
    expect(more).toEqual([]);
    expect([fieldsOf(sentence)[5]?.length, fieldsOf(sentence)[6]]).toEqual([60, '0']);
  });
});

describe('what is refused', () => {
  const report = { message: 18, mmsi, station: 'ship-class-b' } as const;

  it.each([
    [{ mmsi: '23299914' }, 'mmsi: expected nine digits, got 23299914'],
    [{ mmsi: '2329991420' }, 'mmsi: expected nine digits, got 2329991420'],
    [{ mmsi: 'A232999142' }, 'mmsi: expected nine digits, got A232999142'],
    [{ mmsi: '232999142A' }, 'mmsi: expected nine digits, got 232999142A'],
    [{ message: 27 }, 'message: expected 1 to 5, 9, 11, 18, 19, 21 or 24, got 27'],
    [{ message: 6 }, 'message: expected 1 to 5, 9, 11, 18, 19, 21 or 24, got 6'],
    [{ speed: -1 }, 'report: expected a whole number of 10 bits, got -10'],
    [{ speed: Number.NaN }, 'report: expected a whole number of 10 bits, got NaN'],
    [{ second: 64 }, 'report: expected a whole number of 6 bits, got 64'],
    [{ second: 7.5 }, 'report: expected a whole number of 6 bits, got 7.5'],
    [{ heading: -1 }, 'report: expected a whole number of 9 bits, got -1'],
    [{ message: 5, type: 256 }, 'report: expected a whole number of 8 bits, got 256'],
    [{ message: 5, imo: '999999' }, 'imo: expected seven digits, got 999999'],
    [{ message: 5, imo: '99999930' }, 'imo: expected seven digits, got 99999930'],
    [{ message: 5, imo: 'IMO9999993' }, 'imo: expected seven digits, got IMO9999993'],
    [{ message: 21, type: 32 }, 'report: expected a whole number of 5 bits, got 32'],
    [
      { message: 4, instant: Date.UTC(16_384, 0, 1) },
      'report: expected a whole number of 14 bits, got 16384',
    ],
    [
      { position: { latitude: 90.1, longitude: 0 } },
      'position: expected latitude within 90 and longitude within 180 degrees, got 90.1, 0',
    ],
    [
      { position: { latitude: 0, longitude: 181 } },
      'position: expected latitude within 90 and longitude within 180 degrees, got 0, 181',
    ],
  ])('%j', (change, message) => {
    expect(() => writeAisSentences({ ...report, ...change })).toThrow(new RangeError(message));
  });

  it.each([-1, 10, 1.5, Number.NaN])(
    'a sequence number of %d, whatever the length of the message',
    (sequence) => {
      expect(() => writeAisSentences(report, { sequence })).toThrow(
        new RangeError(`sequence: expected a whole number from 0 to 9, got ${sequence}`),
      );
    },
  );
});
