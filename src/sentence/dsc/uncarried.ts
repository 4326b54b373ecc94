import type { CallFields, Symbols } from '../../call/index.ts';
import { NO_INFORMATION } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';
import type { TermOf } from '../../result/internal.ts';
import { lossNotice, type writingTexts } from '../texts.ts';

type Field = TermOf<typeof writingTexts, 'lost-content'>;

const FIELDS: readonly Field[] = [
  'format',
  'address',
  'category',
  'self',
  'telecommand1',
  'telecommand2',
  'distressed',
  'nature',
  'position',
  'time',
  'subsequent',
  'receive',
  'transmit',
  'telephone',
  'rest',
  'end',
];
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
  ).map((content) =>
    lossNotice(
      'sentence-content-lost',
      { content, count: symbolsIn(fields[content]).length },
      { at: ['DSC'], received: shown(fields[content]), clause: 'IEC 61162-1, DSC sentence' },
    ),
  );
}

function saysNothing(value: CallFields[Field]): boolean {
  if (typeof value === 'number' || value === null) return value === null || value === NO_INFORMATION;
  return value.every((symbol) => symbol === NO_INFORMATION);
}

/** Symbols as people write them down, two dashes for a character that could not be read. */
function shown(value: CallFields[Field]): string {
  return symbolsIn(value)
    .map((symbol) => (symbol === null ? '––' : String(symbol).padStart(2, '0')))
    .join(' ');
}

function symbolsIn(value: CallFields[Field]): Symbols {
  return typeof value === 'number' || value === null ? [value] : value;
}
