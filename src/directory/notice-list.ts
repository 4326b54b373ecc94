import type { Notice } from '../result/index.ts';
import { issue } from './texts.ts';

/** Notices kept while a text is read, the first of them only: a text of nothing but faults must not fill the memory. */
export interface NoticeList {
  push(...notices: readonly Notice[]): void;
  /** The first thousand, and how many more there were. */
  all(): readonly Notice[];
}

const MOST_NOTICES = 1000;

/** An empty list of notices. */
export function createNoticeList(): NoticeList {
  const kept: Notice[] = [];
  let more = 0;
  return {
    push(...notices) {
      for (const notice of notices) {
        if (kept.length < MOST_NOTICES) kept.push(notice);
        else more += 1;
      }
    },
    all() {
      if (more === 0) return kept;
      return [...kept, issue('directory-more-notices', { count: more })];
    },
  };
}
