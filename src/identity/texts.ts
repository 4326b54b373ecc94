import { type CodeOf, type IssueMaker, issueMaker, plainIssueMaker } from '../result/internal.ts';

/** What reading an identity says. A table of its own, so that an app that only reads does not carry the others. */
export const parseTexts = {
  error: {
    'identity-empty': ['Identity is empty', '9 digits'],
    'identity-not-text': ['Identity is not text', '9 digits'],
    'identity-number': [
      'Identity is a number: pass text, numbers drop zeros[; perhaps {suggestion}]',
      '9 digits',
    ],
    'identity-too-long': ['Identity has {count} characters', '9 digits'],
    'identity-two-numbers': ['Identity holds two numbers[; perhaps {suggestion}]', '9 digits'],
    'identity-sign': ['Identity has a sign[; perhaps {suggestion}]', '9 digits'],
    'identity-scientific': [
      'Identity has an exponent: digits may be lost[; perhaps {suggestion}]',
      '9 digits',
    ],
    'identity-decimal': ['Identity has a decimal part[; perhaps {suggestion}]', '9 digits'],
    'identity-imo-number': ['Identity looks like an IMO number, not an MMSI', '9 digits'],
    'identity-call-sign': ['Identity looks like a call sign', '9 digits'],
    'identity-letter': ['Identity has letters that look like digits[; perhaps {suggestion}]', '9 digits'],
    'identity-character': ['Identity has the character {character}[; perhaps {suggestion}]', '9 digits'],
    'identity-placeholder': ['Identity is a placeholder', '9 digits'],
    'identity-unassigned': ['Identity: no format starts with {start}', '9 digits'],
    'identity-leading-zeros': [
      'Identity is missing digits: spreadsheets drop leading zeros[; perhaps {suggestion}]',
      '9 digits',
    ],
    'identity-call-address': ['Identity has ten digits, as on the air[; perhaps {suggestion}]', '9 digits'],
    'identity-atis': ['Identity looks like an ATIS code[; perhaps {suggestion}]', '9 digits'],
    'identity-atis-call-sign': ['Identity looks like the ATIS code of a call sign', '9 digits'],
    'identity-digit-count': ['Identity needs 9 digits, has {count}', '9 digits'],
  },
  check: {
    'identity-repeated-digit': 'Identity has nine identical digits',
  },
  note: {
    'identity-invisible': 'Identity read without invisible characters',
    'identity-digits': 'Identity read with digits of another script',
    'identity-blanks': 'Identity read without blanks',
    'identity-apostrophe': 'Identity read without apostrophe',
    'identity-label': 'Identity read without label',
    'identity-thousands': 'Identity read without commas',
    'identity-separators': 'Identity read without separators',
  },
} as const;

const fieldTerms = {
  'identity-kind.ship': 'ship',
  'identity-kind.ship-group': 'group of ships',
  'identity-kind.coast': 'coast station',
  'identity-kind.coast-all-national': 'all coast stations of a country',
  'identity-kind.coast-all': 'all coast stations',
  'identity-kind.sar-aircraft': 'aircraft',
  'identity-kind.sar-aircraft-all-national': 'all aircraft of a country',
  'identity-kind.craft': 'craft of a parent ship',
  'identity-kind.aton': 'aid to navigation',
  'identity-kind.handheld': 'hand-held radio',
  'identity-kind.ais-sart': 'AIS-SART',
  'identity-kind.mob': 'man-overboard device',
  'identity-kind.epirb-ais': 'EPIRB-AIS',
  'identity-kind.amrd-b': 'autonomous radio device',
  'use.own-not-coast': 'Own identity is not a coast station: theirs begin with 00 and a MID',
  'use.own-group': "Own identity begins with 0, which marks a group: a ship's begins with 2 to 7",
  'use.own-coast': "Own identity begins with 00, which marks coast stations: a ship's begins with 2 to 7",
  'use.own-aircraft-group': 'Own identity is a group of aircraft: expected a single station',
  'use.own-ais': 'Own identity belongs to an AIS device, which takes no part in calls',
  'use.distressed': 'Vessel in distress has an identity that no vessel, aircraft or person uses in calls',
  'use.called-group': 'Address is a group: a group call reaches it, not a call to one station',
  'use.called-single': 'Address is not a group: the identity of a group of ships begins with one 0',
  'use.called-mob': 'Address is a man-overboard device, which does not take ordinary calls',
  'use.called-ais': 'Address belongs to an AIS device, which takes no part in calls',
  'station.uk-portable': 'Own identity begins with 2359, usually a UK portable radio: check the licence',
  'station.ship-handheld':
    'Own identity is a ship: countries differ on whether a hand-held radio may use it, check the licence',
  'station.handheld-fixed': 'Own identity is for a hand-held radio, but this radio is fixed',
  'station.craft': "Own identity is for a tender or survival craft, not for the ship's radio",
  'station.mob': 'Own identity is for a man-overboard device, but this radio is not one',
  'station.aircraft': 'Own identity is for an aircraft, but this radio is aboard a vessel',
};

/** What the checks and the other forms of an identity say. */
export const fieldTexts = {
  error: {
    'identity-atis-shape': ['ATIS code: expected ten digits, 9 and a MID first', '10 digits, the first a 9'],
    'identity-address-shape': ['Call address: expected 10 digits', '10 digits'],
    'identity-use': '{reason:use}',
    'identity-own-called': 'Address is the own identity: expected another station',
    'identity-kind': [
      'Identity: expected {expected}, got {kind:identity-kind}',
      '{accepted:identity-kind& or }',
    ],
  },
  check: {
    'identity-tenth-digit':
      'Call address ends in {digit}, not 0: several radios share one identity, or it was damaged',
    'identity-address-unassigned': 'Call address holds {digits}, which has no assigned format',
    'identity-station': '{reason:station}',
    'identity-mid-unallocated':
      'Identity has the MID {mid}, which is not allocated to any country in the list of {edition}',
    'identity-call-sign-digits': 'Call sign has nine digits, as an MMSI has: it belongs in another field',
    'identity-call-sign-shape': 'Call sign {received} does not look like a ship’s: check the licence',
    'identity-call-sign-type': 'Call sign: expected text, got {type}',
  },
  terms: fieldTerms as typeof fieldTerms,
} as const;

/** All texts of this module. */
export type IdentityTexts = typeof parseTexts & typeof fieldTexts;

/** Any code of reading an identity. */
export type ParseCode = CodeOf<typeof parseTexts>;

/** Makes an issue or notice of reading an identity. */
export const parseIssue: IssueMaker<typeof parseTexts> = /* @__PURE__ */ plainIssueMaker(parseTexts);

/** Makes any other issue or notice of this module. */
export const issue: IssueMaker<typeof fieldTexts> = /* @__PURE__ */ issueMaker(fieldTexts);
