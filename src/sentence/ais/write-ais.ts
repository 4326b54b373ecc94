import type { AisReport } from '../../report/index.ts';
import { messagesOf, STATUS_CODES } from '../../report/internal.ts';
import { want } from '../../result/internal.ts';
import { requireCoordinates } from '../field/coordinate-fields.ts';
import { formatSentence } from '../frame/format.ts';

type Field = readonly [value: number, bits: number];

/** Characters of payload in one sentence: with sequence number and channel it has the 82 of IEC 61162-1. */
const MOST_CHARACTERS = 60;
/** Not available, by ITU-R M.1371. */
const [NO_LONGITUDE, NO_LATITUDE, NO_SPEED, NO_COURSE, NO_HEADING, NO_SECOND] = [
  181, 91, 1023, 3600, 511, 60,
];
/**
 * Writes an AIS report as `VDM` or `VDO` sentences, for a display that takes AIS over its serial port.
 *
 * It is for passing on what a transponder received or sent. A report does not hold everything the message had:
 * dimensions, destination and the like go out as not available, and what the message has no field for is left out. Text
 * goes out in capitals, cut to its field, with a space for what has no six-bit character. Never write a report for a
 * station that sent none: displays take it for a vessel.
 *
 * @param report - as a reader gives it; its `message` decides the layout
 * @param options - own or other, channel, sequence number
 * @returns the sentences without their line ends, one or two; a message 24 with the name and a call sign or type goes
 *   out as its parts A and B
 * @throws RangeError when the message has no layout here, the identity is not nine digits, the IMO number not seven, the
 *   sequence number is not 0 to 9, the position is none, or a value does not fit its field
 *
 * Source: ITU-R M.1371-6 Annex 7, bit tables of the messages, as publicly restated
 *
 * @example
 * ```ts
 * import { readSentences, writeAisSentences } from 'seahail/sentence';
 *
 * const [sentence = ''] = writeAisSentences({ message: 18, mmsi: '232999142', station: 'ship-class-b', speed: 5 });
 * const [reading] = readSentences(sentence);
 * if (reading?.kind === 'ais') console.log(reading.report.mmsi, reading.report.speed); // 232999142 5
 * ```
 */
export function writeAisSentences(
  report: AisReport,
  options: {
    /** Whether it is what the own transponder sent (`VDO`) and not what it received (`VDM`). */
    readonly own?: boolean | undefined;
    /** Channel it was received on; none unless given. */
    readonly channel?: 'A' | 'B' | null | undefined;
    /** Number that joins the sentences of one message, 0 to 9; 0 unless given. */
    readonly sequence?: number | undefined;
  } = {},
): string[] {
  want('writeAisSentences', 'an AIS report', report, 'mmsi');
  const { own, channel, sequence = 0 } = options;
  const messages = messagesOf(report);
  if (!(Number.isInteger(sequence) && sequence >= 0 && sequence <= 9))
    throw new RangeError(`sequence: expected a whole number from 0 to 9, got ${sequence}`);
  const head: Field[] = [
    [report.message, 6],
    [0, 2],
    [Number(report.mmsi), 30],
  ];
  return messages.flatMap((message) => {
    const { armoured, fill } = armour([...head, ...bodyOf(message)]);
    const total = Math.ceil(armoured.length / MOST_CHARACTERS);
    return Array.from({ length: total }, (_, index) => {
      const from = index * MOST_CHARACTERS;
      const fields = [
        String(total),
        String(index + 1),
        total === 1 ? '' : String(sequence),
        channel ?? '',
        armoured.slice(from, from + MOST_CHARACTERS),
        index === total - 1 ? String(fill) : '0',
      ];
      return formatSentence({ start: '!', talker: 'AI', formatter: own ? 'VDO' : 'VDM', fields });
    });
  });
}

function bodyOf(report: AisReport): Field[] {
  const { name = '', callSign = '', type = 0 } = report;
  const size: Field = [0, 30];
  switch (report.message) {
    case 1:
    case 2:
    case 3:
      return [
        [report.status === undefined ? 15 : STATUS_CODES[report.status], 4],
        [128, 8],
        ...motion(report),
        [0, 25],
      ];
    case 4:
    case 11:
      return [...instant(report.instant), ...place(report), [0, 34]];
    case 5:
      return [
        [0, 2],
        [Number(report.imo ?? 0), 30],
        ...text(callSign, 7),
        ...text(name, 20),
        [type, 8],
        size,
        // Fixing device 4, arrival 20, draught 8, destination 120, terminal and spare.
        [0, 12],
        [0, 20],
        ...text('', 20),
        [2, 2],
      ];
    case 9:
      return [
        [report.altitude === undefined ? 4095 : Math.min(4094, Math.max(0, Math.round(report.altitude))), 12],
        [report.speed === undefined ? NO_SPEED : Math.min(1022, Math.round(report.speed)), 10],
        ...place(report),
        course(report),
        second(report),
        [0, 34],
      ];
    case 18:
      return [[0, 8], ...motion(report), [0, 29]];
    case 19:
      // Its last eleven: fixing device 4, RAIM, terminal not available, mode, spare 4.
      return [[0, 8], ...motion(report), [0, 4], ...text(name, 20), [type, 8], size, [0b00000100000, 11]];
    case 21: {
      // A name extension has as many characters as are needed.
      const more = name.slice(20, 34);
      return [
        [type, 5],
        ...text(name, 20),
        ...place(report),
        size,
        [0, 4],
        second(report),
        [report.offPosition === true ? 1 : 0, 1],
        [0, 9],
        [report.virtual === true ? 1 : 0, 1],
        [0, 2],
        ...text(more, more.length),
      ];
    }
    case 24:
      return callSign === '' && report.type === undefined
        ? [[0, 2], ...text(name, 20)]
        : [[1, 2], [type, 8], ...text('', 7), ...text(callSign, 7), size, [0, 6]];
    default:
      throw new RangeError(`message: expected 1 to 5, 9, 11, 18, 19, 21 or 24, got ${report.message}`);
  }
}

/** Speed, accuracy, position, course, heading and second, in this order in messages 1 to 3, 18 and 19. */
function motion(report: AisReport): Field[] {
  const { speed, heading } = report;
  return [
    [speed === undefined ? NO_SPEED : Math.min(1022, Math.round(speed * 10)), 10],
    ...place(report),
    course(report),
    [heading === undefined ? NO_HEADING : Math.round(heading) % 360, 9],
    second(report),
  ];
}

function place({ position, accurate }: AisReport): Field[] {
  if (position !== undefined) requireCoordinates(position);
  const { longitude = NO_LONGITUDE, latitude = NO_LATITUDE } = position ?? {};
  return [
    [accurate === true ? 1 : 0, 1],
    [twosComplement(Math.round(longitude * 600_000), 28), 28],
    [twosComplement(Math.round(latitude * 600_000), 27), 27],
  ];
}

function course({ course: degrees }: AisReport): Field {
  return [degrees === undefined ? NO_COURSE : Math.round(degrees * 10) % 3600, 12];
}

function second({ second: value = NO_SECOND }: AisReport): Field {
  return [value, 6];
}

function instant(at: number | undefined): Field[] {
  if (at === undefined) {
    return [
      [0, 23],
      [24, 5],
      [60, 6],
      [60, 6],
    ];
  }
  const date = new Date(at);
  return [
    [date.getUTCFullYear(), 14],
    [date.getUTCMonth() + 1, 4],
    [date.getUTCDate(), 5],
    [date.getUTCHours(), 5],
    [date.getUTCMinutes(), 6],
    [date.getUTCSeconds(), 6],
  ];
}

/** Six-bit text, filled with `@`; what has no six-bit character becomes a space. */
function text(value: string, characters: number): Field[] {
  return Array.from({ length: characters }, (_, index): Field => {
    const code = value.toUpperCase().charCodeAt(index);
    if (Number.isNaN(code)) return [0, 6];
    return [code >= 32 && code < 96 ? code % 64 : 32, 6];
  });
}

function twosComplement(value: number, bits: number): number {
  return value < 0 ? value + 2 ** bits : value;
}

/** Six bits a character (IEC 61162-1), and how many bits were added to the whole bytes of the message. */
function armour(fields: readonly Field[]): { armoured: string; fill: number } {
  const bits = fields.map(bitsOf).join('');
  const length = Math.ceil(bits.length / 8) * 8;
  let armoured = '';
  for (let bit = 0; bit < length; bit += 6) {
    const value = Number.parseInt(bits.slice(bit, bit + 6).padEnd(6, '0'), 2);
    armoured += String.fromCharCode(value + (value < 40 ? 48 : 56));
  }
  return { armoured, fill: armoured.length * 6 - length };
}

function bitsOf([value, count]: Field): string {
  const bits = value.toString(2).padStart(count, '0');
  if (bits.length > count || /[^01]/.test(bits))
    throw new RangeError(`report: expected a whole number of ${count} bits, got ${value}`);
  return bits;
}
