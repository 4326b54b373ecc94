import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createSentenceRepairer,
  findFaults,
  type RepairableFault,
  readSentences,
} from '../../src/sentence/index.ts';
import type { Change } from '../../src/sentence/repair/repairer.ts';
import { line } from './arbitrary.ts';
import { cleanLog } from './clean-log.ts';

const repairable: RepairableFault[] = [
  'tag-block',
  'blank-damage',
  'blank-sent',
  'checksum-lower-case',
  'fields-missing',
  'talker',
  'identity-nine-digits',
  'expansion-late',
];
const everything: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = { repair: repairable };
const folder = join(import.meta.dirname, '../../shared/sentence/faults');
const corpus = readdirSync(folder).flatMap((file) => {
  const { fault, logs } = JSON.parse(readFileSync(join(folder, file), 'utf8')) as {
    fault: string | null;
    logs: { title: string; lines?: string[]; options?: object; expected: string[] }[];
  };
  return logs.flatMap((log) =>
    log.lines === undefined ? [] : { ...log, fault, text: log.lines.map((text) => `${text}\r\n`).join('') },
  );
});

function repair(
  pieces: readonly (string | Uint8Array)[],
  options?: NonNullable<Parameters<typeof createSentenceRepairer>[0]>,
): { output: string; changes: Change[] } {
  const repairer = createSentenceRepairer(options);
  const parts = [...pieces.map((piece) => repairer.push(piece)), repairer.flush()];
  return {
    output: parts.map(({ output }) => output).join(''),
    changes: parts.flatMap(({ changes }) => changes),
  };
}

const stream = fc
  .array(
    fc.oneof(
      fc.constantFrom(...corpus.map(({ text }) => text)),
      fc.string({ maxLength: 60 }),
      fc.constantFrom('\r', '\n', '\r\n', '\n\r', '$', '\\', 'x'.repeat(1500)),
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(''));

function cut(text: string, places: readonly number[]): string[] {
  const sorted = [0, ...places.map((place) => Math.floor(place * text.length)), text.length].sort(
    (a, b) => a - b,
  );
  return sorted.slice(1).map((end, index) => text.slice(sorted[index], end));
}

describe('a repairer', () => {
  it('that is asked for nothing passes everything byte for byte', () => {
    fc.assert(
      fc.property(
        stream,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 }),
        (text, places) => {
          expect(repair(cut(text, places))).toEqual({ output: text, changes: [] });
        },
      ),
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => {
        expect(repair([bytes]).output).toBe(Buffer.from(bytes).toString('latin1'));
      }),
    );
  });

  it('that is asked for everything passes clean logs byte for byte', () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const { text } = cleanLog(seed);
      expect(repair([text], everything)).toEqual({ output: text, changes: [] });
    }
  });

  it('changes only the lines it says, and those as it says', () => {
    const options: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = {
      repair: repairable.filter((fault) => fault !== 'expansion-late'),
    };
    fc.assert(
      fc.property(stream, (text) => {
        const { output, changes } = repair([text], options);
        let rest = output;
        let before = text;
        for (const change of changes) {
          const at = before.indexOf(change.before as string);
          expect(rest.slice(0, at)).toBe(before.slice(0, at));
          expect(rest.startsWith(change.after, at)).toBe(true);
          rest = rest.slice(at + change.after.length);
          before = before.slice(at + (change.before as string).length);
        }
        expect(rest).toBe(before);
      }),
    );
  });

  it('gives the same wherever the chunks are cut', () => {
    fc.assert(
      fc.property(
        stream,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 }),
        (text, places) => {
          const options: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = {
            ...everything,
            reportAs: ['waypoint', 'target'],
          };
          expect(repair(cut(text, places), options)).toEqual(repair([text], options));
        },
      ),
    );
  });

  it.each([1024, 1025, 1026, 1100])(
    'gives the same when %d characters end in a lone CR and are cut there',
    (length) => {
      const call = line('CVDSC,20,2329991420,08,21,26,1562000630,1404,,,B,');
      for (const ending of ['\r', '\r\n', '\r\r', '\n']) {
        const text = `${'x'.repeat(length)}${ending}${call}${call}`;
        const whole = repair([text], { repair: ['talker'] });
        expect(whole.changes.map((change) => change.line)).toEqual(ending === '\r\r' ? [3, 4] : [2, 3]);
        for (let place = length - 2; place < length + 6; place += 1) {
          expect(repair(cut(text, [place / text.length]), { repair: ['talker'] })).toEqual(whole);
          expect(repair([text.slice(0, place), text.slice(place)], { repair: ['talker'] })).toEqual(whole);
          expect(repair([text.slice(0, place)], { repair: ['talker'] }).output).toBe(text.slice(0, place));
        }
      }
    },
  );

  it('loses no character when it moves lines', () => {
    fc.assert(
      fc.property(stream, (text) => {
        const { output } = repair([text], { repair: ['expansion-late'] });
        expect(output.split(/[\r\n]+/).sort()).toEqual(text.split(/[\r\n]+/).sort());
      }),
    );
  });

  it.each(
    corpus
      .filter(({ fault }) => repairable.some((id) => id === fault))
      .map((log) => [`${log.fault}: ${log.title}`, log] as const),
  )('repairs %s', (_, { fault, text, options, expected }) => {
    if (fault === null) throw new TypeError('a clean log has nothing to repair');
    // An expansion that comes thirty lines late is not waited for, and a block left open hides where it ends.
    const beyond = ['far too late', 'one of them left open'].some((title) => _.endsWith(title));
    const { output, changes } = repair([text], everything);
    const left = findFaults(output, options).findings.map(({ id }) => id);
    if (beyond) expect(output).toBe(text);
    else {
      expect(changes.some(({ faults }) => faults.some((id) => id === fault))).toBe(true);
      expect(left).not.toContain(fault);
      expect(expected).toEqual(expect.arrayContaining(left));
    }
  });

  it('lets a late expansion go before what came between, and says so', () => {
    const call = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E');
    const expansion = line('CDDSE,1,1,A,2329991420,00,33001200');
    const between = [line('GPGLL,,,,,,V,N'), line('GPVTG,,T,,M,,N,,K,N')];
    const { output, changes } = repair([call, ...between, expansion], { repair: ['expansion-late'] });
    expect(output).toBe([call, expansion, ...between].join(''));
    expect(changes).toMatchObject([{ kind: 'moved', line: 4, faults: ['expansion-late'] }]);
  });

  it('never holds back a call, nor more lines than it may', () => {
    const call = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E');
    const alert = line('CDDSC,12,2329992180,,05,00,1561800627,1404,,,S,E');
    const other = line('GPGLL,,,,,,V,N');
    const repairer = createSentenceRepairer({ repair: ['expansion-late'], mostHeld: 2 });
    expect(repairer.push(call).output).toBe(call);
    expect(repairer.push(other).output).toBe('');
    expect(repairer.push(alert).output).toBe(other + alert);
    expect(repairer.push(other + other).output).toBe('');
    expect(repairer.push(other).output).toBe(other.repeat(3));
  });

  it('writes a report as a waypoint and a target too', () => {
    const pair =
      line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E') + line('CDDSE,1,1,A,2329991420,00,33001200');
    const { output, changes } = repair([pair], { reportAs: ['waypoint', 'target'] });
    expect(output.startsWith(pair)).toBe(true);
    expect(changes.map(({ kind }) => kind)).toEqual(['inserted', 'inserted']);
    expect(readSentences(output).slice(1)).toMatchObject([
      { kind: 'waypoint', waypoint: { name: '232999142' } },
      { kind: 'target', target: { number: 0, name: '232999142', time: { hour: 14, minute: 4 } } },
    ]);
    const [, waypoint] = readSentences(output);
    expect(waypoint?.kind === 'waypoint' && waypoint.waypoint.position.latitude).toBeCloseTo(
      56 + 20.33 / 60,
      9,
    );
  });

  it('gives each station a number of its own, a hundred at most', () => {
    const reply = (ship: number): string =>
      line(`CDDSC,20,232${String(ship).padStart(6, '0')}0,08,21,26,1562000630,1404,,,B,`);
    const ships = Array.from({ length: 102 }, (_, index) => reply(index));
    const numbers = repair([ships.join('')], { reportAs: ['target'] }).changes.map(({ after }) =>
      after.slice(7, 9),
    );
    expect(new Set(numbers.slice(0, 100)).size).toBe(100);
    expect(numbers.slice(100)).toEqual(numbers.slice(0, 2));
  });

  it('has no report of a distress alert, which a display must show as what it is', () => {
    const alert = line('CDDSC,12,2329992180,,05,00,1561800627,1404,,,S,');
    expect(repair([alert], { reportAs: ['waypoint'] }).changes).toEqual([]);
  });

  it('refuses a count that is none', () => {
    expect(() => createSentenceRepairer({ mostHeld: -1 })).toThrow(RangeError);
  });
});
