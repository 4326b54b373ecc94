import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createDirectory,
  readDirectoryJson,
  remember,
  writeDirectoryJson,
} from '../../src/directory/index.ts';
import { hostile } from '../identity/arbitrary.ts';
import { updates } from './arbitrary.ts';

describe('a stored directory', () => {
  it('is read back whole', () => {
    fc.assert(
      fc.property(updates, (list) => {
        const directory = createDirectory(list);
        expect(readDirectoryJson(writeDirectoryJson(directory))).toEqual({
          ok: true,
          value: directory,
          notices: [],
        });
      }),
      { numRuns: 300 },
    );
  });

  it('loses what is damaged, and nothing else', () => {
    const stations = [
      {
        mmsi: '232999142',
        name: 'Tern',
        origins: { entry: 'typed', name: 'typed' },
        groups: ['023299905', '232999142', null],
      },
      { mmsi: 232999563, name: 'Pellinore' },
      null,
      {
        mmsi: '232999218',
        name: 7,
        heardAt: 'noon',
        origins: { entry: 'rumour' },
        extra: [{ label: 'hull' }],
        later: 'field',
      },
    ];
    const back = readDirectoryJson(JSON.stringify({ kind: 'directory', stations }));
    expect(back.ok && back.value.stations.map(({ mmsi, name }) => [mmsi, name])).toEqual([
      ['232999142', 'Tern'],
      ['232999218', undefined],
    ]);
    expect(back.ok && back.notices.map(({ at }) => at.slice(1).join(' '))).toEqual([
      '0 groups 1',
      '0 groups 2',
      '1 mmsi',
      '2 mmsi',
      '3 origins entry',
      '3 heardAt',
      '3 name',
      '3 extra 0',
    ]);
  });

  it('takes a text for as trusted as its station where its own origin is missing', () => {
    const stations = [
      { mmsi: '002329990', name: 'Skerra Coastguard' },
      { mmsi: '232999142', name: 'TERN', notes: 'blue hull', origins: { entry: 'typed', name: 'ais' } },
      { mmsi: '232999563', name: 'PELLINORE', origins: { entry: 'ais' } },
      { mmsi: '823299904', origins: { entry: 'heard', name: 'typed' } },
    ];
    const back = readDirectoryJson(JSON.stringify({ kind: 'directory', stations }));
    expect(back.ok && back.value.stations.map(({ origins }) => origins)).toStrictEqual([
      { entry: 'imported', name: 'imported' },
      { entry: 'typed', name: 'ais', notes: 'typed' },
      { entry: 'ais', name: 'ais' },
      { entry: 'heard' },
    ]);
  });

  it('refuses everything that is no stored directory, and never throws', () => {
    for (const text of [
      ...hostile,
      '',
      '{',
      '[]',
      'null',
      '{"kind":"directory"}',
      '{"stations":[]}',
      '['.repeat(10_000_000),
    ]) {
      expect(readDirectoryJson(text)).toMatchObject({
        ok: false,
        issues: [{ code: 'directory-json-shape' }],
      });
    }
    fc.assert(
      fc.property(fc.anything(), fc.json(), (value, json) => {
        expect(readDirectoryJson(value).ok).toBe(false);
        expect(readDirectoryJson(`{"kind":"directory","stations":[${json}]}`).ok).toBe(true);
      }),
    );
  });

  it('may hold very many stations', () => {
    const many = Array.from({ length: 130_000 }, (_, k) => ({
      mmsi: `23${String(k).padStart(7, '0')}`,
      origin: 'heard' as const,
      heardAt: k,
    }));
    const directory = remember(createDirectory(), many);
    expect(directory.stations).toHaveLength(130_000);
    const back = readDirectoryJson(writeDirectoryJson(directory));
    expect(back.ok && back.value.stations.length).toBe(130_000);
  });
});
