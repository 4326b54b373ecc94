import type { GeographicArea, ReportedPosition, TimeOfDay } from '../position/index.ts';
import type { CallFields } from './fields.ts';
import type {
  Category,
  FirstTelecommand,
  NatureOfDistress,
  Reason,
  SecondTelecommand,
  UnknownSymbol,
} from './symbol.ts';

/** What each kind of address says. */
export interface CallAddresses {
  /** To one station. `mmsi` is `null` when the source did not say (a sentence on the called ship's own wire). */
  readonly station: {
    /** Nine digits. */
    readonly mmsi: string | null;
  };
  /** To a group of ships that share a group identity. */
  readonly group: {
    /** Nine digits, the first a 0. */
    readonly mmsi: string | null;
  };
  /** To all ships in a rectangle. */
  readonly area: { readonly area: GeographicArea | null };
  /** To all ships that hear it (format specifier 116). */
  readonly 'all-ships': object;
  /** To all stations that hear it: a distress alert carries no address (format specifier 112). */
  readonly 'all-stations': object;
}

/** Whom a call is for: `CallAddress<'station'>` is one kind, `CallAddress` any. */
export type CallAddress<Kind extends keyof CallAddresses = keyof CallAddresses> = {
  [K in Kind]: { readonly kind: K } & CallAddresses[K];
}[Kind];

/** What the expansion of ITU-R M.821 added, beside finer coordinates (those are part of the position). */
export interface ExpansionData {
  /** Knots, to a tenth. */
  readonly speed?: number;
  /** Degrees true, to a tenth, 0–359.9. */
  readonly course?: number;
  readonly personsOnBoard?: number;
  /** Six digits: source, resolution and datum of the fix, two each, as received. */
  readonly source?: string;
  /** Another identification of the station, as text. */
  readonly stationName?: string;
  /** Finer corner and sides of the area of an area call, and how the area moves (ITU-R M.821-1, set 105). */
  readonly area?: {
    /** Minutes beyond the whole degrees of the corner's latitude, to a hundredth, 0–59.99. */
    readonly latitude: number;
    /** Minutes beyond the whole degrees of the corner's longitude, to a hundredth, 0–59.99. */
    readonly longitude: number;
    /** Minutes beyond the whole degrees southward, to a hundredth, 0–59.99. */
    readonly southward: number;
    /** Minutes beyond the whole degrees eastward, to a hundredth, 0–59.99. */
    readonly eastward: number;
    /** Knots, to a tenth. */
    readonly speed: number;
    /** Degrees true, to a tenth, 0–359.9. */
    readonly course: number;
  };
  /** Specifiers of the data sets that were asked for instead of given, e.g. `[100]`. */
  readonly requested?: readonly number[];
  /** Specifiers of the data sets that the sender said it cannot give. */
  readonly unavailable?: readonly number[];
}

/** What a call about a distress says of it. */
export interface DistressDetails {
  readonly nature: NatureOfDistress | UnknownSymbol | null;
  /** Position of the vessel in distress, `null` when unknown. */
  readonly position: ReportedPosition | null;
  /** UTC of the position, `null` when unknown. */
  readonly time: TimeOfDay | null;
  /** Type of subsequent communication. */
  readonly subsequent: FirstTelecommand | UnknownSymbol | null;
}

/** What a call that announces traffic says of it. */
export interface TrafficDetails {
  readonly category: Category | UnknownSymbol | null;
  /** How the traffic that follows will be sent. */
  readonly firstTelecommand: FirstTelecommand | UnknownSymbol | null;
  /** `'medical-transport'`, `'neutral-craft'` or another second telecommand; `null` when none. */
  readonly secondTelecommand: SecondTelecommand | UnknownSymbol | null;
  /** Working VHF channel in ITU-R M.1084 digits, e.g. `'72'` or `'1022'`; `null` when none is named. */
  readonly channel: string | null;
  /** MF/HF elements, as the digits sent, when the call names no VHF channel but something else. */
  readonly frequencies?: { readonly receive: string | null; readonly transmit: string | null };
}

/** What each kind of call says. The tables are those of ITU-R M.493-16, from memory. */
export interface Calls {
  /** A vessel is in distress and announces it herself (table A1-4.1). */
  readonly 'distress-alert': DistressDetails & { readonly to: CallAddress<'all-stations'> };
  /** A coast station, as a rule, acknowledges an alert and so ends its repeats (table A1-4.2). */
  readonly 'distress-acknowledgement': DistressDetails & {
    readonly to: CallAddress<'all-ships'>;
    /** Nine digits of the vessel in distress, `null` when unknown. */
    readonly distressed: string | null;
  };
  /** The vessel that raised an alert cancels it: an acknowledgement of herself. */
  readonly 'distress-self-cancel': DistressDetails & {
    readonly to: CallAddress<'all-ships'>;
    /** Nine digits, the same as `from`. */
    readonly distressed: string | null;
  };
  /** An alert passed on for a vessel in distress (table A1-4.3). */
  readonly 'distress-relay': DistressDetails & {
    readonly to: CallAddress<'station' | 'all-ships' | 'area' | 'group'>;
    readonly distressed: string | null;
  };
  /** The answer to a relay (table A1-4.4). */
  readonly 'distress-relay-acknowledgement': DistressDetails & {
    readonly to: CallAddress<'station' | 'all-ships' | 'area' | 'group'>;
    readonly distressed: string | null;
  };
  /** Urgency or safety traffic announced to all ships (table A1-4.5). */
  readonly 'all-ships-call': TrafficDetails & { readonly to: CallAddress<'all-ships'> };
  /** Traffic announced to the ships in a rectangle (table A1-4.6). */
  readonly 'area-call': TrafficDetails & { readonly to: CallAddress<'area'> };
  /** A call to the members of a group (table A1-4.8). */
  readonly 'group-call': TrafficDetails & { readonly to: CallAddress<'group'> };
  /** A call to one station that asks for an answer (tables A1-4.7 and A1-4.9). */
  readonly 'individual-call': TrafficDetails & { readonly to: CallAddress<'station'> };
  /** The answer "able to comply", on the channel proposed or another. */
  readonly 'individual-acknowledgement': TrafficDetails & { readonly to: CallAddress<'station'> };
  /** The answer "unable to comply", with its reason. */
  readonly 'unable-to-comply': Pick<TrafficDetails, 'category' | 'channel' | 'frequencies'> & {
    readonly to: CallAddress<'station'>;
    readonly reason: Reason | SecondTelecommand | UnknownSymbol | null;
  };
  /** Where are you? The category is `'safety'` by the book; older sets send `'routine'`. */
  readonly 'position-request': Pick<TrafficDetails, 'category'> & { readonly to: CallAddress<'station'> };
  /** Here I am: the answer to a request, or a report that nobody asked for (`unsolicited`). */
  readonly 'position-reply': Pick<TrafficDetails, 'category'> & {
    readonly to: CallAddress<'station'>;
    /** `null` when the station has no fix. */
    readonly position: ReportedPosition | null;
    readonly time: TimeOfDay | null;
    /** True when the end of sequence is not that of an answer. */
    readonly unsolicited: boolean;
  };
  /** Does my set work? */
  readonly 'test-call': Pick<TrafficDetails, 'category'> & { readonly to: CallAddress<'station'> };
  /** The answer to a test call. */
  readonly 'test-acknowledgement': Pick<TrafficDetails, 'category'> & { readonly to: CallAddress<'station'> };
  /** Are you in range? */
  readonly 'polling-call': Pick<TrafficDetails, 'category'> & { readonly to: CallAddress<'station'> };
  /** The answer to polling. */
  readonly 'polling-acknowledgement': Pick<TrafficDetails, 'category'> & {
    readonly to: CallAddress<'station'>;
  };
  /** A call or answer of the semi-automatic or automatic telephone service (table A1-4.9, low confidence). */
  readonly 'automatic-service-call': TrafficDetails & {
    readonly to: CallAddress<'station'>;
    /** The digits dialled, or `null`. */
    readonly telephone: string | null;
    readonly end: 'request' | 'answer' | 'end';
  };
  /** Something was received that fits no kind above; `asReceived` holds all of it. */
  readonly 'unrecognised-call': { readonly to: CallAddress | null; readonly asReceived: CallFields };
}

/** The tag of each kind of call. */
export type CallKind = keyof Calls;

/**
 * Everything that is received becomes one of these, everything that is sent starts as one: `Call<'test-call'>` is one
 * kind, `Call` any.
 */
export type Call<Kind extends CallKind = CallKind> = {
  [K in Kind]: {
    readonly kind: K;
    /** Self-identification of the sender: nine digits, or `null` when the source did not carry it. */
    readonly from: string | null;
    /** What the expansion added, when there was one. */
    readonly expansion?: ExpansionData;
    /**
     * The fields exactly as received, present when composing this call again would give other symbols.
     * Encoding uses them as long as they still mean the same call.
     */
    readonly asReceived?: CallFields;
  } & Calls[K];
}[Kind];

/** The calls of ITU-R M.493-16 tables A1-4.1 to A1-4.4. */
export type DistressCall = Call<
  | 'distress-alert'
  | 'distress-acknowledgement'
  | 'distress-self-cancel'
  | 'distress-relay'
  | 'distress-relay-acknowledgement'
>;
