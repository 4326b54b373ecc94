import type { Coordinates } from '../position/index.ts';

/**
 * What an AIS message says of a station, as far as it helps to know and to call it. What the message does
 * not carry, or marks as not available, is absent.
 */
export interface AisReport {
  /** Message number: 1–5, 9, 11, 18, 19, 21, 24 or 27. */
  readonly message: number;
  /** Nine digits. */
  readonly mmsi: string;
  readonly station:
    | 'ship-class-a'
    | 'ship-class-b'
    | 'ship'
    | 'base-station'
    | 'rescue-aircraft'
    | 'aid-to-navigation'
    | 'locating-device';
  readonly position?: Coordinates;
  /** Whether the position is good to 10 metres. */
  readonly accurate?: boolean;
  /** Speed over ground, knots. 102.2 means that much or more. */
  readonly speed?: number;
  /** Course over ground, degrees true, 0–359.9. */
  readonly course?: number;
  /** Degrees true, 0–359. */
  readonly heading?: number;
  readonly status?:
    | 'under-way-using-engine'
    | 'at-anchor'
    | 'not-under-command'
    | 'restricted-manoeuvrability'
    | 'constrained-by-draught'
    | 'moored'
    | 'aground'
    | 'fishing'
    | 'under-way-sailing'
    | 'towing-astern'
    | 'pushing-or-towing-alongside'
    | 'locating-device-active';
  readonly name?: string;
  readonly callSign?: string;
  /** Seven digits. */
  readonly imo?: string;
  /** Type of ship and cargo, 1–255, or type of aid to navigation, 1–31, as sent. */
  readonly type?: number;
  /** Metres above the sea, aircraft only. 4094 means that much or more. */
  readonly altitude?: number;
  /** UTC of a base station, or of a mobile station that was asked for it, epoch milliseconds. */
  readonly instant?: number;
  /** Second of the minute, UTC, when the position was true, 0–59. */
  readonly second?: number;
  /** Whether the aid to navigation exists only on displays. */
  readonly virtual?: boolean;
  /** Whether the aid to navigation is off its charted place. */
  readonly offPosition?: boolean;
}

export type NavigationalStatus = NonNullable<AisReport['status']>;

/** Navigational status by its number (ITU-R M.1371-6, message 1); 9, 10 and 13 are reserved, 15 is undefined. */
export const STATUS_CODES: Readonly<Record<NavigationalStatus, number>> = {
  'under-way-using-engine': 0,
  'at-anchor': 1,
  'not-under-command': 2,
  'restricted-manoeuvrability': 3,
  'constrained-by-draught': 4,
  moored: 5,
  aground: 6,
  fishing: 7,
  'under-way-sailing': 8,
  'towing-astern': 11,
  'pushing-or-towing-alongside': 12,
  'locating-device-active': 14,
};
/** The same by its number. */
export const STATUSES: ReadonlyMap<number, NavigationalStatus> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.keys(STATUS_CODES) as NavigationalStatus[]).map((name) => [
    STATUS_CODES[name],
    name,
  ]),
);

/**
 * The messages that carry a report: one, or two for a message 24 with the name and more, whose part A has the name alone
 * (ITU-R M.1371-6 Annex 7, message 24).
 *
 * @throws RangeError when the identity is not nine digits, or the IMO number not seven
 */
export function messagesOf(report: AisReport): readonly AisReport[] {
  const { message, mmsi, imo, name, ...more } = report;
  if (!/^\d{9}$/.test(mmsi)) throw new RangeError(`mmsi: expected nine digits, got ${mmsi}`);
  if (imo !== undefined && !/^\d{7}$/.test(imo))
    throw new RangeError(`imo: expected seven digits, got ${imo}`);
  const { callSign = '', type, ...motion } = more;
  if (message !== 24 || !name || (callSign === '' && type === undefined)) return [report];
  return [
    { message, mmsi, name, ...motion },
    { message, mmsi, ...more },
  ];
}
