import type { Notice } from '../../result/index.ts';
import { type ParamsOf, quote } from '../../result/internal.ts';
import { issue, type SentenceCode, type sentenceTexts } from '../texts.ts';

/** A notice about one field of a sentence, fields counted from 1. */
export function fieldNotice<Code extends SentenceCode>(
  code: Code,
  params: ParamsOf<typeof sentenceTexts, Code> & { readonly formatter: string; readonly field: number },
  received: string,
): Notice {
  const { formatter, field } = params;
  return issue(code, params, {
    at: [formatter, 'field', field],
    received: quote(received),
    clause: `IEC 61162-1, ${formatter} sentence`,
  });
}
