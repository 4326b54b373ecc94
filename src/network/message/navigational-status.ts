import type { NavigationalStatus } from '../../report/internal.ts';

/** Navigational status by its number (ITU-R M.1371-6, message 1); 9, 10 and 13 are reserved. */
export const NAVIGATIONAL_STATUSES: readonly (NavigationalStatus | undefined)[] = [
  'under-way-using-engine',
  'at-anchor',
  'not-under-command',
  'restricted-manoeuvrability',
  'constrained-by-draught',
  'moored',
  'aground',
  'fishing',
  'under-way-sailing',
  undefined,
  undefined,
  'towing-astern',
  'pushing-or-towing-alongside',
  undefined,
  'locating-device-active',
];
