import { clause } from '../state/clause.ts';
import type { HeardDistressPhase } from '../state/dialogue.ts';
import type { PhaseRow, Transition } from '../state/procedure.ts';

/** Conditions that the table of {@link heardDistressTransitions} names. */
export type HeardDistressGuard =
  | 'alert-still-repeated'
  | 'coast-acknowledged'
  | 'damaged'
  | 'from-coast'
  | 'is-coast'
  | 'known-alert'
  | 'tells-another-nature'
  | 'may-acknowledge';

/** Actions that the table of {@link heardDistressTransitions} names. */
export type HeardDistressAction =
  | 'advise'
  | 'alarm'
  | 'ask-to-acknowledge'
  | 'compose-acknowledgement'
  | 'keep-acknowledgement'
  | 'keep-call'
  | 'log-assist'
  | 'log-nothing-more'
  | 'log-put-away'
  | 'log-sent'
  | 'log-spoken'
  | 'log-stand-by'
  | 'send'
  | 'show-acknowledged'
  | 'show-cancelled'
  | 'show-damaged'
  | 'show-failure'
  | 'show-heard'
  | 'show-repeated'
  | 'show-traffic'
  | 'speak-received'
  | 'stop-sending'
  | 'tune-16';

export const heardDistressPhases: Readonly<Record<HeardDistressPhase, PhaseRow>> = {
  shown: { meaning: 'received with errors: for the person to read', waits: ['listen-after-alert'] },
  listening: {
    meaning: 'listening on channel 16; the acknowledgement is left to coast stations',
    waits: ['listen-after-alert', 'distress-memory'],
  },
  undecided: {
    meaning: 'nobody acknowledged in five minutes: is distress traffic heard?',
    waits: ['distress-memory'],
  },
  'coast-answered': {
    meaning: 'acknowledged, or traffic is going on: can this vessel help?',
    waits: ['distress-memory'],
  },
  'inform-coast': {
    meaning: 'no traffic, and the alert goes on: tell a coast station',
    waits: ['distress-memory'],
  },
  assisting: {
    meaning: 'helping, as the coast station or the vessel in distress directs',
    waits: ['distress-memory'],
  },
  'acknowledge-asked': {
    meaning: 'the person is asked whether to acknowledge by DSC',
    waits: ['inactivity'],
    keeps: ['distress-memory'],
  },
  'acknowledge-waiting': {
    meaning: 'the acknowledgement waits for channel 70',
    waits: ['channel-wait'],
    keeps: ['distress-memory'],
  },
  'acknowledge-sending': {
    meaning: 'the acknowledgement is on the air',
    waits: ['transmission-limit'],
    keeps: ['distress-memory'],
  },
  cancelled: { meaning: 'the vessel took her alert back', waits: ['inactivity'] },
};

type Row = Transition<HeardDistressPhase, HeardDistressGuard, HeardDistressAction>;
type Open = 'listening' | 'undecided' | 'coast-answered' | 'inform-coast' | 'assisting';

/** A coast station that relays has the distress in hand, and asks ships for help: as good as its acknowledgement. */
const relayedByCoast = (
  from: Open | 'new' | 'shown' | 'acknowledge-asked' | 'acknowledge-waiting',
  keep: readonly HeardDistressAction[],
): Row => ({
  from,
  on: 'relay',
  when: 'from-coast',
  to: 'coast-answered',
  do: ['alarm', ...keep, 'show-heard', 'tune-16', 'advise'],
  clause: clause.coastRelay,
});

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

/** What becomes of another vessel's distress. */
export const heardDistressTransitions: readonly Row[] = [
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
  { from: 'shown', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  {
    from: 'shown',
    on: 'listen-after-alert over',
    to: 'ended',
    do: ['log-put-away'],
    clause: clause.procedures,
  },

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

  ...heardWhileAcknowledging('acknowledge-asked'),
  {
    from: 'acknowledge-asked',
    on: 'confirm',
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
  { from: 'acknowledge-waiting', on: 'close', to: 'undecided', do: ['advise'], clause: clause.procedures },
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
  { from: 'cancelled', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'cancelled', on: 'inactivity over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
];
