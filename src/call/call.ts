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

/** To one station. `mmsi` is `null` when the source did not say (a sentence on the called ship's own wire). */
export interface StationAddress {
  readonly kind: 'station';
  /** Nine digits. */
  readonly mmsi: string | null;
}

/** To a group of ships that share a group identity. */
export interface GroupAddress {
  readonly kind: 'group';
  /** Nine digits, the first a 0. */
  readonly mmsi: string | null;
}

/** To all ships in a rectangle. */
export interface AreaAddress {
  readonly kind: 'area';
  readonly area: GeographicArea | null;
}

/** To all ships that hear it (format specifier 116). */
export interface AllShipsAddress {
  readonly kind: 'all-ships';
}

/** To whoever hears it: a distress alert carries no address (format specifier 112). */
export interface AllStationsAddress {
  readonly kind: 'all-stations';
}

/** Whom a call is for. */
export type CallAddress = StationAddress | GroupAddress | AreaAddress | AllShipsAddress | AllStationsAddress;

/** Finer corner and sides of the area of an area call, and how the area moves (ITU-R M.821-1, set 105). */
export interface FinerArea {
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
}

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
  readonly area?: FinerArea;
  /** Specifiers of the data sets that were asked for instead of given, e.g. `[100]`. */
  readonly requested?: readonly number[];
  /** Specifiers of the data sets that the sender said it cannot give. */
  readonly unavailable?: readonly number[];
}

interface CallBase {
  /** Self-identification of the sender: nine digits, or `null` when the source did not carry it. */
  readonly from: string | null;
  /** What the expansion added, when there was one. */
  readonly expansion?: ExpansionData;
  /**
   * The fields exactly as received, present when composing this call anew would give other symbols.
   * Encoding uses them as long as they still mean the same call.
   */
  readonly asReceived?: CallFields;
}

interface DistressDetails {
  readonly nature: NatureOfDistress | UnknownSymbol | null;
  /** Position of the vessel in distress, `null` when unknown. */
  readonly position: ReportedPosition | null;
  /** UTC of the position, `null` when unknown. */
  readonly time: TimeOfDay | null;
  /** Type of subsequent communication wanted. */
  readonly subsequent: FirstTelecommand | UnknownSymbol | null;
}

interface ChannelProposal {
  /** Working VHF channel in ITU-R M.1084 digits, e.g. `'72'` or `'1022'`; `null` when none is named. */
  readonly channel: string | null;
  /** MF/HF elements, as the digits sent, when the call names no VHF channel but something else. */
  readonly frequencies?: { readonly receive: string | null; readonly transmit: string | null };
}

/** A vessel is in distress and says so herself (M.493-16 table A1-4.1, from memory). */
export interface DistressAlert extends CallBase, DistressDetails {
  readonly kind: 'distress-alert';
  readonly to: AllStationsAddress;
}

/** A coast station, as a rule, acknowledges an alert and so ends its repeats (M.493-16 table A1-4.2, from memory). */
export interface DistressAcknowledgement extends CallBase, DistressDetails {
  readonly kind: 'distress-acknowledgement';
  readonly to: AllShipsAddress;
  /** Nine digits of the vessel in distress, `null` when unknown. */
  readonly distressed: string | null;
}

/** The vessel that raised an alert takes it back: an acknowledgement of herself. */
export interface DistressSelfCancel extends CallBase, DistressDetails {
  readonly kind: 'distress-self-cancel';
  readonly to: AllShipsAddress;
  /** Nine digits, the same as `from`. */
  readonly distressed: string | null;
}

/** An alert passed on for a vessel in distress (M.493-16 table A1-4.3, from memory). */
export interface DistressRelay extends CallBase, DistressDetails {
  readonly kind: 'distress-relay';
  readonly to: StationAddress | AllShipsAddress | AreaAddress | GroupAddress;
  readonly distressed: string | null;
}

/** The answer to a relay (M.493-16 table A1-4.4, from memory). */
export interface DistressRelayAcknowledgement extends CallBase, DistressDetails {
  readonly kind: 'distress-relay-acknowledgement';
  readonly to: StationAddress | AllShipsAddress | AreaAddress | GroupAddress;
  readonly distressed: string | null;
}

interface Announcement extends CallBase, ChannelProposal {
  readonly category: Category | UnknownSymbol | null;
  /** How the traffic that follows will be sent. */
  readonly communication: FirstTelecommand | UnknownSymbol | null;
  /** `'medical-transport'`, `'neutral-craft'` or another second telecommand; `null` when none. */
  readonly remark: SecondTelecommand | UnknownSymbol | null;
}

/** Urgency or safety traffic announced to all ships (M.493-16 table A1-4.5, from memory). */
export interface AllShipsCall extends Announcement {
  readonly kind: 'all-ships-call';
  readonly to: AllShipsAddress;
}

/** Traffic announced to the ships in a rectangle (M.493-16 table A1-4.6, from memory). */
export interface AreaCall extends Announcement {
  readonly kind: 'area-call';
  readonly to: AreaAddress;
}

/** A call to the members of a group (M.493-16 table A1-4.8, from memory). */
export interface GroupCall extends Announcement {
  readonly kind: 'group-call';
  readonly to: GroupAddress;
}

/** A call to one station, wanting an answer (M.493-16 tables A1-4.7 and A1-4.9, from memory). */
export interface IndividualCall extends Announcement {
  readonly kind: 'individual-call';
  readonly to: StationAddress;
}

/** The answer "able to comply", on the channel proposed or another. */
export interface IndividualAcknowledgement extends Announcement {
  readonly kind: 'individual-acknowledgement';
  readonly to: StationAddress;
}

/** The answer "unable to comply", with its reason. */
export interface UnableToComply extends CallBase, ChannelProposal {
  readonly kind: 'unable-to-comply';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
  readonly reason: Reason | SecondTelecommand | UnknownSymbol | null;
}

/** Where are you? */
export interface PositionRequest extends CallBase {
  readonly kind: 'position-request';
  readonly to: StationAddress;
  /** `'safety'` by the book; older sets send `'routine'`. */
  readonly category: Category | UnknownSymbol | null;
}

/** Here I am: the answer to a request, or (`unasked`) sent by the station's own wish. */
export interface PositionReply extends CallBase {
  readonly kind: 'position-reply';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
  /** `null` when the station has no fix. */
  readonly position: ReportedPosition | null;
  readonly time: TimeOfDay | null;
  /** True when the end of sequence is not that of an answer. */
  readonly unasked: boolean;
}

/** Does my set work? */
export interface TestCall extends CallBase {
  readonly kind: 'test-call';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
}

/** The answer to a test call. */
export interface TestAcknowledgement extends CallBase {
  readonly kind: 'test-acknowledgement';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
}

/** Are you in range? */
export interface PollingCall extends CallBase {
  readonly kind: 'polling-call';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
}

/** The answer to polling. */
export interface PollingAcknowledgement extends CallBase {
  readonly kind: 'polling-acknowledgement';
  readonly to: StationAddress;
  readonly category: Category | UnknownSymbol | null;
}

/** A call or answer of the semi-automatic or automatic telephone service (M.493-16 table A1-4.9, from memory, low confidence). */
export interface AutomaticServiceCall extends Announcement {
  readonly kind: 'automatic-service-call';
  readonly to: StationAddress;
  /** The digits dialled, or `null`. */
  readonly telephone: string | null;
  readonly end: 'request' | 'answer' | 'end';
}

/** Something was received that fits no kind above; `asReceived` holds all of it. */
export interface UnrecognisedCall extends CallBase {
  readonly kind: 'unrecognised-call';
  readonly to: CallAddress | null;
  readonly asReceived: CallFields;
}

/** Everything that is received becomes one of these, everything that is sent starts as one. */
export type Call =
  | DistressCall
  | AnnouncementCall
  | UnableToComply
  | PositionRequest
  | PositionReply
  | TestCall
  | TestAcknowledgement
  | PollingCall
  | PollingAcknowledgement
  | AutomaticServiceCall
  | UnrecognisedCall;

/** The calls of ITU-R M.493-16 tables A1-4.1 to A1-4.4. */
export type DistressCall =
  | DistressAlert
  | DistressAcknowledgement
  | DistressSelfCancel
  | DistressRelay
  | DistressRelayAcknowledgement;

/** The calls that announce traffic: ITU-R M.493-16 tables A1-4.5 to A1-4.9. */
export type AnnouncementCall =
  | AllShipsCall
  | AreaCall
  | GroupCall
  | IndividualCall
  | IndividualAcknowledgement;

/** The tag of each kind of call. */
export type CallKind = Call['kind'];
