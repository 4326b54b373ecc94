import { clause } from '../state/clause.ts';
import { type AdviceStep, channelFree, type Flow, record, takenBack, withErrors } from './step.ts';

const listen: AdviceStep = {
  text: 'Send nothing that could disturb, listen on channel 16 and inform the master',
  clause: clause.heardAlert,
};
const follow: AdviceStep = {
  text: 'Follow the instructions of the coast station or rescue co-ordination centre',
  clause: clause.relay,
};
const decide: AdviceStep = {
  text: 'The master decides whether this vessel is able to assist',
  clause: clause.relay,
};

/** What a ship does: IMO COMSAR/Circ.25, flow chart. */
export const shipFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [
      listen,
      { text: 'Leave the acknowledgement to the coast stations', clause: '47 CFR 80.1117' },
      record,
    ],
    undecided: [
      {
        text: 'No acknowledgement was heard: listen for distress traffic on channel 16',
        clause: clause.relay,
      },
    ],
    'coast-answered': [decide, record],
    'inform-coast': [
      { text: 'Inform a coast station or rescue co-ordination centre by any means', clause: clause.relay },
      decide,
      record,
    ],
    assisting: [
      {
        text: 'Acknowledge by voice on channel 16 to the vessel in distress or to the rescue co-ordination centre',
        clause: clause.relay,
      },
      follow,
      record,
    ],
    'acknowledge-asked': [
      {
        text: 'Acknowledge by DSC only to end an alert that goes on, after consulting a rescue co-ordination centre',
        clause: '47 CFR 80.1121(d)',
      },
    ],
    'acknowledge-waiting': [listen],
    'acknowledge-sending': [listen],
    cancelled: [takenBack, record],
  },
  question: {
    listening: {
      text: 'Is the alert acknowledged by voice, or is distress traffic heard?',
      answers: ['traffic', 'assist'],
    },
    undecided: {
      text: 'Is distress traffic heard on channel 16?',
      answers: ['traffic', 'no-traffic', 'assist'],
    },
    'coast-answered': { text: 'Is this vessel able to assist?', answers: ['assist', 'stand-by'] },
    'inform-coast': { text: 'Is this vessel able to assist?', answers: ['assist', 'stand-by', 'traffic'] },
    'acknowledge-asked': { text: 'Acknowledge by DSC?', answers: ['confirm', 'decline'] },
  },
  waitFor: {
    listening: { text: 'Five minutes for a coast station to acknowledge', clause: '47 CFR 80.1121(b)' },
    'acknowledge-waiting': channelFree,
  },
};
