import { quote } from '../result/internal.ts';
import { kinds } from './kinds.ts';
import { isRecord, type Properties, RECORD_IF_ANY, TEXT, type ValueType } from './part.ts';
import { typeTerms } from './terms.ts';

/** A value of another type than a call holds in that place. */
export interface WrongType {
  /** Names from the call down to the value, joined by points; `call` for the call itself. */
  readonly path: string;
  readonly at: readonly string[];
  /** What it has to be: a term. */
  readonly type: ValueType[0];
  /** What it is, as it is shown. */
  readonly received: string;
}

/**
 * The first value of a call that is of another type than calls hold, `null` when there is none. It looks at types alone,
 * as a compiler would: whether a value has symbols is seen when it is encoded.
 */
export function wrongType(call: unknown): WrongType | null {
  if (!isRecord(call)) return wrong([], 'call', call);
  if (call.kind !== 'unrecognised-call' && !kinds.some(({ kind }) => kind === call.kind))
    return wrong(['kind'], 'kind', call.kind);
  return (
    wrongAddress(call.to, call.kind === 'unrecognised-call') ??
    mistyped(call, [], TYPES) ??
    (isRecord(call.frequencies) ? mistyped(call.frequencies, ['frequencies'], FREQUENCIES) : null) ??
    (isRecord(call.expansion) ? mistyped(call.expansion, ['expansion'], EXPANSION) : null)
  );
}

type Types = Readonly<Record<string, ValueType>>;

const TEXT_IF_ANY: ValueType = ['text', (value) => value === undefined || typeof value === 'string'];
const NUMBER_IF_ANY: ValueType = ['number', (value) => value === undefined || typeof value === 'number'];
const NUMBERS_IF_ANY: ValueType = [
  'numbers',
  (value) => value === undefined || (Array.isArray(value) && value.every((each) => typeof each === 'number')),
];

const TYPES: Types = /* @__PURE__ */ typesOfProperties();

function typesOfProperties(): Types {
  const parts = kinds.flatMap(({ message }) => message.map(({ properties }) => properties));
  return Object.assign({ from: TEXT, expansion: RECORD_IF_ANY, asReceived: RECORD_IF_ANY }, ...parts);
}

const FREQUENCIES: Types = { receive: TEXT, transmit: TEXT };

/** What an expansion may tell, and the type of each. */
export const EXPANSION: Types = {
  speed: NUMBER_IF_ANY,
  course: NUMBER_IF_ANY,
  personsOnBoard: NUMBER_IF_ANY,
  source: TEXT_IF_ANY,
  stationName: TEXT_IF_ANY,
  area: RECORD_IF_ANY,
  requested: NUMBERS_IF_ANY,
  unavailable: NUMBERS_IF_ANY,
};

const ADDRESS_KINDS: readonly unknown[] = ['station', 'group', 'area', 'all-ships', 'all-stations'];

function wrongAddress(to: unknown, mayBeNull: boolean): WrongType | null {
  if (to === null && mayBeNull) return null;
  if (!isRecord(to)) return wrong(['to'], 'address', to);
  if (!ADDRESS_KINDS.includes(to.kind)) return wrong(['to', 'kind'], 'address-kind', to.kind);
  if (to.kind === 'area' && to.area !== null && !(isRecord(to.area) && isRecord(to.area.north)))
    return wrong(['to', 'area'], 'area', to.area);
  return mistyped(to, ['to'], { mmsi: TEXT });
}

function mistyped(record: Readonly<Properties>, at: readonly string[], types: Types): WrongType | null {
  for (const [name, [expected, fits]] of Object.entries(types))
    if (Object.hasOwn(record, name) && !fits(record[name]))
      return wrong([...at, name], expected, record[name]);
  return null;
}

function wrong(at: readonly string[], type: ValueType[0], value: unknown): WrongType {
  return { path: at.length === 0 ? 'call' : at.join('.'), at, type, received: given(value) };
}

/** The same for a programmer. */
export function inWords({ path, type, received }: WrongType): string {
  return `${path}: expected ${typeTerms[`value-type.${type}`]}, got ${received}`;
}

/** A value in a message: short, whatever it is, and the same in every language. */
export function given(value: unknown): string {
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'number' || typeof value === 'boolean' || value == null) return String(value);
  return Array.isArray(value) ? 'array' : typeof value;
}
