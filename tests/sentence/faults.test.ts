import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/sentence/fault/fault.ts';
import type { FaultId } from '../../src/sentence/fault/fault-list.ts';
import { FAULTS, findFaults } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';
import { cleanLog } from './clean-log.ts';

// Invented logs, three or more for each fault; see shared/README.md.
interface Log {
  title: string;
  lines?: string[];
  hex?: string;
  options?: NonNullable<Parameters<typeof findFaults>[1]>;
  expected: FaultId[];
  findings: Pick<Finding, 'id' | 'certainty' | 'count' | 'sightings'>[];
}
const folder = join(import.meta.dirname, '../../shared/sentence/faults');
const corpus = readdirSync(folder).map(
  (file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as { fault: FaultId | null; logs: Log[] },
);
const inputOf = ({ lines, hex }: Log): string | Uint8Array =>
  hex === undefined ? (lines ?? []).map((line) => `${line}\r\n`).join('') : Buffer.from(hex, 'hex');

describe('the fault corpus', () => {
  it('has three logs of every fault, and a clean one', () => {
    for (const { id } of FAULTS) {
      expect([id, corpus.find(({ fault }) => fault === id)?.logs.length ?? 0]).toEqual([
        id,
        expect.toSatisfy((count) => count >= 3),
      ]);
    }
    expect(corpus.filter(({ fault }) => fault === null)).toHaveLength(1);
  });

  it.each(
    corpus.flatMap(({ fault, logs }) =>
      logs.map((log) => [`${fault ?? 'clean'}: ${log.title}`, log] as const),
    ),
  )('%s', (_, log) => {
    const report = findFaults(inputOf(log), log.options);
    const order = FAULTS.map(({ id }) => id);
    const expected = [...log.expected].sort((one, other) => order.indexOf(one) - order.indexOf(other));
    expect(report.findings.map(({ id }) => id)).toEqual(expected);
    expect(report.clean).toBe(expected.length === 0);
    expect(report.outside.length).toBeGreaterThan(0);
    expect(report.findings).toEqual(
      log.findings.map((finding) => ({ ...FAULTS.find(({ id }) => id === finding.id), ...finding })),
    );
  });

  it.each(
    corpus.flatMap(({ logs }) =>
      logs.filter((log) => log.hex === undefined).map((log) => [log.title, log] as const),
    ),
  )('what is corrected in %s reads clean again', (_, log) => {
    for (const finding of findFaults(inputOf(log), log.options).findings) {
      for (const { corrected } of finding.sightings) {
        if (corrected === undefined) continue;
        const again = findFaults(corrected.map((sentence) => `${sentence}\r\n`).join(''));
        // What the other station did not tell, nobody can repair; nor does a call come into own position.
        const told = again.findings.map(({ id }) => id).filter((id) => !/^no-(expansion|fix)$/.test(id));
        expect(told).toEqual(again.calls === 0 ? ['calls-filtered'] : []);
      }
    }
  });
});

describe('finding faults', () => {
  it('reports what was looked at and what cannot be seen from here', () => {
    const quiet = corpus.find(({ fault }) => fault === null)?.logs[0] as Log;
    expect(findFaults(inputOf(quiet), quiet.options)).toEqual({
      kind: 'fault-report',
      findings: [],
      clean: true,
      summary: 'No fault found in 15 sentences with 8 calls: check the display and its settings',
      characters: 789,
      lines: 15,
      sentences: 15,
      calls: 8,
      outside: findFaults('').outside,
    });
    expect(findFaults('').outside).toHaveLength(4);
  });

  it.each([
    ['', '1 fault found and no sentence: start with no-data'],
    [
      line('CDDSC,20,2329991420,00,03,26,,,,,B,'),
      '1 fault found in 1 sentence with 1 call: start with polled',
    ],
    [
      line('CVDSC,20,2329991420,00,03,26,,,,,B,'),
      '2 faults found in 1 sentence with 1 call: start with talker',
    ],
    [line('GPZDA,,,,,,'), '1 fault found in 1 sentence without a call: start with calls-filtered'],
    [line('GPZDA,,,,,,').repeat(2), '1 fault found in 2 sentences without a call: start with calls-filtered'],
  ])('of %j is told in one sentence', (input, summary) => {
    expect(findFaults(input)).toMatchObject({ summary });
  });

  it('finds none in clean logs', () => {
    for (let seed = 1; seed <= 500; seed += 1) {
      const { text, options } = cleanLog(seed);
      const { findings, calls } = findFaults(text, options);
      const faults = findings.filter(
        ({ id, certainty }) => calls > 0 || `${id} ${certainty}` !== 'calls-filtered possible',
      );
      expect([seed, faults.map(({ id, sightings }) => [id, sightings])]).toEqual([seed, []]);
      expect([seed, findings.length]).toEqual([seed, calls > 0 ? 0 : 1]);
    }
  });

  it('writes no checksum for a line that came without one: it may be cut short', () => {
    const { findings } = findFaults('$CVDSC,20,2329991420,08, 21,26,1562000630');
    expect(findings.map(({ id }) => id)).toEqual(expect.arrayContaining(['checksum-missing', 'talker']));
    expect(findings.flatMap(({ sightings }) => sightings.filter(({ corrected }) => corrected))).toEqual([]);
  });

  it('never throws, and its report survives JSON', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.uint8Array({ maxLength: 600 }),
          fc.string({ maxLength: 600 }),
          fc.constantFrom(...corpus.flatMap(({ logs }) => logs.map(inputOf))),
        ),
        fc.record({ now: fc.constant(0), expect: fc.constant({}) }, { requiredKeys: [] }),
        (input, options) => {
          const report = findFaults(input, options);
          expect(JSON.parse(JSON.stringify(report))).toEqual(report);
        },
      ),
    );
  });

  it('refuses an own identity that is none', () => {
    expect(() => findFaults('', { own: '12' })).toThrow(RangeError);
    expect(() => findFaults('', { expect: { station: 'TERN' } })).toThrow(RangeError);
  });

  it('counts every sighting and shows the first twenty', () => {
    const line = '$CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E*00\r\n';
    const [finding] = findFaults(line.repeat(50)).findings;
    expect([finding?.id, finding?.count, finding?.sightings.length]).toEqual(['checksum-wrong', 50, 20]);
  });
});
