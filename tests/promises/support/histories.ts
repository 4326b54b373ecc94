// What can happen to a station, in any order: calls from the air, a person's acts, the clock, the radio, junk.
// Nothing of the code under test is used but the readers that make a `Call` of symbols.
import type { Random } from '../../../bench/receiver/random.ts';
import type { Verdict } from '../../../src/burst/index.ts';
import { decodeCharacters } from '../../../src/burst/information.ts';
import { type Call, decodeFields } from '../../../src/call/index.ts';
import type { StationEvent, StationState } from '../../../src/station/index.ts';
import { callOf, pick, symbolsOfIdentity } from './calls.ts';
import { strangeCharacters, strangeFields } from './strange.ts';

export const own = '232999871';
export const club = '023299905';
const strangers = [
  '232999142',
  '232999563',
  '002329990',
  '232999218',
  '970123456',
  '972123456',
  '974123456',
  '999999999',
  '000000000',
  own,
  club,
  '111232999',
];
const someone = (random: Random): string =>
  strangers[Math.floor(strangers.length * random.even() ** 2)] as string;

/** A call from the air, mostly between a few stations, some of them strange; sometimes with characters unread. */
export function heardCall(random: Random): Call {
  const strange = random.below(6);
  if (strange === 0) return decodeFields(strangeFields(random)).call;
  const characters: (number | null)[] =
    strange === 1 ? strangeCharacters(random) : callOf(random).characters.slice(1);
  const put = (at: number, mmsi: string): void => {
    if (characters.length > at + 5) characters.splice(at, 5, ...symbolsOfIdentity(mmsi));
  };
  const [format] = characters;
  const sender = someone(random);
  if (format === 120 || format === 114) {
    put(1, format === 114 ? club : random.below(4) > 0 ? own : someone(random));
    put(7, sender);
    if (characters[6] === 112) put(13, random.below(3) === 0 ? own : someone(random));
  } else if (format === 112) put(1, sender);
  else if (format === 116) {
    put(2, sender);
    if (characters[7] === 110 || characters[7] === 112) put(8, random.below(3) === 0 ? own : someone(random));
  } else if (format === 102) put(7, sender);
  if (random.below(6) === 0) {
    for (let unread = 1 + random.below(3); unread > 0; unread -= 1)
      characters[random.below(characters.length)] = null;
  }
  return decodeFields(decodeCharacters(characters)).call;
}

const acts = [
  'confirm',
  'decline',
  'retry',
  'dismiss',
  'select',
  'spoken',
  'assist',
  'stand-by',
  'traffic',
  'no-traffic',
  'acknowledge',
] as const;
const policies = ['automatic', 'by-hand', 'reject-busy'] as const;
const subjects = ['individual', 'position', 'test', 'polling', 'group', 'area', 'all-ships'] as const;
const channels = ['72', '77', '08', '06', '16', '70', '13', '1022', 'xx', ''];
const junk: readonly unknown[] = [
  null,
  undefined,
  0,
  NaN,
  Infinity,
  '',
  'x',
  [],
  {},
  true,
  '__proto__',
  { kind: 'received' },
  1e300,
  -1,
];

/** An hour, mostly seconds, sometimes days or years, sometimes back. */
function later(random: Random, state: StationState): number {
  const wake = state.wakeAt;
  switch (random.below(12)) {
    case 0:
      return state.now + 86_400_000 * (1 + random.below(400));
    case 1:
      return state.now - random.below(600_000);
    case 2:
      return state.now + random.below(3_600_000);
    case 3:
    case 4:
    case 5:
      return wake ?? state.now + random.below(20_000);
    default:
      return state.now + random.below(5000);
  }
}

/** The next thing that happens. */
export function happening(random: Random, state: StationState): StationEvent {
  const at = later(random, state);
  const dialogues = state.dialogues.map(({ id }) => id);
  const dialogue = dialogues.length > 0 && random.below(12) > 0 ? pick(random, dialogues) : random.below(40);
  const verdict: Verdict = pick(random, ['clean', 'clean', 'clean', 'repaired', 'doubtful']);
  switch (random.below(26)) {
    case 0:
    case 1:
    case 2:
      return { kind: 'clock', at };
    case 3:
    case 4:
    case 5:
    case 6:
    case 7:
      return { kind: 'received', at, call: heardCall(random), verdict };
    case 8: {
      // The same again, less sure, or with its address or sender unread.
      const { call } = state.dialogues.find(({ id }) => id === dialogue) ?? {};
      const again = (call ?? heardCall(random)) as Call;
      const changed = pick(random, [{}, {}, { to: { kind: 'station', mmsi: null } }, { from: null }]);
      return { kind: 'received', at, call: { ...again, ...changed } as Call, verdict };
    }
    case 9:
      return { kind: 'channel', at, busy: random.below(2) === 0 };
    case 10:
      return { kind: 'tuned', at, channel: pick(random, channels) };
    case 11:
    case 12:
      return { kind: 'sent', at, dialogue: state.transmitting ?? dialogue };
    case 13:
      return { kind: 'send-failed', at, dialogue: state.transmitting ?? dialogue };
    case 14:
      return {
        kind: 'fix',
        at,
        position: {
          latitude: 180 * random.even() - 90,
          longitude: pick(random, [-6.5, 360 * random.even() - 180, 181, NaN]),
        },
        source: pick(random, ['instrument', 'person']),
      };
    case 15:
      return {
        kind: 'settings',
        at,
        settings: pick(random, [
          { policies: { [pick(random, subjects)]: pick(random, policies) } },
          { tuning: pick(random, ['automatic', 'by-hand'] as const) },
          { groups: [club] },
          { callers: [{ caller: someone(random), policy: pick(random, policies) }] },
          { channels: pick(random, [['72', '77'], ['06'], []]) },
        ]),
      };
    case 16:
    case 17: {
      const call = heardCall(random);
      return {
        kind: 'call',
        at,
        call: (random.below(2) === 0 ? { ...call, from: null, to: toSomeone(random, call) } : call) as Call,
        ...(random.below(3) === 0 && {
          because: { cannotAlertHerself: true, moreHelpNeeded: true } as const,
        }),
        ...(random.below(3) === 0 && { attempts: 1 + random.below(3) }),
      };
    }
    case 18:
      return {
        kind: 'answer',
        at,
        dialogue,
        ...(random.below(3) === 0 && { channel: pick(random, channels) }),
      };
    case 19:
      return { kind: 'reject', at, dialogue, reason: 'busy' };
    case 20:
      return pick(random, [
        { kind: 'counter-propose', at, dialogue, channel: pick(random, channels) },
        {
          kind: 'note',
          at,
          text: 'Wind freshening',
          ...(random.below(2) === 0 && { corrects: random.below(9) }),
        },
        { kind: 'silence', at },
      ] as const);
    case 21:
    case 22:
      return { kind: pick(random, acts), at, dialogue };
    case 23:
    case 24:
      return pick(random, [
        { kind: 'prepare-alert', at, nature: 'flooding' },
        { kind: 'prepare-alert', at },
        { kind: 'press-alert', at },
        { kind: 'press-alert', at },
        { kind: 'release-alert', at },
        { kind: 'stop-alert', at },
        { kind: 'cancel-alert', at },
        { kind: 'describe-alert', at, nature: 'sinking' },
      ] as const);
    default: {
      const event: Record<string, unknown> = { ...(happening(random, state) as object) };
      const keys = Object.keys(event);
      event[pick(random, keys)] = pick(random, junk);
      return event as unknown as StationEvent;
    }
  }
}

function toSomeone(random: Random, call: Call): unknown {
  return call.to?.kind === 'station' ? { kind: 'station', mmsi: someone(random) } : call.to;
}

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Every place in a value where something else could stand. */
function placesIn(value: Json, into: { holder: Record<string, Json>; key: string }[] = []): typeof into {
  if (value === null || typeof value !== 'object') return into;
  for (const key of Object.keys(value)) {
    into.push({ holder: value as Record<string, Json>, key });
    placesIn((value as Record<string, Json>)[key] as Json, into);
  }
  return into;
}

const phases = [
  'sending',
  'waiting-channel',
  'deciding',
  'countdown',
  'waiting-acknowledgement',
  'retry-wait',
  'acknowledge-waiting',
  'cancel-waiting',
  'agreed',
  'waiting-answer',
  'confirming',
  'prepared',
];
const procedures = ['incoming', 'outgoing', 'own-distress', 'heard-distress'];

/** A stored state as a damaged file or another hand may leave it: one to four values differ. */
export function mutatedState(random: Random, state: StationState): unknown {
  const copy = JSON.parse(JSON.stringify(state)) as { [key: string]: Json };
  for (let changes = 1 + random.below(4); changes > 0; changes -= 1) {
    const places = placesIn(copy);
    const dialogues = (Array.isArray(copy.dialogues) ? copy.dialogues : []) as { [key: string]: Json }[];
    const one = dialogues.length > 0 ? pick(random, dialogues) : null;
    if (one !== null && typeof one === 'object' && random.below(3) > 0) {
      const call = JSON.parse(JSON.stringify(heardCall(random))) as Json;
      const [key, value] = pick<[string, Json]>(random, [
        ['answer', call],
        ['call', call],
        ['phase', pick(random, phases)],
        ['procedure', pick(random, procedures)],
        ['verdict', 'clean'],
        ['waits', { [pick(random, ['retry', 'repeat', 'hold', 'channel'])]: 0 }],
        ['automatic', true],
        ['allowed', 3],
        ['attempts', 0],
        ['answer', one.call ?? null],
      ]);
      one[key] = value;
      continue;
    }
    const { holder, key } = pick(random, places);
    const other = pick(random, places);
    holder[key] =
      random.below(2) === 0
        ? (JSON.parse(JSON.stringify(other.holder[other.key] ?? null)) as Json)
        : pick<Json>(random, [null, 0, -1, 1e300, '', 'sending', true, [], {}, '999999999', own]);
  }
  return copy;
}
