import { type IssueMaker, issueMaker } from '../result/internal.ts';

const bridgeTerms = {
  'reading-kind.call': 'Call',
  'reading-kind.expansion': 'Expansion',
  'reading-kind.own-position': 'Own position',
  'reading-kind.clock': 'Date and time',
  'reading-kind.waypoint': 'Waypoint',
  'reading-kind.target': 'Target',
  'reading-kind.ais': 'AIS report',
  'reading-kind.motion': 'Course and speed',
  'reading-kind.radio': 'Radio settings',
  'reading-kind.man-overboard': 'Man overboard',
  'reading-kind.safety-text': 'Safety text',
  'reading-kind.node': 'Network node',
  'reading-kind.other': 'Other message',
  'reading-kind.damaged': 'Damaged line',
};

/** What the bridge says. */
export const bridgeTexts = {
  check: {
    'bridge-refused': '{kind:reading-kind}: one of its values cannot be written on the other cable',
  },
  note: {
    'bridge-not-carried': '{kind:reading-kind}: not carried to the other cable',
    'bridge-commanded-call': 'Call to be sent: not carried to the other cable',
    'bridge-partly-carried':
      'AIS report: carried without dimensions, rate of turn, draught, destination and arrival',
  },
  terms: bridgeTerms as typeof bridgeTerms,
} as const;

/** All texts of this module. */
export type BridgeTexts = typeof bridgeTexts;

/** Makes a notice of this module. */
export const notice: IssueMaker<typeof bridgeTexts> = /* @__PURE__ */ issueMaker(bridgeTexts);
