import { findNetworkFaults, isNetworkLog, readNetworkLog } from 'seahail/network';
import { formatReportedPosition } from 'seahail/position';
import type { Reading } from 'seahail/report';
import {
  createSentenceReader,
  createSentenceRepairer,
  findFaults,
  type RepairableFault,
  type RepairedChunk,
} from 'seahail/sentence';
import {
  type CallEntry,
  type Entries,
  type FaultEntry,
  type FromLogReader,
  type ListName,
  type LogReading,
  type Mark,
  PIECE,
  type PlaceEntry,
  type RepairedEntry,
  type ToLogReader,
} from './messages.ts';

declare const self: {
  onmessage: ((event: { readonly data: ToLogReader }) => void) | null;
  postMessage(message: FromLogReader): void;
};

/** How much of the whole work is reading; the rest is the report. */
const READ_SHARE = 0.7;
/** Bytes taken at a time. */
const BITE = 256 * 1024;
/** Bytes looked through for the report of faults, which is made in one go. */
const MOST_REPORTED = 32 * 1024 * 1024;
const REPAIRABLE: readonly RepairableFault[] = [
  'tag-block',
  'blank-damage',
  'blank-sent',
  'checksum-lower-case',
  'fields-missing',
  'talker',
  'identity-nine-digits',
  'expansion-late',
];
/** Stations whose places are handed on to be drawn. */
const MOST_PLACES = 12;
/** Calls that are drawn along the log. */
const MOST_MARKS = 3000;

const calls: CallEntry[] = [];
const damaged: FaultEntry[] = [];
const repaired: RepairedEntry[] = [];
const output: BlobPart[] = [];
const places = new Map<string, number>();
const latest = new Map<string, PlaceEntry>();
const counts: Partial<Record<LogReading['kind'], number>> = {};
let lines = 0;
let own = '';
let last: number | null = null;

self.onmessage = ({ data }) => {
  if (data.kind === 'read') void readAll(data);
  else if (data.kind === 'repaired-log') self.postMessage({ kind: 'repaired-log', log: new Blob(output) });
  else self.postMessage({ kind: 'piece', list: data.list, entries: piece(data.list, data.from) });
};

async function readAll(question: Extract<ToLogReader, { kind: 'read' }>): Promise<void> {
  const { source, own: ownNumber } = question;
  const blob = typeof source === 'string' ? new Blob([source]) : source;
  const beginning = new Uint8Array(await blob.slice(0, MOST_REPORTED).arrayBuffer());
  const known = ownNumber === undefined ? {} : { own: ownNumber };
  const network = isNetworkLog(beginning);
  if (network) {
    for (const reading of readNetworkLog(beginning, known)) {
      take(reading);
      lines = Math.max(lines, reading.line);
    }
  } else await readSerial(blob, question);
  // Readings that wait for their other half come late.
  damaged.sort((a, b) => a.line - b.line);
  calls.sort((a, b) => Number(isDistress(b)) - Number(isDistress(a)));
  self.postMessage({
    kind: 'read',
    cable: network ? 'network' : 'serial',
    cut: network && blob.size > MOST_REPORTED,
    lines,
    counts,
    totals: { calls: calls.length, faults: damaged.length, repaired: repaired.length },
    first: { calls: piece('calls', 0), faults: piece('faults', 0), repaired: piece('repaired', 0) },
    places: placesToDraw(),
    marks: calls.slice(0, MOST_MARKS).map(markOf),
    own,
    last,
    report: network ? findNetworkFaults(beginning, known) : findFaults(beginning, known),
    reportCut: blob.size > MOST_REPORTED,
  });
}

function isDistress({ reading }: CallEntry): boolean {
  return reading.call.kind.startsWith('distress-');
}

function markOf(entry: CallEntry): Mark {
  const { at, line } = entry.reading;
  return { at, line, distress: isDistress(entry) };
}

async function readSerial(
  blob: Blob,
  { direction, own: ownNumber, unchecked, waypoints }: Extract<ToLogReader, { kind: 'read' }>,
): Promise<void> {
  const reader = createSentenceReader({
    direction,
    unchecked,
    ...(ownNumber !== undefined && { own: ownNumber }),
  });
  const repairer = createSentenceRepairer({ repair: REPAIRABLE, reportAs: waypoints ? ['waypoint'] : [] });
  for (let at = 0; at < blob.size; at += BITE) {
    const bytes = new Uint8Array(await blob.slice(at, at + BITE).arrayBuffer());
    for (const byte of bytes) countLine(byte);
    for (const reading of reader.push(bytes)) take(reading);
    takeRepaired(repairer.push(bytes));
    self.postMessage({
      kind: 'progress',
      done: (READ_SHARE * Math.min(blob.size, at + BITE)) / blob.size,
      lines,
    });
  }
  // The last line may lack its end.
  if (before !== LF && before !== CR) lines++;
  for (const reading of reader.flush()) take(reading);
  takeRepaired(repairer.flush());
}

const LF = 10;
const CR = 13;
/** The byte before, zeros left out, which UTF-16 has between any two. */
let before = LF;

/** A line ends with a line feed, a carriage return or both. */
function countLine(byte: number): void {
  if (byte === 0) return;
  if (byte === CR || (byte === LF && before !== CR)) lines++;
  before = byte;
}

function take(reading: LogReading): void {
  last = reading.at ?? last;
  if (reading.kind === 'call') takeCall(reading);
  else counts[reading.kind] = (counts[reading.kind] ?? 0) + 1;
  if (reading.kind === 'own-position' && reading.fix.position !== null) {
    own = `${reading.fix.position.latitude}, ${reading.fix.position.longitude}`;
  }
  if (reading.kind === 'damaged') {
    damaged.push({
      line: reading.line,
      text: reading.text.slice(0, 200),
      issues: reading.issues,
      damaged: true,
    });
  } else if (reading.notices.length > 0) {
    damaged.push({ line: reading.line, text: textOf(reading), issues: reading.notices, damaged: false });
  }
}

function takeRepaired({ output: text, changes }: RepairedChunk): void {
  // One character a byte, so that what was not repaired stays as it came.
  output.push(Uint8Array.from(text, (character) => character.charCodeAt(0)));
  for (const { line, before, after, faults } of changes)
    repaired.push({ line, was: before, now: after, faults });
}

/** A later reading of the same event takes the place of the earlier: finer, or the same again. */
function takeCall(reading: Extract<LogReading, { kind: 'call' }>): void {
  const raw = reading.sources.map((source) => source.raw);
  const { call } = reading;
  const key = String(reading.event);
  const place = places.get(key);
  if (place === undefined) {
    counts.call = (counts.call ?? 0) + 1;
    places.set(key, calls.length);
    calls.push({ reading: { line: reading.line, at: reading.at, call }, raw, again: reading.repeat });
  } else {
    // It keeps the place where it first came, whatever happened later.
    const { line, at } = calls[place]?.reading ?? reading;
    calls[place] = { reading: { line, at, call }, raw, again: reading.repeat };
  }
  takePlace(reading);
}

/** The latest place of each station. A vessel stays in distress until she takes her alert back. */
function takePlace({ call, event }: Pick<Reading<'call'>, 'call' | 'event'>): void {
  if (!('position' in call)) return;
  const station = 'distressed' in call ? call.distressed : call.from;
  // What is not known to be the same vessel is another.
  const key = station ?? `event ${event}`;
  const before = latest.get(key);
  const distress =
    call.kind !== 'distress-self-cancel' && (call.kind.startsWith('distress-') || before?.distress === true);
  if (call.position === null) {
    if (before !== undefined) latest.set(key, { ...before, distress });
    return;
  }
  latest.delete(key);
  latest.set(key, {
    station,
    distress,
    text: formatReportedPosition(call.position),
    time: call.time === null ? '' : `${two(call.time.hour)}:${two(call.time.minute)}`,
  });
}

/** When there are too many, those in distress are the last to be left out. */
function placesToDraw(): readonly PlaceEntry[] {
  const all = [...latest.values()];
  const inDistress = all.filter(({ distress }) => distress);
  return [...all.filter(({ distress }) => !distress), ...inDistress].slice(-MOST_PLACES);
}

function textOf({ sources }: LogReading): string {
  return sources.map(({ raw }) => raw).join('\n');
}

function piece<Name extends ListName>(list: Name, from: number): Entries[Name] {
  const lists: Entries = { calls, faults: damaged, repaired };
  return lists[list].slice(from, from + PIECE) as unknown as Entries[Name];
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
