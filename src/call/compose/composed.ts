import type { Call, ExpansionData } from '../call.ts';
import { calls } from '../call-table.ts';
import { readExpansion } from '../element/expansion.ts';
import { inWords, wrongType } from '../wrong-type.ts';

/** What every composed call has beside its message. */
export interface ComposeOptions {
  /** Own identity. */
  readonly from: string;
  /**
   * Data sets of ITU-R M.821-1; finer minutes of a position need none. Speed and course are rounded to the tenths that
   * are sent.
   */
  readonly expansion?: ExpansionData | undefined;
}

/**
 * The call, with its expansion as it is sent, once every value in it is known to have symbols.
 *
 * @throws TypeError when a value is of another type, RangeError when one has no symbols or the call is to its sender
 */
export function composed<Kind extends Call>(call: Kind, options: Pick<ComposeOptions, 'expansion'>): Kind {
  const { expansion } = options;
  const whole = expansion === undefined ? call : { ...call, expansion };
  const wrong = wrongType(whole);
  if (wrong !== null) throw new TypeError(inWords(wrong));
  if (whole.to !== null && 'mmsi' in whole.to && whole.to.mmsi === whole.from)
    throw new RangeError(`to: expected another station, got the own identity ${whole.from}`);
  if (expansion !== undefined) wantSendable(expansion);
  const fields = calls.compose(whole);
  const { data } = readExpansion(fields.expansion);
  return data === null ? call : { ...call, expansion: data };
}

/** ITU-R M.821-1, sets 100 to 106. What was received may hold others, and is sent as received. */
function wantSendable({ personsOnBoard = 0, requested = [], unavailable = [] }: ExpansionData): void {
  if (!Number.isInteger(personsOnBoard))
    throw new RangeError(`persons on board: expected a whole number, got ${personsOnBoard}`);
  for (const [name, sets] of Object.entries({ requested, unavailable }))
    for (const set of sets)
      if (!(Number.isInteger(set) && set >= 100 && set <= 106))
        throw new RangeError(`${name}: expected a data set from 100 to 106, got ${set}`);
}
