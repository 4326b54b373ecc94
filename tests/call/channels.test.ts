import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyFields, symbolsOf } from '../../src/call/fields.ts';
import {
  answersTo,
  type Call,
  type CallFields,
  checkCall,
  composeAutomaticServiceCall,
  composeIndividualCall,
  composeTestCall,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { canadaPlan } from '../../src/channel/canada.ts';
import { decodeChannel } from '../../src/channel/index.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { unitedStatesPlan } from '../../src/channel/united-states.ts';
import { valueOf } from '../../src/result/index.ts';
import { codedIn, rowIn, saying, withoutWords } from './without-words.ts';

// All stations are the invented ones of the demo.
const own = '232999871';
const friend = '232999142';
const coast = '002329990';
const hail = composeIndividualCall({ from: friend, to: own, channel: '72' });
const heard = (change: Partial<CallFields>) => decodeFields({ ...encodeFields(hail), ...change });
const both = (...symbols: number[]) => heard({ receive: symbols, transmit: symbols });
const findings = (call: Call) => checkCall(call).map(({ code, at }) => `${code} at ${at.join()}`);
const ables = (
  call: Call,
  channels: readonly string[] = [],
  plan = undefined as typeof unitedStatesPlan | undefined,
) =>
  answersTo(call, { own, channels, plan }).answers.flatMap((answer) =>
    answer.meaning === 'unable' ? [] : [saying(answer)],
  );

// Radio Regulations Appendix 18, notes; 16 for routine: Art. 52; both from memory.
describe('without a plan', () => {
  it.each([
    ['16', 'call-channel-16-routine'],
    ['70', 'call-channel-70'],
    ['75', 'channel-not-to-be-named'],
    ['76', 'channel-not-to-be-named'],
    ['2087', 'channel-data-only'],
    ['2006', 'channel-data-only'],
  ])('%s is told of, and neither accepted nor offered for a talk between ships', (channel, code) => {
    const call = { ...hail, channel };
    expect(findings(call)).toEqual([`${code} at channel`]);
    expect(ables(call, ['77'])).toEqual(['able-instead 77']);
    expect(ables(hail, [channel])).toEqual(['able 72']);
  });

  it('16 is accepted for what is urgent, and from a coast station, but no channel of data', () => {
    expect(ables({ ...hail, category: 'urgency', channel: '16' })).toEqual(['able 16']);
    const ashore = { ...composeIndividualCall({ from: coast, to: own }), channel: '16' };
    expect(ables(ashore)).toEqual(['able 16']);
    expect(ables({ ...ashore, channel: '2087' })).toEqual([]);
    expect(findings({ ...ashore, channel: '2087' })).toEqual(['channel-data-only at channel']);
  });
});

// ITU-R M.1084 Annex 4 and Radio Regulations Appendix 18: 01 to 28 and 60 to 88.
describe('digits that name no channel', () => {
  it.each([
    ['99', [90, 0, 99]],
    ['0000', [90, 0, 0]],
    ['29', [90, 0, 29]],
    ['45', [90, 0, 45]],
    ['59', [90, 0, 59]],
    ['89', [90, 0, 89]],
    ['3072', [90, 30, 72]],
    ['272', [90, 2, 72]],
  ])('%s is kept, told of once, and not answered with "able"', (channel, symbols) => {
    const code = 'call-channel-unknown';
    const { call, notices } = both(...symbols);
    expect(call).toMatchObject({ channel });
    expect(withoutWords(notices)).toEqual([
      {
        code,
        params: { field: 'receive', channel },
        at: ['receive'],
        received: symbols.map((symbol) => String(symbol).padStart(2, '0')).join(' '),
        clause: 'ITU-R M.1084 Annex 4; Radio Regulations Appendix 18',
      },
    ]);
    for (const plan of [undefined, unitedKingdomPlan])
      expect(checkCall(call, { plan }).map((notice) => notice.code)).toEqual([code]);
    expect(ables(call)).toEqual([]);
  });

  // Channel 0 of the United Kingdom has no digits in a call: ITU-R M.1084 Annex 4, from memory.
  it('900000 is not taken for channel 0', () => {
    const { sentence } = describeCall(both(90, 0, 0).call, { plan: unitedKingdomPlan });
    expect(sentence).toContain('channel 0000');
  });

  it.each(['01', '28', '60', '69', '70', '88', '1022', '2078'])('%s does', (channel) => {
    const { call, notices } = decodeFields(encodeFields({ ...hail, channel }));
    expect(call).toMatchObject({ channel });
    expect(notices).toEqual([]);
  });

  // ITU-R M.1084 Annex 4: 06 has one frequency and no leg.
  it('1006 is told of when the call is checked, and not accepted', () => {
    const { call, notices } = both(90, 10, 6);
    expect(notices).toEqual([]);
    expect(findings(call)).toEqual(['channel-no-legs at channel']);
    expect(ables(call)).toEqual([]);
  });

  it('are told of the field they stand in', () => {
    const second = heard({ receive: [2, 18, 20], transmit: [90, 0, 99] });
    expect(second.notices.map(({ code, at }) => [code, ...at])).toEqual([
      ['call-channel-unknown', 'transmit'],
    ]);
  });

  it('are only unexpected where the call has no channel', () => {
    const test = encodeFields(composeTestCall({ from: friend, to: own }));
    expect(
      decodeFields({ ...test, receive: [90, 0, 99], transmit: [90, 0, 6] }).notices.map(({ code }) => code),
    ).toEqual(['call-field-unread', 'call-field-unread']);
    expect(
      decodeFields({ ...emptyFields, format: 112, nature: 107, receive: [90, 0, 99] }).notices.map(
        ({ code }) => code,
      ),
    ).toContain('call-field-unexpected');
  });
});

// Both rooms read an element as the channel it names, or as none.
describe('the six digits of an element', () => {
  it('name the same channel in a call as by themselves', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), (number) => {
        const digits = `9${String(number).padStart(5, '0')}`;
        const receive = symbolsOf(digits);
        const { call } = decodeFields({ ...encodeFields(hail), receive, transmit: receive });
        const alone = valueOf(decodeChannel(digits));
        expect((call as typeof hail).channel).toBe(alone.kind === 'vhf-channel' ? alone.designator : null);
      }),
      { numRuns: 2000 },
    );
  });
});

// deviation: D-channel-7
describe('a channel in the form of older sets', () => {
  it('is told with what it was read as', () => {
    const { call, notices } = both(91, 0, 22);
    expect(call).toMatchObject({ channel: '1022' });
    expect(withoutWords(notices)).toEqual([
      {
        code: 'call-channel-old-form',
        params: { field: 'receive', channel: '1022' },
        at: ['receive'],
        received: '91 00 22',
        clause: 'ITU-R M.493-16, VHF channel element, unverified',
      },
    ]);
  });

  it('in the second element too', () => {
    expect(heard({ receive: [90, 10, 22], transmit: [91, 0, 22] }).notices.map(({ at }) => at)).toEqual([
      ['transmit'],
    ]);
  });
});

// ITU-R M.493-16, from memory: on VHF the second element repeats the first or says nothing.
describe('two channels in one call', () => {
  const two = () => heard({ receive: [90, 0, 72], transmit: [90, 0, 6] });

  it('are told of, and kept', () => {
    const { call, notices } = two();
    expect(withoutWords(notices)).toEqual([
      {
        code: 'call-channels-differ',
        params: { channel: '06', first: '72', symbols: '90 00 72' },
        at: ['transmit'],
        expected: '90 00 72, or no information',
        received: '90 00 06',
        clause: 'ITU-R M.493-16 Annex 1 tables A1-4.7 and A1-4.9',
      },
    ]);
    expect(encodeFields(call)).toMatchObject({ receive: [90, 0, 72], transmit: [90, 0, 6] });
  });

  it('are called channels', () => {
    const says = (call: Call) => codedIn(describeCall(call).sentenceText).split('where=')[1];
    expect(says(two().call)).toBe('(call-where-channels first=72 second=06)');
    expect(says(heard({ receive: [126, 126, 126], transmit: [90, 0, 6] }).call)).toBe(
      '(call-where-both first=(call-element-none) second=(call-where-channel channel=06))',
    );
    expect(says(heard({ receive: [90, 0, 72], transmit: [2, 18, 20] }).call)).toBe(
      '(call-where-both first=(call-where-channel channel=72) second=(call-element-digits digits=021820))',
    );
    expect(says(heard({ receive: [2, 18, 20], transmit: [90, 0, 72, 0] }).call)).toBe(
      '(call-where-frequencies receive=021820 transmit=90007200)',
    );
  });
});

// 47 CFR 80.371, 80.373: the United States name the ship side of a pair with an A.
describe('the names of a plan', () => {
  const plan = unitedStatesPlan;

  it('stand in labels, while the call carries digits', () => {
    const { answers } = answersTo(hail, { own, channels: ['78A'], plan });
    expect(answers.slice(0, 2).map(saying)).toEqual(['able 72', 'able-instead 1078']);
    expect(answers[1]?.call).toMatchObject({ channel: '1078' });
    expect(ables(hail, ['78A'])[1]).toBe('able-instead 1078');
    const service = composeAutomaticServiceCall({
      from: friend,
      to: own,
      telephone: '5550123',
      channel: '78A',
    });
    expect(ables(service, [], plan)).toEqual(['able 1078']);
  });

  it('stand in descriptions', () => {
    const call = { ...hail, channel: '1078' };
    expect(codedIn(describeCall(call, { plan }).sentenceText)).toContain('channel=1078');
    expect(describeCall(call, { plan }).rows.map(rowIn)).toContain('receive call-where-channel channel=1078');
    expect(codedIn(describeCall(call).sentenceText)).toContain('channel=1078');
    // The plan has 1022 alone: what it does not have keeps its digits.
    expect(codedIn(describeCall({ ...hail, channel: '22' }, { plan }).sentenceText)).toContain('channel=22');
    const two = heard({ receive: [90, 10, 78], transmit: [90, 10, 79] }).call;
    expect(codedIn(describeCall(two, { plan }).sentenceText)).toContain('first=1078 second=1079');
  });

  // Canada calls the ship side of channel 22 22A: the plan's own source.
  it('stand in place of the digits', () => {
    const call = { ...hail, channel: '1022' };
    expect(codedIn(describeCall(call, { plan: canadaPlan }).sentenceText)).toContain('channel=22A');
    const dialled = composeAutomaticServiceCall({ from: friend, to: own, channel: '22A' });
    expect(ables(dialled, [], canadaPlan)).toEqual(['able 22A']);
    const two = heard({ receive: [90, 10, 22], transmit: [90, 20, 21] }).call;
    expect(codedIn(describeCall(two, { plan: canadaPlan }).sentenceText)).toContain('first=22A second=21B');
  });
});
