// The same promise as clean-means-right, heard through `createReceiver` (docs/guide/audio.md: act only on `clean`).
import { randomFrom } from '../../../bench/receiver/random.ts';
import { createReceiver, type HeardBurst } from '../../../src/audio/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { type Sound, waysInSound } from '../support/spoil-sound.ts';
import { emptyTally, score, summary, type Tally, tooOftenWrong } from './clean-means-right.ts';

/** Tries of `npm run attack`. */
export const usual = 4000;

/** Everything that a receiver makes of a sound given in one piece. */
export function heardIn({ samples, sampleRate }: Sound): HeardBurst[] {
  const heard: HeardBurst[] = [];
  const receiver = createReceiver({ sampleRate, onReception: (one) => heard.push(one) });
  receiver.push(samples);
  receiver.flush();
  return heard;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const tallies = new Map<string, Tally>();
  const ways = Object.entries(waysInSound);
  for (let tried = 0; tried < count; tried += 1) {
    const [way, spoil] = ways[tried % ways.length] as (typeof ways)[number];
    const sound = spoil(randomFrom(seed * 1_000_003 + tried));
    const tally = tallies.get(way) ?? emptyTally();
    tallies.set(way, tally);
    tally.tries += 1;
    notes.count('tries');
    const heard = heardIn(sound);
    if (heard.length === 0) tally.nothing += 1;
    for (const { reception } of heard) {
      if (!score(tally, reception, sound.sent)) continue;
      notes.broken(
        `clean is wrong (${way})`,
        show({ seed, tried, read: reception.information, sent: sound.sent }),
      );
    }
  }
  for (const [way, tally] of tallies) {
    if (tooOftenWrong(tally)) {
      notes.broken(`repaired is wrong too often (${way})`, `${tally.repairedWrong} of ${tally.repaired}`);
    }
  }
  return notes.outcome(summary(tallies));
};
