/** What other modules of this library use of this one and the package does not publish. */
export type { NavigationalStatus } from './ais-report.ts';
export type { FixQuality, UtcTime } from './gnss-fix.ts';
export type { TagBlock } from './sentence.ts';
