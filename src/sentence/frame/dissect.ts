import type { Sentence } from '../../report/index.ts';
import type { TagBlock } from '../../report/internal.ts';
import { failure, type Notice, type Result, success } from '../../result/index.ts';
import { addressMisshapen, blankSent } from './framing-issue.ts';

/** The sentence of a body that has its blanks still in it. */
export function dissect(
  body: string,
  checksum: Sentence['checksum'],
  tag: TagBlock | null,
  raw: string,
  notices: Notice[],
): Result<Sentence> {
  const fields = body.split(',');
  const address = trimBlanks(fields.shift() ?? '');
  if (body.includes(' ') || body.includes('\t')) trimFields(fields, notices);
  return addressed(address, fields, checksum, tag, raw, notices);
}

/** The sentence of an address and fields without blanks at their edges. */
export function addressed(
  address: string,
  fields: readonly string[],
  checksum: Sentence['checksum'],
  tag: TagBlock | null,
  raw: string,
  notices: readonly Notice[],
): Result<Sentence> {
  const form = formOf(address);
  if (form === null) return failure(addressMisshapen(address));
  const cut = form === 'proprietary' ? 1 : 2;
  return success(
    {
      kind: 'sentence',
      start: raw.startsWith('$') ? '$' : '!',
      form,
      talker: address.slice(0, cut),
      formatter: address.slice(cut),
      fields,
      checksum,
      tag,
      raw,
    },
    notices,
  );
}

function trimFields(fields: string[], notices: Notice[]): void {
  for (const [index, field] of fields.entries()) {
    const trimmed = trimBlanks(field);
    if (trimmed.length === field.length) continue;
    fields[index] = trimmed;
    notices.push(blankSent(field, trimmed, index + 1));
  }
}

/** Without the blanks and tabs at its edges, and nothing else: whatever other blanks a text has were never sent as such. */
function trimBlanks(text: string): string {
  let from = 0;
  let to = text.length;
  while (from < to && isBlank(text.charCodeAt(from))) from += 1;
  while (to > from && isBlank(text.charCodeAt(to - 1))) to -= 1;
  return text.slice(from, to);
}

function isBlank(code: number): boolean {
  return code === 0x20 || code === 0x09;
}

/** Capitals and digits: five of them, or `P` and three or more. */
function formOf(address: string): Sentence['form'] | null {
  for (let index = 0; index < address.length; index += 1) {
    const code = address.charCodeAt(index);
    if (!((code >= 0x41 && code <= 0x5a) || (code >= 0x30 && code <= 0x39))) return null;
  }
  if (address.charCodeAt(0) === 0x50 && address.length >= 4) return 'proprietary';
  if (address.length !== 5) return null;
  return address.charCodeAt(4) === 0x51 ? 'query' : 'standard';
}
