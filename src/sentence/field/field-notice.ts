import type { Notice } from '../../result/index.ts';

import { quote } from '../../result/internal.ts';

/** A notice about one field of a sentence, fields counted from 1. */
export function fieldNotice(
  code: string,
  formatter: string,
  field: number,
  received: string,
  expected: string,
  fact?: string,
): Notice {
  const got = quote(received);
  return {
    code,
    message: `${formatter} field ${field}: ${fact === undefined ? `expected ${expected}, got ${got}` : `${got} ${fact}`}`,
    at: [formatter, 'field', field],
    expected,
    received: got,
    clause: `IEC 61162-1, ${formatter} sentence`,
  };
}
