import { type IssueMaker, issueMaker, type TextMaker, textMaker } from '../result/internal.ts';

const lookUpTerms = {
  'leg.ship': 'ship',
  'leg.coast': 'coast',
  'channel-name.W': 'weather channels are broadcasts of North America',
  'channel-name.M': 'M and M2 are marina channels of the United Kingdom',
  'channel-name.P': 'P4 is an old name of the United Kingdom marina channel M2',
  'channel-name.L': 'L channels are for leisure craft in Nordic waters',
  'channel-name.F': 'F channels are for fishing vessels in Nordic waters',
  'channel-name.0': '0 is the private coastguard channel of the United Kingdom',
};

/** What reading names, frequencies and digits and looking them up in a plan says. */
export const lookUpTexts = {
  error: {
    'channel-not-text': [
      'Channel: expected text, got {type}',
      "a number as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'",
    ],
    'channel-empty': [
      'Channel is empty: expected {expected}',
      "a number as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'",
    ],
    'channel-is-frequency': [
      'Channel {received} looks like a frequency: expected {expected}',
      "a number as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'",
    ],
    'channel-malformed': [
      'Channel {received} is not a channel designator: expected {expected}',
      "a number as in '06', '22A' or '1022', or a name as in 'AIS 1' or 'WX3'",
    ],
    'channel-number-range': [
      'Channel number {number} is not in use: expected {expected}',
      '01 to 28 or 60 to 88',
    ],
    'channel-four-digit': [
      'Channel {received} has an unknown prefix: expected 10 for the ship leg or 20 for the coast leg',
      'two digits, or four that begin with 00, 10 or 20',
    ],
    'channel-no-legs': [
      'Channel {suggestion} has a single frequency, so it has no {leg:leg} leg {received}',
      '{suggestion}',
    ],
    'channel-interleaved': [
      'Channel {received} is numbered as a 12.5 kHz interleaved channel, which no plan here has',
      'a number from 01 to 28 or 60 to 88',
    ],
    'channel-no-plan': [
      'Channel plan: expected {expected}, got {received:given}',
      'a plan, as definePlan makes one',
    ],
    'channel-plan-incomplete': [
      'Channel plan has channels with fields missing: expected {expected}',
      'a plan, as definePlan makes one',
    ],
    'channel-not-in-plan': [
      'Channel {channel} is not in the {plan} plan[: {reading}][; the plan has {there& and }]',
      'a channel of the {plan} plan',
    ],
    'channel-meaning-differs':
      'Channel {channel} is not the same in the {plan} plan, which has {other} ({frequencies})',
    'channel-not-on-set':
      'Channel {channel} cannot be tuned by a set with the channels of {plan}[, which has {frequencies} under that name]',
    'channel-frequency-type': [
      'Frequency: expected {expected}, got {type}',
      "megahertz as in '156.800', or kilohertz as in '156800'",
    ],
    'channel-frequency-malformed': [
      "Frequency {received} is not readable: expected '156.8' or '156800'",
      "megahertz as in '156.800', or kilohertz as in '156800'",
    ],
    'channel-frequency-number': [
      "Frequency {received} is not whole kilohertz: expected 156800 or the text '156.8'",
      'whole kilohertz, or text in megahertz',
    ],
    'channel-digits-malformed': [
      'Channel digits: expected {expected}, got {received}',
      'six digits, or eight that begin with 4',
    ],
  },
  check: {
    'channel-private-number':
      'Channel {channel} is outside Appendix 18: numbers 29 to 59 are private channels of single countries',
    'channel-elsewhere': 'Channel {channel} in the {plan} plan is {frequencies}: {note}',
    'channel-digits-unknown':
      'Channel digits {received} begin with {digit}, which has no known meaning in six digits',
    'channel-digits-second': [
      'Channel digits {received} have {digit} in second place: expected {expected}',
      '0',
    ],
    'channel-digits-old-form':
      'Channel digits {received} carry the leg in the second digit: read as {channel}',
    'channel-digits-single-leg-only':
      'Channel {channel} was received, but the {plan} plan has {suggestion} in its place: the sender may mean either',
  },
  said: {
    'channel-frequency-one': '{ship} MHz',
    'channel-frequency-coast': '{coast} MHz from the coast only',
    'channel-frequency-two': 'ships on {ship} and coast stations on {coast} MHz',
    'channel-there': '{channel} ({frequencies})',
    'channel-by-number-one': 'by its number it is {ship} MHz',
    'channel-by-number-two': 'by its number ships use {ship} and coast stations {coast} MHz',
    'channel-by-number-leg':
      'by its number it is the {leg:leg} leg of {number} as a single frequency, {ship} MHz',
    'channel-by-name': '{initial:channel-name}',
  },
  terms: lookUpTerms as typeof lookUpTerms,
} as const;

const workingTerms = {
  'purpose.intership-non-commercial': 'non-commercial talk between ships',
  'purpose.intership-commercial': 'commercial talk between ships',
  'purpose.intership-navigation': 'the safety of navigation between ships',
  'purpose.ship-to-coast': 'talk between ship and coast',
  'purpose.safety': 'distress, urgency and safety traffic',
};

/** What naming a channel in a call says. */
export const workingTexts = {
  error: {
    'channel-calls-only': 'Channel {channel} carries digital selective calls only, never speech',
    'channel-receive-only': 'Channel {channel} is receive only: {reason}',
    'channel-data-only': 'Channel {channel} is not for speech: {reason}',
    'channel-reserved': 'Channel {channel} cannot be proposed in a call: {reason}',
    'channel-not-to-be-named': 'Channel {channel} cannot be proposed in a call: {reason}',
    'channel-selective-calls-restricted': 'Channel {channel} cannot be proposed in a call: {rule}',
    'channel-distress-and-calling':
      'Channel {channel} is for distress, safety and calling: working talk goes to another channel',
    'channel-two-frequency':
      'Channel {channel} has two frequencies: the other ship listens on the coast side, {coast} MHz, and does not hear a ship on {ship} MHz',
    'channel-ships-only':
      'Channel {channel} is between ships only: no coast station works on it in the {plan} plan',
    'channel-not-intership':
      'Channel {channel} is not for {purpose:purpose} in the {plan} plan: {note}[ ({caution})]',
    'channel-other-use':
      'Channel {channel} is not for {purpose:purpose} in the {plan} plan: {note}[ ({caution})]',
  },
  check: {
    'channel-restricted': 'Channel {channel} in the {plan} plan: {caution}',
    'channel-regional': 'Channel {channel} has this use in part of the waters: {region}',
  },
  note: {
    'channel-coast-names-it':
      'Channel {channel} need not be proposed: a coast station normally chooses the working channel',
  },
  caution: {
    'channel-caution': 'Channel {channel} in the {plan} plan: {caution}',
    'channel-low-power': 'Channel {channel} has a power limit: {limit}',
    'channel-safety-calls-only': 'Channel {channel} in the {plan} plan: {rule}',
  },
  said: {
    'channel-serves': '{reasons&; }',
    'channel-use': '{plan}: {note}[ ({caution})]',
  },
  terms: workingTerms as typeof workingTerms,
} as const;

const planCheckTerms = {
  'plan-rule.plan': 'an object with name and channels',
  'plan-rule.channel': 'a channel, as simplexChannel makes one',
  'plan-rule.calling': 'channels of this plan',
  'plan-rule.text': 'text',
  'plan-rule.text-or-null': 'text or null',
  'plan-rule.texts': 'a list of texts',
  'plan-rule.truth': 'true or false',
  'plan-rule.watts': 'watts above zero or null',
  'plan-rule.khz': 'whole kilohertz or null',
  'plan-rule.name': 'a name of 1 to 40 characters',
  'plan-rule.names': 'a list of names of 1 to 40 characters',
  'plan-rule.channels': 'a list of channels',
  'plan-rule.m1084': 'digits of ITU-R M.1084 or null',
  'plan-rule.uses': 'a list of uses',
  'plan-rule.limits': 'a list of power limits with watts, measure and when',
  'plan-rule.data': 'permitted, prohibited or null',
  'plan-rule.intership': 'nonCommercial and commercial, each preferred, allowed, restricted or prohibited',
  'plan-rule.evidence': 'frequency, use and power, each with basis and source',
  'plan-rule.frequency': 'a frequency for ships, for coast stations or for both',
  'plan-rule.mode': 'duplex for two frequencies, simplex for one',
  'plan-rule.receive-only': 'true where ships have no frequency',
  'plan-rule.transmitters': 'the stations that have a frequency',
  'plan-rule.reason': 'a reason where the channel may not be named, and null elsewhere',
};

/** What checking a plan of your own says. */
export const planCheckTexts = {
  error: {
    'channel-plan-malformed': [
      'Channel plan[ {place}]: expected {expected}, got {received:given}',
      '{rule:plan-rule}',
    ],
    'channel-plan-word': ['Channel plan {place}: expected {expected}, got {received:given}', '{accepted&, }'],
    'channel-plan-name-twice': [
      'Channel plan {place}: expected {expected}, got {received:given}',
      'another name than {holder} has',
    ],
  },
  terms: planCheckTerms as typeof planCheckTerms,
} as const;

/** All texts of this module, but those of the plans. */
export type ChannelTexts = typeof lookUpTexts & typeof workingTexts & typeof planCheckTexts;

/** Makes an issue or notice of reading and looking up. */
export const issue: IssueMaker<typeof lookUpTexts> = /* @__PURE__ */ issueMaker(lookUpTexts);

/** Makes a text of reading and looking up that is no issue. */
export const text: TextMaker<typeof lookUpTexts> = /* @__PURE__ */ textMaker(lookUpTexts);

/** Makes an issue or notice of naming a channel in a call. */
export const workingIssue: IssueMaker<typeof workingTexts> = /* @__PURE__ */ issueMaker(workingTexts);

/** Makes a text of naming a channel in a call that is no issue. */
export const workingText: TextMaker<typeof workingTexts> = /* @__PURE__ */ textMaker(workingTexts);

/** Makes an issue of a plan of your own. */
export const planIssue: IssueMaker<typeof planCheckTexts> = /* @__PURE__ */ issueMaker(planCheckTexts);
