import { type FormSchema, failure, type Notice, type Result, success } from '../result/index.ts';
import { formSchema, quote } from '../result/internal.ts';
import { issue } from './texts.ts';

/**
 * Look whether a text is plausible as the call sign of a ship station, by the shapes of the Radio Regulations.
 * Warns, never blocks: national practice adds forms for small craft, and only a licence can confirm a call sign.
 *
 * @param text - as typed; blanks do not count and case does not matter
 * @returns no notice where the shape is known (also with the two digits of a ship's survival craft), else one
 *
 * Source: Radio Regulations 19.45, 19.50, 19.55 and 19.60; 19.55 and 19.60 from memory.
 *
 * @example
 * ```ts
 * import { checkCallSign } from 'seahail/identity';
 *
 * console.log(checkCallSign('3EJH2').length); // 0
 * console.log(checkCallSign('232999871')[0]?.message); // Call sign has nine digits, as an MMSI has: it belongs in another field
 * ```
 */
export function checkCallSign(text: string): readonly Notice[] {
  if (typeof text !== 'string') {
    const type = typeof text;
    return [issue('identity-call-sign-type', { type }, { received: type, clause: CLAUSE })];
  }
  // The bound keeps the cost flat; no call sign comes near it.
  if (text.length <= 100) {
    const sign = text.replace(/\s/g, '').toUpperCase();
    if (/^\d{9}$/.test(sign)) {
      return [issue('identity-call-sign-digits', {}, { received: quote(text), clause: CLAUSE })];
    }
    // Survival craft: two digits after the ship's, the first not 0 or 1 where it follows a letter.
    const [, ship = '', last = ''] = /^(.*(.))\d\d$/.exec(sign) ?? [];
    const survivalCraft = shipCallSign.test(ship) && !(/[A-Z]/.test(last) && /[01].$/.test(sign));
    if (shipCallSign.test(sign) || survivalCraft) return [];
  }
  return [issue('identity-call-sign-shape', {}, { received: quote(text), clause: CLAUSE })];
}

/**
 * A schema for the call sign of a ship, for libraries that take Standard Schema v1. It refuses what
 * {@link checkCallSign} warns of, which may be a rare call sign all the same: let a person overrule it.
 *
 * @returns the schema; its output is capitals and digits without blanks
 *
 * Source: Standard Schema v1.
 *
 * @see {@link identitySchema}
 *
 * @example
 * ```ts
 * import { callSignSchema } from 'seahail/identity';
 *
 * console.log(callSignSchema()['~standard'].validate('2zz m8')); // { value: '2ZZM8' }
 * ```
 */
export function callSignSchema(): FormSchema<string> {
  const read = (value: unknown): Result<string> => {
    const [notice] = checkCallSign(value as string);
    return notice === undefined
      ? success((value as string).replace(/\s/g, '').toUpperCase())
      : failure(notice);
  };
  return formSchema('callSignSchema', read, { type: 'string', pattern: '^[0-9A-Z]{4,9}$' });
}

const CLAUSE = 'Radio Regulations Article 19 Section III';

/**
 * Call signs of ship stations, Radio Regulations 19.50 and 19.55 (from memory): a two-character prefix that is never
 * two digits nor begins with 0, 1 or Q, then two letters, two letters and a digit, or a letter and four digits;
 * or a prefix ending in a letter and four digits. The first digit after a letter is never 0 or 1.
 * deviation: D-identity-4
 */
export const shipCallSign: RegExp =
  /^(?:(?:[A-PR-Z][A-Z2-9]|[2-9][A-Z])(?:[A-Z]{2}[2-9]?|[A-Z][2-9]\d{3})|[A-PR-Z2-9][A-Z][2-9]\d{3})$/;
