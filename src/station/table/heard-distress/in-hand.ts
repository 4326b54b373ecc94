import { clause } from '../../state/clause.ts';
import { type Open, type Row, relayedByCoast } from './words.ts';

/** A relay about a vessel whose distress is in hand. */
const relayedIn = (from: Open): readonly Row[] => [
  { from, on: 'relay', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
  ...(from === 'coast-answered' || from === 'assisting' ? [] : [relayedByCoast(from, ['keep-call'])]),
  { from, on: 'relay', to: from, do: ['keep-call', 'show-repeated'], clause: clause.relay },
];

/** What more is heard about a vessel whose distress is in hand. */
const heardIn = (from: Open): readonly Row[] => [
  {
    from,
    on: 'alert',
    when: 'tells-another-nature',
    to: from,
    do: ['alarm', 'keep-call', 'show-heard', 'advise'],
    clause: clause.alarms,
  },
  { from, on: 'alert', to: from, do: ['keep-call', 'show-repeated'], clause: clause.heardAlert },
  ...relayedIn(from),
  { from, on: 'acknowledgement', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
  {
    from,
    on: 'acknowledgement',
    when: 'from-coast',
    to: from === 'assisting' ? 'assisting' : 'coast-answered',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from,
    on: 'acknowledgement',
    to: from,
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged'],
    clause: clause.acknowledgement,
  },
  { from, on: 'cancellation', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
  {
    from,
    on: 'cancellation',
    to: 'cancelled',
    do: ['keep-call', 'show-cancelled'],
    clause: clause.falseAlert,
  },
  { from, on: 'spoken', to: from, do: ['log-spoken'], clause: clause.log },
  { from, on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.heardAlert },
];

/** Without a decision the distress stays before the person for two days. */
const forgottenIn = (from: Exclude<Open, 'listening'>): Row => ({
  from,
  on: 'distress-memory over',
  to: 'ended',
  do: ['log-put-away'],
  clause: clause.procedures,
});

/** What the master can decide as long as no decision was made. */
const decidedIn = (from: Exclude<Open, 'assisting'>): readonly Row[] => [
  {
    from,
    on: 'assist',
    to: 'assisting',
    do: ['log-assist', 'speak-received', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from,
    on: 'acknowledge',
    when: 'may-acknowledge',
    to: 'acknowledge-asked',
    do: ['ask-to-acknowledge'],
    clause: clause.acknowledgement,
  },
];

/** Listening, deciding and helping: the flow of MSC.1/Circ.1657. */
export const inHand: readonly Row[] = [
  ...heardIn('listening'),
  ...decidedIn('listening'),
  {
    from: 'listening',
    on: 'traffic',
    to: 'coast-answered',
    do: ['show-traffic', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'listening',
    on: 'listen-after-alert over',
    when: 'coast-acknowledged',
    to: 'coast-answered',
    do: ['advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'listening',
    on: 'listen-after-alert over',
    to: 'undecided',
    do: ['advise'],
    clause: clause.heardAlert,
  },

  ...heardIn('undecided'),
  forgottenIn('undecided'),
  ...decidedIn('undecided'),
  {
    from: 'undecided',
    on: 'traffic',
    to: 'coast-answered',
    do: ['show-traffic', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'undecided',
    on: 'no-traffic',
    when: 'alert-still-repeated',
    to: 'inform-coast',
    do: ['advise'],
    clause: clause.heardAlert,
  },
  { from: 'undecided', on: 'no-traffic', to: 'ended', do: ['log-nothing-more'], clause: clause.heardAlert },

  ...heardIn('coast-answered'),
  forgottenIn('coast-answered'),
  ...decidedIn('coast-answered'),
  { from: 'coast-answered', on: 'stand-by', to: 'ended', do: ['log-stand-by'], clause: clause.heardAlert },

  ...heardIn('inform-coast'),
  forgottenIn('inform-coast'),
  ...decidedIn('inform-coast'),
  {
    from: 'inform-coast',
    on: 'traffic',
    to: 'coast-answered',
    do: ['show-traffic', 'advise'],
    clause: clause.heardAlert,
  },
  { from: 'inform-coast', on: 'stand-by', to: 'ended', do: ['log-stand-by'], clause: clause.heardAlert },

  ...heardIn('assisting'),
  forgottenIn('assisting'),
];
