import {
  type JoinedCalls,
  joinCalls,
  MOST_CALLS,
  type Received,
  report,
  withCalls,
} from '../burst/internal.ts';
import { ALERT_BITS } from './acquire/phasing.ts';
import type { ReadBurst } from './burst-reader.ts';
import { PER_BIT } from './front-end/bit-filter.ts';

/** Bits by which the distance of two calls of one attempt may differ from what it should be. */
const OFF_BY = 2;
/** Bits of the dot pattern. */
const DOTS = 20;
/** Bursts kept at a time. */
const MOST = 8;

/** A burst that was read, and the call it belongs to. */
interface Kept extends ReadBurst {
  readonly received: Received | null;
  readonly event: number;
}

/** What is to be reported of a burst. */
export interface Judged {
  readonly received: Received | null;
  readonly event: number;
}

/** Joins the calls of an attempt: bursts that follow one another at the distance of their length and are the same call. */
export interface Attempts {
  /** Takes in a burst, and says how it reads with all that was heard of its call before. */
  take(burst: ReadBurst): Judged;
  /** The burst that was read where one of an attempt begins. */
  at(start: number, mirror: boolean): ReadBurst | undefined;
  /** Whether a clean call was read between two baseband instants. */
  isSettled(from: number, to: number): boolean;
  /** Takes in all bursts of an attempt at once, of which most could not be found alone; `null` when they are none. */
  takeAll(
    bursts: readonly ReadBurst[],
  ): { readonly received: Received; readonly event: number; readonly burst: ReadBurst } | null;
}

export function createAttempts(): Attempts {
  let kept: readonly Kept[] = [];
  let events = 0;
  /** How every event that may go on was surely read. */
  const said = new Map<number, string>();

  /** Keeps a burst in the place of what was known there, of a new event unless it is of one before. */
  function keep(burst: ReadBurst, received: Received | null, before: number): number {
    const event = before || (received === null ? 0 : ++events);
    const known = placeOf(kept, burst.fit.start, burst.fit.mirror);
    kept = [...kept.filter((each) => each !== known), { ...burst, received, event }].slice(-MOST);
    if (rank(received) > 0) said.set(event, textOf(received));
    for (const each of said.keys()) if (!kept.some((other) => other.event === each)) said.delete(each);
    return event;
  }

  /** The event of which calls that read as one are; 0 for a new one. What was surely reported stays what it is. */
  function eventOf({ received, members }: JoinedCalls, calls: readonly Kept[]): number {
    const text = textOf(received);
    const fits = (event: number): boolean => rank(received) < 1 || (said.get(event) ?? text) === text;
    return members.map((n) => (calls[n] as Kept).event).find((event) => event !== 0 && fits(event)) ?? 0;
  }

  return {
    take(burst) {
      const alone = reportable(burst.heard.alone);
      const own: Kept = { ...burst, received: alone, event: 0 };
      for (const bits of spacings(own, kept)) {
        const earlier = kept.filter((each) => isCallBefore(each, own, bits));
        const calls = [...earlier, own];
        const joined = join(calls, bits, earlier.length);
        if (joined === null || rank(joined.received) < rank(alone)) continue;
        return { received: joined.received, event: keep(burst, joined.received, eventOf(joined, calls)) };
      }
      return { received: alone, event: keep(burst, alone, 0) };
    },
    at: (start, mirror) => placeOf(kept, start, mirror),
    isSettled: (from, to) =>
      kept.some(({ fit, received }) => rank(received) === 2 && fit.start > from && fit.start < to),
    takeAll(bursts) {
      const calls = bursts.map(
        (burst) => kept.find(({ heard }) => heard === burst.heard) ?? { ...burst, received: null, event: 0 },
      );
      const joined = join(calls, ALERT_BITS);
      if (joined === null || rank(joined.received) < 1) return null;
      const { received, members } = joined;
      let event = eventOf(joined, calls);
      if (calls.some((each) => event !== 0 && each.event === event && rank(each.received) >= rank(received)))
        return null;
      for (const n of members) event = keep(calls[n] as Kept, received, event);
      return { received, event, burst: calls[members.at(-1) as number] as Kept };
    },
  };
}

/** What several bursts say as one call, in time's order; `null` when they are not, or when its length is not their distance. */
function join(calls: readonly Kept[], bits: number, anchor?: number): JoinedCalls | null {
  const joined =
    sameAsClean(calls, anchor) ??
    joinCalls(
      calls.map(({ heard }) => heard),
      anchor,
    );
  if (joined === null || reportable(joined.received) === null) return null;
  if (Math.abs(bitsOf(joined.received) - bits) > OFF_BY) return null;
  return joined;
}

/** Where every burst is clean already there is nothing to add: those are one call that read the same. */
function sameAsClean(calls: readonly Kept[], anchor: number | undefined): JoinedCalls | null {
  const own = calls[anchor ?? -1]?.received;
  if (!own || calls.some(({ received }) => rank(received) < 2)) return null;
  const members = [...calls.keys()].filter((n) => textOf(calls[n]?.received) === textOf(own));
  return { received: withCalls(own, members.length), members };
}

function textOf(received: Received | null | undefined): string {
  return received?.reception.information.join() ?? '';
}

/** Distances in bits, that of an alert or of one of the calls that were read, at which a burst follows others as in an attempt. */
function spacings(burst: Kept, kept: readonly Kept[]): ReadonlySet<number> {
  const lengths = new Set([ALERT_BITS]);
  for (const { received } of [burst, ...kept]) if (received !== null) lengths.add(bitsOf(received));
  return new Set([...lengths].filter((bits) => kept.some((each) => isCallBefore(each, burst, bits))));
}

/** Bits of a call with its dot pattern. */
function bitsOf({ reception: { quality } }: Received): number {
  return quality.end - quality.start + DOTS;
}

/** Whether a burst is where one of the four calls before another would be. */
function isCallBefore(earlier: ReadBurst, burst: ReadBurst, bits: number): boolean {
  const between = (burst.fit.start - earlier.fit.start) / PER_BIT;
  const calls = Math.round(between / bits);
  return (
    earlier.fit.mirror === burst.fit.mirror &&
    calls >= 1 &&
    calls < MOST_CALLS &&
    Math.abs(between - calls * bits) <= OFF_BY
  );
}

function placeOf(kept: readonly Kept[], start: number, mirror: boolean): Kept | undefined {
  return kept.find(({ fit }) => fit.mirror === mirror && Math.abs(fit.start - start) <= OFF_BY * PER_BIT);
}

/** The reception when there is probably a call at all. */
function reportable(received: Received | null): Received | null {
  return report(received).ok ? received : null;
}

function rank(received: Received | null): number {
  if (received === null) return -1;
  return ['doubtful', 'repaired', 'clean'].indexOf(received.reception.quality.verdict);
}
