import { calls } from './call-table.ts';
import { vhfChannelOf } from './element/channel-symbols.ts';
import type { DraftFields, FieldName } from './fields.ts';
import { kinds } from './kinds.ts';

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
  if (row.unsaid.header) fields.header = true;
  // One VHF channel applies to both directions.
  const repeats = row.format === 'individual' && vhfChannelOf(fields.receive) !== null;
  if (repeats && row.order.includes('transmit')) fields.transmit ??= fields.receive;
  for (const name of FILLED)
    if (fields[name] === null && row.order.includes(name)) fill(fields, name, row.unsaid);
}

function fill<Name extends FieldName>(fields: DraftFields, name: Name, from: Pick<DraftFields, Name>): void {
  fields[name] = from[name];
}
