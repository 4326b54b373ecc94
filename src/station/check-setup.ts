import { checkIdentity, parseIdentity } from '../identity/index.ts';
import { clause } from './state/clause.ts';
import type { StationSettings } from './state/settings.ts';
import type { StationFix } from './state/state.ts';
import { lengthOf } from './state/timer.ts';

/** What was seen of a station that is being set up. */
export interface SetupObservations {
  /** Epoch milliseconds. */
  readonly now: number;
  /** Own position as the set knows it, {@link StationState.fix}. */
  readonly fix: StationFix | null;
  /** UTC as the set shows it, epoch milliseconds; `null` when it shows none. */
  readonly time: number | null;
  /** When a test call was last answered, epoch milliseconds; `null` when never. */
  readonly testAnsweredAt: number | null;
  /** Whether a position reply appeared on the plotter; `null` when not tried, or when there is no plotter. */
  readonly replyOnPlotter: boolean | null;
}

/** One line of the check. */
export interface SetupItem {
  readonly subject: 'identity' | 'position' | 'time' | 'groups' | 'channels' | 'test-call' | 'plotter';
  readonly status: 'ready' | 'not-ready' | 'unknown';
  /** What was found, English, without a final full stop. */
  readonly finding: string;
  /** What to do; `null` when nothing. */
  readonly toDo: string | null;
  readonly clause: string;
}

/**
 * Whether a station is ready for use, point by point.
 *
 * It sees what it is told and no more: aerial, power and the licence are for a person to look at.
 *
 * @param settings - the station's settings
 * @param observations - what was seen
 * @returns one item for each subject, always all of them and in the same order
 *
 * @example
 * ```ts
 * import { checkSetup, createStation } from 'seahail/station';
 *
 * const { settings } = createStation({ mmsi: '232999871' });
 * const seen = { now: 0, fix: null, time: 0, testAnsweredAt: null, replyOnPlotter: null };
 * for (const { subject, status } of checkSetup(settings, seen).slice(0, 2)) console.log(subject, status);
 * // identity ready
 * // position not-ready
 * ```
 */
export function checkSetup(settings: StationSettings, observations: SetupObservations): readonly SetupItem[] {
  return [
    identityItem(settings),
    positionItem(settings, observations),
    timeItem(observations),
    groupsItem(settings),
    channelsItem(settings),
    testItem(observations),
    plotterItem(observations),
  ];
}

function identityItem({ mmsi, equipment }: StationSettings): SetupItem {
  const item = { subject: 'identity', clause: 'ITU-R M.585-10; ITU-R M.493, self-identification' } as const;
  if (mmsi === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'No own identity is stored: nothing can be sent',
      toDo: 'Store the nine digits of the radio licence; most sets take them once only',
    };
  }
  const parsed = parseIdentity(mmsi);
  const station = equipment === 'coast' ? 'coast' : equipment === 'H' ? 'handheld' : 'fixed';
  const checked = parsed.ok ? checkIdentity(parsed.value, { use: 'own', station }) : parsed;
  const doubt = checked.ok ? checked.notices[0] : checked.issues[0];
  // A man-overboard device has an identity of a form of its own.
  const fitsDevice = parsed.ok && (equipment === 'M') === (parsed.value.kind === 'mob');
  if (fitsDevice && (doubt === undefined || equipment === 'M')) {
    return { ...item, status: 'ready', finding: `Own identity ${mmsi}`, toDo: null };
  }
  return {
    ...item,
    status: 'not-ready',
    finding: doubt?.message ?? `Own identity ${mmsi} is not of the form for this kind of set`,
    toDo: 'Compare with the radio licence; a wrong identity is changed by the dealer',
  };
}

function positionItem({ timers }: StationSettings, { now, fix }: SetupObservations): SetupItem {
  const item = { subject: 'position', clause: clause.position } as const;
  if (fix === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'No own position: an alert would say nothing of the place',
      toDo: 'Connect a position receiver, or enter the position by hand',
    };
  }
  const age = now - fix.at;
  const minutes = Math.floor(age / 60_000);
  if (age < 0) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'The position is of a time to come',
      toDo: 'Set the clock to UTC, or enter the position anew',
    };
  }
  if (fix.source === 'instrument' && age < 60_000) {
    return { ...item, status: 'ready', finding: 'Position comes from the receiver', toDo: null };
  }
  const isOld = age >= lengthOf('position-warning', timers) || fix.source === 'instrument';
  return {
    ...item,
    status: isOld ? 'not-ready' : 'ready',
    finding: `Position of ${minutes} minutes ago, from ${fix.source === 'person' ? 'the person' : 'the receiver'}`,
    toDo: isOld
      ? 'See to the position receiver, or enter the position anew'
      : 'Enter the position anew every four hours at the latest',
  };
}

function timeItem({ now, time }: SetupObservations): SetupItem {
  const item = { subject: 'time', clause: clause.position } as const;
  if (time === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'The set shows no time',
      toDo: 'Connect a position receiver, or enter UTC',
    };
  }
  const seconds = Math.round(Math.abs(time - now) / 1000);
  return seconds <= 60
    ? { ...item, status: 'ready', finding: 'Time is right to the minute', toDo: null }
    : {
        ...item,
        status: 'not-ready',
        finding: `Time is ${seconds} seconds off`,
        toDo: 'Set the clock to UTC, not to local time',
      };
}

function groupsItem({ groups, mmsi }: StationSettings): SetupItem {
  const item = { subject: 'groups', clause: 'ITU-R M.585-10, group ship station call identities' } as const;
  for (const group of groups) {
    const parsed = parseIdentity(group);
    const checked = parsed.ok
      ? checkIdentity(parsed.value, { use: 'group', ...(mmsi !== null && { ownMmsi: mmsi }) })
      : parsed;
    if (!checked.ok) {
      return {
        ...item,
        status: 'not-ready',
        finding: checked.issues[0].message,
        toDo: `Correct or remove the group ${group}`,
      };
    }
  }
  const finding = groups.length === 0 ? 'No group' : `Groups: ${groups.join(', ')}`;
  return { ...item, status: 'ready', finding, toDo: null };
}

function channelsItem({ channels }: StationSettings): SetupItem {
  const item = { subject: 'channels', clause: 'Radio Regulations Appendix 18' } as const;
  return channels.length > 0
    ? { ...item, status: 'ready', finding: `Working channels: ${channels.join(', ')}`, toDo: null }
    : {
        ...item,
        status: 'not-ready',
        finding: 'No working channel',
        toDo: 'Choose working channels that are allowed in these waters',
      };
}

function testItem({ testAnsweredAt, now }: SetupObservations): SetupItem {
  const item = { subject: 'test-call', clause: clause.enquiry } as const;
  if (testAnsweredAt === null) {
    return {
      ...item,
      status: 'unknown',
      finding: 'No test call was answered yet',
      toDo: 'Send a test call to a coast station that answers them, or to a friend; never test with a distress alert',
    };
  }
  const days = Math.floor((now - testAnsweredAt) / 86_400_000);
  if (days < 0) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'A test call was answered at a time to come',
      toDo: 'Set the clock to UTC, and test again',
    };
  }
  return { ...item, status: 'ready', finding: `A test call was answered ${days} days ago`, toDo: null };
}

function plotterItem({ replyOnPlotter }: SetupObservations): SetupItem {
  const item = { subject: 'plotter', clause: 'IEC 61162-1, sentences DSC and DSE' } as const;
  if (replyOnPlotter === true)
    return { ...item, status: 'ready', finding: 'A position reply reached the plotter', toDo: null };
  return replyOnPlotter === false
    ? {
        ...item,
        status: 'not-ready',
        finding: 'A position reply did not reach the plotter',
        toDo: 'See to the wiring, the speed of the wire and the sentences that the plotter takes',
      }
    : {
        ...item,
        status: 'unknown',
        finding: 'Not tried',
        toDo: 'Ask a friend for her position and look at the plotter',
      };
}
