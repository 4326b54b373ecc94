import fc from 'fast-check';
import type { Call } from '../../src/call/index.ts';
import type { Happening } from './radio.ts';

/** Invented identities: the demo's own yacht, her friends, a coast station, a vessel in trouble. */
export const own = '232999871';
export const friend = '232999142';
export const coast = '002329990';
export const troubled = '232999218';
export const club = '023299905';

/** What a master vouches for before a relay. */
export const bothGrounds = { cannotAlertHerself: true, moreHelpNeeded: true } as const;

const someone: fc.Arbitrary<string> = fc.constantFrom(friend, '232999563', coast, troubled);
const position: fc.Arbitrary<Extract<Call, { kind: 'distress-alert' }>['position']> = fc.constantFrom(null, {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
});
const time = fc.constantFrom(null, { hour: 18, minute: 5 });
const nature = fc.constantFrom('undesignated' as const, 'flooding' as const, 'man-overboard' as const);
const toStation = (mmsi: string) => ({ kind: 'station', mmsi }) as const;
const category = fc.constantFrom('routine' as const, 'safety' as const, 'urgency' as const);
const channel = fc.constantFrom(null, null, '72', '77', '13');

function traffic(
  from: fc.Arbitrary<string | null>,
  address: fc.Arbitrary<string | null>,
): fc.Arbitrary<Call> {
  return fc
    .record({ from, address, category, channel, which: fc.nat(9), position, time })
    .map(({ from, address, category, channel, which, position, time }): Call => {
      const announcement = {
        from,
        category,
        firstTelecommand: 'telephony-simplex',
        secondTelecommand: null,
        channel,
      } as const;
      const to = { kind: 'station', mmsi: address } as const;
      switch (which) {
        case 0:
        case 1:
          return { kind: 'individual-call', ...announcement, to };
        case 2:
          return { kind: 'group-call', ...announcement, to: { kind: 'group', mmsi: club } };
        case 3:
          return { kind: 'all-ships-call', ...announcement, to: { kind: 'all-ships' } };
        case 4:
          return {
            kind: 'area-call',
            ...announcement,
            to: {
              kind: 'area',
              area: {
                kind: 'geographic-area',
                north: { hemisphere: 'N', degrees: 57 },
                west: { hemisphere: 'W', degrees: 7 },
                southward: 2,
                eastward: 2,
              },
            },
          };
        case 5:
          return { kind: 'position-request', from, to, category };
        case 6:
          return { kind: 'test-call', from, to, category: 'safety' };
        case 7:
          return { kind: 'polling-call', from, to, category: 'routine' };
        case 8:
          return { kind: 'position-reply', from, to, category: 'safety', position, time, unsolicited: true };
        default:
          return { kind: 'automatic-service-call', ...announcement, to, telephone: '0123', end: 'request' };
      }
    });
}

/** Calls that a person may want to start, and some that nobody may. */
export const callToStart: fc.Arbitrary<Call> = fc.oneof(
  traffic(fc.constant(null), fc.constantFrom(friend, coast, own, null)),
  fc.constantFrom(friend, coast).map(
    (mmsi): Call => ({
      kind: 'individual-call',
      to: toStation(mmsi),
      from: null,
      category: 'routine',
      firstTelecommand: 'telephony-simplex',
      secondTelecommand: null,
      channel: null,
    }),
  ),
  fc.record({ nature, position, time, single: fc.boolean() }).map(
    ({ nature, position, time, single }): Call => ({
      kind: 'distress-relay',
      to: single ? toStation(coast) : { kind: 'all-ships' },
      from: null,
      distressed: troubled,
      nature,
      position,
      time,
      subsequent: 'telephony-simplex',
    }),
  ),
);

/** Answers to what this station may have asked. */
const answer: fc.Arbitrary<Call> = fc
  .record({
    from: someone,
    to: fc.constantFrom(own, own, own, null),
    channel,
    position,
    time,
    which: fc.nat(4),
  })
  .map(({ from, to: mmsi, channel, position, time, which }): Call => {
    const to = { kind: 'station', mmsi } as const;
    const category = 'routine';
    switch (which) {
      case 0:
        return {
          kind: 'individual-acknowledgement',
          from,
          to,
          category,
          firstTelecommand: 'telephony-simplex',
          secondTelecommand: null,
          channel,
        };
      case 1:
        return { kind: 'unable-to-comply', from, to, category, reason: 'busy', channel: null };
      case 2:
        return { kind: 'position-reply', from, to, category, position, time, unsolicited: false };
      case 3:
        return { kind: 'test-acknowledgement', from, to, category };
      default:
        return { kind: 'polling-acknowledgement', from, to, category };
    }
  });

const distress: fc.Arbitrary<Call> = fc
  .record({
    from: fc.constantFrom(friend, coast),
    distressed: fc.constantFrom(troubled, troubled, own, null),
    nature,
    position,
    time,
    which: fc.nat(5),
  })
  .map(({ from, distressed, which, ...rest }): Call => {
    const details = { ...rest, subsequent: 'telephony-simplex', distressed } as const;
    const all = { kind: 'all-ships' } as const;
    switch (which) {
      case 0:
      case 1: {
        const { distressed: _, ...alert } = details;
        return { kind: 'distress-alert', to: { kind: 'all-stations' }, from: distressed, ...alert };
      }
      case 2:
        return { kind: 'distress-acknowledgement', to: all, from, ...details };
      case 3:
        return { kind: 'distress-self-cancel', to: all, from: distressed, ...details };
      case 4:
        return { kind: 'distress-relay', to: all, from, ...details };
      default:
        return { kind: 'distress-relay-acknowledgement', to: toStation(own), from, ...details };
    }
  });

/** Whatever may be heard. */
export const heardCall: fc.Arbitrary<Call> = fc.oneof(
  traffic(fc.oneof(someone, fc.constant(null)), fc.constantFrom(own, own, own, friend, null)),
  answer,
  distress,
  fc.constant<Call>({
    kind: 'polling-call',
    from: own,
    to: toStation(own),
    category: 'routine',
  }),
);

const act = fc.constantFrom(
  'confirm' as const,
  'confirm' as const,
  'decline' as const,
  'retry' as const,
  'dismiss' as const,
  'select' as const,
  'spoken' as const,
  'assist' as const,
  'stand-by' as const,
  'traffic' as const,
  'no-traffic' as const,
  'acknowledge' as const,
);

/** A person's act on a dialogue, whose number is given by how many came after it. */
export const personAct: fc.Arbitrary<(latest: number) => Happening> = fc.oneof(
  fc.record({ kind: act, back: fc.nat(3) }).map(
    ({ kind, back }) =>
      (latest: number): Happening => ({ kind, dialogue: latest - back }),
  ),
  fc.record({ back: fc.nat(3), channel: fc.constantFrom(undefined, '72', '06', '70', 'x') }).map(
    ({ back, channel }) =>
      (latest: number): Happening => ({
        kind: 'answer',
        dialogue: latest - back,
        ...(channel !== undefined && { channel }),
      }),
  ),
  fc.nat(3).map(
    (back) =>
      (latest: number): Happening => ({ kind: 'reject', dialogue: latest - back, reason: 'busy' }),
  ),
  fc.nat(3).map(
    (back) =>
      (latest: number): Happening => ({ kind: 'counter-propose', dialogue: latest - back, channel: '77' }),
  ),
);

/** A person's act on the own alert. */
export const alertAct: fc.Arbitrary<Happening> = fc.constantFrom<Happening>(
  { kind: 'prepare-alert' },
  { kind: 'prepare-alert', nature: 'flooding' },
  { kind: 'press-alert' },
  { kind: 'press-alert' },
  { kind: 'release-alert' },
  { kind: 'stop-alert' },
  { kind: 'cancel-alert' },
  { kind: 'describe-alert', nature: 'sinking' },
);

/** Milliseconds between events: none, moments, minutes, hours, and a clock that jumps either way. */
export const interval: fc.Arbitrary<number> = fc.oneof(
  fc.constant(0),
  fc.integer({ min: 1, max: 4000 }),
  fc.integer({ min: 4000, max: 400_000 }),
  fc.constantFrom(5 * 3_600_000, 24 * 3_600_000, 49 * 3_600_000, -3_600_000, -1),
);
