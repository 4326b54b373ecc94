import { describe, expect, it } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  type Call,
  type CallFields,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePositionReply,
  composeTestCall,
  composeUnableToComply,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { codedIn, rowIn } from './without-words.ts';

// All stations are the invented ones of the demo.
const merrow = '232999871';
const tern = '232999142';
const bounty = '232999218';
const coast = '002329990';
const options = { own: merrow };
const position = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 6, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 4, minute: 2 };
const area = {
  kind: 'geographic-area',
  north: { hemisphere: 'N', degrees: 7 },
  west: { hemisphere: 'W', degrees: 7 },
  southward: 2,
  eastward: 3,
} as const;
const alert = composeDistressAlert({ from: bounty, nature: 'flooding', position, time });
const hail = composeIndividualCall({ from: merrow, to: tern, channel: '72' });
const test = composeTestCall({ from: merrow, to: coast });
const heard = (fields: Partial<CallFields>) => decodeFields({ ...encodeFields(test), ...fields }).call;
const sentence = (call: Call) => codedIn(describeCall(call, options).sentenceText);

describe('one sentence', () => {
  it('says what is not known', () => {
    expect(sentence(composeDistressRelay({ from: merrow, to: coast, nature: 'man-overboard', time }))).toBe(
      'call-is-relay from=(call-own-station) to=002329990 vessel=(call-unidentified-vessel) nature=man-overboard place=(call-place-lack lack=not-given) time=04:02 UTC',
    );
    expect(sentence({ ...alert, nature: null, time: null })).toBe(
      'call-is-alert from=232999218 nature=(call-nature-unknown) place=06°20′ N 006°30′ W time=(call-time-lack lack=not-given)',
    );
    expect(sentence({ ...composeUnableToComply({ call: hail }), reason: null })).toBe(
      'call-is-unable-unstated from=232999142 to=(call-own-station)',
    );
    expect(sentence({ ...hail, from: null, category: null, channel: null })).toBe(
      'call-is-announcement opening=none from=(call-unnamed-station) to=232999142 where=(call-where-none)',
    );
    const group = composeGroupCall({ from: merrow, to: '023299905', channel: '77' });
    expect(sentence({ ...group, to: { kind: 'group', mmsi: null } })).toBe(
      'call-is-announcement opening=routine from=(call-own-station) to=(call-unnamed-group) where=(call-where-channel channel=77)',
    );
    const warning = composeAreaCall({ from: coast, area, category: 'safety' });
    expect(sentence({ ...warning, to: { kind: 'area', area: null } })).toBe(
      'call-is-announcement opening=safety from=002329990 to=(call-unknown-area) where=(call-where-channel channel=16)',
    );
    expect(sentence(warning)).toBe(
      'call-is-announcement opening=safety from=002329990 to=(call-area corner=07° N 007° W southward=2 eastward=3) where=(call-where-channel channel=16)',
    );
  });

  it('names a category without a name by its symbol', () => {
    expect(sentence({ ...hail, category: 'symbol-107' })).toBe(
      'call-is-announcement opening=(call-symbol-opening symbol=107) from=(call-own-station) to=232999142 where=(call-where-channel channel=72)',
    );
  });

  // ETSI EN 300 698 Annex B, read in a restatement.
  it('calls an identification on a voice channel what it is', () => {
    expect(sentence(decodeFields({ ...emptyFields, format: 121 }).call)).toBe('call-is-atis');
  });

  it('says how traffic is sent when it is not speech, and on which frequencies', () => {
    expect(sentence({ ...hail, firstTelecommand: 'data' })).toBe(
      'call-is-announcement opening=routine from=(call-own-station) to=232999142 where=(call-where-channel channel=72) how=data',
    );
    const frequencies = { receive: '021820', transmit: null };
    expect(sentence({ ...hail, channel: null, frequencies })).toBe(
      'call-is-announcement opening=routine from=(call-own-station) to=232999142 where=(call-where-frequencies receive=021820 transmit=(call-no-digits))',
    );
    expect(sentence({ ...hail, channel: null, frequencies: { receive: null, transmit: '021820' } })).toBe(
      'call-is-announcement opening=routine from=(call-own-station) to=232999142 where=(call-where-frequencies receive=(call-no-digits) transmit=021820)',
    );
    expect(sentence({ ...hail, firstTelecommand: null, secondTelecommand: 'symbol-120' })).toBe(
      'call-is-announcement opening=routine from=(call-own-station) to=232999142 where=(call-where-channel channel=72) remark=(call-symbol symbol=120)',
    );
  });

  it('tells a position sent unsolicited from an answer', () => {
    expect(sentence(composePositionReply({ from: tern, to: merrow, position }))).toBe(
      'call-is-position-report from=232999142 to=(call-own-station) place=06°20′ N 006°30′ W time=(call-time-lack lack=not-given)',
    );
  });

  it('tells the three parts of a telephone call', () => {
    const service = composeAutomaticServiceCall({ from: merrow, to: coast, telephone: '5550123' });
    expect(sentence({ ...service, end: 'answer', telephone: null })).toBe(
      'call-is-telephone-unnumbered part=answer from=(call-own-station) to=002329990',
    );
    expect(sentence({ ...service, end: 'end' })).toBe(
      'call-is-telephone part=end from=(call-own-station) to=002329990 telephone=5550123',
    );
  });
});

describe('rows of fields', () => {
  const rows = (call: Call) => describeCall(call, options).rows.map(rowIn);

  it('of a relay about a ship that is not known', () => {
    const relay = composeDistressRelay({ from: coast, to: area });
    expect(rows(relay)).toEqual([
      'format call-says-format format=area',
      'address call-area corner=07° N 007° W southward=2 eastward=3',
      'category call-says-category category=distress',
      'self 002329990',
      'telecommand1 call-says-first-telecommand telecommand=distress-relay',
      'distressed call-says-unknown',
      'nature call-says-nature nature=undesignated',
      'position call-place-lack lack=not-given',
      'time call-time-lack lack=not-given',
      'subsequent call-says-first-telecommand telecommand=telephony-simplex',
      'end call-says-end end=end-of-sequence',
    ]);
    expect(rows(composeDistressRelay({ from: coast, about: alert }))[4]).toBe('distressed 232999218');
  });

  it('of a call that names a channel, and of one that names frequencies', () => {
    expect(rows(hail).slice(5)).toEqual([
      'telecommand2 call-says-no-information',
      'receive call-where-channel channel=72',
      'transmit call-where-channel channel=72',
      'end call-says-end end=acknowledgement-requested',
    ]);
    const frequencies = { receive: '021820', transmit: null };
    expect(rows({ ...hail, channel: null, frequencies }).slice(6, 8)).toEqual([
      'receive call-element-digits digits=021820',
      'transmit call-says-no-information',
    ]);
  });

  it('of a reason, and of another second telecommand', () => {
    expect(rows({ ...composeUnableToComply({ call: hail }), reason: 'busy' })[5]).toBe(
      'telecommand2 call-says-reason reason=busy',
    );
    expect(rows({ ...hail, secondTelecommand: 'medical-transport' })[5]).toBe(
      'telecommand2 call-says-second-telecommand telecommand=medical-transport',
    );
  });

  it('of a field without a single symbol', () => {
    expect(describeCall(heard({ position: [], rest: [] })).rows.slice(-2)).toMatchObject([
      { labelText: { params: { field: 'position' } }, symbols: [] },
      { labelText: { params: { field: 'end' } } },
    ]);
  });

  it('of a telephone call', () => {
    const call = composeAutomaticServiceCall({
      from: merrow,
      to: coast,
      telephone: '5550123',
      channel: '26',
    });
    expect(describeCall(call, options).rows.slice(4)).toMatchObject(
      [
        ['First telecommand', 'telephony, duplex', [101]],
        ['Second telecommand', 'no information', [126]],
        ['First frequency or channel element', 'channel 26', [90, 0, 26]],
        ['Telephone number', '5550123', [105, 5, 55, 1, 23]],
        ['End of sequence', 'an answer is requested', [117]],
      ].map(([label, value, symbols]) => ({
        label,
        value,
        symbols,
        clause: 'ITU-R M.493-16 Annex 1 table A1-4.9',
      })),
    );
  });

  it('of what does not belong to the call, after what does', () => {
    const odd = heard({
      telecommand1: 107,
      receive: null,
      transmit: [90, 0, 6],
      telephone: [3, 4],
      rest: [1, 2],
      header: true,
      end: 126,
    });
    expect(rows(odd)).toEqual([
      'format call-says-format format=individual',
      'address 002329990',
      'category call-says-category category=safety',
      'self call-own-station',
      'telecommand1 call-symbol symbol=107',
      'telecommand2 call-says-no-information',
      'transmit call-where-channel channel=06',
      'telephone call-says-not-understood',
      'header call-says-position-follows',
      'rest call-says-kept',
      'end call-says-no-information',
    ]);
  });

  it('of an element that was not read whole, and of an alert that carries an address', () => {
    expect(rows(heard({ receive: [90, 0, null], transmit: [90, 0] })).slice(6, 8)).toEqual([
      'receive call-says-not-understood',
      'transmit call-says-not-understood',
    ]);
    const { call } = decodeFields({ ...encodeFields(alert), address: [0, 0, 0, 0, 0] });
    expect(rows(call)).toContain('address call-all-stations');
  });

  it('of a call of no kind, in no order of the air', () => {
    const { call } = decodeFields({ ...emptyFields, format: 113, address: [1, 2, 3, 4, 5], rest: [9] });
    const clause = 'ITU-R M.493-16 Annex 1';
    expect(describeCall(call).rows).toMatchObject([
      { label: 'Format specifier', value: 'symbol 113', symbols: [113], clause },
      { label: 'Address', value: 'not understood', symbols: [1, 2, 3, 4, 5], clause },
      { label: 'Rest of the message', value: 'kept as received', symbols: [9], clause },
    ]);
  });
});

// ITU-R M.821-1, sets 100 to 106, from memory.
describe('rows of the expansion', () => {
  const clause = 'ITU-R M.821-1, unverified';

  it('give each value in its unit', () => {
    const expansion = {
      source: '020000',
      speed: 6.2,
      course: 70.5,
      stationName: 'MERROW',
      personsOnBoard: 3,
      requested: [105],
      unavailable: [107],
    };
    expect(describeCall({ ...test, expansion }, options).rows.slice(9)).toMatchObject([
      { label: 'Expansion: source and datum of the fix', value: '020000', symbols: [2, 0, 0], clause },
      { label: 'Expansion: speed over ground', value: '6.2 knots', symbols: [0, 62], clause },
      { label: 'Expansion: course over ground', value: '70.5° true', symbols: [7, 5], clause },
      { label: 'Expansion: another name of the station', value: 'MERROW', clause },
      { label: 'Expansion: finer area', value: 'asked for', symbols: [110], clause },
      { label: 'Expansion: persons on board', value: '3', symbols: [0, 3], clause },
      { label: 'Expansion: set 107', value: 'not available', symbols: [126], clause },
    ]);
  });

  it('say how an area is refined', () => {
    const area = {
      latitude: 12.34,
      longitude: 59.99,
      southward: 0,
      eastward: 30.5,
      speed: 12.5,
      course: 184,
    };
    expect(describeCall({ ...test, expansion: { area } }).rows.at(-1)).toMatchObject({
      label: 'Expansion: finer area',
      value:
        'corner 12.34′ of latitude and 59.99′ of longitude, sides 0′ south and 30.5′ east, moving at 12.5 knots, 184° true',
    });
  });

  it('show no control character of a name', () => {
    const call = heard({ expansion: [{ specifier: 104, symbols: [], text: 'A\u0007B\r\nC\u009b2J' }] });
    expect(describeCall(call).rows.at(-1)?.value).toBe('A\ufffdB\ufffd\ufffdC\ufffd2J');
  });

  it('say of the minutes which belong to latitude and which to longitude', () => {
    const finer = { ...position, fraction: { latitude: 4125, longitude: 70 } };
    expect(describeCall({ ...alert, position: finer }).rows.at(-1)).toMatchObject({
      label: 'Expansion: finer position',
      value: 'latitude .4125′, longitude .0070′',
      symbols: [41, 25, 0, 70],
      clause,
    });
  });

  it('make nothing up of a set that is cut short, has a hole, or holds what is no digits', () => {
    for (const set of [
      { specifier: 100, symbols: [41, null, 0, 70] },
      { specifier: 100, symbols: [41, 25] },
      { specifier: 101, symbols: [2, 0] },
      { specifier: 102, symbols: [] },
      { specifier: 102, symbols: [0, null] },
      { specifier: 103, symbols: [0, 126] },
      { specifier: 103, symbols: [36, 0] },
      { specifier: 104, symbols: [10], text: 'MERROW' },
      { specifier: 106, symbols: [0, 0, 3] },
    ]) {
      const row = describeCall(heard({ expansion: [set] })).rows.at(-1);
      expect([row?.value, row?.symbols]).toEqual(['kept as received', set.symbols]);
    }
  });
});

describe('cautions', () => {
  const texts = (call: Call, own?: string) =>
    describeCall(call, own === undefined ? {} : { own }).cautions.map((caution) => caution.code);
  const watch = 'call-keep-watch';
  const coarse = 'call-position-coarse';
  const unknown = 'call-place-not-given';

  // 47 CFR 80.335, 80.1117(a), 80.1121; MSC.1/Circ.1657.
  it('of an alert: to those who hear it, and to her who sends it', () => {
    expect(texts(alert, merrow)).toEqual([watch, 'call-coast-answers', 'call-pass-on', coarse]);
    expect(texts(alert, bounty)).toEqual(['call-alert-in-danger-only', 'call-voice-follows']);
    expect(texts({ ...alert, from: null })).toHaveLength(4);
  });

  it('with where to speak in those that say so, and nothing in the others', () => {
    const where = describeCall(alert, { own: merrow }).cautions.map(({ code, params }) => [code, params]);
    expect(where).toEqual([
      [watch, { where: 'vhf' }],
      ['call-coast-answers', { where: 'vhf' }],
      ['call-pass-on', {}],
      [coarse, {}],
    ]);
  });

  it('of what follows an alert', () => {
    const relay = composeDistressRelay({ from: coast, about: alert });
    expect(texts(composeDistressAcknowledgement({ from: coast, about: alert }))).toEqual([watch, coarse]);
    expect(texts(composeDistressRelayAcknowledgement({ from: coast, about: relay }))).toEqual([
      watch,
      coarse,
    ]);
    expect(texts({ ...relay, position: null })).toEqual([watch, 'call-acknowledge-relay-by-voice', unknown]);
    expect(texts(composeDistressSelfCancel({ from: bounty, about: alert }))).toEqual([
      'call-cancel-by-voice',
      coarse,
    ]);
  });

  it('of a position, and none of other calls', () => {
    expect(texts(composePositionReply({ from: tern, to: merrow, position }))).toEqual([coarse]);
    expect(texts(composePositionReply({ from: tern, to: merrow }))).toEqual([unknown]);
    expect(texts(hail)).toEqual([]);
    expect(texts(composeAllShipsCall({ from: tern, category: 'urgency' }))).toEqual([]);
    expect(texts(composeIndividualAcknowledgement({ call: hail }))).toEqual([]);
  });

  it('of what was not understood, when any part of it speaks of distress', () => {
    const part = (fields: Partial<CallFields>) => texts(decodeFields({ ...emptyFields, ...fields }).call);
    const distress = ['call-perhaps-distress'];
    for (const fields of [
      { category: 112 },
      { distressed: [23, 29, 99, 21, 80] },
      { format: 120, nature: 101 },
      { telecommand1: 110 },
      { telecommand1: 112 },
    ])
      expect(part(fields), JSON.stringify(fields)).toEqual(distress);
    expect(part({ format: 113, category: 100, telecommand1: 100 })).toEqual([]);
  });

  it('of a call to one or many in the category distress, which the tables do not have', () => {
    expect(texts({ ...hail, category: 'distress' })).toEqual([watch]);
  });
});
