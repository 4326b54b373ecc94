import type { NetworkMessage } from '../../report/index.ts';
import { safely } from '../../result/internal.ts';
import type { ParameterValue } from '../field/field.ts';
import { PARAMETER_GROUPS } from './layout.ts';
import { decodePayload } from './payload.ts';

/**
 * The fields of a message of which a reading has no kind, or not all fields.
 *
 * @param message - a source of a reading
 * @returns its fields, or `undefined` when the library has no layout of its parameter group
 *
 * @example
 * ```ts
 * import { decodeMessage, readNetworkLog } from 'seahail/network';
 *
 * const [reading] = readNetworkLog('(1780322400.250000) can0 09F80123#004B942188F71FFC');
 * const [message] = reading?.sources ?? [];
 * if (message) console.log(decodeMessage(message)?.values.latitude); // 56.3366656
 * ```
 */
export function decodeMessage(message: NetworkMessage):
  | {
      /** Name of the parameter group in public tables. */
      readonly name: string;
      /** Values by field name; units and resolution of each are those of {@link PARAMETER_GROUPS}. */
      readonly values: Readonly<Record<string, ParameterValue>>;
      /** Whether the message ends before its last field. */
      readonly short: boolean;
    }
  | undefined {
  return safely(
    () => decoded(message),
    () => undefined,
  );
}

function decoded(message: NetworkMessage): NonNullable<ReturnType<typeof decodeMessage>> | undefined {
  const { pgn, payload } = message ?? {};
  if (typeof payload !== 'string') return undefined;
  const group = PARAMETER_GROUPS.find((row) => row.pgn === pgn);
  if (group === undefined) return undefined;
  const bytes = Uint8Array.from(payload.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
  const { values, short } = decodePayload(group, bytes);
  return {
    name: group.name,
    values: values as NonNullable<ReturnType<typeof decodeMessage>>['values'],
    short,
  };
}
