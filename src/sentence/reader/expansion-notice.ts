import type { ExpansionSet } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';

import { quote } from '../../result/internal.ts';

const CLAUSE = 'IEC 61162-1, DSC and DSE sentences';

/** Joined though nothing announced it. */
export function unannouncedNotice(station: string): Notice {
  return {
    code: 'sentence-expansion-unannounced',
    message: `Expansion for ${named(station)} was applied, although the call did not announce it`,
    at: ['DSC', 'field', 11],
    expected: 'E',
    received: 'nothing',
    clause: CLAUSE,
  };
}

/** Joined though other sentences came between. */
export function lateNotice(station: string, between: number): Notice {
  const others = between === 1 ? '1 sentence' : `${between} sentences`;
  return {
    code: 'sentence-expansion-late',
    message: `Expansion for ${named(station)} did not follow its call directly: ${others} came between`,
    at: ['DSE'],
    expected: 'the very next sentence',
    received: `${others} between`,
    clause: CLAUSE,
  };
}

/** What data sets say, for people. */
const SETS: Readonly<Record<number, string>> = {
  100: 'decimals of the position',
  101: 'source of the fix',
  102: 'speed',
  103: 'course',
  104: 'name',
  105: 'finer area',
  106: 'persons on board',
};

/** Not joined, or not in full. */
export function missingNotice(received: number, applied: readonly ExpansionSet[]): Notice {
  const names = applied.map(({ specifier }) => SETS[specifier] ?? `set ${specifier}`);
  const used = names.length === 0 ? 'nothing applied' : `applied: ${names.join(', ')}`;
  return {
    code: 'sentence-expansion-missing',
    message:
      received === 0
        ? 'Expansion: none of its DSE sentences came, the call stays as it is'
        : `Expansion: only ${received} of its DSE sentences came, ${used}`,
    at: ['DSC', 'field', 11],
    expected: 'DSE sentences directly after the call',
    received: `${received} of them`,
    clause: CLAUSE,
  };
}

/** Belongs to no open call, while another station's waits for its own or while none does. */
export function aloneNotice(station: string, waiting: string | null): Notice {
  if (waiting === null) {
    return {
      code: 'sentence-expansion-alone',
      message: `Expansion for ${named(station)} matches no call that was read`,
      at: ['DSE', 'field', 4],
      received: named(station),
      clause: CLAUSE,
    };
  }
  return {
    code: 'sentence-expansion-other-station',
    message: `Expansion for ${named(station)} is not applied to the call of ${named(waiting)}`,
    at: ['DSE', 'field', 4],
    expected: named(waiting),
    received: named(station),
    clause: CLAUSE,
  };
}

/** An identity as it is; any other text of the field quoted, so that a message stays short. */
function named(station: string): string {
  return /^\d{9}$/.test(station) ? station : quote(station);
}
