import { type IssueMaker, issueMaker } from '../result/internal.ts';

/** What the bridge says. */
export const bridgeTexts = {
  check: {
    'bridge-refused': 'Reading {kind}: a value of it cannot be written on the other cable',
  },
  note: {
    'bridge-not-carried': 'Reading {kind}: not carried to the other cable',
    'bridge-commanded-call': 'Call to be sent: not carried to the other cable',
    'bridge-partly-carried':
      'AIS report: carried without dimensions, rate of turn, draught, destination and arrival',
  },
} as const;

/** All texts of this module. */
export type BridgeTexts = typeof bridgeTexts;

/** Makes a notice of this module. */
export const notice: IssueMaker<typeof bridgeTexts> = /* @__PURE__ */ issueMaker(bridgeTexts);
