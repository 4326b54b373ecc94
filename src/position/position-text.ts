import { failure, type Issue, type Result, success } from '../result/index.ts';
import { type CodeOf, type Failure, quote } from '../result/internal.ts';
import { writtenIssue, type writtenTexts } from './texts.ts';

/** What a written position is made of; `offset` points back into the input. */
export type Token =
  | { readonly kind: 'number'; readonly text: string; readonly offset: number }
  | { readonly kind: 'mark'; readonly unit: 0 | 1 | 2; readonly offset: number }
  | { readonly kind: 'letter'; readonly letter: 'N' | 'S' | 'E' | 'W'; readonly offset: number }
  | { readonly kind: 'sign'; readonly negative: boolean; readonly offset: number }
  | { readonly kind: 'label'; readonly axis: Axis; readonly offset: number }
  | { readonly kind: 'dash' | 'colon' | 'break'; readonly offset: number };

/** Which of the two coordinates. */
export type Axis = 'latitude' | 'longitude';

/** Each means the plain character in front of it. All are single UTF-16 units, so offsets stay true. */
const LIKENESSES = [
  ['°', 'º˚ᵒ⁰'],
  ["'", '′’‘´`ʹʼ＇'],
  ['"', '″”“„ʺ˝＂'],
  ['-', '‐‑‒–—−﹣－'],
  ['+', '＋'],
  ['.', '．٫'],
  [',', '，、'],
  [';', '；'],
  [':', '：='],
  ['/', '／|'],
  // Brackets around a pair, and the direction marks that copied text carries unseen.
  [' ', '()（）\u200b\u200e\u200f\u2060\ufeff'],
] as const;

/** Zeros of the digits that keyboards and copied pages bring: full-width, Arabic-Indic, Persian, Devanagari. */
const ZEROS = [0xff10, 0x660, 0x6f0, 0x966] as const;

type Meaning = 'N' | 'S' | 'E' | 'W' | 0 | 1 | 2 | Axis;
const WORDS: ReadonlyMap<string, Meaning> = /* @__PURE__ */ new Map<string, Meaning>([
  ['n', 'N'],
  ['north', 'N'],
  ['s', 'S'],
  ['south', 'S'],
  ['e', 'E'],
  ['east', 'E'],
  ['w', 'W'],
  ['west', 'W'],
  ['d', 0],
  ['deg', 0],
  ['degree', 0],
  ['degrees', 0],
  ['m', 1],
  ['min', 1],
  ['minute', 1],
  ['minutes', 1],
  ['sec', 2],
  ['second', 2],
  ['seconds', 2],
  ['lat', 'latitude'],
  ['latitude', 'latitude'],
  ['lon', 'longitude'],
  ['long', 'longitude'],
  ['lng', 'longitude'],
  ['longitude', 'longitude'],
]);

const TOKEN =
  /(?<number>\d+(?:\.\d*)?|\.\d+)|(?<word>\p{L}+)|(?<mark>°|''?|")|(?<join>[+\-:,;/])|(?<blank>\s+)/uy;

/** The input with look-alikes of digits, marks and dashes replaced by plain ones, of the same length. */
export function plainText(text: string): string {
  let out = '';
  for (let i = 0; i < text.length; i += 1) out += plainCharacter(text.charAt(i));
  return out;
}

/** Cuts what {@link plainText} gave into tokens, in one pass. */
export function tokensOf(text: string): Result<readonly Token[]> {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const offset = TOKEN.lastIndex;
    const found = TOKEN.exec(text);
    if (found === null) {
      const character = String.fromCodePoint(text.codePointAt(offset) ?? 0);
      return refused('position-character', offset, quote(character));
    }
    const { number, word, mark, join } = found.groups ?? {};
    if (number !== undefined) {
      if (text.charAt(TOKEN.lastIndex) === '.') {
        return refused('position-number', offset, quote(text.slice(offset, TOKEN.lastIndex + 1)));
      }
      tokens.push({ kind: 'number', text: number, offset });
    } else if (word !== undefined) {
      const meaning = WORDS.get(word.toLowerCase());
      if (meaning === undefined) return failure(unknownWord(text, word, offset));
      tokens.push(wordToken(meaning, offset));
    } else if (mark !== undefined) {
      tokens.push({ kind: 'mark', unit: mark === '°' ? 0 : mark === "'" ? 1 : 2, offset });
    } else if (join !== undefined) {
      tokens.push(joint(text, join, offset));
    }
  }
  return success(tokens);
}

/** An issue about one place of a written position, or about all of it. */
export function textIssue(
  code: Exclude<CodeOf<typeof writtenTexts>, 'position-too-long'>,
  offset: number | null,
  received?: string,
  suggestion?: string,
): Issue {
  return writtenIssue(
    code,
    {},
    {
      at: offset === null ? [] : [offset],
      ...(received !== undefined && { received }),
      ...(suggestion !== undefined && { suggestion }),
    },
  );
}

/** A failure with one {@link textIssue}. */
export function refused(...about: Parameters<typeof textIssue>): Failure {
  return failure(textIssue(...about));
}

function wordToken(meaning: Meaning, offset: number): Token {
  if (typeof meaning === 'number') return { kind: 'mark', unit: meaning, offset };
  if (meaning === 'latitude' || meaning === 'longitude') return { kind: 'label', axis: meaning, offset };
  return { kind: 'letter', letter: meaning, offset };
}

function plainCharacter(character: string): string {
  const code = character.charCodeAt(0);
  if (code < 0x80 && !'()=|'.includes(character)) return character;
  for (const [plain, others] of LIKENESSES) if (others.includes(character)) return plain;
  for (const zero of ZEROS) if (code >= zero && code <= zero + 9) return String(code - zero);
  return character;
}

function joint(text: string, join: string, offset: number): Token {
  if (join === ':') return { kind: 'colon', offset };
  if (join !== '+' && join !== '-') return { kind: 'break', offset };
  // A minus belongs to the number after it when nothing but a blank or a break is in front: 56-20 is degrees and minutes.
  const beforeNumber = /[\d.]/.test(text.charAt(offset + 1));
  const free = offset === 0 || /[\s,;/:]/.test(text.charAt(offset - 1));
  const sign = beforeNumber && (free || join === '+');
  return sign ? { kind: 'sign', negative: join === '-', offset } : { kind: 'dash', offset };
}

function unknownWord(text: string, word: string, offset: number): Issue {
  if (word !== 'o' && word !== 'O') return textIssue('position-word', offset, quote(word));
  const afterDigit = /\d/.test(text.charAt(offset - 1));
  const beforeDigit = /[\d\s]/.test(text.charAt(offset + 1));
  const asDegrees =
    afterDigit && beforeDigit && word === 'o' ? text.replace(/(\d)o(?=[\d\s])/g, '$1°') : undefined;
  return textIssue('position-letter-o', offset, quote(word), asDegrees);
}
