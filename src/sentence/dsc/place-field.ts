import type { CallFields } from '../../call/index.ts';
import { digitsOf, firstTelecommands, symbolOfName } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';
import { fieldNotice } from '../texts.ts';
import { symbolsOfDigits } from './field.ts';

type Place = Partial<Pick<CallFields, 'position' | 'header' | 'receive' | 'transmit'>>;

/** Symbol before a position in the place of frequencies (ITU-R M.493). */
const HEADER = '55';
/** VHF channels begin so: one number for both directions (ITU-R M.493). */
const VHF = 90;

/**
 * Field 6 of a `DSC` sentence: a position or one or two frequencies, told apart by their length first.
 *
 * Ten digits are a position, twelve beginning with 55 a position after its header; six or eight are
 * one frequency, twelve or sixteen two. deviation: D-sentence-2
 */
export function readPlaceField(text: string, notices: Notice[]): Place {
  if (text === '') return {};
  const symbols = symbolsOfDigits(text);
  switch (symbols?.length) {
    case 3:
    case 4:
      return { receive: symbols };
    case 5:
      return { position: symbols };
    case 6:
      return text.startsWith(HEADER)
        ? { header: true, position: symbols.slice(1) }
        : { receive: symbols.slice(0, 3), transmit: symbols.slice(3) };
    case 8:
      return { receive: symbols.slice(0, 4), transmit: symbols.slice(4) };
    default:
      notices.push(fieldNotice('sentence-place', { formatter: 'DSC', field: 6 }, text));
      return {};
  }
}

/** Field 6 for the fields of a call. A VHF channel that is in both elements, or only in the first, is written once. */
export function writePlaceField(fields: CallFields): string {
  if (fields.position !== null) {
    const digits = digitsOf(fields.position) ?? '';
    const headed = fields.header && fields.telecommand1 !== symbolOfName(firstTelecommands, 'ship-position');
    return headed && digits !== '' ? HEADER + digits : digits;
  }
  const receive = digitsOf(fields.receive) ?? '';
  const transmit = digitsOf(fields.transmit) ?? '';
  return transmit === receive && fields.receive?.[0] === VHF ? receive : receive + transmit;
}
