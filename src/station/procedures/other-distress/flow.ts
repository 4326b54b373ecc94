import type { AdviceStep } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import type { AnswerKind } from '../../model/event.ts';

/** A stage of the flow: instructions, the question to answer, and what to wait for. */
export interface Stage {
  readonly now: readonly AdviceStep[];
  readonly question: { readonly text: string; readonly answers: readonly AnswerKind[] } | null;
  readonly waitFor: AdviceStep | null;
}

/** The flow for one kind of station, phase by phase. */
export interface Flow {
  readonly now: Readonly<Record<Dialogue<'heard-distress'>['phase'], readonly AdviceStep[]>>;
  readonly question: Partial<
    Readonly<Record<Dialogue<'heard-distress'>['phase'], NonNullable<Stage['question']>>>
  >;
  readonly waitFor: Partial<Readonly<Record<Dialogue<'heard-distress'>['phase'], AdviceStep>>>;
}

/** Log entry, at every stage. */
export const record: AdviceStep = {
  text: 'Log everything received and done',
  clause: clause.log,
};

/** After a reception with errors. */
export const withErrors: AdviceStep = {
  text: 'Keep watch on channel 16. A distress call was received with errors: nothing in it is certain',
  clause: clause.errorCheck,
};

/** The end of a false alert. */
export const takenBack: AdviceStep = {
  text: 'The vessel cancelled her alert. Log it and listen on channel 16 for the voice cancellation',
  clause: clause.falseAlert,
};

/** A call waits for channel 70. */
export const channelFree: AdviceStep = { text: 'Channel 70 to be free', clause: clause.channelUse };

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
    'coast-answered': { text: 'Is the distress traffic over?', answers: ['dismiss', 'acknowledge'] },
    'inform-coast': { text: 'Acknowledge by DSC?', answers: ['acknowledge', 'traffic', 'dismiss'] },
    'acknowledge-asked': { text: 'Acknowledge by DSC?', answers: ['confirm', 'decline'] },
  },
  waitFor: {
    'acknowledge-waiting': channelFree,
  },
};

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
        text: 'Acknowledge by DSC only to stop an alert that continues, only from a vessel in the vicinity, and only after consulting a rescue co-ordination centre or coast station',
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
