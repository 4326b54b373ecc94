import type { GnssFix } from '../../report/index.ts';
import { FIX_QUALITIES, type FixQuality, type UtcTime } from '../../report/internal.ts';
import type { Notice } from '../../result/index.ts';
import { readCoordinates } from '../field/coordinate-fields.ts';
import { textAt } from '../field/text-at.ts';
import { instantOf, readUtc } from '../field/utc-field.ts';
import { fieldNotice, type SentenceCode } from '../texts.ts';

export interface ReadFix {
  readonly fix: GnssFix;
  readonly notices: Notice[];
}

/**
 * Mode indicator of IEC 61162-1 for each quality (A, D, E, M, S, N seen in equipment papers; P, R, F from memory); a
 * quality that was not stated is written as autonomous.
 */
export const MODE_LETTERS: Readonly<Record<FixQuality, string>> = {
  unstated: 'A',
  none: 'N',
  autonomous: 'A',
  differential: 'D',
  precise: 'P',
  'real-time-kinematic': 'R',
  'float-real-time-kinematic': 'F',
  estimated: 'E',
  manual: 'M',
  simulated: 'S',
};
const MODES: ReadonlyMap<string, FixQuality> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ (Object.keys(MODE_LETTERS) as FixQuality[]).map((quality) => [
    MODE_LETTERS[quality],
    quality,
  ]),
);

/** What is said of a position of each quality. */
export const DOUBTS: { readonly [Quality in FixQuality]?: SentenceCode & `sentence-fix-${string}` } = {
  none: 'sentence-fix-not-valid',
  simulated: 'sentence-fix-simulated',
  manual: 'sentence-fix-manual',
  estimated: 'sentence-fix-estimated',
};

/** Reads `RMC`, `GLL`, `GGA` or `GNS`; `null` for any other formatter. */
export function readOwnFix(formatter: string, texts: readonly string[]): ReadFix | null {
  switch (formatter) {
    case 'RMC':
      return readRmc(texts);
    case 'GLL':
      return judge(
        'GLL',
        texts,
        0,
        readUtc(textAt(texts, 4)),
        statusQuality(textAt(texts, 5), textAt(texts, 6)),
      );
    case 'GGA':
      return judge('GGA', texts, 1, readUtc(textAt(texts, 0)), qualityOf(textAt(texts, 5)));
    case 'GNS':
      return judge('GNS', texts, 1, readUtc(textAt(texts, 0)), bestMode(textAt(texts, 5)));
    default:
      return null;
  }
}

function readRmc(texts: readonly string[]): ReadFix {
  const time = readUtc(textAt(texts, 0));
  const reading = judge('RMC', texts, 2, time, statusQuality(textAt(texts, 1), textAt(texts, 11)));
  const usable = reading.fix.position !== null;
  return {
    fix: {
      ...reading.fix,
      instant: time === null ? null : instantOfDate(textAt(texts, 8), time),
      speed: usable ? readNumber(textAt(texts, 6)) : null,
      course: usable ? readNumber(textAt(texts, 7)) : null,
    },
    notices: reading.notices,
  };
}

/** A position is used only when neither the receiver nor its fields speak against it. */
function judge(
  formatter: GnssFix['formatter'],
  texts: readonly string[],
  from: number,
  time: UtcTime | null,
  quality: FixQuality,
): ReadFix {
  const read = readCoordinates(texts, from);
  const usable = quality !== 'none' && quality !== 'simulated';
  const code = usable && read === null ? 'sentence-fix-unreadable' : DOUBTS[quality];
  const notices =
    code === undefined
      ? []
      : [fieldNotice(code, { formatter, field: from + 1 }, texts.slice(from, from + 4).join(','))];
  const position = usable ? read : null;
  return { fix: { formatter, position, quality, time, instant: null, speed: null, course: null }, notices };
}

function statusQuality(status: string, mode: string): FixQuality {
  if (status !== 'A') return mode === 'S' ? 'simulated' : 'none';
  return mode === '' ? 'unstated' : (MODES.get(mode) ?? 'none');
}

function qualityOf(digit: string): FixQuality {
  return (/^\d$/.test(digit) ? FIX_QUALITIES[Number(digit)] : undefined) ?? 'none';
}

/** `GNS` has one mode letter for each satellite system: the best of them holds. */
function bestMode(letters: string): FixQuality {
  const best = [...'RFPDAMES'].find((letter) => letters.includes(letter));
  return best === undefined ? 'none' : (MODES.get(best) as FixQuality);
}

/** `ddmmyy`: years 80–99 lie in the last century. deviation: D-sentence-6 */
function instantOfDate(text: string, time: UtcTime): number | null {
  if (!/^\d{6}$/.test(text)) return null;
  const year = Number(text.slice(4));
  return instantOf(
    year < 80 ? 2000 + year : 1900 + year,
    Number(text.slice(2, 4)),
    Number(text.slice(0, 2)),
    time,
  );
}

function readNumber(text: string): number | null {
  return text.length <= 16 && /^\d+(?:\.\d*)?$/.test(text) ? Number(text) : null;
}

/** The instant of a `ZDA` sentence, epoch milliseconds, or `null` when it has none. */
export function readClock(texts: readonly string[]): number | null {
  const time = readUtc(textAt(texts, 0));
  const date = /^(\d{2}),(\d{2}),(\d{4})$/.exec(texts.slice(1, 4).join());
  if (time === null || date === null) return null;
  return instantOf(Number(date[3]), Number(date[2]), Number(date[1]), time);
}
