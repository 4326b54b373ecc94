import { describe, expect, it } from 'vitest';
import {
  type ChannelPlan,
  channelsAt,
  decodeChannel,
  encodeChannel,
  findChannel,
  formatMegahertz,
  parseDesignator,
  planText,
  workingChannels,
} from '../../src/channel/index.ts';
import type { Issue, Result } from '../../src/result/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

// Codes and params; the wording is in english/channel.txt.

const issuesOf = (result: Result<unknown>) => (result.ok ? result.notices : result.issues);

const FORMS = "a number as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'";
const M1084 = 'ITU-R M.1084 Annex 4';
const M493 = 'ITU-R M.493-16, frequency and channel information, unverified';

describe('what is wrong with the name of a channel', () => {
  it.each<[input: unknown, issue: Partial<Issue>]>([
    [
      null,
      {
        code: 'channel-not-text',
        grade: 'error',
        params: { type: 'null' },
        at: [],
        expected: FORMS,
        clause: 'common practice',
      },
    ],
    [
      [72],
      {
        code: 'channel-not-text',
        grade: 'error',
        params: { type: 'object' },
        at: [],
        expected: FORMS,
        clause: 'common practice',
      },
    ],
    [
      6,
      {
        code: 'channel-not-text',
        grade: 'error',
        params: { type: 'number' },
        at: [],
        expected: FORMS,
        clause: 'common practice',
        received: '6',
        suggestion: '06',
      },
    ],
    [
      '22C',
      {
        code: 'channel-malformed',
        params: {},
        at: [],
        expected: FORMS,
        received: "'22C'",
        clause: M1084,
      },
    ],
    ...['', ' \t '].map((blank): [string, Partial<Issue>] => [
      blank,
      {
        code: 'channel-empty',
        params: {},
        at: [],
        expected: FORMS,
        received: blank === '' ? "''" : "' \\u{9} '",
        clause: M1084,
      },
    ]),
    [
      ' 156.625 ',
      {
        code: 'channel-is-frequency',
        params: {},
        at: [],
        expected: FORMS,
        received: "' 156.625 '",
        clause: M1084,
      },
    ],
    [
      '89',
      {
        code: 'channel-number-range',
        params: { number: '89' },
        at: [],
        expected: '01 to 28 or 60 to 88',
        received: "'89'",
        clause: 'RR Appendix 18',
      },
    ],
    [
      '37a',
      {
        code: 'channel-private-number',
        grade: 'check',
        params: { channel: '37A' },
        at: [],
        received: "'37a'",
        clause: 'common practice',
      },
    ],
    [
      '3022',
      {
        code: 'channel-four-digit',
        params: {},
        at: [],
        expected: 'two digits, or four that begin with 00, 10 or 20',
        received: "'3022'",
        clause: M1084,
      },
    ],
    [
      '1006',
      {
        code: 'channel-no-legs',
        params: { leg: 'ship' },
        at: [],
        expected: '06',
        received: "'1006'",
        clause: M1084,
        suggestion: '06',
      },
    ],
    [
      '70B',
      {
        code: 'channel-no-legs',
        params: { leg: 'coast' },
        at: [],
        expected: '70',
        received: "'70B'",
        clause: M1084,
        suggestion: '70',
      },
    ],
    [
      '260',
      {
        code: 'channel-interleaved',
        params: {},
        at: [],
        expected: 'a number from 01 to 28 or 60 to 88',
        received: "'260'",
        clause: M1084,
      },
    ],
  ])('%j', (input, issue) => expect(issuesOf(parseDesignator(input))).toMatchObject([issue]));
});

describe('what is wrong with a frequency', () => {
  it.each([
    ['156.8 GHz', 'channel-frequency-malformed', { received: "'156.8 GHz'", params: {} }],
    [undefined, 'channel-frequency-type', { params: { type: 'undefined' } }],
  ])('%j is not readable', (input, code, more) =>
    expect(issuesOf(channelsAt(internationalPlan, input as string))).toMatchObject([
      {
        code,
        ...more,
        at: [],
        expected: "megahertz as in '156.800', or kilohertz as in '156800'",
        clause: 'common practice',
      },
    ]),
  );

  it('156.8 as a number: whole kilohertz or text', () => {
    expect(issuesOf(channelsAt(internationalPlan, 156.8))).toMatchObject([
      {
        code: 'channel-frequency-number',
        at: [],
        expected: 'whole kilohertz, or text in megahertz',
        received: '156.8',
        clause: 'common practice',
      },
    ]);
  });
});

describe('what is odd about the channel digits of a call', () => {
  it.each([
    ['90002', "'90002'"],
    [900022, 'number'],
  ])('%j is no element', (digits, received) =>
    expect(issuesOf(decodeChannel(digits as string))).toMatchObject([
      {
        code: 'channel-digits-malformed',
        received,
        at: [],
        expected: 'six digits, or eight that begin with 4',
        clause: M493,
      },
    ]),
  );

  it.each<[digits: string, notice: Partial<Issue>]>([
    [
      '512345',
      {
        code: 'channel-digits-unknown',
        grade: 'check',
        params: { digit: '5' },
        at: [],
        received: '512345',
        clause: M493,
      },
    ],
    [
      '930022',
      {
        code: 'channel-digits-second',
        params: { digit: '3' },
        at: [],
        expected: '0',
        received: '930022',
        clause: M493,
      },
    ],
    [
      '911022',
      {
        code: 'channel-digits-second',
        params: { digit: '1' },
        at: [],
        expected: '0',
        received: '911022',
        clause: M493,
      },
    ],
    [
      '910022',
      {
        code: 'channel-digits-old-form',
        grade: 'check',
        params: { channel: '1022' },
        at: [],
        received: '910022',
        clause: M493,
      },
    ],
  ])('%s', (digits, notice) => expect(issuesOf(decodeChannel(digits))).toMatchObject([notice]));
});

describe('a channel the plan does not have', () => {
  it('is told from its namesake, with the plan that lacks it and the plan that has it', () => {
    expect(issuesOf(findChannel(internationalPlan, 'WX1', { elsewhere: [unitedStatesPlan] }))).toMatchObject([
      {
        code: 'channel-not-in-plan',
        grade: 'error',
        params: {
          channel: 'WX1',
          plan: 'International',
          reading: { code: 'channel-by-name', params: { initial: 'W' } },
        },
        at: [],
        expected: 'a channel of the International plan',
        received: 'WX1',
        clause: internationalPlan.edition,
      },
      {
        code: 'channel-elsewhere',
        grade: 'check',
        params: {
          channel: 'WX1',
          plan: 'United States',
          frequencies: { code: 'channel-frequency-coast', params: { coast: '162.550' } },
          note: planText('continuous weather broadcast; the WX numbers have no official standing'),
        },
        at: [],
        received: 'WX1',
        clause: unitedStatesPlan.edition,
      },
    ]);
  });

  const one = (ship: string) => ({ code: 'channel-frequency-one', params: { ship } });
  it.each<[ChannelPlan, string, object]>([
    [unitedStatesPlan, 'ASM 1', {}],
    [internationalPlan, '42', {}],
    [
      canadaPlan,
      '21',
      {
        reading: { code: 'channel-by-number-two', params: { ship: '157.050', coast: '161.650' } },
        there: [
          { code: 'channel-there', params: { channel: '21A', frequencies: one('157.050') } },
          {
            code: 'channel-there',
            params: {
              channel: '21B',
              frequencies: { code: 'channel-frequency-coast', params: { coast: '161.650' } },
            },
          },
        ],
      },
    ],
    [
      unitedKingdomPlan,
      '07A',
      {
        reading: {
          code: 'channel-by-number-leg',
          params: { leg: 'ship', number: '07', ship: '156.350' },
        },
        there: [
          {
            code: 'channel-there',
            params: {
              channel: '07',
              frequencies: {
                code: 'channel-frequency-two',
                params: { ship: '156.350', coast: '160.950' },
              },
            },
          },
        ],
      },
    ],
    [
      { ...internationalPlan, name: 'Skerra Sound (invented)', channels: [] },
      '72',
      { reading: { code: 'channel-by-number-one', params: { ship: '156.625' } } },
    ],
  ])('is explained by its number', (plan, name, more) => {
    const [{ params } = { params: {} }, ...others] = issuesOf(findChannel(plan, name));
    expect(others).toEqual([]);
    expect(params).toMatchObject({ channel: name, plan: plan.name, ...more });
    expect(Object.keys(params ?? {})).toHaveLength(2 + Object.keys(more).length);
  });

  it('is not looked up in what is no plan', () => {
    for (const [plan, given] of [
      [null, 'null'],
      [{}, 'an object'],
      ['Canada', "'Canada'"],
    ] as const) {
      expect(issuesOf(findChannel(plan as unknown as ChannelPlan, '72'))).toMatchObject([
        {
          code: 'channel-no-plan',
          at: [],
          expected: 'a plan, as definePlan makes one',
          received: given,
          clause: 'common practice',
        },
      ]);
    }
  });

  it('is not looked up at all where no text was given', () => {
    for (const [input, type] of [
      [undefined, 'undefined'],
      [null, 'null'],
      [72, 'number'],
      [true, 'boolean'],
      [{}, 'object'],
      [{ text: 72 }, 'number'],
    ] as const)
      expect(issuesOf(findChannel(internationalPlan, input as unknown as string))).toMatchObject([
        { code: 'channel-not-text', params: { type } },
      ]);
  });
});

describe('what a program is told that asks for the impossible', () => {
  it('digits of a channel no digits name', () => {
    const expected = 'encodeChannel: expected a channel with digits of ITU-R M.1084, got';
    expect(() => encodeChannel(valueOf(findChannel(unitedKingdomPlan, 'M')))).toThrow(
      `${expected} M, which has none`,
    );
    expect(() => encodeChannel(valueOf(parseDesignator('wx 3')))).toThrow(`${expected} WX3, which has none`);
  });

  it('a tolerance, a frequency or a list of plans that is none', () => {
    expect(() => channelsAt(internationalPlan, '156.8', { toleranceKHz: -1 })).toThrow(
      'channelsAt: expected toleranceKHz of 0 or more, got -1',
    );
    expect(() => formatMegahertz(156.8)).toThrow(
      'formatMegahertz: expected whole kilohertz from 0 to 999999, got 156.8',
    );
    expect(() => workingChannels([], 'safety')).toThrow(
      'workingChannels: expected at least one plan, got none',
    );
  });
});
