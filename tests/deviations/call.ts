import { expect } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  type CallFields,
  composeDistressAcknowledgement,
  composeDistressAlert,
  compositions,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { spokenScript } from '../../src/speech/index.ts';

const individual: CallFields = {
  ...emptyFields,
  format: 120,
  address: [23, 29, 99, 14, 20],
  category: 108,
  self: [23, 29, 99, 87, 10],
  telecommand1: 121,
  telecommand2: 126,
  receive: [126, 126, 126],
  transmit: [126, 126, 126],
  end: 117,
};

const compositionOf = (kind: string, format?: string) =>
  compositions.find((row) => row.kind === kind && row.format === (format ?? row.format));

/** What `docs/deviations.md` says of the call room. */
export const deviations: Record<string, () => void> = {
  'D-call-4': () => {
    expect(compositionOf('distress-relay', 'individual')?.senders).toMatchObject({
      D: 'optional',
      H: 'optional',
    });
    expect(compositionOf('distress-relay', 'all-ships')?.senders).toMatchObject({ A: 'guarded', D: 'none' });
  },
  'D-call-5': () => {
    expect(compositionOf('polling-call')?.categories).toEqual(['routine']);
  },
  'D-call-6': () => {
    const { call } = decodeFields({
      ...individual,
      format: 123,
      transmit: null,
      telephone: [105, 1, 23, 45],
    });
    expect(call).toMatchObject({ kind: 'automatic-service-call', telephone: '12345' });
  },
  'D-call-8': () => {
    const sent = (kind: 'individual-call' | 'all-ships-call') =>
      encodeFields({
        ...(kind === 'all-ships-call'
          ? { kind, to: { kind: 'all-ships' } }
          : { kind, to: { kind: 'station', mmsi: '232999142' } }),
        from: '232999871',
        category: 'safety',
        firstTelecommand: 'telephony-simplex',
        secondTelecommand: null,
        channel: '13',
      });
    expect(sent('individual-call').transmit).toEqual([90, 0, 13]);
    expect(sent('all-ships-call').transmit).toEqual([126, 126, 126]);
  },
  'D-call-9': () => {
    const { call, notices } = decodeFields({
      ...individual,
      telecommand1: 104,
      receive: [90, 0, 72],
      end: 122,
    });
    expect(call).toMatchObject({ kind: 'unable-to-comply', channel: '72' });
    expect(notices.map((notice) => notice.code)).toContain('call-channel-echoed');
  },
  'D-call-10': () => {
    const report = {
      position: [15, 62, 0, 6, 30],
      time: [9, 15],
      end: 122,
      receive: null,
      transmit: null,
    } as const;
    const { call, notices } = decodeFields({ ...individual, ...report });
    expect(call).toMatchObject({ kind: 'position-reply', time: { hour: 9, minute: 15 } });
    expect(notices.map((notice) => notice.code)).toEqual(['call-header-missing']);
    const { asReceived: _, ...fresh } = call;
    expect(encodeFields(fresh as typeof call).header).toBe(true);
  },
  'D-call-11': () => {
    const { call, notices } = decodeFields({ ...individual, category: 100 });
    expect(call.kind).toBe('position-request');
    expect(notices.map((notice) => notice.code)).toEqual(['call-category-unusual']);
  },
  'D-call-16': () => {
    const alert = encodeFields(composeDistressAlert({ from: '232999218', nature: 'flooding' }));
    const { call } = decodeFields({ ...alert, nature: 112, subsequent: null });
    if (call.kind !== 'distress-alert') throw new Error('an alert');
    const about = composeDistressAcknowledgement({ from: '002329990', about: { ...call, subsequent: null } });
    expect(encodeFields(about)).toMatchObject({ nature: 112, subsequent: 126 });
  },
  'D-call-17': () => {
    const kinds = [
      'distress-alert',
      'distress-acknowledgement',
      'distress-relay',
      'all-ships-call',
      'group-call',
    ];
    const tables = kinds.map((kind) => compositionOf(kind)?.clause.split(' ').at(-1));
    expect(tables).toEqual(['A1-4.1', 'A1-4.2', 'A1-4.3', 'A1-4.5', 'A1-4.8']);
  },
  'D-call-15': () => {
    const traffic = { telecommand1: 100, receive: [90, 0, 6], transmit: [90, 0, 6] };
    for (const [category, word] of [
      [108, 'SECURITE'],
      [110, 'PAN PAN'],
    ] as const) {
      const { call } = decodeFields({ ...individual, ...traffic, category });
      expect(spokenScript(call, { name: 'Tern of Ardle', mmsi: '232999142' }).lines).toEqual([]);
      expect(spokenScript(call, { name: 'Merrow', mmsi: '232999871' }).lines[0]?.say).toContain(word);
    }
  },
};
