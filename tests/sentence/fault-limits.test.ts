import { describe, expect, it } from 'vitest';
import { rangeAndBearing } from '../../src/position/index.ts';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import { FAULTS, type FaultReport, findFaults } from '../../src/sentence/index.ts';
import { bitsOf, sentencesOf } from '../oracle/sentence-ais.ts';
import { line } from './arbitrary.ts';
import { cleanLog } from './clean-log.ts';

// Signs of faults: common practice, no source. Stations and places are invented.
const look = (
  bodies: readonly string[],
  options?: NonNullable<Parameters<typeof findFaults>[1]>,
): FaultReport => findFaults(bodies.map((body) => line(body)).join(''), options);
const idsOf = ({ findings }: FaultReport): string[] => findings.map(({ id }) => id);
const ids = (bodies: readonly string[], options?: NonNullable<Parameters<typeof findFaults>[1]>): string[] =>
  idsOf(look(bodies, options));
const seen = (
  bodies: readonly string[],
  id: string,
  options?: NonNullable<Parameters<typeof findFaults>[1]>,
): unknown[] =>
  look(bodies, options).findings.flatMap((finding) =>
    finding.id === id ? finding.sightings.map((sighting) => sighting.seen) : [],
  );
/** What the first finding of a stream shows. */
const shown = (input: string | Uint8Array): unknown => findFaults(input).findings[0]?.sightings[0]?.seen;
const own = 'GPRMC,140500.00,A,5621.1000,N,00632.4000,W,5.2,184.0,010626,1.5,W,A';
const reply = (place: string, decimals: string, time = '1404', talker = 'CD'): string[] => [
  `${talker}DSC,20,2329991420,08,21,26,${place},${time},,,B,E`,
  `${talker}DSE,1,1,A,2329991420,00,${decimals}`,
];

describe('clean logs', () => {
  it('have no fault', () => {
    for (let seed = 1; seed <= 25; seed += 1) {
      const { text, options } = cleanLog(seed);
      expect([seed, idsOf(findFaults(text, options))]).toEqual([seed, []]);
    }
  });
});

describe('bytes that are no text', () => {
  const bytes = (foreign: number, sound: number, code = 0xf3): string[] =>
    idsOf(findFaults(Uint8Array.from([...Array(foreign).fill(code), ...Array(sound).fill(0x41)])));

  it('are told from sixteen bytes on, when more than a fifth of them cannot be text', () => {
    expect(bytes(16, 0)).toEqual(['wrong-speed']);
    expect(bytes(15, 0)).toEqual(['no-sentence']);
    expect(bytes(4, 16)).toEqual(['no-sentence']);
    expect(bytes(5, 19)).toEqual(['wrong-speed']);
  });

  it.each([0x7f, 0x80, 0xff, 0x00, 0x08, 0x0b, 0x0c, 0x0e, 0x1f])('may be of %i', (code) => {
    expect(bytes(16, 0, code)).toEqual(['wrong-speed']);
  });

  it.each([0x21, 0x7e])('are not of %i', (code) => {
    expect(bytes(16, 0, code)).toEqual(['no-sentence']);
  });

  it.each([0x09, 0x0a, 0x0d, 0x20])('are nothing at all when they are all %i', (code) => {
    expect(bytes(16, 0, code)).toEqual(['no-data']);
  });

  it.each([0x00, 0xff, 0x80, 0xe0, 0xfe, 0x7f, 0x1f, 0x07, 0x01])(
    'are of a slow line on a fast port when they look like %i',
    (code) => {
      expect(shown(Uint8Array.from(Array(20).fill(code)))).toMatchObject({
        code: 'sentence-seen-slow',
        params: { foreign: 20, count: 20 },
      });
    },
  );

  it.each([0xf3, 0x81, 0xa0, 0x15, 0x12])('are not when they look like %i', (code) => {
    expect(shown(Uint8Array.from(Array(20).fill(code)))).toMatchObject({
      code: 'sentence-seen-foreign',
      params: { foreign: 20, count: 20 },
    });
  });

  it.each([' ', '\t', '\r', '\n'])('are not blanks or line ends: %j', (blank) => {
    expect(idsOf(findFaults(`x${blank.repeat(40)}`))).toEqual(['no-sentence']);
  });

  it('are of a slow line only when more than half of them are', () => {
    const mixed = (slow: number, other: number): unknown =>
      shown(Uint8Array.from([...Array(slow).fill(0xe0), ...Array(other).fill(0xf3)]));
    expect(mixed(10, 10)).toMatchObject({ code: 'sentence-seen-foreign' });
    expect(mixed(11, 10)).toMatchObject({ code: 'sentence-seen-slow' });
    expect(shown('\u0100'.repeat(20))).toMatchObject({ code: 'sentence-seen-foreign' });
  });

  it('do not hide a sound sentence', () => {
    const noise = String.fromCharCode(0xf3).repeat(200);
    expect(
      idsOf(findFaults(`${noise}\r\n${line(own)}${line('CDDSC,20,2329991420,08,18,26,,,,,R,')}`)),
    ).toEqual([]);
  });

  it('may come in any number', () => {
    const { characters, findings } = findFaults(new Uint8Array(10_000).fill(0xf3));
    expect([characters, findings[0]?.sightings[0]?.seen]).toMatchObject([
      10_000,
      { code: 'sentence-seen-foreign', params: { foreign: 10_000, count: 10_000 } },
    ]);
  });
});

describe('a position in the wrong quadrant', () => {
  const east = reply('0562000630', '33001200');

  it('is told by own position, from the stream or from beside it', () => {
    expect(ids([own, ...east])).toEqual(['wrong-quadrant']);
    expect(ids(east, { position: { latitude: 56.35, longitude: -6.54 } })).toEqual(['wrong-quadrant']);
    expect(ids(east)).toEqual([]);
  });

  it('is not told where both places are near, or neither', () => {
    expect(ids(reply('0560000010', '33001200'), { position: { latitude: 56, longitude: -0.2 } })).toEqual([]);
    expect(ids(east, { position: { latitude: 40, longitude: -6.54 } })).toEqual([]);
  });

  it('is told within a hundred nautical miles of the place it would be, on the meridian', () => {
    // A minute of latitude is 1852 to 1861 m here: 99 minutes lie within, 101 beyond.
    const south = reply('2560000000', '00000001');
    expect(ids(south, { position: { latitude: 56 + 99 / 60, longitude: 0 } })).toEqual(['wrong-quadrant']);
    expect(ids(south, { position: { latitude: 56 + 101 / 60, longitude: 0 } })).toEqual([]);
  });

  it('is not told of MF and HF, whose calls come from anywhere', () => {
    expect(ids([own, ...reply('0562000630', '33001200', '1404', 'CT')])).toEqual(['talker']);
    const alert = (telecommand: string): string[] => [
      own,
      `CDDSC,12,2329992180,,05,${telecommand},0561800627,1404,,,S,E`,
      'CDDSE,1,1,A,2329992180,00,11112222',
    ];
    expect(ids(alert('00'))).toEqual(['wrong-quadrant']);
    expect(ids(alert('09'))).toEqual([]);
  });
});

describe('minutes that are rounded', () => {
  const ais = (north: number, east: number): string =>
    sentencesOf(bitsOf('1', { message: 1, mmsi: 232_999_142, latitude: north, longitude: east }))
      .map((body) => line(body, '!'))
      .join('');
  /** Against her AIS: how many ten-thousandths of a minute she lies from where she says, inwards. */
  const against = (north: number, west: number, decimals: string, place = '1562100631'): string[] => {
    const sign = (quadrant: string): [number, number] => [
      '23'.includes(quadrant) ? -1 : 1,
      '13'.includes(quadrant) ? -1 : 1,
    ];
    const [up, right] = sign(place[0] as string);
    const latitude =
      (Number(place.slice(1, 3)) * 60 + Number(place.slice(3, 5))) * 10_000 + Number(decimals.slice(0, 4));
    const longitude =
      (Number(place.slice(5, 8)) * 60 + Number(place.slice(8))) * 10_000 + Number(decimals.slice(4));
    const log =
      ais(up * (latitude - north), right * (longitude - west)) +
      reply(place, decimals)
        .map((body) => line(body))
        .join('');
    return idsOf(findFaults(log));
  };

  it('are told by her AIS on both axes or on one', () => {
    expect(against(10_000, 10_000, '77008800')).toEqual(['minutes-rounded']);
    expect(against(10_000, 0, '77001200')).toEqual(['minutes-rounded']);
    expect(against(0, 10_000, '33008800')).toEqual(['minutes-rounded']);
    expect(against(10_000, 10_000, '77008800', '0562100631')).toEqual(['minutes-rounded']);
    expect(against(10_000, 10_000, '77008800', '2562100631')).toEqual(['minutes-rounded']);
    expect(against(10_000, 10_000, '77008800', '3562100631')).toEqual(['minutes-rounded']);
  });

  it.each([
    [8600, true],
    [11_400, true],
    [8400, false],
    [11_600, false],
    [0, false],
    [-10_000, false],
  ])('are a minute off, %i ten-thousandths are told: %s', (north, told) => {
    expect(against(north, 0, '77001200')).toEqual(told ? ['minutes-rounded'] : []);
    expect(against(0, north, '12007700')).toEqual(told ? ['minutes-rounded'] : []);
  });

  it('have decimals of a half or more, and the other axis fits', () => {
    expect(against(10_000, 0, '50001200')).toEqual(['minutes-rounded']);
    expect(against(10_000, 0, '49991200')).toEqual([]);
    expect(against(0, 10_000, '12005000')).toEqual(['minutes-rounded']);
    expect(against(0, 10_000, '12004999')).toEqual([]);
    expect(against(10_000, 1400, '77001200')).toEqual(['minutes-rounded']);
    expect(against(10_000, 1600, '77001200')).toEqual([]);
    expect(against(10_000, -1600, '77001200')).toEqual([]);
    expect(against(0, 0, '12001200')).toEqual([]);
  });

  it('are told by the last place that AIS has of her, whatever message follows it', () => {
    const place = ais((56 * 60 + 20) * 10_000 + 7700, -(6 * 60 + 30) * 10_000 - 8800);
    const name = sentencesOf(bitsOf('5', { message: 5, mmsi: 232_999_142, name: 'TERN' }))
      .map((body) => line(body, '!'))
      .join('');
    const call = reply('1562100631', '77008800')
      .map((body) => line(body))
      .join('');
    expect(idsOf(findFaults(place + call))).toEqual(['minutes-rounded']);
    expect(idsOf(findFaults(place + name + call))).toEqual(['minutes-rounded']);
    expect(idsOf(findFaults(name + call))).toEqual([]);
  });

  const twice = (
    one: readonly [string, string, string?],
    other: readonly [string, string, string?],
  ): string[] => ids([...reply(...one), ...reply(...other)]);

  it('are told by a jump between two reports of the same minute', () => {
    expect(twice(['1562000630', '49801200'], ['1562100630', '51001210'])).toEqual(['minutes-rounded']);
    expect(twice(['1562000630', '12004980'], ['1562000631', '12105100'])).toEqual(['minutes-rounded']);
    expect(twice(['1562000630', '49801200'], ['1562100630', '51001210', '1405'])).toEqual([]);
    expect(twice(['1562000630', '49801200'], ['1562100630', '51001210', '1504'])).toEqual([]);
    expect(twice(['1562000630', '51001200'], ['1562100630', '51001210'])).toEqual([]);
    expect(twice(['1562000630', '39801200'], ['1562100630', '41001210'])).toEqual([]);
    expect(twice(['1562000630', '49801200'], ['1562200630', '51001210'])).toEqual([]);
    expect(twice(['1562000630', '40001200'], ['1562100630', '54001210'])).toEqual(['minutes-rounded']);
    expect(twice(['1562000630', '34001200'], ['1562000630', '54001210'])).toEqual(['duplicates']);
    expect(twice(['1562000630', '34001200'], ['1562100630', '50001210'])).toEqual([]);
    expect(twice(['1562000630', '34001200'], ['1562000630', '50001210'])).toEqual(['duplicates']);
  });
});

describe('reports that lack something', () => {
  // The same minute, a mile further: were they one ship's, her minutes would be rounded.
  const first = reply('1562000630', '49801200');
  const second = reply('1562100630', '51001210');
  const [from, to] = ['2329991420', 'XX'];

  it('of stations that cannot be read are not those of one ship', () => {
    expect(ids([...first, ...second])).toEqual(['minutes-rounded']);
    const unread = [...first, ...second].map((body) => body.replace(from, to));
    expect(ids(unread)).toEqual([]);
  });

  it('of no time are held against none', () => {
    const timeless = (bodies: readonly string[]): string[] =>
      bodies.map((body) => body.replace(',1404,', ',8888,'));
    const now = Date.UTC(2026, 5, 1, 14, 5);
    for (const options of [{}, { now }]) {
      expect(ids([...timeless(first), ...second], options)).toEqual(['no-time']);
      expect(ids([...first, ...timeless(second)], options)).toEqual(['no-time']);
    }
  });

  it('of a half minute already do not show by a jump that it was rounded', () => {
    expect(ids([...reply('1562000630', '49991200'), ...second])).toEqual(['minutes-rounded']);
    expect(ids([...reply('1562000630', '50001200'), ...second])).toEqual([]);
  });
});

describe('a time that is hours off', () => {
  const log = (time: string, options?: NonNullable<Parameters<typeof findFaults>[1]>): unknown[] =>
    seen([own, ...reply('1562000630', '33001200', time)], 'wrong-time', options);

  it.each([
    ['1404', []],
    ['1335', []],
    ['1311', []],
    ['1310', ['before', 1]],
    ['1305', ['before', 1]],
    ['1300', ['before', 1]],
    ['1259', []],
    ['1235', ['before', 1.5]],
    ['0205', ['before', 12]],
    ['0135', ['after', 11.5]],
    ['1505', ['after', 1]],
    ['1605', ['after', 2]],
    ['1410', []],
  ])('%s, received at 14:05', (time, [side, hours]) => {
    expect(log(time)).toMatchObject(
      side === undefined ? [] : [{ code: `sentence-seen-hours-${side}`, params: { hours } }],
    );
  });

  it('is certain enough only when the stream itself tells the receipt', () => {
    const now = Date.UTC(2026, 5, 1, 14, 5);
    const certainty = (
      bodies: readonly string[],
      options?: NonNullable<Parameters<typeof findFaults>[1]>,
    ): unknown => look(bodies, options).findings.find(({ id }) => id === 'wrong-time')?.certainty;
    expect(certainty([own, ...reply('1562000630', '33001200', '1305')])).toBe('likely');
    expect(certainty(reply('1562000630', '33001200', '1305'), { now })).toBe('possible');
    expect(certainty(reply('1562000630', '33001200', '1305'))).toBeUndefined();
  });
});

describe('digits that are missing', () => {
  const call = (station: string, time = '', format = '20'): string =>
    `CDDSC,${format},${station},00,00,26,900072,${time},,,R,`;

  it.each([
    ['23299914', ['leading-zero-lost']],
    ['2329991', ['leading-zero-lost']],
    ['232999', []],
    ['23299914X', []],
    ['X3299914', []],
    ['2329991423', ['identity-last-digit']],
    ['12329991423', []],
    ['23299914230', []],
    ['X329991423', []],
    ['2329991420', []],
    ['X329991423', []],
  ])('of station %s', (station, faults) => {
    expect(ids([call(station)])).toEqual(faults);
  });

  it.each([
    ['904', ['leading-zero-lost']],
    ['4', ['leading-zero-lost']],
    ['9045', []],
    ['90x', []],
    ['x90', []],
  ])('of time %s', (time, faults) => {
    expect(ids([call('2329991420', time)])).toEqual(faults);
    expect(ids([call('2329991420', time, '23')])).toEqual([]);
  });

  it('of a place', () => {
    const place = (text: string): string[] => ids([`CDDSC,20,2329991420,00,00,26,${text},,,,R,`]);
    expect(place('562000630')).toEqual(['leading-zero-lost']);
    expect(place('56200063')).toEqual([]);
    expect(place('56200063X')).toEqual(['bad-position']);
    expect(place('X562000630')).toEqual(['bad-position']);
  });

  it('of an area are no digits of a ship', () => {
    expect(ids(['CDDSC,02,1511080405,10,00,26,,,,,S,'])).toEqual([]);
  });
});

describe('what a call shows by itself', () => {
  it.each([
    ['no, of a safety call', 'CDDSC,20,2329991420,08,04,00,,,,,B,', {}, ['refused']],
    ['no, of another call', 'CDDSC,20,2329991420,00,04,00,,,,,B,', {}, []],
    [
      'no, of the one that was asked',
      'CDDSC,20,2329991420,00,04,00,,,,,B,',
      { expect: { station: '232999142' } },
      ['refused'],
    ],
    [
      'no, of another',
      'CDDSC,20,2329995630,00,04,00,,,,,B,',
      { expect: { station: '232999142' } },
      ['reply-missing'],
    ],
    ['an answer by polling', 'CDDSC,20,2329991420,00,03,26,,,,,B,', {}, ['polled']],
    ['a routine request', 'CDDSC,20,2329991420,00,21,26,,,,,R,', {}, ['category']],
    ['a safety request', 'CDDSC,20,2329991420,08,21,26,,,,,R,', {}, []],
    ['an own call', 'CDDSC,20,2329998710,08,21,26,,,,,R,', { own: '232999871' }, ['own-call']],
    ['an own call when nobody said so', 'CDDSC,20,2329998710,08,21,26,,,,,R,', {}, []],
    ['an alert without position and time', 'CDDSC,12,2329992180,,05,00,9999999999,8888,,,S,', {}, ['no-fix']],
    ['an alert with nothing said', 'CDDSC,12,2329992180,,05,00,,,,,S,', {}, []],
    [
      'an alert with a frequency in place of its position',
      'CDDSC,12,2329992180,,05,00,900016,1404,,,S,',
      {},
      [],
    ],
    [
      'a reply with a tenth digit',
      'CDDSC,20,2329991421,08,21,26,9999999999,8888,,,B,',
      {},
      ['no-fix', 'identity-last-digit'],
    ],
    ['an alert of quadrant 4', 'CDDSC,12,2329992180,,05,00,4562000630,1404,,,S,', {}, ['bad-position']],
    ['a relay without position', 'CDDSC,16,0023299900,12,12,00,9999999999,8888,2329992180,05,S,', {}, []],
    ['a test call', 'CDDSC,20,2329991420,08,18,26,,,,,R,', {}, []],
  ] as const)('%s', (_, body, options, faults) => {
    expect(ids([body], options)).toEqual(faults);
  });

  it('decimals of nought on one axis are decimals', () => {
    expect(ids(reply('1562000630', '00001200'))).toEqual([]);
    expect(ids(reply('1562000630', '12000000'))).toEqual([]);
    expect(ids(reply('1562000630', '00000000'))).toEqual(['no-expansion']);
  });

  it('that a station was polled is no fault when she answered with a position too', () => {
    expect(ids(['CDDSC,20,2329991420,00,03,26,,,,,B,', ...reply('1562000630', '33001200')])).toEqual([]);
  });
});

describe('a sentence without its checksum', () => {
  // It may be part of a broken line: what it lacks is at most likely, and nothing says how it should have been.
  const bare = (body: string): string => `$${body}\r\n`;
  const call = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E';
  const more = 'CDDSE,1,1,A,2329991420,00,33001200';
  const found = (text: string, id: string): unknown => {
    const finding = findFaults(text).findings.find((each) => each.id === id);
    return finding === undefined
      ? undefined
      : [finding.certainty, finding.sightings.map(({ corrected }) => corrected ?? null)];
  };
  const missing = (text: string): unknown => findFaults(line(own) + text).findings[0]?.certainty;

  it('is certain to lack it where it has all the fields of its kind, or where none has one', () => {
    expect(missing(bare(call))).toBe('certain');
    expect(missing(bare(call.slice(0, -2)))).toBe('certain');
    expect(missing(bare(call.slice(0, -4)))).toBe('likely');
    expect(missing(bare(own))).toBe('likely');
    expect(found(bare(own), 'checksum-missing')).toEqual(['certain', [null]]);
    expect(found(bare(own) + line(own), 'checksum-missing')).toEqual(['likely', [null]]);
  });

  it.each([
    [more, 'certain'],
    ['CDDSE,1,1,A,2329991420', 'likely'],
    ['CDDSE,1,1,A,2329991420,00', 'likely'],
    ['CDDSE,1,1,A,2329991420,00,33001200,01', 'likely'],
  ])('%s is %s to lack it alone', (body, certainty) => {
    expect(missing(bare(body))).toBe(certainty);
    expect(found(line(own) + bare(call) + bare(body), 'checksum-missing')).toEqual([certainty, [null, null]]);
  });

  it('has other faults only likely, and a possible one is no more than possible', () => {
    const sent = call.replace('08', '08 ');
    expect(found(line(sent) + line(more), 'blank-sent')).toEqual([
      'certain',
      [[line(call).trim(), line(more).trim()]],
    ]);
    expect(found(bare(sent) + line(more), 'blank-sent')).toEqual(['likely', [null]]);
    expect(found(line(sent) + bare(more), 'blank-sent')).toEqual(['likely', [null]]);
    const other = call.replace('CD', 'CV');
    const corrected = [line(call).trim(), line(more).trim()];
    expect(found(line(other) + line(more), 'talker')).toEqual(['possible', [corrected]]);
    expect(found(line(other) + bare(more), 'talker')).toEqual(['possible', [null]]);
    expect(found(bare(other) + bare(more), 'talker')).toEqual(['possible', [null]]);
  });
});

describe('a TAG block', () => {
  it('is told of whichever sentence of a call has it', () => {
    const [call = '', expansion = ''] = reply('1562000630', '33001200').map((body) => line(body));
    const { findings } = findFaults(`${call}\\s:R,n:1*${checksumOf('s:R,n:1')}\\${expansion}`);
    expect(findings).toMatchObject([
      { id: 'tag-block', certainty: 'possible', sightings: [{ line: 1, field: null, seen: '\\s:R,n:1\\' }] },
    ]);
  });
});

describe('the older layout', () => {
  it('is one fault, and its fields are not taken for others', () => {
    expect(ids(['CDDSC,2329992180,12,12,05,00,1562000630,S'])).toEqual(['legacy-layout']);
    expect(ids(['CDDSC,2329991420'])).toEqual(['legacy-layout']);
    expect(ids(['CDDSC,2329992180,12,12,05,00,15620006300,S'])).toEqual(['legacy-layout']);
    expect(ids(['CDDSC,23299921,12,12,05,00,1562000630,S'])).not.toContain('legacy-layout');
  });
});

describe('an expansion too many', () => {
  it('is late only when its call had none', () => {
    const [call = '', expansion = ''] = reply('1562000630', '33001200');
    expect(ids([call, expansion, expansion])).toEqual(['expansion-mismatch']);
    expect(ids([call, ...Array<string>(30).fill(own), expansion])).toEqual([
      'expansion-missing',
      'expansion-late',
    ]);
  });
});

describe('an expansion that is left over', () => {
  const [call = '', expansion = ''] = reply('1562000630', '33001200');
  const part = (number: number): string => `CDDSE,2,${number},A,2329991420,00,33001200`;
  const others = Array<string>(30).fill(own);

  it('is late where the first part of it came in time', () => {
    expect(ids([call, part(1), ...others, part(2)])).toEqual(['expansion-missing', 'expansion-late']);
  });

  it('is not late because of another thing that was noticed of the call', () => {
    const nine = call.replace('2329991420', '232999142');
    expect(ids([nine, expansion, ...others, expansion])).toEqual([
      'expansion-mismatch',
      'identity-nine-digits',
    ]);
  });

  it('is of another station for certain, whatever else is noticed of it', () => {
    const other = expansion.replace('2329991420', '2329995630').replace(',A,', ',A ,');
    const { findings } = look([call, other, expansion]);
    expect(findings.map(({ id, certainty }) => [id, certainty])).toEqual([
      ['blank-sent', 'certain'],
      ['expansion-late', 'certain'],
      ['expansion-mismatch', 'certain'],
    ]);
  });
});

describe('the whole of a stream', () => {
  const damaged = (difference: number, bodies: readonly string[]): string =>
    bodies
      .map((body) => line(body))
      .map((text) => {
        const star = text.indexOf('*');
        const sum = Number.parseInt(text.slice(star + 1, star + 3), 16) ^ difference;
        return `${text.slice(0, star + 1)}${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
      })
      .join('');
  const three = ['GPZDA,,,,,,', 'GPVTG,,T,,M,,N,,K,N', 'GPGLL,,,,,,V,N'];

  it('is rewritten between when three checksums or more are off alike and none is right', () => {
    expect(idsOf(findFaults(damaged(5, three)))).toEqual(['checksum-wrong', 'rewritten-between']);
    expect(idsOf(findFaults(damaged(5, three.slice(1))))).toEqual(['checksum-wrong']);
    expect(idsOf(findFaults(damaged(5, three.slice(1)) + damaged(6, three)))).toEqual(['checksum-wrong']);
    expect(idsOf(findFaults(damaged(5, three) + line(own)))).toEqual(['checksum-wrong']);
  });

  it('without a call has none although one was expected', () => {
    expect(ids([own], { expect: {} })).toEqual(['calls-filtered']);
    expect(findFaults(line(own)).findings.map(({ id, certainty }) => [id, certainty])).toEqual([
      ['calls-filtered', 'possible'],
    ]);
    expect(idsOf(findFaults('no sentence at all\r\n', { expect: {} }))).toEqual(['no-sentence']);
    expect(ids([own, 'CDDSC,20,2329991420,08,21,26,,,,,R,'], { expect: {} })).toEqual(['reply-missing']);
  });

  it.each([
    ['asked of her, she refused', 'CDDSC,20,2329991420,08,04,00,,,,,B,', '232999142', ['refused']],
    [
      'asked of her, another refused',
      'CDDSC,20,2329995630,08,04,00,,,,,B,',
      '232999142',
      ['reply-missing likely', 'refused'],
    ],
    ['asked of anybody, one refused', 'CDDSC,20,2329995630,08,04,00,,,,,B,', undefined, ['refused']],
    [
      'asked of anybody, one refused a call',
      'CDDSC,20,2329995630,00,04,00,,,,,B,',
      undefined,
      ['reply-missing likely'],
    ],
    ['asked of her, she was polled', 'CDDSC,20,2329991420,00,03,26,,,,,B,', '232999142', ['polled']],
    [
      'asked of her, another was polled',
      'CDDSC,20,2329995630,00,03,26,,,,,B,',
      '232999142',
      ['reply-missing likely', 'polled'],
    ],
    [
      'asked of her, she has no fix',
      'CDDSC,20,2329991420,08,21,26,9999999999,8888,,,B,',
      '232999142',
      ['no-fix'],
    ],
    [
      'asked of her, her place is none',
      'CDDSC,20,2329991420,08,21,26,900072,1404,,,B,',
      '232999142',
      ['bad-position'],
    ],
    [
      'asked of her, the caller cannot be read',
      'CDDSC,20,ABC,08,21,26,9999999999,8888,,,B,',
      '232999142',
      ['reply-missing possible', 'no-fix'],
    ],
    [
      'asked of anybody, the own set answered',
      'CDDSC,20,2329998710,08,21,26,9999999999,8888,,,B,',
      undefined,
      ['reply-missing likely', 'no-fix', 'own-call'],
    ],
  ] as const)('a position %s', (_, body, station, faults) => {
    const { findings, clean } = findFaults(line(body), { own: '232999871', expect: { station } });
    const certain = findings.map(({ id, certainty }) => (id === 'reply-missing' ? `${id} ${certainty}` : id));
    expect([certain, clean]).toEqual([faults, false]);
  });

  it('with her polled and another at a place still lacks her reply', () => {
    const polled = 'CDDSC,20,2329991420,00,03,26,,,,,B,';
    const other = 'CDDSC,20,2329995630,08,21,26,9999999999,8888,,,B,';
    expect(ids([polled, other], { expect: { station: '232999142' } })).toEqual(['reply-missing', 'no-fix']);
  });

  it('with an expansion alone may have lost its call, unless a damaged line explains it', () => {
    const alone = line('CDDSE,1,1,A,2329991420,00,33001200');
    expect(idsOf(findFaults(alone))).toEqual(['expansion-mismatch']);
    expect(idsOf(findFaults(damaged(5, three.slice(0, 1)) + alone))).toEqual(['checksum-wrong']);
    expect(ids(['CDDSE,1,1,Q,2329991420,00,', 'CDDSC,20,2329991420,08,18,26,,,,,R,'])).toEqual([]);
  });

  it('shows 82 characters of a line that is no sentence', () => {
    const { findings } = findFaults(`  ${'x'.repeat(100)}\r\nmore\r\n`);
    expect(findings.map(({ id, sightings }) => [id, sightings])).toEqual([
      ['no-sentence', [{ line: 1, field: null, seen: 'x'.repeat(82) }]],
    ]);
  });

  it('of a hundred calls is counted and looked at in order', () => {
    const calls = Array.from(
      { length: 100 },
      (_, index) => `CVDSC,20,2329${String(index).padStart(5, '0')}0,08,21,26,,,,,R,`,
    );
    const report = look(calls);
    expect([report.calls, report.sentences, report.lines]).toEqual([100, 100, 100]);
    expect(report.findings).toMatchObject([{ id: 'talker', count: 100 }]);
    expect(report.findings[0]?.sightings.map(({ line: number }) => number)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 1),
    );
  });

  it('is as certain of a fault as its most certain sign, and shows its signs by line', () => {
    const late = [
      ...reply('1562000630', '33001200', '1305').slice(0, 1),
      'CDDSE,1,1,A,2329995630,00,33001200',
      'CDDSE,1,1,A,2329992180,00,33001200',
    ];
    const finding = look(['CDDSE,1,1,A,2329999010,00,33001200', ...late]).findings.find(
      ({ id }) => id === 'expansion-mismatch',
    );
    expect(finding?.certainty).toBe('certain');
    expect(finding?.sightings.map(({ line: number, seen: station }) => [number, station])).toEqual([
      [1, '232999901'],
      [3, '232999563'],
      [4, '232999218'],
    ]);
  });

  it.each([
    [['20,2329991420,08,21,26,1562000630,1404,,,B', '20,2329991420,08,21,26,1562000630,1404,,'], 'certain'],
    [['20,2329991420,08,21,26,1562000630,1404,,', '20,2329991420,08,21,26,1562000630,1404,,,B'], 'certain'],
    [['20,2329991420,08,21,26,1562000630,1404,,,B'], 'possible'],
  ])('is as certain of missing fields as its surest call: %j', (bodies, certainty) => {
    const finding = look(bodies.map((body) => `CDDSC,${body}`)).findings.find(
      ({ id }) => id === 'fields-missing',
    );
    expect([finding?.certainty, finding?.count]).toEqual([certainty, bodies.length]);
  });

  it('is certain of a refusal once one is said, and of a clock once the stream has one', () => {
    const certaintyOf = (bodies: readonly string[], id: string): unknown =>
      look(bodies, { now: Date.UTC(2026, 5, 1, 14, 5) }).findings.find((each) => each.id === id)?.certainty;
    const empty = 'CDDSC,20,2329991420,08,21,26,,,,,B,';
    const refusal = 'CDDSC,20,2329995630,08,04,00,,,,,B,';
    expect(certaintyOf([empty], 'refused')).toBe('likely');
    expect(certaintyOf([empty, refusal], 'refused')).toBe('certain');
    expect(certaintyOf([refusal, empty], 'refused')).toBe('certain');
    const early = reply('1562000630', '33001200', '1305');
    const other = early.map((body) => body.replace('2329991420', '2329995630'));
    expect(certaintyOf(early, 'wrong-time')).toBe('possible');
    expect(certaintyOf([...early, own, ...other], 'wrong-time')).toBe('likely');
  });

  it('shows a damaged line without the blanks around it', () => {
    const { findings } = findFaults(`  $GPZDA,1*00  \r\n`);
    expect(findings[0]?.sightings[0]?.seen).toMatchObject({ params: { line: '$GPZDA,1*00' } });
  });

  it.each([
    [{ own: '12' }, "own: expected nine digits, got '12'"],
    [{ own: 'x232999871' }, "own: expected nine digits, got 'x232999871'"],
    [{ expect: { station: '2329998710' } }, "station: expected nine digits, got '2329998710'"],
    [{ now: 8.64e15 + 1 }, 'now: expected an instant in epoch milliseconds, got 8640000000000001'],
    [{ now: '14:05' as never }, 'now: expected an instant in epoch milliseconds, got string'],
  ])('is not looked at with %j', (options, message) => {
    expect(() => findFaults('', options)).toThrow(new RangeError(message));
  });
});

describe('a position of whole minutes', () => {
  // A degree at the equator on WGS 84 is 110 574 m long northwards and 111 320 m eastwards (published tables).
  it('is the corner of a box: from there to the far corner is a mile to a mile and a half', () => {
    const diagonal = (latitude: number): number =>
      rangeAndBearing(
        { latitude, longitude: -6.5 },
        { latitude: latitude + 1 / 60, longitude: -6.5 - 1 / 60 },
      ).metres;
    expect(diagonal(0)).toBeCloseTo(Math.hypot(110_574, 111_320) / 60, 0);
    for (const latitude of [0, 20, 40, 56, 60]) {
      expect(diagonal(latitude) / 1852).toBeGreaterThan(1);
      expect(diagonal(latitude) / 1852).toBeLessThan(1.5);
    }
    expect(FAULTS.find(({ id }) => id === 'no-expansion')?.why.message).toContain('a mile and a half');
  });
});
