// Streams may be cut anywhere (docs/guide/sentence.md, docs/guide/audio.md): what is read does not depend on the cuts, as
// text or as bytes. A filter in the wire passes everything on byte for byte (docs/recipe/plotter.md). Every character
// that came is in some reading (nothing received is thrown away), and the memory of a reader does not grow.
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { createReceiver, type HeardBurst } from '../../../src/audio/index.ts';
import { createSentenceReader, createSentenceRepairer } from '../../../src/sentence/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { waysInSound } from '../support/spoil-sound.ts';

/** Streams of `npm run attack`. */
export const usual = 5000;

const lines = [
  '$CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E*73',
  '$CDDSE,1,1,A,2329991420,00,50005000*19',
  '$CDDSC,12,2329992180,,05,00,1561800627,1405,,,S,*23',
  '$CDDSC,20,2329991420,00,00,26,900072,,,,R,*2A',
  '!AIVDM,1,1,,B,H3N=8qQ@E8r0tJ058@hD0000000,0*15',
  '\\s:a,c:1*4A\\$GPZDA,140400,01,06,2026,00,00*4F',
  '$CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E*00',
  '$GPRMC,140400,A,5622.0,N,00624.0,W,5.0,090.0,010626,,*0A',
  '$',
  '\\',
  '',
  'noise \u00e9\u00ff',
  '$CDDSC',
];

/** A few kilobytes of sentences, damage and line ends of every kind. */
function wire(random: Random): string {
  let text = '';
  for (let count = 1 + random.below(30); count > 0; count -= 1) {
    let line = pick(random, lines);
    if (random.below(4) === 0) {
      const at = random.below(line.length + 1);
      line =
        line.slice(0, at) +
        pick(random, ['', ' ', ',', '$', '*', '\u0000', '9']) +
        line.slice(at + random.below(3));
    }
    text += line + pick(random, ['\r\n', '\r\n', '\n', '\r', '\n\r', '']);
  }
  return text;
}

function pieces<T extends { length: number; slice: (from: number, to: number) => T }>(
  random: Random,
  whole: T,
): T[] {
  const cut: T[] = [];
  for (let at = 0; at < whole.length; ) {
    const next = at + pick(random, [0, 1, 1, 2, 7, 40, 1000]);
    cut.push(whole.slice(at, next));
    at = next;
  }
  return cut;
}

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (one) => one.charCodeAt(0) & 0xff);

/** A call is given out at once and again when it is final: how often in between depends on the cuts, what remains does not. */
const lasting = (readings: readonly { kind: string; stage?: string }[]) =>
  readings.filter(({ kind, stage }) => kind !== 'call' || stage === 'final');

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const ways = Object.values(waysInSound);
  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const text = wire(random);
    const read = (chunks: readonly (string | Uint8Array)[]) => {
      const reader = createSentenceReader({ own: '232999871' });
      return lasting([...chunks.flatMap((one) => reader.push(one, 1000)), ...reader.flush()]);
    };
    const whole = read([text]);
    for (const [name, cut] of [
      ['text', read(pieces(random, text))],
      ['bytes', read(pieces(random, bytesOf(text)))],
    ] as const) {
      notes.count('streams');
      if (!isDeepStrictEqual(cut, whole))
        notes.broken(
          `sentences depend on the cuts (${name})`,
          `${show(text)}: ${show(whole)} against ${show(cut)}`,
        );
    }

    const pass = (options: object, chunks: readonly (string | Uint8Array)[]): string => {
      const repairer = createSentenceRepairer(options);
      return [...chunks.map((one) => repairer.push(one).output), repairer.flush().output].join('');
    };
    if (pass({ repair: [] }, pieces(random, text)) !== text)
      notes.broken('a filter that repairs nothing changes something', show(text));
    const repair = {
      repair: ['blank-damage', 'identity-nine-digits', 'checksum-lower-case', 'fields-missing'],
    };
    if (pass(repair, [text]) !== pass(repair, pieces(random, text)))
      notes.broken('repairing depends on the cuts', show(text));

    if (tried % 40 !== 0) continue;
    const { samples, sampleRate } = pick(random, ways)(random);
    const hear = (chunks: readonly Float64Array[]): HeardBurst[] => {
      const heard: HeardBurst[] = [];
      const receiver = createReceiver({ sampleRate, onReception: (one) => heard.push(one) });
      for (const chunk of chunks) receiver.push(chunk);
      receiver.flush();
      return heard;
    };
    const chunks: Float64Array[] = [];
    for (let at = 0; at < samples.length; ) {
      const next = at + 1 + random.below(4000);
      chunks.push(samples.slice(at, next));
      at = next;
    }
    notes.count('sounds');
    if (!isDeepStrictEqual(hear(chunks), hear([samples])))
      notes.broken('sound depends on the cuts', `seed ${seed}, try ${tried}`);
  }
  return notes.outcome();
};
