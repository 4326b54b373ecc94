import type { CallFields, Symbols } from '../../call/index.ts';
import {
  type DraftFields,
  emptyFields,
  fillWhatIsUnsaid,
  NO_INFORMATION,
  telephoneSymbols,
  UNKNOWN_SHIP,
} from '../../call/internal.ts';
import { decodeArea } from '../../position/internal.ts';
import type { Reading } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { textAt } from '../field/text-at.ts';
import { fieldNotice } from '../texts.ts';
import { endOfLetter, readCode, readIdentityField, symbolsOfDigits } from './field.ts';
import { countNotice, DSC_FIELDS, fromLegacy, inEleven, isLegacy } from './layout.ts';
import { readPlaceField } from './place-field.ts';

export interface DscReading {
  readonly fields: CallFields;
  /** Whether the sentence says that its expansion follows (field 11). */
  readonly expansionAnnounced: boolean;
  readonly notices: Notice[];
}

/**
 * Reads the fields of a `DSC` sentence: eleven of them, or the seven of an older edition. The examples of IEC 61162-1
 * have ten and twelve, which are read without a notice.
 *
 * What the sentence leaves empty is filled with what the air carries for "no information", so that the
 * call can be sent on; what it holds and cannot be read leaves a notice.
 *
 * Source: IEC 61162-1, `DSC` sentence, notes 1–11 as restated in equipment papers; codes are the last two
 * digits of the symbols of ITU-R M.493.
 */
export function readDsc(texts: readonly string[], context: DscContext): DscReading {
  const notices: Notice[] = [];
  const eleven = isLegacy(texts) ? fromLegacy(texts, notices) : inEleven(texts);
  if (eleven.length < DSC_FIELDS - 1) notices.push(countNotice('sentence-fields-missing', eleven));
  if (eleven.slice(DSC_FIELDS).join() !== '') notices.push(countNotice('sentence-fields-surplus', eleven));

  const fields: DraftFields = { ...emptyFields };
  const format = readCode(eleven, 1, notices);
  fields.format = format;
  readStations(fields, textAt(eleven, 1), context, notices);
  fields.category = readCategory(format, eleven, notices);
  fields.end = readEnd(textAt(eleven, 9), notices);
  Object.assign(fields, readPlaceField(textAt(eleven, 5), notices));
  if (format === 112) {
    fields.nature = readCode(eleven, 4, notices);
    fields.subsequent = readCode(eleven, 5, notices);
  } else {
    fields.telecommand1 = readCode(eleven, 4, notices);
  }

  const distressed = readIdentityField(textAt(eleven, 7), 'DSC', 8, notices);
  if (format === 112) {
    if (distressed !== null || textAt(eleven, 8) !== '') notices.push(unusedShip(eleven));
  } else {
    fields.nature = readCode(eleven, 9, notices);
    const second = readCode(eleven, 5, notices);
    if (isAboutShip(fields, distressed)) {
      fields.subsequent = second;
      fields.distressed = distressed ?? UNKNOWN_SHIP;
    } else {
      fields.telecommand2 = second ?? NO_INFORMATION;
      fields.distressed = distressed;
    }
  }
  readTimeOrNumber(fields, textAt(eleven, 6), notices);
  fillWhatIsUnsaid(fields);
  return { fields, expansionAnnounced: readExpansionMark(textAt(eleven, 10), notices), notices };
}

/** A distress alert has no category on the air; some talkers fill in 12 all the same. */
function readCategory(format: number | null, texts: readonly string[], notices: Notice[]): number | null {
  const category = readCode(texts, 3, notices);
  return format === 112 && category === 112 ? null : category;
}

function readEnd(text: string, notices: Notice[]): number | null {
  const end = endOfLetter(text);
  if (end !== null) return end;
  notices.push(fieldNotice('sentence-acknowledgement', { formatter: 'DSC', field: 10 }, text));
  return null;
}

function readExpansionMark(text: string, notices: Notice[]): boolean {
  if (text !== '' && text !== 'E') {
    notices.push(fieldNotice('sentence-expansion-mark', { formatter: 'DSC', field: 11 }, text));
  }
  return text === 'E';
}

function isAboutShip(fields: CallFields, distressed: Symbols | null): boolean {
  const speaksOfDistress = fields.category === 112 || distressed !== null || fields.nature !== null;
  return speaksOfDistress && (fields.telecommand1 === 110 || fields.telecommand1 === 112);
}

function readTimeOrNumber(fields: DraftFields, text: string, notices: Notice[]): void {
  if (text === '') return;
  const digits = /^\d{1,16}$/.test(text);
  if (fields.format === 123 && digits) {
    // deviation: D-call-6
    fields.telephone = telephoneSymbols(text);
  } else if (text.length === 4 && digits) {
    fields.time = symbolsOfDigits(text);
  } else {
    notices.push(fieldNotice('sentence-time', { formatter: 'DSC', field: 7 }, text));
  }
}

function unusedShip(texts: readonly string[]): Notice {
  const received = `${textAt(texts, 7)},${textAt(texts, 8)}`;
  return fieldNotice('sentence-ship-unexpected', { formatter: 'DSC', field: 8 }, received);
}

export const DIRECTIONS: readonly Reading<'call'>['direction'][] = ['received', 'commanded'];

/** What the reader of a sentence knows beside it. */
interface DscContext {
  readonly direction: Reading<'call'>['direction'];
  /** Five symbols of the own identity, which the sentence never carries; `null` when not told. */
  readonly own: Symbols | null;
}

/** Field 2: the caller, the called station, or an area. */
function readStations(
  fields: DraftFields,
  text: string,
  { direction, own }: DscContext,
  notices: Notice[],
): void {
  const { format } = fields;
  // A received area call names the area where others name the caller. deviation: D-sentence-3
  if (format === 102 && (direction === 'commanded' || decodeArea(text).ok)) {
    fields.address = symbolsOfDigits(text);
    fields.self = direction === 'commanded' ? own : null;
    if (fields.address === null || fields.address.length !== 5) {
      fields.address = null;
      notices.push(fieldNotice('sentence-area', { formatter: 'DSC', field: 2 }, text));
      // An area has ten digits.
    } else if (direction === 'received' && /[2-7].{8}0/.test(text)) {
      notices.push(fieldNotice('sentence-area-or-identity', { formatter: 'DSC', field: 2 }, text));
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
        notices.push(fieldNotice('sentence-address-unexpected', { formatter: 'DSC', field: 2 }, text));
      }
    } else fields.address = station;
  }
}
