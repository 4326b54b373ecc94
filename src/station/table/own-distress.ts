import { alertRows } from './own-distress/alert.ts';
import { cancellationRows } from './own-distress/cancellation.ts';
import type { Row } from './own-distress/words.ts';

/** What becomes of the own distress alert. */
export const ownDistressTransitions: readonly Row[] = [...alertRows, ...cancellationRows];
