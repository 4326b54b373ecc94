/** Keeps the latest of a bounded number of values. */
export function rememberLatest<Value>(
  map: Map<string, Value>,
  key: string,
  value: Value,
  most: number,
): void {
  map.delete(key);
  map.set(key, value);
  if (map.size <= most) return;
  const [oldest] = map.keys();
  map.delete(oldest as string);
}

/** Calls remembered in order to know their repeats. */
const MOST_REMEMBERED = 64;
/** A time of day comes round again: what says the same after half a day is not the same. */
export const HALF_DAY = 43_200_000;

/** Number of a call, from 1, and how often it came before. */
export interface Numbered {
  readonly event: number;
  readonly repeat: number;
}

/**
 * Numbers calls, and knows one that came before, by a key of what it says; one without a key is always new, and so is one
 * that is too far apart from the same before. Its memory is bounded.
 */
export function createRepeats<When>(
  isApart: (before: When, now: When) => boolean,
): (key: string | null, when: When) => Numbered {
  const remembered = new Map<string, { readonly call: Numbered; readonly when: When }>();
  let events = 0;
  return (key, when) => {
    const before = key === null ? undefined : remembered.get(key);
    const call =
      before === undefined || isApart(before.when, when)
        ? { event: ++events, repeat: 0 }
        : { event: before.call.event, repeat: before.call.repeat + 1 };
    if (key !== null) rememberLatest(remembered, key, { call, when }, MOST_REMEMBERED);
    return call;
  };
}
