import type { CallFields } from '../fields.ts';

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
