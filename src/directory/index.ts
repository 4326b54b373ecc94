/**
 * Known stations: a plain-data address book by identity, that learns from calls and AIS without losing what a person
 * typed, is stored as JSON, and travels as CSV and vCard.
 *
 * @packageDocumentation
 */
export { forget, leaveGroup, mergeDirectories, trimDirectory } from './change.ts';
export { readDirectoryCsv, writeDirectoryCsv } from './csv.ts';
export {
  findStations,
  membersOf,
  nameOf,
  recentStations,
  stationOf,
} from './find.ts';
export { readDirectoryJson, writeDirectoryJson } from './json.ts';
export type {
  Directory,
  KnownStation,
  StationOrigin,
  StationUpdate,
} from './known-station.ts';
export { createDirectory, remember } from './remember.ts';
export { readVcards, writeVcards } from './vcard.ts';
