import type { ExpansionSet } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';

import { quote } from '../../result/internal.ts';
import { issue } from '../texts.ts';

const CLAUSE = 'IEC 61162-1, DSC and DSE sentences';

/** Joined though nothing announced it. */
export function unannouncedNotice(station: string): Notice {
  const more = { at: ['DSC', 'field', 11], received: quote(''), clause: CLAUSE };
  return issue('sentence-expansion-unannounced', { station: named(station) }, more);
}

/** Joined though other sentences came between. */
export function lateNotice(station: string, between: number): Notice {
  const more = { at: ['DSE'], received: String(between), clause: CLAUSE };
  return issue('sentence-expansion-late', { station: named(station) }, more);
}

/** Not joined, or not in full. */
export function missingNotice(received: number, sets: readonly ExpansionSet[]): Notice {
  const more = { at: ['DSC', 'field', 11], received: String(received), clause: CLAUSE };
  if (received === 0) return issue('sentence-expansion-missing', {}, more);
  const applied = sets.length === 0 ? ['none'] : sets.map(({ specifier }) => specifier);
  return issue('sentence-expansion-incomplete', { applied }, more);
}

/** Belongs to no open call, while another station's waits for its own or while none does. */
export function aloneNotice(station: string, waiting: string | null): Notice {
  const more = { at: ['DSE', 'field', 4], received: named(station), clause: CLAUSE };
  return waiting === null
    ? issue('sentence-expansion-alone', {}, more)
    : issue('sentence-expansion-other-station', { waiting: named(waiting) }, more);
}

/** An identity as it is; any other text of the field quoted, so that a message stays short. */
function named(station: string): string {
  return /^\d{9}$/.test(station) ? station : quote(station);
}
