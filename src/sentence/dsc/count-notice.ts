import type { Notice } from '../../result/index.ts';

/** Fields of a `DSC` sentence. */
export const DSC_FIELDS = 11;

/** A notice about how many fields a `DSC` sentence has. */
export function countNotice(code: string, texts: readonly string[], says: string): Notice {
  return {
    code,
    message: `DSC sentence: expected ${DSC_FIELDS} fields, got ${texts.length}, ${says}`,
    at: ['DSC'],
    expected: `${DSC_FIELDS} fields`,
    received: String(texts.length),
    clause: 'IEC 61162-1, DSC sentence',
  };
}
