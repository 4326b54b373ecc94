import { type CallFields, emptyFields, type Symbols } from '../call/index.ts';

/** Format specifiers that decide which fields follow (M.493). */
export const DISTRESS = 112;
export const ALL_SHIPS = 116;
const AUTOMATIC_SERVICE = 123;
const ADDRESSED: Symbols = [102, 114, 120, AUTOMATIC_SERVICE];
const DISTRESS_CATEGORY = 112;
/** First telecommands that the particulars of a distress follow: acknowledgement and relay. */
const OF_DISTRESS: Symbols = [110, 112];
const SHIP_POSITION = 121;
/** Stands before a position where a frequency could stand. */
const POSITION_HEADER = 55;
/** First symbols of a telephone number: odd or even count of digits. */
const TELEPHONE_MARKS: Symbols = [105, 106];

type SingleField = 'category' | 'telecommand1' | 'telecommand2' | 'nature' | 'subsequent';
type LongField =
  | 'address'
  | 'self'
  | 'distressed'
  | 'receive'
  | 'transmit'
  | 'telephone'
  | 'position'
  | 'time';
type FieldName = SingleField | LongField | 'header';

/** Every field in the one order that holds for all compositions. */
const ORDER: readonly FieldName[] = [
  'address',
  'category',
  'self',
  'telecommand1',
  'telecommand2',
  'distressed',
  'nature',
  'receive',
  'transmit',
  'telephone',
  'header',
  'position',
  'time',
  'subsequent',
];

type Cut = readonly [name: FieldName, length: number];
const PARTICULARS: readonly Cut[] = [
  ['nature', 1],
  ['position', 5],
  ['time', 2],
  ['subsequent', 1],
];
const ALERT: readonly Cut[] = [['self', 5], ...PARTICULARS];
const HEAD: readonly Cut[] = [
  ['category', 1],
  ['self', 5],
  ['telecommand1', 1],
];
const ADDRESSED_HEAD: readonly Cut[] = [['address', 5], ...HEAD];
const OF_SHIP: readonly Cut[] = [['distressed', 5], ...PARTICULARS];

/**
 * Take the characters of a call apart into fields.
 *
 * The first is the format specifier (once), the last the end of sequence. What follows the head is read by
 * telecommand and length; whatever fits no field goes into `rest`, so that {@link charactersFromFields}
 * gives every sequence of readable symbols back unchanged.
 * Source: ITU-R M.493 tables of compositions; orders as in Japan, Radio Station Operation Regulations,
 * figures 1 and 7 of Art. 36-2; position reply, eight-digit elements and telephone number from memory.
 *
 * @param characters - symbols 0–127, `null` for unreadable, format specifier once
 *
 * @example
 * ```ts
 * import { fieldsFromCharacters } from 'seahail/burst';
 *
 * const fields = fieldsFromCharacters([112, 25, 20, 0, 10, 10, 107, 99, 99, 99, 99, 99, 88, 88, 100, 127]);
 * console.log(fields.nature, fields.time); // 107 [ 88, 88 ]
 * ```
 */
export function fieldsFromCharacters(characters: Symbols): CallFields {
  const format = characters[0] ?? null;
  if (characters.length < 2) return { ...emptyFields, format };
  const end = characters.at(-1) ?? null;
  const message = characters.slice(1, -1);
  const start = { ...emptyFields, format, end };
  if (format === DISTRESS) return cut(start, message, ALERT);
  if (format !== ALL_SHIPS && !ADDRESSED.includes(format)) return { ...start, rest: message };
  const head = format === ALL_SHIPS ? HEAD : ADDRESSED_HEAD;
  const headLength = format === ALL_SHIPS ? 7 : 12;
  const body = message.slice(headLength);
  return cut(start, message, [...head, ...bodyCuts(format, message, body)]);
}

/**
 * Put fields together into the characters of a call: format specifier once, end of sequence last.
 *
 * A single-symbol field that could not be read gives `null` where a later field shows that it was sent.
 * The expansion is no part of the call's own characters.
 *
 * @see {@link fieldsFromCharacters}
 *
 * @example
 * ```ts
 * import { charactersFromFields, fieldsFromCharacters } from 'seahail/burst';
 *
 * const characters = [116, 108, 25, 20, 0, 10, 10, 100, 126, 90, 0, 6, 126, 126, 126, 127];
 * console.log(charactersFromFields(fieldsFromCharacters(characters)).join() === characters.join()); // true
 * ```
 */
export function charactersFromFields(fields: CallFields): (number | null)[] {
  const message: (number | null)[] = [];
  for (const name of [...ORDER].reverse()) {
    const value = fields[name];
    if (name === 'header') {
      if (fields.header) message.unshift(POSITION_HEADER);
    } else if (typeof value === 'number') message.unshift(value);
    else if (value !== null) message.unshift(...(value as Symbols));
    else if (message.length > 0 && isGap(fields, name)) message.unshift(null);
  }
  message.push(...fields.rest);
  if (message.length > 0 || fields.end !== null) return [fields.format, ...message, fields.end];
  return fields.format === null ? [] : [fields.format];
}

/** Whether an absent field was sent and not read, seen from the later fields that are there. */
function isGap(fields: CallFields, name: FieldName): boolean {
  switch (name) {
    case 'category':
    case 'telecommand1':
      return fields.format !== DISTRESS;
    case 'telecommand2':
      return fields.format !== DISTRESS && fields.distressed === null;
    case 'nature':
      return fields.format === DISTRESS || fields.distressed !== null;
    default:
      return false;
  }
}

/** What follows the first telecommand, by what that is and by how much follows. */
function bodyCuts(format: number | null, message: Symbols, body: Symbols): readonly Cut[] {
  const telecommand1 = message[message.length - body.length - 1] ?? null;
  const category = message[message.length - body.length - 7];
  const distress = OF_DISTRESS.includes(telecommand1)
    ? category === DISTRESS_CATEGORY || body.length === 14
    : telecommand1 === null && category === DISTRESS_CATEGORY;
  if (distress) return OF_SHIP;
  const others = body.slice(1);
  return [['telecommand2', 1], ...(positionCuts(telecommand1, others) ?? elementCuts(format, others))];
}

/** A position with or without header and time; `null` when the message is none. */
function positionCuts(telecommand1: number | null, message: Symbols): readonly Cut[] | null {
  // deviation: D-call-10 (header 55 and the two symbols of time are from memory; all four forms are read).
  const headed = message[0] === POSITION_HEADER;
  const cuts: Cut[] = headed ? [['header', 1]] : [];
  const length = message.length - cuts.length;
  if (!headed && telecommand1 !== SHIP_POSITION) return null;
  if (length === 5) return [...cuts, ['position', 5]];
  return length === 7 ? [...cuts, ['position', 5], ['time', 2]] : null;
}

/** Frequency or channel elements, in the automatic service one of them and a telephone number. */
function elementCuts(format: number | null, message: Symbols): readonly Cut[] {
  const receive = elementLength(message[0]);
  const others = message.slice(receive);
  if (format === AUTOMATIC_SERVICE && others.length <= 9 && TELEPHONE_MARKS.includes(others[0] ?? null))
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
  // A single unreadable symbol with no field behind it would leave no trace: it stays in the rest.
  for (let last = taken.at(-1); last !== undefined && isLost(...last); last = taken.at(-1)) {
    taken.pop();
    at--;
  }
  const out: { -readonly [Name in keyof CallFields]: CallFields[Name] } = {
    ...fields,
    rest: symbols.slice(at),
  };
  for (const [name, part] of taken) {
    if (name === 'header') out.header = true;
    else if (isSingle(name)) out[name] = part[0] ?? null;
    else out[name] = part;
  }
  return out;
}

function isLost(name: FieldName, part: Symbols): boolean {
  return isSingle(name) && name !== 'subsequent' && part[0] === null;
}

function isSingle(name: FieldName): name is SingleField {
  return name === 'category' || name.startsWith('telecommand') || name === 'nature' || name === 'subsequent';
}
