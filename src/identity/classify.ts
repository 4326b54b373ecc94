import { givenInWords } from '../result/internal.ts';
import type { Identity, Mmsi } from './identity.ts';

type Hint<Kind extends 'coast' | 'sar-aircraft' | 'aton'> = NonNullable<Identity<Kind>['categoryHint']>;

/**
 * The form that nine digits have, or `undefined` where ITU-R M.585 assigns none.
 *
 * A MID begins with 2 to 7, so the prefixes 0, 00, 111, 8, 97x, 98 and 99 cannot collide with one and the order
 * of the tests is free, but for 009990000, whose 999 is no MID.
 */
export function classify(digits: string): Identity | undefined {
  // A pattern would read a number as its digits.
  if (typeof digits !== 'string' || !/^\d{9}$/.test(digits)) return undefined;
  const mmsi = digits as Mmsi;
  if (digits === '009990000') return { kind: 'coast-all', mmsi };
  const [, device] = /^97([0249])/.exec(digits) ?? [];
  if (device === '9') return { kind: 'amrd-b', mmsi, serial: digits.slice(3) };
  if (device !== undefined) {
    const kind = device === '0' ? 'ais-sart' : device === '2' ? 'mob' : 'epirb-ais';
    return { kind, mmsi, manufacturer: digits.slice(3, 5), serial: digits.slice(5) };
  }
  const [, prefix, mid = ''] = /^(0|00|111|8|98|99|)([2-7]\d\d)/.exec(digits) ?? [];
  switch (prefix) {
    case '':
      return { kind: 'ship', mmsi, mid };
    case '0':
      return { kind: 'ship-group', mmsi, mid };
    case '00':
      if (digits.endsWith('0000')) return { kind: 'coast-all-national', mmsi, mid };
      return { kind: 'coast', mmsi, mid, ...hint(coastCategories[Number(digits[5])]) };
    case '111':
      if (digits.endsWith('000')) return { kind: 'sar-aircraft-all-national', mmsi, mid };
      return { kind: 'sar-aircraft', mmsi, mid, ...hint(aircraftCategories[Number(digits[6])]) };
    case '8':
      return { kind: 'handheld', mmsi, mid };
    case '98':
      return { kind: 'craft', mmsi, mid };
    case '99':
      return { kind: 'aton', mmsi, mid, ...hint(atonCategories[Number(digits[5])]) };
    default:
      return undefined;
  }
}

// ITU-R M.585-10 Annex 1, as publicly restated: the digits are optional, and published identities ignore them
// (003669999, 002320014).
const coastCategories: Readonly<Record<number, Hint<'coast'>>> = {
  1: 'coast-radio',
  2: 'harbour',
  3: 'pilot',
  4: 'ais-repeater',
  5: 'ais-base',
};
const aircraftCategories: Readonly<Record<number, Hint<'sar-aircraft'>>> = {
  1: 'fixed-wing',
  5: 'helicopter',
};
const atonCategories: Readonly<Record<number, Hint<'aton'>>> = { 1: 'physical', 6: 'virtual', 8: 'mobile' };

function hint<T extends string>(categoryHint: T | undefined): { readonly categoryHint?: T } {
  return categoryHint === undefined ? {} : { categoryHint };
}

/** Whether a value is text of nine ASCII digits in an assigned form, which {@link parseIdentity} takes without tidying it. */
export function isMmsi(value: unknown): value is Mmsi {
  return classify(value as string) !== undefined;
}

/**
 * An identity written by a programmer, as a constant for instance. For text from outside use {@link parseIdentity}.
 *
 * @param text - nine ASCII digits of an assigned form, nothing else
 * @returns the same text, typed
 * @throws RangeError when the text is anything else
 *
 * @example
 * ```ts
 * import { mmsi } from 'seahail/identity';
 *
 * const skerraCoastguard = mmsi('002329990');
 * console.log(skerraCoastguard); // 002329990
 * ```
 */
export function mmsi(text: string): Mmsi {
  if (!isMmsi(text))
    throw new RangeError(`mmsi: expected nine digits in an assigned format, got ${givenInWords(text)}`);
  return text;
}
