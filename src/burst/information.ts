import {
  type CallFields,
  type Composition,
  compositions,
  fieldLengths,
  type Symbols,
} from '../call/index.ts';
import {
  allFields,
  categories,
  type DraftFields,
  emptyFields,
  type FieldName,
  fieldForms,
  firstTelecommands,
  formatSpecifiers,
  PARITY_MARKS,
  POSITION_HEADER,
  symbolOfName,
} from '../call/internal.ts';
import { safely } from '../result/internal.ts';
import { isSymbol } from './symbol-code.ts';

const TELECOMMAND = 'telecommand1';

/** What the compositions of each format specifier begin with: up to the first telecommand, or to the end where none is. */
const HEADS: ReadonlyMap<number | null, readonly FieldName[]> = /* @__PURE__ */ heads();
/** Fields after the first telecommand, where the call is about a ship in distress. */
const OF_SHIP: readonly FieldName[] = /* @__PURE__ */ afterTelecommand('distressed');
/** First telecommands that such fields follow. */
const OF_DISTRESS: Symbols = /* @__PURE__ */ telecommandsWith('distressed');
/** First telecommands that a position follows. */
const OF_POSITION: Symbols = /* @__PURE__ */ telecommandsWith('header');
const DISTRESS: number = /* @__PURE__ */ symbolOfName(formatSpecifiers, 'distress');
const AUTOMATIC_SERVICE: number = /* @__PURE__ */ symbolOfName(formatSpecifiers, 'automatic-service');
const DISTRESS_CATEGORY: number = /* @__PURE__ */ symbolOfName(categories, 'distress');
/** What most calls begin with. */
const ADDRESSED: readonly FieldName[] = ['address', 'category', 'self', TELECOMMAND];
/** The fields between format specifier and end of sequence that have a place of their own. */
const MESSAGE: readonly FieldName[] = /* @__PURE__ */ allFields.filter(
  (name) => !['format', 'rest', 'end', 'expansion'].includes(name),
);

type Cut = readonly [name: FieldName, length: number];

/**
 * Take the characters of a call apart into fields.
 *
 * The first is the format specifier (once), the last the end of sequence. What follows the head is read by
 * telecommand and length; whatever fits no field goes into `rest`, so that {@link encodeCharacters}
 * gives every sequence of readable symbols back unchanged.
 * Source: ITU-R M.493 tables of compositions; orders as in Japan, Radio Station Operation Regulations,
 * figures 1 and 7 of Art. 36-2; position reply, eight-digit elements and telephone number from memory.
 *
 * @param received - symbols 0–127, `null` for unreadable, format specifier once
 */
export function decodeCharacters(received: Symbols): CallFields {
  const characters = safely(
    () => Array.from(Array.isArray(received) ? received : [], (symbol) => (isSymbol(symbol) ? symbol : null)),
    () => [],
  );
  const format = characters[0] ?? null;
  if (characters.length < 2) return { ...emptyFields, format };
  const end = characters.at(-1) ?? null;
  const message = characters.slice(1, -1);
  const start = { ...emptyFields, format, end };
  const head = headOf(format)?.map(usualCut);
  if (head === undefined) return { ...start, rest: message };
  return cut(start, message, format === DISTRESS ? head : [...head, ...bodyCuts(format, message, head)]);
}

/**
 * Put fields together into the characters of a call: format specifier once, end of sequence last.
 *
 * A single-symbol field that could not be read gives `null` where a later field shows that it was sent.
 * The expansion is no part of the call's own characters.
 */
export function encodeCharacters(fields: CallFields): (number | null)[] {
  const message: (number | null)[] = [];
  for (const name of [...MESSAGE].reverse()) {
    const value = fields[name];
    if (value === true) message.unshift(POSITION_HEADER);
    else if (typeof value === 'number') message.unshift(value);
    else if (Array.isArray(value)) message.unshift(...value);
    else if (message.length > 0 && isGap(fields, name)) message.unshift(null);
  }
  message.push(...fields.rest);
  if (message.length > 0 || fields.end !== null) return [fields.format, ...message, fields.end];
  return fields.format === null ? [] : [fields.format];
}

/** The fields that a call of a format specifier begins with, `undefined` when no composition has it. */
export function headOf(format: number | null): readonly FieldName[] | undefined {
  return HEADS.get(format);
}

/** Whether an absent field was sent and not read, seen from the later fields that are there. */
function isGap({ format, distressed }: CallFields, name: FieldName): boolean {
  if (!isTraced(name)) return false;
  const head = headOf(format) ?? ADDRESSED;
  if (format === DISTRESS || head.includes(name)) return head.includes(name);
  return distressed === null ? name === 'telecommand2' : OF_SHIP.includes(name);
}

/** What follows the first telecommand, by what that is and by how much follows. */
function bodyCuts(format: number | null, message: Symbols, head: readonly Cut[]): readonly Cut[] {
  const at = lengthOf(head);
  const body = message.slice(at);
  const telecommand1 = message[at - 1] ?? null;
  const category = message[at - 7];
  const cuts = OF_SHIP.map(usualCut);
  const isDistress = OF_DISTRESS.includes(telecommand1)
    ? category === DISTRESS_CATEGORY || body.length === lengthOf(cuts)
    : telecommand1 === null && category === DISTRESS_CATEGORY;
  if (isDistress) return cuts;
  const others = body.slice(1);
  return [['telecommand2', 1], ...(positionCuts(telecommand1, others) ?? elementCuts(format, others))];
}

/** A position with or without header and time; `null` when the message is none. */
function positionCuts(telecommand1: number | null, message: Symbols): readonly Cut[] | null {
  // deviation: D-call-10 (header 55 and the two symbols of time are from memory; all four forms are read).
  const headed = message[0] === POSITION_HEADER;
  const cuts: Cut[] = headed ? [['header', 1]] : [];
  const length = message.length - cuts.length;
  if (!headed && !OF_POSITION.includes(telecommand1)) return null;
  if (length === 5) return [...cuts, ['position', 5]];
  return length === 7 ? [...cuts, ['position', 5], ['time', 2]] : null;
}

/** Frequency or channel elements, in the automatic service one of them and a telephone number. */
function elementCuts(format: number | null, message: Symbols): readonly Cut[] {
  const receive = elementLength(message[0]);
  const others = message.slice(receive);
  if (format === AUTOMATIC_SERVICE && others.length <= 9 && PARITY_MARKS.includes(others[0] ?? null))
    return [
      ['receive', receive],
      ['telephone', others.length],
    ];
  return [
    ['receive', receive],
    ['transmit', elementLength(others[0])],
  ];
}

/** ITU-R M.493-16 table A1-5, as publicly restated: eight digits when the first is a 4, in steps of 10 Hz; else six. */
function elementLength(first: number | null | undefined): number {
  return typeof first === 'number' && first >= 40 && first <= 49 ? 4 : 3;
}

/** Cut as many fields off as are there in full; what is over goes into `rest`. */
function cut(fields: CallFields, symbols: Symbols, cuts: readonly Cut[]): CallFields {
  const taken: [name: FieldName, part: Symbols][] = [];
  let at = 0;
  for (const [name, length] of cuts) {
    if (at + length > symbols.length) break;
    taken.push([name, symbols.slice(at, at + length)]);
    at += length;
  }
  // A single unreadable symbol with no field after it would leave no trace: it stays in the rest.
  for (let last = taken.at(-1); last !== undefined && isLost(...last); last = taken.at(-1)) {
    taken.pop();
    at--;
  }
  const out: DraftFields = { ...fields, rest: symbols.slice(at) };
  for (const [name, part] of taken) {
    const { holds } = fieldForms[name];
    Object.assign(out, { [name]: holds === 'flag' ? true : holds === 'symbol' ? (part[0] ?? null) : part });
  }
  return out;
}

function isLost(name: FieldName, part: Symbols): boolean {
  return isTraced(name) && part[0] === null;
}

/** Whether a character that was not read leaves a gap when later fields are there: one of a field of its own, but the last. */
function isTraced(name: FieldName): boolean {
  return fieldForms[name].holds === 'symbol' && name !== 'subsequent';
}

function usualCut(name: FieldName): Cut {
  return [name, fieldLengths[name] ?? 0];
}

function lengthOf(cuts: readonly Cut[]): number {
  return cuts.reduce((sum, [, length]) => sum + length, 0);
}

function telecommandsWith(field: FieldName): (number | null)[] {
  const rows = compositions.filter(({ order }) => order.includes(field));
  return rows.flatMap(({ telecommands }) =>
    telecommands.map((name) => symbolOfName(firstTelecommands, name)),
  );
}

function heads(): Map<number, readonly FieldName[]> {
  const of = ({ order: [, ...message] }: Composition) =>
    message.slice(0, message.indexOf(TELECOMMAND) + 1 || message.length);
  return new Map(compositions.map((row) => [symbolOfName(formatSpecifiers, row.format), of(row)]));
}

function afterTelecommand(field: FieldName): readonly FieldName[] {
  const order = compositions.find((row) => row.order.includes(field))?.order ?? [];
  return order.slice(order.indexOf(TELECOMMAND) + 1);
}
