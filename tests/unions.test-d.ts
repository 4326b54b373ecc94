// Compiled by tsc, never run: a switch over a public union compiles when it has every member, and breaks when one is
// missing.

import type { Call } from '../src/call/index.ts';
import type { TextCode } from '../src/locale/index.ts';
import type { Reading } from '../src/report/index.ts';
import type { Issue } from '../src/result/index.ts';
import type { Dialogue, Effect, StationEvent } from '../src/station/index.ts';

const impossible = (_: never): void => {};

export function everyCall(call: Call): void {
  switch (call.kind) {
    case 'distress-alert':
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
    case 'individual-acknowledgement':
    case 'unable-to-comply':
    case 'position-request':
    case 'position-reply':
    case 'test-call':
    case 'test-acknowledgement':
    case 'polling-call':
    case 'polling-acknowledgement':
    case 'automatic-service-call':
    case 'unrecognised-call':
      return;
    default:
      impossible(call);
  }
}

export function allCallsButOne(call: Call): void {
  switch (call.kind) {
    case 'distress-alert':
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
    case 'individual-acknowledgement':
    case 'unable-to-comply':
    case 'position-request':
    case 'position-reply':
    case 'test-call':
    case 'test-acknowledgement':
    case 'polling-call':
    case 'polling-acknowledgement':
    case 'automatic-service-call':
      return;
    default:
      // @ts-expect-error 'unrecognised-call' is left
      impossible(call);
  }
}

export function everyReading(reading: Reading): void {
  switch (reading.kind) {
    case 'call':
    case 'expansion':
    case 'own-position':
    case 'clock':
    case 'waypoint':
    case 'target':
    case 'ais':
    case 'motion':
    case 'radio':
    case 'man-overboard':
    case 'safety-text':
    case 'node':
    case 'other':
    case 'damaged':
      return;
    default:
      impossible(reading);
  }
}

export function allReadingsButOne(reading: Reading): void {
  switch (reading.kind) {
    case 'call':
    case 'expansion':
    case 'own-position':
    case 'clock':
    case 'waypoint':
    case 'target':
    case 'ais':
    case 'motion':
    case 'radio':
    case 'man-overboard':
    case 'safety-text':
    case 'node':
    case 'other':
      return;
    default:
      // @ts-expect-error 'damaged' is left
      impossible(reading);
  }
}

export function everyEffect(effect: Effect): void {
  switch (effect.kind) {
    case 'send':
    case 'stop-sending':
    case 'tune':
    case 'sound':
    case 'silence':
    case 'show':
    case 'ask':
    case 'speak':
    case 'advise':
    case 'log':
    case 'issue':
    case 'wake':
      return;
    default:
      impossible(effect);
  }
}

export function allEffectsButOne(effect: Effect): void {
  switch (effect.kind) {
    case 'send':
    case 'stop-sending':
    case 'tune':
    case 'sound':
    case 'silence':
    case 'show':
    case 'ask':
    case 'speak':
    case 'advise':
    case 'log':
    case 'issue':
      return;
    default:
      // @ts-expect-error 'wake' is left
      impossible(effect);
  }
}

export function everyDialogue(dialogue: Dialogue): void {
  switch (dialogue.procedure) {
    case 'outgoing':
    case 'incoming':
    case 'own-distress':
    case 'heard-distress':
      return;
    default:
      impossible(dialogue);
  }
}

export function everyEvent(event: StationEvent): void {
  switch (event.kind) {
    case 'clock':
    case 'received':
    case 'channel':
    case 'tuned':
    case 'sent':
    case 'send-failed':
    case 'fix':
    case 'settings':
    case 'call':
    case 'answer':
    case 'reject':
    case 'counter-propose':
    case 'confirm':
    case 'decline':
    case 'retry':
    case 'dismiss':
    case 'select':
    case 'spoken':
    case 'assist':
    case 'stand-by':
    case 'traffic':
    case 'no-traffic':
    case 'acknowledge':
    case 'silence':
    case 'prepare-alert':
    case 'press-alert':
    case 'release-alert':
    case 'stop-alert':
    case 'cancel-alert':
    case 'describe-alert':
    case 'note':
      return;
    default:
      impossible(event);
  }
}

// A member is one kind by its name, and a test of the tag narrows the union to it.

export function oneKind(call: Call<'test-call'>): 'station' {
  return call.to.kind;
}

export function narrowed(call: Call): string | null {
  if (call.kind === 'distress-relay') return call.distressed;
  // @ts-expect-error not every other call names a vessel in distress
  return call.distressed;
}

export function narrowedTwice(reading: Reading, event: StationEvent, effect: Effect): string | null {
  if (reading.kind === 'ais') return reading.report.mmsi;
  if (event.kind === 'counter-propose') return event.channel;
  if (effect.kind === 'issue') return effect.issue.code;
  // @ts-expect-error no other reading has a report
  return reading.report;
}

// @ts-expect-error no kind of call has that name
export type Misspelt = Call<'test-cal'>;

// @ts-expect-error a test call has no position
export const wrong: Call<'test-call'> = { kind: 'test-call', from: null, position: null };

/** An issue of a module, told by its code. */
type BurstIssueCode = Extract<TextCode, `burst-${string}`>;
type BurstIssue = { readonly [Code in BurstIssueCode]: Issue & { readonly code: Code } }[BurstIssueCode];

export function everyIssue(issue: BurstIssue): void {
  switch (issue.code) {
    case 'burst-input':
    case 'burst-not-found':
    case 'burst-atis-not-found':
    case 'burst-cut-short':
    case 'burst-inverted':
    case 'burst-repaired':
    case 'burst-check-wrong':
    case 'burst-doubtful':
    case 'burst-format-once':
    case 'burst-expansion-broken':
    case 'burst-expansion-layout':
      return;
    default:
      impossible(issue);
  }
}

export function allIssuesButOne(issue: BurstIssue): void {
  switch (issue.code) {
    case 'burst-input':
    case 'burst-not-found':
    case 'burst-atis-not-found':
    case 'burst-cut-short':
    case 'burst-inverted':
    case 'burst-repaired':
    case 'burst-check-wrong':
    case 'burst-doubtful':
    case 'burst-format-once':
    case 'burst-expansion-broken':
      return;
    default:
      // @ts-expect-error 'burst-expansion-layout' is left
      impossible(issue);
  }
}
