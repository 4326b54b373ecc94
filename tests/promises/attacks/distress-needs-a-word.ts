// `modulate` refuses distress bursts without an explicit word (docs/guide/audio.md), and asks the same question as the
// receiver: what `decodeBits` reads as distress, however the bits are spoilt, is refused.
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { modulate } from '../../../src/audio/index.ts';
import { decodeBits } from '../../../src/burst/index.ts';
import { bitsOf } from '../support/air.ts';
import { type Attack, notebook } from '../support/attack.ts';
import { callOf, kinds, pick } from '../support/calls.ts';

/** Bursts of `npm run attack`. */
export const usual = 4000;

const distress = kinds.filter((kind) => kind.startsWith('distress-'));

/** Distress in bits that a guard may not recognise. */
function disguised(random: Random): { readonly bits: string; readonly how: string } {
  const call = callOf(random, pick(random, distress));
  const bits = [...bitsOf(call, random.below(2))];
  const flip = (at: number): void => {
    bits[at] = 1 - (bits[at] as number);
  };
  const way = pick(random, [
    'as sent',
    'a bit in each DX phasing word',
    'a bit in each word',
    'no dots',
    'no phasing to speak of',
    'inverted',
    'behind another call',
    'behind noise',
    'errors',
  ]);
  if (way === 'a bit in each DX phasing word')
    for (let word = 0; word < 12; word += 2) flip(20 + 10 * word + random.below(10));
  if (way === 'a bit in each word') for (let at = 20; at < bits.length; at += 20) flip(at + random.below(10));
  if (way === 'no dots') bits.splice(0, 20);
  if (way === 'no phasing to speak of') bits.splice(0, 20 + 10 * random.below(12));
  if (way === 'inverted') for (let at = 0; at < bits.length; at += 1) flip(at);
  if (way === 'behind another call') bits.unshift(...bitsOf(callOf(random, 'test-call')));
  if (way === 'behind noise')
    bits.unshift(...Array.from({ length: random.below(900) }, () => random.below(2)));
  if (way === 'errors') for (let errors = 0; errors < 25; errors += 1) flip(random.below(bits.length));
  return { bits: bits.join(''), how: `${way}, ${call.kind}` };
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const { bits, how } = disguised(random);
    notes.count('bursts');
    try {
      modulate(bits, { sampleRate: 8000 });
    } catch (error) {
      if (!(error instanceof RangeError)) notes.broken('another error', `${how}: ${String(error)}`);
      notes.count('refused');
      continue;
    }
    for (let from = 0; from < bits.length; ) {
      const result = decodeBits(bits, { from });
      if (!result.ok) break;
      const { call, quality } = result.value;
      if (call.kind.startsWith('distress-') && quality.verdict !== 'doubtful') {
        notes.broken(`distress is made into sound (${quality.verdict})`, `${how}: ${bits}`);
      }
      from = Math.max(from + 1, quality.end);
    }
  }
  // Whoever gives the word may make it.
  modulate([...bitsOf(callOf(randomFrom(seed), 'distress-alert'))].join(''), {
    sampleRate: 8000,
    allowDistress: true,
  });
  // And other calls need none.
  for (const kind of kinds.filter((one) => !distress.includes(one))) {
    modulate([...bitsOf(callOf(randomFrom(seed), kind))].join(''), { sampleRate: 8000 });
    notes.count('other calls made');
  }
  return notes.outcome();
};
