import type { ReportedPosition } from '../../position/index.ts';
import type { Call, ExpansionData } from '../call.ts';
import { expansionSets, readExpansion } from '../element/expansion.ts';
import { identityOf, identitySymbols } from '../element/identity-symbols.ts';
import { fractionOf, positionOf } from '../element/place-symbols.ts';
import type { CallFields } from '../fields.ts';

/** What every call says of its sender. */
export interface Sender {
  readonly from: string | null;
  readonly expansion?: ExpansionData;
}

/** Reads what every call carries: the self-identification and the expansion. */
export function readSender(fields: CallFields): Sender {
  const { data } = readExpansion(fields.expansion);
  const from = identityOf(fields.self);
  return data === null ? { from } : { from, expansion: data };
}

/** The position of a call, with the finer minutes of its expansion. */
export function readPosition(fields: CallFields): ReportedPosition | null {
  return positionOf(fields.position, readExpansion(fields.expansion).fraction);
}

/** The fields of {@link readSender} and the expansion of a position, if the call has one. */
export function senderFields(
  call: Pick<Call, 'from' | 'expansion'>,
  position: ReportedPosition | null = null,
): Pick<CallFields, 'self' | 'expansion'> {
  return { self: identitySymbols(call.from), expansion: expansionSets(call.expansion, fractionOf(position)) };
}
