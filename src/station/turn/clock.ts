import type { Turn } from './turn.ts';

/** Greatest time value of ECMA-262, milliseconds to either side of 1970. */
export const LAST_INSTANT = 8.64e15;

/**
 * Sets the station's clock to the instant of an event.
 *
 * A clock that went back takes every instant of the state with it, so that what was waited for takes as long as it
 * should have. An instant that no calendar has leaves the clock where it was: beyond, milliseconds are lost.
 */
export function moveClock({ state }: Turn, at: number): void {
  if (!(Math.abs(at) <= LAST_INSTANT)) return;
  const shift = at - state.now;
  state.now = at;
  if (shift >= 0) return;
  for (const dialogue of state.dialogues) {
    dialogue.openedAt += shift;
    dialogue.changedAt += shift;
    const waits: Record<string, number> = {};
    for (const wait in dialogue.waits) waits[wait] = (dialogue.waits[wait] as number) + shift;
    dialogue.waits = waits;
    if (dialogue.procedure === 'heard-distress' && dialogue.lastAlertAt !== null)
      dialogue.lastAlertAt += shift;
    if (dialogue.procedure === 'own-distress' && dialogue.alertedAt !== null) dialogue.alertedAt += shift;
  }
  state.heardAlerts = state.heardAlerts.map((alert) => ({ ...alert, lastAt: alert.lastAt + shift }));
  if (state.fix !== null) state.fix = { ...state.fix, at: state.fix.at + shift };
}
