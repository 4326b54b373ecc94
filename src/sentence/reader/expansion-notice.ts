import type { Notice } from '../../result/index.ts';
import { quote } from '../../result/index.ts';

const CLAUSE = 'IEC 61162-1, DSC and DSE sentences';

/** Joined though nothing announced it. */
export function unannouncedNotice(station: string): Notice {
  return {
    code: 'sentence-expansion-unannounced',
    message: `The expansion for ${named(station)} was joined though the call did not announce it`,
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
    message: `The expansion for ${named(station)} did not follow its call directly: ${others} came between`,
    at: ['DSE'],
    expected: 'the very next sentence',
    received: `${others} between`,
    clause: CLAUSE,
  };
}

/** Not joined, or not in full. */
export function missingNotice(received: number): Notice {
  return {
    code: 'sentence-expansion-missing',
    message: 'The expansion of the call was not received in full: its position stays as it is',
    at: ['DSC', 'field', 11],
    expected: 'DSE sentences directly behind the call',
    received: `${received} of them`,
    clause: CLAUSE,
  };
}

/** Belongs to no open call, while another station's waits for its own or while none does. */
export function aloneNotice(station: string, waiting: string | null): Notice {
  if (waiting === null) {
    return {
      code: 'sentence-expansion-alone',
      message: `The expansion for ${named(station)} belongs to no call that was read`,
      at: ['DSE', 'field', 4],
      received: named(station),
      clause: CLAUSE,
    };
  }
  return {
    code: 'sentence-expansion-other-station',
    message: `The expansion for ${named(station)} is not joined to the call of ${named(waiting)}`,
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
