import { describe, expect, it } from 'vitest';
import {
  createDirectory,
  forget,
  leaveGroup,
  membersOf,
  mergeDirectories,
  remember,
  type StationUpdate,
  stationOf,
  trimDirectory,
} from '../../src/directory/index.ts';
import { countingWork } from '../promises/support/work.ts';

// Stations of the invented scenario.
const tern = '232999142';
const pellinore = '232999563';
const bounty = '232999218';
const kittiwake = '823299904';
const club = '023299905';

describe('what is remembered of a station', () => {
  it('is everything that was told, in order', () => {
    const told: StationUpdate = {
      mmsi: tern,
      origin: 'imported',
      name: 'Tern of Ardle',
      callSign: '2zzt4',
      notes: 'blue hull',
      groups: ['111232000', '023299906', club],
      heardAt: -8.64e15, // the first and the last instant that a date can hold
      calledAt: 8.64e15,
      extra: [
        { label: 'sail', text: '7' },
        { label: 'harbour', text: 'Ardle' },
        { label: ' ', text: 'no label' },
        { label: 'no text', text: ' ' },
      ],
    };
    expect(createDirectory(told)).toStrictEqual({
      kind: 'directory',
      stations: [
        {
          mmsi: tern,
          kind: 'ship',
          name: 'Tern of Ardle',
          callSign: '2ZZT4',
          notes: 'blue hull',
          groups: [club, '023299906', '111232000'],
          origins: { entry: 'imported', name: 'imported', callSign: 'imported', notes: 'imported' },
          heardAt: -8.64e15,
          calledAt: 8.64e15,
          extra: [
            { label: 'harbour', text: 'Ardle' },
            { label: 'sail', text: '7' },
          ],
        },
      ],
    });
  });

  it('has no field for what was not told', () => {
    expect(createDirectory({ mmsi: tern, origin: 'heard' })).toStrictEqual({
      kind: 'directory',
      stations: [{ mmsi: tern, kind: 'ship', groups: [], origins: { entry: 'heard' } }],
    });
  });

  it('is one line for a name, many for notes, and free of control characters', () => {
    const directory = createDirectory({
      mmsi: tern,
      origin: 'typed',
      name: ' Tern\r\n of\u0000  Ardle ',
      callSign: '2zz\tt4',
      notes: '\nblue\thull\r\nred sails\r\rberth\u00007 ',
    });
    expect(stationOf(directory, tern)).toMatchObject({
      name: 'Tern of Ardle',
      callSign: '2ZZ T4',
      notes: 'blue hull\nred sails\n\nberth 7',
    });
  });

  it('is not cleared by a broadcast without a name', () => {
    const heard = createDirectory({ mmsi: tern, origin: 'ais', name: 'TERN' });
    expect(remember(heard, { mmsi: tern, origin: 'ais', name: '' })).toBe(heard);
    const typed = remember(heard, { mmsi: tern, origin: 'typed', name: '' });
    expect(stationOf(typed, tern)).toStrictEqual({
      mmsi: tern,
      kind: 'ship',
      groups: [],
      origins: { entry: 'typed' },
    });
  });

  it('keeps the most trusted origin of the station, and the origin of each text', () => {
    const directory = createDirectory([
      { mmsi: tern, origin: 'ais', name: 'TERN' },
      { mmsi: tern, origin: 'typed', notes: 'blue hull' },
      { mmsi: tern, origin: 'heard', callSign: '2ZZT4' },
    ]);
    expect(stationOf(directory, tern)?.origins).toStrictEqual({
      entry: 'typed',
      name: 'ais',
      notes: 'typed',
      callSign: 'heard',
    });
  });

  it('has the new text of a field under a label that is known', () => {
    const directory = createDirectory([
      { mmsi: tern, origin: 'imported', extra: [{ label: 'berth', text: '7' }] },
      { mmsi: tern, origin: 'imported', extra: [{ label: 'berth', text: '8' }] },
    ]);
    expect(stationOf(directory, tern)?.extra).toEqual([{ label: 'berth', text: '8' }]);
  });
});

describe('what is taken out of a directory', () => {
  it('is one station', () => {
    const two = createDirectory([
      { mmsi: tern, origin: 'typed' },
      { mmsi: pellinore, origin: 'typed' },
    ]);
    expect(forget(two, tern)).toStrictEqual(createDirectory({ mmsi: pellinore, origin: 'typed' }));
  });

  it('is one station from one group, which stays in its others', () => {
    const both = [club, '023299906'];
    const members = createDirectory([
      { mmsi: tern, origin: 'typed', groups: both },
      { mmsi: pellinore, origin: 'typed', groups: both },
    ]);
    const left = leaveGroup(members, tern, club);
    expect(left).toStrictEqual(
      createDirectory([
        { mmsi: tern, origin: 'typed', groups: ['023299906'] },
        { mmsi: pellinore, origin: 'typed', groups: both },
      ]),
    );
    expect(membersOf(left, club).map(({ mmsi }) => mmsi)).toEqual([pellinore]);
  });

  it('are the merely heard: first those never heard at a known time, then the longest silent, by digits when equal', () => {
    const busy = createDirectory([
      { mmsi: tern, origin: 'heard', heardAt: 3000 },
      { mmsi: bounty, origin: 'ais', heardAt: 1000 },
      { mmsi: pellinore, origin: 'heard', heardAt: 1000 },
      { mmsi: kittiwake, origin: 'ais' },
      { mmsi: '823299905', origin: 'ais' },
      { mmsi: '232999871', origin: 'heard', calledAt: 1 },
      { mmsi: '002329990', origin: 'imported' },
    ]);
    const gone = [kittiwake, '823299905', bounty, pellinore, tern];
    for (let count = 0; count <= gone.length; count++) {
      const left = busy.stations.filter(({ mmsi }) => !gone.slice(0, count).includes(mmsi));
      expect(trimDirectory(busy, 7 - count)).toStrictEqual({ kind: 'directory', stations: left });
    }
    expect(trimDirectory(busy, 0)).toEqual(trimDirectory(busy, 2));
    expect(trimDirectory(busy, Number.NaN)).toBe(busy);
  });
});

describe('two directories in one', () => {
  const merged = (mine: Partial<StationUpdate>, theirs: Partial<StationUpdate>) => {
    const [left, right] = [mine, theirs].map((update) =>
      createDirectory({ mmsi: tern, origin: 'typed', ...update }),
    ) as [ReturnType<typeof createDirectory>, ReturnType<typeof createDirectory>];
    const both = mergeDirectories(left, right);
    expect(mergeDirectories(both, right)).toBe(both); // a second time adds nothing
    return stationOf(both, tern);
  };

  it('keep the other text beside mine only where a person typed both', () => {
    const other = { name: 'Tern of Ardle', callSign: '2ZZT5', notes: 'red hull' };
    const mine = { name: 'Tern', callSign: '2ZZT4', notes: 'blue hull' };
    expect(merged(mine, other)).toMatchObject({
      ...mine,
      extra: [
        { label: 'other call sign', text: '2ZZT5' },
        { label: 'other name', text: 'Tern of Ardle' },
        { label: 'other notes', text: 'red hull' },
      ],
    });
    const imported = merged({ ...mine, origin: 'imported' }, { ...other, origin: 'imported' });
    expect(imported).toMatchObject(mine);
    expect(imported).not.toHaveProperty('extra');
  });

  it('have the more trusted text, and the latest times', () => {
    expect(
      merged(
        { origin: 'ais', name: 'TERN', heardAt: 5, calledAt: 1 },
        { name: 'Tern', heardAt: 3, calledAt: 2 },
      ),
    ).toStrictEqual({
      mmsi: tern,
      kind: 'ship',
      name: 'Tern',
      groups: [],
      origins: { entry: 'typed', name: 'typed' },
      heardAt: 5,
      calledAt: 2,
    });
    expect(merged({ name: 'Tern' }, { origin: 'ais', name: 'TERN' })?.name).toBe('Tern');
  });

  it('have the extra fields of both, the lines of one label together', () => {
    const extra = (label: string, text: string) => ({ extra: [{ label, text }] });
    expect(merged({}, extra('berth', '7'))?.extra).toEqual([{ label: 'berth', text: '7' }]);
    expect(merged(extra('berth', '7'), {})?.extra).toEqual([{ label: 'berth', text: '7' }]);
    expect(merged(extra('berth', '7'), extra('berth', '8'))?.extra).toEqual([
      { label: 'berth', text: '7\n8' },
    ]);
    expect(merged(extra('berth', '7\n8\n9'), extra('berth', '8\n9'))?.extra).toEqual([
      { label: 'berth', text: '7\n8\n9' },
    ]);
    expect(merged(extra('berth', '7'), extra('berth', '8\n9'))?.extra).toEqual([
      { label: 'berth', text: '7\n8\n9' },
    ]);
    expect(merged(extra('berth', '17'), extra('berth', '7'))?.extra).toEqual([
      { label: 'berth', text: '17\n7' },
    ]);
    expect(merged(extra('berth', '7'), extra('sail', '7'))?.extra).toEqual([
      { label: 'berth', text: '7' },
      { label: 'sail', text: '7' },
    ]);
  });

  it('keep a name that an earlier merging had put aside', () => {
    const aside = { name: 'Tern of Ardle', extra: [{ label: 'other name', text: 'Little Tern' }] };
    expect(merged({ name: 'Tern' }, aside)?.extra).toEqual([
      { label: 'other name', text: 'Little Tern\nTern of Ardle' },
    ]);
  });
});

describe('what is no update', () => {
  const given = (update: Record<string, unknown>) => () =>
    createDirectory({ mmsi: tern, origin: 'typed', ...update } as unknown as StationUpdate);

  it('is a number in the place of an identity: leading zeros are lost in numbers', () => {
    expect(given({ mmsi: 232999142 })).toThrow(RangeError);
    expect(given({ mmsi: 232999142 })).toThrow('got a value of type number');
    expect(given({ groups: [111232000] })).toThrow(RangeError);
  });

  it.each(['gossip', 'toString', undefined, null, 0])('is an origin that is none: %j', (origin) => {
    expect(given({ origin })).toThrow(RangeError);
    const typed = createDirectory({ mmsi: tern, origin: 'typed', name: 'Tern' });
    const update = { mmsi: tern, origin, name: 'Someone' } as unknown as StationUpdate;
    expect(() => remember(typed, update)).toThrow('origin: expected typed, imported, ais, heard');
  });

  it.each(['name', 'callSign', 'notes'])('is a %s that is no text', (field) => {
    for (const value of [5, null, {}]) {
      expect(given({ [field]: value })).toThrow(TypeError);
      expect(given({ [field]: value })).toThrow('update: expected text');
    }
    expect(given({ extra: [{ label: 'sail', text: 7 }] })).toThrow('update: expected text');
  });
});

describe('an update', () => {
  it('costs in a directory of 10 000 stations at most ten times what it costs in one of 100', () => {
    const stations = (count: number) =>
      createDirectory(
        Array.from({ length: count }, (_, at) => ({
          mmsi: String(232_100_000 + at),
          origin: 'ais' as const,
        })),
      );
    const [small, large] = [stations(100), stations(10_000)];
    countingWork((workOf) => {
      for (const update of [
        { mmsi: '232100050', origin: 'heard', heardAt: 1 },
        { mmsi: tern, origin: 'typed', name: 'Tern of Ardle' },
      ] as const) {
        remember(small, update);
        // The list is copied as a whole, and one place made in it: a few microseconds, and no step of code a station.
        const copying = update.mmsi === tern ? 2 * 9_900 : 9_900;
        const work = [workOf(() => remember(small, update)), workOf(() => remember(large, update)) - copying];
        expect((work[1] as number) / (work[0] as number)).toBeLessThan(10);
      }
    });
  });

  it('of one identity again and again costs the same each time', () => {
    const updates = (count: number): StationUpdate[] =>
      Array.from({ length: count }, (_, at) => ({
        mmsi: tern,
        origin: 'imported',
        groups: [`0232${String(at).padStart(5, '0')}`],
        extra: [{ label: `berth ${at}`, text: 'x' }],
      }));
    const [few, many] = [updates(50), updates(400)];
    createDirectory(few);
    countingWork((workOf) => {
      expect(workOf(() => createDirectory(many)) / workOf(() => createDirectory(few))).toBeLessThan(10);
    });
  });
});
