import { describe, expect, it } from 'vitest';
import published from '../../shared/station/timers.json' with { type: 'json' };
import { phaseTable, timers, transitionTable } from '../../src/station/index.ts';
import { lengthOf, rangeOf } from '../../src/station/model/timer.ts';
import { rowsNeverTaken } from './explore.ts';

const rows = transitionTable();

describe('the transition table', () => {
  it('has no row twice', () => {
    const ids = rows.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('has no row behind one that is always taken', () => {
    for (const row of rows) {
      const alike = rows.filter(
        (other) => other.procedure === row.procedure && other.from === row.from && other.on === row.on,
      );
      const always = alike.findIndex(({ when }) => when === null);
      if (always >= 0) expect(alike.slice(always + 1), row.id).toEqual([]);
    }
  });

  it('leads to every phase, and from every phase to its end by a wait alone', () => {
    for (const { procedure, phase, waits } of phaseTable()) {
      const own = rows.filter((row) => row.procedure === procedure);
      expect(
        own.some((row) => row.to === phase),
        `${procedure}: ${phase} is reached`,
      ).toBe(true);
      const ways = own.filter(
        (row) => row.from === phase && row.when === null && row.to !== phase && row.on.endsWith(' over'),
      );
      expect(
        ways.some((row) => waits.includes(row.on.slice(0, -' over'.length))),
        `${procedure}: ${phase} is left when nothing happens`,
      ).toBe(true);
    }
  });

  it('gives every row a clause', () => {
    expect(rows.filter((row) => row.clause === '')).toEqual([]);
  });

  it('has every row taken', () => {
    expect(rowsNeverTaken()).toEqual([]);
  }, 180_000);
});

describe('the timers', () => {
  it.each(published.timers)('$timer: $source', ({ timer, least, most, unit }) => {
    expect(timers.find((row) => row.timer === timer)).toMatchObject({ least, most, unit });
  });

  it('say which values no source gives', () => {
    const known = published.timers.map(({ timer }) => timer);
    for (const { timer, confidence } of timers)
      expect([timer, confidence === 'own-choice']).toEqual([timer, !known.includes(timer)]);
  });

  it('are changed for training, and by nothing that is no length', () => {
    expect(lengthOf('inactivity', { inactivity: 1000 })).toBe(1000);
    for (const wrong of [0, -1, Number.NaN, Infinity])
      expect(lengthOf('inactivity', { inactivity: wrong })).toBe(600_000);
    expect(rangeOf('alert-repeat')).toEqual([210_000, 270_000]);
  });
});
