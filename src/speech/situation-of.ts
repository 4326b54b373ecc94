import { type Call, type DistressCall, natures, type SpokenStation } from '../call/index.ts';
import type { Situation, Situations } from './script.ts';
import type { Plain } from './texts.ts';

/** No words follow a call; what to do instead. */
export interface NothingToSay {
  readonly kind: 'nothing-to-say';
  /** What to do instead, by its code. */
  readonly why: Plain;
  readonly clause: string;
}

/** Finds a station's name and call sign by its nine digits. */
type StationOf = (mmsi: string | null) => SpokenStation;

/** The voice situation after a call, or the reason why nothing is said. */
export function situationOf(call: Call, own: string | null, stationOf: StationOf): Situation | NothingToSay {
  const mine = own !== null && call.from === own;
  switch (call.kind) {
    case 'distress-alert':
      return mine
        ? { kind: 'mayday', ...distressOf(call) }
        : { kind: 'received-mayday', distressed: stationOf(call.from) };
    case 'distress-acknowledgement':
      if (own !== null && call.distressed === own) return { kind: 'mayday', ...distressOf(call) };
      return mine
        ? nothing('speech-watch-after-acknowledgement', '47 CFR 80.1117')
        : { kind: 'received-mayday', distressed: stationOf(call.distressed), answered: true };
    case 'distress-self-cancel':
      return mine
        ? // The time in the call is that of the position, not of the alert.
          { kind: 'cancel-alert', time: null }
        : nothing('speech-alert-cancelled', 'RR 2024 No. 32.53E');
    case 'distress-relay':
      return mine
        ? relayOf(call, call.to.kind === 'station' ? stationOf(call.to.mmsi) : null, stationOf)
        : { kind: 'received-mayday-relay', from: stationOf(call.from) };
    case 'distress-relay-acknowledgement':
      // As after the acknowledgement of an own alert, the own words follow.
      return isForOwn(call, own) && !mine
        ? relayOf(call, stationOf(call.from), stationOf)
        : nothing('speech-relay-acknowledged', '47 CFR 80.1121(a)');
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
    case 'individual-acknowledgement':
      return announced(call, mine, stationOf);
    default:
      return nothing('speech-nothing-follows', 'ITU-R M.541-11 Annex 3');
  }
}

/** The relay was the own station's: its acknowledgement is addressed to it, or came on its own wire without an address. */
function isForOwn({ to }: Call<'distress-relay-acknowledgement'>, own: string | null): boolean {
  return own !== null && to.kind === 'station' && (to.mmsi === null || to.mmsi === own);
}

function announced(
  call: Call<
    'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
  >,
  mine: boolean,
  stationOf: StationOf,
): Situation | NothingToSay {
  if (call.firstTelecommand !== null && !call.firstTelecommand.startsWith('telephony')) {
    return nothing('speech-not-speech', 'ITU-R M.493-16 table A1-3, first telecommand');
  }
  const answer = call.kind === 'individual-acknowledgement';
  const speaksFirst = mine !== answer;
  const { channel } = call;
  const called = 'mmsi' in call.to ? call.to.mmsi : null;
  const partner = stationOf(mine ? called : call.from);
  if (!speaksFirst && !(call.to.kind === 'station' || call.to.kind === 'group')) {
    return nothing('speech-listen', 'ITU-R M.541-11 Annex 3');
  }
  const to = call.to.kind === 'station' ? partner : null;
  // Who is called first listens, whatever the call asks: deviation: D-call-15
  if (call.category === 'urgency') {
    const medicalTransport = call.secondTelecommand === 'medical-transport';
    return speaksFirst
      ? { kind: 'pan-pan', to, channel, medicalTransport }
      : nothing('speech-listen-for-pan-pan', 'RR 2024 No. 33.12, unverified');
  }
  if (call.category === 'safety') {
    return speaksFirst
      ? { kind: 'securite', to, channel, announced: true }
      : nothing('speech-listen-for-securite', 'RR 2024 No. 33.35, unverified');
  }
  const group = call.to.kind === 'group' ? stationOf(called) : null;
  if (speaksFirst) return { kind: 'routine-call', to: partner, channel, toGroup: group !== null };
  return { kind: 'routine-answer', to: partner, channel, group };
}

function relayOf(
  call: Call<'distress-relay' | 'distress-relay-acknowledgement'>,
  to: SpokenStation | null,
  stationOf: StationOf,
): Situation<'mayday-relay'> {
  const distressed = call.distressed === null ? null : stationOf(call.distressed);
  return { kind: 'mayday-relay', distressed, to, ...distressOf(call) };
}

function distressOf(call: DistressCall): Situations['mayday'] {
  const { nature, position, time, expansion } = call;
  const named = natures.rows.find((row) => row[1] === nature)?.[1] ?? null;
  return { nature: named, position, time, personsOnBoard: expansion?.personsOnBoard };
}

function nothing(why: NothingToSay['why'], clause: string): NothingToSay {
  return { kind: 'nothing-to-say', why, clause };
}
