import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from '../../src/locale/en.ts';
import { translate } from '../../src/locale/index.ts';
import type { FaultId, Finding } from '../../src/sentence/fault/fault.ts';
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

const withoutMessages = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, part) => (key === 'message' ? undefined : part)));

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
    // Texts by code and params: their wording is pinned in tests/locale.
    expect(withoutMessages(report.findings)).toEqual(
      log.findings.map(({ id, ...finding }) => ({
        id,
        ...finding,
        step: FAULTS.find((fault) => fault.id === id)?.step,
        why: { code: 'sentence-why', params: { fault: id } },
        remedy: { code: 'sentence-remedy', params: { fault: id } },
      })),
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
    expect(withoutMessages(findFaults(inputOf(quiet), quiet.options))).toEqual({
      kind: 'fault-report',
      findings: [],
      clean: true,
      summary: { code: 'sentence-report-clean', params: { sentences: 15, calls: 8 } },
      characters: 789,
      lines: 15,
      sentences: 15,
      calls: 8,
      outside: ['accepted', 'network', 'tenth-digit', 'other-vessel'].map((check) => ({
        code: 'sentence-outside',
        params: { check },
      })),
    });
  });

  it.each([
    ['', { faults: 1, sentences: 0, calls: 0, first: 'no-data' }],
    [line('CDDSC,20,2329991420,00,03,26,,,,,B,'), { faults: 1, sentences: 1, calls: 1, first: 'polled' }],
    [line('CVDSC,20,2329991420,00,03,26,,,,,B,'), { faults: 2, sentences: 1, calls: 1, first: 'talker' }],
    [line('GPZDA,,,,,,'), { faults: 1, sentences: 1, calls: 0, first: 'calls-filtered' }],
    [line('GPZDA,,,,,,').repeat(2), { faults: 1, sentences: 2, calls: 0, first: 'calls-filtered' }],
  ])('sums up %j', (input, params) => {
    expect(findFaults(input)).toMatchObject({ summary: { code: 'sentence-report-faults', params } });
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

  it('is said in English by the catalogue as by the report itself', () => {
    const reports = corpus.flatMap(({ logs }) => logs.map((log) => findFaults(inputOf(log), log.options)));
    for (const { findings, outside, summary } of reports) {
      const texts = [
        summary,
        ...outside,
        ...findings.flatMap(({ why, remedy, sightings }) => [
          why,
          remedy,
          ...sightings.map(({ seen }) => seen),
        ]),
      ].filter((text) => typeof text !== 'string');
      expect(texts.map((text) => translate(text, english).text)).toEqual(texts.map(({ message }) => message));
    }
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
