import { parseIdentity, usesOf } from '../identity/index.ts';
import type { Notice } from '../result/index.ts';
import { issue } from './texts.ts';

/** Notices kept while a text is read, the first of them only: a text of nothing but faults must not fill the memory. */
export interface NoticeList {
  push(...notices: readonly Notice[]): void;
  /** The first thousand, and how many more there were. */
  all(): readonly Notice[];
}

const MOST_NOTICES = 1000;

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

/** Group identities put apart by semicolons or commas, or, without any, by blanks. */
export function groupsOf(text: string, refuse: (group: string) => void): readonly string[] {
  const whole = parseIdentity(text);
  const parts = whole.ok
    ? [text]
    : text.split(/[;,|/\n]/).flatMap((part) => (parseIdentity(part).ok ? [part] : part.split(/\s/)));
  return parts
    .filter((part) => part !== '')
    .flatMap((part) => {
      const parsed = parseIdentity(part);
      if (parsed.ok && usesOf(parsed.value).group) return [parsed.value.mmsi];
      refuse(part);
      return [];
    });
}
