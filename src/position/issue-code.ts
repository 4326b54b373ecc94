/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const POSITION_ISSUE_CODES = [
  { code: 'position-not-text', meaning: 'a position is not text' },
  { code: 'position-too-long', meaning: 'a written position has more characters than any position needs' },
  { code: 'position-character', meaning: 'a sign or word with no meaning in a position' },
  { code: 'position-number', meaning: 'a number with two decimal points' },
  {
    code: 'position-form',
    meaning: 'the text does not fall into a latitude and a longitude of one to three numbers each',
  },
  { code: 'position-hemisphere', meaning: 'a hemisphere letter is missing, repeated, or one too many' },
  { code: 'position-sign-and-letter', meaning: 'a coordinate has both a sign and a hemisphere letter' },
  { code: 'position-ambiguous', meaning: 'the text can be read in two ways' },
  { code: 'position-decimals', meaning: 'a part before the last has decimals' },
  { code: 'position-minutes', meaning: 'minutes of sixty or more' },
  { code: 'position-seconds', meaning: 'seconds of sixty or more' },
  { code: 'position-latitude-range', meaning: 'a latitude past a pole' },
  { code: 'position-longitude-range', meaning: 'a longitude of more than 180 degrees' },
  { code: 'position-geo-crs', meaning: 'a geo URI has another reference system than WGS 84' },
  { code: 'position-geo-rest', meaning: 'an altitude or parameters of a geo URI were left out' },
  { code: 'position-digits', meaning: 'the position of a call is not ten digits' },
  { code: 'position-quadrant', meaning: 'the quadrant digit is not 0, 1, 2 or 3' },
  { code: 'position-fraction-digits', meaning: 'the enhanced position is not eight digits' },
  { code: 'position-fraction-alone', meaning: 'decimals follow the ten nines that mean no position' },
  { code: 'position-area-digits', meaning: 'a geographic area is not ten digits' },
  { code: 'position-area-past-pole', meaning: 'a geographic area reaches past the south pole' },
  { code: 'position-area-empty', meaning: 'a geographic area has no extent southward or eastward' },
] as const;
