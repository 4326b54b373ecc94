// Nothing received is thrown away: decoding then encoding gives the same symbols back (DEVELOPERS.md, rule 5), and every
// call that can be received can be described, checked, answered and spoken about (docs/guide/call.md).
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { decodeCharacters, encodeCharacters } from '../../../src/burst/information.ts';
import {
  answersTo,
  type Call,
  type CallFields,
  checkCall,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../../src/call/index.ts';
import { spokenScript } from '../../../src/speech/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { heardCall } from '../support/histories.ts';
import { strangeCharacters, strangeFields } from '../support/strange.ts';

/** Calls of `npm run attack`. */
export const usual = 60_000;

// A relay to one station asks for its acknowledgement, also of a ship (M.493 table 4.4, from memory).
const distressAnswers = ['distress-acknowledgement', 'distress-relay', 'distress-alert'];

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const attempt = <T>(what: string, how: string, run: () => T): T | undefined => {
    try {
      return run();
    } catch (error) {
      notes.broken(`${what} throws`, `${how}: ${String(error)}`);
      return undefined;
    }
  };
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const { call, fields, how } = received(random);
    notes.count(`received: ${call.kind}`);
    if (fields !== null) {
      const back = attempt('encodeFields', how, () => encodeFields(call));
      if (back !== undefined && !isDeepStrictEqual(back, fields))
        notes.broken('fields are not given back', `${how}: ${show(back)}`);
    }
    attempt('describeCall', how, () => describeCall(call));
    attempt('checkCall', how, () => checkCall(call));
    attempt('spokenScript', how, () => spokenScript(call, { name: 'Merrow', mmsi: '232999871' }));
    for (const own of ['232999871', '002329990']) {
      const lawful = attempt('answersTo', how, () => answersTo(call, { own }));
      if (lawful === undefined) continue;
      if (lawful.answers.length === 0 && lawful.none === null) notes.broken('no answer and no reason', how);
      for (const { call: answer } of lawful.answers) {
        notes.count('answers');
        if (own.startsWith('2') && distressAnswers.includes(answer.kind))
          notes.broken('a ship is offered a distress call as an answer', `${how}: ${show(answer)}`);
        if (answer.from !== own) notes.broken('an answer from another station', `${how}: ${show(answer)}`);
        attempt('encoding an answer', how, () => encodeCharacters(encodeFields(answer)));
      }
    }
  }
  return notes.outcome();
};

function received(random: Random): { call: Call; fields: CallFields | null; how: string } {
  if (random.below(3) === 0) {
    const call = heardCall(random);
    return { call, fields: null, how: show(call) };
  }
  if (random.below(2) === 0) {
    const fields = strangeFields(random);
    return { call: decodeFields(fields).call, fields, how: show(fields) };
  }
  const characters: (number | null)[] = strangeCharacters(random);
  if (random.below(3) === 0) characters[random.below(characters.length)] = null;
  const fields = decodeCharacters(characters);
  const whole = !characters.includes(null);
  if (whole && encodeCharacters(fields).join() !== characters.join()) {
    throw new Error(`characters are not given back: ${characters.join(' ')}`);
  }
  return { call: decodeFields(fields).call, fields: pick(random, [fields]), how: characters.join(' ') };
}
