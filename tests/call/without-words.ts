import type { CallDescription, LawfulAnswer } from '../../src/call/index.ts';
import type { CodedText, Notice, Param } from '../../src/result/index.ts';

/** A notice without its grade and its words, which are pinned in tests/locale/english/call.txt. */
export type Said = Omit<Notice, 'message' | 'grade'>;

/** Notices without their grade and their words. */
export function withoutWords(notices: readonly Notice[]): Said[] {
  return notices.map(({ message: _, grade: __, ...said }) => said);
}

/** What an answer says, by the code of its label and what stands in it. */
export function saying({ code, params }: LawfulAnswer): string {
  return [code.replace('call-answer-', ''), ...Object.values(params)].join(' ');
}

/** A text by its codes and what stands in it: `call-is-test from=(call-own-station) to=002329990`. */
export function codedIn({ code, params }: Pick<CodedText, 'code' | 'params'>): string {
  return [code, ...Object.entries(params).map(([name, value]) => `${name}=${inside(value)}`)].join(' ');
}

function inside(value: Param): string {
  return typeof value === 'object' ? `(${codedIn(value as CodedText)})` : String(value);
}

/** A row of a description by the field or data set, and its value. */
export function rowIn({ labelText, value, valueText }: CallDescription['rows'][number]): string {
  return `${Object.values(labelText.params)[0]} ${valueText === undefined ? value : codedIn(valueText)}`;
}
