import { clause } from '../state/clause.ts';
import { type AdviceStep, channelFree, type Flow, record, takenBack, withErrors } from './step.ts';

const listen: AdviceStep = {
  text: 'Keep watch on channel 16, do not transmit, and inform the master',
  clause: clause.heardAlert,
};
const follow: AdviceStep = {
  text: 'Follow the instructions of the coast station or rescue co-ordination centre',
  clause: clause.flow,
};
const decide: AdviceStep = {
  text: 'The master decides whether this vessel can assist',
  clause: clause.flow,
};

const informCoast: AdviceStep = {
  text: 'Inform a coast station or rescue co-ordination centre by any means: by voice, by telephone, or by a DSC relay to that station alone where your rules allow it (in United States waters not by DSC)',
  clause: clause.relay,
};

/** What a ship does: flow chart of MSC.1/Circ.1657. */
export const shipFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [
      listen,
      { text: 'Leave the DSC acknowledgement to the coastguard', clause: '47 CFR 80.1117(a)' },
      record,
    ],
    undecided: [
      {
        text: 'Nobody acknowledged within five minutes: listen for distress traffic on channel 16',
        clause: clause.flow,
      },
      {
        ...informCoast,
        text: `If you hear none: ${informCoast.text.charAt(0).toLowerCase()}${informCoast.text.slice(1)}`,
      },
    ],
    'coast-answered': [decide, record],
    'inform-coast': [informCoast, decide, record],
    assisting: [
      {
        text: 'Acknowledge by voice on channel 16 to the vessel in distress or to the rescue co-ordination centre',
        clause: clause.acknowledgement,
      },
      {
        ...informCoast,
        text: 'If no coast station has acknowledged, inform one by any means',
        clause: 'RR 2024 No. 32.29A',
      },
      follow,
      record,
    ],
    'acknowledge-asked': [
      {
        text: 'Acknowledge by DSC only to stop an alert that goes on, from a vessel in the vicinity, after consulting a rescue co-ordination centre or coast station',
        clause: 'MSC.1/Circ.1657; 47 CFR 80.1121(d)',
      },
    ],
    'acknowledge-waiting': [listen],
    'acknowledge-sending': [listen],
    cancelled: [takenBack, record],
  },
  question: {
    listening: {
      text: 'Do you hear an acknowledgement by voice, or distress traffic?',
      answers: ['traffic', 'assist'],
    },
    undecided: {
      text: 'Do you hear distress traffic on channel 16?',
      answers: ['traffic', 'no-traffic', 'assist'],
    },
    'coast-answered': { text: 'Can this vessel assist?', answers: ['assist', 'stand-by'] },
    'inform-coast': { text: 'Can this vessel assist?', answers: ['assist', 'stand-by', 'traffic'] },
    'acknowledge-asked': { text: 'Acknowledge by DSC?', answers: ['confirm', 'decline'] },
  },
  waitFor: {
    listening: {
      text: 'An acknowledgement, for up to five minutes',
      clause: 'RR 2024 No. 32.16; 47 CFR 80.1121(b)',
    },
    'acknowledge-waiting': channelFree,
  },
};
