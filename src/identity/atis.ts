import { failure, type Result, success } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import { classify } from './classify.ts';
import type { Mmsi } from './identity.ts';
import { issue } from './texts.ts';

/**
 * Countries of the regional arrangement on the inland waterway service: ISO 3166-1 code, then each MID after the
 * first letter of its call signs, or after a hyphen where no source for the letter was seen.
 *
 * Members: two public lists of about 2022, see `atisMembers`. Letters: Dutch and German licensing guidance.
 */
const ATIS_MEMBERS =
  'AT-203 BEO205 BG-207 CHH269 CZ-270 DED211D218 FR-226F227-228 HR-238 HU-243 LUL253 MD-214 NLP244-245-246 PL-261 RS-279 SK-267 ME-262 RO-264 UA-272';

/**
 * Countries of the arrangement, with the date of the lists: a country that is missing may have joined since.
 *
 * Two public lists, a yachting association's and a page of 2022; Montenegro and Romania are on the first alone,
 * Ukraine is on the second alone. The arrangement itself was not seen.
 *
 * @example
 * ```ts
 * import { atisMembers } from 'seahail/identity';
 *
 * console.log(atisMembers.asOf, atisMembers.countries.length); // 2022 18
 * ```
 */
export const atisMembers: {
  readonly asOf: string;
  readonly countries: readonly {
    /** ISO 3166-1 alpha-2 code. */
    readonly iso3166: string;
    /** Maritime identification digits of the country. */
    readonly mids: readonly string[];
    /** Whether both lists seen name the country, or one of them alone. */
    readonly listed: 'both' | 'one';
  }[];
} = /* @__PURE__ */ listMembers();

type AtisMember = (typeof atisMembers)['countries'][number];

function listMembers(): { asOf: string; countries: AtisMember[] } {
  const countries = ATIS_MEMBERS.split(' ').map((entry): AtisMember => {
    const iso3166 = entry.slice(0, 2);
    const listed = /ME|RO|UA/.test(iso3166) ? 'one' : 'both';
    return { iso3166, mids: entry.match(/\d{3}/g) ?? [], listed };
  });
  return { asOf: '2022', countries };
}

/**
 * One reading of an ATIS code: as made of a call sign of two letters and four digits, or as 9 and the identity of a
 * ship.
 */
export type AtisReading =
  | {
      readonly kind: 'atis-call-sign';
      readonly mid: string;
      /** The call sign; `null` where the first letter of the country's call signs is not known here. */
      readonly callSign: string | null;
      /** Second letter and four digits: all that the code carries of the call sign. */
      readonly afterFirstLetter: string;
    }
  | {
      readonly kind: 'atis-mmsi';
      readonly mid: string;
      readonly mmsi: Mmsi;
    };

type AtisMmsi = Extract<AtisReading, { readonly kind: 'atis-mmsi' }>;

/**
 * The ten digits of an ATIS code (automatic transmitter identification, inland VHF): of a call sign of two letters
 * and four digits with its MID, or of a ship's identity from a country outside the arrangement.
 *
 * This is arithmetic, not an assignment. The code to program is the one the administration issued; a false or
 * misleading identification is an offence.
 *
 * @param from - `mid` (three digits) and `callSign`, or `mmsi` of a ship
 * @returns ten digits, the first a 9
 * @throws RangeError for any other form of call sign or identity, for which no rule was seen, and for a call sign
 * whose first letter is not that of the country, because the code does not carry the letter
 *
 * Source: Dutch and German licensing guidance on the regional arrangement (Annex 1), restated; PTS (Sweden) and
 * Ofcom (United Kingdom) for the form made of an identity.
 *
 * @see {@link decodeAtisCode}
 *
 * @example
 * ```ts
 * import { encodeAtisCode } from 'seahail/identity';
 *
 * console.log(encodeAtisCode({ mid: '211', callSign: 'DA2345' })); // 9211012345
 * console.log(encodeAtisCode({ mmsi: '265123456' })); // 9265123456
 * ```
 */
export function encodeAtisCode(
  from: { readonly mid: string; readonly callSign: string } | { readonly mmsi: string },
): string {
  want('encodeAtisCode', 'a call sign with its MID or the identity of a ship', from);
  if ('mmsi' in from) {
    if (classify(from.mmsi)?.kind === 'ship') return `9${from.mmsi}`;
    throw new RangeError(`encodeAtisCode: expected the identity of a ship, got ${quote(String(from.mmsi))}`);
  }
  const { mid, callSign } = from;
  if (typeof mid !== 'string' || !/^[2-7]\d\d$/.test(mid))
    throw new RangeError(`encodeAtisCode: expected a MID of three digits, got ${quote(String(mid))}`);
  const [, first, second = '', digits] =
    (typeof callSign === 'string' && /^([A-Z])([A-Z])(\d{4})$/.exec(callSign)) || [];
  if (first === undefined) {
    throw new RangeError(
      `encodeAtisCode: expected a call sign of two letters and four digits, got ${quote(String(callSign))}`,
    );
  }
  const letter = firstLetterOf(mid) ?? first;
  if (letter !== first)
    throw new RangeError(
      `encodeAtisCode: expected a call sign that starts with ${letter} for MID ${mid}, got ${first}`,
    );
  return `9${mid}${String(second.charCodeAt(0) - 64).padStart(2, '0')}${digits}`;
}

/**
 * Read the ten digits of an ATIS code.
 *
 * The digits do not say whether they were made of a call sign or of a ship's identity. Where both are possible, both
 * readings are given: the call sign first when the MID is of a country of the arrangement, else the identity first.
 * Ask a person, or a register, before either is used.
 *
 * @param code - ten digits, the first a 9; spaces are ignored
 * @returns one reading or two, the likelier first; an issue for anything else
 *
 * Source: as for {@link encodeAtisCode}; that both readings are possible follows from the two forms.
 *
 * @see {@link atisMembers}
 *
 * @example
 * ```ts
 * import { decodeAtisCode } from 'seahail/identity';
 *
 * const code = decodeAtisCode('9211012345');
 * if (code.ok) for (const reading of code.value) console.log(reading.kind === 'atis-mmsi' ? reading.mmsi : reading.callSign);
 * // DA2345
 * // 211012345
 * ```
 */
export function decodeAtisCode(code: unknown): Result<readonly [AtisReading, ...AtisReading[]]> {
  const digits = typeof code === 'string' && code.length <= 40 ? code.replace(/\s/g, '') : '';
  const [likelier, ...others] = atisReadings(digits);
  if (likelier !== undefined) return success([likelier, ...others]);
  const received = typeof code === 'string' ? quote(code) : typeof code;
  const clause = 'Regional arrangement on the inland waterway radiotelephone service, Annex 1';
  return failure(issue('identity-atis-shape', {}, { received, clause }));
}

/** What ten digits may be as an ATIS code, the likelier first; nothing where they are none. */
function atisReadings(digits: string): readonly AtisReading[] {
  const [, mmsi = '', mid = '', place = 0, four] = /^9(([2-7]\d\d)(\d\d)(\d{4}))$/.exec(digits) ?? [];
  if (mid === '') return [];
  const identity: AtisMmsi = { kind: 'atis-mmsi', mid, mmsi: mmsi as Mmsi };
  const letter = ' ABCDEFGHIJKLMNOPQRSTUVWXYZ'[+place]?.trim();
  if (!letter) return [identity];
  const first = firstLetterOf(mid);
  const afterFirstLetter = `${letter}${four}`;
  const callSign = first ? `${first}${afterFirstLetter}` : null;
  const sign: Extract<AtisReading, { readonly kind: 'atis-call-sign' }> = {
    kind: 'atis-call-sign',
    mid,
    callSign,
    afterFirstLetter,
  };
  return ATIS_MEMBERS.includes(mid) ? [sign, identity] : [identity, sign];
}

/** First letter of the call signs of a MID, where a source was seen. */
function firstLetterOf(mid: string): string | undefined {
  return /[A-Z]/.exec(ATIS_MEMBERS[ATIS_MEMBERS.indexOf(mid) - 1] ?? '')?.[0];
}
