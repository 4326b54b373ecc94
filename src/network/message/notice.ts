import type { Notice } from '../../result/index.ts';

/** Where the rules of the network are known from; its text was not to be had. */
export const CLAUSE = 'IEC 61162-3, public list of parameter groups';

/** A notice about one field of a message. */
export function fieldNotice(
  code: string,
  { pgn, field }: { readonly pgn: number; readonly field: string },
  received: string,
  fact: string,
  expected: string,
): Notice {
  return {
    code,
    message: `PGN ${pgn} ${field} ${fact}: expected ${expected}, got ${received}`,
    at: [`PGN ${pgn}`, field],
    expected,
    received,
    clause: CLAUSE,
  };
}
