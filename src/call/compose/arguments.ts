import { parseDesignator } from '../../channel/index.ts';
import { usesOf } from '../../identity/index.ts';
import { want, wantNames } from '../../result/internal.ts';
import type { Call, CallAddress, ExpansionData } from '../call.ts';
import { type ComposedCall, calls } from '../call-table.ts';
import { readExpansion } from '../element/expansion.ts';
import { stationIdentity } from '../element/identity-symbols.ts';
import { EXPANSION, given, inWords, wrongType } from '../wrong-type.ts';

/** What every composed call has beside its message. */
export interface ComposeOptions {
  /** Own identity. */
  readonly from: string;
  /**
   * Data sets of ITU-R M.821-1; finer minutes of a position need none. Speed and course are rounded to the tenths that
   * are sent.
   */
  readonly expansion?: ExpansionData | undefined;
}

type NamesOf<Options> = Options extends unknown ? keyof Options & string : never;

/** Throws unless they are options, and every name is one of `from`, `expansion` and those given. */
export function wantOptions<Options extends object>(
  options: Options,
  ...names: readonly NamesOf<Options>[]
): void {
  want('options', 'an object', options);
  wantNames('options: expected', options, ['from', ...names, 'expansion']);
}

/**
 * The call, with its expansion as it is sent, once every value in it is known to have symbols.
 *
 * @throws TypeError when a value is of another type, RangeError when one has no symbols or the call is to its sender
 */
export function composed<Kind extends ComposedCall>(
  call: Kind,
  options: Pick<ComposeOptions, 'expansion'>,
): Kind {
  const { expansion } = options;
  const whole = { ...call, expansion } as Kind;
  const wrong = wrongType(whole);
  if (wrong !== null) throw new TypeError(inWords(wrong));
  if ('mmsi' in whole.to && whole.to.mmsi === whole.from)
    throw new RangeError(`to: expected another station, got the own identity ${whole.from}`);
  if (expansion !== undefined) wantSendable(expansion);
  const fields = calls.compose(whole);
  const { data } = readExpansion(fields.expansion);
  return data === null ? call : { ...call, expansion: data };
}

/** ITU-R M.821-1, sets 100 to 106. What was received may hold others, and is sent as received. */
function wantSendable(expansion: ExpansionData): void {
  wantNames('expansion: expected', expansion, Object.keys(EXPANSION));
  const { personsOnBoard = 0, requested = [], unavailable = [] } = expansion;
  if (!Number.isInteger(personsOnBoard))
    throw new RangeError(`persons on board: expected a whole number, got ${personsOnBoard}`);
  for (const [name, sets] of Object.entries({ requested, unavailable }))
    for (const set of sets)
      if (!(Number.isInteger(set) && set >= 100 && set <= 106))
        throw new RangeError(`${name}: expected a data set from 100 to 106, got ${set}`);
}

/** The call that an answer or a distress call is about. Throws for one of another kind. */
export function ofKind<Asked extends Call>(
  name: string,
  call: Asked,
  kinds: readonly Asked['kind'][],
): Asked {
  want(name, 'a call', call, 'kind');
  if (!kinds.includes(call.kind))
    throw new RangeError(`${name}: expected ${kinds.join(' or ')}, got ${given(call.kind)}`);
  return call;
}

/** An identity that may stand as a station's own. Throws for any other. */
export function ownIdentity(mmsi: string | null | undefined): string {
  const { digits, identity } = nineDigits('from', mmsi);
  if (!usesOf(identity).own)
    throw new RangeError(`from: expected an identity that one station can have, got ${digits}`);
  return digits;
}

/** The address of a call to one station. Throws for the identity of a group or of an AIS device. */
export function stationAddress(mmsi: string | null | undefined): CallAddress<'station'> {
  const { digits, identity } = nineDigits('to', mmsi);
  // The alert of a man-overboard device can be acknowledged to the device alone (ITU-R M.493-16, from memory).
  if (!usesOf(identity).individual && identity.kind !== 'mob') {
    throw new RangeError(`to: expected the identity of one station, got ${digits}`);
  }
  return { kind: 'station', mmsi: digits };
}

/** Sender and address of a call to one station. */
export function stations({ from, to }: { readonly from: string; readonly to: string }): {
  readonly to: CallAddress<'station'>;
  readonly from: string;
} {
  return { to: stationAddress(to), from: ownIdentity(from) };
}

/** The address of a group call. Throws for an identity that is no group's. */
export function groupAddress(mmsi: string): CallAddress<'group'> {
  const { digits, identity } = nineDigits('to', mmsi);
  if (!usesOf(identity).group) throw new RangeError(`to: expected the identity of a group, got ${digits}`);
  return { kind: 'group', mmsi: digits };
}

/** The address of a call to one station or to a group, whichever the identity is. */
export function stationOrGroup(mmsi: string): CallAddress<'station'> | CallAddress<'group'> {
  return usesOf(nineDigits('to', mmsi).identity).group ? groupAddress(mmsi) : stationAddress(mmsi);
}

/** The identity of a vessel in distress. Throws for one that no vessel, aircraft or person carries. */
export function distressedIdentity(mmsi: string | null, name = 'distressed'): string | null {
  if (mmsi === null) return null;
  const { digits, identity } = nineDigits(name, mmsi);
  if (!usesOf(identity).own || identity.kind === 'coast') {
    throw new RangeError(`${name}: expected the identity of a vessel, got ${digits}`);
  }
  return digits;
}

/**
 * The digits by which a call names a channel: `'06'` stays, `'6'` becomes `'06'`, `'22A'` becomes `'1022'`
 * (ITU-R M.1084 Annex 4). Throws for a name without digits, such as `'WX3'`.
 */
export function channelDigits(channel: string | null): string | null {
  if (channel === null) return null;
  if (typeof channel !== 'string') throw new TypeError('channel: expected text such as 72 or 22A');
  const read = parseDesignator(channel);
  const digits = read.ok ? read.value.m1084 : null;
  if (digits === null)
    throw new RangeError(`channel: expected a channel with digits of ITU-R M.1084, got ${given(channel)}`);
  return digits;
}

/** Throws unless the value is one of those the option allows. */
export function oneOf<Value extends string>(
  name: string,
  value: Value,
  allowed: readonly NoInfer<Value>[],
): Value {
  if (!allowed.includes(value))
    throw new RangeError(`${name}: expected one of ${allowed.join(', ')}, got '${value}'`);
  return value;
}

function nineDigits(name: string, mmsi: string | null | undefined) {
  if (typeof mmsi !== 'string') throw new TypeError(`${name}: expected an identity, text of nine digits`);
  const identity = stationIdentity(mmsi);
  if (identity === undefined)
    throw new RangeError(`${name}: expected a maritime identity of nine digits, got '${mmsi}'`);
  return { digits: mmsi, identity };
}
