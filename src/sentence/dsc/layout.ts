import type { Notice } from '../../result/index.ts';
import { textAt } from '../field/text-at.ts';
import { issue } from '../texts.ts';

/**
 * The fields in the places of the eleven. One more empty field may stand before the acknowledgement: the first example
 * of IEC 61162-1 has it (from memory; its checksum holds).
 */
export function inEleven(texts: readonly string[]): readonly string[] {
  return /^,[RBS],E?$/.test(texts.slice(9).join()) ? texts.toSpliced(9, 1) : texts;
}

/** Address first, seven fields in all: the layout of M.493-6 days, told by ten digits in front. deviation: D-sentence-4 */
export function isLegacy(texts: readonly string[]): boolean {
  return /^\d{9,10}$/.test(textAt(texts, 0));
}

/** The seven fields in the places of the eleven. */
export function fromLegacy(texts: readonly string[], notices: Notice[]): string[] {
  notices.push(countNotice('sentence-legacy-layout', texts));
  const at = (index: number): string => textAt(texts, index);
  const isAlert = at(1) === '12';
  const telecommands = isAlert ? [at(3), at(4)] : [at(4), at(5)];
  return [
    at(1),
    at(0),
    at(2),
    ...telecommands,
    '',
    '',
    '',
    isAlert ? '' : at(3),
    at(6),
    '',
    ...texts.slice(7),
  ];
}

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
