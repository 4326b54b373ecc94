/**
 * Known stations: a plain-data address book by identity, that learns from calls and AIS without losing what a person
 * typed, is stored as JSON, and travels as CSV and vCard.
 *
 * @packageDocumentation
 */
export { forget, leaveGroup, mergeDirectories, trimDirectory } from './directory-change.ts';
export { readDirectoryCsv, writeDirectoryCsv } from './directory-csv.ts';
export {
  findStations,
  membersOf,
  nameOf,
  recentlyCalled,
  recentlyHeard,
  stationOf,
} from './directory-find.ts';
export { readDirectoryJson, writeDirectoryJson } from './directory-json.ts';
export { createDirectory, remember } from './directory-remember.ts';
export { readVcards, writeVcards } from './directory-vcard.ts';
export type {
  Directory,
  ExtraField,
  KnownStation,
  StationOrigin,
  StationOrigins,
  StationUpdate,
} from './known-station.ts';
