import type { Notice } from '../../result/index.ts';
import { issue } from '../texts.ts';

/** Fields of a `DSC` sentence. */
export const DSC_FIELDS = 11;

/** A notice about how many fields a `DSC` sentence has. */
export function countNotice(
  code: 'sentence-fields-missing' | 'sentence-fields-surplus' | 'sentence-legacy-layout',
  texts: readonly string[],
): Notice {
  const received = String(texts.length);
  return issue(code, { limit: DSC_FIELDS }, { at: ['DSC'], received, clause: 'IEC 61162-1, DSC sentence' });
}
