import { clause } from '../state/clause.ts';
import { type AdviceStep, channelFree, type Flow, record, takenBack, withErrors } from './step.ts';

const acknowledge: AdviceStep = {
  text: 'Acknowledge by DSC without delay and answer on channel 16 (in the United States leave the rescue co-ordination centre a short interval first)',
  clause: '47 CFR 80.1119(a); RR 2024 Nos. 32.27 and 32.28',
};
const inform: AdviceStep = {
  text: 'Inform the rescue co-ordination centre',
  clause: '47 CFR 80.1119(a)',
};
const lead: AdviceStep = {
  text: 'Take charge of the distress traffic on channel 16, or hand it over to the rescue co-ordination centre',
  clause: clause.coastDuty,
};

/** What a designated coast station does: it acknowledges, reports and takes charge of the traffic. */
export const coastFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [acknowledge, inform, record],
    undecided: [
      {
        text: 'Nobody has acknowledged the alert: acknowledge by DSC and answer on channel 16',
        clause: clause.acknowledgement,
      },
      inform,
      record,
    ],
    'coast-answered': [lead, record],
    'inform-coast': [acknowledge, inform, lead, record],
    assisting: [lead, record],
    'acknowledge-asked': [
      { text: 'The acknowledgement stops the repeats of the alert', clause: clause.acknowledgement },
    ],
    'acknowledge-waiting': [lead],
    'acknowledge-sending': [lead],
    cancelled: [takenBack, record],
  },
  question: {
    listening: { text: 'Acknowledge by DSC?', answers: ['acknowledge', 'traffic'] },
    undecided: {
      text: 'Acknowledge by DSC, or is another station handling the distress?',
      answers: ['acknowledge', 'traffic', 'no-traffic'],
    },
    'coast-answered': { text: 'Is the distress traffic over?', answers: ['close', 'acknowledge'] },
    'inform-coast': { text: 'Acknowledge by DSC?', answers: ['acknowledge', 'traffic', 'close'] },
    'acknowledge-asked': { text: 'Acknowledge by DSC?', answers: ['confirm', 'decline'] },
  },
  waitFor: {
    'acknowledge-waiting': channelFree,
  },
};
