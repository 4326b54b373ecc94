import { type FormSchema, failure, type Notice, type Result, success } from '../result/index.ts';
import { formSchema, quote } from '../result/internal.ts';
import { shipCallSign } from './call-sign-shape.ts';

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
    return warn(typeof text, 'identity-call-sign-shape', `Call sign: expected text, got ${typeof text}`);
  }
  // The bound keeps the cost flat; no call sign comes near it.
  if (text.length <= 100) {
    const sign = text.replace(/\s/g, '').toUpperCase();
    if (/^\d{9}$/.test(sign)) {
      return warn(
        text,
        'identity-call-sign-digits',
        'Call sign has nine digits, as an MMSI has: it belongs in another field',
      );
    }
    // Survival craft: two digits after the ship's, the first not 0 or 1 where it follows a letter.
    const [, ship = '', last = ''] = /^(.*(.))\d\d$/.exec(sign) ?? [];
    const survivalCraft = shipCallSign.test(ship) && !(/[A-Z]/.test(last) && /[01].$/.test(sign));
    if (shipCallSign.test(sign) || survivalCraft) return [];
  }
  return warn(
    text,
    'identity-call-sign-shape',
    `Call sign ${quote(text)} does not look like a ship’s: check the licence`,
  );
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

function warn(text: string, code: string, message: string): readonly Notice[] {
  return [
    { code, message, at: [], received: quote(text), clause: 'Radio Regulations Article 19 Section III' },
  ];
}
