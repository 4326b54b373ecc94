import type { Symbols } from '../../call/index.ts';
import type { DraftFields } from '../../call/internal.ts';
import type { Reading } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { fieldNotice } from '../field/field-notice.ts';
import { readIdentityField } from './identity-field.ts';
import { symbolsOfDigits } from './symbol-code.ts';

/** Both directions. */
export const DIRECTIONS: readonly Reading<'call'>['direction'][] = ['received', 'commanded'];

/** What the reader of a sentence knows beside it. */
export interface DscContext {
  readonly direction: Reading<'call'>['direction'];
  /** Five symbols of the own identity, which the sentence never carries; `null` when not told. */
  readonly own: Symbols | null;
}

/** Field 2: the caller, the called station, or an area. */
export function readStations(
  fields: DraftFields,
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
      notices.push(fieldNotice('sentence-area', { formatter: 'DSC', field: 2 }, text));
    } else if (direction === 'received' && /^[2-7].{8}0$/.test(text)) {
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

/**
 * Quadrant, two digits of latitude, three of longitude in whole degrees, and two sides of the rectangle.
 * A received area call names the area where others name the caller. deviation: D-sentence-3
 */
function isArea(text: string): boolean {
  if (!/^[0-3]\d{9}$/.test(text)) return false;
  return Number(text.slice(1, 3)) <= 90 && Number(text.slice(3, 6)) <= 180;
}
