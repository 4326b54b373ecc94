import {
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  type NatureOfDistress,
  type Reason,
} from 'seahail/call';
import { parseIdentity } from 'seahail/identity';
import {
  type Coordinates,
  type GeographicArea,
  parsePosition,
  type ReportedPosition,
  type TimeOfDay,
  toReportedPosition,
} from 'seahail/position';
import { failure, type Issue, type Result, success } from 'seahail/result';
import type { Question } from '../frame/finding.ts';
import { ownIssue } from '../frame/own-issue.ts';

/** The blanks that each kind of call fills beside its sender. */
export const blanksOf: Readonly<Record<string, readonly string[]>> = {
  'individual-call': ['to', 'category', 'channel'],
  'group-call': ['to', 'category', 'channel'],
  'all-ships-call': ['category', 'channel'],
  'area-call': ['corner', 'category', 'channel'],
  'position-request': ['to'],
  'test-call': ['to'],
  'polling-call': ['to'],
  'individual-acknowledgement': ['to', 'channel'],
  'unable-to-comply': ['to', 'reason'],
  'position-reply': ['to', 'position'],
  'test-acknowledgement': ['to'],
  'polling-acknowledgement': ['to'],
  'distress-alert': ['nature', 'position'],
  'distress-acknowledgement': ['distressed', 'nature', 'position'],
  'distress-relay': ['to', 'distressed', 'nature', 'position'],
  'distress-relay-to-all': ['distressed', 'nature', 'position'],
  'distress-self-cancel': ['nature', 'position', 'alertsent'],
};

const [CLUB, COAST] = ['023299905', '002329990'];

/** What a blank usually holds, where the kind of call makes a difference. */
export function usualFor({ kind }: Question): Question {
  switch (kind) {
    case 'group-call':
      return { to: CLUB };
    case 'distress-relay':
      return { to: COAST };
    case 'all-ships-call':
    case 'area-call':
      return { category: 'safety', channel: '16' };
    default:
      return {};
  }
}

/** Calls to all ships and to areas are for urgency and safety: ITU-R M.493-16, tables of compositions. */
export function hasRoutine({ kind }: Question): boolean {
  return kind !== 'all-ships-call' && kind !== 'area-call';
}

/** The call that the filled blanks describe; each issue is `at` its blank. */
export function composeFrom(question: Question): Result<Call> {
  const issues: Issue[] = [];
  const blanks = blanksOf[question['kind'] ?? ''] ?? [];
  const taken = <T>(name: string, result: Result<T>): T | undefined => {
    if (result.ok) return result.value;
    issues.push(...result.issues.map((issue) => ({ ...issue, at: [name, ...issue.at] })));
    return undefined;
  };
  const identity = (name: string): string =>
    (name === 'from' || blanks.includes(name)
      ? taken(name, parseIdentity(question[name]))?.mmsi
      : undefined) ?? '';

  const parties = { from: identity('from'), to: identity('to'), distressed: identity('distressed') };
  const place = blanks.includes('position') ? taken('position', positionFrom(question)) : undefined;
  if (blanks.includes('alertsent')) taken('alertsent', timeFrom(question['alertsent'] ?? ''));
  const time = blanks.includes('position') ? taken('time', timeFrom(question['time'] ?? '')) : undefined;
  const area = blanks.includes('corner') ? taken('corner', areaFrom(question)) : undefined;
  const [first, ...others] = issues;
  if (first !== undefined) return failure(first, ...others);
  try {
    return success(composed(question, parties, { position: place ?? null, time: time ?? null }, area));
  } catch (error) {
    if (!(error instanceof RangeError || error instanceof TypeError)) throw error;
    return failure(ownIssue('call-value', error.message, { clause: 'ITU-R M.493-16 Annex 1' }));
  }
}

interface Where {
  readonly position: ReportedPosition | null;
  readonly time: TimeOfDay | null;
}

function composed(
  question: Question,
  { from, to, distressed }: { readonly from: string; readonly to: string; readonly distressed: string },
  where: Where,
  area: GeographicArea | undefined,
): Call {
  const channel = question['channel'] ?? '';
  const category = question['category'] as 'safety' | 'urgency';
  const nature = question['nature'] as NatureOfDistress;
  switch (question['kind']) {
    case 'group-call':
      return composeGroupCall({ from, to, category, channel });
    case 'all-ships-call':
      return composeAllShipsCall({ from, category, channel });
    case 'area-call':
      return composeAreaCall({ from, area: area as GeographicArea, category, channel });
    case 'position-request':
      return composePositionRequest({ from, to });
    case 'test-call':
      return composeTestCall({ from, to });
    case 'polling-call':
      return composePollingCall({ from, to });
    case 'individual-acknowledgement':
      return composeIndividualAcknowledgement({
        call: composeIndividualCall({ from: to, to: from, channel }),
      });
    case 'unable-to-comply':
      return composeUnableToComply({
        call: composeIndividualCall({ from: to, to: from }),
        reason: question['reason'] as Reason,
      });
    case 'position-reply':
      return composePositionReply({ call: composePositionRequest({ from: to, to: from }), ...where });
    case 'test-acknowledgement':
      return composeTestAcknowledgement({ call: composeTestCall({ from: to, to: from }) });
    case 'polling-acknowledgement':
      return composePollingAcknowledgement({ call: composePollingCall({ from: to, to: from }) });
    case 'distress-alert':
      return composeDistressAlert({ from, nature, ...where });
    case 'distress-acknowledgement':
      return composeDistressAcknowledgement({ from, distressed, nature, ...where });
    case 'distress-relay':
      return composeDistressRelay({ from, to, distressed, nature, ...where });
    case 'distress-relay-to-all':
      return composeDistressRelay({ from, distressed, nature, ...where });
    case 'distress-self-cancel':
      return composeDistressSelfCancel({ from, nature, ...where });
    default:
      // A coast station is called without a channel: it names one itself.
      return composeIndividualCall({ from, to, category, channel: channel.trim() === '' ? null : channel });
  }
}

function positionFrom(question: Question): Result<ReportedPosition | null> {
  const text = question['position'] ?? '';
  if (text.trim() === '') return success(null);
  const read = parsePosition(text);
  return read.ok ? success(toReportedPosition(read.value, { enhanced: question['finer'] === 'yes' })) : read;
}

/** UTC at which the alert to cancel was sent, for its cancellation by voice; `null` where it was not typed. */
export function alertTimeFrom(question: Question): TimeOfDay | null {
  const read = timeFrom(question['alertsent'] ?? '');
  return read.ok ? read.value : null;
}

function timeFrom(text: string): Result<TimeOfDay | null> {
  if (text.trim() === '') return success(null);
  const [, hour, minute] = /^\s*(\d{1,2})[:. h]?(\d{2})\s*$/.exec(text) ?? [];
  if (hour !== undefined && Number(hour) < 24 && Number(minute) < 60) {
    return success({ hour: Number(hour), minute: Number(minute) });
  }
  const message = `'${text.slice(0, 20)}' is not a time of day, expected hours and minutes`;
  return failure(ownIssue('time-of-day', message, { expected: '14:32' }));
}

function areaFrom(question: Question): Result<GeographicArea> {
  const corner = parsePosition(question['corner']);
  if (!corner.ok) return corner;
  const [southward, eastward] = [Number(question['south']), Number(question['east'])];
  const sides = [southward, eastward].every((side) => Number.isInteger(side) && side >= 0 && side <= 99);
  if (!sides || !wholeDegrees(corner.value)) {
    return failure(
      ownIssue(
        'area-degrees',
        'Area is not in whole degrees: expected a corner in whole degrees and sides of 0 to 99',
        { clause: 'ITU-R M.493, geographic area address' },
      ),
    );
  }
  const { latitude, longitude } = corner.value;
  return success({
    kind: 'geographic-area',
    north: { hemisphere: latitude < 0 ? 'S' : 'N', degrees: Math.abs(latitude) },
    west: { hemisphere: longitude < 0 ? 'W' : 'E', degrees: Math.abs(longitude) },
    southward,
    eastward,
  });
}

function wholeDegrees({ latitude, longitude }: Coordinates): boolean {
  return Number.isInteger(latitude) && Number.isInteger(longitude);
}
