import type { CodedText } from '../result/index.ts';
import { givenInWords } from '../result/internal.ts';

/**
 * A text of a plan or channel as `translate` of `seahail/locale` takes it: a `note`, `region`, `caution`, `powerRule`,
 * `notAssignableReason`, `selectiveCallRule`, the `when` of a power limit, or one of the `cautions` and `rules` of a
 * plan.
 *
 * The code is a hash of the English text. So a text of your own, or one that was changed, has no translation and stays
 * English: no translation can say what the plan no longer says.
 *
 * @param text - the text as the plan has it
 * @returns the text with its code
 * @throws TypeError when there is no text: many texts of a channel may be `null`
 *
 * @example
 * ```ts
 * import { findChannel, planText } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { translate } from 'seahail/locale';
 * import { german } from 'seahail/locale/de';
 *
 * const found = findChannel(internationalPlan, '08');
 * if (found.ok) console.log(translate(planText(found.value.note), german).text); // nur Verkehr zwischen Schiffen
 * ```
 */
export function planText(text: string): CodedText {
  if (typeof text !== 'string') throw new TypeError(`planText: expected a text, got ${givenInWords(text)}`);
  // The hash of Fowler, Noll and Vo, 32 bits of its variant 1a.
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ (letter.codePointAt(0) as number), 0x01000193) >>> 0;
  return { code: `channel-text-${hash.toString(36)}`, params: {}, message: text };
}
