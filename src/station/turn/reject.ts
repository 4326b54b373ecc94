import type { Dialogue } from '../state/dialogue.ts';
import { emit, type Turn } from './turn.ts';

/** Tells why an event was not followed. Nothing else happens. */
export function reject(
  turn: Turn,
  dialogue: Dialogue | null,
  code: string,
  message: string,
  more: { readonly received?: string; readonly expected?: string; readonly clause?: string } = {},
): void {
  emit(turn, dialogue, { kind: 'reject', issue: { code, message, at: [], ...more } });
}
