import { failure, type Notice, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import { shipCallSign } from './call-sign.ts';
import { classify } from './classify.ts';
import type { Identity } from './identity.ts';
import { doubt, type Finding, imoNumber, readingsOf } from './readings.ts';
import { type ParseCode, parseIssue } from './texts.ts';

/**
 * Read a maritime identity as people write it.
 *
 * What cannot change the meaning is taken away, with a notice: blanks and separators between digits, the label
 * "MMSI" in front, a spreadsheet's leading apostrophe, invisible characters; decimal digits of other scripts are
 * converted. What can change it is never repaired: each plausible reading comes back as an issue with a `suggestion`,
 * for a person to confirm.
 *
 * Checks the form only. Whether the MID is allocated is answered by `seahail/identity/administrations`, whether the
 * identity fits a field by {@link checkIdentity}. Identities have no check digit: only a registry can confirm one.
 *
 * @param input - anything; only text of at most 200 characters can succeed, since numbers lose leading zeros
 * @returns the identity with its parts, or at least one issue; never throws
 *
 * Source: ITU-R M.585-10 Annexes 1 and 2.
 *
 * @see {@link identitySchema}
 * @see {@link formatIdentity}
 *
 * @example
 * ```ts
 * import { parseIdentity } from 'seahail/identity';
 *
 * const coast = parseIdentity('MMSI 00 232 9990');
 * if (coast.ok) console.log(coast.value.kind, coast.value.mmsi); // coast 002329990
 *
 * const eaten = parseIdentity('2329990');
 * if (!eaten.ok) console.log(eaten.issues[0].suggestion); // 002329990
 * ```
 */
export function parseIdentity(input: unknown): Result<Identity> {
  const notices: Finding[] = [];
  const read = typeof input === 'string' ? readText(input, notices) : readOther(input);
  if ('kind' in read && notices.length === 0) return success(read);
  const received = ['string', 'number'].includes(typeof input) ? quote(`${input}`) : typeof input;
  const dress = ([code, suggestion, params = {}]: Finding): Notice =>
    parseIssue(code, params as never, {
      received,
      clause: 'ITU-R M.585-10',
      ...(suggestion && { suggestion }),
    });
  if ('kind' in read) return success(read, notices.map(dress));
  const [first, ...others] = read.map(dress);
  return failure(first as Notice, ...others);
}

function readOther(input: unknown): readonly Finding[] {
  if (typeof input === 'number') {
    return doubt('identity-number', `${input}`);
  }
  return input === undefined || input === null ? empty : [['identity-not-text']];
}

const empty: readonly Finding[] = [['identity-empty']];

function readText(input: string, notices: Finding[]): Identity | readonly Finding[] {
  // Most text comes from machines and has nothing to tidy.
  if (/^\d{9}$/.test(input)) return readDigits(input, notices);
  // The bound makes every pattern below cheap, whatever the text.
  if (input.length > 200) return [['identity-too-long', '', { count: input.length }]];
  let text = input;
  const tidy = (code: ParseCode, pattern: RegExp, by: string | ((digit: string) => string) = ''): void => {
    const next = text.replace(pattern, by as string);
    if (next !== text) notices.push([code]);
    text = next;
  };
  // U+202E is not among them: it shows digits in reverse, so a person may have meant another number.
  tidy('identity-invisible', /[\xad\u200b-\u200f\u202a-\u202d\u2060-\u2069\ufeff]/g);
  tidy('identity-digits', /(?!\d)\p{Nd}/gu, asciiDigit);
  tidy('identity-blanks', /^\s+|\s+$|(\d)\s+(?=\d)/g, '$1');
  tidy('identity-apostrophe', /^['’]/);
  tidy('identity-label', /^mmsi\s*(number|no|nr)?[\s.:：#=]*/i);

  const digits = digitsOf(text);
  const nine = digits.length === 9 ? digits : '';
  const numbers = digits.length === 18 ? [digits.slice(0, 9), digits.slice(9)] : listed(text);
  if (numbers.length > 1) return doubt('identity-two-numbers', ...numbers);
  if (/^[+\-‐-―−]/.test(text)) return doubt('identity-sign', digits);
  if (/^imo/i.test(text)) return [imoNumber];
  const [, mantissa = '', exponent] = /^([\d.,]+)e\+?(\d+)$/i.exec(text) ?? [];
  if (mantissa !== '') {
    const kept = digitsOf(mantissa);
    const whole = kept.length === Number(exponent) + 1 ? kept : '';
    return doubt('identity-scientific', whole);
  }
  const [, integer = '', fraction] = /^(\d{7,})[.,](\d+)$/.exec(text) ?? [];
  if (integer !== '') {
    const whole = Number(fraction) === 0 ? integer : '';
    return doubt('identity-decimal', whole, nine);
  }

  if (/^\d{1,3}(,\d{3})+$/.test(text)) tidy('identity-thousands', /,/g);
  tidy('identity-separators', /(\d)\s*[-‐-―−.·]+\s*(?=\d)/g, '$1');
  if (text === '') return empty;
  return text === digits ? readDigits(digits, notices) : readOdd(text, digits, nine);
}

function readDigits(digits: string, notices: Finding[]): Identity | readonly Finding[] {
  const identity = classify(digits);
  const alike = /^(.)\1+$/.test(digits);
  if (identity !== undefined) {
    if (alike) notices.push(['identity-repeated-digit']);
    return identity;
  }
  if (digits.length === 9) {
    return alike || digits === '123456789'
      ? [['identity-placeholder']]
      : [['identity-unassigned', '', { start: digits.slice(0, 5) }]];
  }
  const readings = readingsOf(digits);
  // Eight digits: a ship's number with one left out is likelier than a group's that lost its zero.
  return readings.length > 0 && digits.length !== 8
    ? readings
    : [['identity-digit-count', '', { count: digits.length }], ...readings];
}

function readOdd(text: string, digits: string, nine: string): readonly Finding[] {
  const compact = text.toUpperCase().replace(/[\s.-]/g, '');
  // As scanned and hand-written lists have them; the second and third are Cyrillic and Greek.
  const repaired = compact.replace(/\D/g, (letter) => '000111258'['OОΟIL|ZSB'.indexOf(letter)] ?? letter);
  const findings: Finding[] = [];
  if (shipCallSign.test(compact)) findings.push(['identity-call-sign']);
  if (digits.length > 4 && repaired !== compact && !/\D/.test(repaired)) {
    findings.push(...doubt('identity-letter', repaired));
  }
  if (findings.length > 0) return findings;
  const [odd] = /[^\d\s.-]/u.exec(text) ?? /\D/.exec(text) ?? text;
  const params = { character: quote(odd as string) };
  return doubt('identity-character', nine).map(([code, suggestion]): Finding => [code, suggestion, params]);
}

/** The parts that a list sign or the word "and" puts apart, if long enough for an identity. */
function listed(text: string): readonly string[] {
  return text
    .split(/[/,;|&+]|and/i)
    .map(digitsOf)
    .filter((part) => part.length > 6);
}

function digitsOf(text: string): string {
  return text.replace(/\D/g, '');
}

/** Unicode keeps decimal digits in runs of ten from zero, some runs adjoining, so the place in the run gives the value. */
function asciiDigit(digit: string): string {
  const point = digit.codePointAt(0) as number;
  let place = 0;
  while (/\p{Nd}/u.test(String.fromCodePoint(point - place - 1))) place++;
  return String(place % 10);
}
