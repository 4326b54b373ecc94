import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/index.ts';
import { cornerOf } from '../../src/position/box.ts';
import { formatReportedPosition, type ReportedPosition } from '../../src/position/index.ts';
import type { Reading } from '../../src/report/index.ts';
import { readSentences, writeSentences, writeTarget, writeWaypoint } from '../../src/sentence/index.ts';
import { checksumByBits } from '../oracle/sentence.ts';

// Constructed from the field layout of IEC 61162-1 as publicly restated; see shared/README.md.
interface Case {
  id: string;
  title: string;
  sentences: string[];
  options?: { unchecked?: boolean };
  readings: Record<string, unknown>[];
  notices: string[];
  writtenBack: boolean;
}
const path = join(import.meta.dirname, '../../shared/sentence/worked-sentences.json');
const { cases } = JSON.parse(readFileSync(path, 'utf8')) as { cases: Case[] };

/** What a reading says, in the words of the vectors; only keys that the vector has. */
function said(reading: Reading, wanted: Record<string, unknown>): Record<string, unknown> {
  const all: Record<string, unknown> = { ...flat(reading) };
  return Object.fromEntries(Object.keys(wanted).map((key) => [key, all[key]]));
}

function flat(reading: Reading): Record<string, unknown> {
  const sentence = reading.sources[0];
  const tag = sentence?.tag ? { source: sentence.tag.source, time: sentence.tag.time } : null;
  switch (reading.kind) {
    case 'call':
      return { ...flatCall(reading.call), tag };
    case 'expansion':
      return { ...reading, sets: reading.sets.map((set) => set.specifier) };
    case 'own-position': {
      const { fix } = reading;
      return {
        ...fix,
        ...place(fix.position),
        kind: 'own-position',
        time: clock(fix.time),
        instant: iso(fix.instant),
      };
    }
    case 'clock':
      return { kind: 'clock', instant: iso(reading.instant) };
    case 'waypoint':
      return { kind: 'waypoint', ...reading.waypoint, ...place(reading.waypoint.position) };
    case 'target':
      return {
        ...reading.target,
        kind: 'target',
        ...place(reading.target.position),
        time: clock(reading.target.time),
      };
    case 'ais':
      return { ...reading.report, kind: 'ais', ...place(reading.report.position ?? null) };
    case 'damaged':
      return { kind: 'damaged', issue: reading.issues[0]?.code };
    default:
      return { ...reading };
  }
}

function flatCall(call: Call): Record<string, unknown> {
  const loose = call as unknown as Record<string, unknown>;
  const frequencies = loose.frequencies as { receive: string; transmit: string } | undefined;
  return {
    ...loose,
    ...call.expansion,
    receiveKHz: frequencies && Number(frequencies.receive) / 10,
    transmitKHz: frequencies && Number(frequencies.transmit) / 10,
    area: call.to?.kind === 'area' ? signedArea(call.to.area) : null,
    positionSymbols: call.asReceived?.position,
    position: loose.position ? shownPosition(loose.position as ReportedPosition) : (loose.position ?? null),
    time: clock(loose.time as { hour: number; minute: number } | null),
  };
}

function signedArea(area: (Call & { to: { kind: 'area' } })['to']['area']): unknown {
  if (area === null) return null;
  return {
    north: area.north.degrees * (area.north.hemisphere === 'S' ? -1 : 1),
    west: area.west.degrees * (area.west.hemisphere === 'W' ? -1 : 1),
    southward: area.southward,
    eastward: area.eastward,
  };
}

function shownPosition(position: ReportedPosition): object {
  return { text: formatReportedPosition(position), ...place(cornerOf(position)) };
}

function place(position: { latitude: number; longitude: number } | null): object {
  if (position === null) return {};
  return { latitude: round(position.latitude), longitude: round(position.longitude) };
}

const round = (degrees: number): number => Math.round(degrees * 1e6) / 1e6;
const iso = (instant: number | null): string | null =>
  instant === null ? null : new Date(instant).toISOString().replace('.000Z', 'Z');

function clock(time: { hour: number; minute: number; second?: number } | null | undefined): string | null {
  if (time === null || time === undefined) return null;
  return [time.hour, time.minute, ...(time.second === undefined ? [] : [time.second])]
    .map((part) => String(part).padStart(2, '0'))
    .join(':');
}

const codesOf = (readings: readonly Reading[]): string[] =>
  readings.flatMap((reading) => reading.notices.map((notice) => notice.code));

describe('worked sentences', () => {
  it('are sixty-seven', () => {
    expect(cases).toHaveLength(67);
  });

  it.each(cases.map((entry) => [entry.id, entry] as const))('%s reads as expected', (_, entry) => {
    const readings = readSentences(entry.sentences.join('\r\n'), entry.options ?? {});
    expect(readings.map((reading, index) => said(reading, entry.readings[index] ?? {}))).toEqual(
      entry.readings,
    );
    expect(codesOf(readings)).toEqual(expect.arrayContaining(entry.notices));
    if (entry.notices.length === 0) {
      expect(codesOf(readings).filter((code) => code.startsWith('sentence-'))).toEqual([]);
    }
  });

  it.each(cases.filter((entry) => entry.writtenBack).map((entry) => [entry.id, entry] as const))(
    '%s is written back character for character',
    (_, entry) => {
      const written = readSentences(entry.sentences.join('\r\n')).flatMap((reading) => {
        if (reading.kind === 'call') {
          return writeSentences(reading.call, { direction: 'received', talker: reading.talker }).sentences;
        }
        if (reading.kind === 'waypoint') return writeWaypoint(reading.waypoint);
        return reading.kind === 'target' ? writeTarget(reading.target) : [];
      });
      expect(written).toEqual(entry.sentences);
    },
  );

  it.each(
    cases
      .filter((entry) => !/checksum|space-damaged/.test(entry.id))
      .flatMap((entry) => entry.sentences)
      .map((sentence) => [sentence]),
  )('%s has the checksum that the literal rule gives', (sentence) => {
    const [, body, given] = /[$!]([^$!]*)\*(..)$/.exec(sentence) as RegExpExecArray;
    expect(given).toBe(checksumByBits(body as string));
  });
});
