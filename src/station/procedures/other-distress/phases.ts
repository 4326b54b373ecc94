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
  shown: { waits: ['listen-after-alert'] },
  listening: { waits: ['listen-after-alert', 'distress-memory'] },
  undecided: { waits: ['distress-memory'] },
  'coast-answered': { waits: ['distress-memory'] },
  'inform-coast': { waits: ['distress-memory'] },
  assisting: { waits: ['distress-memory'] },
  'acknowledge-asked': { waits: ['inactivity'], keeps: ['distress-memory'] },
  'acknowledge-waiting': { waits: ['channel-wait'], keeps: ['distress-memory'] },
  'acknowledge-sending': { waits: ['transmission-limit'], keeps: ['distress-memory'] },
  cancelled: { waits: ['inactivity'] },
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
