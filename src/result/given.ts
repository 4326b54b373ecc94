import { quote } from './quote.ts';

/** What a program handed in, in words for a message; where it is one of the likeliest mistakes, what to do instead. */
export function givenInWords(value: unknown): string {
  return safely(
    () => inWords(value),
    () => 'something that throws when it is looked at',
  );
}

/**
 * The words above as terms, for a module whose texts have `{received:given}`: a value that is quoted is no term and
 * stays as it is.
 */
export const givenTerms = {
  'given.a function': 'a function',
  'given.a list': 'a list',
  'given.an object': 'an object',
  'given.a Date: use its getTime()': 'a Date: use its getTime()',
  'given.a result: look at .ok first, then use .value': 'a result: look at .ok first, then use .value',
  'given.a promise: await it first': 'a promise: await it first',
  'given.an object with lat: name its fields latitude and longitude':
    'an object with lat: name its fields latitude and longitude',
  'given.something that throws when it is looked at': 'something that throws when it is looked at',
} as const;

/**
 * What a reader makes of a value from outside; what cannot even be looked at, for a getter that throws, is refused
 * like anything else that cannot be read.
 */
export function safely<Answer>(read: () => Answer, refused: () => Answer): Answer {
  try {
    return read();
  } catch {
    return refused();
  }
}

function inWords(value: unknown): string {
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'function') return 'a function';
  if (typeof value !== 'object' || value === null) return String(value);
  if (Array.isArray(value)) return 'a list';
  if (value instanceof Date) return 'a Date: use its getTime()';
  if ('ok' in value && ('value' in value || 'issues' in value))
    return 'a result: look at .ok first, then use .value';
  if ('then' in value) return 'a promise: await it first';
  if ('lat' in value) return 'an object with lat: name its fields latitude and longitude';
  return 'an object';
}

/** Throws unless a value is an object; where a field is named, one that has this field. */
export function want(caller: string, what: string, value: unknown, field?: string): void {
  if (typeof value !== 'object' || value === null || (field !== undefined && !(field in value)))
    throw new TypeError(`${caller}: expected ${what}, got ${givenInWords(value)}`);
}

/**
 * The options of a function, checked as a compiler would: an object, with no name but the known ones.
 *
 * @throws TypeError when there are none although some are needed, or one has an unknown name
 */
export function requireOptions<Options extends object>(
  caller: string,
  options: Options,
  known: readonly (keyof Options & string)[],
  needed?: string,
): Options {
  const given: unknown = options;
  if (typeof given !== 'object' || given === null) {
    throw new TypeError(
      `${caller}: expected options${needed ? ` with ${needed}` : ''}, got ${givenInWords(given)}`,
    );
  }
  wantNames(`${caller}: expected options`, given, known);
  return options;
}

/** Throws unless every name of an object is a known one; what was wanted begins the message, the known names follow. */
export function wantNames(wanted: string, value: object, known: readonly string[]): void {
  const odd = Object.keys(value).find((name) => !known.includes(name));
  if (odd !== undefined) throw new TypeError(`${wanted} ${known.join(', ')}, got ${quote(odd)}`);
}
