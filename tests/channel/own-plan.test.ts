import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Channel,
  type ChannelPlan,
  channelsAt,
  channelsFor,
  checkWorkingChannel,
  definePlan,
  duplexChannel,
  findChannel,
  type OwnPlan,
  parsePlan,
  simplexChannel,
  workingChannels,
} from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { internationalPlan, plans, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

// The club and its channel are invented.
const club = definePlan({
  name: 'Ardle Sailing Club',
  channels: [
    ...internationalPlan.channels,
    simplexChannel('Club 1', 155_900, { note: 'races', aliases: ['P1'] }),
    duplexChannel('Harbour', 157_550, 162_150, { uses: ['marina'] }),
  ],
});

describe('a plan of your own', () => {
  it.each(['Club 1', 'club 1', ' CLUB  1 ', 'p1'])('is searched for %s', (typed) => {
    expect(valueOf(findChannel(club, typed)).designator).toBe('Club 1');
  });

  it('serves every function that takes a plan', () => {
    expect(valueOf(channelsAt(club, '155.9'))[0]?.channel.plan).toBe('Ardle Sailing Club');
    expect(channelsFor(club, 'marina').map(({ designator }) => designator)).toContain('Harbour');
    const { ranked, ruledOut } = workingChannels(club, 'intership-non-commercial');
    expect(ranked.map(({ designator }) => designator)).toContain('72');
    expect(ruledOut.map(({ designator }) => designator)).toEqual(
      expect.arrayContaining(['Harbour', 'Club 1']),
    );
    // As channel M of the United Kingdom: no call can say its name.
    const notices = checkWorkingChannel(valueOf(findChannel(club, 'Club 1')), 'intership-non-commercial');
    expect(notices.map(({ code }) => code)).toEqual(['channel-not-to-be-named']);
  });

  it('calls on 16 where it has 16, and names a channel in a call only by digits of Appendix 18', () => {
    expect(club.callingChannels).toEqual(['16']);
    expect(definePlan({ name: 'Two', channels: [simplexChannel('A', 155_900)] }).callingChannels).toEqual([]);
    // 156.875 MHz is 77 in RR Appendix 18.
    expect(simplexChannel('77', 156_875)).toMatchObject({
      m1084: '77',
      assignable: true,
      notAssignableReason: null,
    });
    expect(simplexChannel('77', 156_875, { transmitters: 'ships' }).m1084).toBe('77');
    expect(simplexChannel('77', 156_900).m1084).toBeNull();
    expect(simplexChannel('77', 156_900, { transmitters: 'ships' }).m1084).toBeNull();
    expect(simplexChannel('Club 1', 155_900).m1084).toBeNull();
    // 157.100 and 161.700 MHz are 22; 157.100 alone is 1022.
    expect(duplexChannel('22', 157_100, 161_700).m1084).toBe('22');
    expect(simplexChannel('1022', 157_100).m1084).toBe('1022');
    // AIS 1 is 161.975 MHz (47 CFR 80.371(c) note 3): a call that named a channel of your own by 2087 would name AIS 1.
    expect(simplexChannel('AIS 1', 161_975).m1084).toBeNull();
    // Private numbers have no frequency in Appendix 18.
    for (const transmitters of ['ships', 'coast', 'ships-and-coast'] as const)
      expect(simplexChannel('37', 157_850, { transmitters }).m1084).toBeNull();
  });

  // RR Appendix 18 and its notes j) and n): 70 is for selective calls, 16 for distress and calling, 75 and 76 guard it.
  it.each([
    ['70', 156_525, 'channel-calls-only'],
    ['16', 156_800, 'channel-distress-and-calling'],
    ['75', 156_775, 'channel-not-to-be-named'],
    ['76', 156_825, 'channel-not-to-be-named'],
  ])('cannot open %s for talk', (name, kHz, code) => {
    const plan = definePlan({ name: 'Own', channels: [simplexChannel(name, kHz)] });
    const { ranked, ruledOut } = workingChannels(plan, 'intership-non-commercial');
    expect(ranked).toEqual([]);
    expect(ruledOut[0]?.notices[0]?.code).toBe(code);
  });

  it('is asked for a name in the ways that a person types it', () => {
    const plan = definePlan({ name: 'Own', channels: [simplexChannel('6', 156_300, { aliases: ['7'] })] });
    for (const typed of ['6', '06', 'ch 6', '7', '07']) expect(findChannel(plan, typed).ok).toBe(true);
  });

  it('has no frequency that cannot be written in megahertz', () => {
    expect(() => definePlan({ name: 'Own', channels: [simplexChannel('C', 1_000_000)] })).toThrow(TypeError);
    expect(definePlan({ name: 'Own', channels: [simplexChannel('C', 999_999)] }).channels).toHaveLength(1);
  });

  it('lets no call name a channel on which ships only listen', () => {
    // 161.775 MHz is the upper leg of 83 (47 CFR 80.871(d)).
    const news = simplexChannel('2083', 161_775, { transmitters: 'coast' });
    const reason = 'ships do not transmit on it';
    expect(news).toMatchObject({ m1084: '2083', assignable: false, notAssignableReason: reason });
    expect(simplexChannel('2083', 161_800, { transmitters: 'coast' }).m1084).toBeNull();
    const plan = definePlan({ name: 'News', channels: [news] });
    expect(checkWorkingChannel(valueOf(findChannel(plan, '2083')), 'safety')).toMatchObject([
      { code: 'channel-receive-only', params: { channel: '2083', reason: { message: reason } } },
    ]);
  });

  it.each(['6', 'ch 6', 'VHF 06'])(
    'has no channel of its own called %s beside 06, which a look-up would take it for',
    (name) => {
      const channels = [...internationalPlan.channels, simplexChannel(name, 155_900)];
      expect(() => definePlan({ name: 'Club', channels })).toThrow(TypeError);
      expect(
        parsePlan({
          ...club,
          channels: [...club.channels, { ...simplexChannel(name, 155_900), plan: club.name }],
        }),
      ).toMatchObject({
        ok: false,
        issues: [{ code: 'channel-plan-name-twice' }],
      });
    },
  );

  it('has no two channels whose names differ in case and blanks alone', () => {
    const channels = [simplexChannel('Pier 1', 155_900), simplexChannel(' pier  1', 155_925)];
    expect(() => definePlan({ name: 'Club', channels })).toThrow('channels[1].designator');
  });

  it('is frozen through and through, and leaves what it was made of alone', () => {
    const uses = ['marina'] as const;
    const options = { uses: [...uses] };
    const plan = definePlan({ name: 'One', channels: [simplexChannel('A', 155_900, options)] });
    expect(Object.isFrozen(plan.channels[0]?.uses)).toBe(true);
    expect(Object.isFrozen(plan.channels[0]?.evidence.power)).toBe(true);
    expect(Object.isFrozen(options.uses)).toBe(false);
  });

  it.each([...plans, club])('of $name goes through JSON', (plan) => {
    expect(valueOf(parsePlan(JSON.stringify(plan)))).toEqual(JSON.parse(JSON.stringify(plan)));
    expect(valueOf(parsePlan(structuredClone({ ...plan })))).toEqual({ ...plan });
  });
});

describe('a plan written by hand', () => {
  const [channel] = internationalPlan.channels as [Channel];
  const withChannel = (change: Record<string, unknown>) => ({
    ...internationalPlan,
    channels: [...internationalPlan.channels, { ...channel, designator: 'X', aliases: [], ...change }],
  });

  const malformed = 'channel-plan-malformed';
  it.each<[unknown, readonly (string | number)[], string?, object?]>([
    [null, [], malformed, { rule: 'plan' }],
    ['{"kind":', [], malformed, { rule: 'plan' }],
    [[], []],
    // JSON text in a list is a list, although JSON.parse would take it for the text.
    [[JSON.stringify(internationalPlan)], []],
    [{}, ['kind'], 'channel-plan-word', { place: 'kind', accepted: ['channel-plan'] }],
    [
      { ...internationalPlan, channels: 72 },
      ['channels'],
      malformed,
      { place: 'channels', rule: 'channels' },
    ],
    [
      { ...internationalPlan, channels: [null] },
      ['channels', 0],
      malformed,
      { place: 'channels[0]', rule: 'channel' },
    ],
    [{ ...internationalPlan, callingChannels: ['99'] }, ['callingChannels'], malformed, { rule: 'calling' }],
    [withChannel({ shipKHz: 156.05 }), ['channels', internationalPlan.channels.length, 'shipKHz']],
    [withChannel({ shipKHz: '156050' }), ['channels', internationalPlan.channels.length, 'shipKHz']],
    [
      withChannel({ designator: '16' }),
      ['channels', internationalPlan.channels.length, 'designator'],
      'channel-plan-name-twice',
      {
        place: `channels[${internationalPlan.channels.length}].designator`,
        holder: `channels[${internationalPlan.channels.findIndex(({ designator }) => designator === '16')}]`,
      },
    ],
    [
      withChannel({ aliases: ['ais1', 'ais 1'] }),
      ['channels', internationalPlan.channels.length, 'designator'],
      'channel-plan-name-twice',
    ],
    [
      withChannel({ designator: 'x'.repeat(41) }),
      ['channels', internationalPlan.channels.length, 'designator'],
    ],
    [withChannel({ uses: ['gossip'] }), ['channels', internationalPlan.channels.length, 'uses']],
    [withChannel({ uses: ['toString'] }), ['channels', internationalPlan.channels.length, 'uses']],
    [withChannel({ mode: 'simplex' }), ['channels', internationalPlan.channels.length, 'mode']],
    [withChannel({ receiveOnly: true }), ['channels', internationalPlan.channels.length, 'receiveOnly']],
    [withChannel({ transmitters: 'coast' }), ['channels', internationalPlan.channels.length, 'transmitters']],
    [
      withChannel({ assignable: false }),
      ['channels', internationalPlan.channels.length, 'notAssignableReason'],
    ],
    [withChannel({ evidence: {} }), ['channels', internationalPlan.channels.length, 'evidence']],
  ])('is refused with the place of its fault: %#', (input, at, code = malformed, params = {}) => {
    const result = parsePlan(input);
    expect(result.ok || result.issues[0]).toMatchObject({
      code,
      grade: 'error',
      params,
      at,
      clause: 'common practice',
    });
  });

  it('is refused with what was given in its place', () => {
    const issueOf = (input: unknown) => {
      const result = parsePlan(input);
      return result.ok ? undefined : result.issues[0];
    };
    expect(issueOf('{"kind":')).toMatchObject({ received: `'{"kind":'` });
    expect(issueOf(null)?.params).toEqual({ rule: 'plan' });
    expect(issueOf({ ...internationalPlan, callingChannels: ['16', 'x'.repeat(41)] })).toMatchObject({
      params: { rule: 'calling' },
      received: expect.stringMatching(/^'x+…'$/),
    });
    const hostile = Object.defineProperty({}, 'kind', {
      get: () => {
        throw new Error('not now');
      },
    });
    expect(issueOf(hostile)).toMatchObject({ code: 'channel-no-plan' });
  });

  // What each field may hold is the type of a channel and of a plan.
  const place = internationalPlan.channels.length;
  const evidence = { basis: 'source', source: 'invented' };
  it.each<[string, readonly unknown[], readonly unknown[]]>([
    ['kind', ['channel'], ['plan', undefined]],
    ['m1084', ['01', '1001', '2001', null], ['1', '001', '3001', '10011', 16, 'x01']],
    ['shipKHz', [156_050], [0, -156_050, Number.NaN, '156050', true]],
    ['coastKHz', [160_650], [0, -1, 160_650.5, {}]],
    ['service', ['voice', 'data'], ['speech', '', null, ['voice']]],
    ['uses', [[], ['marina', 'ais']], [['marina', 5], 'marina', null, [null], [['marina']]]],
    ['note', ['a note'], ['', '  ', null, 5]],
    ['region', ['a region', null], ['', ' ', undefined, 5]],
    ['users', ['all', 'authority'], ['everyone', null]],
    ['powerLimitW', [25, 0.5, null], [0, -1, Number.POSITIVE_INFINITY, '25']],
    ['powerRule', ['by hand', null], ['', false]],
    ['automaticPowerReduction', [true, false], [null, 0, 'no']],
    [
      'conditionalPowerLimits',
      [
        [],
        [{ watts: 1, measure: 'output', when: 'in port' }],
        [{ watts: 1, measure: 'radiated', when: 'x' }],
      ],
      [
        {},
        [null],
        [{ watts: 0, measure: 'output', when: 'in port' }],
        [{ watts: 1, measure: 'aerial', when: 'in port' }],
        [{ watts: 1, measure: 'output', when: '' }],
      ],
    ],
    ['coastPowerLimitW', [50, null], [0, '50']],
    ['dataMessages', ['permitted', 'prohibited', null], ['', true]],
    [
      'intership',
      [{ nonCommercial: 'preferred', commercial: 'restricted' }],
      [null, [], { nonCommercial: 'preferred' }, { nonCommercial: 'allowed', commercial: 'best' }],
    ],
    ['caution', ['a caution', null], ['', 5]],
    ['assignable', [], [null, 1]],
    ['selectiveCallRule', ['a rule', null], ['', {}]],
    [
      'evidence',
      [{ frequency: evidence, use: evidence, power: { ...evidence, basis: 'memory' } }],
      [
        null,
        { frequency: evidence, use: evidence },
        { frequency: evidence, use: evidence, power: { ...evidence, basis: 'rumour' } },
        { frequency: evidence, use: evidence, power: { ...evidence, source: ' ' } },
      ],
    ],
  ])('holds in %s what a channel may hold, and nothing else', (field, fit, unfit) => {
    for (const value of fit)
      expect(parsePlan(withChannel({ [field]: value })), String(value)).toMatchObject({ ok: true });
    for (const value of unfit) {
      const result = parsePlan(withChannel({ [field]: value }));
      expect(!result.ok && result.issues[0], String(value)).toMatchObject({
        at: ['channels', place, field],
        clause: 'common practice',
      });
    }
  });

  it.each<[keyof ChannelPlan, readonly unknown[]]>([
    ['kind', ['plan', null]],
    ['name', ['', ' ', 5, null]],
    ['edition', ['', undefined]],
    ['sources', ['a source', [''], [5], null]],
    ['cautions', ['a caution', [' '], null]],
    ['rules', ['a rule', [null]]],
    ['callingChannels', ['16', [16]]],
    ['channels', [null, {}, 'none']],
  ])('holds in %s of the plan what a plan may hold, and nothing else', (field, unfit) => {
    for (const value of unfit) {
      const result = parsePlan({ ...internationalPlan, [field]: value });
      expect(!result.ok && result.issues[0], String(value)).toMatchObject({ at: [field] });
    }
    expect(parsePlan({ ...internationalPlan, channels: [], callingChannels: [] })).toMatchObject({
      ok: true,
    });
  });

  it('says of one channel only what is so of its frequencies', () => {
    const fault = (change: Record<string, unknown>) => {
      const result = parsePlan(withChannel(change));
      return result.ok ? null : result.issues[0].at.at(-1);
    };
    const one = { shipKHz: 156_050, coastKHz: 156_050, mode: 'simplex' };
    expect(fault(one)).toBe(null);
    expect(fault({ ...one, mode: 'duplex' })).toBe('mode');
    expect(fault({ ...one, mode: 'coast-broadcast' })).toBe(null);
    expect(fault({ mode: 'coast-broadcast' })).toBe('mode');
    expect(fault({ shipKHz: null, coastKHz: null })).toBe('shipKHz');
    const shore = { shipKHz: null, coastKHz: 156_050, mode: 'coast-broadcast', powerLimitW: null };
    expect(fault({ ...shore, receiveOnly: true, transmitters: 'coast' })).toBe(null);
    expect(fault({ ...shore, receiveOnly: false, transmitters: 'coast' })).toBe('receiveOnly');
    expect(fault({ ...shore, receiveOnly: true, transmitters: 'ships' })).toBe('transmitters');
    const ships = { shipKHz: 156_050, coastKHz: null, mode: 'simplex' };
    expect(fault({ ...ships, transmitters: 'ships' })).toBe(null);
    expect(fault({ ...ships, transmitters: 'ships-and-coast' })).toBe('transmitters');
    expect(fault({ assignable: false, notAssignableReason: 'kept' })).toBe(null);
    expect(fault({ assignable: true, notAssignableReason: 'kept' })).toBe('notAssignableReason');
  });

  it('fills in what is left out', () => {
    const plan = definePlan({
      name: 'Ardle Sailing Club',
      channels: [
        simplexChannel('P1', 155_900),
        duplexChannel('P2', 157_550, 162_150),
        simplexChannel('P3', 155_925, { transmitters: 'coast' }),
        simplexChannel('P4', 155_950, { transmitters: 'ships' }),
        duplexChannel('01', 156_050, 160_650),
        duplexChannel('02', 156_100, 160_650),
        duplexChannel('03', 156_100, 160_750),
      ],
    });
    expect(plan).toMatchObject({
      kind: 'channel-plan',
      edition: 'defined by its user',
      sources: [],
      cautions: [],
      rules: [],
      callingChannels: [],
    });
    const evidence = { basis: 'source', source: 'common practice' };
    expect(plan.channels[0]).toEqual({
      kind: 'channel',
      plan: 'Ardle Sailing Club',
      designator: 'P1',
      aliases: [],
      m1084: null,
      shipKHz: 155_900,
      coastKHz: 155_900,
      mode: 'simplex',
      service: 'voice',
      uses: ['intership', 'non-commercial'],
      note: 'a channel of its user',
      region: null,
      transmitters: 'ships-and-coast',
      receiveOnly: false,
      users: 'all',
      powerLimitW: 25,
      powerRule: null,
      automaticPowerReduction: false,
      conditionalPowerLimits: [],
      coastPowerLimitW: null,
      dataMessages: null,
      intership: { nonCommercial: 'allowed', commercial: 'allowed' },
      caution: null,
      assignable: false,
      notAssignableReason: 'it has no digits for a call',
      selectiveCallRule: null,
      evidence: { frequency: evidence, use: evidence, power: evidence },
    });
    const told = plan.channels.map(
      ({ m1084, shipKHz, coastKHz, mode, receiveOnly, powerLimitW, intership }) => [
        m1084,
        shipKHz,
        coastKHz,
        mode,
        receiveOnly,
        powerLimitW,
        intership.commercial,
      ],
    );
    // Digits only where both frequencies are those of Appendix 18 (ITU-R M.1084-5): 02 has 160.700, 03 156.150 MHz.
    expect(told.slice(1)).toEqual([
      [null, 157_550, 162_150, 'duplex', false, 25, 'prohibited'],
      [null, null, 155_925, 'simplex', true, null, 'allowed'],
      [null, 155_950, null, 'simplex', false, 25, 'allowed'],
      ['01', 156_050, 160_650, 'duplex', false, 25, 'prohibited'],
      [null, 156_100, 160_650, 'duplex', false, 25, 'prohibited'],
      [null, 156_100, 160_750, 'duplex', false, 25, 'prohibited'],
    ]);
  });

  it('calls on 16 where no other calling channel is named', () => {
    const sixteen = simplexChannel('16', 156_800);
    const other = simplexChannel('P1', 155_900);
    const callingOn = (channels: OwnPlan['channels'], callingChannels?: readonly string[]) =>
      definePlan({ name: 'A', channels, ...(callingChannels && { callingChannels }) }).callingChannels;
    expect(callingOn([other, sixteen])).toEqual(['16']);
    expect(callingOn([other])).toEqual([]);
    expect(callingOn([other, sixteen], ['P1'])).toEqual(['P1']);
    for (const channels of [[null], ['16'], [undefined], [[]]])
      expect(() => callingOn(channels as unknown as OwnPlan['channels'])).toThrow('channels[0]: expected a');
  });

  it('with every fault lists twenty of them', () => {
    const result = parsePlan({ channels: Array.from({ length: 100 }, () => ({})) });
    expect(result.ok || result.issues).toHaveLength(20);
  });

  it('is looked at no further than its twentieth fault', () => {
    let looked = 0;
    const faulty = () => ({
      ...channel,
      get note() {
        looked += 1;
        return '';
      },
    });
    const result = parsePlan({ ...internationalPlan, channels: Array.from({ length: 30 }, faulty) });
    expect(result.ok || result.issues).toHaveLength(20);
    expect(looked).toBe(20);
  });

  it('throws a TypeError that lists what is wrong, where a program defines it', () => {
    for (const plan of [undefined, {}, { name: 'A' }, { name: 'A', channels: [{ designator: 'P1' }] }]) {
      expect(() => definePlan(plan as unknown as OwnPlan)).toThrow(/^Channel plan (name|channels)/);
      expect(() => definePlan(plan as unknown as OwnPlan)).toThrow(TypeError);
    }
    try {
      definePlan({ name: '', channels: [simplexChannel('A', 0.5)] });
      expect.unreachable();
    } catch (error) {
      expect((error as { issues: readonly { at: unknown }[] }).issues.map(({ at }) => at)).toContainEqual([
        'channels',
        0,
        'shipKHz',
      ]);
    }
  });

  it('gives an issue or a TypeError wherever it is used as it is', () => {
    const wrong = { name: 'A', channels: [{ designator: 'P1' }] } as unknown as ChannelPlan;
    for (const result of [findChannel(wrong, 'P1'), channelsAt(wrong, '156.8')]) {
      expect(result.ok || result.issues[0].code).toBe('channel-plan-incomplete');
    }
    for (const [use, message] of [
      [() => workingChannels(wrong, 'safety'), /^workingChannels: .*fields missing/],
      [() => workingChannels([internationalPlan, wrong], 'safety'), /^workingChannels: .*fields missing/],
      [
        () => workingChannels(undefined as unknown as ChannelPlan, 'safety'),
        /^workingChannels: .*undefined$/,
      ],
      [() => workingChannels(internationalPlan, 'safety', { sets: [wrong] }), /^workingChannels: /],
      [() => channelsFor(wrong, 'marina'), /^channelsFor: .*fields missing/],
    ] as const) {
      expect(use).toThrow(TypeError);
      expect(use).toThrow(message);
    }
  });

  it('never makes anything throw that reads from outside', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (one, other) => {
        parsePlan(one);
        parsePlan({ ...internationalPlan, channels: [one, { ...channel, aliases: other }] });
      }),
    );
  });
});

describe('what each set can tune', () => {
  // 06, 08 and 77 are 156.300, 156.400 and 156.875 MHz in RR Appendix 18 and in 47 CFR 80.373(f) alike.
  it('leaves a United States set in British waters 06, 08 and 77, which its own waters would not', () => {
    const designators = (channels: { readonly ranked: readonly { readonly designator: string }[] }) =>
      channels.ranked.map(({ designator }) => designator);
    const purpose = 'intership-non-commercial';
    const visitor = workingChannels(unitedKingdomPlan, purpose, { sets: [unitedStatesPlan] });
    expect(designators(visitor)).toEqual(expect.arrayContaining(['06', '08', '72', '77']));
    expect(designators(workingChannels([unitedKingdomPlan, unitedStatesPlan], purpose))).not.toContain('77');
    expect(visitor.sets).toEqual(['United States']);
    expect(visitor.ranked.find(({ designator }) => designator === '77')?.onSets).toEqual(['77']);
  });

  it('rules out what a set has not, and says what it has under that name', () => {
    const lastOn = (waters: ChannelPlan, set: ChannelPlan, name: string) =>
      workingChannels(waters, 'ship-to-coast', { sets: [set] })
        .ruledOut.find(({ designator }) => designator === name)
        ?.notices.at(-1);
    // M is 157.850 MHz, 37A of the United Kingdom; no set of another country has a channel of that name.
    const marina = lastOn(unitedKingdomPlan, unitedStatesPlan, 'M');
    expect(marina).toMatchObject({
      code: 'channel-not-on-set',
      received: 'M',
      clause: unitedStatesPlan.edition,
    });
    expect(marina?.params).toEqual({ channel: 'M', plan: 'United States' });
    // 20 is 157.000 and 161.600 MHz (47 CFR 80.871(d)); a set of the club has that name on one frequency.
    const pier = definePlan({ name: 'Pier', channels: [simplexChannel('20', 157_000)] });
    expect(lastOn(internationalPlan, pier, '20')?.params).toMatchObject({
      channel: '20',
      plan: 'Pier',
      frequencies: { code: 'channel-frequency-one', params: { ship: '157.000' } },
    });
    expect(lastOn(unitedStatesPlan, internationalPlan, '1022')?.code).toBe('channel-not-on-set');
  });

  it('takes no channel on which the set only listens', () => {
    const { ruledOut } = workingChannels(club, 'intership-non-commercial', {
      sets: [
        definePlan({
          name: 'Listener',
          channels: [simplexChannel('72', 156_625, { transmitters: 'coast' })],
        }),
      ],
    });
    expect(ruledOut.map(({ designator }) => designator)).toContain('72');
  });
});
