import { describe, expect, it } from 'vitest';
import { frequencyOf } from '../../src/channel/frequency-of.ts';
import { parseDesignator } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';

describe('frequencyOf (47 CFR 80.871(d), 2015 edition; legs after ITU-R M.1084 Annex 4, from memory)', () => {
  it.each([
    ['22', { mode: 'duplex', shipKHz: 157_100, coastKHz: 161_700 }],
    ['22A', { mode: 'simplex', shipKHz: 157_100, coastKHz: 157_100 }],
    ['21B', { mode: 'simplex', shipKHz: 161_650, coastKHz: 161_650 }],
    ['72', { mode: 'simplex', shipKHz: 156_625, coastKHz: 156_625 }],
    ['AIS 2', { mode: 'simplex', shipKHz: 162_025, coastKHz: 162_025 }],
    ['WX1', null],
    ['M2', null],
    ['37', null],
  ])('%s', (text, frequencies) => expect(frequencyOf(valueOf(parseDesignator(text)))).toEqual(frequencies));

  it('makes no frequency up for a number outside Appendix 18', () => {
    expect(frequencyOf({ m1084: '42' })).toBeNull();
  });
});
