import { describe, expect, it } from 'vitest';
import {
  type Channel,
  type ChannelPlan,
  checkWorkingChannel,
  definePlan,
  findChannel,
  parsePlan,
  planText,
  simplexChannel,
  workingChannels,
} from '../../src/channel/index.ts';
import { planTexts } from '../../src/channel/internal.ts';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { french } from '../../src/locale/fr.ts';
import { translate } from '../../src/locale/index.ts';
import { dutch } from '../../src/locale/nl.ts';
import { type Notice, valueOf } from '../../src/result/index.ts';
import { internationalPlan, plans } from './plans.ts';

const textsOfChannel = (channel: Channel) => [
  channel.note,
  channel.region,
  channel.caution,
  channel.powerRule,
  channel.notAssignableReason,
  channel.selectiveCallRule,
  ...channel.conditionalPowerLimits.map(({ when }) => when),
];
const textsOf = ({ cautions, rules, channels }: ChannelPlan) =>
  [...cautions, ...rules, ...channels.flatMap(textsOfChannel)].filter((text) => text !== null);

const purposes = [
  'intership-non-commercial',
  'intership-commercial',
  'intership-navigation',
  'ship-to-coast',
  'safety',
] as const;

describe('texts of the plans', () => {
  it('are those of the table, and no others', () => {
    // What a channel of one's own says where its user says nothing, and what a channel for commerce says.
    const more = [simplexChannel('X', 155_900).note, 'for commercial vessels'];
    const used = [...new Set([...plans.flatMap(textsOf), ...more])].map((text) => [
      planText(text).code,
      text,
    ]);
    expect(Object.fromEntries(used)).toEqual(planTexts.said);
    expect(new Set(used.map(([code]) => code)).size).toBe(used.length);
  });

  it.each([german, french, dutch])('are all in $lang, in plans that went through JSON too', (catalogue) => {
    for (const plan of plans) {
      for (const text of textsOf(valueOf(parsePlan(JSON.stringify(plan)))))
        expect(translate(planText(text), catalogue), text).toMatchObject({ lang: catalogue.lang });
    }
  });

  it('stay as they are where the plan is one of your own, or was changed', () => {
    const plan = definePlan({
      name: 'Skerra Sound (invented)',
      channels: [
        { ...valueOf(findChannel(internationalPlan, '06')), caution: 'keep it clear for the ferry' },
        simplexChannel('Club 1', 155_900, { note: 'races {today} [and] tomorrow' }),
      ],
    });
    const [six, club] = plan.channels as [Channel, Channel];
    for (const text of [six.caution ?? '', club.note])
      expect(translate(planText(text), german)).toEqual({ lang: 'en', text });
    expect(translate(planText(six.note), german).lang).toBe('de');
    // In a message, only the text of the plan stays English.
    const { code, params = {} } = checkWorkingChannel(six, 'intership-non-commercial')[0] as Notice;
    expect(translate({ code, params }, german).text).toBe(
      'Kanal 06 im Plan „Skerra Sound (invented)“: keep it clear for the ferry',
    );
  });
});

describe('every message about a channel of a plan', () => {
  it.each(purposes)('is the same when it is made again in English, and is in German: %s', (purpose) => {
    for (const plan of plans) {
      const { ranked, ruledOut } = workingChannels(plan, purpose);
      for (const entry of ranked)
        expect(translate({ ...entry, text: entry.reason }, english).text).toBe(entry.reason);
      for (const { code, params = {}, message, expected, received } of [...ranked, ...ruledOut].flatMap(
        ({ notices }) => notices,
      )) {
        const coded = { code, params, ...(received && { received }) };
        expect(translate(coded, english)).toEqual({
          lang: 'en',
          text: message,
          ...(expected !== undefined && { expected }),
        });
        expect(translate(coded, german).lang).toBe('de');
      }
    }
  });
});

describe('a text that a channel does not have', () => {
  it('is refused in words', () => {
    expect(() => planText(null as never)).toThrow('planText: expected a text, got null');
  });
});
