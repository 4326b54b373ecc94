import { type Call, type CallFields, encodeFields } from '../call/index.ts';
import { type FieldName, fieldTerms } from '../call/internal.ts';
import { errorCheckOf } from './error-check.ts';
import { charactersFromSets, expansionSymbols } from './expansion.ts';
import { encodeCharacters, headOf } from './information.ts';
import { DOT_PATTERN, streamOf } from './sequence.ts';
import { encodeSymbol } from './symbol-code.ts';

/** A call as it goes on the air, in the VHF form. Plain data. */
export interface Burst {
  /** Information symbols: format specifier twice, up to and with one end of sequence. */
  readonly information: readonly number[];
  /** Error-check character. */
  readonly errorCheck: number;
  /** Ten-bit symbols in order of transmission, DX and RX taking turns, phasing included. */
  readonly stream: readonly number[];
  /** Every bit in order of transmission, 20 bits of dot pattern first: `1` is Y (1300 Hz), `0` is B (2100 Hz). */
  readonly bits: string;
  /** The expansion after the call, when it has one: its symbols without end of sequence, and its own error check. */
  readonly expansion?: { readonly information: readonly number[]; readonly errorCheck: number };
}

/**
 * Encode a call into symbols and bits, as ITU-R M.493 sends it on VHF.
 *
 * This only makes data. Sending a digital selective call needs a licensed station and a trained operator,
 * and a distress alert may be sent only by a vessel in distress: national rules apply.
 *
 * @param call - any call; what it carries `asReceived` is sent as it was received
 * @returns information symbols, error check, stream and bits
 * @throws RangeError when the call lacks what its kind needs on the air (an addressee or a sender that the source did
 *   not say), or a field has no symbols: an unreadable character, or expansion text that has no agreed symbols
 *
 * @see {@link decodeBits}
 * @see {@link errorCheckOf}
 *
 * @example
 * ```ts
 * import { encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 *
 * const burst = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
 * console.log(burst.stream.length, burst.bits.length); // 62 640
 * ```
 */
export function encodeCall(call: Call): Burst {
  const fields = encodeFields(call);
  if (call.kind !== 'unrecognised-call') requireComplete(fields);
  const characters = encodeCharacters(fields).map((symbol, index) => {
    if (symbol === null)
      throw new RangeError(`character ${index} of the call is unreadable and cannot be sent`);
    return symbol;
  });
  const [format, ...others] = characters;
  const end = others.at(-1);
  if (format === undefined || end === undefined)
    throw new RangeError('a call needs a format specifier and an end of sequence');
  const added = charactersFromSets(fields.expansion);
  const stream = streamOf(characters, expansionSymbols(added, end));
  const burst = {
    information: [format, format, ...others],
    errorCheck: errorCheckOf(characters),
    stream,
    bits: DOT_PATTERN + stream.map(encodeSymbol).join(''),
  };
  if (added.length === 0) return burst;
  return { ...burst, expansion: { information: added, errorCheck: errorCheckOf([...added, end]) } };
}

const NEEDED: readonly FieldName[] = ['address', 'category', 'self', 'telecommand1'];

/** A call read from a wire may lack what a set on that wire knows anyway; on the air it would be another call. */
function requireComplete(fields: CallFields): void {
  const { format, position, time, subsequent } = fields;
  const lacking = [
    ...NEEDED.filter((name) => fields[name] === null && (headOf(format) ?? NEEDED).includes(name)).map(
      (name) => fieldTerms[`call-field.${name}`].toLowerCase(),
    ),
    // With nothing in their place, what follows would be read as the position or the time.
    position === null && (time !== null || subsequent !== null) ? 'position' : null,
    time === null && subsequent !== null ? 'time' : null,
  ].filter((name) => name !== null);
  if (lacking.length > 0) throw new RangeError(`the call cannot be sent without ${lacking.join(', ')}`);
}
