import type { Reading } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import type { AssembledAis, GivenUp } from '../ais/assembly.ts';
import { decodeAis } from '../ais/decode.ts';
import type { Place } from './plain-reading.ts';

/** What the reader knows of one sentence of an AIS message. */
export interface AboutPart {
  readonly place: Place;
  readonly notices: readonly Notice[];
}

/** What a whole message says; when it says nothing that is read, its sentences as they are. */
export function aisReadings({ payload, channel, parts }: AssembledAis<AboutPart>): Reading[] {
  const { report, notices } = decodeAis(payload);
  if (report === null) {
    return parts.map(({ sentence, about }) => ({
      kind: 'other',
      ...about.place,
      notices: [...about.notices, ...notices],
      sources: [sentence],
    }));
  }
  const [first] = parts;
  return [
    {
      kind: 'ais',
      ...first.about.place,
      notices:
        parts.length === 1
          ? [...first.about.notices, ...notices]
          : [...parts.flatMap(({ about }) => about.notices), ...notices],
      own: first.sentence.formatter === 'VDO',
      channel,
      report,
      sources: parts.map(({ sentence }) => sentence),
    },
  ];
}

/** A sentence of a message that came to nothing. */
export function lostAis({ sentence, about, notice }: GivenUp<AboutPart>): Reading {
  return { kind: 'other', ...about.place, notices: [...about.notices, notice], sources: [sentence] };
}
