import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createDirectory,
  type Directory,
  findStations,
  forget,
  leaveGroup,
  membersOf,
  mergeDirectories,
  nameOf,
  recentStations,
  remember,
  type StationOrigin,
  type StationUpdate,
  stationOf,
  trimDirectory,
} from '../../src/directory/index.ts';
import { hostile } from '../identity/arbitrary.ts';
import { updates } from './arbitrary.ts';

// Stations of the invented scenario.
const stations: readonly StationUpdate[] = [
  { mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle', callSign: '2zzt4', groups: ['023299905'] },
  { mmsi: '232999563', origin: 'imported', name: 'Pellinore', groups: ['023299905'], heardAt: 3000 },
  { mmsi: '023299905', origin: 'typed', name: 'Ardle Sailing Club' },
  { mmsi: '002329990', origin: 'typed', name: 'Skerra Coastguard', calledAt: 2000 },
  { mmsi: '232999218', origin: 'ais', name: 'BOUNTY OF LORN', heardAt: 5000 },
  { mmsi: '823299904', origin: 'heard', heardAt: 4000 },
];
const inTheSound = (): Directory => createDirectory(stations);
const names = (stations: readonly { mmsi: string; name?: string }[]): readonly string[] =>
  stations.map(({ mmsi, name }) => name ?? mmsi);

const trust: readonly StationOrigin[] = ['typed', 'imported', 'ais', 'heard'];

describe('a directory', () => {
  it('knows kind, upper-case call sign, groups and origins of a station', () => {
    const sound = inTheSound();
    expect(stationOf(sound, '232999142')).toEqual({
      mmsi: '232999142',
      kind: 'ship',
      name: 'Tern of Ardle',
      callSign: '2ZZT4',
      groups: ['023299905'],
      origins: { entry: 'typed', name: 'typed', callSign: 'typed' },
    });
  });

  it('is ordered plain data', () => {
    fc.assert(
      fc.property(updates, (list) => {
        const directory = createDirectory(list);
        const digits = directory.stations.map(({ mmsi }) => mmsi);
        expect(digits).toEqual([...new Set(list.map(({ mmsi }) => mmsi))].sort());
        expect(JSON.parse(JSON.stringify(directory))).toStrictEqual(directory);
        expect(structuredClone(directory)).toEqual(directory);
      }),
    );
  });

  it('stays the same object where nothing is new', () => {
    fc.assert(
      fc.property(updates, (list) => {
        const directory = createDirectory(list);
        expect(
          remember(
            directory,
            directory.stations.map(({ mmsi }) => ({ mmsi, origin: 'heard' as const })),
          ),
        ).toBe(directory);
        const last = list.at(-1);
        if (last !== undefined) expect(remember(directory, last)).toBe(directory);
      }),
    );
  });

  it('never lets a less trusted origin replace a text', () => {
    fc.assert(
      fc.property(updates, updates, (before, after) => {
        const directory = createDirectory(before);
        const later = remember(directory, after);
        for (const station of directory.stations) {
          for (const field of ['name', 'callSign', 'notes'] as const) {
            const origin = station.origins[field];
            const now = stationOf(later, station.mmsi);
            if (now?.[field] === station[field] || origin === undefined) continue;
            const bold = after.some(
              (update) =>
                update.mmsi === station.mmsi &&
                update[field] !== undefined &&
                trust.indexOf(update.origin) <= trust.indexOf(origin),
            );
            expect(bold).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('clears a text only by hand', () => {
    const sound = inTheSound();
    const quiet = remember(sound, { mmsi: '232999142', origin: 'ais', name: '', callSign: '  ' });
    expect(quiet).toBe(sound);
    const cleared = stationOf(
      remember(sound, { mmsi: '232999142', origin: 'typed', callSign: '' }),
      '232999142',
    );
    expect(cleared).not.toHaveProperty('callSign');
    expect(cleared?.name).toBe('Tern of Ardle');
  });

  it('takes only assigned identities, groups that are groups, and finite times', () => {
    for (const mmsi of [...hostile, '', '000000000', '232 999 142']) {
      expect(() => createDirectory({ mmsi, origin: 'typed' })).toThrow(RangeError);
    }
    const wrong: Partial<StationUpdate>[] = [
      { groups: ['232999142'] },
      { heardAt: Number.NaN },
      { calledAt: Infinity },
      { heardAt: 0.5 },
      { heardAt: 9e15 },
    ];
    for (const update of wrong) {
      expect(() => createDirectory({ mmsi: '232999142', origin: 'typed', ...update })).toThrow(RangeError);
    }
  });

  it('keeps the latest time only', () => {
    const sound = inTheSound();
    const later = remember(sound, { mmsi: '232999563', origin: 'heard', heardAt: 1000, calledAt: 1 });
    expect(stationOf(later, '232999563')).toMatchObject({ heardAt: 3000, calledAt: 1 });
  });
});

describe('finding', () => {
  it.each([
    ['tern', ['Tern of Ardle']],
    ['ARDLE', ['Ardle Sailing Club', 'Tern of Ardle']],
    ['2zz', ['Tern of Ardle']],
    ['999 5', ['Pellinore']],
    ['232.999.5', ['Pellinore']],
    [
      '232-999',
      [
        'BOUNTY OF LORN',
        'Pellinore',
        'Tern of Ardle',
        '823299904',
        'Ardle Sailing Club',
        'Skerra Coastguard',
      ],
    ],
    ['8232', ['823299904']],
    ['nobody', []],
  ])('%s finds %j', (query, found) => {
    const sound = inTheSound();
    expect(names(findStations(sound, query))).toEqual(found);
  });

  it.each([
    ['a whole call sign before a beginning', '2zzt4', ['Zephyr of the Sound', 'Albatross']],
    ['the beginning of a word before a piece of one', 'ardle', ['Tern of Ardle', 'Bardle Light']],
    ['digits only where digits alone are asked for', 'ardle 9', []],
    ['equal fits by name', 'of', ['Tern of Ardle', 'Zephyr of the Sound']],
  ])('puts %s', (_, query, found) => {
    const directory = createDirectory([
      { mmsi: '232999001', origin: 'typed', name: 'Zephyr of the Sound', callSign: '2ZZT4' },
      { mmsi: '232999002', origin: 'typed', name: 'Tern of Ardle' },
      { mmsi: '232999003', origin: 'typed', name: 'Bardle Light' },
      { mmsi: '232999004', origin: 'typed', name: 'Albatross', callSign: '2ZZT45' },
    ]);
    expect(names(findStations(directory, query))).toEqual(found);
  });

  it('does not mind accents', () => {
    const directory = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Órla Mhór' });
    expect(findStations(directory, 'orla mh')).toHaveLength(1);
    expect(findStations(directory, 'MHÓR')).toHaveLength(1);
  });

  it('finds all for a blank, and each by its name, its digits and pieces of them', () => {
    const sound = inTheSound();
    expect(findStations(sound, ' ')).toHaveLength(6);
    fc.assert(
      fc.property(updates, fc.nat(), fc.nat(8), fc.nat(8), (list, pick, from, to) => {
        const directory = createDirectory(list);
        fc.pre(directory.stations.length > 0);
        const station = directory.stations[pick % directory.stations.length];
        if (station === undefined) throw new Error('picked');
        expect(findStations(directory, station.name ?? '')).toContain(station);
        expect(
          findStations(directory, station.mmsi.slice(Math.min(from, to), Math.max(from, to) + 1)),
        ).toContain(station);
      }),
    );
  });

  it('shows a name or grouped digits', () => {
    const sound = inTheSound();
    expect(nameOf(sound, '232999142')).toBe('Tern of Ardle');
    expect(nameOf(sound, '823299904')).toBe('8 232 99904');
    for (const name of [...hostile, 'MMSI 232999871', '2329998710', ''])
      expect(nameOf(sound, name)).toBe(name);
  });

  it('lists members, and stations lately heard and called', () => {
    const sound = inTheSound();
    expect(names(membersOf(sound, '023299905'))).toEqual(['Tern of Ardle', 'Pellinore']);
    expect(names(recentStations(sound, 'heardAt'))).toEqual(['BOUNTY OF LORN', '823299904', 'Pellinore']);
    expect(membersOf(sound, '023299906')).toEqual([]);
    expect(names(recentStations(sound, 'heardAt', 1))).toEqual(['BOUNTY OF LORN']);
    expect(names(recentStations(sound, 'calledAt'))).toEqual(['Skerra Coastguard']);
  });
});

describe('changing', () => {
  it('forgets a station, leaves a group', () => {
    const sound = inTheSound();
    expect(stationOf(forget(sound, '232999142'), '232999142')).toBeUndefined();
    expect(forget(sound, '232000000')).toBe(sound);
    expect(names(membersOf(leaveGroup(sound, '232999142', '023299905'), '023299905'))).toEqual(['Pellinore']);
  });

  it('leaves out the longest silent of the merely heard, and no other', () => {
    const sound = inTheSound();
    expect(trimDirectory(sound, 6)).toBe(sound);
    expect(names(trimDirectory(sound, 5).stations)).not.toContain('823299904');
    expect(names(trimDirectory(sound, 5).stations)).toContain('BOUNTY OF LORN');
    expect(trimDirectory(sound, 0).stations).toHaveLength(4);
  });

  it('merges without losing what a person typed on either side', () => {
    const merged = mergeDirectories(
      createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern', notes: 'blue hull' }),
      createDirectory([
        { mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle', heardAt: 7 },
        { mmsi: '232999563', origin: 'ais', name: 'PELLINORE' },
      ]),
    );
    expect(stationOf(merged, '232999142')).toMatchObject({
      name: 'Tern',
      notes: 'blue hull',
      heardAt: 7,
      extra: [{ label: 'other name', text: 'Tern of Ardle' }],
    });
    expect(stationOf(merged, '232999563')?.name).toBe('PELLINORE');
    fc.assert(
      fc.property(updates, updates, (left, right) => {
        const [mine, theirs] = [createDirectory(left), createDirectory(right)];
        const both = mergeDirectories(mine, theirs);
        for (const side of [mine, theirs]) {
          for (const station of side.stations) {
            const { extra = [], ...now } = stationOf(both, station.mmsi) ?? {};
            const texts = JSON.stringify([now, extra.flatMap(({ text }) => [text, ...text.split('\n')])]);
            for (const field of ['name', 'callSign', 'notes'] as const) {
              if (station.origins[field] === 'typed') expect(texts).toContain(JSON.stringify(station[field]));
            }
          }
        }
        expect(mergeDirectories(both, theirs)).toEqual(both);
        expect(mergeDirectories(mine, mine)).toBe(mine);
        expect(mergeDirectories(createDirectory(), theirs)).toEqual(theirs);
      }),
      { numRuns: 300 },
    );
  });
});
