/** Numbers calls, and knows one that was written again. */
export interface Repeats {
  /** Number of the call, from 1, and how often it came before. */
  number(key: string, again: number, at: number | null): { readonly event: number; readonly repeat: number };
}

/** Calls remembered in order to know their repeats. */
const MOST_REMEMBERED = 64;

/** A count at its beginning. Its memory is bounded. */
export function createRepeats(): Repeats {
  const remembered = new Map<string, { event: number; repeat: number; at: number | null }>();
  let events = 0;
  return {
    number(key, again, at) {
      const before = remembered.get(key);
      remembered.delete(key);
      const apart = before === undefined || at === null || before.at === null ? 0 : Math.abs(at - before.at);
      const known =
        before === undefined || apart > again
          ? { event: ++events, repeat: 0, at }
          : { event: before.event, repeat: before.repeat + 1, at };
      remembered.set(key, known);
      if (remembered.size > MOST_REMEMBERED) {
        const [oldest] = remembered.keys();
        remembered.delete(oldest as string);
      }
      return { event: known.event, repeat: known.repeat };
    },
  };
}
