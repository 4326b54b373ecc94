import type { Issue, Notice } from '../result/index.ts';
import { sentLayout } from './expansion.ts';
import type { ExpansionReading } from './expansion-reading.ts';
import type { ReceptionQuality } from './reception.ts';
import { issue } from './texts.ts';

const ERROR_CHECK = 'ITU-R M.493 error-check character, unverified';
const PHASING = 'ITU-R M.493 phasing sequence';

/** What is known of a reception beside its quality. */
interface Circumstances {
  readonly cut: boolean;
  readonly formatCopies: number;
  readonly expansion: ExpansionReading;
}

/** Notices about how a call was received. */
export function receptionNotices(quality: ReceptionQuality, about: Circumstances): Notice[] {
  const notices: Notice[] = [];
  const { errorCheck, verdict, probability } = quality;
  if (errorCheck.kind === 'wrong') {
    const more = { at: ['errorCheck'], received: String(errorCheck.received), clause: ERROR_CHECK };
    notices.push(issue('burst-check-wrong', { computed: errorCheck.computed }, more));
  } else if (verdict === 'doubtful')
    notices.push(issue('burst-doubtful', {}, { received: `${percent(probability)} %` }));
  if (verdict === 'repaired')
    notices.push(issue('burst-repaired', { sure: percent(probability) }, { clause: ERROR_CHECK }));
  if (about.formatCopies < 2 && isWithoutAddress(quality)) {
    const clause = 'ITU-R M.493 format specifier, unverified';
    notices.push(
      issue('burst-format-once', {}, { at: ['format'], received: String(about.formatCopies), clause }),
    );
  }
  if (about.cut) notices.push(issue('burst-cut-short', {}, { at: [quality.end] }));
  if (quality.polarity === 'inverted') notices.push(issue('burst-inverted', {}, { clause: PHASING }));
  if (about.expansion.kind === 'broken')
    notices.push(issue('burst-expansion-broken', {}, { at: ['expansion'] }));
  if (about.expansion.kind === 'read' && about.expansion.layout !== sentLayout) {
    const received = `'${about.expansion.layout.name}'`;
    notices.push(
      issue('burst-expansion-layout', { usual: sentLayout.name }, { at: ['expansion'], received }),
    );
  }
  return notices;
}

/** No call where one was looked for. */
export function notFound(probability: number): Issue {
  return issue('burst-not-found', { sure: percent(probability) }, { clause: PHASING });
}

function isWithoutAddress({ characters: [format] }: ReceptionQuality): boolean {
  return format?.symbol === 112 || format?.symbol === 116;
}

/** Rounded down, so that almost sure never reads as sure. */
function percent(probability: number): number {
  return Math.floor(probability * 10_000) / 100;
}
