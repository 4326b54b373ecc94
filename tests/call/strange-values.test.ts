import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  answersTo,
  type Call,
  checkCall,
  composeDistressAlert,
  composeDistressRelay,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { createDirectory, stationOf } from '../../src/directory/index.ts';
import { spokenScript } from '../../src/speech/index.ts';
import { sampleCalls } from './sample-calls.ts';
import { codedIn, withoutWords } from './without-words.ts';

// All stations are the invented ones of the demo.
const own = '232999871';
const friend = '232999142';
const coast = '002329990';
const hail = composeIndividualCall({ from: own, to: friend, channel: '72' });
const alert = composeDistressAlert({ from: own });
const untyped = <Value>(value: unknown) => value as Value;

describe('checking a call whose values are of another type', () => {
  const cases: Record<string, readonly [unknown, string, string, readonly string[]]> = {
    'no call': [null, 'call', 'null', []],
    'a list': [[], 'call', 'array', []],
    'a kind that is none': [{ ...hail, kind: 'bogus' }, 'kind', "'bogus'", ['kind']],
    'no address': [{ ...hail, to: undefined }, 'address', 'undefined', ['to']],
    'an address of no kind': [{ ...hail, to: {} }, 'address-kind', 'undefined', ['to', 'kind']],
    'an identity as a number': [
      { ...hail, to: { kind: 'station', mmsi: 232999142 } },
      'text-or-null',
      '232999142',
      ['to', 'mmsi'],
    ],
    'a sender as a number': [{ ...hail, from: 232999871 }, 'text-or-null', '232999871', ['from']],
    'a channel as a number': [{ ...hail, channel: 72 }, 'text-or-null', '72', ['channel']],
    'no communication': [
      { ...hail, firstTelecommand: undefined },
      'text-or-null',
      'undefined',
      ['firstTelecommand'],
    ],
    'frequencies as a list': [
      { ...hail, channel: null, frequencies: ['021820'] },
      'object',
      'array',
      ['frequencies'],
    ],
    'a frequency as a number': [
      { ...hail, channel: null, frequencies: { receive: 21820, transmit: null } },
      'text-or-null',
      '21820',
      ['frequencies', 'receive'],
    ],
    'a position without parts': [{ ...alert, position: {} }, 'position', 'object', ['position']],
    'an expansion whose list is none': [
      { ...hail, expansion: { requested: 5 } },
      'numbers',
      '5',
      ['expansion', 'requested'],
    ],
    'an expansion whose list holds text too': [
      { ...hail, expansion: { unavailable: [100, '101'] } },
      'numbers',
      'array',
      ['expansion', 'unavailable'],
    ],
    'no address where the kind has one': [{ ...hail, to: null }, 'address', 'null', ['to']],
    'a number as the address of a call of no kind': [
      { kind: 'unrecognised-call', to: 5, from: null, asReceived: emptyFields },
      'address',
      '5',
      ['to'],
    ],
    'yes for a channel': [{ ...hail, channel: true }, 'text-or-null', 'true', ['channel']],
    'a position without its latitude': [
      { ...alert, position: { longitude: {} } },
      'position',
      'object',
      ['position'],
    ],
    'what was received as text': [{ ...hail, asReceived: '120' }, 'object', "'120'", ['asReceived']],
    'a channel left out': [
      { ...hail, channel: undefined, secondTelecommand: undefined },
      'text-or-null',
      'undefined',
      ['secondTelecommand'],
    ],
  };

  const ANNEX = 'ITU-R M.493-16 Annex 1';

  it.each(Object.entries(cases))('%s', (_, [call, type, received, at]) => {
    const params = { path: at.join('.') || 'call', type };
    expect(withoutWords(checkCall(untyped(call)))).toMatchObject([
      { code: 'call-value-type', params, at, received, clause: ANNEX },
    ]);
  });

  it('properties that are there without a value count as left out', () => {
    const nothing = { stationName: undefined, source: undefined, area: undefined, requested: undefined };
    const expansion = { ...nothing, speed: undefined, course: 70.5 };
    expect(checkCall(untyped({ ...hail, frequencies: undefined, expansion, asReceived: undefined }))).toEqual(
      [],
    );
  });

  it('an area that was not read, and no address at all, are no wrong types', () => {
    for (const fields of [{ format: 102 }, { format: 113 }])
      expect(
        checkCall(decodeFields({ ...emptyFields, ...fields }).call).map(({ code }) => code),
      ).not.toContain('call-value-type');
  });

  it('nothing but a kind and an address, or an area without its west', () => {
    const area = { kind: 'area', area: { north: { hemisphere: 'N', degrees: 57 } } };
    for (const call of [
      { kind: 'individual-call', to: hail.to },
      { ...hail, kind: 'area-call', to: area },
    ])
      expect(withoutWords(checkCall(untyped(call)))).toEqual([
        { code: 'call-value-missing', params: {}, at: [], clause: ANNEX },
      ]);
  });

  it('what was received without a single field is no reason to fail', () => {
    expect(checkCall(untyped({ ...hail, asReceived: {} }))).toEqual([]);
    expect(
      checkCall(untyped({ kind: 'unrecognised-call', to: null, from: null, asReceived: {} })).map(
        ({ code }) => code,
      ),
    ).toEqual(['call-unrecognised']);
  });

  it('says nothing of any sample, and never throws when one of its values is replaced by anything', () => {
    const samples = Object.values(sampleCalls);
    for (const call of samples)
      expect(checkCall(call).map(({ code }) => code)).not.toContainEqual(
        expect.stringMatching(/^call-value/),
      );
    fc.assert(
      fc.property(fc.constantFrom(...samples), fc.nat(), fc.anything(), (call, at, value) => {
        const names = [...Object.keys(call), 'expansion', 'asReceived', 'frequencies'];
        const changed = { ...call, [names[at % names.length] as string]: value };
        expect(Array.isArray(checkCall(untyped(changed)))).toBe(true);
        expect(Array.isArray(checkCall(untyped(value)))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('fields that are not all there', () => {
  it('count as not carried', () => {
    for (const fields of [{}, null, undefined, 5, { format: '120', rest: 'x', expansion: [{}] }]) {
      const { call, notices } = decodeFields(untyped(fields));
      expect(call).toMatchObject({ kind: 'unrecognised-call', to: null, from: null });
      expect((call as Extract<Call, { kind: 'unrecognised-call' }>).asReceived).toEqual(emptyFields);
      expect(notices.map(({ code }) => code)).toEqual(['call-unrecognised']);
    }
    const { expansion: _, rest: __, ...some } = encodeFields(hail);
    expect(decodeFields(untyped({ ...some, header: undefined, address: 5 })).call).toMatchObject({
      kind: 'individual-call',
      to: { kind: 'station', mmsi: null },
      from: own,
      channel: '72',
    });
    const fields = { ...encodeFields(hail), rest: null, expansion: [null] };
    expect(decodeFields(untyped(fields))).toEqual({ call: hail, notices: [] });
  });

  it('are none where one throws when it is looked at', () => {
    const broken = {
      get format() {
        throw new Error('gone');
      },
    };
    expect(decodeFields(untyped(broken))).toEqual(decodeFields(emptyFields));
  });

  it('are read for any value at all without throwing', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.anything(), fc.dictionary(fc.constantFrom(...Object.keys(emptyFields)), fc.anything())),
        (fields) => {
          const { call } = decodeFields(untyped(fields));
          expect(decodeFields(encodeFields(call)).call).toEqual(call);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('the fields of one call', () => {
  it('cannot change those of the next', () => {
    const test = composeTestCall({ from: own, to: coast });
    const before = structuredClone(encodeFields(test));
    const open = encodeFields(test);
    for (const symbols of [
      open.receive,
      open.transmit,
      encodeFields(alert).position,
      encodeFields(alert).time,
    ])
      expect(() => untyped<number[]>(symbols).fill(90)).toThrow(TypeError);
    expect(() => untyped<number[]>(open.rest).push(1)).toThrow(TypeError);
    expect(() => untyped<unknown[]>(emptyFields.expansion).push(1)).toThrow(TypeError);
    expect(() => Object.assign(emptyFields, { format: 112 })).toThrow(TypeError);
    expect(() =>
      untyped<number[]>(encodeFields(composeDistressRelay({ from: own })).distressed).fill(0),
    ).toThrow(TypeError);
    expect(encodeFields(test)).toEqual(before);
  });
});

// ITU-R M.821-1: tenths of a knot and of a degree, from memory.
describe('an expansion that is composed', () => {
  const composed = (expansion: NonNullable<Call['expansion']>) =>
    composeTestCall({ from: own, to: coast, expansion }).expansion;

  it('is the one that comes back', () => {
    expect(composed({ speed: 1.26, course: 359.96 })).toEqual({ speed: 1.3, course: 0 });
    expect(composed({})).toBeUndefined();
    const call = composeTestCall({
      from: own,
      to: coast,
      expansion: { speed: 6.25, stationName: 'MERROW', requested: [106, 100], unavailable: [103] },
    });
    expect(decodeFields(encodeFields(call))).toEqual({ call, notices: [] });
  });

  it('asks for decimals beside what else it asks for', () => {
    const asked = (requested: readonly number[]) =>
      composePositionRequest({ from: own, to: friend, finer: true, expansion: { requested } }).expansion;
    expect(asked([106])).toEqual({ requested: [100, 106] });
    expect(asked([100, 102])).toEqual({ requested: [100, 102] });
  });
});

describe('a call of the own station', () => {
  it('is not answered', () => {
    for (const call of [hail, alert, { ...hail, to: { kind: 'station', mmsi: own } } as const])
      expect(answersTo(call, { own: own }).answers).toEqual([]);
    expect(answersTo({ ...hail, to: { kind: 'station', mmsi: null } }, { own }).none).toMatchObject({
      code: 'call-no-answer-own',
      clause: 'ITU-R M.493-16 Annex 1, self-identification',
    });
  });
});

describe('names of stations', () => {
  const tern = { mmsi: friend, origin: 'typed', name: 'Tern of Ardle', callSign: '2ZZT4' } as const;
  const directory = createDirectory([tern, { mmsi: coast, origin: 'heard' }]);
  const sources = {
    'a directory': directory,
    'a function to an entry of one': (mmsi: string) => stationOf(directory, mmsi),
    'a function to a name': (mmsi: string) => (mmsi === friend ? 'Tern of Ardle' : undefined),
    'a function to a station': (mmsi: string) =>
      mmsi === friend ? { name: 'Tern of Ardle' } : { name: null },
  };

  it.each(Object.entries(sources))('come from %s', (_, names) => {
    expect(codedIn(describeCall(hail, { directory: names }).sentenceText)).toContain(
      'from=232999871 to=Tern of Ardle (232999142) ',
    );
    const test = composeTestCall({ from: own, to: coast });
    expect(codedIn(describeCall(test, { directory: names }).sentenceText)).toBe(
      'call-is-test from=232999871 to=002329990',
    );
    expect(spokenScript(hail, { mmsi: own }, { directory: names }).lines[0]?.say).toBe('Tern of Ardle');
  });

  it('bring call signs along where they are known', () => {
    const relay = composeDistressRelay({ from: own, distressed: friend });
    const says = (names: typeof directory | ((mmsi: string) => string)) =>
      spokenScript(relay, { mmsi: own }, { directory: names }).lines[6]?.say;
    expect(says(directory)).toContain('call sign two Zulu Zulu Tango four');
    expect(says(() => 'Tern of Ardle')).toContain('MAYDAY, Tern of Ardle, call sign [call sign]');
  });
});
