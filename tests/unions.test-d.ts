// Compiled by tsc, never run: a switch over a public union compiles when it has every member, and breaks when one is
// missing.
import type { BURST_ISSUE_CODES } from '../src/burst/index.ts';
import type { Call } from '../src/call/index.ts';
import type { Reading } from '../src/report/index.ts';
import type { Issue } from '../src/result/index.ts';
import type { Effect } from '../src/station/index.ts';

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

/** An issue of a room, told by its code. */
type BurstIssueCode = (typeof BURST_ISSUE_CODES)[number]['code'];
type BurstIssue = { readonly [Code in BurstIssueCode]: Issue & { readonly code: Code } }[BurstIssueCode];

export function everyIssue(issue: BurstIssue): void {
  switch (issue.code) {
    case 'burst-input':
    case 'burst-not-found':
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
