import type { CallFields, Symbols } from '../../call/index.ts';
import { digitsOf, NO_INFORMATION } from '../../call/internal.ts';
import type { Reading } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import type { TermOf } from '../../result/internal.ts';
import { lossNotice, type writingTexts } from '../texts.ts';
import { codeOfSymbol, letterOfEnd } from './field.ts';
import { writePlaceField } from './place-field.ts';

/**
 * The eleven fields of a `DSC` sentence without expansion. What a sentence has no place for is left out: the called
 * station of a received call, the caller of a commanded one. What has no code or no digits leaves its field empty.
 */
export function dscFields(
  fields: CallFields,
  direction: Reading<'call'>['direction'],
): [format: string, station: string, ...others: string[]] {
  const { format } = fields;
  const alert = format === 112;
  const aboutShip = fields.distressed !== null || (!alert && fields.nature !== null);
  return [
    code(format),
    stationField(fields, direction),
    alert ? '' : code(fields.category),
    code(alert ? fields.nature : fields.telecommand1),
    code(alert || aboutShip ? fields.subsequent : fields.telecommand2),
    writePlaceField(fields),
    timeOrNumber(fields),
    aboutShip ? (digitsOf(fields.distressed) ?? '') : '',
    aboutShip ? code(fields.nature) : '',
    letterOfEnd(fields.end),
    '',
  ];
}

function stationField(fields: CallFields, direction: Reading<'call'>['direction']): string {
  const station = direction === 'commanded' || fields.format === 102 ? fields.address : fields.self;
  return digitsOf(station) ?? '';
}

function timeOrNumber(fields: CallFields): string {
  if (fields.format !== 123) return digitsOf(fields.time) ?? '';
  const digits = digitsOf(fields.telephone?.slice(1) ?? null) ?? '';
  return fields.telephone?.[0] === 105 ? digits.slice(1) : digits;
}

function code(symbol: number | null): string {
  return symbol === null ? '' : (codeOfSymbol(symbol) ?? '');
}

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
