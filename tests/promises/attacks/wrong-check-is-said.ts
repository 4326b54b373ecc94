// A call whose error check is wrong as sent is never acted on: it is shown as received, and says which check was received
// and which the characters would need (docs/guide/burst.md, `ErrorCheck`).
import { isDeepStrictEqual } from 'node:util';
import { randomFrom } from '../../../bench/receiver/random.ts';
import { decodeBits, decodeSoft, decodeStream } from '../../../src/burst/index.ts';
import { bitsOf, check, stream } from '../support/air.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { callOf, kinds, pick } from '../support/calls.ts';

/** Calls of `npm run attack`. */
export const usual = 4000;

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const call = callOf(random, kinds[tried % kinds.length]);
    const characters = [...call.characters];
    const right = check(characters);
    let wrongCheck = right;
    // Either the check is wrong, or a character that both copies have alike: format specifier and end left out.
    if (random.below(2) === 0) wrongCheck = right ^ (1 + random.below(127));
    else {
      const at = 2 + random.below(characters.length - 3);
      characters[at] = pick(
        random,
        Array.from({ length: 100 }, (_, symbol) => symbol).filter((symbol) => symbol !== characters[at]),
      );
    }
    const sent = { ...call, characters, wrongCheck };
    const bits = bitsOf(sent, random.below(2));
    const ways = {
      decodeBits: () => decodeBits(bits),
      decodeSoft: () => decodeSoft(Float64Array.from(bits, (bit) => (bit === 1 ? 6 : -6))),
      decodeStream: () => decodeStream(stream(sent)),
    };
    const name = pick(random, Object.keys(ways) as (keyof typeof ways)[]);
    const result = ways[name]();
    const how = show({ seed, tried, name, kind: call.kind, characters, wrongCheck });
    notes.count(name);
    if (!result.ok) {
      notes.broken('no call', how);
      continue;
    }
    const { information, quality } = result.value;
    const expected = { kind: 'wrong', received: wrongCheck, computed: check(characters) };
    const said = `${how}: ${show(quality.errorCheck)} ${quality.verdict}`;
    if (quality.verdict !== 'doubtful') notes.broken('a verdict to act on', said);
    if (!isDeepStrictEqual(quality.errorCheck, expected)) notes.broken('not both values', said);
    if (!isDeepStrictEqual([...information], characters)) notes.broken('not shown as received', said);
    const notice = result.notices.find(({ code }) => code === 'burst-check-wrong');
    if (notice?.received !== String(expected.received) || notice.expected !== String(expected.computed))
      notes.broken('no notice with both values', said);
  }
  return notes.outcome();
};
