/**
 * The serial cable between radio and plotter: sentences of IEC 61162-1 (NMEA 0183) in and out, and why a display shows
 * nothing. The symbols and places of ITU-R M.493 and M.821 in them are from memory.
 *
 * Guide: [Sentence: what does the cable say?](../../docs/guide/sentence.md).
 *
 * @packageDocumentation
 */

// Reading a stream or a log: calls, own position, AIS, waypoints, and everything else. Types of the readings: `seahail/report`.

export type { ReaderOptions } from './reader/options.ts';
export { readSentences } from './reader/read-sentences.ts';
export { createSentenceReader, type SentenceReader } from './reader/reader.ts';

// Writing calls, waypoints and targets.

export { writeTarget, writeWaypoint } from './point/waypoint-and-target.ts';
export { writeSentences } from './write-sentences.ts';

// Passing on what arrived over another cable.

export { writeAisSentences } from './ais/write-ais.ts';
export { writeOwnPosition } from './own/write-own-position.ts';

// Why a display shows nothing, and repairing it on the way.

export { FAULTS, type FaultId, type FaultReport } from './fault/fault.ts';
export { findFaults } from './fault/find-faults.ts';
export type { RepairableFault } from './repair/repair-line.ts';
export { createSentenceRepairer, type RepairedChunk, type SentenceRepairer } from './repair/repairer.ts';

// One line at a time.

export { formatSentence } from './frame/format.ts';
export { parseSentence } from './frame/parse.ts';
