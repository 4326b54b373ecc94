import {
  type Call,
  compositions,
  decodeFields,
  encodeFields,
  type NatureOfDistress,
  natures,
} from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';

/** Whether a value is an object with keys of its own to look into. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Text, or `null`. */
export function readText(value: unknown): string | null {
  return typeof value === 'string' ? value : null;
}

/** A whole number of at least so much, or `null`. */
export function readCount(value: unknown, least: number): number | null {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= least ? value : null;
}

/** An instant that a clock can have, epoch milliseconds, or `null`. */
export function readInstant(value: unknown): number | null {
  return typeof value === 'number' && Math.abs(value) <= LAST_INSTANT ? value : null;
}

/** A place on Earth, or `null`. */
export function readCoordinates(value: unknown): Coordinates | null {
  if (!isRecord(value)) return null;
  const { latitude, longitude } = value;
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return null;
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

/** Whether a value is a nature of distress. */
export function isNature(value: unknown): value is NatureOfDistress {
  return natures.rows.some(([, nature]) => nature === value);
}

/** Greatest time value of ECMA-262, milliseconds to either side of 1970. */
export const LAST_INSTANT = 8.64e15;

/** A call of a known kind, if its symbols say the same again: then everything in it is as the types say. */
export function readCall(stored: unknown): Call | null {
  if (!isRecord(stored) || !kinds.has(stored.kind)) return null;
  const call = stored as unknown as Call;
  try {
    const said: Readonly<Record<string, unknown>> = { ...decodeFields(encodeFields(call)).call };
    const holds = Object.entries(stored).every(
      ([key, value]) => key === 'kind' || key === 'asReceived' || !(key in said) || isSame(value, said[key]),
    );
    return holds ? call : null;
  } catch {
    return null;
  }
}

/** Whether a call has an address and a sender of the right type. */
export function hasParties(value: unknown): boolean {
  if (!isRecord(value) || typeof value.kind !== 'string') return false;
  const { to, from } = value;
  if (from !== null && typeof from !== 'string') return false;
  return to === null || (isRecord(to) && addresses.has(to.kind) && isAddress(to));
}

/** Whether every value of a call has symbols. */
export function hasSymbols(call: Call): boolean {
  try {
    encodeFields(call);
    return true;
  } catch {
    return false;
  }
}

const kinds: ReadonlySet<unknown> = /* @__PURE__ */ new Set([
  'unrecognised-call',
  ...compositions.map(({ kind }) => kind),
]);

const addresses: ReadonlySet<unknown> = /* @__PURE__ */ new Set([
  'station',
  'group',
  'area',
  'all-ships',
  'all-stations',
]);

function isAddress({ kind, mmsi, area }: Readonly<Record<string, unknown>>): boolean {
  if (kind === 'area') return area === null || isRecord(area);
  return kind === 'all-ships' || kind === 'all-stations' || mmsi === null || typeof mmsi === 'string';
}

/** Whether two plain values are the same; a key whose value is undefined counts as absent. */
function isSame(one: unknown, other: unknown): boolean {
  if (!isRecord(one) || !isRecord(other)) {
    return Array.isArray(one) && Array.isArray(other)
      ? one.length === other.length && one.every((entry, index) => isSame(entry, other[index]))
      : one === other;
  }
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => isSame(one[key], other[key]));
}
