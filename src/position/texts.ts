import { type IssueMaker, plainIssueMaker, type TextMaker, textMaker } from '../result/internal.ts';

/** What a position may not exceed, written or in the digits of a call. */
export const rangeTexts = {
  error: {
    'position-minutes': ['Position: expected {expected}, got {received}', 'minutes below 60'],
    'position-latitude-range': ['Position: expected {expected}, got {received}', 'latitude up to 90 degrees'],
    'position-longitude-range': [
      'Position: expected {expected}, got {received}',
      'longitude up to 180 degrees',
    ],
  },
} as const;

/** What reading a written position says. A table of its own, so that an app that only reads does not carry the others. */
export const writtenTexts = {
  error: {
    'position-not-text': ['Position: expected {expected}, got {received}', 'text'],
    'position-too-long': ['Position: expected {expected}, got {count}', 'at most 200 characters'],
    'position-character': [
      'Position: expected {expected}, got {received}',
      'digits, marks, signs and N, S, E or W',
    ],
    'position-word': ['Position: expected {expected}, got {received}', 'N, S, E or W or a unit'],
    'position-number': ['Position: expected {expected}, got {received}', 'one decimal point in a number'],
    'position-form': [
      'Position: expected {expected}',
      'latitude and longitude, each of one to three numbers',
    ],
    'position-labels': [
      'Position: expected {expected}',
      'one label for latitude and one for longitude, or none',
    ],
    'position-hemisphere': [
      'Position: expected {expected}, got {received}',
      'one of N or S and one of E or W',
    ],
    'position-no-hemisphere': ['Position: expected {expected}, got neither', 'N or S and E or W, or signs'],
    'position-sign-and-letter': ['Position: expected {expected}, got both', 'a sign or a hemisphere letter'],
    'position-label-and-letter': [
      'Position: expected {expected}, got {received}',
      'labels that agree with the letters',
    ],
    'position-letter-o': [
      'Position: expected {expected}, got {received}',
      'W or E instead of O, which is West to some and East to others',
    ],
    'position-dash': [
      'Position: expected {expected}, got {received}',
      'hemisphere letters, or a blank before a minus',
    ],
    'position-comma': [
      'Position: expected {expected}, got {received}',
      'a comma that can only be read in one way',
    ],
    'position-packed': [
      'Position: expected {expected}, got {received}',
      'the digits of ISO 6709, or a blank between the coordinates',
    ],
    'position-decimals': ['Position: expected {expected}, got {received}', 'decimals only in the last part'],
    'position-seconds': ['Position: expected {expected}, got {received}', 'seconds below 60'],
    'position-geo-crs': ['Position: expected {expected}, got {received}', 'wgs84'],
  },
  note: {
    'position-geo-rest': 'Position read without {received}',
  },
} as const;

/** What reading the digits of a call says. */
export const digitTexts = {
  error: {
    'position-digits': ['Position: expected {expected}, got {received}', 'ten digits'],
    'position-quadrant': ['Position: expected {expected}, got {received}', 'quadrant 0, 1, 2 or 3'],
    'position-fraction-digits': ['Position: expected {expected}, got {received}', 'eight digits of minutes'],
    'position-area-digits': ['Area: expected {expected}, got {received}', 'ten digits'],
  },
  check: {
    'position-fraction-alone': [
      'Position: expected {expected}, got {received}',
      'no decimals after ten nines, which give no position',
    ],
    'position-area-past-pole': ['Area: expected {expected}, got {received}', 'an area that ends at the pole'],
    'position-area-empty': ['Area: expected {expected}, got {received}', 'an area with two sides'],
  },
} as const;

const boundsTerms = {
  'fix-minutes.1': 'minute',
  'fix-minutes.*': 'minutes',
};

/** Bounds in words. */
export const boundsTexts = {
  said: {
    'position-bounds': '{parts}',
    'position-bounds-within': 'within {far} nautical miles',
    'position-bounds-at': 'at {far} nautical miles',
    'position-bounds-between': 'between {near} and {far} nautical miles',
    'position-bounds-bearing': 'bearing {from} degrees true',
    'position-bounds-sector': 'bearing {from} to {to} degrees true',
    'position-bounds-no-bearing': 'bearing unknown',
    'position-bounds-no-time': 'time of fix unknown',
    'position-bounds-ahead': 'time of the fix lies ahead of the clock',
    'position-bounds-new': 'fix less than a minute old',
    'position-bounds-minutes': 'fix {minutes} {minutes:fix-minutes} old',
    'position-bounds-hours': 'fix {hours} h {minutes} min old',
    'position-bounds-still': 'movement since the fix not included',
  },
  terms: boundsTerms as typeof boundsTerms,
} as const;

/** What a plot says in and beside the picture. */
export const plotTexts = {
  caution: {
    'position-plot-caution':
      'Positions as reported in calls, which may be old or wrong. This is not radar: do not use it to avoid collisions',
  },
  said: {
    'position-plot-title': 'Reported positions',
    'position-plot-own-ship': 'own ship',
    'position-plot-middle': 'In the middle: {name}, {position}',
    'position-plot-rings': 'North is up. Rings every {miles}',
    'position-plot-no-position': 'no position',
    'position-plot-station': '{name}: {where}',
    'position-plot-distress': 'In distress: {name}: {where}',
    'position-plot-outside': '{where}, outside the picture',
  },
} as const;

/** All texts of this module. */
export type PositionTexts = typeof rangeTexts &
  typeof writtenTexts &
  typeof digitTexts &
  typeof boundsTexts &
  typeof plotTexts;

/** Makes an issue of what a position exceeds. */
export const rangeIssue: IssueMaker<typeof rangeTexts> = /* @__PURE__ */ plainIssueMaker(rangeTexts);

/** Makes an issue or notice of reading a written position. */
export const writtenIssue: IssueMaker<typeof writtenTexts> = /* @__PURE__ */ plainIssueMaker(writtenTexts);

/** Makes an issue or notice of reading the digits of a call. */
export const digitIssue: IssueMaker<typeof digitTexts> = /* @__PURE__ */ plainIssueMaker(digitTexts);

/** Makes a part of bounds in words. */
export const boundsWords: TextMaker<typeof boundsTexts> = /* @__PURE__ */ textMaker(boundsTexts);

/** Makes a text of a plot. */
export const plotWords: TextMaker<typeof plotTexts> = /* @__PURE__ */ textMaker(plotTexts);
