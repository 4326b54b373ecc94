import type { CallFields, Symbols } from '../../call/index.ts';
import { emptyFields, NO_INFORMATION } from '../../call/index.ts';
import type { Notice } from '../../result/index.ts';
import { fieldNotice } from '../field/field-notice.ts';
import { readIdentityField } from './identity-field.ts';
import { readPlaceField } from './place-field.ts';
import { symbolOfCode, symbolsOfDigits } from './symbol-code.ts';

/**
 * Which way a `DSC` sentence travels. `'received'`: from the radio, which heard the call; field 2 is the
 * caller. `'commanded'`: to the radio, which is to place the call; field 2 is the called station.
 *
 * The sentence itself does not say which: wiring does.
 */
export type Direction = 'received' | 'commanded';

/** What a `DSC` sentence says, as the fields of a call. */
export interface DscReading {
  readonly fields: CallFields;
  /** Whether the sentence says that its expansion follows (field 11). */
  readonly expansionAnnounced: boolean;
  readonly notices: Notice[];
}

/** What the reader of a sentence knows beside it. */
export interface DscContext {
  readonly direction: Direction;
  /** Five symbols of the own identity, which the sentence never carries; `null` when not told. */
  readonly own: Symbols | null;
}

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

const FIELD_COUNT = 11;
const NO_POSITION: Symbols = [99, 99, 99, 99, 99];
const NO_TIME: Symbols = [88, 88];
const NO_CHANNEL: Symbols = [NO_INFORMATION, NO_INFORMATION, NO_INFORMATION];
const UNKNOWN_SHIP: Symbols = [
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
];
const ENDS = { R: 117, B: 122, S: 127 } as const;

/**
 * Reads the fields of a `DSC` sentence: eleven of them, or the seven of an older edition.
 *
 * What the sentence leaves empty is filled with what the air carries for "no information", so that the
 * call can be sent on; what it holds and cannot be read leaves a notice.
 *
 * Source: IEC 61162-1, `DSC` sentence, notes 1–11 as restated in equipment papers; codes are the last two
 * digits of the symbols of ITU-R M.493, from memory.
 */
export function readDsc(texts: readonly string[], context: DscContext): DscReading {
  const notices: Notice[] = [];
  const eleven = isLegacy(texts) ? fromLegacy(texts, notices) : texts;
  if (eleven.length < FIELD_COUNT)
    notices.push(countNotice('sentence-fields-missing', eleven, 'the missing ones are read as empty'));
  if (eleven.length > FIELD_COUNT)
    notices.push(countNotice('sentence-fields-surplus', eleven, 'the surplus is left aside'));

  const fields: Writable<CallFields> = { ...emptyFields };
  const format = readCode(eleven, 1, notices);
  fields.format = format;
  readStations(fields, eleven[1] ?? '', context, notices);
  fields.category = readCategory(format, eleven, notices);
  fields.end = readEnd(eleven[9] ?? '', notices);
  Object.assign(fields, readPlaceField(eleven[5] ?? '', notices));
  if (format === 112) {
    fields.nature = readCode(eleven, 4, notices);
    fields.subsequent = readCode(eleven, 5, notices);
  } else {
    fields.telecommand1 = readCode(eleven, 4, notices);
  }

  const distressed = readIdentityField(eleven[7] ?? '', 'DSC', 8, notices);
  const nature = format === 112 ? null : readCode(eleven, 9, notices);
  if (format === 112) {
    if (distressed !== null || (eleven[8] ?? '') !== '') notices.push(unusedShip(eleven));
  } else if (isAboutShip(fields, distressed, nature)) {
    fields.subsequent = readCode(eleven, 5, notices);
    fields.distressed = distressed ?? UNKNOWN_SHIP;
    fields.nature = nature;
  } else {
    fields.telecommand2 = readCode(eleven, 5, notices) ?? NO_INFORMATION;
    fields.distressed = distressed;
    fields.nature = nature;
  }
  readTimeOrNumber(fields, eleven[6] ?? '', notices);
  fillWhatIsUnsaid(fields);
  return { fields, expansionAnnounced: readExpansionMark(eleven[10] ?? '', notices), notices };
}

/** Address first, seven fields in all: the layout of M.493-6 days, told by ten digits in front. deviation: D-sentence-4 */
function isLegacy(texts: readonly string[]): boolean {
  const first = texts[0] ?? '';
  return (first.length === 10 || first.length === 9) && /^\d+$/.test(first);
}

function fromLegacy(texts: readonly string[], notices: Notice[]): string[] {
  const [address = '', format = '', category = '', nature = '', first = '', second = '', end = '', ...rest] =
    texts;
  notices.push(
    countNotice('sentence-legacy-layout', texts, 'ten digits come first: the older layout of seven'),
  );
  const alert = format === '12';
  return [
    format,
    address,
    category,
    alert ? nature : first,
    alert ? first : second,
    '',
    '',
    '',
    alert ? '' : nature,
    end,
    '',
    ...rest,
  ];
}

function readStations(
  fields: Writable<CallFields>,
  text: string,
  { direction, own }: DscContext,
  notices: Notice[],
): void {
  const { format } = fields;
  if (format === 102 && (direction === 'commanded' || isArea(text))) {
    fields.address = symbolsOfDigits(text);
    fields.self = direction === 'commanded' ? own : null;
    if (fields.address === null || fields.address.length !== 5) {
      fields.address = null;
      notices.push(
        fieldNotice('sentence-area', 'DSC', 2, text, 'is no area and is left aside', 'ten digits'),
      );
    } else if (direction === 'received' && /^[2-7].{8}0$/.test(text)) {
      notices.push(
        fieldNotice(
          'sentence-area-or-identity',
          'DSC',
          2,
          text,
          'is read as an area and may be a station',
          'an area',
        ),
      );
    }
    return;
  }
  const station = readIdentityField(text, 'DSC', 2, notices);
  if (direction === 'received') {
    fields.self = station;
    if (format === 120 || format === 123) fields.address = own;
  } else {
    fields.self = own;
    if (format === 112 || format === 116) {
      if (station !== null) {
        notices.push(
          fieldNotice(
            'sentence-address-unexpected',
            'DSC',
            2,
            text,
            'addresses a call to everyone and is left aside',
            'an empty field',
          ),
        );
      }
    } else fields.address = station;
  }
}

/**
 * Quadrant, two digits of latitude, three of longitude in whole degrees, and two sides of the rectangle.
 * A received area call names the area where others name the caller. deviation: D-sentence-3
 */
function isArea(text: string): boolean {
  if (!/^[0-3]\d{9}$/.test(text)) return false;
  return Number(text.slice(1, 3)) <= 90 && Number(text.slice(3, 6)) <= 180;
}

/** A distress alert has no category on the air; some talkers fill in 12 all the same. */
function readCategory(format: number | null, texts: readonly string[], notices: Notice[]): number | null {
  const category = readCode(texts, 3, notices);
  return format === 112 && category === 112 ? null : category;
}

function readEnd(text: string, notices: Notice[]): number | null {
  if (text === 'R' || text === 'B' || text === 'S') return ENDS[text];
  notices.push(
    fieldNotice('sentence-acknowledgement', 'DSC', 10, text, 'is none of R, B and S', 'R, B or S'),
  );
  return null;
}

function readExpansionMark(text: string, notices: Notice[]): boolean {
  if (text !== '' && text !== 'E') {
    notices.push(
      fieldNotice('sentence-expansion-mark', 'DSC', 11, text, 'is no expansion mark', 'E or nothing'),
    );
  }
  return text === 'E';
}

function isAboutShip(fields: CallFields, distressed: Symbols | null, nature: number | null): boolean {
  const speaksOfDistress = fields.category === 112 || distressed !== null || nature !== null;
  return speaksOfDistress && (fields.telecommand1 === 110 || fields.telecommand1 === 112);
}

function readTimeOrNumber(fields: Writable<CallFields>, text: string, notices: Notice[]): void {
  if (text === '') return;
  const digits = /^\d{1,16}$/.test(text);
  if (fields.format === 123 && digits) {
    // deviation: D-call-6
    fields.telephone =
      text.length % 2 === 0
        ? [106, ...(symbolsOfDigits(text) ?? [])]
        : [105, ...(symbolsOfDigits(`0${text}`) ?? [])];
  } else if (text.length === 4 && digits) {
    fields.time = symbolsOfDigits(text);
  } else {
    notices.push(
      fieldNotice(
        'sentence-time',
        'DSC',
        7,
        text,
        'is no time and is left aside',
        'four digits, hours and minutes UTC',
      ),
    );
  }
}

/** Puts in the symbols that the air carries where the sentence has an empty field. deviation: D-sentence-9 */
function fillWhatIsUnsaid(fields: Writable<CallFields>): void {
  const { format, telecommand1, position } = fields;
  if (format === 112 || fields.distressed !== null || fields.nature !== null) {
    fields.position ??= NO_POSITION;
    fields.time ??= NO_TIME;
    fields.subsequent ??= NO_INFORMATION;
    return;
  }
  if (telecommand1 === 121 && (position !== null || fields.end === 122)) {
    fields.header = true;
    fields.position ??= NO_POSITION;
    fields.time ??= NO_TIME;
    return;
  }
  if (position !== null) return;
  fields.receive ??= NO_CHANNEL;
  if (format === 123) return;
  const repeats = format === 120 && fields.receive[0] === 90;
  fields.transmit ??= repeats ? fields.receive : NO_CHANNEL;
}

function readCode(texts: readonly string[], field: number, notices: Notice[]): number | null {
  const text = texts[field - 1] ?? '';
  if (text === '') return null;
  const symbol = symbolOfCode(text);
  if (symbol === null) {
    notices.push(
      fieldNotice('sentence-code', 'DSC', field, text, 'is no code and is left aside', 'two digits'),
    );
  }
  return symbol;
}

function unusedShip(texts: readonly string[]): Notice {
  const received = `${texts[7] ?? ''},${texts[8] ?? ''}`;
  return fieldNotice(
    'sentence-ship-unexpected',
    'DSC',
    8,
    received,
    'names a ship beside the caller and is left aside',
    'empty fields',
  );
}

function countNotice(code: string, texts: readonly string[], says: string): Notice {
  return {
    code,
    message: `The DSC sentence has ${texts.length} fields: ${says}`,
    at: ['DSC'],
    expected: `${FIELD_COUNT} fields`,
    received: String(texts.length),
    clause: 'IEC 61162-1, DSC sentence',
  };
}
