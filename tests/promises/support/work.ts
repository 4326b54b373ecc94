// Counted work: how often each piece of code runs (V8's precise coverage), and how many characters or elements the
// built-in functions called on the way had to look at. No clock: the same run gives the same count on every machine.
// What an optimising compiler adds cannot be counted; the long run compares processor time as well.
import { Session } from 'node:inspector';

interface Coverage {
  readonly result: readonly {
    readonly url: string;
    readonly functions: readonly { readonly ranges: readonly { readonly count: number }[] }[];
  }[];
}

/** Elements that built-in functions looked at since the last count. */
let looked = 0;

type Method = (this: never, ...given: never[]) => unknown;
const charged = (
  holder: object,
  name: PropertyKey,
  cost: (self: never, given: never[], result: never) => number,
) => {
  const original = (holder as Record<PropertyKey, Method>)[name] as Method;
  const counting = function (this: never, ...given: never[]): unknown {
    const result = original.apply(this, given);
    looked += cost(this, given, result as never);
    return result;
  };
  Object.defineProperty(holder, name, { value: counting, configurable: true, writable: true });
  return () => Object.defineProperty(holder, name, { value: original, configurable: true, writable: true });
};

const lengthOf = (self: { length: number }): number => self.length;
/** Characters passed over by a search from some place. */
const scanned = (self: string, [, from = 0]: [unknown, number?], found: number): number =>
  found < 0 ? Math.max(0, self.length - from) : found - from + 1;

const { indexOf } = String.prototype;

function charges(): (() => void)[] {
  const texts = [
    'split',
    'replace',
    'replaceAll',
    'match',
    'matchAll',
    'search',
    'trim',
    'trimEnd',
    'trimStart',
    'toUpperCase',
    'toLowerCase',
    'normalize',
    'padEnd',
    'padStart',
  ];
  const lists = [
    'indexOf',
    'includes',
    'lastIndexOf',
    'find',
    'findIndex',
    'findLast',
    'findLastIndex',
    'filter',
    'map',
    'forEach',
    'some',
    'every',
    'reduce',
    'slice',
    'splice',
    'concat',
    'shift',
    'unshift',
    'sort',
    'join',
    'reverse',
    'fill',
    'flat',
    'flatMap',
    Symbol.iterator,
  ] as const;
  const typed = Object.getPrototypeOf(Uint8Array.prototype) as object;
  return [
    ...texts.map((name) => charged(String.prototype, name, lengthOf)),
    charged(String.prototype, 'indexOf', scanned as never),
    charged(String.prototype, 'includes', ((self: string, given: [string, number?]) =>
      scanned(self, given, indexOf.call(self, ...given))) as never),
    charged(RegExp.prototype, 'exec', ((self: RegExp, [text]: [string], match: RegExpExecArray | null) =>
      self.sticky || match !== null ? (match?.[0].length ?? 1) : String(text).length) as never),
    ...lists.map((name) => charged(Array.prototype, name, lengthOf)),
    ...[
      'set',
      'slice',
      'fill',
      'indexOf',
      'includes',
      'copyWithin',
      'join',
      'map',
      'filter',
      'reduce',
      'sort',
    ].map((name) => charged(typed, name, lengthOf)),
  ];
}

/**
 * Gives a function that says what it costs to run something once: steps of its code, and elements that built-in
 * functions looked at. Counting slows everything down, and ends with `measure`.
 */
export function countingWork(measure: (workOf: (run: () => void) => number) => void): void {
  const session = new Session();
  session.connect();
  const ask = (method: string, given: object = {}): unknown => {
    let answer: unknown;
    session.post(method, given, (error, result) => {
      if (error) throw error;
      answer = result;
    });
    return answer;
  };
  ask('Profiler.enable');
  ask('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  try {
    measure((run) => {
      ask('Profiler.takePreciseCoverage');
      const undo = charges();
      looked = 0;
      try {
        run();
      } finally {
        for (const restore of undo) restore();
      }
      return looked + stepsIn(ask('Profiler.takePreciseCoverage') as Coverage);
    });
  } finally {
    ask('Profiler.stopPreciseCoverage');
    session.disconnect();
  }
}

function stepsIn({ result }: Coverage): number {
  let steps = 0;
  for (const { url, functions } of result) {
    if (!/\/src\/|\/out\/attack\//.test(url) || /\/tests\//.test(url)) continue;
    for (const { ranges } of functions) for (const { count } of ranges) steps += count;
  }
  return steps;
}
