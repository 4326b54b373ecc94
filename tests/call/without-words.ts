import type { LawfulAnswer } from '../../src/call/index.ts';
import type { Notice } from '../../src/result/index.ts';

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
