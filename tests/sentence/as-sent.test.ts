import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import {
  createSentenceRepairer,
  findFaults,
  readSentences,
  writeSentences,
} from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

const read = (...bodies: string[]): Reading[] => readSentences(bodies.map((body) => line(body)).join(''));
const call = (...bodies: string[]): Reading<'call'> => read(...bodies)[0] as Reading<'call'>;
const codes = (readings: readonly Reading[]): string[] =>
  readings.flatMap(({ notices }) => notices.map(({ code }) => code));

// IEC 61162-1 ed. 4.0 clause 8.3.29, the three examples of the DSC sentence: the third as publicly restated, the fields
// of the others from memory, with the printed checksum of each.
describe('the examples of the standard', () => {
  const examples = [
    [
      '$CVDSC,12,3601234560,12,05,00,1474712519,0817,,,,S,E*51',
      {
        kind: 'distress-alert',
        from: '360123456',
        nature: 'sinking',
        position: {
          latitude: { hemisphere: 'N', degrees: 47, minutes: 47 },
          longitude: { hemisphere: 'W', degrees: 125, minutes: 19 },
        },
        time: { hour: 8, minute: 17 },
        subsequent: 'telephony-simplex',
      },
    ],
    [
      '$CTDSC,16,0112345670,12,12,09,1474712519,0817,3601234560,05,S*19',
      {
        kind: 'distress-relay',
        from: '011234567',
        distressed: '360123456',
        nature: 'sinking',
        subsequent: 'telephony-j3e',
        time: { hour: 8, minute: 17 },
      },
    ],
    [
      '$CTDSC,16,0112345670,08,09,26,041250,,,,S*11',
      {
        kind: 'all-ships-call',
        from: '011234567',
        category: 'safety',
        firstTelecommand: 'telephony-j3e',
        frequencies: { receive: '041250', transmit: null },
      },
    ],
  ] as const;

  it.each(examples)('%s', (sentence, expected) => {
    const [reading] = readSentences(`${sentence}\r\n`) as [Reading<'call'>];
    expect(reading.call).toMatchObject(expected);
    expect(reading.notices.filter(({ code }) => code.startsWith('sentence-fields'))).toEqual([]);
    expect(reading.notices.map(({ code }) => code)).not.toContain('sentence-acknowledgement');
    const isAwaited = reading.notices.some(({ code }) => code === 'sentence-expansion-missing');
    expect(isAwaited).toBe(sentence.includes('S,E*'));
  });

  it('with one field more than eleven have their acknowledgement and mark read, repeated or not', () => {
    const readings = readSentences(`${examples[0][0]}\r\n`.repeat(2)) as Reading<'call'>[];
    expect(readings.map(({ event, repeat, stage }) => [event, repeat, stage])).toEqual([
      [1, 0, 'final'],
      [1, 1, 'final'],
    ]);
    expect(findFaults(`${examples[0][0]}\r\n`).findings.map(({ id }) => id)).toEqual([
      'talker',
      'expansion-missing',
    ]);
  });
});

// Ship to ship the caller proposes a channel, a coast station names it in its answer: ITU-R M.541-11 Annex 3, from memory.
describe('a call without a channel', () => {
  const unnamed = (format: string, from: string, category: string, end: string): string[] => {
    const body = `CDDSC,${format},${from}0,${category},00,26,,,,,${end},`;
    const readings = readSentences(line(body), { own: '232999871' });
    return codes(readings).filter((code) => code.startsWith('call-channel'));
  };

  it('is told from one that may omit it', () => {
    const [ship, coast] = ['232999142', '002329990'];
    expect(unnamed('20', ship, '00', 'R')).toEqual(['call-channel-none']);
    expect(unnamed('20', coast, '00', 'R')).toEqual([]);
    expect(unnamed('20', coast, '00', 'B')).toEqual(['call-channel-none']);
    expect(unnamed('16', ship, '10', 'S')).toEqual(['call-channel-none']);
    expect(unnamed('14', ship, '00', 'S')).toEqual(['call-channel-none']);
  });
});

// IEC 61162-1 ed. 4.0 clause 8.3.30, as publicly restated.
describe('a group of DSE sentences', () => {
  const announced = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E';

  it('goes on without flag and identity', () => {
    const group = [
      'CDDSE,3,1,A,2329991420,00,23451234',
      'CDDSE,3,2,,,02,0125',
      "CDDSE,3,3,,,04,TERN'1,06,0004",
    ];
    const [reading, ...others] = read(announced, ...group) as Reading<'call'>[];
    expect(others).toEqual([]);
    expect(reading?.notices).toEqual([]);
    expect(reading?.stage).toBe('final');
    expect(reading?.call).toMatchObject({
      position: { fraction: { latitude: 2345, longitude: 1234 } },
      expansion: { speed: 12.5, stationName: 'TERN,1', personsOnBoard: 4 },
    });
    const repairer = createSentenceRepairer({ repair: ['expansion-late'] });
    const between = 'GPGLL,,,,,,V,N';
    const late = [announced, group[0], between, group[1], group[2]].map((body) => line(body ?? ''));
    const { output } = repairer.push(late.join(''));
    expect(output).toBe([announced, ...group, between].map((body) => line(body)).join(''));
  });

  it('of which a sentence is lost says what was applied', () => {
    const readings = read(announced, 'CDDSE,3,1,A,2329991420,00,23451234', 'CDDSE,3,3,,,04,TERN');
    expect(readings[0]?.notices[0]).toMatchObject({ params: { applied: [100] }, received: '1' });
    expect(codes(readings)).toEqual([
      'sentence-expansion-incomplete',
      'sentence-expansion-flag',
      'sentence-expansion-alone',
    ]);
  });

  it('that follows no open call joins none', () => {
    expect(read('CDDSE,2,2,,,02,0125')).toMatchObject([{ kind: 'expansion', station: '' }]);
  });

  it('asks for data and says that there is none, by a command in place of the data', () => {
    const { call: asked } = call(announced, 'CDDSE,1,1,A,2329991420,02,C10,03,C26,06,');
    expect(asked.expansion).toEqual({ requested: [102], unavailable: [103, 106] });
    const { sentences } = writeSentences(asked, { direction: 'received' });
    expect(sentences[1]?.slice(0, -3)).toBe('$CDDSE,2,1,Q,2329991420,02,');
    expect(sentences[2]?.slice(0, -3)).toBe('$CDDSE,2,2,A,2329991420,03,C26,06,C26');
  });

  it('writes the comma of a name as an apostrophe, and an apostrophe by its code', () => {
    const named = call(announced, "CDDSE,1,1,A,2329991420,04,ABC'123^27X").call;
    expect(named.expansion?.stationName).toBe("ABC,123'X");
    expect(writeSentences(named, { direction: 'received' }).sentences[1]).toContain("04,ABC'123^27X*");
  });

  it('refines an area', () => {
    const { call: area } = call(
      'CTDSC,02,1510080405,10,09,26,,,,,S,E',
      'CTDSE,1,1,A,1510080405,05,123459990000305001251840',
    );
    expect(area.expansion?.area).toEqual({
      latitude: 12.34,
      longitude: 59.99,
      southward: 0,
      eastward: 30.5,
      speed: 12.5,
      course: 184,
    });
  });
});

// Found by trial: composing what was received must not be refused by its own length.
describe('an old layout with an expansion too long to be written again', () => {
  it('is found without a correction', () => {
    const report = findFaults(
      line('CDDSC,2329991420,20,08,26,1562000630,1404,B') +
        line(`CDDSE,1,1,A,2329991420,04,${'X'.repeat(90)}`),
    );
    const legacy = report.findings.find(({ id }) => id === 'legacy-layout');
    expect(legacy?.sightings[0]).not.toHaveProperty('corrected');
  });
});

// Common practice, no source: what a broken line seems to lack was perhaps sent.
describe('a fragment of a broken line', () => {
  const whole = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,');
  const fragments = [
    '$CDDSC,20,2329991420,08,21,26,156',
    '$CDDSC,20,2329991420',
    '$CDDSE,1,1,A,232',
    '$CD',
    '0630,1404,,,B,*39',
  ];

  it.each(fragments)('%s gives no certain finding of its own', (fragment) => {
    for (const log of [`${whole}${fragment}\r\n`, `${fragment}${whole}`, `${fragment}\r\n${whole}`]) {
      const plain = new Map(findFaults(whole).findings.map(({ id, count }) => [id, count]));
      for (const { id, certainty, count } of findFaults(log).findings) {
        if (count > (plain.get(id) ?? 0)) expect([id, certainty]).not.toEqual([id, 'certain']);
      }
    }
  });

  it('does not hide that a talker sends no checksums', () => {
    const bare = '$CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,\r\n';
    const missing = findFaults(bare.repeat(2)).findings.find(({ id }) => id === 'checksum-missing');
    expect(missing?.certainty).toBe('certain');
  });
});

describe('the count of lines', () => {
  it.each([
    ['', 0],
    ['a', 1],
    ['a\r\n', 1],
    ['a\r\nb', 2],
    ['a\r\n\r\nb\r\n', 3],
    ['\n\n', 2],
    ['\r\r', 2],
    ['a\rb\nc', 3],
    [line('GPGLL,,,,,,V,N').trim() + line('GPGLL,,,,,,V,N'), 1],
  ])('of %j is %i', (text, lines) => {
    expect(findFaults(text).lines).toBe(lines);
  });
});

// ITU-R M.1371-6 Annex 7: message 11 is the answer of a mobile station to an enquiry for UTC and date, with the bits of 4.
describe('AIS message 11', () => {
  it('is read like message 4, and is of a ship', () => {
    const four = '13P88dvwq6`Ai=vw<d0000000000';
    const base = `!AIVDM,1,1,,A,4${four.slice(1)},0`;
    const [read4] = readSentences(line(base.slice(1), '!'));
    const [read11] = readSentences(line(base.slice(1).replace(',A,4', ',A,;'), '!'));
    if (read4?.kind !== 'ais' || read11?.kind !== 'ais') throw new Error('no report was read');
    expect(read11.report).toEqual({ ...read4.report, message: 11, station: 'ship' });
    expect(read4.report.station).toBe('base-station');
  });
});
