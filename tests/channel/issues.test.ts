import { describe, expect, it } from 'vitest';
import {
  type ChannelPlan,
  channelsAt,
  decodeChannel,
  encodeChannel,
  findChannel,
  formatMegahertz,
  parseDesignator,
  workingChannels,
} from '../../src/channel/index.ts';
import type { Issue, Result } from '../../src/result/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

const issuesOf = (result: Result<unknown>) => (result.ok ? result.notices : result.issues);

const FORMS =
  "a number from 01 to 28 or 60 to 88, as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'";
const M1084 = 'ITU-R M.1084 Annex 4';
const M493 = 'ITU-R M.493-16, frequency and channel information, unverified';

describe('what is wrong with the name of a channel', () => {
  it.each<[input: unknown, issue: Issue]>([
    [
      null,
      {
        code: 'channel-not-text',
        message: 'Channel: expected text, got null',
        at: [],
        expected: FORMS,
        clause: 'common practice',
      },
    ],
    [
      [72],
      {
        code: 'channel-not-text',
        message: 'Channel: expected text, got object',
        at: [],
        expected: FORMS,
        clause: 'common practice',
      },
    ],
    [
      6,
      {
        code: 'channel-not-text',
        message: 'Channel: expected text, got number',
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
        message: `Channel '22C' is not a channel designator: expected ${FORMS}`,
        at: [],
        expected: FORMS,
        received: "'22C'",
        clause: M1084,
      },
    ],
    ...['', ' \t '].map((blank): [string, Issue] => [
      blank,
      {
        code: 'channel-malformed',
        message: `Channel is empty: expected ${FORMS}`,
        at: [],
        expected: FORMS,
        received: blank === '' ? "''" : "' \\u{9} '",
        clause: M1084,
      },
    ]),
    [
      ' 156.625 ',
      {
        code: 'channel-malformed',
        message: `Channel ' 156.625 ' looks like a frequency: expected ${FORMS}`,
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
        message: 'Channel number 89 is not in use: expected 01 to 28 or 60 to 88',
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
        message:
          'Channel 37A is outside Appendix 18: numbers 29 to 59 are private channels of single countries',
        at: [],
        received: "'37a'",
        clause: 'common practice',
      },
    ],
    [
      '3022',
      {
        code: 'channel-four-digit',
        message: "Channel '3022' has an unknown prefix: expected 10 for the ship leg or 20 for the coast leg",
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
        message: "Channel 06 has a single frequency, so it has no ship leg '1006'",
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
        message: "Channel 70 has a single frequency, so it has no coast leg '70B'",
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
        message: "Channel '260' is numbered as a 12.5 kHz interleaved channel, which no plan here has",
        at: [],
        expected: FORMS,
        received: "'260'",
        clause: M1084,
      },
    ],
  ])('%j', (input, issue) => expect(issuesOf(parseDesignator(input))).toEqual([issue]));
});

describe('what is wrong with a frequency', () => {
  it.each([
    ['156.8 GHz', "'156.8 GHz'"],
    [undefined, 'of type undefined'],
  ])('%j is not readable', (input, named) =>
    expect(issuesOf(channelsAt(internationalPlan, input as string))).toEqual([
      {
        code: 'channel-frequency-malformed',
        message: `Frequency ${named} is not readable: expected '156.8' or '156800'`,
        at: [],
        expected: "megahertz as in '156.800', or kilohertz as in '156800'",
        clause: 'common practice',
      },
    ]),
  );

  it('156.8 as a number: whole kilohertz or text', () => {
    expect(issuesOf(channelsAt(internationalPlan, 156.8))).toEqual([
      {
        code: 'channel-frequency-number',
        message: "Frequency 156.8 is not whole kilohertz: expected 156800 or the text '156.8'",
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
  ])('%j is no element', (digits, named) =>
    expect(issuesOf(decodeChannel(digits as string))).toEqual([
      {
        code: 'channel-digits-malformed',
        message: `Channel digits: expected six digits, or eight that begin with 4, got ${named}`,
        at: [],
        expected: 'six digits, or eight that begin with 4',
        clause: M493,
      },
    ]),
  );

  it.each<[digits: string, notice: Issue]>([
    [
      '512345',
      {
        code: 'channel-digits-unknown',
        message: 'Channel digits 512345 begin with 5, which has no known meaning in six digits',
        at: [],
        received: '512345',
        clause: M493,
      },
    ],
    [
      '930022',
      {
        code: 'channel-digits-unknown',
        message: 'Channel digits 930022 have 3 in second place: expected 0',
        at: [],
        expected: '0',
        received: '930022',
        clause: M493,
      },
    ],
    [
      '911022',
      {
        code: 'channel-digits-unknown',
        message: 'Channel digits 911022 have 1 in second place: expected 0',
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
        message: 'Channel digits 910022 carry the leg in the second digit: read as 1022',
        at: [],
        received: '910022',
        clause: M493,
      },
    ],
  ])('%s', (digits, notice) => expect(issuesOf(decodeChannel(digits))).toEqual([notice]));
});

describe('a channel the plan does not have', () => {
  it('is told from its namesake, with the plan that lacks it and the plan that has it', () => {
    expect(issuesOf(findChannel(internationalPlan, 'WX1', { elsewhere: [unitedStatesPlan] }))).toEqual([
      {
        code: 'channel-not-in-plan',
        message:
          'Channel WX1 is not in the International plan: weather channels are broadcasts of North America',
        at: [],
        expected: 'a channel of the International plan',
        received: 'WX1',
        clause: internationalPlan.edition,
      },
      {
        code: 'channel-elsewhere',
        message:
          'Channel WX1 in the United States plan is 162.550 MHz from the coast only: continuous weather broadcast; the WX numbers have no official standing',
        at: [],
        received: 'WX1',
        clause: unitedStatesPlan.edition,
      },
    ]);
  });

  it.each([
    [unitedStatesPlan, 'ASM 1', 'Channel ASM 1 is not in the United States plan'],
    [internationalPlan, '42', 'Channel 42 is not in the International plan'],
    [
      canadaPlan,
      '21',
      'Channel 21 is not in the Canada plan: by its number ships use 157.050 and coast stations 161.650 MHz; the plan has 21A (157.050 MHz) and 21B (161.650 MHz from the coast only)',
    ],
    [
      unitedKingdomPlan,
      '07A',
      'Channel 07A is not in the United Kingdom plan: by its number it is the ship leg of 07 as a single frequency, 156.350 MHz; the plan has 07 (ships on 156.350 and coast stations on 160.950 MHz)',
    ],
    [
      { ...internationalPlan, name: 'Skerra Sound (invented)', channels: [] },
      '72',
      'Channel 72 is not in the Skerra Sound (invented) plan: by its number it is 156.625 MHz',
    ],
  ])('is explained by its number', (plan, name, message) =>
    expect(issuesOf(findChannel(plan, name)).map((issue) => issue.message)).toEqual([message]),
  );

  it('is not looked up in what is no plan', () => {
    for (const [plan, given] of [
      [null, 'null'],
      [{}, 'an object'],
      ['Canada', "'Canada'"],
    ] as const) {
      expect(issuesOf(findChannel(plan as unknown as ChannelPlan, '72'))).toEqual([
        {
          code: 'channel-no-plan',
          message: `Channel plan: expected a plan, as definePlan makes one, got ${given}`,
          at: [],
          expected: 'a plan, as definePlan makes one',
          received: given,
          clause: 'common practice',
        },
      ]);
    }
  });

  it('is not looked up at all where no text was given', () => {
    for (const input of [undefined, null, 72, true])
      expect(issuesOf(findChannel(internationalPlan, input as unknown as string))[0]?.code).toBe(
        'channel-not-text',
      );
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
