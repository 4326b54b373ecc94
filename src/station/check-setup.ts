import { checkIdentity, parseIdentity } from '../identity/index.ts';
import { clause } from './model/clause.ts';
import type { StationSettings } from './model/settings.ts';
import type { StationState } from './model/state.ts';
import { lengthOf } from './model/timer.ts';

/** What was observed of a station that is being set up. */
type SetupObservations = Parameters<typeof checkSetup>[1];

/** One line of the check. */
type SetupItem = ReturnType<typeof checkSetup>[number];

/**
 * Whether a station is ready for use, point by point.
 *
 * It judges only what it is given: aerial, power and licence are for a person to check.
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
export function checkSetup(
  settings: StationSettings,
  observations: {
    /** Epoch milliseconds. */
    readonly now: number;
    /** Own position as the set knows it, {@link StationState.fix}. */
    readonly fix: StationState['fix'];
    /** UTC as the set shows it, epoch milliseconds; `null` when it shows none. */
    readonly time: number | null;
    /** When a test call was last answered, epoch milliseconds; `null` when never. */
    readonly testAnsweredAt: number | null;
    /** Whether a position reply appeared on the plotter; `null` when not tried, or when there is no plotter. */
    readonly replyOnPlotter: boolean | null;
  },
): readonly {
  readonly subject:
    | 'identity'
    | 'position'
    | 'time'
    | 'groups'
    | 'channels'
    | 'watch'
    | 'test-call'
    | 'plotter';
  readonly status: 'ready' | 'not-ready' | 'unknown';
  /** What was found, English, without a final full stop. */
  readonly finding: string;
  /** What to do; `null` if nothing. */
  readonly toDo: string | null;
  readonly clause: string;
}[] {
  return [
    identityItem(settings),
    positionItem(settings, observations),
    timeItem(observations),
    groupsItem(settings),
    channelsItem(settings),
    watchItem(settings),
    testItem(observations),
    plotterItem(observations),
  ];
}

function identityItem({ mmsi, equipment }: StationSettings): SetupItem {
  const item = {
    subject: 'identity',
    clause: 'ITU-R M.585-10; ITU-R M.493-16, self-identification',
  } as const;
  if (mmsi === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'Own identity is not stored: the radio cannot transmit DSC calls',
      toDo: 'Enter the MMSI of the ship station licence; most radios accept it only once',
    };
  }
  const parsed = parseIdentity(mmsi);
  const station = equipment === 'coast' ? 'coast' : equipment === 'H' ? 'handheld' : 'fixed';
  const [doubt] = parsed.ok ? checkIdentity(parsed.value, { use: 'own', station }) : parsed.issues;
  // A man-overboard device has an identity of a form of its own.
  const fitsDevice = parsed.ok && (equipment === 'M') === (parsed.value.kind === 'mob');
  if (fitsDevice && (doubt === undefined || equipment === 'M')) {
    return { ...item, status: 'ready', finding: `Own identity ${mmsi}`, toDo: null };
  }
  return {
    ...item,
    status: 'not-ready',
    finding: doubt?.message ?? `Own identity ${mmsi} does not have the form for this kind of radio`,
    toDo: 'Compare it with the licence; a dealer can change a wrong identity',
  };
}

function positionItem({ timers }: StationSettings, { now, fix }: SetupObservations): SetupItem {
  const item = { subject: 'position', clause: clause.position } as const;
  if (fix === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'No own position: a distress alert would go out without one',
      toDo: 'Connect a GNSS receiver, or enter the position by hand',
    };
  }
  const age = now - fix.at;
  const minutes = Math.floor(age / 60_000);
  if (age < 0) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'The position fix is dated in the future',
      toDo: 'Set the clock to UTC, or enter the position again',
    };
  }
  if (fix.source === 'instrument' && age < 60_000) {
    return { ...item, status: 'ready', finding: 'Position comes from the GNSS receiver', toDo: null };
  }
  const isOld = age >= lengthOf('position-warning', timers) || fix.source === 'instrument';
  return {
    ...item,
    status: isOld ? 'not-ready' : 'ready',
    finding: `Position is ${minutes} minutes old, ${fix.source === 'person' ? 'entered by hand' : 'from the GNSS receiver'}`,
    toDo: isOld
      ? 'Check the GNSS receiver, or enter the position again'
      : 'Enter the position again at least every 4 hours',
  };
}

function timeItem({ now, time }: SetupObservations): SetupItem {
  const item = { subject: 'time', clause: clause.position } as const;
  if (time === null) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'The radio shows no time',
      toDo: 'Connect a GNSS receiver, or enter UTC',
    };
  }
  const seconds = Math.round(Math.abs(time - now) / 1000);
  return seconds <= 60
    ? { ...item, status: 'ready', finding: 'Time is correct to the minute', toDo: null }
    : {
        ...item,
        status: 'not-ready',
        finding: `Time is ${seconds} seconds wrong`,
        toDo: 'Set the clock to UTC, not to local time',
      };
}

function groupsItem({ groups, mmsi }: StationSettings): SetupItem {
  const item = { subject: 'groups', clause: 'ITU-R M.585-10, group ship station call identities' } as const;
  for (const group of groups) {
    const parsed = parseIdentity(group);
    const [wrong] = parsed.ok
      ? checkIdentity(parsed.value, { use: 'group', ...(mmsi !== null && { own: mmsi }) })
      : parsed.issues;
    if (wrong !== undefined) {
      return {
        ...item,
        status: 'not-ready',
        finding: wrong.message,
        toDo: `Correct or remove the group ${group}`,
      };
    }
  }
  const finding = groups.length === 0 ? 'No group identity' : `Groups: ${groups.join(', ')}`;
  return { ...item, status: 'ready', finding, toDo: null };
}

function channelsItem({ channels }: StationSettings): SetupItem {
  const item = { subject: 'channels', clause: 'Radio Regulations Appendix 18' } as const;
  return channels.length > 0
    ? { ...item, status: 'ready', finding: `Working channels: ${channels.join(', ')}`, toDo: null }
    : {
        ...item,
        status: 'not-ready',
        finding: 'No working channels',
        toDo: 'Enter the working channels allowed in these waters',
      };
}

/** Radio that changes its channel automatically leaves a required watch unnoticed: US Coast Guard safety alert of 2010. */
function watchItem({ tuning, watched }: StationSettings): SetupItem {
  const item = {
    subject: 'watch',
    clause: 'US Coast Guard safety alert of 2010 on automatic channel switching; ITU-R M.493 considering j)',
  } as const;
  const list = watched.join(', ');
  if (tuning === 'by-hand') {
    const finding =
      watched.length === 0 ? 'Channel is changed by hand' : `Channel is changed by hand, watch on ${list}`;
    return { ...item, status: 'ready', finding, toDo: null };
  }
  return watched.length === 0
    ? {
        ...item,
        status: 'unknown',
        finding: 'A DSC call can change the channel automatically',
        toDo: 'If a watch on another channel is required (bridge-to-bridge, vessel traffic), list it as watched and change channel by hand',
      }
    : {
        ...item,
        status: 'not-ready',
        finding: `A DSC call can take the radio off watched channel ${list} unnoticed`,
        toDo: 'Change channel by hand, or keep the watch on a second receiver',
      };
}

function testItem({ testAnsweredAt, now }: SetupObservations): SetupItem {
  const item = { subject: 'test-call', clause: clause.enquiry } as const;
  if (testAnsweredAt === null) {
    return {
      ...item,
      status: 'unknown',
      finding: 'No test call has been answered yet',
      toDo: 'Send a test call to a coast station that answers them, or to a friend. Never test with a distress alert',
    };
  }
  const days = Math.floor((now - testAnsweredAt) / 86_400_000);
  if (days < 0) {
    return {
      ...item,
      status: 'not-ready',
      finding: 'The last test-call reply is dated in the future',
      toDo: 'Set the clock to UTC and test again',
    };
  }
  return {
    ...item,
    status: 'ready',
    finding: `The last test call was answered ${days} days ago`,
    toDo: null,
  };
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
        toDo: 'Check the wiring, the baud rate and the sentences that the plotter accepts',
      }
    : {
        ...item,
        status: 'unknown',
        finding: 'Position reply to the plotter not tested',
        toDo: 'Request the position of a friend and check that it appears on the plotter',
      };
}
