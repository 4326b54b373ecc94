import type { Sentence } from '../../report/index.ts';
import { inEleven } from '../dsc/layout.ts';
import { checksumOf } from '../frame/checksum.ts';

/** The sentence written again, with another talker or other fields, and the checksum that belongs to it. */
export function rewritten(
  { start, talker, formatter, fields }: Sentence,
  change: { readonly talker?: string; readonly fields?: readonly string[] },
): string {
  const body = [`${change.talker ?? talker}${formatter}`, ...(change.fields ?? fields)].join(',');
  return `${start}${body}*${checksumOf(body)}`;
}

/** The fields with the padding zero after nine-digit identities: fields 2 and 8 of `DSC`, field 4 of `DSE`. */
export function paddedFields({ formatter, fields }: Sentence): readonly string[] {
  const identities = formatter === 'DSC' ? [1, 7] : formatter === 'DSE' ? [3] : [];
  return fields.map((field, index) =>
    identities.includes(index) && /^\d{9}$/.test(field) ? `${field}0` : field,
  );
}

/** The fields of a `DSC` sentence with the empty ones at the end put back. */
export function elevenFields(fields: readonly string[]): readonly string[] {
  const known = inEleven(fields);
  return [...known, ...Array<string>(Math.max(0, 11 - known.length)).fill('')];
}
