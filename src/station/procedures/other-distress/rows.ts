import { clause } from '../../model/clause.ts';
import { type Open, type Row, relayedByCoast } from './phases.ts';

/** A distress is heard for the first time, or again after errors or a cancellation. */
export const firstHeard: readonly Row[] = [
  {
    from: 'new',
    on: 'alert',
    when: 'damaged',
    to: 'shown',
    do: ['alarm', 'show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'new',
    on: 'alert',
    when: 'known-alert',
    to: 'listening',
    do: ['show-repeated', 'advise'],
    clause: clause.alarms,
  },
  {
    from: 'new',
    on: 'alert',
    to: 'listening',
    do: ['alarm', 'show-heard', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'new',
    on: 'relay',
    when: 'damaged',
    to: 'shown',
    do: ['alarm', 'show-damaged'],
    clause: clause.errorCheck,
  },
  relayedByCoast('new', []),
  {
    from: 'new',
    on: 'relay',
    when: 'known-alert',
    to: 'listening',
    do: ['show-repeated', 'advise'],
    clause: clause.alarms,
  },
  {
    from: 'new',
    on: 'relay',
    to: 'listening',
    do: ['alarm', 'show-heard', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'new',
    on: 'acknowledgement',
    when: 'damaged',
    to: 'shown',
    do: ['alarm', 'show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'new',
    on: 'acknowledgement',
    when: 'from-coast',
    to: 'coast-answered',
    do: ['alarm', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'new',
    on: 'acknowledgement',
    to: 'listening',
    do: ['alarm', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'new',
    on: 'cancellation',
    when: 'damaged',
    to: 'shown',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  { from: 'new', on: 'cancellation', to: 'cancelled', do: ['show-cancelled'], clause: clause.falseAlert },

  // A good reception of the same distress after a damaged one starts the flow.
  {
    from: 'shown',
    on: 'alert',
    when: 'damaged',
    to: 'shown',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'shown',
    on: 'alert',
    to: 'listening',
    do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'shown',
    on: 'relay',
    when: 'damaged',
    to: 'shown',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  relayedByCoast('shown', ['keep-call']),
  {
    from: 'shown',
    on: 'relay',
    to: 'listening',
    do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'shown',
    on: 'acknowledgement',
    when: 'damaged',
    to: 'shown',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'shown',
    on: 'acknowledgement',
    when: 'from-coast',
    to: 'coast-answered',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'shown',
    on: 'acknowledgement',
    to: 'listening',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  {
    from: 'shown',
    on: 'cancellation',
    when: 'damaged',
    to: 'shown',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'shown',
    on: 'cancellation',
    to: 'cancelled',
    do: ['keep-call', 'show-cancelled'],
    clause: clause.falseAlert,
  },
  { from: 'shown', on: 'dismiss', to: 'ended', do: ['log-closed'], clause: clause.procedures },
  {
    from: 'shown',
    on: 'listen-after-alert over',
    to: 'ended',
    do: ['log-closed'],
    clause: clause.procedures,
  },

  { from: 'cancelled', on: 'cancellation', to: 'cancelled', do: ['keep-call'], clause: clause.falseAlert },
  {
    from: 'cancelled',
    on: 'alert',
    when: 'damaged',
    to: 'cancelled',
    do: ['show-damaged'],
    clause: clause.errorCheck,
  },
  {
    from: 'cancelled',
    on: 'alert',
    to: 'listening',
    do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
    clause: clause.heardAlert,
  },
  { from: 'cancelled', on: 'dismiss', to: 'ended', do: ['log-closed'], clause: clause.procedures },
  { from: 'cancelled', on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: clause.procedures },
];

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
    when: 'states-another-nature',
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
  { from, on: 'dismiss', to: 'ended', do: ['log-closed'], clause: clause.heardAlert },
];

/** Without a decision the distress stays before the person for two days. */
const forgottenIn = (from: Exclude<Open, 'listening'>): Row => ({
  from,
  on: 'distress-memory over',
  to: 'ended',
  do: ['log-closed'],
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

/** Calls that come in while an acknowledgement is under way are kept, and change nothing else. */
const heardWhileAcknowledging = (
  from: 'acknowledge-asked' | 'acknowledge-waiting' | 'acknowledge-sending',
): readonly Row[] => [
  { from, on: 'alert', to: from, do: ['keep-call', 'show-repeated'], clause: clause.heardAlert },
  { from, on: 'relay', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
  // What is on the air already is not broken off for it.
  ...(from === 'acknowledge-sending' ? [] : [relayedByCoast(from, ['keep-call'])]),
  { from, on: 'relay', to: from, do: ['keep-call', 'show-repeated'], clause: clause.relay },
  { from, on: 'acknowledgement', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
  { from, on: 'cancellation', when: 'damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
];

/** An acknowledgement by DSC, from the question to the air. */
export const acknowledging: readonly Row[] = [
  ...heardWhileAcknowledging('acknowledge-asked'),
  {
    from: 'acknowledge-asked',
    on: 'confirm',
    when: 'may-send',
    to: 'acknowledge-waiting',
    do: ['compose-acknowledgement'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-asked',
    on: 'decline',
    to: 'undecided',
    do: ['advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-asked',
    on: 'acknowledgement',
    to: 'coast-answered',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-asked',
    on: 'cancellation',
    to: 'cancelled',
    do: ['keep-call', 'show-cancelled'],
    clause: clause.falseAlert,
  },
  {
    from: 'acknowledge-asked',
    on: 'inactivity over',
    to: 'undecided',
    do: ['advise'],
    clause: clause.procedures,
  },

  ...heardWhileAcknowledging('acknowledge-waiting'),
  {
    from: 'acknowledge-waiting',
    on: 'channel free',
    to: 'acknowledge-sending',
    do: ['send'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-waiting',
    on: 'acknowledgement',
    to: 'coast-answered',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-waiting',
    on: 'cancellation',
    to: 'cancelled',
    do: ['keep-call', 'show-cancelled'],
    clause: clause.falseAlert,
  },
  { from: 'acknowledge-waiting', on: 'dismiss', to: 'undecided', do: ['advise'], clause: clause.procedures },
  {
    from: 'acknowledge-waiting',
    on: 'channel-wait over',
    to: 'undecided',
    do: ['advise'],
    clause: clause.acknowledgement,
  },

  ...heardWhileAcknowledging('acknowledge-sending'),
  {
    from: 'acknowledge-sending',
    on: 'sent',
    when: 'is-coast',
    to: 'coast-answered',
    do: ['log-sent', 'speak-received', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-sending',
    on: 'sent',
    to: 'assisting',
    do: ['log-sent', 'speak-received', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-sending',
    on: 'send-failed',
    to: 'undecided',
    do: ['show-failure', 'advise'],
    clause: clause.acknowledgement,
  },
  {
    from: 'acknowledge-sending',
    on: 'transmission-limit over',
    to: 'undecided',
    do: ['stop-sending', 'show-failure', 'advise'],
    clause: clause.acknowledgement,
  },
];

/** What becomes of another vessel's distress. */
export const heardDistressTransitions: readonly Row[] = [...firstHeard, ...inHand, ...acknowledging];
