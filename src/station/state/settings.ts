import type { Call, EquipmentClass, Reason } from '../../call/index.ts';
import type { TimerName } from './timer.ts';

/**
 * What happens with a call of some kind: `'automatic'` answers (or tunes) at once, `'by-hand'` asks the person,
 * `'refuse-…'` answers "unable to comply" with that reason at once.
 *
 * Only a call received clean and addressed to this very station is ever answered by itself; distress never is.
 */
export type Policy = 'automatic' | 'by-hand' | `refuse-${Reason}`;

/** The kinds of call that a policy can be set for. */
export type PolicySubject = 'individual' | 'position' | 'test' | 'polling' | 'group' | 'area' | 'all-ships';

/** A policy of its own for one caller. */
export interface CallerPolicy {
  /** Nine digits. */
  readonly caller: string;
  /** For this kind of call only; for every kind when absent. */
  readonly subject?: PolicySubject;
  readonly policy: Policy;
}

/** What a station is and what its owner wants. Plain data, kept in the state. */
export interface StationSettings {
  /** Own identity, nine digits; `null` until one is stored: such a station receives and sends nothing. */
  readonly mmsi: string | null;
  readonly equipment: EquipmentClass;
  /** Group identities this station belongs to, nine digits each. */
  readonly groups: readonly string[];
  /** By kind of call. Individual calls are answered by hand unless the owner chose otherwise. */
  readonly policies: Readonly<Record<PolicySubject, Policy>>;
  /** By caller; the first that fits goes before `policies`. */
  readonly callers: readonly CallerPolicy[];
  /** Whether the radio may change its channel by itself. */
  readonly tuning: 'automatic' | 'by-hand';
  /**
   * Working channels this station can use, in ITU-R M.1084 digits, the most wanted first: for the waters it is in, for
   * instance by `workingChannels` of `seahail/channel`.
   */
  readonly channels: readonly string[];
  /** Speed for "time to reach", knots. */
  readonly speed: number;
  /** Also log calls that are for somebody else. */
  readonly logOthers: boolean;
  /** Lengths of timers in milliseconds, at least 1, that differ from {@link timers}: for training and tests. */
  readonly timers: Readonly<Partial<Record<TimerName, number>>>;
  /** Start of the random numbers; any integer. Give each station another one. */
  readonly seed: number;
}

/** Settings with everything but the identity and the class left as it usually is. */
export type SettingsInput = Pick<StationSettings, 'mmsi'> & Partial<StationSettings>;

// deviation: D-station-5 (which subjects answer by themselves out of the box).
/** The policies of a set as it comes. */
export const usualPolicies: Readonly<Record<PolicySubject, Policy>> = {
  individual: 'by-hand',
  position: 'by-hand',
  test: 'automatic',
  polling: 'automatic',
  group: 'by-hand',
  area: 'by-hand',
  'all-ships': 'by-hand',
};

/** The settings with whatever was left out. */
export function completeSettings(input: SettingsInput): StationSettings {
  return {
    mmsi: input.mmsi,
    equipment: input.equipment ?? 'D',
    groups: input.groups ?? [],
    policies: { ...usualPolicies, ...input.policies },
    callers: input.callers ?? [],
    tuning: input.tuning ?? 'automatic',
    channels: input.channels ?? ['72', '77', '08', '06'],
    speed: input.speed ?? 6,
    logOthers: input.logOthers ?? false,
    timers: input.timers ?? {},
    seed: input.seed ?? 1,
  };
}

/** The subject whose policy decides about a call, or `null` for calls that no policy is for. */
export function subjectOf(call: Call): PolicySubject | null {
  switch (call.kind) {
    case 'individual-call':
      return 'individual';
    case 'position-request':
      return 'position';
    case 'test-call':
      return 'test';
    case 'polling-call':
      return 'polling';
    case 'group-call':
      return 'group';
    case 'area-call':
      return 'area';
    case 'all-ships-call':
      return 'all-ships';
    default:
      return null;
  }
}

/** The policy that decides about a call. */
export function policyFor(settings: StationSettings, call: Call): Policy {
  const subject = subjectOf(call);
  if (subject === null) return 'by-hand';
  for (const row of settings.callers) {
    if (row.caller === call.from && (row.subject === undefined || row.subject === subject)) return row.policy;
  }
  return settings.policies[subject];
}
