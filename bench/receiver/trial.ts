import { createReceiver, type HeardBurst } from '../../src/audio/index.ts';
import type { SentCall } from './random-call.ts';

/** How a reading stands to what was sent: the same, the same with characters left open, or something else. */
export type Match = 'right' | 'open' | 'wrong';

/** One burst and its sound, noise before and behind. */
export interface Trial {
  readonly sent: SentCall;
  readonly samples: Float32Array;
}

/** What was reported while the sound of one trial was heard. */
export interface Outcome {
  readonly reports: readonly { readonly burst: HeardBurst; readonly match: Match }[];
}

/** Lets one receiver hear trials one after another, as a single stream. */
export function hearAll(trials: Iterable<Trial>, sampleRate: number): Outcome[] {
  const heard: HeardBurst[] = [];
  const receiver = createReceiver({ sampleRate, onReception: (burst) => heard.push(burst) });
  const spans: { from: number; to: number; sent: SentCall }[] = [];
  let at = 0;
  for (const { sent, samples } of trials) {
    receiver.push(samples);
    spans.push({ from: at, to: at + samples.length, sent });
    at += samples.length;
  }
  receiver.flush();
  return spans.map(({ from, to, sent }) => ({
    reports: heard
      .filter(({ startSample }) => startSample >= from && startSample < to)
      .map((burst) => ({ burst, match: matchOf(burst.reception.information, sent.information) })),
  }));
}

/** Success as the project counts it: the right call, clean or repaired. */
export function succeeded({ reports }: Outcome): boolean {
  return reports.some(
    ({ burst, match }) => match === 'right' && burst.reception.quality.verdict !== 'doubtful',
  );
}

/** Share of outcomes for which something holds. */
export function shareOf(outcomes: readonly Outcome[], holds: (outcome: Outcome) => boolean): number {
  return outcomes.filter(holds).length / outcomes.length;
}

function matchOf(read: readonly (number | null)[], sent: readonly number[]): Match {
  if (String(read) === String(sent)) return 'right';
  const agrees =
    read.length === sent.length && read.every((symbol, n) => symbol === null || symbol === sent[n]);
  return agrees ? 'open' : 'wrong';
}
