import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import table from '../../shared/identity/administrations.json' with { type: 'json' };
import vectors from '../../shared/identity/atis.json' with { type: 'json' };
import { atisMembers } from '../../src/identity/atis.ts';
import { decodeAtisCode, encodeAtisCode, parseIdentity } from '../../src/identity/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { hostile } from './arbitrary.ts';

// Sources stand beside each vector of the file.
describe('ATIS codes', () => {
  it.each(vectors.encoded)('$code is made of $from ($source)', ({ from, code }) => {
    expect(encodeAtisCode(from as Parameters<typeof encodeAtisCode>[0])).toBe(code);
  });

  it.each(vectors.read)('$code: $reason', ({ code, readings }) => {
    expect(decodeAtisCode(code)).toEqual({ ok: true, value: readings, notices: [] });
    expect(decodeAtisCode(`${code.slice(0, 4)} ${code.slice(4)}`)).toMatchObject({ ok: true });
  });

  it.each(vectors.refused)('$code is refused: $reason', ({ code }) => {
    expect(decodeAtisCode(code)).toMatchObject({ ok: false, issues: [{ code: 'identity-atis-shape' }] });
  });

  it('of another call sign or identity is refused: no rule for it was seen', () => {
    for (const callSign of ['DAB234', 'DA234', 'da2345', '2ZZM8', 'XDA2345', 'DA23456', ''])
      expect(() => encodeAtisCode({ mid: '211', callSign }), callSign).toThrow(
        `expected a call sign of two letters and four digits, got '${callSign}'`,
      );
    for (const mmsi of ['002329990', '023299905', '823299904', '97200123', ''])
      expect(() => encodeAtisCode({ mmsi }), mmsi).toThrow(`expected the identity of a ship, got '${mmsi}'`);
    for (const mid of ['111', '21', '1211', '2111', ''])
      expect(() => encodeAtisCode({ mid, callSign: 'DA2345' }), mid).toThrow(
        `expected a MID of three digits, got '${mid}'`,
      );
    const untyped = { mid: 211, callSign: ['DA2345'] } as unknown as { mid: string; callSign: string };
    expect(() => encodeAtisCode(untyped)).toThrow('MID');
    expect(() => encodeAtisCode({ ...untyped, mid: '211' })).toThrow('call sign');
  });

  it('of a call sign of another country is refused, because the code would read as another', () => {
    expect(() => encodeAtisCode({ mid: '211', callSign: 'PA2345' })).toThrow('starts with D for MID 211');
  });

  it('comes back among its readings, whatever it was made of', () => {
    const letter = fc.integer({ min: 65, max: 90 }).map((point) => String.fromCharCode(point));
    const digits = (length: number) => fc.stringMatching(new RegExp(`^\\d{${length}}$`));
    const mid = fc.constantFrom(...table.entries.map((entry) => entry.mid));
    fc.assert(
      fc.property(mid, letter, digits(4), ($mid, second, four) => {
        const read = valueOf(decodeAtisCode(encodeAtisCode({ mid: '269', callSign: `H${second}${four}` })));
        expect(read).toContainEqual(expect.objectContaining({ callSign: `H${second}${four}` }));
        const ship = `${$mid}${four}${four.slice(2)}`;
        const mmsi = valueOf(decodeAtisCode(encodeAtisCode({ mmsi: ship })));
        expect(mmsi).toContainEqual({ kind: 'atis-mmsi', mid: $mid, mmsi: ship });
      }),
    );
  });

  it('nothing makes it throw', () => {
    for (const input of hostile) expect(decodeAtisCode(input)).toMatchObject({ ok: false });
    for (const [input, received] of [
      [5, 'number'],
      ['12', "'12'"],
      ['09211012345', "'09211012345'"],
      [`9211012345${' '.repeat(31)}`, expect.stringContaining("'9211012345")],
    ])
      expect(decodeAtisCode(input)).toMatchObject({
        issues: [
          { received, clause: 'Regional arrangement on the inland waterway radiotelephone service, Annex 1' },
        ],
      });
    expect(decodeAtisCode(`9211012345${' '.repeat(30)}`).ok).toBe(true);
    fc.assert(fc.property(fc.anything(), (input) => void decodeAtisCode(input)));
  });

  it('members are countries of the table of administrations, with their MIDs', () => {
    for (const { iso3166, mids } of atisMembers.countries) {
      const listed = table.entries
        .filter((entry) => entry.iso3166 === iso3166 && entry.area === null)
        .map((entry) => entry.mid);
      expect([iso3166, mids]).toEqual([iso3166, listed]);
    }
    // Lists of a yachting association (17) and a page of 2022 (16: without ME and RO, with UA).
    const ofOne = atisMembers.countries.filter(({ listed }) => listed === 'one');
    expect(ofOne.map(({ iso3166 }) => iso3166)).toEqual(['ME', 'RO', 'UA']);
    expect(atisMembers.countries).toHaveLength(18);
  });

  it('in a field for an identity suggests no ship first (DA2345, not 211012345)', () => {
    const result = parseIdentity('9211012345');
    if (result.ok) throw new Error('an identity');
    expect(result.issues[0].code).toBe('identity-atis-call-sign');
    expect(result.issues[0]).not.toHaveProperty('suggestion');
    expect(result.issues[1]).toMatchObject({ code: 'identity-atis', suggestion: '211012345' });
    // 01 to 26 are letters, and other digits none.
    for (const [letter, codes] of [
      ['00', ['identity-atis']],
      ['26', ['identity-atis-call-sign', 'identity-atis']],
      ['27', ['identity-atis']],
    ] as const) {
      const other = parseIdentity(`9211${letter}2345`);
      expect(!other.ok && other.issues.map(({ code }) => code)).toEqual(codes);
    }
  });
});
