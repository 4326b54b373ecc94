/** One way in which a promise was broken. */
export interface Break {
  /** What happened, in a few words; breaks of one kind share it. */
  readonly what: string;
  /** How to see it again: the input, or the seed and number of the try. */
  readonly how: string;
}

/** What an attack found. */
export interface Outcome {
  /** Tries and findings by name, for the table. */
  readonly counts: Readonly<Record<string, number | string>>;
  readonly breaks: readonly Break[];
}

/** Tries to break a promise `count` times, or in proportion to it. The same seed gives the same tries. */
export type Attack = (options: {
  readonly seed: number;
  readonly count: number;
}) => Outcome | Promise<Outcome>;

/** Collects counts and breaks: at most `most` breaks of each kind are kept, all are counted. */
export function notebook(most = 3): {
  readonly count: (name: string, by?: number) => void;
  readonly broken: (what: string, how: string) => void;
  readonly outcome: (more?: Outcome['counts']) => Outcome;
} {
  const counts: Record<string, number> = {};
  const breaks: Break[] = [];
  const seen = new Map<string, number>();
  const count = (name: string, by = 1): void => {
    counts[name] = (counts[name] ?? 0) + by;
  };
  return {
    count,
    broken: (what, how) => {
      count('breaks');
      const times = (seen.get(what) ?? 0) + 1;
      seen.set(what, times);
      if (times <= most) breaks.push({ what, how: how.length > 1500 ? `${how.slice(0, 1500)} ...` : how });
    },
    outcome: (more = {}) => ({ counts: { ...counts, ...more }, breaks }),
  };
}

/** A value as text that can be pasted into a test, as far as JSON goes. */
export function show(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return Object.prototype.toString.call(value);
  }
}
