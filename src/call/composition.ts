import type { Call } from './call.ts';
import { compositions } from './composition-table.ts';
import type { CallFields } from './fields.ts';
import type { Category, EndOfSequence, FirstTelecommand, FormatSpecifier } from './symbol.ts';

/** Equipment of a station: A full, D fixed set of small craft, H hand-held, M man-overboard device, or a coast station. */
export type EquipmentClass = 'A' | 'D' | 'H' | 'M' | 'coast';

/** What a class may do: must be able to, may be able to, only behind a guard against misuse, not at all. */
export type Duty = 'required' | 'optional' | 'guarded' | 'none';

/** A kind of call that has a composition, which is every kind but the unrecognised. */
export type ComposedKind = Exclude<Call['kind'], 'unrecognised-call'>;

/** One row of the tables of compositions: a kind of call under one format specifier. */
export interface Composition {
  readonly kind: ComposedKind;
  readonly format: FormatSpecifier;
  /** Categories by the book, the usual one first; empty when the call carries none. */
  readonly categories: readonly Category[];
  /** First telecommands by the book; empty when the call carries none. */
  readonly telecommands: readonly FirstTelecommand[];
  /** Fields in the order on the air; of a field that occurs, how many symbols it has is in {@link fieldLengths}. */
  readonly order: readonly (keyof CallFields)[];
  readonly end: EndOfSequence;
  /** Count of information characters before the end of sequence, the format specifier counted twice. */
  readonly characters: number;
  /** Table of the Recommendation. */
  readonly clause: string;
  /** Which equipment may send it on VHF: a hint, never a reason to refuse what was received. */
  readonly senders: Readonly<Record<EquipmentClass, Duty>>;
}

/** Symbols a field takes on the air on VHF (the format specifier is sent twice, the header 55 is the reply's). */
export const fieldLengths: Readonly<Partial<Record<keyof CallFields, number>>> = {
  format: 2,
  address: 5,
  category: 1,
  self: 5,
  telecommand1: 1,
  telecommand2: 1,
  distressed: 5,
  nature: 1,
  header: 1,
  position: 5,
  time: 2,
  subsequent: 1,
  receive: 3,
  transmit: 3,
};

/**
 * The composition of a kind of call.
 *
 * @param kind - any kind but the unrecognised
 * @param format - format specifier, where a kind has several compositions; the first unless stated
 * @returns the row, `null` when the kind has none under that format specifier
 *
 * @example
 * ```ts
 * import { compositionOf } from 'seahail/call';
 *
 * console.log(compositionOf('distress-alert')?.characters); // 16
 * console.log(compositionOf('distress-relay', 'individual')?.end); // acknowledgement-requested
 * ```
 */
export function compositionOf(kind: ComposedKind, format?: FormatSpecifier): Composition | null {
  return (
    compositions.find((row) => row.kind === kind && (format === undefined || row.format === format)) ?? null
  );
}
