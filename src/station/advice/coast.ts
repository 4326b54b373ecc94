import { clause } from '../state/clause.ts';
import { type AdviceStep, channelFree, type Flow, record, takenBack, withErrors } from './step.ts';

const acknowledge: AdviceStep = {
  text: 'Acknowledge by DSC at once, and answer on channel 16',
  clause: clause.acknowledgement,
};
const lead: AdviceStep = {
  text: 'Lead the distress traffic on channel 16, or pass it to the rescue co-ordination centre',
  clause: clause.coastDuty,
};

/** What a coast station does: it acknowledges at once, and leads the traffic (ITU-R M.541). */
export const coastFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [acknowledge, record],
    undecided: [
      {
        text: 'The alert is not acknowledged: acknowledge by DSC, and answer on channel 16',
        clause: clause.acknowledgement,
      },
      record,
    ],
    'coast-answered': [lead, record],
    'inform-coast': [acknowledge, lead, record],
    assisting: [lead, record],
    'acknowledge-asked': [
      { text: 'The acknowledgement ends the repeats of the alert', clause: clause.acknowledgement },
    ],
    'acknowledge-waiting': [lead],
    'acknowledge-sending': [lead],
    cancelled: [takenBack, record],
  },
  question: {
    listening: { text: 'Acknowledge by DSC?', answers: ['acknowledge', 'traffic'] },
    undecided: {
      text: 'Acknowledge by DSC, or is the distress in other hands?',
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
