import { givenInWords } from '../result/internal.ts';

/**
 * Letters: Radio Regulations Appendix 14 (the same in the IMO standard marine communication phrases, A.918(22)),
 * from memory.
 */
const LETTERS: Readonly<Record<string, string>> = {
  A: 'Alfa',
  B: 'Bravo',
  C: 'Charlie',
  D: 'Delta',
  E: 'Echo',
  F: 'Foxtrot',
  G: 'Golf',
  H: 'Hotel',
  I: 'India',
  J: 'Juliett',
  K: 'Kilo',
  L: 'Lima',
  M: 'Mike',
  N: 'November',
  O: 'Oscar',
  P: 'Papa',
  Q: 'Quebec',
  R: 'Romeo',
  S: 'Sierra',
  T: 'Tango',
  U: 'Uniform',
  V: 'Victor',
  W: 'Whiskey',
  X: 'X-ray',
  Y: 'Yankee',
  Z: 'Zulu',
};

/** Figures as the IMO standard marine communication phrases write them (A.918(22)); the figure code is that of RR 2024 Appendix 14. */
const PLAIN = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** Figures: Radio Regulations Appendix 14, from memory. */
const FIGURE_CODE = [
  'Nadazero',
  'Unaone',
  'Bissotwo',
  'Terrathree',
  'Kartefour',
  'Pantafive',
  'Soxisix',
  'Setteseven',
  'Oktoeight',
  'Novenine',
];

/**
 * Text as it is spelled on the radio: letters by the phonetic alphabet, figures one by one.
 *
 * Letters with marks are spelled without them, blanks are passed over, a point between figures is `decimal`, and a
 * character that has no word is put in brackets.
 *
 * @param text - a call sign, a name, an identity
 * @param figures - `'plain'` (zero, one ...), as the IMO phrases have it, unless stated; `'figure-code'` for Nadazero,
 * Unaone ..., meant for speakers without a common language
 * @returns the words, one blank between them
 *
 * Source: Radio Regulations Appendix 14; IMO A.918(22) for plain figures; from memory.
 *
 * @example
 * ```ts
 * import { spell } from 'seahail/speech';
 *
 * console.log(spell('2ZZM8')); // two Zulu Zulu Mike eight
 * console.log(spell('72', 'figure-code')); // Setteseven Bissotwo
 * ```
 */
export function spell(text: string, figures: 'plain' | 'figure-code' = 'plain'): string {
  if (typeof text !== 'string') throw new TypeError(`spell: expected text, got ${givenInWords(text)}`);
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toUpperCase();
  return [...plain]
    .filter((character) => character.trim() !== '')
    .map((character) => word(character, figures))
    .join(' ');
}

function word(character: string, figures: 'plain' | 'figure-code'): string {
  if (Object.hasOwn(LETTERS, character)) return LETTERS[character] as string;
  if (/\d/.test(character)) return (figures === 'plain' ? PLAIN : FIGURE_CODE)[Number(character)] as string;
  if (character === '.') return 'decimal';
  return `[${character}]`;
}
