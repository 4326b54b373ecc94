import { expect } from 'vitest';
import {
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
} from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { adviseOnDistress, restoreStation, timers } from '../../src/station/index.ts';
import { coast, friend, own, troubled } from '../station/happenings.ts';
import { effectsOf, Radio } from '../station/radio.ts';

const MINUTE = 60_000;
const alert = composeDistressAlert({ from: troubled });

function lengthOf(timer: string): readonly (string | number | undefined)[] {
  const row = timers.find((each) => each.timer === timer);
  return [row?.least, row?.most, row?.unit];
}

function alerting(): Radio {
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'prepare-alert' });
  radio.give({ kind: 'press-alert' });
  radio.pass(3000);
  return radio;
}

export const deviations: Record<string, () => void> = {
  'D-station-1': () => expect(lengthOf('alert-busy-limit')).toEqual([1, 1, 'second']),
  'D-station-2': () => {
    expect(lengthOf('alert-repeat')).toEqual([3.5, 4.5, 'minute']);
    const radio = alerting();
    const until = radio.state.dialogues[0]?.waits['alert-repeat'] ?? 0;
    expect(until - radio.now, 'counted from the start, not from the end').toBeGreaterThanOrEqual(
      3.5 * MINUTE,
    );
    radio.finish();
    expect(radio.state.dialogues[0]?.waits['alert-repeat']).toBe(until);
  },
  'D-station-3': () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    radio.finish();
    radio.pass(15_000);
    expect(radio.phases).toEqual(['outgoing: unanswered']);
  },
  'D-station-4': () => {
    expect(lengthOf('alert-memory')).toEqual([10, 10, 'minute']);
    expect(lengthOf('attempt-length')).toEqual([10, 10, 'second']);
  },
  'D-station-5': () => {
    const { policies } = new Radio({ mmsi: own }).state.settings;
    expect(policies).toMatchObject({
      test: 'automatic',
      polling: 'automatic',
      position: 'by-hand',
      individual: 'by-hand',
    });
  },
  'D-station-6': () => {
    const allowed = [
      composeIndividualCall({ from: own, to: friend, channel: '72' }),
      composeIndividualCall({ from: own, to: coast }),
      composePositionRequest({ from: own, to: friend }),
      composeTestCall({ from: own, to: coast }),
    ].map((call) => {
      const radio = new Radio({ mmsi: own });
      radio.give({ kind: 'call', call });
      const [dialogue] = radio.state.dialogues;
      return dialogue?.procedure === 'outgoing' ? dialogue.allowed : null;
    });
    expect(allowed).toEqual([2, 3, 2, 1]);
  },
  'D-station-7': () => expect(lengthOf('automatic-answer')).toEqual([3, 3, 'second']),
  'D-station-8': () => {
    expect(lengthOf('inactivity')).toEqual([10, 10, 'minute']);
    expect(lengthOf('distress-memory')).toEqual([48, 48, 'hour']);
  },
  'D-station-9': () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    radio.give({ kind: 'call', call: composeIndividualCall({ from: own, to: friend, channel: '72' }) });
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'call', call: composeIndividualCall({ from: own, to: coast, category: 'safety' }) });
    expect(radio.onAir?.call).toMatchObject({ category: 'safety' });
  },
  'D-station-10': () => {
    for (const [verdict, phase] of [
      ['repaired', 'waiting-acknowledgement'],
      ['clean', 'acknowledged'],
    ] as const) {
      const radio = alerting();
      const call = composeDistressAcknowledgement({
        from: friend,
        about: composeDistressAlert({ from: own }),
      });
      radio.finish();
      radio.give({ kind: 'received', call, verdict });
      expect(radio.phases).toEqual([`own-distress: ${phase}`]);
    }
  },
  'D-station-12': () => {
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    const call = composeDistressRelay({ from: own, to: { kind: 'all-ships' }, about: alert });
    expect(effectsOf(radio.give({ kind: 'call', call }), 'issue')[0]?.issue.code).toBe(
      'station-relay-reason',
    );
  },
  'D-station-14': () => {
    const device = '972009914';
    const to = { kind: 'station', mmsi: own } as const;
    const relay = composeDistressRelay({ from: friend, to: own, about: alert });
    const call = { ...relay, to, from: device, distressed: device };
    for (const [equipment, answers] of [
      ['A', ['dismiss', 'acknowledge']],
      ['D', ['dismiss']],
    ] as const) {
      const radio = new Radio({ mmsi: own, equipment });
      radio.give({ kind: 'received', call, verdict: 'clean' });
      expect(adviseOnDistress(radio.state, 1)?.question?.answers).toEqual(answers);
    }
  },
  'D-station-15': () => {
    const silent = alerting();
    silent.finish();
    silent.now += 8 * MINUTE;
    silent.give({ kind: 'clock' });
    expect(silent.phases).toEqual(['own-distress: interrupted']);
    const stored = alerting();
    stored.finish();
    expect(valueOf(restoreStation(stored.state)).dialogues[0]?.phase).toBe('interrupted');
  },
};
