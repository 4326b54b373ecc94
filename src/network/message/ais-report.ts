import type { AisReport } from '../../report/index.ts';
import { STATUSES } from '../../report/internal.ts';
import type { Notice } from '../../result/index.ts';
import type { ParameterField, ValuesOf } from '../field/field.ts';
import { plainText, readVariableText } from '../field/text.ts';
import { fieldNotice } from '../texts.ts';
import {
  AIS_AID,
  AIS_AIRCRAFT,
  AIS_CLASS_A,
  AIS_CLASS_B,
  AIS_CLASS_B_EXTENDED,
  AIS_STATIC_A,
  AIS_STATIC_B_DATA,
  AIS_STATIC_B_NAME,
  AIS_TIME,
} from './layout.ts';
import { decodePayload } from './payload.ts';
import { degreesOf, instantOf, knotsOf, known } from './quantity.ts';

/** An AIS report as a transponder passes it on. */
interface NetworkAis {
  readonly report: AisReport;
  /** Whether the own transponder says it of its own vessel. */
  readonly own: boolean;
  readonly channel: 'A' | 'B' | null;
  readonly notices: readonly Notice[];
}

type Draft = { -readonly [Key in keyof AisReport]: AisReport[Key] };

/** The parameter groups that carry AIS reports, each with the station it is sent of. */
const GROUPS = [
  [AIS_CLASS_A, 'ship-class-a'],
  [AIS_CLASS_B, 'ship-class-b'],
  [AIS_CLASS_B_EXTENDED, 'ship-class-b'],
  [AIS_AID, 'aid-to-navigation'],
  [AIS_TIME, 'base-station'],
  [AIS_STATIC_A, 'ship-class-a'],
  [AIS_AIRCRAFT, 'rescue-aircraft'],
  [AIS_STATIC_B_NAME, 'ship-class-b'],
  [AIS_STATIC_B_DATA, 'ship-class-b'],
] as const;

/** The fields of any of these groups; those of the others are not there. */
type Values = { readonly [Name in NameIn<AnyValues>]?: ValueIn<AnyValues, Name> };
type AnyValues = ValuesIn<(typeof GROUPS)[number][0]['fields']>;
type ValuesIn<Fields> = Fields extends readonly ParameterField[] ? ValuesOf<Fields> : never;
type NameIn<Any> = Any extends unknown ? keyof Any : never;
type ValueIn<Any, Name extends PropertyKey> = Any extends { readonly [Each in Name]: infer Value }
  ? Value
  : never;

/** The parameter groups that {@link readAisReport} reads. */
export const AIS_REPORT_GROUPS: readonly number[] = /* @__PURE__ */ GROUPS.map(([{ pgn }]) => pgn);

/**
 * Reads an AIS parameter group into the report that AIS sentences give; `null` for another group, or when the
 * message ends before the identity.
 */
export function readAisReport(pgn: number, payload: Uint8Array): NetworkAis | null {
  const group = GROUPS.find(([layout]) => layout.pgn === pgn);
  if (group === undefined) return null;
  const values = decodePayload<readonly ParameterField[]>(group[0], payload).values as Values;
  const { message = null, mmsi = null, transceiver = null } = values;
  if (message === null || mmsi === null) return null;
  const notices: Notice[] = [];
  const draft: Draft = { message, mmsi: String(mmsi).padStart(9, '0'), station: group[1] };
  if (pgn === AIS_TIME.pgn && message === 11) draft.station = 'ship';
  if (mmsi > 999_999_999) {
    notices.push(fieldNotice('network-ais-identity', { pgn, field: 'User ID' }, String(mmsi)));
  }
  if (pgn === AIS_CLASS_A.pgn) {
    const status = STATUSES.get(values.status ?? 15);
    if (/^97[024]/.test(draft.mmsi)) draft.station = 'locating-device';
    if (status !== undefined) draft.status = status;
  }
  readStatic(draft, pgn, values);
  readMotion(draft, values);
  readPlace(draft, pgn, values, notices);
  return {
    report: draft,
    // 2 and 3: sent on channel A or B by the own transponder; 4: its own data, not broadcast.
    own: transceiver !== null && transceiver >= 2 && transceiver <= 4,
    channel:
      transceiver === 0 || transceiver === 2 ? 'A' : transceiver === 1 || transceiver === 3 ? 'B' : null,
    notices,
  };
}

/** What does not change while she moves, and the time of a base station. */
function readStatic(draft: Draft, pgn: number, values: Values): void {
  const { name = '', callSign = '', type, imo, offPosition, virtual, altitude, date, time } = values;
  const instant = pgn === AIS_TIME.pgn ? instantOf(date ?? null, time ?? null) : null;
  if (instant !== null) draft.instant = instant;
  if (imo != null && imo >= 1_000_000 && imo <= 9_999_999) draft.imo = String(imo);
  const metres = known(altitude);
  if (metres !== undefined) draft.altitude = metres;
  const plainName = plainText(pgn === AIS_AID.pgn ? (readVariableText(name).text ?? '') : name);
  const plainSign = plainText(callSign);
  if (plainName !== null) draft.name = plainName;
  if (plainSign !== null) draft.callSign = plainSign;
  if (type != null && type > 0 && type < 255) draft.type = type;
  if (offPosition != null) draft.offPosition = offPosition === 1;
  if (virtual != null) draft.virtual = virtual === 1;
}

function readMotion(draft: Draft, { course, speed, heading }: Values): void {
  const [over, ground, head] = [known(course), known(speed), known(heading)];
  if (ground !== undefined) draft.speed = tenth(knotsOf(ground));
  if (over !== undefined) draft.course = tenth(degreesOf(over)) % 360;
  if (head !== undefined) draft.heading = Math.round(degreesOf(head)) % 360;
}

/** AIS has tenths of a knot and of a degree: further digits from the network's units are rounding. */
function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

function readPlace(draft: Draft, pgn: number, values: Values, notices: Notice[]): void {
  const { latitude, longitude, accuracy, second } = values;
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return;
  // 91 and 181 degrees mean that there is no position (ITU-R M.1371).
  if (latitude === 91 || longitude === 181) return;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
    const received = `${latitude} ${longitude}`;
    notices.push(fieldNotice('network-position-range', { pgn, field: 'Latitude' }, received));
    return;
  }
  draft.position = { latitude, longitude };
  if (accuracy != null) draft.accurate = accuracy === 1;
  if (second != null && second < 60) draft.second = second;
}
