import { checkIdentity, parseIdentity } from '../identity/index.ts';
import type { Issue } from '../result/index.ts';
import { clause } from './model/clause.ts';
import type { StationSettings } from './model/settings.ts';
import type { StationState } from './model/state.ts';
import { lengthOf } from './model/timer.ts';
import { setupIssue as found, type StationText, toDo } from './texts.ts';

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

type Subject = SetupItem['subject'];

function ready(subject: Subject, issue: Issue): SetupItem {
  return { ...issue, subject, status: 'ready', toDo: null };
}

function notReady(subject: Subject, issue: Issue, todo: StationText): SetupItem {
  return { ...issue, subject, status: 'not-ready', toDo: todo };
}

function unknown(subject: Subject, issue: Issue, todo: StationText): SetupItem {
  return { ...issue, subject, status: 'unknown', toDo: todo };
}

function identityItem({ mmsi, equipment }: StationSettings): SetupItem {
  const subject = 'identity';
  const more = { at: ['mmsi'], clause: 'ITU-R M.585-10; ITU-R M.493-16, self-identification' };
  if (mmsi === null) {
    return notReady(
      subject,
      found('station-setup-identity-missing', {}, more),
      toDo('station-do-enter-identity', {}),
    );
  }
  const parsed = parseIdentity(mmsi);
  const station = equipment === 'coast' ? 'coast' : equipment === 'H' ? 'handheld' : 'fixed';
  const [doubt] = parsed.ok ? checkIdentity(parsed.value, { use: 'own', station }) : parsed.issues;
  // A man-overboard device has an identity of a form of its own.
  const fitsDevice = parsed.ok && (equipment === 'M') === (parsed.value.kind === 'mob');
  if (fitsDevice && (doubt === undefined || equipment === 'M'))
    return ready(subject, found('station-setup-identity', { mmsi }, more));
  return notReady(
    subject,
    doubt === undefined ? found('station-setup-identity-form', { mmsi }, more) : { ...doubt, ...more },
    toDo('station-do-compare-identity', {}),
  );
}

function positionItem({ timers }: StationSettings, { now, fix }: SetupObservations): SetupItem {
  const subject = 'position';
  const more = { at: ['fix'], clause: clause.position };
  if (fix === null) {
    return notReady(
      subject,
      found('station-setup-position-missing', {}, more),
      toDo('station-do-give-position', {}),
    );
  }
  const { source } = fix;
  const age = now - fix.at;
  if (age < 0) {
    return notReady(
      subject,
      found('station-setup-position-future', {}, more),
      toDo('station-do-set-clock-or-position', {}),
    );
  }
  if (source === 'instrument' && age < 60_000)
    return ready(subject, found('station-setup-position', {}, more));
  const minutes = Math.floor(age / 60_000);
  if (source === 'instrument' || age >= lengthOf('position-warning', timers)) {
    return notReady(
      subject,
      found('station-setup-position-old', { minutes, source }, more),
      toDo('station-do-renew-position', {}),
    );
  }
  return {
    ...ready(subject, found('station-setup-position-by-hand', { minutes }, more)),
    toDo: toDo('station-do-enter-position-again', {}),
  };
}

function timeItem({ now, time }: SetupObservations): SetupItem {
  const subject = 'time';
  const more = { at: ['time'], clause: clause.position };
  if (time === null)
    return notReady(subject, found('station-setup-time-missing', {}, more), toDo('station-do-give-time', {}));
  const seconds = Math.round(Math.abs(time - now) / 1000);
  return seconds <= 60
    ? ready(subject, found('station-setup-time', {}, more))
    : notReady(
        subject,
        found('station-setup-time-wrong', { seconds }, more),
        toDo('station-do-set-clock', {}),
      );
}

function groupsItem({ groups, mmsi }: StationSettings): SetupItem {
  const subject = 'groups';
  const source = 'ITU-R M.585-10, group ship station call identities';
  for (const [index, group] of groups.entries()) {
    const parsed = parseIdentity(group);
    const [wrong] = parsed.ok
      ? checkIdentity(parsed.value, { use: 'group', ...(mmsi !== null && { own: mmsi }) })
      : parsed.issues;
    if (wrong !== undefined) {
      return notReady(
        subject,
        { ...wrong, at: ['groups', index], clause: source },
        toDo('station-do-correct-group', { group }),
      );
    }
  }
  const more = { at: ['groups'], clause: source };
  return ready(
    subject,
    groups.length === 0
      ? found('station-setup-no-groups', {}, more)
      : found('station-setup-groups', { groups }, more),
  );
}

function channelsItem({ channels }: StationSettings): SetupItem {
  const subject = 'channels';
  const more = { at: ['channels'], clause: 'Radio Regulations Appendix 18' };
  return channels.length > 0
    ? ready(subject, found('station-setup-channels', { channels }, more))
    : notReady(
        subject,
        found('station-setup-channels-missing', {}, more),
        toDo('station-do-enter-channels', {}),
      );
}

/** Radio that changes its channel automatically leaves a required watch unnoticed: US Coast Guard safety alert of 2010. */
function watchItem({ tuning, watched }: StationSettings): SetupItem {
  const subject = 'watch';
  const more = {
    at: ['watched'],
    clause: 'US Coast Guard safety alert of 2010 on automatic channel switching; ITU-R M.493 considering j)',
  };
  const list = watched.length === 0 ? {} : { watched };
  if (tuning === 'by-hand') return ready(subject, found('station-setup-by-hand', list, more));
  return watched.length === 0
    ? unknown(subject, found('station-setup-channel-change', {}, more), toDo('station-do-list-watch', {}))
    : notReady(
        subject,
        found('station-setup-watch-at-risk', { watched }, more),
        toDo('station-do-change-by-hand', {}),
      );
}

function testItem({ testAnsweredAt, now }: SetupObservations): SetupItem {
  const subject = 'test-call';
  const more = { at: ['testAnsweredAt'], clause: clause.enquiry };
  if (testAnsweredAt === null)
    return unknown(subject, found('station-setup-test-missing', {}, more), toDo('station-do-test', {}));
  const days = Math.floor((now - testAnsweredAt) / 86_400_000);
  return days < 0
    ? notReady(subject, found('station-setup-test-future', {}, more), toDo('station-do-test-again', {}))
    : ready(subject, found('station-setup-tested', { days }, more));
}

function plotterItem({ replyOnPlotter }: SetupObservations): SetupItem {
  const subject = 'plotter';
  const more = { at: ['replyOnPlotter'], clause: 'IEC 61162-1, sentences DSC and DSE' };
  if (replyOnPlotter === true) return ready(subject, found('station-setup-plotter', {}, more));
  return replyOnPlotter === false
    ? notReady(subject, found('station-setup-plotter-failed', {}, more), toDo('station-do-check-plotter', {}))
    : unknown(subject, found('station-setup-plotter-untested', {}, more), toDo('station-do-try-plotter', {}));
}
