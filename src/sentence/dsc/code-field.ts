import type { Notice } from '../../result/index.ts';
import { fieldNotice } from '../field/field-notice.ts';
import { symbolOfCode } from './symbol-code.ts';

/** The symbol of a field that holds a two-digit code, counted from 1; `null` when it is empty or, with a notice, no code. */
export function readCode(texts: readonly string[], field: number, notices: Notice[]): number | null {
  const text = texts[field - 1] ?? '';
  if (text === '') return null;
  const symbol = symbolOfCode(text);
  if (symbol === null) {
    notices.push(fieldNotice('sentence-code', { formatter: 'DSC', field }, text));
  }
  return symbol;
}
