import { describe, expect, it } from 'vitest';
import {
  answersTo,
  type Call,
  type CallFields,
  checkCall,
  composeAllShipsCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeIndividualCall,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { codedIn, withoutWords } from './without-words.ts';

// All stations are the invented ones of the demo.
const merrow = '232999871';
const bounty = '232999218';
const coast = '002329990';
const alert = composeDistressAlert({ from: bounty, nature: 'flooding' });
const toCoast = composeDistressRelay({ from: merrow, to: coast, about: alert });
const toAll = composeDistressRelay({ from: merrow, about: alert });

const codes = (call: Call) => checkCall(call).map((notice) => notice.code);
/** The cautions of a call, each by its code and its clause. */
const said = (call: Call, reader: { own?: string; designated?: boolean } = {}) =>
  describeCall(call, reader)
    .cautions.map(({ code, clause }) => `${code} (${clause})`)
    .join('\n');
const words = (call: Call, own: string) =>
  describeCall(call, { own })
    .cautions.map(({ text }) => text)
    .join('\n');

// Radio Regulations 2024, read in restatements; 47 CFR 2025.
describe('the duty to pass a distress on', () => {
  it('an alert that nobody acknowledges within five minutes goes to one coast station: RR 32.16, 32.19B', () => {
    const heard = said(alert, { own: merrow });
    expect(heard).toMatch(/call-pass-on \(.*32\.16.*MSC\.1\/Circ\.1657/);
  });

  it('in United States waters by voice or other means, not by DSC: 47 CFR 80.1121(b)', () => {
    expect(said(alert, { own: merrow })).toMatch(/call-pass-on \(.*80\.1121\(b\)/);
  });

  it('what is forbidden is a DSC relay to all ships or an area after the DSC alert: RR 32.19G', () => {
    expect(said(alert, { own: merrow })).toMatch(/call-pass-on \(.*32\.19G/);
    expect(codes(toCoast)).not.toContain('call-relay-cases');
    expect(codes(toAll)).toContain('call-relay-cases');
  });

  it('a ship that relays reads all three cases: RR 32.16 to 32.19, 47 CFR 80.1115(a)', () => {
    expect(said(toCoast, { own: merrow })).toMatch(
      /call-when-to-relay \(RR 2024 Nos\. 32\.16 to 32\.19H.*80\.1115\(a\)/,
    );
  });

  it('nowhere does a caution forbid a relay as such', () => {
    for (const call of [alert, toCoast, toAll])
      for (const own of [merrow, coast, bounty])
        expect(words(call, own)).not.toMatch(/because (it|an alert) was heard|never because/);
  });
});

describe('who acknowledges by DSC', () => {
  it('a coast station that is not designated follows the guidance for ships: 47 CFR 80.103(c)', () => {
    const { answers, none } = answersTo(alert, { own: coast });
    expect(answers).toEqual([]);
    expect(none).toMatchObject({ clause: expect.stringContaining('80.103(c)') });
    expect(none?.code).toBe('call-no-answer-designated');
    const text = said(alert, { own: coast });
    expect(text).toContain('call-keep-watch');
    expect(text).toContain('call-report-ashore');
    expect(text).not.toContain('call-acknowledge-without-delay');
    expect(answersTo(toAll, { own: coast }).answers).toEqual([]);
  });

  it('a designated one acknowledges and reports to the rescue co-ordination centre: 47 CFR 80.1119(a)', () => {
    const { answers } = answersTo(alert, { own: coast, designated: true });
    expect(answers.map(({ call }) => call.kind)).toEqual(['distress-acknowledgement']);
    const text = said(alert, { own: coast, designated: true });
    expect(text).toMatch(/call-acknowledge-without-delay \(.*80\.1119\(a\)/);
    expect(answersTo(toAll, { own: coast, designated: true }).answers).toHaveLength(1);
  });

  it('a relay addressed to a coast station is acknowledged by her, designated or not: ITU-R M.493-16 table A1-4.4', () => {
    expect(answersTo(toCoast, { own: coast }).answers).toHaveLength(1);
  });

  it('a ship only in the vicinity, after consulting a centre or coast station: MSC.1/Circ.1657, 47 CFR 80.1121(d)', () => {
    const text = said(composeDistressAcknowledgement({ from: merrow, about: alert }), { own: merrow });
    expect(text).toMatch(/call-who-acknowledges \(MSC\.1\/Circ\.1657.*80\.1121\(d\)/);
  });
});

it('voice follows the alert as soon as it is out: RR 32.13, ITU-R M.541-11 Annex 3 §1.4.1', () => {
  expect(said(alert, { own: bounty })).toMatch(/call-voice-follows \(RR 2024 No\. 32\.13/);
});

it('no caution argues against cancelling a false alert: RR 32.53B to 32.53E, Resolution 349', () => {
  const cancel = composeDistressSelfCancel({ from: merrow });
  expect(said(cancel, { own: merrow })).toMatch(/call-cancel-by-voice \(RR 2024 Nos\. 32\.53B/);
  expect(words(cancel, merrow)).not.toMatch(/only in|never|do not send/i);
});

// 47 CFR 80.179(e): format 120 twice, address, 100, self-identification, 126 126, six times 126, end 127.
describe('the automatic alarm of a moored vessel: 47 CFR 80.179(e)', () => {
  const fields: CallFields = {
    ...encodeFields(composeIndividualCall({ from: bounty, to: merrow })),
    category: 100,
    telecommand1: 126,
    telecommand2: 126,
    receive: [126, 126, 126],
    transmit: [126, 126, 126],
    end: 127,
  };

  it('is told as what it may be, and gives the same symbols back', () => {
    const { call, notices } = decodeFields(fields);
    expect(codedIn(describeCall(call, { own: merrow }).sentenceText)).toBe(
      'call-is-moored-vessel-alarm from=232999218 to=(call-own-station)',
    );
    expect(withoutWords(notices)).toEqual([
      { code: 'call-moored-vessel-alarm', params: {}, at: ['kind'], clause: '47 CFR 80.179(e)' },
    ]);
    expect(said(call, { own: merrow })).toContain('47 CFR 80.179(e)');
    expect(encodeFields(call)).toEqual(fields);
    expect(codes(call)).toEqual(['call-moored-vessel-alarm']);
  });

  it('is offered no DSC answer', () => {
    expect(answersTo(decodeFields(fields).call, { own: merrow })).toMatchObject({
      answers: [],
      none: { clause: '47 CFR 80.179(e)' },
    });
  });

  it('one symbol otherwise, and it is an ordinary call', () => {
    for (const change of [
      { end: 117 },
      { category: 108 },
      { telecommand1: 100 },
      { telecommand2: 110 },
      { receive: [90, 0, 72] },
      { receive: [2, 18, 20] },
      { format: 114, address: [2, 32, 99, 90, 50], rest: [126] },
    ]) {
      const other = decodeFields({ ...fields, ...change });
      expect(other.notices.map(({ code }) => code)).not.toContain('call-moored-vessel-alarm');
      expect(describeCall(other.call).sentenceText.code).not.toContain('moored');
    }
  });
});

// ITU-R M.493-16 (12/2023), its symbol lists read in restatements.
describe('what ITU-R M.493-16 changed', () => {
  const routine = encodeFields(composeIndividualCall({ from: bounty, to: merrow, channel: '72' }));

  it('category 106 is the automatic connection system, in older sets ship’s business: §6', () => {
    const { call, notices } = decodeFields({ ...routine, category: 106 });
    expect(call).toMatchObject({ kind: 'individual-call', category: 'acs' });
    expect(notices[0]).toMatchObject({ code: 'call-category-acs', grade: 'note' });
  });

  it('second telecommands 120 to 125 count the transmissions that remain: table A1-3', () => {
    for (const remaining of [0, 1, 2, 3, 4, 5]) {
      const { call, notices } = decodeFields({ ...routine, telecommand2: 120 + remaining });
      expect(call).toMatchObject({ secondTelecommand: `acs-remaining-${remaining}` });
      expect(notices.map(({ code }) => code)).not.toContain('call-symbol-unknown');
    }
    for (const compose of [
      () => composeIndividualCall({ from: bounty, to: merrow, secondTelecommand: 'acs-remaining-0' }),
      () => composeAllShipsCall({ from: bounty, category: 'safety', secondTelecommand: 'acs-remaining-5' }),
    ])
      expect(compose).toThrow(RangeError);
  });

  it('nature 112 is read and never composed', () => {
    const old = decodeFields({ ...encodeFields(alert), nature: 112 }).call;
    expect(old).toMatchObject({ kind: 'distress-alert', nature: 'epirb-emission' });
    for (const nature of ['epirb-emission', 'symbol-112'] as const)
      expect(() => composeDistressAlert({ from: bounty, nature })).toThrow(RangeError);
    if (old.kind !== 'distress-alert') throw new Error('an alert');
    // What is sent about an alert received says what the alert said.
    expect(composeDistressAcknowledgement({ from: coast, about: old }).nature).toBe('epirb-emission');
  });
});
