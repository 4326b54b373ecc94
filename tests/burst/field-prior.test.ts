import { describe, expect, it } from 'vitest';
import { type CharacterKind, expectations, fieldPriors } from '../../src/burst/field-prior.ts';

const priors = expectations();

/** Symbols as ranges, those that are expected alike in one group, the most expected group first. */
function groupsOf(prior: Float64Array): string[] {
  const groups = new Map<string, number[]>();
  prior.forEach((value, symbol) => {
    const key = value.toFixed(9);
    groups.set(key, [...(groups.get(key) ?? []), symbol]);
  });
  return [...groups]
    .sort(([one], [other]) => Number(other) - Number(one))
    .map(([, symbols]) => ranges(symbols));
}

function ranges(symbols: readonly number[]): string {
  const out: [first: number, last: number][] = [];
  for (const symbol of symbols) {
    const last = out.at(-1);
    if (last?.[1] === symbol - 1) last[1] = symbol;
    else out.push([symbol, symbol]);
  }
  return out.map(([first, last]) => (first === last ? String(first) : `${first}-${last}`)).join(' ');
}

// Ranges of ITU-R M.493 (symbol tables, from memory); what is the more usual is common practice, no source. The last
// group of each is what nobody expects and is read all the same.
const expected: Record<CharacterKind, string[]> = {
  distressFormat: ['112', '0-111 113-127'],
  allShipsFormat: ['116', '0-115 117-127'],
  addressedFormat: ['120', '114', '102', '0-101 103-113 115-119 121-127'],
  automaticFormat: ['123', '0-122 124-127'],
  anyFormat: ['102 112 114 116 120 123', '0-101 103-111 113 115 117-119 121-122 124-127'],
  identityFirst: ['0', '20-79', '2-7', '1 8-19 80-99', '100-127'],
  pair: ['0-99', '100-127'],
  identityLast: [
    '0 10 20 30 40 50 60 70 80 90',
    '1-9 11-19 21-29 31-39 41-49 51-59 61-69 71-79 81-89 91-99',
    '100-127',
  ],
  unknownFirst: ['126', '20-79', '0-19 80-99', '100-125 127'],
  unknownPair: ['126', '0-99', '100-125 127'],
  unknownLast: [
    '0 10 20 30 40 50 60 70 80 90',
    '126',
    '1-9 11-19 21-29 31-39 41-49 51-59 61-69 71-79 81-89 91-99',
    '100-125 127',
  ],
  category: ['100', '108', '110', '112', '106', '101-105 107 109 111 113-127', '0-99'],
  distressCategory: ['112', '0-111 113-127'],
  telecommand: ['100', '118 121', '101 103-104 109', '102 105-108 110-117 119-120 122-127', '0-99'],
  distressTelecommand: ['110 112', '0-109 111 113-127'],
  positionTelecommand: ['121', '100-120 122-127', '0-99'],
  second: ['126', '100-113', '114-125 127', '0-99'],
  nature: ['107', '100-106 108-112', '0-99 113-127'],
  quadrant: ['99', '0-39', '40-98', '100-127'],
  place: ['99', '0-98', '100-127'],
  hour: ['88', '0-23', '24-87 89-99', '100-127'],
  minute: ['88', '0-59', '60-87 89-99', '100-127'],
  subsequent: ['100', '109', '126', '101-108 110-125 127', '0-99'],
  elementFirst: ['90', '126', '0-89 91-99', '100-125 127'],
  elementSecond: ['0', '126', '1-2 10 20', '3-9 11-19 21-99', '100-125 127'],
  elementThird: ['126', '0-99', '100-125 127'],
  longElementFirst: ['40-49', '0-39 50-99', '100-127'],
  header: ['55', '0-54 56-127'],
  telephoneMark: ['105-106', '0-104 107-127'],
  free: ['0-99', '100-116 118-121 123-126', '117 122 127'],
  plainEnd: ['127', '0-126'],
  relayEnd: ['127', '122', '0-121 123-126'],
  knownEnd: ['117 122 127', '0-116 118-121 123-126'],
  anyEnd: ['117 122 127', '0-116 118-121 123-126'],
  expansionSpecifier: ['100-106', '107-127', '0-99'],
};

describe('what is expected of each field', () => {
  it.each(Object.entries(expected) as [CharacterKind, string[]][])('%s', (kind, groups) => {
    expect(groupsOf(priors[kind])).toEqual(groups);
  });

  it('is known for each kind of character, and nothing else', () => {
    expect(Object.keys(priors).sort()).toEqual(Object.keys(expected).sort());
  });

  it('adds up to one, and leaves every symbol a share but at the end of a known composition', () => {
    const closed = ['plainEnd', 'relayEnd', 'knownEnd'];
    for (const [kind, prior] of Object.entries(priors)) {
      expect(prior.reduce((sum, value) => sum + Math.exp(value), 0)).toBeCloseTo(1, 9);
      if (closed.includes(kind)) expect(Math.min(...prior)).toBe(Number.NEGATIVE_INFINITY);
      else expect(Math.min(...prior)).toBeGreaterThan(Math.log(1e-7));
    }
  });

  it('is worked out once', () => {
    expect(fieldPriors()).toEqual(priors);
    expect(fieldPriors()).toBe(fieldPriors());
  });
});
