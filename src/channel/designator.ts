import { failure, type Issue, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import { hasLegs, inAppendix18, m1084Digits } from './appendix-18.ts';
import { plainText } from './plain-text.ts';
import { issue } from './texts.ts';

/**
 * What a person means by the name of a channel, which has a number or a name. Which waters have it is a question to a
 * plan.
 *
 * `leg` is `'ship'` for the lower leg used as a single frequency (22A, 1022), `'coast'` for the upper leg (21B, 2021),
 * `'as-listed'` for the number as Appendix 18 lists it, with one frequency or two.
 */
export type Designator =
  | {
      readonly kind: 'numbered-channel';
      /** As written, made uniform: `'06'`, `'22A'`, `'1022'`. */
      readonly text: string;
      readonly number: number;
      readonly leg: 'as-listed' | 'ship' | 'coast';
      /** Digits after ITU-R M.1084 Annex 4; `null` for the private numbers 29 to 59. */
      readonly m1084: string | null;
    }
  | {
      readonly kind: 'named-channel';
      /** `'AIS 1'`, `'ASM 2'`, `'WX3'`, `'M'`, `'M1'`, `'M2'`, `'P4'`, `'0'`, `'L2'`, `'F3'` or `'55L'`. */
      readonly text: string;
      /** `'2087'` for AIS 1, `'75'` for AIS 3 and so on; `null` where no rule gives digits. */
      readonly m1084: string | null;
    };

/** A channel with a number. */
export type NumberedDesignator = Extract<Designator, { readonly kind: 'numbered-channel' }>;

/** A channel with a name instead of a number. */
type NamedDesignator = Extract<Designator, { readonly kind: 'named-channel' }>;

/**
 * Reads the name of a channel as people write it.
 *
 * Takes `'6'`, `'06'`, `'ch 6'`, `'Channel 06'`, `'VHF 72'`, `'22A'`, `'22 a'`, `'1022'`, `'AIS1'`,
 * `'M2'`, `'WX3'`, with digits of any script. A suffix or prefix is never dropped: 22 and 22A are
 * different channels. Numbers of the 12.5 kHz interleaved channels are refused: no plan here holds one.
 *
 * @param input - text from a person, a file or a set; anything else gives an issue
 * @returns the designator; a notice for the private numbers 29 to 59
 *
 * Source: ITU-R M.1084 Annex 4 and RR Appendix 18, from memory; meaning of 10nn and 20nn as quoted from
 * the US Coast Guard Navigation Center, 2016.
 *
 * @see {@link findChannel}
 *
 * @example
 * ```ts
 * import { parseDesignator } from 'seahail/channel';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(valueOf(parseDesignator('ch 6')).text); // 06
 * console.log(valueOf(parseDesignator('22 a')).m1084); // 1022
 * console.log(parseDesignator('1006').ok); // false
 * ```
 */
export function parseDesignator(input: unknown): Result<Designator> {
  if (typeof input !== 'string') return failure(notText(input));
  const text = plainText(input);
  if (text === undefined) return failure(malformed(input));
  const body = text.replace(/^(?:VHF[ -]?)?(?:(?:CHANNEL|CHAN|CH)\.?[ -]?)?#?/, '').trim();
  const named = readName(body);
  if (named) return success(named);
  const [, digits, letter] = /^(\d{1,4})(?:[ -]?([AB]))?$/.exec(body) ?? [];
  if (digits === undefined || (letter !== undefined && digits.length > 2)) return failure(malformed(input));
  return readNumber(digits, letter, input);
}

/** Names used beside the numbers, with the digits of the numbered channel where there is one. */
function readName(body: string): NamedDesignator | undefined {
  const name = body.replace(/([A-Z])[ -]?0?(\d)/, '$1$2');
  const digits = DATA.get(name);
  if (digits !== undefined) return named(name.replace(/.../, '$& '), digits);
  // 55L to 16H: fishing and dredging channels below and above the numbers of Appendix 18, Netherlands.
  if (/^(?:00?|M[12]?|P4|[LF][123]|WX(?:[1-9]|10)|5[56]L|1[2346]H)$/.test(name))
    return named(name.replace('00', '0'), null);
  return undefined;
}

const DATA: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['AIS1', '2087'],
  ['AIS2', '2088'],
  ['AIS3', '75'],
  ['AIS4', '76'],
  ['ASM1', '2027'],
  ['ASM2', '2028'],
]);

function named(text: string, m1084: string | null): NamedDesignator {
  return { kind: 'named-channel', text, m1084 };
}

function readNumber(digits: string, letter: string | undefined, input: string): Result<Designator> {
  const prefix = digits.slice(0, -2).padStart(2, '0');
  const number = Number(digits.slice(-2));
  const typed = { received: quote(input), clause: M1084 };
  if (['02', '12', '22'].includes(prefix)) return failure(issue('channel-interleaved', {}, typed));
  if (!['00', '10', '20'].includes(prefix)) return failure(issue('channel-four-digit', {}, typed));
  const leg =
    letter === 'A' || prefix === '10' ? 'ship' : letter === 'B' || prefix === '20' ? 'coast' : 'as-listed';
  const isPrivate = number >= 29 && number <= 59;
  if (isPrivate ? digits.length > 2 : !inAppendix18(number)) {
    const params = { number: twoDigits(number) };
    return failure(issue('channel-number-range', params, { ...typed, clause: 'RR Appendix 18' }));
  }
  // 160.900 MHz is printed as 2006 although 06 has no upper leg: the one exception to the rule below.
  // 47 CFR 80.203(b)(2) bars simplex use of the legs in the same way.
  if (leg !== 'as-listed' && !isPrivate && !hasLegs(number) && digits !== '2006')
    return failure(issue('channel-no-legs', { leg }, { ...typed, suggestion: twoDigits(number) }));
  const m1084 = isPrivate ? null : m1084Digits(number, leg);
  const text = letter === undefined ? (m1084 ?? twoDigits(number)) : `${twoDigits(number)}${letter}`;
  const value: Designator = { kind: 'numbered-channel', text, number, leg, m1084 };
  const usual = { ...typed, clause: 'common practice' };
  return success(value, isPrivate ? [issue('channel-private-number', { channel: text }, usual)] : []);
}

function twoDigits(number: number): string {
  return String(number).padStart(2, '0');
}

const M1084 = 'ITU-R M.1084 Annex 4';

function notText(input: unknown): Issue {
  const whole = Number.isInteger(input) && (input as number) >= 1 && (input as number) <= 88;
  return issue(
    'channel-not-text',
    { type: input === null ? 'null' : typeof input },
    {
      clause: 'common practice',
      ...(whole && { received: String(input), suggestion: twoDigits(input as number) }),
    },
  );
}

/** Megahertz of the maritime band, as a scanner shows them. */
const frequency = /^1[56]\d[.,]\d+ ?(MHz)?$/i;

function malformed(input: string): Issue {
  const code =
    plainText(input) === ''
      ? 'channel-empty'
      : frequency.test(input.trim())
        ? 'channel-is-frequency'
        : 'channel-malformed';
  return issue(code, {}, { received: quote(input), clause: M1084 });
}
