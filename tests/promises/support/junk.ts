// Values that no type allows and every program meets.
import type { Random } from '../../../bench/receiver/random.ts';
import { pick } from './calls.ts';

/** What a value of {@link junk} throws when it is touched. */
export const TRAP = 'trap';

function detached(): Uint8Array {
  const bytes = new Uint8Array(8);
  structuredClone(bytes.buffer, { transfer: [bytes.buffer] });
  return bytes;
}

function trap(): never {
  throw new Error(TRAP);
}

const allTraps = new Proxy(
  {},
  { get: trap, has: trap, ownKeys: trap, getOwnPropertyDescriptor: trap, getPrototypeOf: trap },
);

function revoked(): object {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return proxy;
}

function cyclic(): object {
  const self: Record<string, unknown> = { kind: 'station', call: null };
  self.self = self;
  return self;
}

const deep = (): unknown => {
  let value: unknown = [];
  for (let depth = 0; depth < 3000; depth += 1) value = depth % 2 === 0 ? [value] : { a: value };
  return value;
};

const keys = [
  'kind',
  'length',
  'own',
  'now',
  'from',
  'start',
  'position',
  'call',
  'to',
  'mmsi',
  'at',
  'direction',
  'channel',
  'sampleRate',
  'directory',
  'expect',
  'settings',
  'dialogues',
  'fields',
  'stations',
];

const makers: readonly ((random: Random) => unknown)[] = [
  () => undefined,
  () => null,
  () => Number.NaN,
  () => -1,
  () => 0.5,
  () => 1e300,
  () => Infinity,
  () => 10n,
  () => Symbol('x'),
  () => true,
  () => '',
  () => '\ud800',
  () => '__proto__',
  () => 'constructor',
  () => '٣٣٣٣٣٣٣٣٣',
  () => '\u0000',
  () => '2329998710',
  () => new Date(NaN),
  () => new Map([[1, 2]]),
  () => Object.create(null),
  () => ({}),
  () => [],
  () => [undefined, null, {}, NaN, '', 10n],
  () => new Array(5),
  () => ({ length: -3 }),
  () => ({ length: '4', 0: 1 }),
  () => ({ length: NaN }),
  () => ({ toString: trap, valueOf: trap }),
  () => ({ toString: () => ({}) as never }),
  () => allTraps,
  () => new Proxy([], { get: trap }),
  revoked,
  detached,
  cyclic,
  deep,
  () => () => 1,
  () => class {},
  () => new Uint8Array(3),
  () => new Float32Array([NaN, Infinity, -1]),
  () => new Uint8Array(new SharedArrayBuffer(4)),
  () => new DataView(new ArrayBuffer(4)),
  (random) => ({ [pick(random, keys)]: junk(random), [pick(random, keys)]: junk(random) }),
  (random) => Object.defineProperty({}, pick(random, keys), { get: trap, enumerable: true }),
  (random) => [junk(random), junk(random)],
  (random) => JSON.parse(`{"${pick(random, keys)}":{"__proto__":{"x":1},"length":3}}`) as unknown,
];

/** A value that nobody expects. */
export const junk = (random: Random): unknown => pick(random, makers)(random);

/** One line about a value that may not like to be looked at. */
export function aboutJunk(value: unknown, depth = 0): string {
  try {
    if (typeof value === 'string') return JSON.stringify(value.slice(0, 80));
    if (typeof value === 'bigint') return `${value}n`;
    if (typeof value === 'function') return 'function';
    if (value === null || typeof value !== 'object') return String(value);
    if (value === allTraps) return 'proxy of traps';
    if (ArrayBuffer.isView(value))
      return `${value.constructor.name}(${value.byteLength}${value.buffer.byteLength === 0 ? ', detached' : ''})`;
    if (depth > 2) return '...';
    const rows = Object.entries(Object.getOwnPropertyDescriptors(value)).slice(0, 6);
    const inside = rows.map(
      ([key, { get, value: one }]) => `${key}: ${get ? 'getter that throws' : aboutJunk(one, depth + 1)}`,
    );
    return Array.isArray(value) ? `[${inside.join(', ')}]` : `{${inside.join(', ')}}`;
  } catch {
    return 'something that throws when looked at';
  }
}
