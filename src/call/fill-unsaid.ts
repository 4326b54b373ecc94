import type { CallFields, Symbols } from './fields.ts';
import { NO_INFORMATION } from './symbol.ts';

/** The fields of a call while they are being read. */
export type DraftFields = { -readonly [Key in keyof CallFields]: CallFields[Key] };

const NO_POSITION: Symbols = [99, 99, 99, 99, 99];
const NO_TIME: Symbols = [88, 88];
const NO_CHANNEL: Symbols = [NO_INFORMATION, NO_INFORMATION, NO_INFORMATION];

/** Puts in the symbols that the air carries where a cable has an empty field. deviation: D-sentence-9 */
export function fillWhatIsUnsaid(fields: DraftFields): void {
  const { format, telecommand1, position } = fields;
  if (format === 112 || fields.distressed !== null || fields.nature !== null) {
    fields.position ??= NO_POSITION;
    fields.time ??= NO_TIME;
    fields.subsequent ??= NO_INFORMATION;
    return;
  }
  if (telecommand1 === 121 && (position !== null || fields.end === 122)) {
    fields.header = true;
    fields.position ??= NO_POSITION;
    fields.time ??= NO_TIME;
    return;
  }
  if (position !== null) return;
  fields.receive ??= NO_CHANNEL;
  if (format === 123) return;
  const repeats = format === 120 && fields.receive[0] === 90;
  fields.transmit ??= repeats ? fields.receive : NO_CHANNEL;
}
