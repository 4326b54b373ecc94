import { checkIdentity, parseIdentity } from '../identity/index.ts';
import type { Issue } from '../result/index.ts';
import { want } from '../result/internal.ts';
import { clause } from './model/clause.ts';
import type { StationSettings } from './model/settings.ts';
import type { StationState } from './model/state.ts';
import { lengthOf } from './model/timer.ts';
import { setupIssue as found, type StationText, toDo } from './texts.ts';

/**
 * Whether a station is ready for use, point by point.
 *
 * It judges only what it is given: aerial, power and licence are for a person to check.
 *
 * @param settings - the station's settings
 * @param observations - what was seen
 * @returns one item for each subject, always all of them and in the same order; `message` is what was found
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
): readonly (Issue & {
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
  /** What to do; `null` if nothing. */
  readonly toDo: StationText | null;
})[] {
  want('checkSetup', 'the settings of a station', settings, 'timers');
  want('checkSetup', 'what was observed', observations, 'now');
  const { mmsi, equipment, groups, channels, timers } = settings;
  const { now, fix, time, testAnsweredAt, replyOnPlotter } = observations;
  return [
    {
      subject: 'identity',
      ...identityFound(mmsi, equipment),
      at: ['mmsi'],
      clause: 'ITU-R M.585-10; ITU-R M.493-16, self-identification',
    },
    { subject: 'position', ...positionFound(fix, now, timers), at: ['fix'], clause: clause.position },
    { subject: 'time', ...timeFound(time, now), at: ['time'], clause: clause.position },
    {
      subject: 'groups',
      ...groupsFound(groups, mmsi),
      clause: 'ITU-R M.585-10, group ship station call identities',
    },
    {
      subject: 'channels',
      ...(channels.length > 0
        ? ready(found('station-setup-channels', { channels }))
        : notReady(found('station-setup-channels-missing', {}), toDo('station-do-enter-channels', {}))),
      at: ['channels'],
      clause: 'Radio Regulations Appendix 18',
    },
    {
      subject: 'watch',
      ...watchFound(settings),
      at: ['watched'],
      clause:
        'US Coast Guard safety alert of 2010 on automatic channel switching; ITU-R M.493 considering j)',
    },
    {
      subject: 'test-call',
      ...testFound(testAnsweredAt, now),
      at: ['testAnsweredAt'],
      clause: clause.enquiry,
    },
    {
      subject: 'plotter',
      ...plotterFound(replyOnPlotter),
      at: ['replyOnPlotter'],
      clause: 'IEC 61162-1, sentences DSC and DSE',
    },
  ];
}

type Finding = Omit<ReturnType<typeof checkSetup>[number], 'subject'>;

function ready(issue: Issue): Finding {
  return { ...issue, status: 'ready', toDo: null };
}

function notReady(issue: Issue, todo: StationText): Finding {
  return { ...issue, status: 'not-ready', toDo: todo };
}

function unknown(issue: Issue, todo: StationText): Finding {
  return { ...issue, status: 'unknown', toDo: todo };
}

function identityFound(mmsi: string | null, equipment: StationSettings['equipment']): Finding {
  if (mmsi === null)
    return notReady(found('station-setup-identity-missing', {}), toDo('station-do-enter-identity', {}));
  const parsed = parseIdentity(mmsi);
  const station = equipment === 'coast' ? 'coast' : equipment === 'H' ? 'handheld' : 'fixed';
  const [doubt] = parsed.ok ? checkIdentity(parsed.value, { use: 'own', station }) : parsed.issues;
  // A man-overboard device has an identity of a form of its own.
  const fitsDevice = parsed.ok && (equipment === 'M') === (parsed.value.kind === 'mob');
  if (fitsDevice && (doubt === undefined || equipment === 'M'))
    return ready(found('station-setup-identity', { mmsi }));
  return notReady(
    doubt ?? found('station-setup-identity-form', { mmsi }),
    toDo('station-do-compare-identity', {}),
  );
}

function positionFound(fix: StationState['fix'], now: number, timers: StationSettings['timers']): Finding {
  if (fix === null)
    return notReady(found('station-setup-position-missing', {}), toDo('station-do-give-position', {}));
  const { source } = fix;
  const age = now - fix.at;
  if (age < 0)
    return notReady(found('station-setup-position-future', {}), toDo('station-do-set-clock-or-position', {}));
  if (source === 'instrument' && age < 60_000) return ready(found('station-setup-position', {}));
  const minutes = Math.floor(age / 60_000);
  if (source === 'instrument' || age >= lengthOf('position-warning', timers)) {
    const old = found('station-setup-position-old', { minutes, source });
    return notReady(old, toDo('station-do-renew-position', {}));
  }
  return {
    ...ready(found('station-setup-position-by-hand', { minutes })),
    toDo: toDo('station-do-enter-position-again', {}),
  };
}

function timeFound(time: number | null, now: number): Finding {
  if (time === null)
    return notReady(found('station-setup-time-missing', {}), toDo('station-do-give-time', {}));
  const seconds = Math.round(Math.abs(time - now) / 1000);
  return seconds <= 60
    ? ready(found('station-setup-time', {}))
    : notReady(found('station-setup-time-wrong', { seconds }), toDo('station-do-set-clock', {}));
}

function groupsFound(groups: readonly string[], mmsi: string | null): Finding {
  for (const [index, group] of groups.entries()) {
    const parsed = parseIdentity(group);
    const [wrong] = parsed.ok
      ? checkIdentity(parsed.value, { use: 'group', ...(mmsi !== null && { own: mmsi }) })
      : parsed.issues;
    if (wrong !== undefined)
      return notReady({ ...wrong, at: ['groups', index] }, toDo('station-do-correct-group', { group }));
  }
  const at = { at: ['groups'] };
  return ready(
    groups.length === 0
      ? found('station-setup-no-groups', {}, at)
      : found('station-setup-groups', { groups }, at),
  );
}

/** Radio that changes its channel automatically leaves a required watch unnoticed: US Coast Guard safety alert of 2010. */
function watchFound({ tuning, watched }: StationSettings): Finding {
  const list = watched.length === 0 ? {} : { watched };
  if (tuning === 'by-hand') return ready(found('station-setup-by-hand', list));
  return watched.length === 0
    ? unknown(found('station-setup-channel-change', {}), toDo('station-do-list-watch', {}))
    : notReady(found('station-setup-watch-at-risk', { watched }), toDo('station-do-change-by-hand', {}));
}

function testFound(testAnsweredAt: number | null, now: number): Finding {
  if (testAnsweredAt === null)
    return unknown(found('station-setup-test-missing', {}), toDo('station-do-test', {}));
  const days = Math.floor((now - testAnsweredAt) / 86_400_000);
  return days < 0
    ? notReady(found('station-setup-test-future', {}), toDo('station-do-test-again', {}))
    : ready(found('station-setup-tested', { days }));
}

function plotterFound(replyOnPlotter: boolean | null): Finding {
  if (replyOnPlotter === true) return ready(found('station-setup-plotter', {}));
  return replyOnPlotter === false
    ? notReady(found('station-setup-plotter-failed', {}), toDo('station-do-check-plotter', {}))
    : unknown(found('station-setup-plotter-untested', {}), toDo('station-do-try-plotter', {}));
}
