/** What other modules of this library use of this one and the package does not publish. */
export { guarded, writeRecords } from './csv-record.ts';
export { type DirectoryTexts, directoryTexts } from './texts.ts';
