import { describe, expect, it } from 'vitest';
import { hearCall } from '../../src/burst/hear-call.ts';
import { related } from '../../src/burst/judgement.ts';
import { heardOfStream } from '../../src/burst/loss.ts';
import { type Received, receive } from '../../src/burst/receive.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { copiesOf, metricsOf, type Word, withWords } from './heard.ts';

// A distress alert of an invented ship.
const alert = [112, 23, 29, 99, 21, 80, 105, 5, 62, 0, 6, 30, 12, 34, 100, 127];
const stream = streamOf(alert);
/** Its error check, by calculation. */
const CHECK = alert.reduce((sum, symbol) => sum ^ symbol);
const read = (words: readonly Word[], surety = 0.99) =>
  (hearCall(metricsOf(words, surety), undefined).alone as Received).reception;

describe('a call whose error check is wrong', () => {
  // The surer the words, the surer it is that the check was sent like this.
  it.each([0.99, 0.9, 0.7])('is shown as received, each word as sure as %d', (surety) => {
    const { information, quality } = read(streamOf(alert, [], 3), surety);
    expect(quality.verdict).toBe('doubtful');
    expect(quality.errorCheck).toEqual({ kind: 'wrong', received: 3, computed: CHECK });
    expect(information.slice(1)).toEqual(alert);
    expect(quality.characters.every(({ source }) => source === 'both-copies')).toBe(true);
  });

  it.each([
    ['both copies of a character another', []],
    ['a copy of the end of sequence gone besides', [copiesOf(15)[0]]],
    ['a copy of the format specifier gone besides', [12]],
  ])('is shown as received before what was expected: %s', (_, gone) => {
    const hit = withWords(stream, copiesOf(8), () => 33);
    const { information, quality } = read(
      withWords(hit, gone, () => null),
      0.6,
    );
    const received = alert.map((symbol, index) => (index === 8 ? 33 : symbol));
    expect(quality.errorCheck).toEqual({ kind: 'wrong', received: CHECK, computed: CHECK ^ 62 ^ 33 });
    expect(information.slice(1)).toEqual(received);
  });

  it('is not, where the one copy of a character that came in decides', () => {
    const [dx, rx] = copiesOf(8);
    const hit = withWords(
      withWords(stream, [dx], () => 33),
      [rx],
      () => null,
    );
    for (const surety of [0.99, 0.9, 0.8]) {
      const { information, quality } = read(hit, surety);
      expect(quality).toMatchObject({ verdict: 'doubtful', errorCheck: { kind: 'used-for-repair' } });
      expect(information.slice(1)).toEqual(alert.map((symbol, index) => (index === 8 ? null : symbol)));
    }
  });
});

describe('what was heard of a call', () => {
  it('is no call to report with fewer than three characters read', () => {
    const heard = (count: number) => {
      const kept = [
        12,
        14,
        17,
        19,
        ...Array.from({ length: count - 1 }, (_, index) => copiesOf(index + 1)).flat(),
      ];
      const words = stream.map((word, at) =>
        at < 12 || at === 13 || at === 15 || kept.includes(at) ? word : null,
      );
      return hearCall(metricsOf(words), undefined).alone?.callProbability;
    };
    expect(heard(2)).toBe(0);
    expect(heard(3)).toBeGreaterThan(0.99);
  });

  it('is nothing in silence', () => {
    expect(hearCall(new Float64Array(128 * stream.length), undefined).alone).toBeNull();
  });

  it('is weighed with words lost for a while or for good, when nobody has the sound', () => {
    const metrics = metricsOf(withWords(stream, [30, 31, 32, 33, 34], () => 9));
    const end = 10 * stream.length;
    const words = { metrics, lead: 0, tempering: related, polarity: 'normal', start: 0, given: end } as const;
    const byWords = receive(words);
    expect(byWords).toEqual(receive(words, (streams) => streams.map((each) => heardOfStream(metrics, each))));
    // Copies added up without regard to each other say something else.
    expect(receive(words, () => [])?.evidence).not.toBeCloseTo(byWords?.evidence as number, 3);
  });
});
