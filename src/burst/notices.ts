import type { Issue, Notice } from '../result/index.ts';
import { sentLayout } from './expansion.ts';
import type { ExpansionReading } from './expansion-reading.ts';
import type { ReceptionQuality } from './reception.ts';

/** What is known of a reception beside its quality. */
interface Circumstances {
  readonly cut: boolean;
  readonly formatCopies: number;
  readonly expansion: ExpansionReading;
}

/** Notices about how a call was received. */
export function receptionNotices(quality: ReceptionQuality, about: Circumstances): Notice[] {
  const notices: Notice[] = [];
  const sure = `${percent(quality.probability)} sure`;
  if (quality.errorCheck.kind === 'wrong')
    notices.push({
      code: 'burst-check-wrong',
      message: `Error check: expected ${quality.errorCheck.computed}, got ${quality.errorCheck.received}: show the call as received in error and do not act on it`,
      at: ['errorCheck'],
      expected: String(quality.errorCheck.computed),
      received: String(quality.errorCheck.received),
      clause: 'ITU-R M.493 error-check character, unverified',
    });
  else if (quality.verdict === 'doubtful')
    notices.push({
      code: 'burst-doubtful',
      message: `the call is only ${sure}: show it as received in error and do not act on it`,
      at: [],
      expected: 'at least 99 % sure',
      received: percent(quality.probability),
    });
  if (quality.verdict === 'repaired')
    notices.push({
      code: 'burst-repaired',
      message: `the call is ${sure} but not received cleanly: never act on it automatically`,
      at: [],
      clause: 'ITU-R M.493 error-check character, unverified',
    });
  if (about.formatCopies < 2 && isWithoutAddress(quality))
    notices.push({
      code: 'burst-format-once',
      message: 'the format specifier of a call without an address must be received twice, and was not',
      at: ['format'],
      expected: 'two copies or more',
      received: String(about.formatCopies),
      clause: 'ITU-R M.493 format specifier, unverified',
    });
  if (about.cut)
    notices.push({
      code: 'burst-cut-short',
      message: 'the input ends before the call does',
      at: [quality.end],
    });
  if (quality.polarity === 'inverted')
    notices.push({
      code: 'burst-inverted',
      message: 'every bit is inverted: the two tones are swapped at the receiver',
      at: [],
      clause: 'ITU-R M.493 phasing sequence',
    });
  if (about.expansion.kind === 'broken')
    notices.push({
      code: 'burst-expansion-broken',
      message: 'an expansion follows the call and could not be read; the call itself is not affected',
      at: ['expansion'],
    });
  if (about.expansion.kind === 'read' && about.expansion.layout !== sentLayout)
    notices.push({
      code: 'burst-expansion-layout',
      message: `the expansion stood in the layout '${about.expansion.layout.name}'`,
      at: ['expansion'],
      expected: `'${sentLayout.name}'`,
      received: `'${about.expansion.layout.name}'`,
    });
  return notices;
}

/** No call where one was looked for. */
export function notFound(probability: number): Issue {
  return {
    code: 'burst-not-found',
    message: `no call could be read (${percent(probability)} sure at best)`,
    at: [],
    expected: 'phasing and what follows it',
    clause: 'ITU-R M.493 phasing sequence',
  };
}

function isWithoutAddress({ characters: [format] }: ReceptionQuality): boolean {
  return format?.symbol === 112 || format?.symbol === 116;
}

/** Rounded down, so that almost sure never reads as sure. */
function percent(probability: number): string {
  return `${Math.floor(probability * 10_000) / 100} %`;
}
