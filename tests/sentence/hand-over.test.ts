import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { createSentenceReader } from '../../src/sentence/index.ts';
import { createStation, type Effect, step } from '../../src/station/index.ts';
import { line } from './arbitrary.ts';

// The loop of the guide, fed as a port gives it: every reading of a received call goes to the station at once.
function watch() {
  const reader = createSentenceReader({ own: '232999871' });
  let state = createStation({ mmsi: '232999871' });
  const take = (readings: readonly Reading[], at: number): Effect[] =>
    readings.flatMap((reading) => {
      if (reading.kind !== 'call') return [];
      const { call, event, stage } = reading;
      const next = step(state, { kind: 'received', at, call, verdict: 'clean', event, stage });
      state = next.state;
      return [...next.effects];
    });
  return {
    push: (body: string, at: number) => take(reader.push(line(body), at), at),
    pass: (at: number) => take(reader.push('', at), at),
    dialogues: () => state.dialogues.length,
  };
}

const at = Date.UTC(2026, 5, 1, 14, 4);
const topics = (effects: readonly Effect[]): string[] =>
  effects.flatMap((effect) => (effect.kind === 'show' ? [effect.topic] : []));

describe('a call in two sentences, from the reader to the station', () => {
  it('is one position reply', () => {
    const radio = watch();
    const first = radio.push('CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E', at);
    const dialogues = radio.dialogues();
    const second = radio.push('CDDSE,1,1,A,2329991420,00,50005000', at + 200);
    expect(first.length).toBeGreaterThan(0);
    expect(radio.dialogues()).toBe(dialogues);
    expect(topics(second)).toEqual(['position-received']);
  });

  it('is a distress alert at once, and none again when its expansion is lost', () => {
    const radio = watch();
    const heard = radio.push('CDDSC,12,2329992180,,05,00,1561800627,1405,,,S,E', at);
    expect(heard.some(({ kind }) => kind === 'sound')).toBe(true);
    const later = radio.pass(at + 5000);
    expect(later.some(({ kind }) => kind === 'sound')).toBe(false);
    expect(radio.dialogues()).toBe(1);
    const again = radio.push('CDDSC,12,2329992180,,05,00,1561800627,1405,,,S,E', at + 240_000);
    expect(radio.dialogues()).toBe(1);
    expect(again.length).toBeGreaterThan(0);
  });
});
