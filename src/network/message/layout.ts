/**
 * The layout of each parameter group that the library reads or writes: fields in wire order, each with its name,
 * its kind, its width in bits and, for numbers, how many steps make one unit.
 *
 * Widths, types and resolutions are those of the public list of parameter groups of IEC 61162-3 (its Appendix B.1,
 * version 1.300 of 2009, held as open data) and of an open table that agrees with it; the text of the standard was
 * not to be had. deviation: D-network-2
 */
import type { ParameterGroup } from './payload.ts';

/** Position, ten times a second. */
export const POSITION = {
  pgn: 129025,
  name: 'Position, Rapid Update',
  fast: false,
  priority: 2,
  fields: [
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
  ],
} as const;

/** Course and speed over ground. */
export const COURSE_AND_SPEED = {
  pgn: 129026,
  name: 'COG & SOG, Rapid Update',
  fast: false,
  priority: 2,
  fields: [
    ['sid', 'code', 8],
    ['reference', 'code', 2],
    ['', 'reserved', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['', 'reserved', 16],
  ],
} as const;

/** Position with date, time and quality. */
export const GNSS_POSITION = {
  pgn: 129029,
  name: 'GNSS Position Data',
  fast: true,
  priority: 3,
  fields: [
    ['sid', 'code', 8],
    ['date', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['latitude', 'wide', 64, 1e16, 'degrees'],
    ['longitude', 'wide', 64, 1e16, 'degrees'],
    ['altitude', 'wide', 64, 1e6, 'm'],
    ['system', 'code', 4],
    ['method', 'code', 4],
    ['integrity', 'code', 2],
    ['', 'reserved', 6],
    ['satellites', 'unsigned', 8],
    ['hdop', 'signed', 16, 100],
    ['pdop', 'signed', 16, 100],
    ['geoid', 'signed', 32, 100, 'm'],
    ['stations', 'unsigned', 8],
  ],
} as const;

/** Date, time and the offset of local time. */
export const TIME_AND_DATE = {
  pgn: 129033,
  name: 'Time & Date',
  fast: false,
  priority: 3,
  fields: [
    ['date', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['localOffset', 'signed', 16, 1, 'min'],
  ],
} as const;

/** Date and time with their source. */
export const SYSTEM_TIME = {
  pgn: 126992,
  name: 'System Time',
  fast: false,
  priority: 3,
  fields: [
    ['sid', 'code', 8],
    ['source', 'code', 4],
    ['', 'reserved', 4],
    ['date', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
  ],
} as const;

/** Heading of the vessel. */
export const HEADING = {
  pgn: 127250,
  name: 'Vessel Heading',
  fast: false,
  priority: 2,
  fields: [
    ['sid', 'code', 8],
    ['heading', 'unsigned', 16, 10000, 'rad'],
    ['deviation', 'signed', 16, 10000, 'rad'],
    ['variation', 'signed', 16, 10000, 'rad'],
    ['reference', 'code', 2],
    ['', 'reserved', 6],
  ],
} as const;

/** Magnetic variation. */
export const VARIATION = {
  pgn: 127258,
  name: 'Magnetic Variation',
  fast: false,
  priority: 7,
  fields: [
    ['sid', 'code', 8],
    ['source', 'code', 4],
    ['', 'reserved', 4],
    ['age', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['variation', 'signed', 16, 10000, 'rad'],
    ['', 'reserved', 16],
  ],
} as const;

/** A man-overboard device or button. */
export const MAN_OVERBOARD = {
  pgn: 127233,
  name: 'Man Overboard Notification',
  fast: true,
  priority: 3,
  fields: [
    ['sid', 'code', 8],
    ['emitter', 'unsigned', 32],
    ['status', 'code', 3],
    ['', 'reserved', 5],
    ['activationTime', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['positionSource', 'code', 3],
    ['', 'reserved', 5],
    ['date', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['reference', 'code', 2],
    ['', 'reserved', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['mmsi', 'unsigned', 32],
    ['battery', 'code', 3],
    ['', 'reserved', 5],
  ],
} as const;

/** A digital selective call that a radio received or sent. */
export const DSC_CALL = {
  pgn: 129808,
  name: 'DSC Call Information',
  fast: true,
  priority: 4,
  fields: [
    ['format', 'code', 8],
    ['category', 'code', 8],
    ['address', 'pairs', 40],
    ['natureOrTelecommand1', 'code', 8],
    ['subsequentOrTelecommand2', 'code', 8],
    ['receive', 'text', 48],
    ['transmit', 'text', 48],
    ['telephone', 'variable text', 0],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['distressed', 'pairs', 40],
    ['end', 'code', 8],
    ['expansionEnabled', 'code', 2],
    ['', 'reserved', 6],
    ['callingReceive', 'text', 48],
    ['callingTransmit', 'text', 48],
    ['receiptTime', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['receiptDate', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['messageId', 'unsigned', 16],
    [
      'expansion',
      'repeated',
      [
        ['symbol', 'code', 8],
        ['data', 'variable text', 0],
      ],
    ],
  ],
} as const;

/** Settings of a VHF radio. */
export const RADIO = {
  pgn: 129799,
  name: 'Radio Frequency/Mode/Power',
  fast: true,
  priority: 3,
  fields: [
    ['receive', 'unsigned', 32, 1, '10 Hz'],
    ['transmit', 'unsigned', 32, 1, '10 Hz'],
    ['channel', 'text', 48],
    ['power', 'unsigned', 16, 1, 'W'],
    ['mode', 'code', 8],
    ['bandwidth', 'unsigned', 16, 1, 'Hz'],
  ],
} as const;

/** Where a display steers to. */
export const NAVIGATION = {
  pgn: 129284,
  name: 'Navigation Data',
  fast: true,
  priority: 3,
  fields: [
    ['sid', 'code', 8],
    ['distance', 'unsigned', 32, 100, 'm'],
    ['reference', 'code', 2],
    ['perpendicularCrossed', 'code', 2],
    ['arrival', 'code', 2],
    ['calculation', 'code', 2],
    ['etaTime', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['etaDate', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['bearingFromOrigin', 'unsigned', 16, 10000, 'rad'],
    ['bearingFromPosition', 'unsigned', 16, 10000, 'rad'],
    ['originNumber', 'unsigned', 32],
    ['destinationNumber', 'unsigned', 32],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['closingSpeed', 'signed', 16, 100, 'm/s'],
  ],
} as const;

/** A route and its waypoints. */
export const ROUTE = {
  pgn: 129285,
  name: 'Navigation - Route/WP Information',
  fast: true,
  priority: 6,
  fields: [
    ['start', 'code', 16],
    ['count', 'code', 16],
    ['database', 'code', 16],
    ['route', 'code', 16],
    // One public table gives the direction four bits, which would not fit a byte.
    ['direction', 'code', 3],
    ['supplementary', 'code', 2],
    ['', 'reserved', 3],
    ['name', 'variable text', 0],
    ['', 'reserved', 8],
    [
      'waypoints',
      'repeated',
      [
        ['id', 'code', 16],
        ['name', 'variable text', 0],
        ['latitude', 'signed', 32, 1e7, 'degrees'],
        ['longitude', 'signed', 32, 1e7, 'degrees'],
      ],
    ],
  ],
} as const;

/** A list of waypoints. */
export const WAYPOINTS = {
  pgn: 130074,
  name: 'Route and WP Service - WP List',
  fast: true,
  priority: 7,
  fields: [
    ['start', 'code', 16],
    ['count', 'code', 16],
    ['valid', 'code', 16],
    ['database', 'code', 16],
    ['', 'reserved', 16],
    [
      'waypoints',
      'repeated',
      [
        ['id', 'code', 16],
        ['name', 'variable text', 0],
        ['latitude', 'signed', 32, 1e7, 'degrees'],
        ['longitude', 'signed', 32, 1e7, 'degrees'],
      ],
    ],
  ],
} as const;

/** AIS position report of class A (messages 1 to 3). */
export const AIS_CLASS_A = {
  pgn: 129038,
  name: 'AIS Class A Position Report',
  fast: true,
  priority: 4,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['second', 'code', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['commState', 'code', 19],
    ['transceiver', 'code', 5],
    ['heading', 'unsigned', 16, 10000, 'rad'],
    ['turn', 'signed', 16, 32000, 'rad/s'],
    ['status', 'code', 4],
    ['manoeuvre', 'code', 2],
    ['', 'reserved', 2],
    ['', 'spare', 3],
    ['', 'reserved', 5],
    ['sequence', 'code', 8],
  ],
} as const;

/** AIS position report of class B (message 18). */
export const AIS_CLASS_B = {
  pgn: 129039,
  name: 'AIS Class B Position Report',
  fast: true,
  priority: 4,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['second', 'code', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['commState', 'code', 19],
    ['transceiver', 'code', 5],
    ['heading', 'unsigned', 16, 10000, 'rad'],
    ['regional', 'code', 8],
    ['regionalB', 'code', 2],
    ['carrierSense', 'code', 1],
    ['display', 'code', 1],
    ['dsc', 'code', 1],
    ['band', 'code', 1],
    ['message22', 'code', 1],
    ['assigned', 'code', 1],
    ['commStateKind', 'code', 1],
    ['', 'reserved', 15],
  ],
} as const;

/** Extended AIS position report of class B (message 19). */
export const AIS_CLASS_B_EXTENDED = {
  pgn: 129040,
  name: 'AIS Class B Extended Position Report',
  fast: true,
  priority: 4,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['second', 'code', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['regional', 'code', 8],
    ['regionalB', 'code', 4],
    ['', 'reserved', 4],
    ['type', 'code', 8],
    ['heading', 'unsigned', 16, 10000, 'rad'],
    ['', 'reserved', 4],
    ['fixingDevice', 'code', 4],
    ['length', 'unsigned', 16, 10, 'm'],
    ['beam', 'unsigned', 16, 10, 'm'],
    ['fromStarboard', 'unsigned', 16, 10, 'm'],
    ['fromBow', 'unsigned', 16, 10, 'm'],
    ['name', 'text', 160],
    ['dte', 'code', 1],
    ['assigned', 'code', 1],
    ['', 'spare', 4],
    ['transceiver', 'code', 5],
    ['', 'reserved', 5],
  ],
} as const;

/** AIS report of an aid to navigation (message 21). */
export const AIS_AID = {
  pgn: 129041,
  name: 'AIS Aids to Navigation (AtoN) Report',
  fast: true,
  priority: 4,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['second', 'code', 6],
    ['length', 'unsigned', 16, 10, 'm'],
    ['beam', 'unsigned', 16, 10, 'm'],
    ['fromStarboard', 'unsigned', 16, 10, 'm'],
    ['fromBow', 'unsigned', 16, 10, 'm'],
    ['type', 'code', 5],
    ['offPosition', 'code', 1],
    ['virtual', 'code', 1],
    ['assigned', 'code', 1],
    ['', 'spare', 1],
    ['fixingDevice', 'code', 4],
    ['filling', 'code', 3],
    ['status', 'code', 8],
    ['transceiver', 'code', 5],
    ['', 'reserved', 3],
    ['name', 'variable text', 0],
  ],
} as const;

/** AIS report of a base station, or the answer of a mobile one about its time (messages 4 and 11). */
export const AIS_TIME = {
  pgn: 129793,
  name: 'AIS UTC and Date Report',
  fast: true,
  priority: 7,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['', 'reserved', 6],
    ['time', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['commState', 'code', 19],
    ['transceiver', 'code', 5],
    ['date', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['', 'reserved', 4],
    ['fixingDevice', 'code', 4],
  ],
} as const;

/** AIS static and voyage data of class A (message 5). */
export const AIS_STATIC_A = {
  pgn: 129794,
  name: 'AIS Class A Static and Voyage Related Data',
  fast: true,
  priority: 6,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['imo', 'code', 32],
    ['callSign', 'text', 56],
    ['name', 'text', 160],
    ['type', 'code', 8],
    ['length', 'unsigned', 16, 10, 'm'],
    ['beam', 'unsigned', 16, 10, 'm'],
    ['fromStarboard', 'unsigned', 16, 10, 'm'],
    ['fromBow', 'unsigned', 16, 10, 'm'],
    ['etaDate', 'unsigned', 16, 1, 'days since 1970-01-01'],
    ['etaTime', 'unsigned', 32, 10000, 's since midnight UTC'],
    ['draught', 'unsigned', 16, 100, 'm'],
    ['destination', 'text', 160],
    ['version', 'code', 2],
    ['fixingDevice', 'code', 4],
    ['dte', 'code', 1],
    ['', 'reserved', 1],
    ['transceiver', 'code', 5],
    ['', 'reserved', 3],
  ],
} as const;

/** AIS position report of a search and rescue aircraft (message 9). */
export const AIS_AIRCRAFT = {
  pgn: 129798,
  name: 'AIS SAR Aircraft Position Report',
  fast: true,
  priority: 4,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['longitude', 'signed', 32, 1e7, 'degrees'],
    ['latitude', 'signed', 32, 1e7, 'degrees'],
    ['accuracy', 'code', 1],
    ['raim', 'code', 1],
    ['second', 'code', 6],
    ['course', 'unsigned', 16, 10000, 'rad'],
    // One public table says a tenth of a metre a second, which would make a recorded aircraft supersonic.
    ['speed', 'unsigned', 16, 100, 'm/s'],
    ['commState', 'code', 19],
    ['transceiver', 'code', 5],
    ['altitude', 'signed', 32, 100, 'm'],
    ['regional', 'code', 8],
    ['dte', 'code', 1],
    ['', 'spare', 5],
    ['', 'reserved', 2],
  ],
} as const;

/** AIS safety related text to one station (message 12). */
export const AIS_ADDRESSED_TEXT = {
  pgn: 129801,
  name: 'AIS Addressed Safety Related Message',
  fast: true,
  priority: 5,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['', 'reserved', 1],
    ['transceiver', 'code', 5],
    ['sequence', 'code', 2],
    ['to', 'code', 32],
    ['', 'reserved', 6],
    ['retransmit', 'code', 1],
    ['', 'spare', 1],
    ['text', 'variable text', 0],
  ],
} as const;

/** AIS safety related text to everyone (message 14). */
export const AIS_TEXT = {
  pgn: 129802,
  name: 'AIS Safety Related Broadcast Message',
  fast: true,
  priority: 5,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['', 'reserved', 1],
    ['transceiver', 'code', 5],
    ['', 'reserved', 2],
    ['text', 'variable text', 0],
  ],
} as const;

/** AIS static data of class B, part A (message 24). */
export const AIS_STATIC_B_NAME = {
  pgn: 129809,
  name: 'AIS Class B static data report, Part A',
  fast: true,
  priority: 6,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['name', 'text', 160],
    ['transceiver', 'code', 5],
    ['', 'reserved', 3],
  ],
} as const;

/** AIS static data of class B, part B (message 24). */
export const AIS_STATIC_B_DATA = {
  pgn: 129810,
  name: 'AIS Class B static data report, Part B',
  fast: true,
  priority: 6,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['type', 'code', 8],
    ['vendor', 'text', 56],
    ['callSign', 'text', 56],
    ['length', 'unsigned', 16, 10, 'm'],
    ['beam', 'unsigned', 16, 10, 'm'],
    ['fromStarboard', 'unsigned', 16, 10, 'm'],
    ['fromBow', 'unsigned', 16, 10, 'm'],
    ['motherShip', 'code', 32],
    ['', 'reserved', 2],
    ['', 'spare', 2],
    ['fixingDevice', 'code', 4],
    ['transceiver', 'code', 5],
    ['', 'reserved', 3],
  ],
} as const;

/** Who a node is: its NAME. */
export const ADDRESS_CLAIM = {
  pgn: 60928,
  name: 'ISO Address Claim',
  fast: false,
  priority: 6,
  fields: [
    ['unique', 'code', 21],
    ['manufacturer', 'code', 11],
    ['instanceLower', 'code', 3],
    ['instanceUpper', 'code', 5],
    ['function', 'code', 8],
    ['', 'spare', 1],
    ['deviceClass', 'code', 7],
    ['systemInstance', 'code', 4],
    ['industry', 'code', 3],
    ['arbitrary', 'code', 1],
  ],
} as const;

/** A request for a parameter group: three bytes only. */
const REQUEST = {
  pgn: 59904,
  name: 'ISO Request',
  fast: false,
  priority: 6,
  fields: [['requested', 'code', 24]],
} as const;

/** What a node is: model and software. */
export const PRODUCT = {
  pgn: 126996,
  name: 'Product Information',
  fast: true,
  priority: 6,
  fields: [
    ['databaseVersion', 'unsigned', 16, 1000],
    ['product', 'code', 16],
    ['model', 'text', 256],
    ['software', 'text', 256],
    ['modelVersion', 'text', 256],
    ['serial', 'text', 256],
    ['certification', 'code', 8],
    ['load', 'code', 8],
  ],
} as const;

/** Transport acknowledgement. */
const ACKNOWLEDGEMENT = {
  pgn: 59392,
  name: 'ISO Acknowledgement',
  fast: false,
  priority: 6,
  fields: [
    ['control', 'code', 8],
    ['group', 'code', 8],
    ['', 'reserved', 24],
    ['acknowledged', 'code', 24],
  ],
} as const;

/** The parameter groups that a node sends or takes. */
const PGN_LIST = {
  pgn: 126464,
  name: 'PGN List (Transmit and Receive)',
  fast: true,
  priority: 6,
  fields: [
    ['direction', 'code', 8],
    ['groups', 'repeated', [['pgn', 'code', 24]]],
  ],
} as const;

/** Sign of life of a node. */
const HEARTBEAT = {
  pgn: 126993,
  name: 'Heartbeat',
  fast: false,
  priority: 7,
  fields: [
    // Senders disagree whether a step is a thousandth or a hundredth of a second.
    ['interval', 'unsigned', 16],
    ['sequence', 'code', 8],
    ['controllerA', 'code', 2],
    ['controllerB', 'code', 2],
    ['equipment', 'code', 2],
    ['', 'reserved', 34],
  ],
} as const;

/** Datum of the charts and positions. */
const DATUM = {
  pgn: 129044,
  name: 'Datum',
  fast: true,
  priority: 6,
  fields: [
    ['localDatum', 'text', 32],
    ['deltaLatitude', 'signed', 32, 1e7, 'degrees'],
    ['deltaLongitude', 'signed', 32, 1e7, 'degrees'],
    ['deltaAltitude', 'signed', 32, 100, 'm'],
    ['referenceDatum', 'text', 32],
  ],
} as const;

/** Distance off the track. */
const CROSS_TRACK = {
  pgn: 129283,
  name: 'Cross Track Error',
  fast: false,
  priority: 3,
  fields: [
    ['sid', 'code', 8],
    ['mode', 'code', 4],
    ['', 'reserved', 2],
    ['terminated', 'code', 2],
    ['error', 'signed', 32, 100, 'm'],
    ['', 'reserved', 16],
  ],
} as const;

/** AIS binary broadcast (message 8): the data are kept as they are. */
const AIS_BINARY = {
  pgn: 129797,
  name: 'AIS Binary Broadcast Message',
  fast: true,
  priority: 5,
  fields: [
    ['message', 'code', 6],
    ['repeat', 'code', 2],
    ['mmsi', 'code', 32],
    ['', 'reserved', 1],
    ['transceiver', 'code', 5],
    ['', 'reserved', 2],
    ['bits', 'code', 16],
  ],
} as const;

/** Every layout, by parameter group number. */
export const PARAMETER_GROUPS: readonly ParameterGroup[] = [
  POSITION,
  COURSE_AND_SPEED,
  GNSS_POSITION,
  TIME_AND_DATE,
  SYSTEM_TIME,
  HEADING,
  VARIATION,
  MAN_OVERBOARD,
  DSC_CALL,
  RADIO,
  NAVIGATION,
  ROUTE,
  WAYPOINTS,
  AIS_CLASS_A,
  AIS_CLASS_B,
  AIS_CLASS_B_EXTENDED,
  AIS_AID,
  AIS_TIME,
  AIS_STATIC_A,
  AIS_AIRCRAFT,
  AIS_ADDRESSED_TEXT,
  AIS_TEXT,
  AIS_STATIC_B_NAME,
  AIS_STATIC_B_DATA,
  AIS_BINARY,
  ADDRESS_CLAIM,
  REQUEST,
  ACKNOWLEDGEMENT,
  PRODUCT,
  PGN_LIST,
  HEARTBEAT,
  DATUM,
  CROSS_TRACK,
];
