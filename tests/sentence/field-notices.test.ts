import { describe, expect, it } from 'vitest';
import { english } from '../../src/locale/en.ts';
import { type Translatable, translate } from '../../src/locale/index.ts';
import type { Notice } from '../../src/result/index.ts';
import { readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// The whole notice as programs get it; its wording is pinned in tests/locale. Stations and places are invented.
const dataOf = ({ message: _, ...data }: Notice): Omit<Notice, 'message'> => data;
const firstOf = (body: string, direction: 'received' | 'commanded' = 'received'): unknown =>
  readSentences(line(body), { direction })[0]?.notices.map(dataOf)[0];

describe('of a sentence with', () => {
  it.each([
    [
      'a station that is no identity',
      'CDDSC,20,XX,00,00,26,900072,,,,R,',
      {
        code: 'sentence-identity',
        grade: 'check',
        params: { formatter: 'DSC', field: 2 },
        at: ['DSC', 'field', 2],
        expected: 'nine digits and a 0',
        received: "'XX'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'nine digits',
      'CDDSC,20,232999142,00,00,26,900072,,,,R,',
      {
        code: 'sentence-identity-nine-digits',
        grade: 'note',
        params: { formatter: 'DSC', field: 2, identity: '232999142' },
        at: ['DSC', 'field', 2],
        expected: "'2329991420'",
        received: "'232999142'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'a category of one digit',
      'CDDSC,20,2329991420,0,00,26,900072,,,,R,',
      {
        code: 'sentence-code',
        grade: 'check',
        params: { formatter: 'DSC', field: 3 },
        at: ['DSC', 'field', 3],
        expected: 'two digits',
        received: "'0'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'four digits of place',
      'CDDSC,20,2329991420,00,00,26,9000,,,,R,',
      {
        code: 'sentence-place',
        grade: 'check',
        params: { formatter: 'DSC', field: 6 },
        at: ['DSC', 'field', 6],
        expected: '10 digits of position, or 6, 8, 12 or 16 of frequency',
        received: "'9000'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'two digits of time',
      'CDDSC,20,2329991420,08,21,26,1502000318,14,,,B,',
      {
        code: 'sentence-time',
        grade: 'check',
        params: { formatter: 'DSC', field: 7 },
        at: ['DSC', 'field', 7],
        expected: 'four digits, hours and minutes UTC',
        received: "'14'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'another letter at the end',
      'CDDSC,20,2329991420,00,00,26,900072,,,,X,',
      {
        code: 'sentence-acknowledgement',
        grade: 'check',
        params: { formatter: 'DSC', field: 10 },
        at: ['DSC', 'field', 10],
        expected: 'R, B or S',
        received: "'X'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'another mark of expansion',
      'CDDSC,20,2329991420,00,00,26,900072,,,,R,F',
      {
        code: 'sentence-expansion-mark',
        grade: 'check',
        params: { formatter: 'DSC', field: 11 },
        at: ['DSC', 'field', 11],
        expected: 'E or nothing',
        received: "'F'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'one field',
      'CDDSC,14',
      {
        code: 'sentence-fields-missing',
        grade: 'check',
        params: { limit: 11 },
        at: ['DSC'],
        expected: '11 fields',
        received: '1',
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'twelve fields',
      'CDDSC,20,2329991420,00,00,26,900072,,,,R,,7',
      {
        code: 'sentence-fields-surplus',
        grade: 'check',
        params: { limit: 11 },
        at: ['DSC'],
        expected: '11 fields',
        received: '12',
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'eight fields',
      'CDDSC,20,2329991420,00,00,26,900072,,',
      {
        code: 'sentence-fields-missing',
        grade: 'check',
        params: { limit: 11 },
        at: ['DSC'],
        expected: '11 fields',
        received: '8',
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'a ship in an alert of the caller',
      'CDDSC,12,2329992180,,05,00,1562000630,1404,2329991420,05,S,',
      {
        code: 'sentence-ship-unexpected',
        grade: 'check',
        params: { formatter: 'DSC', field: 8 },
        at: ['DSC', 'field', 8],
        expected: 'empty fields',
        received: "'2329991420,05'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'the older layout',
      'CDDSC,2329991420,20,00,,00,26,R',
      {
        code: 'sentence-legacy-layout',
        grade: 'note',
        params: { limit: 11 },
        at: ['DSC'],
        expected: '11 fields',
        received: '7',
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'an area that may be a ship',
      'CDDSC,02,2350123450,10,09,26,,,,,S,',
      {
        code: 'sentence-area-or-identity',
        grade: 'check',
        params: { formatter: 'DSC', field: 2 },
        at: ['DSC', 'field', 2],
        expected: 'an area',
        received: "'2350123450'",
        clause: 'IEC 61162-1, DSC sentence',
      },
    ],
    [
      'a count from nought',
      'CDDSE,0,1,A,2329991420,00,33001200',
      {
        code: 'sentence-expansion-count',
        grade: 'check',
        params: { formatter: 'DSE', field: 1 },
        at: ['DSE', 'field', 1],
        expected: 'a count from 1 to 9 and a number up to it',
        received: "'0,1'",
        clause: 'IEC 61162-1, DSE sentence',
      },
    ],
    [
      'another flag',
      'CDDSE,1,1,X,2329991420,00,33001200',
      {
        code: 'sentence-expansion-flag',
        grade: 'check',
        params: { formatter: 'DSE', field: 3 },
        at: ['DSE', 'field', 3],
        expected: 'A, Q or R',
        received: "'X'",
        clause: 'IEC 61162-1, DSE sentence',
      },
    ],
    [
      'a data set of one digit',
      'CDDSE,1,1,A,2329991420,0,33001200',
      {
        code: 'sentence-expansion-code',
        grade: 'check',
        params: { formatter: 'DSE', field: 5 },
        at: ['DSE', 'field', 5],
        expected: 'two digits',
        received: "'0'",
        clause: 'IEC 61162-1, DSE sentence',
      },
    ],
    [
      'seven decimals',
      'CDDSE,1,1,A,2329991420,00,3300120',
      {
        code: 'sentence-expansion-data',
        grade: 'check',
        params: { formatter: 'DSE', field: 6 },
        at: ['DSE', 'field', 6],
        expected: 'as many digits as the set has',
        received: "'3300120'",
        clause: 'IEC 61162-1, DSE sentence',
      },
    ],
    [
      'an expansion of no identity',
      'CDDSE,1,1,A,TERN,00,33001200',
      {
        code: 'sentence-identity',
        grade: 'check',
        params: { formatter: 'DSE', field: 4 },
        at: ['DSE', 'field', 4],
        expected: 'nine digits and a 0',
        received: "'TERN'",
        clause: 'IEC 61162-1, DSE sentence',
      },
    ],
    [
      'an expansion without a call',
      'CDDSE,1,1,A,2329991420,00,33001200',
      {
        code: 'sentence-expansion-alone',
        grade: 'check',
        params: {},
        at: ['DSE', 'field', 4],
        received: '232999142',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'own position not valid',
      'GPRMC,140412.00,V,5620.3300,N,00630.1200,W,5.2,184.0,010626,1.5,W,A',
      {
        code: 'sentence-fix-not-valid',
        grade: 'check',
        params: { formatter: 'RMC', field: 3 },
        at: ['RMC', 'field', 3],
        expected: 'a valid fix',
        received: "'5620.3300,N,00630.1200,W'",
        clause: 'IEC 61162-1, RMC sentence',
      },
    ],
    [
      'own position simulated',
      'GPGLL,5620.3300,N,00630.1200,W,140412.00,A,S',
      {
        code: 'sentence-fix-simulated',
        grade: 'check',
        params: { formatter: 'GLL', field: 1 },
        at: ['GLL', 'field', 1],
        expected: 'a valid fix',
        received: "'5620.3300,N,00630.1200,W'",
        clause: 'IEC 61162-1, GLL sentence',
      },
    ],
    [
      'own position keyed in',
      'GPGLL,5620.3300,N,00630.1200,W,140412.00,A,M',
      {
        code: 'sentence-fix-manual',
        grade: 'check',
        params: { formatter: 'GLL', field: 1 },
        at: ['GLL', 'field', 1],
        expected: 'a fix',
        received: "'5620.3300,N,00630.1200,W'",
        clause: 'IEC 61162-1, GLL sentence',
      },
    ],
    [
      'own position by dead reckoning',
      'GPGGA,140412.00,5620.3300,N,00630.1200,W,6,09,0.9,3.0,M,50.1,M,,',
      {
        code: 'sentence-fix-estimated',
        grade: 'check',
        params: { formatter: 'GGA', field: 2 },
        at: ['GGA', 'field', 2],
        expected: 'a fix',
        received: "'5620.3300,N,00630.1200,W'",
        clause: 'IEC 61162-1, GGA sentence',
      },
    ],
    [
      'own position of 60 minutes',
      'GNGNS,140412.00,5660.0000,N,00630.1200,W,A,12,0.9,3.0,50.1,,',
      {
        code: 'sentence-fix-unreadable',
        grade: 'check',
        params: { formatter: 'GNS', field: 2 },
        at: ['GNS', 'field', 2],
        expected: 'ddmm.mm,N,dddmm.mm,E',
        received: "'5660.0000,N,00630.1200,W'",
        clause: 'IEC 61162-1, GNS sentence',
      },
    ],
  ] as const)('%s it is said', (_, body, notice) => {
    expect(firstOf(body)).toEqual(notice);
  });
});

describe('of an order to the radio', () => {
  it('to all ships with a station in it is said', () => {
    expect(firstOf('CDDSC,16,2329991420,08,00,26,900016,,,,S,', 'commanded')).toEqual({
      code: 'sentence-address-unexpected',
      grade: 'check',
      params: { formatter: 'DSC', field: 2 },
      at: ['DSC', 'field', 2],
      expected: 'an empty field',
      received: "'2329991420'",
      clause: 'IEC 61162-1, DSC sentence',
    });
  });

  it('to an area without one it is said', () => {
    expect(firstOf('CDDSC,02,23299914,08,00,26,900016,,,,S,', 'commanded')).toEqual({
      code: 'sentence-area',
      grade: 'check',
      params: { formatter: 'DSC', field: 2 },
      at: ['DSC', 'field', 2],
      expected: 'ten digits',
      received: "'23299914'",
      clause: 'IEC 61162-1, DSC sentence',
    });
  });
});

describe('of an expansion that', () => {
  it.each([
    [
      'did not come',
      ['CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E'],
      0,
      {
        code: 'sentence-expansion-missing',
        grade: 'check',
        params: {},
        at: ['DSC', 'field', 11],
        expected: 'DSE sentences directly after the call',
        received: '0',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'is of another station',
      ['CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E', 'CDDSE,1,1,A,2329995630,00,33001200'],
      1,
      {
        code: 'sentence-expansion-other-station',
        grade: 'check',
        params: { waiting: '232999142' },
        at: ['DSE', 'field', 4],
        expected: '232999142',
        received: '232999563',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'was not announced',
      ['CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,', 'CDDSE,1,1,A,2329991420,00,33001200'],
      0,
      {
        code: 'sentence-expansion-unannounced',
        grade: 'check',
        params: { station: '232999142' },
        at: ['DSC', 'field', 11],
        expected: 'E',
        received: "''",
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'is one sentence late',
      [
        'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E',
        'GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A',
        'CDDSE,1,1,A,2329991420,00,33001200',
      ],
      0,
      {
        code: 'sentence-expansion-late',
        grade: 'check',
        params: { station: '232999142' },
        at: ['DSE'],
        expected: 'the very next sentence',
        received: '1',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'is two sentences late',
      [
        'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E',
        'GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A',
        'GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A',
        'CDDSE,1,1,A,2329991420,00,33001200',
      ],
      0,
      {
        code: 'sentence-expansion-late',
        grade: 'check',
        params: { station: '232999142' },
        at: ['DSE'],
        expected: 'the very next sentence',
        received: '2',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
  ] as const)('%s it is said', (_, bodies, place, notice) => {
    const readings = readSentences(bodies.map((body) => line(body)).join(''));
    expect(readings[place]?.notices.map(dataOf)).toEqual([notice]);
  });
});

describe('the words of a notice', () => {
  // A list of terms, and a term chosen by a count: both are made again from the params.
  it.each([
    [
      ['CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E', 'CDDSE,2,1,A,2329991420,00,33001200,02,0125'],
      'Expansion: only 1 of its DSE sentences came, applied: decimals of the position, speed',
    ],
    [
      [
        'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E',
        'GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A',
        'CDDSE,1,1,A,2329991420,00,33001200',
      ],
      'Expansion for 232999142 did not follow its call directly: 1 sentence came between',
    ],
  ])('are those of the catalogue', (bodies, message) => {
    const [notice] = readSentences(bodies.map((body) => line(body)).join(''))[0]?.notices ?? [];
    expect(notice?.message).toBe(message);
    expect(translate({ params: {}, ...notice } as Translatable, english).text).toBe(message);
  });
});

describe('of AIS with', () => {
  it.each([
    [
      'a number that is not read',
      'AIVDM,1,1,,A,6000000000000000000000000000,0',
      {
        code: 'sentence-ais-unread',
        grade: 'note',
        params: {},
        at: ['AIS'],
        received: '6',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'one bit',
      'AIVDM,1,1,,A,1,5',
      {
        code: 'sentence-ais-short',
        grade: 'check',
        params: { message: 1, least: 137 },
        at: ['AIS'],
        expected: 'at least 137 bits',
        received: '1',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'too few bits',
      'AIVDM,1,1,,A,10000000000,0',
      {
        code: 'sentence-ais-short',
        grade: 'check',
        params: { message: 1, least: 137 },
        at: ['AIS'],
        expected: 'at least 137 bits',
        received: '66',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'ten digits of identity',
      'AIVDM,1,1,,A,1>qc:00000000000000000000000,0',
      {
        code: 'sentence-ais-identity',
        grade: 'check',
        params: {},
        at: ['AIS'],
        received: '1000000000',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'a position that is no place',
      'AIVDM,1,1,,A,13N=8qP000<tSGpkOqP000000000,0',
      {
        code: 'sentence-ais-position',
        grade: 'check',
        params: {},
        at: ['AIS'],
        received: '90, 181.0001',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'a payload of other characters',
      'AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vX0000,0',
      {
        code: 'sentence-ais-payload',
        grade: 'check',
        params: {},
        at: ['AIS'],
        received: "'!AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vX0…'",
        clause: 'IEC 61162-1, VDM and VDO sentences',
      },
    ],
    [
      'a second of one sentence',
      'AIVDM,1,2,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,0',
      {
        code: 'sentence-ais-count',
        grade: 'check',
        params: {},
        at: ['AIS'],
        received: "'!AIVDM,1,2,,A,13N=;o@P0lwhmLHLkMa7<?vH0…'",
        clause: 'IEC 61162-1, VDM and VDO sentences',
      },
    ],
    [
      'only the first of two sentences',
      'AIVDM,2,1,3,A,53N=8qP000000000001@E8p0000000000000000000000000000000000000,0',
      {
        code: 'sentence-ais-incomplete',
        grade: 'check',
        params: {},
        at: ['AIS'],
        received: "'!AIVDM,2,1,3,A,53N=8qP000000000001@E8p0…'",
        clause: 'IEC 61162-1, VDM and VDO sentences',
      },
    ],
  ] as const)('%s it is said', (_, body, notice) => {
    const readings = readSentences(line(body, '!'));
    expect(readings.map(({ notices }) => notices.map(dataOf))).toEqual([[notice]]);
  });
});
