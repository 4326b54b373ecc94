import type { CallFields, Symbols } from '../../call/index.ts';
import {
  type DraftFields,
  digitsOf,
  type ExpansionSet,
  emptyFields,
  fillWhatIsUnsaid,
  NO_INFORMATION,
  symbolsOf,
  telephoneSymbols,
} from '../../call/internal.ts';
import { decodeArea } from '../../position/internal.ts';
import type { Notice } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import type { Quantity, ValuesOf } from '../field/field.ts';
import { plainText, readVariableText, writeVariableText } from '../field/text.ts';
import { fieldNotice } from '../texts.ts';
import { DSC_CALL } from './layout.ts';
import { instantOf } from './quantity.ts';

/** The fields of PGN 129808. */
export type DscCallValues = ValuesOf<(typeof DSC_CALL)['fields']>;

export interface NetworkCall {
  readonly fields: CallFields;
  /** When the radio received it by the clock of the bus, epoch milliseconds. */
  readonly receivedAt: number | null;
  readonly notices: readonly Notice[];
}

const [AREA, DISTRESS, INDIVIDUAL, AUTOMATIC] = [102, 112, 120, 123];
const [ACKNOWLEDGED, RELAYED] = [110, 112];
const PGN: number = DSC_CALL.pgn;
const LATITUDE = 'Latitude of Vessel Reported';
const MEANING = 'Nature of Distress or 1st Telecommand';
const PARTS_OF_MINUTE = 10_000;

/**
 * Reads the call that a radio passed on. `own` are the symbols of the own identity, which a call to it does not carry.
 *
 * Field 3 names the station that the call came from, as in a received `DSC` sentence, or the area of an area call.
 * Field 4 holds the nature of distress when format or category says distress, else the first telecommand. One field
 * is too little for a relay or an acknowledgement, which have both: there the symbol is taken for the telecommand
 * when it can be one and a vessel in distress is named. deviation: D-network-3
 */
export function readDscCall(values: DscCallValues, own: Symbols | null): NetworkCall {
  const notices: Notice[] = [];
  const fields: DraftFields = { ...emptyFields };
  fields.format = symbol(values.format);
  fields.category = fields.format === DISTRESS ? null : symbol(values.category);
  readStations(fields, values, own, notices);
  readMeaning(fields, values, notices);
  fields.end = symbol(values.end);
  readPlace(fields, values, notices);
  readChannels(fields, values, notices);
  fields.expansion = [...readExpansion(values, fields, notices)];
  fillWhatIsUnsaid(fields);
  return { fields, receivedAt: instantOf(values.receiptDate, values.receiptTime), notices };
}

/** The symbol of a field of one byte; 255 says that there is none. */
function symbol(value: number | null): number | null {
  return value === null || value > 127 ? null : value;
}

function readStations(
  fields: DraftFields,
  values: DscCallValues,
  own: Symbols | null,
  notices: Notice[],
): void {
  const first = pairs(values.address);
  fields.distressed = identity(pairs(values.distressed), 'MMSI of Ship In Distress', notices);
  if (fields.format === AREA && decodeArea(digitsOf(first)).ok) {
    fields.address = first;
    return;
  }
  fields.self = identity(first, 'DSC Message Address', notices);
  if (fields.format === DISTRESS) {
    // Recorded alerts leave the second identity out; generated ones repeat the first there.
    fields.self ??= fields.distressed;
    fields.distressed = null;
  } else if (fields.format === INDIVIDUAL || fields.format === AUTOMATIC) fields.address = own;
}

/** Five symbols; `null` where all bytes say that nothing is there. */
function pairs(bytes: readonly number[]): Symbols | null {
  if (bytes.every((byte) => byte === 0xff)) return null;
  return [0, 1, 2, 3, 4].map((index) => symbol(bytes[index] ?? 0xff));
}

/** An identity has nine digits: the tenth is 0. Another one shows that the bytes were read or written as a number. */
function identity(symbols: Symbols | null, field: string, notices: Notice[]): Symbols | null {
  const digits = digitsOf(symbols);
  if (symbols !== null && (digits === null || !digits.endsWith('0'))) {
    notices.push(
      fieldNotice('network-identity-tenth-digit', { pgn: PGN, field }, digits ?? symbols.join(' ')),
    );
  }
  return symbols;
}

function readMeaning(fields: DraftFields, values: DscCallValues, notices: Notice[]): void {
  const first = symbol(values.natureOrTelecommand1);
  const second = symbol(values.subsequentOrTelecommand2);
  if (fields.format === DISTRESS) {
    fields.nature = first;
    fields.subsequent = second;
  } else if (fields.category === DISTRESS) {
    const telecommand = (first === ACKNOWLEDGED || first === RELAYED) && fields.distressed !== null;
    fields.telecommand1 = telecommand ? first : null;
    fields.nature = telecommand ? null : first;
    fields.subsequent = second;
    const meaning = telecommand ? 'telecommand' : 'nature';
    notices.push(
      fieldNotice('network-distress-one-field', { pgn: PGN, field: MEANING, meaning }, String(first)),
    );
  } else {
    fields.telecommand1 = first;
    fields.telecommand2 = second ?? NO_INFORMATION;
  }
}

function readPlace(fields: DraftFields, values: DscCallValues, notices: Notice[]): void {
  const { latitude, longitude } = values;
  if (typeof latitude === 'number' && typeof longitude === 'number') {
    const place = digitsOfPlace(latitude, longitude);
    if (place === null) {
      const received = `${latitude} ${longitude}`;
      notices.push(fieldNotice('network-position-range', { pgn: PGN, field: LATITUDE }, received));
    } else {
      fields.position = symbolsOf(place.digits);
      if (place.fraction !== '00000000')
        fields.expansion = [{ specifier: 100, symbols: symbolsOf(place.fraction) }];
    }
  } else if (latitude !== null || longitude !== null) {
    const received = String(latitude ?? longitude);
    notices.push(fieldNotice('network-position-half', { pgn: PGN, field: LATITUDE }, received));
  }
  if (typeof values.time === 'number' && values.time < 86_400) {
    const minutes = Math.floor(values.time / 60);
    fields.time = [Math.floor(minutes / 60), minutes % 60];
  }
}

/** Ten digits of whole minutes and eight of ten-thousandths, as a call carries them; `null` off the earth. */
export function digitsOfPlace(
  latitude: number,
  longitude: number,
): { digits: string; fraction: string } | null {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) return null;
  const [north, east] = [latitude, longitude].map((degrees) =>
    Math.round(Math.abs(degrees) * 60 * PARTS_OF_MINUTE),
  );
  const quadrant = (latitude < 0 ? 2 : 0) + (longitude < 0 ? 1 : 0);
  const [latitudeDigits, latitudeParts] = split(north as number, 2);
  const [longitudeDigits, longitudeParts] = split(east as number, 3);
  return {
    digits: `${quadrant}${latitudeDigits}${longitudeDigits}`,
    fraction: latitudeParts + longitudeParts,
  };
}

function split(parts: number, degreeDigits: number): [digits: string, fraction: string] {
  const minutes = Math.floor(parts / PARTS_OF_MINUTE);
  const degrees = String(Math.floor(minutes / 60)).padStart(degreeDigits, '0');
  const rest = String(minutes % 60).padStart(2, '0');
  return [degrees + rest, String(parts % PARTS_OF_MINUTE).padStart(4, '0')];
}

function readChannels(fields: DraftFields, values: DscCallValues, notices: Notice[]): void {
  fields.receive = frequency(values.receive, 'Proposed Rx Frequency/Channel', notices);
  fields.transmit = frequency(values.transmit, 'Proposed Tx Frequency/Channel', notices);
  const { text } = readVariableText(values.telephone);
  if (text === null) return;
  if (fields.format === AUTOMATIC && /^\d{1,16}$/.test(text)) {
    fields.telephone = telephoneSymbols(text);
  } else {
    const field = 'Telephone Number';
    notices.push(fieldNotice('network-telephone-unexpected', { pgn: PGN, field }, quote(text)));
  }
}

function frequency(raw: string, field: string, notices: Notice[]): Symbols | null {
  const text = plainText(raw);
  if (text === null) return null;
  if (/^\d{6}$/.test(text)) return symbolsOf(text);
  notices.push(fieldNotice('network-frequency', { pgn: PGN, field }, quote(text)));
  return null;
}

function* readExpansion(
  values: DscCallValues,
  fields: DraftFields,
  notices: Notice[],
): Generator<ExpansionSet> {
  const [fromPlace] = fields.expansion;
  const specifiers = values.expansion.map((set) => symbol(set.symbol));
  // The position is the finest that the radio knows: the set that made it so may be missing, or cut off.
  if (fromPlace !== undefined && !specifiers.includes(100)) yield fromPlace;
  for (const [index, { data }] of values.expansion.entries()) {
    const specifier = specifiers[index] ?? null;
    if (specifier === null) continue;
    const { text, cut } = readVariableText(data);
    if (specifier === 100 && fromPlace !== undefined && (cut || text === null)) {
      yield fromPlace;
    } else if (text === null || text === 'C10' || text === 'C26') {
      yield { specifier, symbols: [text === 'C10' ? 110 : NO_INFORMATION] };
    } else if (
      cut ||
      specifier === 104 ||
      !/^(?:\d\d)+$/.test(text) ||
      (specifier === 100 && text.length !== 8)
    ) {
      yield { specifier, symbols: [], text };
    } else yield { specifier, symbols: symbolsOf(text) };
    if (cut) {
      const params = {
        pgn: PGN,
        field: `DSC Expansion Field Data ${index + 1}`,
        length: data.charCodeAt(0) - 2,
      };
      notices.push(fieldNotice('network-text-cut-off', params, quote(text ?? '')));
    }
  }
}

/**
 * The message of a call as a radio passes on one that it received, and what the message has no place for. `receivedAt` is
 * the instant of receipt, epoch milliseconds.
 */
export function writeDscCall(
  fields: CallFields,
  receivedAt: number | null,
): { values: DscCallValues; notices: Notice[] } {
  const notices: Notice[] = [];
  const distress = fields.format === DISTRESS || fields.category === DISTRESS;
  const aboutVessel = fields.format !== DISTRESS && distress;
  if (aboutVessel && fields.telecommand1 !== null && fields.nature !== null) {
    const params = { pgn: PGN, field: MEANING, nature: fields.nature };
    notices.push(fieldNotice('network-distress-nature-lost', params, String(fields.telecommand1)));
  }
  const values: DscCallValues = {
    format: fields.format,
    category: fields.format === DISTRESS ? DISTRESS : fields.category,
    address: bytesOf(fields.format === AREA ? (fields.address ?? fields.self) : fields.self),
    natureOrTelecommand1: fields.format === DISTRESS ? fields.nature : (fields.telecommand1 ?? fields.nature),
    subsequentOrTelecommand2: distress ? fields.subsequent : fields.telecommand2,
    receive: digitText(fields.receive),
    transmit: digitText(fields.transmit),
    telephone: writeVariableText(telephoneDigits(fields.telephone)),
    ...placeOf(fields),
    time: timeOf(fields.time),
    distressed: bytesOf(fields.distressed),
    end: fields.end,
    expansionEnabled: fields.expansion.length > 0 ? 1 : 0,
    callingReceive: '',
    callingTransmit: '',
    receiptTime: receivedAt === null ? null : Math.round((receivedAt % 86_400_000) * 10) / 10_000,
    receiptDate: receivedAt === null ? null : Math.floor(receivedAt / 86_400_000),
    messageId: null,
    expansion: fields.expansion.map((set) => ({
      symbol: set.specifier,
      data: writeVariableText(set.text ?? digitsOf(set.symbols) ?? (set.symbols[0] === 110 ? 'C10' : '')),
    })),
  };
  return { values, notices };
}

function bytesOf(symbols: Symbols | null): readonly number[] {
  return [0, 1, 2, 3, 4].map((index) => symbols?.[index] ?? 0xff);
}

function digitText(symbols: Symbols | null): string {
  return digitsOf(symbols)?.slice(0, 6) ?? '';
}

function telephoneDigits(symbols: Symbols | null): string {
  const [parity, ...digits] = symbols ?? [];
  const text = digitsOf(digits) ?? '';
  return parity === 105 ? text.slice(1) : text;
}

function timeOf(symbols: Symbols | null): Quantity {
  const [hour, minute] = symbols ?? [];
  const known = typeof hour === 'number' && typeof minute === 'number' && hour < 24 && minute < 60;
  return known ? hour * 3600 + minute * 60 : null;
}

/** Degrees of the position digits and of the finer ones in the expansion. */
function placeOf(fields: CallFields): { latitude: Quantity; longitude: Quantity } {
  const digits = digitsOf(fields.position);
  if (digits === null || !/^[0-3]/.test(digits)) return { latitude: null, longitude: null };
  const fine = fields.expansion.find(({ specifier }) => specifier === 100);
  const fraction = fine === undefined ? null : digitsOf(fine.symbols);
  const parts = fraction?.length === 8 ? fraction : '00000000';
  const degrees = (from: number, width: number, part: string): number =>
    Number(digits.slice(from, from + width)) +
    (Number(digits.slice(from + width, from + width + 2)) + Number(part) / PARTS_OF_MINUTE) / 60;
  const quadrant = Number(digits[0]);
  return {
    latitude: (quadrant >= 2 ? -1 : 1) * degrees(1, 2, parts.slice(0, 4)),
    longitude: (quadrant % 2 === 1 ? -1 : 1) * degrees(5, 3, parts.slice(4)),
  };
}
