import { safely } from '../result/internal.ts';

/** Throws a TypeError where a function that cannot do without options gets none. */
export function requireOptions(caller: string, options: unknown, needed: string): void {
  if (typeof options !== 'object' || options === null)
    throw new TypeError(`${caller}: expected options with ${needed}, got ${named(options)}`);
}

/** Throws a TypeError where samples should be and are not. */
export function requireSamples(caller: string, samples: unknown): void {
  const length = safely(
    () => typeof samples === 'object' && samples !== null && 'length' in samples && samples.length,
    () => false,
  );
  if (!Number.isSafeInteger(length) || (length as number) < 0)
    throw new TypeError(
      `${caller}: samples: expected an array of numbers, typed or not, got ${named(samples)}`,
    );
}

/** What was given, for a message to a programmer. */
export function named(given: unknown): string {
  return given === null ? 'null' : typeof given;
}
