import type { CallFields, ExpansionSet } from '../fields.ts';

/** What people call each field. */
export const fieldNames: Readonly<Record<keyof CallFields, string>> = {
  format: 'Format specifier',
  address: 'Address',
  category: 'Category',
  self: 'Self-identification',
  telecommand1: 'First telecommand',
  telecommand2: 'Second telecommand',
  distressed: 'Ship in distress',
  nature: 'Nature of distress',
  position: 'Position',
  header: 'Header of the position',
  time: 'Time of the position',
  subsequent: 'Type of subsequent communication',
  receive: 'First frequency or channel element',
  transmit: 'Second frequency or channel element',
  telephone: 'Telephone number',
  rest: 'Rest of the message',
  end: 'End of sequence',
  expansion: 'Expansion',
};

/** Every field, in no order of the air. */
export const allFields: readonly (keyof CallFields)[] = /* @__PURE__ */ Object.keys(
  fieldNames,
) as (keyof CallFields)[];

/** Symbols as people write them down: `90 00 72`, two dashes for a character that could not be read. */
export function shown(value: CallFields[keyof CallFields]): string {
  if (value === null || value === false) return 'none';
  if (value === true) return '55';
  if (typeof value === 'number') return String(value);
  return value.slice(0, 30).map(twoDigits).join(' ');
}

function twoDigits(symbol: number | null | ExpansionSet): string {
  if (symbol === null) return '––';
  return String(typeof symbol === 'object' ? symbol.specifier : symbol).padStart(2, '0');
}
