import { createSentenceReader } from 'seahail/sentence';
import { inventedLog, type Mix } from '../sentence/log.ts';
import { type Figure, ratioOf } from './ratio.ts';

const SENTENCES = 5000;
/** Characters handed over at once, as a serial port would. */
const CHUNK = 4096;
const KINDS: readonly (readonly [mix: Mix, words: string, goal: number])[] = [
  ['watch', "a plotter's port, a call now and then", 6],
  ['pairs', 'calls with their expansions and nothing else', 15],
];

export function sentenceFigures(): Figure[] {
  return KINDS.map(([mix, words, goal]) => {
    const text = inventedLog(SENTENCES, mix);
    return {
      what: `sentences read and paired: ${words}`,
      beside: 'splitting at line ends and commas',
      ratio: ratioOf({ subject: () => read(text), yardstick: () => split(text) }),
      goal,
    };
  });
}

function read(text: string): number {
  const reader = createSentenceReader({ own: '232999871' });
  let readings = 0;
  for (let from = 0; from < text.length; from += CHUNK) {
    readings += reader.push(text.slice(from, from + CHUNK)).length;
  }
  return readings + reader.flush().length;
}

function split(text: string): number {
  let fields = 0;
  for (const line of text.split('\r\n')) fields += line.split(',').length;
  return fields;
}
