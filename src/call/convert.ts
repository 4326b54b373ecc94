import type { Notice } from '../result/index.ts';
import { safely, want } from '../result/internal.ts';
import type { Call } from './call.ts';
import { calls, type ReadFields } from './call-table.ts';
import { vhfChannelOf } from './element/channel-symbols.ts';
import {
  type CallFields,
  type DraftFields,
  type ExpansionSet,
  emptyFields,
  type FieldName,
} from './fields.ts';
import { kinds } from './kinds.ts';

/**
 * What the fields of a call mean. Never fails: fields that fit no kind give an `'unrecognised-call'`,
 * symbols outside the tables keep their number as a name, and whatever the call as such does not say
 * stays with it in `asReceived`, so that {@link encodeFields} gives back the same fields.
 *
 * The notices name what differs from the tables of ITU-R M.493 and what could not be read.
 *
 * @param received - the fields, each as the symbols received; one that is left out, or of another type, is one that
 * the call does not carry
 * @returns the call, and notices about odd, missing and unknown symbols
 *
 * @example
 * ```ts
 * import { decodeFields, encodeFields, composePositionRequest } from 'seahail/call';
 *
 * const fields = encodeFields(composePositionRequest({ from: '232999871', to: '232999142' }));
 * const { call, notices } = decodeFields({ ...fields, category: 100 });
 * console.log(call.kind); // position-request
 * console.log(notices[0]?.code); // call-category-unusual
 * ```
 */
export function decodeFields(received: CallFields): {
  readonly call: Call;
  readonly notices: readonly Notice[];
} {
  const { call, notices } = readFields(received);
  return { call, notices };
}

/** The same with what {@link expandFields} needs. */
export function readFields(received: CallFields): ReadFields {
  return safely(
    () => calls.read(received),
    () => calls.read(emptyFields),
  );
}

/** What {@link readFields} gives for the same fields with an expansion that came later, for less work. */
export function expandFields(before: ReadFields, sets: readonly ExpansionSet[]): ReadFields {
  return calls.expand(before, sets);
}

/**
 * The fields of a call: as received while they still mean this call, else as the tables of ITU-R M.493
 * compose it. So what was received goes out again symbol by symbol, and a call changed by spreading is
 * encoded again.
 *
 * @param call - any call
 * @returns its fields, each as the symbols sent
 * @throws TypeError, RangeError when a value has no symbols, such as an identity of eight digits
 *
 * @see {@link decodeFields}
 *
 * @example
 * ```ts
 * import { encodeFields, composeTestCall } from 'seahail/call';
 *
 * const fields = encodeFields(composeTestCall({ from: '232999871', to: '002329990' }));
 * console.log(fields.telecommand1); // 118
 * ```
 */
export function encodeFields(call: Call): CallFields {
  want('call', 'a call', call, 'kind');
  return calls.fieldsOf(call);
}

/** What a cable leaves empty although the air carries it. */
const FILLED = ['position', 'time', 'subsequent', 'receive', 'transmit'] as const;

/**
 * Puts in the symbols that the air carries where a cable has an empty field: those of a call that gives no position,
 * time, firstTelecommand or channel. deviation: D-sentence-9
 */
export function fillWhatIsUnsaid(fields: DraftFields): void {
  const namesShip = fields.distressed !== null || fields.nature !== null;
  const row =
    calls.rowFor(fields) ?? (namesShip ? kinds.find(({ order }) => order.includes('distressed')) : null);
  if (!row || (fields.position !== null && !row.order.includes('position'))) return;
  if (row.unsaid().header) fields.header = true;
  // One VHF channel applies to both directions.
  const repeats = row.format === 'individual' && vhfChannelOf(fields.receive) !== null;
  if (repeats && row.order.includes('transmit')) fields.transmit ??= fields.receive;
  for (const name of FILLED)
    if (fields[name] === null && row.order.includes(name)) fill(fields, name, row.unsaid());
}

function fill<Name extends FieldName>(fields: DraftFields, name: Name, from: Pick<DraftFields, Name>): void {
  fields[name] = from[name];
}
