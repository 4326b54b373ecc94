/**
 * A literal writer of AIS messages from the bit tables of ITU-R M.1371-6 Annex 7 (from memory): each row is
 * name, count of bits, how the value is written. Nothing here is shared with `src`.
 */
type How = 'unsigned' | 'signed' | 'text' | 'spare';
type Row = readonly [name: string, bits: number, how: How];

const HEAD: readonly Row[] = [
  ['message', 6, 'unsigned'],
  ['repeat', 2, 'unsigned'],
  ['mmsi', 30, 'unsigned'],
];
const CLASS_A: readonly Row[] = [
  ...HEAD,
  ['status', 4, 'unsigned'],
  ['turn', 8, 'signed'],
  ['speed', 10, 'unsigned'],
  ['accuracy', 1, 'unsigned'],
  ['longitude', 28, 'signed'],
  ['latitude', 27, 'signed'],
  ['course', 12, 'unsigned'],
  ['heading', 9, 'unsigned'],
  ['second', 6, 'unsigned'],
  ['manoeuvre', 2, 'unsigned'],
  ['', 3, 'spare'],
  ['raim', 1, 'unsigned'],
  ['radio', 19, 'unsigned'],
];

export const tables: Record<string, readonly Row[]> = {
  '1': CLASS_A,
  '2': CLASS_A,
  '3': CLASS_A,
  '4': [
    ...HEAD,
    ['year', 14, 'unsigned'],
    ['month', 4, 'unsigned'],
    ['day', 5, 'unsigned'],
    ['hour', 5, 'unsigned'],
    ['minute', 6, 'unsigned'],
    ['second', 6, 'unsigned'],
    ['accuracy', 1, 'unsigned'],
    ['longitude', 28, 'signed'],
    ['latitude', 27, 'signed'],
    ['device', 4, 'unsigned'],
    ['', 10, 'spare'],
    ['raim', 1, 'unsigned'],
    ['radio', 19, 'unsigned'],
  ],
  '5': [
    ...HEAD,
    ['version', 2, 'unsigned'],
    ['imo', 30, 'unsigned'],
    ['callSign', 42, 'text'],
    ['name', 120, 'text'],
    ['type', 8, 'unsigned'],
    ['dimensions', 30, 'unsigned'],
    ['device', 4, 'unsigned'],
    ['arrival', 20, 'unsigned'],
    ['draught', 8, 'unsigned'],
    ['destination', 120, 'text'],
    ['terminal', 1, 'unsigned'],
    ['', 1, 'spare'],
  ],
  '9': [
    ...HEAD,
    ['altitude', 12, 'unsigned'],
    ['speed', 10, 'unsigned'],
    ['accuracy', 1, 'unsigned'],
    ['longitude', 28, 'signed'],
    ['latitude', 27, 'signed'],
    ['course', 12, 'unsigned'],
    ['second', 6, 'unsigned'],
    ['', 34, 'spare'],
  ],
  '18': [
    ...HEAD,
    ['', 8, 'spare'],
    ['speed', 10, 'unsigned'],
    ['accuracy', 1, 'unsigned'],
    ['longitude', 28, 'signed'],
    ['latitude', 27, 'signed'],
    ['course', 12, 'unsigned'],
    ['heading', 9, 'unsigned'],
    ['second', 6, 'unsigned'],
    ['', 29, 'spare'],
  ],
  '19': [
    ...HEAD,
    ['', 8, 'spare'],
    ['speed', 10, 'unsigned'],
    ['accuracy', 1, 'unsigned'],
    ['longitude', 28, 'signed'],
    ['latitude', 27, 'signed'],
    ['course', 12, 'unsigned'],
    ['heading', 9, 'unsigned'],
    ['second', 6, 'unsigned'],
    ['', 4, 'spare'],
    ['name', 120, 'text'],
    ['type', 8, 'unsigned'],
    ['dimensions', 30, 'unsigned'],
    ['device', 4, 'unsigned'],
    ['', 7, 'spare'],
  ],
  '21': [
    ...HEAD,
    ['type', 5, 'unsigned'],
    ['name', 120, 'text'],
    ['accuracy', 1, 'unsigned'],
    ['longitude', 28, 'signed'],
    ['latitude', 27, 'signed'],
    ['dimensions', 30, 'unsigned'],
    ['device', 4, 'unsigned'],
    ['second', 6, 'unsigned'],
    ['offPosition', 1, 'unsigned'],
    ['aidStatus', 8, 'unsigned'],
    ['raim', 1, 'unsigned'],
    ['virtual', 1, 'unsigned'],
    ['assigned', 1, 'unsigned'],
    ['', 1, 'spare'],
    ['nameMore', 84, 'text'],
  ],
  '24A': [...HEAD, ['part', 2, 'unsigned'], ['name', 120, 'text']],
  '24B': [
    ...HEAD,
    ['part', 2, 'unsigned'],
    ['type', 8, 'unsigned'],
    ['vendor', 42, 'text'],
    ['callSign', 42, 'text'],
    ['dimensions', 30, 'unsigned'],
    ['device', 4, 'unsigned'],
    ['', 2, 'spare'],
  ],
  '27': [
    ...HEAD,
    ['accuracy', 1, 'unsigned'],
    ['raim', 1, 'unsigned'],
    ['status', 4, 'unsigned'],
    ['longitude', 18, 'signed'],
    ['latitude', 17, 'signed'],
    ['speed', 6, 'unsigned'],
    ['course', 9, 'unsigned'],
    ['latency', 1, 'unsigned'],
    ['', 1, 'spare'],
  ],
};

/** Lengths that the Recommendation prints, from memory; 21 with its longest name. */
export const lengths: Record<string, number> = {
  '1': 168,
  '2': 168,
  '3': 168,
  '4': 168,
  '5': 424,
  '9': 168,
  '18': 168,
  '19': 312,
  '21': 356,
  '24A': 160,
  '24B': 168,
  '27': 96,
};

const SIX_BIT = '@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_ !"#$%&\'()*+,-./0123456789:;<=>?';
const ARMOUR = '0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVW`abcdefghijklmnopqrstuvw';

/** The bits of a message, as a string of 0 and 1. */
export function bitsOf(table: string, values: Record<string, number | string>): string {
  return (tables[table] as readonly Row[])
    .map(([name, bits, how]) => {
      const value = values[name] ?? (how === 'text' ? '' : 0);
      if (how === 'text') {
        return [...String(value).padEnd(bits / 6, '@')]
          .map((character) => SIX_BIT.indexOf(character).toString(2).padStart(6, '0'))
          .join('');
      }
      const number = how === 'signed' && Number(value) < 0 ? Number(value) + 2 ** bits : Number(value);
      return number.toString(2).padStart(bits, '0');
    })
    .join('');
}

/** The armoured payload of a string of bits, and its count of fill bits. */
export function armour(bits: string): [payload: string, fill: number] {
  const fill = (6 - (bits.length % 6)) % 6;
  const padded = bits + '0'.repeat(fill);
  let payload = '';
  for (let at = 0; at < padded.length; at += 6)
    payload += ARMOUR[Number.parseInt(padded.slice(at, at + 6), 2)];
  return [payload, fill];
}

/** Bodies of the sentences that carry bits, at most 60 characters of payload each. */
export function sentencesOf(bits: string, formatter = 'VDM', channel = 'A', sequence = '3'): string[] {
  const [payload, fill] = armour(bits);
  const total = Math.ceil(payload.length / 60);
  return Array.from({ length: total }, (_, index) =>
    [
      `AI${formatter}`,
      total,
      index + 1,
      total === 1 ? '' : sequence,
      channel,
      payload.slice(index * 60, index * 60 + 60),
      index === total - 1 ? fill : 0,
    ].join(','),
  );
}

/** The bits of an armoured payload, its fill bits taken off. */
export function bitsIn(payload: string, fill: number): string {
  const bits = [...payload]
    .map((character) => ARMOUR.indexOf(character).toString(2).padStart(6, '0'))
    .join('');
  return bits.slice(0, bits.length - fill);
}

/** The bits of a message row by row; spare rows and those past the end of a short message left out. */
export function rowsOf(table: string, bits: string): Record<string, string> {
  const rows: Record<string, string> = {};
  let from = 0;
  for (const [name, count] of tables[table] as readonly Row[]) {
    if (name !== '' && from < bits.length) rows[name] = bits.slice(from, from + count);
    from += count;
  }
  return rows;
}
