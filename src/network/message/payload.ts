import { BitReader, BitWriter } from '../field/bits.ts';
import { type ParameterField, readFields, type ValuesOf, writeFields } from '../field/field.ts';

/** The layout of one parameter group. */
export interface ParameterGroup<Fields extends readonly ParameterField[] = readonly ParameterField[]> {
  readonly pgn: number;
  /** The name that public tables of parameter groups give it. */
  readonly name: string;
  /** Whether it travels as a fast packet. */
  readonly fast: boolean;
  /** Priority that a sender gives it. */
  readonly priority: number;
  readonly fields: Fields;
}

export interface Payload<Values> {
  readonly values: Values;
  /** Whether the payload ends before the last field. */
  readonly short: boolean;
}

/** Takes a payload apart by its layout. Longer and shorter payloads are read as far as they go. */
export function decodePayload<const Fields extends readonly ParameterField[]>(
  { fields }: ParameterGroup<Fields>,
  payload: Uint8Array,
): Payload<ValuesOf<Fields>> {
  const bits = new BitReader(payload);
  const values = readFields(bits, fields);
  return { values, short: bits.short };
}

/** Puts a payload together by its layout. */
export function encodePayload<const Fields extends readonly ParameterField[]>(
  { fields }: ParameterGroup<Fields>,
  values: ValuesOf<Fields>,
): Uint8Array {
  const bits = new BitWriter();
  writeFields(bits, fields, values);
  return bits.bytes();
}
