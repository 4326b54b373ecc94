import type { CallFields } from '../../call/index.ts';
import { digitsOf } from '../../call/internal.ts';
import type { Reading } from '../../report/index.ts';
import { writePlaceField } from './place-field.ts';
import { codeOfSymbol, letterOfEnd } from './symbol-code.ts';

/**
 * The eleven fields of a `DSC` sentence. What a sentence has no place for is left out: the called station
 * of a received call, the caller of a commanded one. What has no code or no digits leaves its field empty.
 */
export function dscFields(fields: CallFields, direction: Reading<'call'>['direction']): string[] {
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
    fields.expansion.length > 0 ? 'E' : '',
  ];
}

function stationField(fields: CallFields, direction: Reading<'call'>['direction']): string {
  const station = direction === 'commanded' || fields.format === 102 ? fields.address : fields.self;
  return digitsOf(station) ?? '';
}

function timeOrNumber(fields: CallFields): string {
  if (fields.format !== 123) return digitsOf(fields.time) ?? '';
  const [parity, ...pairs] = fields.telephone ?? [];
  const digits = digitsOf(pairs) ?? '';
  return parity === 105 ? digits.slice(1) : digits;
}

function code(symbol: number | null): string {
  return symbol === null ? '' : (codeOfSymbol(symbol) ?? '');
}
