/** What other modules of this library use of this one and the package does not publish. */
export { messagesOf, type NavigationalStatus, STATUS_CODES, STATUSES } from './ais-report.ts';
export { FIX_QUALITIES, type FixQuality, type UtcTime } from './gnss-fix.ts';
export { createRepeats, HALF_DAY, type Numbered, rememberLatest } from './repeats.ts';
export type { TagBlock } from './source.ts';
