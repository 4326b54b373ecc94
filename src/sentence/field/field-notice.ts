import type { Notice } from '../../result/index.ts';
import { quote } from '../../result/index.ts';

/** A notice about one field of a sentence, fields counted from 1. */
export function fieldNotice(
  code: string,
  formatter: string,
  field: number,
  received: string,
  says: string,
  expected: string,
): Notice {
  return {
    code,
    message: `Field ${field} of the ${formatter} sentence, ${quote(received)}, ${says}`,
    at: [formatter, 'field', field],
    expected,
    received: quote(received),
    clause: `IEC 61162-1, ${formatter} sentence`,
  };
}
