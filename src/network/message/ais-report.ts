import type { AisReport } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import type { Quantity } from '../field/field.ts';
import { plainText, readVariableText } from '../field/text.ts';
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
import { NAVIGATIONAL_STATUSES } from './navigational-status.ts';
import { fieldNotice } from './notice.ts';
import { decodePayload } from './payload.ts';
import { degreesOf, instantOf, knotsOf, known } from './quantity.ts';

/** An AIS report as a transponder passes it on. */
export interface NetworkAis {
  readonly report: AisReport;
  /** Whether the own transponder says it of its own vessel. */
  readonly own: boolean;
  readonly channel: 'A' | 'B' | null;
  readonly notices: readonly Notice[];
}

type Draft = { -readonly [Key in keyof AisReport]: AisReport[Key] };

interface Head {
  readonly message: number | null;
  readonly mmsi: number | null;
  readonly transceiver: number | null;
}

interface Place {
  readonly latitude: Quantity;
  readonly longitude: Quantity;
  readonly accuracy: number | null;
}

interface Motion {
  readonly course: Quantity;
  readonly speed: Quantity;
  readonly heading?: Quantity;
}

/** The parameter groups that {@link readAisReport} reads. */
export const AIS_REPORT_GROUPS: readonly number[] = [
  AIS_CLASS_A.pgn,
  AIS_CLASS_B.pgn,
  AIS_CLASS_B_EXTENDED.pgn,
  AIS_AID.pgn,
  AIS_TIME.pgn,
  AIS_STATIC_A.pgn,
  AIS_AIRCRAFT.pgn,
  AIS_STATIC_B_NAME.pgn,
  AIS_STATIC_B_DATA.pgn,
];

/**
 * Reads an AIS parameter group into the report that AIS sentences give; `null` for another group, or when the
 * message ends before the identity.
 */
export function readAisReport(pgn: number, payload: Uint8Array): NetworkAis | null {
  switch (pgn) {
    case AIS_CLASS_A.pgn: {
      const { values } = decodePayload(AIS_CLASS_A, payload);
      return report(pgn, values, 'ship-class-a', (draft, notices) => {
        const status = NAVIGATIONAL_STATUSES[values.status ?? 15];
        if (/^97[024]/.test(draft.mmsi)) draft.station = 'locating-device';
        if (status !== undefined) draft.status = status;
        readMotion(draft, values);
        readPlace(draft, pgn, values, notices, values.second);
      });
    }
    case AIS_CLASS_B.pgn: {
      const { values } = decodePayload(AIS_CLASS_B, payload);
      return report(pgn, values, 'ship-class-b', (draft, notices) => {
        readMotion(draft, values);
        readPlace(draft, pgn, values, notices, values.second);
      });
    }
    case AIS_CLASS_B_EXTENDED.pgn: {
      const { values } = decodePayload(AIS_CLASS_B_EXTENDED, payload);
      return report(pgn, values, 'ship-class-b', (draft, notices) => {
        readMotion(draft, values);
        readPlace(draft, pgn, values, notices, values.second);
        readStatic(draft, { name: values.name, type: values.type });
      });
    }
    case AIS_AID.pgn: {
      const { values } = decodePayload(AIS_AID, payload);
      return report(pgn, values, 'aid-to-navigation', (draft, notices) => {
        readPlace(draft, pgn, values, notices, values.second);
        const { text } = readVariableText(values.name);
        readStatic(draft, { name: text ?? '', type: values.type });
        if (values.offPosition !== null) draft.offPosition = values.offPosition === 1;
        if (values.virtual !== null) draft.virtual = values.virtual === 1;
      });
    }
    case AIS_TIME.pgn: {
      const { values } = decodePayload(AIS_TIME, payload);
      return report(pgn, values, values.message === 11 ? 'ship' : 'base-station', (draft, notices) => {
        const instant = instantOf(values.date, values.time);
        if (instant !== null) draft.instant = instant;
        readPlace(draft, pgn, values, notices);
      });
    }
    case AIS_STATIC_A.pgn: {
      const { values } = decodePayload(AIS_STATIC_A, payload);
      return report(pgn, values, 'ship-class-a', (draft) => {
        const imo = values.imo ?? 0;
        if (imo >= 1_000_000 && imo <= 9_999_999) draft.imo = String(imo);
        readStatic(draft, values);
      });
    }
    case AIS_AIRCRAFT.pgn: {
      const { values } = decodePayload(AIS_AIRCRAFT, payload);
      return report(pgn, values, 'rescue-aircraft', (draft, notices) => {
        const altitude = known(values.altitude);
        if (altitude !== undefined) draft.altitude = altitude;
        readMotion(draft, values);
        readPlace(draft, pgn, values, notices, values.second);
      });
    }
    case AIS_STATIC_B_NAME.pgn: {
      const { values } = decodePayload(AIS_STATIC_B_NAME, payload);
      return report(pgn, values, 'ship-class-b', (draft) => readStatic(draft, values));
    }
    case AIS_STATIC_B_DATA.pgn: {
      const { values } = decodePayload(AIS_STATIC_B_DATA, payload);
      return report(pgn, values, 'ship-class-b', (draft) => readStatic(draft, values));
    }
    default:
      return null;
  }
}

function report(
  pgn: number,
  { message, mmsi, transceiver }: Head,
  station: AisReport['station'],
  fill: (draft: Draft, notices: Notice[]) => void,
): NetworkAis | null {
  if (message === null || mmsi === null) return null;
  const notices: Notice[] = [];
  const draft: Draft = { message, mmsi: String(mmsi).padStart(9, '0'), station };
  if (mmsi > 999_999_999) {
    notices.push(fieldNotice('network-ais-identity', { pgn, field: 'User ID' }, String(mmsi)));
  }
  fill(draft, notices);
  return {
    report: draft,
    // 2 and 3: sent on channel A or B by the own transponder; 4: its own data, not broadcast.
    own: transceiver !== null && transceiver >= 2 && transceiver <= 4,
    channel:
      transceiver === 0 || transceiver === 2 ? 'A' : transceiver === 1 || transceiver === 3 ? 'B' : null,
    notices,
  };
}

function readPlace(
  draft: Draft,
  pgn: number,
  { latitude, longitude, accuracy }: Place,
  notices: Notice[],
  second: number | null = null,
): void {
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return;
  // 91 and 181 degrees mean that there is no position (ITU-R M.1371).
  if (latitude === 91 || longitude === 181) return;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
    notices.push(
      fieldNotice('network-position-range', { pgn, field: 'Latitude' }, `${latitude} ${longitude}`),
    );
    return;
  }
  draft.position = { latitude, longitude };
  if (accuracy !== null) draft.accurate = accuracy === 1;
  if (second !== null && second < 60) draft.second = second;
}

function readMotion(draft: Draft, { course, speed, heading }: Motion): void {
  const [over, ground, head] = [known(course), known(speed), known(heading)];
  if (ground !== undefined) draft.speed = tenth(knotsOf(ground));
  if (over !== undefined) draft.course = tenth(degreesOf(over)) % 360;
  if (head !== undefined) draft.heading = Math.round(degreesOf(head)) % 360;
}

/** AIS has tenths of a knot and of a degree: further digits from the network's units are rounding. */
function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

function readStatic(
  draft: Draft,
  {
    name,
    callSign,
    type,
  }: { readonly name?: string; readonly callSign?: string; readonly type?: number | null },
): void {
  const [plainName, plainSign] = [plainText(name ?? ''), plainText(callSign ?? '')];
  if (plainName !== null) draft.name = plainName;
  if (plainSign !== null) draft.callSign = plainSign;
  if (type !== undefined && type !== null && type > 0 && type < 255) draft.type = type;
}
