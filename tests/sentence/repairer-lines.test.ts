import { describe, expect, it } from 'vitest';
import { createSentenceRepairer, type RepairableFault } from '../../src/sentence/index.ts';
import type { Change } from '../../src/sentence/repair/repairer.ts';
import { checksumByBits } from '../oracle/sentence.ts';
import { line } from './arbitrary.ts';

// Stations and places are invented; rules of the sentences: IEC 61162-1, as publicly restated.
function repair(
  text: string,
  options: NonNullable<Parameters<typeof createSentenceRepairer>[0]>,
): { output: string; changes: Change[] } {
  const repairer = createSentenceRepairer(options);
  const [piece, rest] = [repairer.push(text), repairer.flush()];
  return { output: piece.output + rest.output, changes: [...piece.changes, ...rest.changes] };
}
const repaired = (text: string, ...faults: readonly RepairableFault[]): string =>
  repair(text, { repair: faults }).output;
const call = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E';
const expansion = 'CDDSE,1,1,A,2329991420,00,33001200';
const other = line('GPGLL,,,,,,V,N');

describe('a line', () => {
  it('with several faults is repaired at once, and the change says which', () => {
    const text = `\\s:A*${checksumByBits('s:A')}\\${line('CVDSC,20,232999142,08,21,26,1562000630,1404, ,,B')}`;
    const all: RepairableFault[] = [
      'talker',
      'identity-nine-digits',
      'fields-missing',
      'blank-sent',
      'tag-block',
    ];
    const after = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,');
    expect(repair(text, { repair: all })).toEqual({
      output: after,
      changes: [
        {
          kind: 'replaced',
          line: 1,
          faults: ['tag-block', 'blank-sent', 'identity-nine-digits', 'fields-missing', 'talker'],
          before: text.trim(),
          after: after.trim(),
        },
      ],
    });
  });

  it.each([
    ['talker', line(call.replace('CD', 'CV')), line(call)],
    ['talker', line(expansion.replace('CD', 'CV')), line(expansion)],
    ['identity-nine-digits', line(call.replace('1420', '142')), line(call)],
    ['identity-nine-digits', line(expansion.replace('1420', '142')), line(expansion)],
    [
      'identity-nine-digits',
      line('CDDSC,16,0023299900,12,12,00,,,232999218,05,S,'),
      line('CDDSC,16,0023299900,12,12,00,,,2329992180,05,S,'),
    ],
    ['fields-missing', line(call.slice(0, -2)), line(call.slice(0, -1))],
    ['fields-missing', line('CDDSC,20,2329991420,00,00,26,,,'), line('CDDSC,20,2329991420,00,00,26,,,,,,')],
    ['blank-sent', line(call.replace('B,E', 'B, E')), line(call)],
    ['blank-damage', line(call).replace('1562', '15 62'), line(call)],
    ['checksum-lower-case', line(call).replace('7C', '7c'), line(call)],
    ['tag-block', `\\s:A*${checksumByBits('s:A')}\\${line(call)}`, line(call)],
  ] as const)('has its %s repaired, and no other fault', (fault, before, after) => {
    expect(repaired(before, fault)).toBe(after);
    const others: RepairableFault[] = [
      'tag-block',
      'blank-damage',
      'blank-sent',
      'checksum-lower-case',
      'fields-missing',
      'talker',
      'identity-nine-digits',
    ];
    expect(repaired(before, ...others.filter((id) => id !== fault))).toBe(before);
  });

  it.each([
    ['talker', line('GPGLL,5620.0,N,00630.0,W,140412.00,A,A')],
    ['talker', line('PCVDSC,1')],
    ['talker', line('CVDSQ,1')],
    ['identity-nine-digits', line('CDDSC,20,23299914,08,21,26,,,,,R,')],
    ['identity-nine-digits', line('CDDSC,20,2329991420,08,21,26,232999142,,,,R,')],
    ['identity-nine-digits', line('CDDSE,1,1,A,2329991420,04,232999142')],
    ['identity-nine-digits', line('CDWPL,5620.0,N,00630.0,W,232999142')],
    ['fields-missing', line('CDDSC,2329991420,20,00,,00,26,R')],
    ['fields-missing', line(expansion)],
    ['fields-missing', line(`${call},`)],
    ['fields-missing', line(call)],
    ['fields-missing', line('GPGLL,,,,,,V,N,')],
    ['fields-missing', line('CDDSE,1,1,A,2329991420,00,33001200,01,020000')],
    // Proprietary sentences of a maker whose code begins so.
    ['talker', line('PDSC,20,2329991420,08')],
    ['identity-nine-digits', line('PDSC,20,232999142,08')],
    ['identity-nine-digits', line('PDSE,1,1,A,232999142')],
    ['fields-missing', line('PDSC,20,2329991420,00,00,26,,,')],
    // Nobody knows whether it is whole.
    ['talker', `$${call.replace('CD', 'CV')}\r\n`],
  ] as const)('without the fault %s stays: %s', (fault, text) => {
    expect(repair(text, { repair: [fault] })).toEqual({ output: text, changes: [] });
  });

  it('that came without a TAG block is not said to have lost one', () => {
    const { changes } = repair(line(call.replace('CD', 'CV')), { repair: ['talker', 'tag-block'] });
    expect(changes.map(({ faults }) => faults)).toEqual([['talker']]);
  });

  it('of two sentences has each repaired, and what stands between stays', () => {
    const one = line(call.replace('CD', 'CV')).trim();
    expect(repaired(`x${one}y${one}z\n`, 'talker')).toBe(`x${line(call).trim()}y${line(call).trim()}z\n`);
  });

  it('that is damaged passes, and the sound one behind it is repaired', () => {
    expect(repaired(`$CVDSC,20*00${line(call.replace('CD', 'CV'))}`, 'talker')).toBe(
      `$CVDSC,20*00${line(call)}`,
    );
  });

  it('damaged by blanks passes unless that is to be repaired', () => {
    const text = line(call.replace('CD', 'CV')).replace('1562', '15 62');
    expect(repaired(text, 'talker')).toBe(text);
    expect(repaired(text, 'talker', 'blank-damage')).toBe(line(call));
  });

  it('keeps the blank that was sent when only something else is repaired', () => {
    expect(repaired(line(call.replace('CD', 'CV').replace('B,E', 'B, E')), 'talker')).toBe(
      line(call.replace('B,E', 'B, E')),
    );
  });

  it.each(['\r\n', '\n', '\r', '\n\r'])('keeps its end %j', (end) => {
    const [before, after] = [line(call.replace('CD', 'CV')).trim(), line(call).trim()];
    expect(repaired(`${before}${end}${before}${end}${end}`, 'talker')).toBe(
      `${after}${end}${after}${end}${end}`,
    );
    expect(createSentenceRepairer({ repair: ['talker'] }).push(`${before}${end}x`).output).toBe(
      `${after}${end}`,
    );
  });

  it('is numbered in its change', () => {
    const { changes } = repair(`\r\n${other}${line(call.replace('CD', 'CV'))}`, { repair: ['talker'] });
    expect(changes.map((change) => change.line)).toEqual([3]);
    const after = repair(`\n\n\r\r${line(call.replace('CD', 'CV'))}`, { repair: ['talker'] });
    expect(after.changes.map((change) => change.line)).toEqual([5]);
  });

  it('keeps its number when the stream was ended before it, with nothing there', () => {
    const repairer = createSentenceRepairer({ repair: ['talker'] });
    repairer.flush();
    const { changes } = repairer.push(line(call.replace('CD', 'CV')));
    expect(changes.map((change) => change.line)).toEqual([1]);
  });

  it('without its end is repaired when the stream ends', () => {
    const repairer = createSentenceRepairer({ repair: ['talker'] });
    expect(repairer.push(line(call.replace('CD', 'CV')).trim())).toEqual({ output: '', changes: [] });
    expect(repairer.flush().output).toBe(line(call).trim());
    expect(repairer.flush()).toEqual({ output: '', changes: [] });
    repairer.push(`${line(call.replace('CD', 'CV')).trim()}\r`);
    expect(repairer.flush().output).toBe(`${line(call).trim()}\r`);
  });

  it('longer than 1024 characters passes as it is, and the next one is repaired', () => {
    const sound = line(call.replace('CD', 'CV'));
    const long = (length: number): string => sound.trim() + 'x'.repeat(length - sound.trim().length);
    expect(repaired(`${long(1024)}\r\n`, 'talker')).toBe(`${line(call).trim()}${long(1024).slice(54)}\r\n`);
    expect(repaired(`${long(1025)}\r\n`, 'talker')).toBe(`${long(1025)}\r\n`);
    expect(repaired(`${long(5000)}\r\n${sound}`, 'talker')).toBe(`${long(5000)}\r\n${line(call)}`);
    for (const [part, rest] of [
      [long(1024), '\r\n'],
      [`${long(1024)}\r`, '\n'],
    ] as const) {
      const awaiting = createSentenceRepairer({ repair: ['talker'] });
      expect(awaiting.push(part).output).toBe('');
      expect(awaiting.push(rest).output).toBe(`${line(call).trim()}${long(1024).slice(54)}\r\n`);
    }
    const repairer = createSentenceRepairer({ repair: ['talker'] });
    expect(repairer.push(long(5000)).output).toBe(long(5000));
    expect(repairer.push(`${sound}${sound}`).output).toBe(`${sound}${line(call)}`);
  });

  it('of bytes is repaired like text, however many come', () => {
    const text = line(call.replace('CD', 'CV')).repeat(200);
    expect(createSentenceRepairer({ repair: ['talker'] }).push(new TextEncoder().encode(text)).output).toBe(
      line(call).repeat(200),
    );
  });
});

describe('an expansion that is late', () => {
  const late: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = { repair: ['expansion-late'] };

  it('goes before what came between', () => {
    const text = [line(call), other, '\r\n', 'noise\r\n', line(expansion), other];
    const { output, changes } = repair(text.join(''), late);
    expect(output).toBe([line(call), line(expansion), other, '\r\n', 'noise\r\n', other].join(''));
    expect(changes).toEqual([
      {
        kind: 'moved',
        line: 5,
        faults: ['expansion-late'],
        before: line(expansion).trim(),
        after: line(expansion).trim(),
      },
    ]);
  });

  it('goes before empty lines, which are counted as others are', () => {
    const held = (count: number): string =>
      repaired(`${line(call)}${'\n'.repeat(count)}${line(expansion)}`, 'expansion-late');
    expect(held(8)).toBe(`${line(call)}${line(expansion)}${'\n'.repeat(8)}`);
    expect(held(9)).toBe(`${line(call)}${'\n'.repeat(9)}${line(expansion)}`);
  });

  it.each([
    ['of its own, that goes on without flag and station', 'CDDSE,2,2,,,02,0125', true],
    ['that begins without a station', 'CDDSE,1,1,A,,00,33001200', false],
    ['of another station, that is not the first', 'CDDSE,2,2,A,2329995630,02,0125', false],
    ['of a maker', 'PDSE,1,1,A,2329991420,00,33001200', false],
    ['in another sentence with its station in the fourth field', 'CDXYZ,1,1,A,2329991420', false],
  ])('%s, is moved or not', (_, body, isMoved) => {
    const { output, changes } = repair(line(call) + other + line(body), late);
    expect(changes).toHaveLength(isMoved ? 1 : 0);
    expect(output).toBe(line(call) + (isMoved ? line(body) + other : other + line(body)));
  });

  it('is awaited beyond the sentence of a maker, and beyond two on one line', () => {
    const maker = line(call.replace('CDDSC', 'PDSC'));
    const two = `${line(call).trim()}${line(call)}`;
    for (const between of [maker, two]) {
      expect(repaired(line(call) + between + line(expansion), 'expansion-late')).toBe(
        line(call) + line(expansion) + between,
      );
    }
    const both = `${line(expansion).trim()}${line(expansion)}`;
    expect(repaired(line(call) + other + both, 'expansion-late')).toBe(line(call) + other + both);
  });

  it('that is not late moves nothing', () => {
    const text = line(call) + line(expansion) + other;
    expect(repair(text, late)).toEqual({ output: text, changes: [] });
  });

  it('of two sentences is awaited to its last', () => {
    const [one, two] = [1, 2].map((number) => line(`CDDSE,2,${number},A,2329991420,02,0125`)) as [
      string,
      string,
    ];
    expect(repaired(line(call) + other + one + other + two, 'expansion-late')).toBe(
      line(call) + one + two + other + other,
    );
    const repairer = createSentenceRepairer(late);
    expect(repairer.push(line(call) + one + other).output).toBe(line(call) + one);
    expect(repairer.push(two).output).toBe(two + other);
    expect(repairer.push(other).output).toBe(other);
  });

  it('is not awaited when it was not announced, nor one of another station', () => {
    expect(createSentenceRepairer(late).push(line(call.slice(0, -1)) + other).output).toBe(
      line(call.slice(0, -1)) + other,
    );
    const stranger = line(expansion.replace('142', '563'));
    expect(repaired(line(call) + other + stranger + line(expansion), 'expansion-late')).toBe(
      line(call) + line(expansion) + other + stranger,
    );
    expect(createSentenceRepairer(late).push(line(expansion) + other).output).toBe(line(expansion) + other);
  });

  it('is awaited for eight lines unless told otherwise', () => {
    const isMoved = (
      lines: number,
      options: NonNullable<Parameters<typeof createSentenceRepairer>[0]>,
    ): boolean => repair(line(call) + other.repeat(lines) + line(expansion), options).changes.length === 1;
    expect([8, 9].map((lines) => isMoved(lines, late))).toEqual([true, false]);
    expect([2, 3].map((lines) => isMoved(lines, { ...late, mostHeld: 2 }))).toEqual([true, false]);
    expect([0, 1].map((lines) => isMoved(lines, { ...late, mostHeld: 0 }))).toEqual([false, false]);
  });

  it('is not awaited beyond another call, a line too long, or the end', () => {
    const alert = line('CDDSC,12,2329992180,,05,00,1561800627,1404,,,S,');
    const repairer = createSentenceRepairer(late);
    expect(repairer.push(line(call) + other + alert).output).toBe(line(call) + other + alert);
    expect(repairer.push(line(call) + other).output).toBe(line(call));
    expect(repairer.push(`${'x'.repeat(2000)}\r\n`).output).toBe(`${other}${'x'.repeat(2000)}\r\n`);
    expect(repairer.push(line(call) + other).output).toBe(line(call));
    expect(repairer.push('x'.repeat(2000)).output).toBe(other + 'x'.repeat(2000));
    expect(repairer.push(`\r\n${line(call)}${other}`).output).toBe(`\r\n${line(call)}`);
    expect(repairer.flush().output).toBe(other);
  });

  it('is only looked for when asked for', () => {
    expect(createSentenceRepairer({}).push(line(call) + other).output).toBe(line(call) + other);
  });
});

describe('a report written as what a display knows', () => {
  const inserted = (
    text: string,
    options: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = { reportAs: ['waypoint', 'target'] },
  ): Change[] => repair(text, options).changes;

  it('is told whole', () => {
    const waypoint = line('CDWPL,5620.3300,N,00630.1200,W,232999142').trim();
    expect(repair(line(call) + line(expansion), { reportAs: ['waypoint'] })).toEqual({
      output: `${line(call)}${line(expansion)}${waypoint}\r\n`,
      changes: [{ kind: 'inserted', line: 2, faults: [], before: null, after: waypoint }],
    });
  });

  it('without decimals lies in the middle of where it may be, and without a time has none', () => {
    expect(
      inserted(line('CDDSC,20,2329991420,08,21,26,1562000630,8888,,,B,')).map(({ after }) => after),
    ).toEqual([
      line('CDWPL,5620.5000,N,00630.5000,W,232999142').trim(),
      line('CDTLL,00,5620.5000,N,00630.5000,W,232999142,,T,').trim(),
    ]);
  });

  it('has its time to the minute', () => {
    expect(
      inserted(line(call) + line(expansion), { reportAs: ['target'] }).map(({ after }) => after),
    ).toEqual([line('CDTLL,00,5620.3300,N,00630.1200,W,232999142,140400.00,T,').trim()]);
  });

  it.each([
    ['a call', line('CDDSC,20,2329991420,00,00,26,900072,,,,R,')],
    ['an answer without a position', line('CDDSC,20,2329991420,08,21,26,,,,,B,')],
    ['an answer of nobody', line('CDDSC,20,,08,21,26,1562000630,1404,,,B,')],
    ['an answer whose decimals are awaited', line(call)],
  ])('is not made of %s', (_, text) => {
    expect(createSentenceRepairer({ reportAs: ['waypoint'] }).push(text).changes).toEqual([]);
  });

  it('is made once of what is sent again', () => {
    const pair = line(call) + line(expansion);
    expect(inserted(pair + pair)).toHaveLength(2);
  });

  it('takes the number of the station that has had hers longest when a hundred have one', () => {
    const report = (station: number, time: string): string =>
      line(`CDDSC,20,${232_999_000 + station}0,08,21,26,1562000630,${time},,,B,`);
    const all = Array.from({ length: 102 }, (_, station) => report(station, '1404'));
    const again = [report(1, '1405'), report(101, '1405'), report(2, '1405')];
    const numbers = inserted([...all, ...again].join(''), { reportAs: ['target'] }).map(({ after }) =>
      Number(after.slice(7, 9)),
    );
    expect(numbers).toEqual([...Array.from({ length: 100 }, (_, number) => number), 0, 1, 2, 1, 3]);
  });

  it('gives a station the same number each time, another to another', () => {
    const report = (station: string, time: string): string =>
      line(`CDDSC,20,${station}0,08,21,26,1562000630,${time},,,B,`);
    const text = report('232999142', '1404') + report('232999563', '1404') + report('232999142', '1405');
    expect(inserted(text, { reportAs: ['target'] }).map(({ after }) => after.slice(7, 9))).toEqual([
      '00',
      '01',
      '00',
    ]);
  });
});

describe('a count of lines that is none', () => {
  it.each([-1, Number.NaN])('%d is refused', (mostHeld) => {
    expect(() => createSentenceRepairer({ mostHeld })).toThrow(
      new RangeError(`mostHeld: expected a count, got ${mostHeld}`),
    );
  });
});
