import type { PhaseRow, Transition, Triggers, Waits } from '../../src/station/engine/procedure.ts';
import type { Turn } from '../../src/station/engine/turn.ts';
import type { Policy, StationSettings } from '../../src/station/index.ts';
import { fireOn } from '../../src/station/inputs/dialogues.ts';
import type { Dialogue } from '../../src/station/model/dialogue.ts';
import { lengthOf, type TimerName } from '../../src/station/model/timer.ts';
import type { incoming } from '../../src/station/procedures/incoming.ts';

// A misspelt name of a trigger, wait, timer, guard, action, phase or policy does not compile: `npm run types` checks
// that each line marked below is an error, and reports one that is none.

type Row = Transition<'incoming', 'is-automatic', 'show'>;
const row = { on: 'repeated', to: 'deciding', clause: 'alarms' } as const satisfies Row;
export const rows: readonly Row[] = [
  row,
  // @ts-expect-error a trigger
  { ...row, on: 'repeeted' },
  // @ts-expect-error the end of a wait
  { ...row, on: 'desicion over' },
  // @ts-expect-error the end of a wait of another procedure
  { ...row, on: 'alert-repeat over' },
  // @ts-expect-error a phase
  { ...row, to: 'decideing' },
  // @ts-expect-error a guard
  { ...row, when: 'is-automatik' },
  // @ts-expect-error an action
  { ...row, do: ['shwo'] },
];

export const phases: readonly PhaseRow<Waits['incoming']>[] = [
  { waits: ['decision'] },
  // @ts-expect-error a wait
  { waits: ['desicion'] },
  // @ts-expect-error a wait that is kept
  { waits: [], keeps: ['inactivty'] },
];

export const triggers: readonly [Triggers['outgoing'], Triggers['own-distress'], Triggers['heard-distress']] =
  [
    // @ts-expect-error a trigger of a call sent
    'abel',
    // @ts-expect-error a trigger of the own alert
    'pres',
    // @ts-expect-error a trigger of another vessel's distress
    'trafic',
  ];

declare const turn: Turn;
declare const dialogue: Dialogue;
export const fired = (): readonly boolean[] => [
  fireOn(turn, dialogue, 'channel free'),
  // @ts-expect-error a trigger
  fireOn(turn, dialogue, 'chanel free'),
];

export const length = lengthOf('alert-repeat');
// @ts-expect-error a timer
export const wrongLength = lengthOf('alert-repaet');
// @ts-expect-error a timer that a wait has
export const timerOf: (typeof incoming)['timerOf'] = (): TimerName => 'answer-from-shore';
// @ts-expect-error a timer of the settings
export const timers: StationSettings['timers'] = { 'alert-hol': 1 };
// @ts-expect-error a policy
export const policy: Policy = 'reject-bussy';
