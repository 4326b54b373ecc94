import type { ReportedPosition } from '../position/index.ts';
import type { Notice } from '../result/index.ts';
import type { Call, CallAddress } from './call.ts';
import { ADDRESS_KINDS, addressFields, addressOf, readAddress } from './element/address-symbols.ts';
import { isMooredVesselAlarm, mooredVesselNotice } from './element/announcement.ts';
import { expansionSets, readExpansion } from './element/expansion.ts';
import { identityOf, identitySymbols } from './element/identity-symbols.ts';
import { fractionOf, refined } from './element/place-symbols.ts';
import { allFields, type CallFields, type DraftFields, type ExpansionSet, wholeFields } from './fields.ts';
import { FIXED_TELECOMMAND, type KindRow, kinds } from './kinds.ts';
import { compositionNotices, unrecognisedNotices } from './notice/composition-notices.ts';
import type { Properties } from './part.ts';
import { copyOf, same } from './same.ts';
import { categories, formatSpecifiers, symbolOfName } from './symbol.ts';

/** Calls and their fields, each from the other, by a table of kinds. */
export interface CallTable {
  /** What fields mean. */
  readonly read: (received: CallFields) => ReadFields;
  /** The same fields with the sets of an expansion that came later. */
  readonly expand: (before: ReadFields, sets: readonly ExpansionSet[]) => ReadFields;
  /** What {@link CallTable.read} says of fields beside the call. */
  readonly noticesOf: (received: CallFields) => readonly Notice[];
  /** The fields that the table gives a call, whatever was received. */
  readonly compose: (call: Call) => CallFields;
  /** The fields of a call: as received while they still mean this call, else as composed. */
  readonly fieldsOf: (call: Call) => CallFields;
  /** The row that fields are of, `null` when they are of none. */
  readonly rowFor: (fields: CallFields) => KindRow | null;
  /** The row of a call, the first of its kind where none is for its address. Throws for a kind that has none. */
  readonly rowOf: (call: ComposedCall) => KindRow;
}

/** A call that the tables compose. */
export type ComposedCall = Exclude<Call, Call<'unrecognised-call'>>;

/** What fields were read as, kept beside them so that they are not read again. */
interface Reading {
  readonly call: Call;
  /** What a person should be told about how it was composed. */
  readonly notices: readonly Notice[];
  /** Whether composing the call gives these very fields. */
  readonly exact: boolean;
}

export interface ReadFields extends Reading {
  readonly fields: CallFields;
}

export function callTable(rows: readonly KindRow[]): CallTable {
  let tell: CallTable['rowFor'] | undefined;
  // By the fields that a call holds as received. Both are compared by value before they are relied on: either may have
  // been changed since, and a call that was stored and restored has other objects.
  const readings = new WeakMap<CallFields, Reading & { readonly fields: CallFields }>();

  function rowFor(fields: CallFields): KindRow | null {
    tell ??= kindTeller(rows);
    return tell(fields);
  }

  function rowOf({ kind, to }: ComposedCall): KindRow {
    let first: KindRow | undefined;
    for (const row of rows) {
      if (row.kind !== kind) continue;
      if (ADDRESS_KINDS[row.format] === to.kind) return row;
      first ??= row;
    }
    if (first === undefined) throw new TypeError(`kind: expected a kind of call, got '${kind}'`);
    return first;
  }

  function compose(call: Call): CallFields {
    return call.kind === 'unrecognised-call' ? call.asReceived : composeAs(rowOf(call), call);
  }

  function interpret(fields: CallFields): Reading {
    const row = rowFor(fields);
    if (row === null)
      return { call: unrecognised(fields), notices: unrecognisedNotices(fields), exact: false };
    const call = readAs(row, fields);
    const composed = composeAs(row, call);
    const exact = sameFields(composed, fields);
    // What is as composed is no such alarm, and most calls are.
    const notices =
      !exact && isMooredVesselAlarm({ ...call, asReceived: fields })
        ? [mooredVesselNotice()]
        : compositionNotices(row, fields, exact ? null : composed);
    return { call, notices, exact };
  }

  function read(received: CallFields): ReadFields {
    const fields = wholeFields(received);
    const { call, notices, exact } = interpret(fields);
    if (exact) return { call, notices, exact, fields };
    readings.set(fields, { fields: copyOf(fields), call: copyOf(call), notices, exact });
    return { call: { ...call, asReceived: fields } as Call, notices, exact, fields };
  }

  function expand({ call, notices, exact, fields }: ReadFields, sets: readonly ExpansionSet[]): ReadFields {
    const finer = { ...fields, expansion: sets };
    // Of a call that is as composed, only the position and the data of its expansion are read again.
    if (!exact) return read(finer);
    const expansion = readExpansion(sets);
    const whole = positionIn(call);
    const more = {
      ...call,
      ...(expansion.data !== null && { expansion: expansion.data }),
      ...(whole !== null && { position: refined(whole, expansion.fraction) }),
    } as Call;
    if (!same(expansionSets(more.expansion, fractionOf(positionIn(more))), sets)) return read(finer);
    return { call: more, notices, exact, fields: finer };
  }

  function kept(fields: CallFields): Reading | undefined {
    const known = readings.get(fields);
    return known !== undefined && sameFields(known.fields, fields) ? known : undefined;
  }

  function readingOf(fields: CallFields): Reading {
    const known = kept(fields);
    if (known !== undefined) return known;
    const reading = { fields: copyOf(fields), ...interpret(wholeFields(fields)) };
    readings.set(fields, reading);
    return reading;
  }

  function noticesOf(fields: CallFields): readonly Notice[] {
    return (kept(fields) ?? interpret(wholeFields(fields))).notices;
  }

  function fieldsOf(call: Call): CallFields {
    const { asReceived, ...said } = call;
    if (asReceived === undefined) return compose(call);
    const { call: meant, exact } = readingOf(asReceived);
    return !exact && same(meant, said) && wholeFields(asReceived) === asReceived ? asReceived : compose(call);
  }

  return { read, expand, noticesOf, compose, fieldsOf, rowFor, rowOf };
}

/** The table of ITU-R M.493. */
export const calls: CallTable = /* @__PURE__ */ callTable(kinds);

/**
 * Finds the row of the fields, by format specifier, first telecommand, end of sequence and whether there is a
 * position; `null` when they are of none. The category counts only as a sign of distress, since older sets send
 * position calls as routine (common practice, no source).
 */
function kindTeller(rows: readonly KindRow[]): (fields: CallFields) => KindRow | null {
  const candidates = rows.map((row) => ({
    row,
    format: symbolOfName(formatSpecifiers, row.format),
    isOfDistress: row.order.includes('distressed'),
    // A row of one first telecommand is told by it.
    telecommand: row.message.includes(FIXED_TELECOMMAND) ? row.unsaid().telecommand1 : null,
    matches: row.message.flatMap(({ matches }) => matches ?? []),
  }));
  const ofDistress = candidates.flatMap(({ isOfDistress, telecommand }) => (isOfDistress ? telecommand : []));
  return (fields) => {
    const { telecommand1, end } = fields;
    const alike = candidates.filter(({ format }) => format === fields.format);
    if (alike.length < 2) return alike[0]?.row ?? null;
    const namesShip = fields.distressed !== null || fields.nature !== null;
    // The telecommand decides, as long as some other field is of a distress.
    const isDistress =
      (namesShip || fields.category === DISTRESS_CATEGORY) && ofDistress.includes(telecommand1);
    if (namesShip && !isDistress) return null;
    const family = alike.filter(({ isOfDistress }) => isOfDistress === isDistress);
    const named = family.filter(({ telecommand }) => telecommand === telecommand1);
    const open = isDistress || named.length > 0 ? named : family.filter((each) => each.telecommand === null);
    const told = open.find(({ matches }) => matches.some((match) => match(fields)));
    return (told ?? open.find(({ row }) => row.unsaid().end === end) ?? open[0])?.row ?? null;
  };
}

const DISTRESS_CATEGORY: number = /* @__PURE__ */ symbolOfName(categories, 'distress');

function unrecognised(fields: CallFields): Call {
  const { data } = readExpansion(fields.expansion);
  const sender = { from: identityOf(fields.self), ...(data !== null && { expansion: data }) };
  return { kind: 'unrecognised-call', to: addressOf(fields), ...sender, asReceived: fields };
}

function readAs(row: KindRow, fields: CallFields): Call {
  const expansion = readExpansion(fields.expansion);
  const call: Properties = {
    kind: row.kind,
    to: readAddress(row.format, fields.address),
    from: identityOf(fields.self),
  };
  if (expansion.data !== null) call.expansion = expansion.data;
  for (const part of row.message) part.read(fields, call, expansion);
  return call as unknown as Call;
}

function composeAs(row: KindRow, call: Call): CallFields {
  const fields: DraftFields = { ...row.unsaid(), ...addressFields(call.to as CallAddress, row.format) };
  fields.self = identitySymbols(call.from);
  for (const part of row.message) part.write(call as unknown as Properties, fields);
  const position = row.order.includes('position') ? positionIn(call) : null;
  fields.expansion = expansionSets(call.expansion, fractionOf(position));
  return fields;
}

function positionIn(call: Call): ReportedPosition | null {
  return 'position' in call ? call.position : null;
}

function sameFields(one: CallFields, other: CallFields): boolean {
  for (const name of allFields) if (!same(one[name], other[name])) return false;
  return true;
}
