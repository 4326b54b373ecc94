import type { Notice } from '../../result/index.ts';
import { issue } from '../texts.ts';

/**
 * The fields in the places of the eleven. One more empty field may stand before the acknowledgement: the first example
 * of IEC 61162-1 has it (from memory; its checksum holds).
 */
export function inEleven(texts: readonly string[]): readonly string[] {
  if (texts.length !== 12) return texts;
  const [end = '', mark = ''] = texts.slice(10);
  const isTwelve = texts[9] === '' && /^[RBS]$/.test(end) && (mark === '' || mark === 'E');
  return isTwelve ? texts.toSpliced(9, 1) : texts;
}

/** Address first, seven fields in all: the layout of M.493-6 days, told by ten digits in front. deviation: D-sentence-4 */
export function isLegacy(texts: readonly string[]): boolean {
  const first = texts[0] ?? '';
  return (first.length === 10 || first.length === 9) && /^\d+$/.test(first);
}

/** The seven fields in the places of the eleven. */
export function fromLegacy(texts: readonly string[], notices: Notice[]): string[] {
  const [address = '', format = '', category = '', nature = '', first = '', second = '', end = '', ...rest] =
    texts;
  notices.push(countNotice('sentence-legacy-layout', texts));
  const alert = format === '12';
  return [
    format,
    address,
    category,
    alert ? nature : first,
    alert ? first : second,
    '',
    '',
    '',
    alert ? '' : nature,
    end,
    '',
    ...rest,
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
