import { type BitReader, type BitWriter, POWERS } from './bits.ts';

/**
 * A number that may not be one: all bits set say that it is not available (`null`), the two values below them
 * that it is out of range, or reserved.
 */
export type Quantity = number | null | 'out-of-range' | 'reserved';

/** What a field of each kind holds once it is read. */
export interface ParameterValues {
  /** A number with a resolution. */
  unsigned: Quantity;
  /** The same in two's complement. */
  signed: Quantity;
  /** A number of 64 bits in two's complement as its halves, high and low, so that no digit is lost. */
  wide: readonly [high: number, low: number] | null;
  /** A number in which every value means something: symbols, enumerations, bits of AIS. `null` past the end. */
  code: number | null;
  /** An identity of a call: five numbers, each 0–99 for two digits; fewer past the end. */
  pairs: readonly number[];
  /** Text of fixed width, one character a byte, with its filling. */
  text: string;
  /** Text of any width with its two header bytes. */
  'variable text': string;
}

/**
 * What a field holds once it is read: a number, `'out-of-range'`, `'reserved'` or `null` where it has none; text; numbers
 * of two digits each, or the halves of a number of 64 bits; or the fields that repeat.
 */
export type ParameterValue =
  | number
  | string
  | null
  | readonly number[]
  | readonly { readonly [name: string]: ParameterValue }[];

/**
 * One field: name, kind, width in bits, steps in one unit, unit. Bits without a meaning have no name: `reserved` ones are
 * written as ones, `spare` ones, which come from ITU-R M.1371, as zeros. A repeated one goes on to the end of the message.
 */
export type ParameterField =
  | readonly [name: '', kind: 'reserved' | 'spare', bits: number]
  | readonly [
      name: string,
      kind: 'unsigned' | 'signed' | 'wide' | 'code' | 'pairs' | 'text' | 'variable text',
      bits: number,
      per?: number,
      unit?: string,
    ]
  | readonly [name: string, kind: 'repeated', fields: readonly ParameterField[]];

/** The values of a list of fields by name. */
export type ValuesOf<Fields extends readonly ParameterField[]> = {
  readonly [F in Fields[number] as F[0] extends '' ? never : F[0]]: F extends readonly [
    string,
    'repeated',
    infer Part extends readonly ParameterField[],
  ]
    ? readonly ValuesOf<Part>[]
    : F[1] extends keyof ParameterValues
      ? ParameterValues[F[1]]
      : never;
};

export function readFields<const Fields extends readonly ParameterField[]>(
  bits: BitReader,
  fields: Fields,
): ValuesOf<Fields> {
  const values: Record<string, unknown> = {};
  for (const field of fields) {
    const value = readField(bits, field);
    if (field[0] !== '') values[field[0]] = value;
  }
  return values as ValuesOf<Fields>;
}

export function writeFields<const Fields extends readonly ParameterField[]>(
  bits: BitWriter,
  fields: Fields,
  values: ValuesOf<Fields>,
): void {
  for (const field of fields) writeField(bits, field, (values as Record<string, unknown>)[field[0]]);
}

function readField(bits: BitReader, field: ParameterField): unknown {
  switch (field[1]) {
    case 'unsigned':
      return quantity(bits.read(field[2]), (POWERS[field[2]] as number) - 1, field[3]);
    case 'signed': {
      const top = (POWERS[field[2] - 1] as number) - 1;
      const raw = bits.read(field[2]);
      return quantity(raw !== null && raw > top ? raw - 2 * (top + 1) : raw, top, field[3]);
    }
    case 'wide':
      return readWide(bits);
    case 'pairs':
      return bytesOf(bits.text(5));
    case 'text':
      return bits.text(field[2] / 8);
    case 'variable text': {
      const header = bits.text(2);
      return header + bits.text(Math.max(0, Math.min((header.charCodeAt(0) || 0) - 2, bits.left)));
    }
    case 'repeated': {
      const rows: unknown[] = [];
      while (bits.left > 0) rows.push(readFields(bits, field[2]));
      return rows;
    }
    default:
      return bits.read(field[2]);
  }
}

function writeField(bits: BitWriter, field: ParameterField, value: unknown): void {
  switch (field[1]) {
    case 'unsigned':
      bits.write(rawOf(value as Quantity, 2 ** field[2] - 1, field[3]), field[2]);
      break;
    case 'signed': {
      const raw = rawOf(value as Quantity, 2 ** (field[2] - 1) - 1, field[3]);
      bits.write(raw < 0 ? raw + 2 ** field[2] : raw, field[2]);
      break;
    }
    case 'wide': {
      const [high, low] = (value as ParameterValues['wide']) ?? [0x7fffffff, 0xffffffff];
      bits.write(low, 32);
      bits.write(high < 0 ? high + 2 ** 32 : high, 32);
      break;
    }
    case 'pairs':
      bits.put([0, 1, 2, 3, 4].map((index) => (value as readonly number[])[index] ?? 0xff));
      break;
    case 'text':
      bits.put(bytesOf((value as string).slice(0, field[2] / 8).padEnd(field[2] / 8, '\xff')));
      break;
    case 'variable text':
      bits.put(bytesOf(value as string));
      break;
    case 'repeated':
      for (const row of value as readonly ValuesOf<(typeof field)[2]>[]) writeFields(bits, field[2], row);
      break;
    case 'spare':
      bits.write(0, field[2]);
      break;
    default:
      bits.write((value as number | null | undefined) ?? 2 ** field[2] - 1, field[2]);
  }
}

function readWide(bits: BitReader): ParameterValues['wide'] {
  const low = bits.read(32);
  const high = bits.read(32);
  if (low === null || high === null || (high === 0x7fffffff && low === 0xffffffff)) return null;
  return [high > 0x7fffffff ? high - 2 ** 32 : high, low];
}

function quantity(raw: number | null, top: number, per = 1): Quantity {
  if (raw === null || raw === top) return null;
  if (raw === top - 1) return 'out-of-range';
  if (raw === top - 2) return 'reserved';
  // A division, not a product: it gives the number nearest to the decimal.
  return raw / per;
}

function rawOf(value: Quantity, top: number, per = 1): number {
  if (value === null) return top;
  if (value === 'out-of-range') return top - 1;
  return value === 'reserved' ? top - 2 : Math.round(value * per);
}

function bytesOf(text: string): number[] {
  return Array.from(text, (character) => character.charCodeAt(0) & 0xff);
}
