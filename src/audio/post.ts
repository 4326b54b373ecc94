/** What waits to be told until the sound is taken in: no callback can get between the filters. */
export interface Post {
  put(tell: () => void): void;
  /** Runs every callback, then throws the first error that one of them threw. */
  deliver(): void;
  /** Throws while it delivers: more sound would be taken in before all of the last is told. */
  assertIdle(caller: string): void;
}

export function createPost(): Post {
  let waiting: (() => void)[] = [];
  let delivering = false;
  return {
    put(tell): void {
      waiting.push(tell);
    },
    deliver(): void {
      const due = waiting;
      const errors: unknown[] = [];
      waiting = [];
      delivering = true;
      for (const tell of due) {
        try {
          tell();
        } catch (error) {
          errors.push(error);
        }
      }
      delivering = false;
      if (errors.length > 0) throw errors[0];
    },
    assertIdle(caller): void {
      if (delivering)
        throw new Error(`${caller}: called from a callback of the same receiver: wait for its return`);
    },
  };
}
