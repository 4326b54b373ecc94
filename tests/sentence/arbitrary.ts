import fc from 'fast-check';
import type { Call } from '../../src/call/index.ts';
import type { ReportedPosition } from '../../src/position/index.ts';

import { checksumOf } from '../../src/sentence/frame/checksum.ts';

/** A sentence with its checksum and line end. */
export const line = (body: string, start = '$'): string => `${start}${body}*${checksumOf(body)}\r\n`;

export const mmsi: fc.Arbitrary<string> = fc
  .integer({ min: 0, max: 999_999_999 })
  .map((number) => String(number).padStart(9, '0'));
const whole = {
  latitude: fc.record({
    hemisphere: fc.constantFrom('N', 'S'),
    degrees: fc.integer({ min: 0, max: 89 }),
    minutes: fc.integer({ min: 0, max: 59 }),
  }),
  longitude: fc.record({
    hemisphere: fc.constantFrom('E', 'W'),
    degrees: fc.integer({ min: 0, max: 179 }),
    minutes: fc.integer({ min: 0, max: 59 }),
  }),
};
const tenThousandths = fc.integer({ min: 0, max: 9999 });
const position: fc.Arbitrary<ReportedPosition | null> = fc.oneof(
  fc.constant(null),
  fc.record({ kind: fc.constant('reported-position' as const), ...whole }),
  fc.record({
    kind: fc.constant('reported-position' as const),
    ...whole,
    fraction: fc.record({ latitude: tenThousandths, longitude: tenThousandths }),
  }),
);
const time = fc.option(
  fc.record({ hour: fc.integer({ min: 0, max: 23 }), minute: fc.integer({ min: 0, max: 59 }) }),
);
const unknown = fc.integer({ min: 28, max: 99 }).map((symbol) => `symbol-${symbol}` as const);
const category = fc.oneof(fc.constantFrom('routine', 'safety', 'urgency', 'acs'), unknown);
const nature = fc.option(
  fc.oneof(fc.constantFrom('sinking', 'piracy', 'man-overboard', 'epirb-emission'), unknown),
);
const firstTelecommand = fc.constantFrom(
  'telephony-simplex',
  'telephony-duplex',
  'telephony-j3e',
  'data',
  null,
);
const secondTelecommand = fc.constantFrom('neutral-craft', 'medical-transport', 'pay-phone', 'busy', null);
const frequency = fc.integer({ min: 16_060, max: 279_999 }).map((tenths) => String(tenths).padStart(6, '0'));
const channel = fc.oneof(
  fc.constant({ channel: null }),
  fc.constantFrom('06', '16', '72', '1022', '2022').map((name) => ({ channel: name })),
  fc.record({
    channel: fc.constant(null),
    frequencies: fc.record({ receive: frequency, transmit: fc.oneof(frequency, fc.constant(null)) }),
  }),
);
const text = fc.string({
  minLength: 1,
  maxLength: 10,
  unit: fc.integer({ min: 0x20, max: 0xff }).map((code) => String.fromCharCode(code)),
});
const expansion = fc
  .record(
    {
      speed: fc.integer({ min: 0, max: 9999 }).map((tenths) => tenths / 10),
      course: fc.integer({ min: 0, max: 3599 }).map((tenths) => tenths / 10),
      personsOnBoard: fc.integer({ min: 0, max: 9999 }),
      source: fc.constantFrom('020000', '080102'),
      stationName: text,
      requested: fc.constant([105]),
    },
    { requiredKeys: [] },
  )
  .filter((data) => Object.keys(data).length > 0);

/** Who the sentence's reader cannot know: the called station of a received call, the caller of a commanded one. */
interface Shape {
  from: fc.Arbitrary<string | null>;
  station: fc.Arbitrary<{ kind: 'station'; mmsi: string | null }>;
  group: fc.Arbitrary<{ kind: 'group'; mmsi: string | null }>;
  area: fc.Arbitrary<Extract<Call['to'], { kind: 'area' }>>;
}

const area = fc.record({
  kind: fc.constant('area' as const),
  area: fc.record({
    kind: fc.constant('geographic-area' as const),
    north: fc.record({ hemisphere: fc.constantFrom('N', 'S'), degrees: fc.integer({ min: 0, max: 60 }) }),
    west: fc.record({ hemisphere: fc.constantFrom('E', 'W'), degrees: fc.integer({ min: 0, max: 179 }) }),
    southward: fc.integer({ min: 1, max: 20 }),
    eastward: fc.integer({ min: 1, max: 99 }),
  }),
});

const shapes: Record<'received' | 'commanded', Shape> = {
  received: {
    from: mmsi,
    station: fc.constant({ kind: 'station', mmsi: null }),
    group: fc.constant({ kind: 'group', mmsi: null }),
    area,
  },
  commanded: {
    from: fc.constant(null),
    station: mmsi.map((digits) => ({ kind: 'station', mmsi: digits })),
    group: mmsi.map((digits) => ({ kind: 'group', mmsi: digits })),
    area,
  },
};

/** Any call of a kind of its own, with what a sentence of the given direction has no place for left out. */
export function anyCall(direction: 'received' | 'commanded'): fc.Arbitrary<Call> {
  const { from, station, group } = shapes[direction];
  const everyone = fc.constant({ kind: 'all-ships' as const });
  const noOne = fc.constant(null);
  const details = { nature, position, time, subsequent: firstTelecommand };
  const announced = { category, firstTelecommand, secondTelecommand };
  const one = (
    kind: string,
    more: Record<string, fc.Arbitrary<unknown>> = {},
  ): fc.Arbitrary<Record<string, unknown>> =>
    fc.record({ kind: fc.constant(kind), from, to: station, category, ...more });
  const traffic = (kind: string, to: fc.Arbitrary<unknown>, caller: fc.Arbitrary<string | null> = from) =>
    fc
      .tuple(fc.record({ kind: fc.constant(kind), from: caller, to, ...announced }), channel)
      .map(([call, elements]) => ({ ...call, ...elements }));
  const relay = (kind: string) => [
    fc.record({
      kind: fc.constant(kind),
      from,
      to: fc.oneof(station, everyone, group),
      distressed: fc.option(mmsi),
      ...details,
    }),
    fc.record({ kind: fc.constant(kind), from: noOne, to: area, distressed: fc.option(mmsi), ...details }),
  ];
  const cancel =
    direction === 'received'
      ? fc
          .record({ kind: fc.constant('distress-self-cancel'), from: mmsi, to: everyone, ...details })
          .map((call) => ({ ...call, distressed: call.from }))
      : noOne.map(() => ({
          kind: 'test-call',
          from: null,
          to: { kind: 'station', mmsi: '002329990' },
          category: 'safety',
        }));
  return fc
    .tuple(
      fc.oneof(
        fc.record({
          kind: fc.constant('distress-alert'),
          from,
          to: fc.constant({ kind: 'all-stations' }),
          ...details,
        }),
        fc
          .record({
            kind: fc.constant('distress-acknowledgement'),
            from,
            to: everyone,
            distressed: fc.option(mmsi),
            ...details,
          })
          .filter((call) => call.from === null || call.from !== call.distressed),
        cancel,
        ...relay('distress-relay'),
        ...relay('distress-relay-acknowledgement'),
        traffic('all-ships-call', everyone),
        traffic('area-call', area, noOne),
        traffic('group-call', group),
        traffic('individual-call', station),
        traffic('individual-acknowledgement', station),
        fc
          .tuple(
            one('unable-to-comply', { reason: fc.constantFrom('busy', 'no-reason', 'symbol-99', null) }),
            channel,
          )
          .map(([call, elements]) => ({ ...call, ...elements })),
        one('position-request'),
        one('position-reply', { position, time, unsolicited: fc.boolean() }),
        one('test-call'),
        one('test-acknowledgement'),
        one('polling-call'),
        one('polling-acknowledgement'),
        fc
          .tuple(
            traffic('automatic-service-call', station),
            fc.record({
              telephone: fc.option(fc.integer({ min: 1, max: 1e15 }).map(String)),
              end: fc.constantFrom('request', 'answer', 'end'),
            }),
          )
          .map(([call, more]) => ({ ...call, ...more, ...oneElement(call) })),
      ),
      fc.option(expansion),
    )
    .map(([call, data]) => (data === null ? call : { ...call, expansion: data }) as Call);
}

/** The telephone service has one element only. */
function oneElement(call: object): object {
  const { frequencies } = call as { frequencies?: { receive: string } };
  return frequencies === undefined ? {} : { frequencies: { receive: frequencies.receive, transmit: null } };
}
