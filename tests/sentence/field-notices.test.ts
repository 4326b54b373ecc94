import { describe, expect, it } from 'vitest';
import { readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// The whole notice, as people and programs get it. Stations and places are invented.
const firstOf = (body: string, direction: 'received' | 'commanded' = 'received'): unknown =>
  readSentences(line(body), { direction })[0]?.notices[0];

describe('of a sentence with', () => {
  it.each([
    [
      'a station that is no identity',
      'CDDSC,20,XX,00,00,26,900072,,,,R,',
      {
        code: 'sentence-identity',
        message: "DSC field 2: expected nine digits and a 0, got 'XX'",
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
        message: "DSC field 2: expected '2329991420', got '232999142'",
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
        message: "DSC field 3: expected two digits, got '0'",
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
        message: "DSC field 6: expected 10 digits of position, or 6, 8, 12 or 16 of frequency, got '9000'",
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
        message: "DSC field 7: expected four digits, hours and minutes UTC, got '14'",
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
        message: "DSC field 10: expected R, B or S, got 'X'",
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
        message: "DSC field 11: expected E or nothing, got 'F'",
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
        message: 'DSC sentence: expected 11 fields, got 1, the missing ones are read as empty',
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
        message: 'DSC sentence: expected 11 fields, got 12, the others are ignored',
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
        message: 'DSC sentence: expected 11 fields, got 8, the missing ones are read as empty',
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
        message: "DSC field 8: expected empty fields, got '2329991420,05'",
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
        message: 'DSC sentence: expected 11 fields, got 7, the identity comes first, as in the older layout',
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
        message: "DSC field 2: '2350123450' is read as an area and may be a station",
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
        message: "DSE field 1: expected a count from 1 to 9 and a number up to it, got '0,1'",
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
        message: "DSE field 3: expected A, Q or R, got 'X'",
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
        message: "DSE field 5: expected two digits, got '0'",
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
        message: "DSE field 6: expected as many digits as the set has, got '3300120'",
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
        message: "DSE field 4: expected nine digits and a 0, got 'TERN'",
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
        message: 'Expansion for 232999142 matches no call that was read',
        at: ['DSE', 'field', 4],
        received: '232999142',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'own position not valid',
      'GPRMC,140412.00,V,5620.3300,N,00630.1200,W,5.2,184.0,010626,1.5,W,A',
      {
        code: 'sentence-fix-unusable',
        message: "RMC field 3: '5620.3300,N,00630.1200,W' is marked as not valid and is not used",
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
        code: 'sentence-fix-unusable',
        message: "GLL field 1: '5620.3300,N,00630.1200,W' is simulated and is not used",
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
        code: 'sentence-fix-estimated',
        message: "GLL field 1: '5620.3300,N,00630.1200,W' was entered by hand",
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
        message: "GGA field 2: '5620.3300,N,00630.1200,W' is dead reckoning, not a fix",
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
        message: "GNS field 2: expected ddmm.mm,N,dddmm.mm,E, got '5660.0000,N,00630.1200,W'",
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
      message: "DSC field 2: expected an empty field, got '2329991420'",
      at: ['DSC', 'field', 2],
      expected: 'an empty field',
      received: "'2329991420'",
      clause: 'IEC 61162-1, DSC sentence',
    });
  });

  it('to an area without one it is said', () => {
    expect(firstOf('CDDSC,02,23299914,08,00,26,900016,,,,S,', 'commanded')).toEqual({
      code: 'sentence-area',
      message: "DSC field 2: expected ten digits, got '23299914'",
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
        message: 'Expansion: none of its DSE sentences came, the call stays as it is',
        at: ['DSC', 'field', 11],
        expected: 'DSE sentences directly after the call',
        received: '0 of them',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
    [
      'is of another station',
      ['CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E', 'CDDSE,1,1,A,2329995630,00,33001200'],
      1,
      {
        code: 'sentence-expansion-other-station',
        message: 'Expansion for 232999563 is not applied to the call of 232999142',
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
        message: 'Expansion for 232999142 was applied, although the call did not announce it',
        at: ['DSC', 'field', 11],
        expected: 'E',
        received: 'nothing',
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
        message: 'Expansion for 232999142 did not follow its call directly: 1 sentence came between',
        at: ['DSE'],
        expected: 'the very next sentence',
        received: '1 sentence between',
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
        message: 'Expansion for 232999142 did not follow its call directly: 2 sentences came between',
        at: ['DSE'],
        expected: 'the very next sentence',
        received: '2 sentences between',
        clause: 'IEC 61162-1, DSC and DSE sentences',
      },
    ],
  ] as const)('%s it is said', (_, bodies, place, notice) => {
    const readings = readSentences(bodies.map((body) => line(body)).join(''));
    expect(readings[place]?.notices).toEqual([notice]);
  });
});

describe('of AIS with', () => {
  it.each([
    [
      'a number that is not read',
      'AIVDM,1,1,,A,6000000000000000000000000000,0',
      {
        code: 'sentence-ais-unread',
        message: 'AIS message 6 is not read',
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
        message: 'AIS message 1: expected at least 137 bits, got 1 bit',
        at: ['AIS'],
        received: '1 bit',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'too few bits',
      'AIVDM,1,1,,A,10000000000,0',
      {
        code: 'sentence-ais-short',
        message: 'AIS message 1: expected at least 137 bits, got 66 bits',
        at: ['AIS'],
        received: '66 bits',
        clause: 'ITU-R M.1371-6 Annex 7',
      },
    ],
    [
      'ten digits of identity',
      'AIVDM,1,1,,A,1>qc:00000000000000000000000,0',
      {
        code: 'sentence-ais-identity',
        message: 'AIS identity 1000000000 has more than nine digits',
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
        message: 'AIS position 90, 181.0001 is out of range and is left out',
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
        message:
          "AIS sentence '!AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vX0…' cannot be read: its payload is malformed",
        at: ['AIS'],
        received: "'!AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vX0…'",
        clause: 'IEC 61162-1, VDM and VDO sentences',
      },
    ],
    [
      'a second of one sentence',
      'AIVDM,1,2,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,0',
      {
        code: 'sentence-ais-payload',
        message:
          "AIS sentence '!AIVDM,1,2,,A,13N=;o@P0lwhmLHLkMa7<?vH0…' cannot be read: its count of parts is malformed",
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
        message:
          "AIS sentence '!AIVDM,2,1,3,A,53N=8qP000000000001@E8p0…' is part of a message whose other parts are missing",
        at: ['AIS'],
        received: "'!AIVDM,2,1,3,A,53N=8qP000000000001@E8p0…'",
        clause: 'IEC 61162-1, VDM and VDO sentences',
      },
    ],
  ] as const)('%s it is said', (_, body, notice) => {
    const readings = readSentences(line(body, '!'));
    expect(readings.map(({ notices }) => notices)).toEqual([[notice]]);
  });
});
