import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import {
  createSentenceRepairer,
  findFaults,
  parseSentence,
  readSentences,
} from '../../src/sentence/index.ts';

// A sentence is bytes (IEC 61162-1: printable ASCII; ISO 8859-1 is let pass here). Text can hold more, and two
// equal code units cancel in the exclusive OR, so that a checksum could seem to hold.
const CANCELLING = '$CDDSC,20,\u2003,a\u2003b, x,,,,,,R,*74';

/** The exclusive OR alone, as two digits, whatever the characters. */
const naive = (body: string): string => {
  let sum = 0;
  for (let index = 0; index < body.length; index += 1) sum ^= body.charCodeAt(index);
  return (sum & 0xff).toString(16).toUpperCase().padStart(2, '0');
};

describe('characters above FF hex', () => {
  it('have no checksum, even where they cancel', () => {
    expect(() => checksumOf('\u0100\u0100')).toThrow(RangeError);
    expect(() => checksumOf('a\u0161b')).toThrow(RangeError);
    expect(checksumOf('\u00ff\u00ff')).toBe('00');
  });

  it.each([
    ['in a sound line', '$GPZDA,\u0141\u0141,,,,,*48'],
    ['in a line with more behind it', '$GPZDA,\u0141\u0141,,,,,*48 '],
    ['beside blanks', CANCELLING],
    ['where taking blanks out would make it right', '$GPZDA, \u0141\u0141,,,,,*48'],
  ])('make the checksum wrong: %s', (_, line) => {
    expect(parseSentence(line)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'sentence-checksum-impossible',
          received: `'${line.trim().slice(-3)}'`,
        },
      ],
    });
    expect(parseSentence(line)).not.toHaveProperty('issues.0.expected');
    expect(naive(line.slice(1, line.indexOf('*')).replace(/ $/, ''))).toMatch(/^[0-9A-F]{2}$/);
  });

  it('leave no checksum to state where one is missing or malformed, and FF hex is one', () => {
    const stated = (text: string): unknown => {
      const read = parseSentence(text);
      return !read.ok && read.issues.map(({ code, params }) => [code, params]);
    };
    expect(checksumOf('GPTXT,\u009c')).toBe('FF');
    expect(stated('$GPTXT,\u009c')).toEqual([['sentence-checksum-missing', { computed: 'FF' }]]);
    expect(stated('$GPTXT,\u009c*F')).toEqual([['sentence-checksum-malformed', { computed: 'FF' }]]);
    expect(stated('$GPTXT,\u009c*FE')).toEqual([['sentence-checksum-wrong', { computed: 'FF' }]]);
    expect(stated('$GPTXT,\u0141')).toEqual([['sentence-checksum-missing', {}]]);
    expect(stated('$GPTXT,\u0141*4')).toEqual([['sentence-checksum-malformed', {}]]);
  });

  it('make the checksum of a TAG block wrong', () => {
    const read = parseSentence(`\\s:\u0141\u0141*${naive('s:')}\\$GPZDA,,,,,,*48`);
    expect(read).toMatchObject({
      ok: true,
      value: { tag: null },
      notices: [{ code: 'sentence-tag-checksum' }],
    });
  });

  it('pass through a repairer and are found as a fault', () => {
    expect(
      createSentenceRepairer({ repair: ['blank-sent', 'blank-damage'] }).push(`${CANCELLING}\r\n`).output,
    ).toBe(`${CANCELLING}\r\n`);
    const [finding] = findFaults(`${CANCELLING}\r\n`).findings;
    expect([finding?.id, finding?.sightings[0]?.seen]).toMatchObject([
      'checksum-wrong',
      { code: 'sentence-seen-no-checksum', params: { line: CANCELLING, stated: "'*74'" } },
    ]);
  });

  it('are no constant difference', () => {
    const ids = (text: string): string[] => findFaults(text).findings.map(({ id }) => id);
    expect(ids(`${CANCELLING}\r\n`.repeat(3))).toEqual(['checksum-wrong']);
    expect(ids(`${CANCELLING}\r\n$GPZDA,,,,,,*49\r\n$GPZDA,,,,,,*49\r\n`)).toEqual(['checksum-wrong']);
    expect(ids('$GPZDA,,,,,,*49\r\n'.repeat(3))).toEqual(['checksum-wrong', 'rewritten-between']);
  });

  it('never make anything throw, whatever cancels', () => {
    const unit = fc.constantFrom('\u2003', '\u00a0', '\u3000', ' ', '\t', 'a', ',', '1', '\ud83d', '\u0100');
    const body = fc.array(unit, { maxLength: 12 }).map((units) => units.join(''));
    fc.assert(
      fc.property(fc.array(body, { minLength: 1, maxLength: 6 }), (bodies) => {
        const text = bodies.map((each) => `$CDDSC,20,${each}*${naive(`CDDSC,20,${each}`)}\r\n`).join('');
        readSentences(text);
        findFaults(text);
        const repairer = createSentenceRepairer({
          repair: ['blank-sent', 'blank-damage', 'fields-missing', 'talker'],
        });
        repairer.push(text);
        repairer.flush();
      }),
      { numRuns: 500 },
    );
  });
});

describe('blanks at the edge of a field', () => {
  it('are blanks and tabs only', () => {
    const body = 'CDDSC,20, \u00a01\u000b\t,x';
    const read = parseSentence(`$${body}*${checksumOf(body)}`);
    expect(read).toMatchObject({
      ok: true,
      value: { fields: ['20', '\u00a01\u000b', 'x'] },
      notices: [{ code: 'sentence-blank-sent', expected: "'\u00a01\\u{b}'" }],
    });
  });

  it('are taken off in one pass, however many there are', () => {
    const body = `GPTXT,${'a '.repeat(20)}${' '.repeat(50_000)}b, c${' '.repeat(50_000)}`;
    const read = parseSentence(`$${body}*${checksumOf(body)}`);
    expect(read.ok && read.value.fields[1]).toBe('c');
  });
});
