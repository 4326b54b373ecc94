import type { PhaseRow, Transition } from '../../engine/procedure.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import type { HeardDistressTrigger, HeardDistressWait } from '../../model/trigger.ts';

/** Conditions that the table of `heardDistressTransitions` names. */
export type HeardDistressGuard =
  | 'alert-still-repeated'
  | 'coast-acknowledged'
  | 'damaged'
  | 'from-coast'
  | 'is-coast'
  | 'known-alert'
  | 'states-another-nature'
  | 'may-acknowledge'
  | 'may-send';

/** Actions that the table of `heardDistressTransitions` names. */
export type HeardDistressAction =
  | 'advise'
  | 'alarm'
  | 'ask-to-acknowledge'
  | 'compose-acknowledgement'
  | 'keep-acknowledgement'
  | 'keep-call'
  | 'log-assist'
  | 'log-nothing-more'
  | 'log-closed'
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

export const heardDistressPhases: Readonly<
  Record<Dialogue<'heard-distress'>['phase'], PhaseRow<HeardDistressWait>>
> = {
  shown: { meaning: 'received with errors: for the person to read', waits: ['listen-after-alert'] },
  listening: {
    meaning: 'listening on channel 16; the acknowledgement is left to coast stations',
    waits: ['listen-after-alert', 'distress-memory'],
  },
  undecided: {
    meaning: 'nobody acknowledged within five minutes: can distress traffic be heard?',
    waits: ['distress-memory'],
  },
  'coast-answered': {
    meaning: 'acknowledged, or distress traffic is in progress: can this vessel assist?',
    waits: ['distress-memory'],
  },
  'inform-coast': {
    meaning: 'no traffic, and the alert continues: inform a coast station',
    waits: ['distress-memory'],
  },
  assisting: {
    meaning: 'assisting, as the coast station or the vessel in distress directs',
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
  cancelled: { meaning: 'the vessel cancelled her alert', waits: ['inactivity'] },
};

/** One row of the table. */
export type Row = Transition<
  Dialogue<'heard-distress'>['phase'],
  HeardDistressTrigger,
  HeardDistressGuard,
  HeardDistressAction
>;

/** Phases in which a distress is in hand. */
export type Open = 'listening' | 'undecided' | 'coast-answered' | 'inform-coast' | 'assisting';

/**
 * A coast station that relays has the distress in hand, and asks ships for help: as good as its acknowledgement.
 * Japan, Operation Regulations Art. 81-5(4); 47 CFR 80.1121(e).
 */
export const relayedByCoast = (
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
