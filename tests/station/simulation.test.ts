import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeBits, encodeCall } from '../../src/burst/index.ts';
import {
  type Call,
  composeAllShipsCall,
  composeDistressAlert,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from '../../src/call/index.ts';
import { destination } from '../../src/position/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { createAgenda } from '../../src/simulation/agenda.ts';
import {
  type SimulatedStation,
  type SimulationResult,
  simulate,
  writeTimeLine,
} from '../../src/simulation/index.ts';
import { receiversOf, transmissionsOf } from '../../src/simulation/transmission.ts';
import { nextRandom } from '../../src/station/engine/turn.ts';
import { evening, eveningScript } from './evening.ts';
import { coast, friend, own } from './happenings.ts';

const home = { latitude: 56.34, longitude: -6.5 };

function ship(name: string, mmsi: string, miles = 0, more: Partial<SimulatedStation> = {}): SimulatedStation {
  const position = miles === 0 ? home : destination(home, 90, miles * 1852);
  return { name, settings: { mmsi }, position, antennaHeight: 4, ...more };
}

function heardBy(result: SimulationResult, name: string): readonly Call[] {
  return result.moments.flatMap(({ station, effect }) =>
    station === name &&
    effect.kind === 'log' &&
    effect.entry.what === 'received' &&
    effect.entry.call !== undefined
      ? [effect.entry.call]
      : [],
  );
}

function randomOf(seed: number): () => number {
  let state = seed;
  return () => {
    const [value, next] = nextRandom(state);
    state = next;
    return value;
  };
}

const toTern = {
  kind: 'call',
  call: composeIndividualCall({ from: own, to: friend, channel: '72' }),
} as const;

describe('a simulation', () => {
  it('is the same for the same seed, and another for another', () => {
    const run = (seed: number) =>
      simulate(evening, eveningScript, { seed, durationSeconds: 1800, bitErrorRate: 1e-4 });
    expect(run(7)).toEqual(run(7));
    expect(writeTimeLine(run(8))).not.toEqual(writeTimeLine(run(7)));
  });

  it('reads like a log book', () => {
    const lines = writeTimeLine(simulate(evening, eveningScript, { seed: 7, durationSeconds: 1800 }), {
      names: { '023299905': 'Ardle Sailing Club' },
    });
    expect(lines).toContain(
      '18:01:00  Merrow             sends: Routine call from Merrow to Tern of Ardle: channel 72',
    );
    expect(lines.join('\n')).not.toMatch(/\d{9}/);
    expect([...lines].map((line) => line.slice(0, 8)).sort()).toEqual(lines.map((line) => line.slice(0, 8)));
  });

  it('refuses names that are not clear', () => {
    expect(() => simulate([ship('A', own), ship('A', friend)], [], { seed: 1 })).toThrow(RangeError);
    expect(() =>
      simulate([], [{ afterSeconds: 1, station: 'B', event: { kind: 'silence' } }], { seed: 1 }),
    ).toThrow(RangeError);
  });

  it('does not care how wrong the clocks are', () => {
    const answered = [-86_400_000, 0, 3_600_000].map((clockErrorMs) => {
      const policies = {
        individual: 'automatic',
        position: 'by-hand',
        test: 'automatic',
        polling: 'automatic',
        group: 'by-hand',
        area: 'by-hand',
        'all-ships': 'by-hand',
      } as const;
      const tern = ship('Tern', friend, 1, { clockErrorMs, settings: { mmsi: friend, policies } });
      const result = simulate(
        [ship('Merrow', own), tern],
        [{ afterSeconds: 5, station: 'Merrow', event: toTern }],
        {
          seed: 1,
        },
      );
      return heardBy(result, 'Merrow').map(({ kind }) => kind);
    });
    expect(answered).toEqual(Array.from({ length: 3 }, () => ['individual-acknowledgement']));
  });

  it('has people who answer late, refuse, or never answer', () => {
    for (const [answers, kind] of [
      ['able', 'individual-acknowledgement'],
      ['busy', 'unable-to-comply'],
      ['never', undefined],
    ] as const) {
      const tern = ship('Tern', friend, 1, {
        person: { answers, delaySeconds: [200, 280], talkSeconds: [10, 20] },
      });
      const result = simulate(
        [ship('Merrow', own), tern],
        [{ afterSeconds: 5, station: 'Merrow', event: toTern }],
        {
          seed: 3,
        },
      );
      expect(heardBy(result, 'Merrow')[0]?.kind).toBe(kind);
    }
  });
});

describe('propagation', () => {
  // US Federal Standard 1037C, radio horizon range: 2.23 (√4 + √4) = 8.92 miles.
  it.each([
    [8.8, 1],
    [9.05, 0],
  ])('ends at the radio horizon: at %f miles %i call is heard', (miles, count) => {
    const result = simulate(
      [ship('Merrow', own), ship('Tern', friend, miles)],
      [{ afterSeconds: 5, station: 'Merrow', event: toTern }],
      {
        seed: 1,
        bitErrorRate: 0,
        durationSeconds: 60,
      },
    );
    expect(heardBy(result, 'Tern')).toHaveLength(count);
  });
});

describe('two transmissions', () => {
  const request = (from: string) =>
    ({ kind: 'call', call: composePositionRequest({ from, to: coast }) }) as const;
  const skerra: SimulatedStation = {
    name: 'Skerra',
    settings: { mmsi: coast, equipment: 'coast', designated: true },
    position: home,
    antennaHeight: 100,
  };

  it('of stations hidden from each other spoil each other at the station between', () => {
    const west = ship('West', own, 0, { position: destination(home, 270, 6 * 1852) });
    const east = ship('East', friend, 6);
    const script = [
      { afterSeconds: 5, station: 'West', event: request(own) },
      { afterSeconds: 5.1, station: 'East', event: request(friend) },
    ];
    const result = simulate([west, east, skerra], script, { seed: 1, bitErrorRate: 0, durationSeconds: 60 });
    expect(result.channel70.bursts).toBe(2);
    expect(heardBy(result, 'Skerra')).toEqual([]);
    expect(result.channel70.meant.lost).toBe(2);
  });

  it('of stations that hear each other come one after the other', () => {
    const script = [
      { afterSeconds: 5, station: 'Merrow', event: request(own) },
      { afterSeconds: 5.1, station: 'Tern', event: request(friend) },
    ];
    const result = simulate([ship('Merrow', own), ship('Tern', friend, 1), skerra], script, {
      seed: 1,
      bitErrorRate: 0,
      durationSeconds: 60,
    });
    expect(heardBy(result, 'Skerra')).toHaveLength(2);
  });

  it('never start while another is noticed, distress excepted', () => {
    const result = simulate(evening, [...eveningScript, ...eveningScript], {
      seed: 5,
      durationSeconds: 1800,
      bitErrorRate: 0,
    });
    const sends = result.moments.flatMap(({ at, effect }) =>
      effect.kind === 'send' ? [{ at, effect }] : [],
    );
    expect(sends.length).toBeGreaterThan(8);
    sends.forEach(({ at, effect }, index) => {
      const before = sends[index - 1];
      if (before === undefined || effect.call.kind === 'distress-alert') return;
      const length = (encodeCall(before.effect.call).bits.length / 1.2) * before.effect.times;
      const apart = at - before.at;
      expect(
        apart <= 10 || apart >= length - 0.01,
        `${before.effect.call.kind}, then ${effect.call.kind}`,
      ).toBe(true);
    });
  });

  it('on top of one alert leave the other four of the attempt', () => {
    const alert = composeDistressAlert({ from: own });
    const bursts = transmissionsOf(0, alert, 5, 0);
    const heard = bursts.map((burst) => receiversOf(burst, 0, randomOf(1))([[400, 700]]));
    expect(heard.slice(2).every((each) => each?.verdict === 'clean')).toBe(true);
    expect(heard[0]?.verdict).not.toBe('clean');
  });
});

describe('bit errors', () => {
  it('go through the real burst code: what counts as clean is what was sent', () => {
    const call = composeIndividualCall({ from: own, to: friend, channel: '72' });
    const [burst] = transmissionsOf(0, call, 1, 0);
    if (burst === undefined) throw new Error('no burst');
    const random = randomOf(1);
    const verdicts = Array.from({ length: 40 }, (_, index) => {
      const heard = receiversOf(burst, (index % 8) / 100, random)([]);
      if (heard?.verdict === 'clean')
        expect({ ...heard.call, asReceived: undefined }).toMatchObject({ ...call });
      return heard?.verdict ?? 'lost';
    });
    expect(verdicts.filter((verdict) => verdict === 'clean').length).toBeGreaterThan(10);
    expect(verdicts.filter((verdict) => verdict !== 'clean').length).toBeGreaterThan(2);
  });

  it('that do not happen leave what the decoder would give', () => {
    const calls = [
      ...eveningScript.flatMap(({ event }) => (event.kind === 'call' ? [event.call] : [])),
      composeAllShipsCall({ from: own, category: 'safety', channel: '16' }),
      composeDistressAlert({ from: own, nature: 'flooding' }),
      composeTestCall({ from: own, to: coast }),
    ];
    for (const call of calls) {
      const decoded = valueOf(decodeBits(encodeCall(call).bits));
      expect(decoded.call).toEqual(call);
      expect(decoded.quality.verdict).toBe('clean');
    }
  });
});

describe('the agenda', () => {
  it('gives things in order of time, and of being put in', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 20 })), (instants) => {
        const agenda = createAgenda<number>();
        for (const [index, at] of instants.entries()) agenda.add(at, index);
        const taken = instants.map(() => agenda.take());
        const sorted = instants
          .map((at, thing) => ({ at, thing }))
          .sort((a, b) => a.at - b.at || a.thing - b.thing);
        expect(taken).toMatchObject(sorted);
        expect(agenda.take()).toBeNull();
      }),
    );
  });
});
