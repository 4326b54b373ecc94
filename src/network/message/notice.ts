import type { Notice } from '../../result/index.ts';
import type { ParamsOf } from '../../result/internal.ts';
import { issue, type NetworkCode, type networkTexts } from '../texts.ts';

/** Where the rules of the network are known from; its text was not to be had. */
export const CLAUSE = 'IEC 61162-3, public list of parameter groups';

/** A notice about one field of a message. */
export function fieldNotice<Code extends NetworkCode>(
  code: Code,
  params: ParamsOf<typeof networkTexts, Code> & { readonly pgn: number; readonly field: string },
  received: string,
): Notice {
  const { pgn, field } = params;
  return issue(code, params, { at: [`PGN ${pgn}`, field], received, clause: CLAUSE });
}
