import { acknowledging } from './heard-distress/acknowledging.ts';
import { firstHeard } from './heard-distress/first-heard.ts';
import { inHand } from './heard-distress/in-hand.ts';
import type { Row } from './heard-distress/words.ts';

/** What becomes of another vessel's distress. */
export const heardDistressTransitions: readonly Row[] = [...firstHeard, ...inHand, ...acknowledging];
