import { clause } from '../../state/clause.ts';
import { type Row, relayedByCoast } from './words.ts';

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
];
