import { describe, expect, it } from 'vitest';
import { PARAMETER_GROUPS } from '../../src/network/message/layout.ts';
import { decodePayload, encodePayload } from '../../src/network/message/payload.ts';
import { bytesOf, hexOf } from './support.ts';
import { constructed, recorded } from './vectors.ts';

const layoutOf = (pgn: number) => {
  const layout = PARAMETER_GROUPS.find((row) => row.pgn === pgn);
  if (layout === undefined) throw new Error(`no layout for PGN ${pgn}`);
  return layout;
};

// Source of widths and resolutions: public list of parameter groups of IEC 61162-3, Appendix B.1 version 1.300.
describe('messages packed apart from the library', () => {
  it.each(constructed.messages)('$id: PGN $pgn is read as packed', ({ pgn, payload, values }) => {
    const read = decodePayload(layoutOf(pgn), bytesOf(payload));
    expect(read.values).toMatchObject(values);
    expect(read.short).toBe(false);
  });

  it.each(constructed.messages)('$id: PGN $pgn is written byte for byte', ({ pgn, payload }) => {
    const layout = layoutOf(pgn);
    expect(hexOf(encodePayload(layout, decodePayload(layout, bytesOf(payload)).values))).toBe(payload);
  });
});

describe('recorded calls', () => {
  it.each(recorded.messages)('$id is written back as far as it goes', ({ pgn, payload }) => {
    const layout = layoutOf(pgn);
    const again = hexOf(encodePayload(layout, decodePayload(layout, bytesOf(payload)).values));
    expect(again.slice(0, payload.length)).toBe(payload);
  });
});

describe('every layout', () => {
  it.each(PARAMETER_GROUPS.map((layout) => [layout.pgn, layout] as const))(
    'of PGN %i has whole bytes',
    (_, { fields }) => {
      const bits = fields.reduce((sum, field) => sum + (field[1] === 'repeated' ? 0 : field[2]), 0);
      expect(bits % 8).toBe(0);
    },
  );

  it.each(PARAMETER_GROUPS.map((layout) => [layout.pgn, layout] as const))(
    'of PGN %i reads a payload cut anywhere, and one that goes on',
    (_, layout) => {
      const whole = encodePayload(layout, decodePayload(layout, new Uint8Array(120).fill(1)).values);
      for (let length = 0; length < whole.length; length++) {
        expect(() => decodePayload(layout, whole.subarray(0, length))).not.toThrow();
      }
      const { fields } = layout;
      const repeats = fields.some(([, kind]) => kind === 'repeated');
      const longer = Uint8Array.of(...whole, 1, 2, 3);
      if (!repeats) expect(decodePayload(layout, longer)).toEqual(decodePayload(layout, whole));
    },
  );
});
