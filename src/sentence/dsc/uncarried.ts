import type { CallFields } from '../../call/index.ts';
import { NO_INFORMATION } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';

type Field = Exclude<keyof CallFields, 'header' | 'expansion'>;

const NAMES: Readonly<Record<Field, string>> = {
  format: 'Format specifier',
  address: 'Address',
  category: 'Category',
  self: 'Self-identification',
  telecommand1: 'First telecommand',
  telecommand2: 'Second telecommand',
  distressed: 'Vessel in distress',
  nature: 'Nature of distress',
  position: 'Position',
  time: 'Time of the position',
  subsequent: 'Type of subsequent communication',
  receive: 'First frequency or channel element',
  transmit: 'Second frequency or channel element',
  telephone: 'Telephone number',
  rest: 'Rest of the message',
  end: 'End of sequence',
};
const FIELDS = /* @__PURE__ */ Object.keys(NAMES) as readonly Field[];
/** A VHF channel may stand in both elements or in the first alone (ITU-R M.493). */
const VHF = 90;

/**
 * What the sentence of a call does not carry: the fields that reading it gives differently, `open` excepted,
 * which a sentence has no place for.
 */
export function uncarriedNotices(fields: CallFields, read: CallFields, open: Field): Notice[] {
  return FIELDS.filter(
    (field) =>
      field !== open &&
      !saysNothing(fields[field]) &&
      shown(fields[field]) !== shown(read[field]) &&
      !(
        field === 'transmit' &&
        fields.receive?.[0] === VHF &&
        shown(fields.transmit) === shown(fields.receive)
      ),
  ).map((field) => uncarriedNotice(NAMES[field], shown(fields[field])));
}

/** Something in a call that its sentence cannot carry. */
export function uncarriedNotice(name: string, received: string): Notice {
  return {
    code: 'sentence-content-lost',
    message: `${name}: a DSC sentence cannot carry ${received}`,
    at: ['DSC'],
    received,
    clause: 'IEC 61162-1, DSC sentence',
  };
}

function saysNothing(value: CallFields[Field]): boolean {
  if (typeof value === 'number' || value === null) return value === null || value === NO_INFORMATION;
  return value.every((symbol) => symbol === NO_INFORMATION);
}

/** Symbols as people write them down, two dashes for a character that could not be read. */
function shown(value: CallFields[Field]): string {
  if (typeof value === 'number' || value === null) return `symbol ${value ?? '––'}`;
  return `symbols ${value.map((symbol) => (symbol === null ? '––' : String(symbol).padStart(2, '0'))).join(' ')}`;
}
