import type { Sentence } from '../../report/index.ts';
import type { Notice } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { issue } from '../texts.ts';
import { groupsOf, type Payload } from './payload.ts';

/** One sentence of a message, with whatever the reader knows about it. */
export interface AisPart<About> {
  readonly sentence: Sentence;
  readonly about: About;
}

export interface AssembledAis<About> {
  readonly payload: Payload;
  readonly channel: 'A' | 'B' | null;
  readonly parts: readonly [AisPart<About>, ...AisPart<About>[]];
}

/** A sentence that came to nothing, and why. */
export interface GivenUp<About> extends AisPart<About> {
  readonly notice: Notice;
}

/** What came of a sentence: the message it completes, if any, and the sentences that are given up. */
export interface Added<About> {
  readonly whole: AssembledAis<About> | null;
  readonly givenUp: readonly GivenUp<About>[];
}

/** Puts the sentences of AIS messages together, holding only a few unfinished messages. */
export interface AisAssembly<About> {
  /** Takes one `VDM` or `VDO` sentence. */
  add(part: AisPart<About>): Added<About>;
  /** Gives up all that is unfinished. */
  end(): readonly GivenUp<About>[];
}

interface Unfinished<About> {
  readonly parts: AisPart<About>[];
  /** Count of AIS sentences when its last part came. */
  last: number;
}

/** Two channels with ten sequence numbers each are the most that one talker can have under way. */
const MOST_UNFINISHED = 20;
/** AIS sentences that may come between two parts: before ten sequence numbers are used up and begin again. */
const MOST_BETWEEN = 20;
/** Armoured bits, and how many of them were added at the end. */
const PAYLOAD = /^([0-W`-w]+),([0-5])$/;
const CLAUSE = 'IEC 61162-1, VDM and VDO sentences';

/** An assembly at its beginning. Parts are joined in order only: a message has no check of its own left. */
export function createAisAssembly<About>(): AisAssembly<About> {
  const unfinished = new Map<string, Unfinished<About>>();
  let seen = 0;

  function giveUp(key: string): GivenUp<About>[] {
    const parts = unfinished.get(key)?.parts ?? [];
    unfinished.delete(key);
    return parts.map((part) => lost(part, 'sentence-ais-incomplete'));
  }

  return {
    add(part) {
      seen += 1;
      const { talker, formatter, fields } = part.sentence;
      const [total = '', number = '', sequence, channel] = fields;
      if (!/^[1-9],[1-9]$/.test(`${total},${number}`) || number > total) {
        return { whole: null, givenUp: [lost(part, 'sentence-ais-count')] };
      }
      if (total === '1') return joined([part]);
      const key = [talker, formatter, total, sequence, channel].join();
      const begun = unfinished.get(key);
      const fits =
        begun !== undefined && begun.parts.length === Number(number) - 1 && seen - begun.last <= MOST_BETWEEN;
      if (fits) {
        begun.parts.push(part);
        begun.last = seen;
        if (begun.parts.length < Number(total)) return { whole: null, givenUp: [] };
        unfinished.delete(key);
        const [first, ...others] = begun.parts;
        return joined([first ?? part, ...others]);
      }
      const givenUp = giveUp(key);
      if (number !== '1')
        return { whole: null, givenUp: [...givenUp, lost(part, 'sentence-ais-incomplete')] };
      unfinished.set(key, { parts: [part], last: seen });
      return {
        whole: null,
        givenUp: [...givenUp, ...[...unfinished.keys()].slice(0, -MOST_UNFINISHED).flatMap(giveUp)],
      };
    },

    end() {
      return [...unfinished.keys()].flatMap(giveUp);
    },
  };
}

function joined<About>(parts: AssembledAis<About>['parts']): Added<About> {
  const groups: number[] = [];
  let fill = 0;
  for (const { sentence } of parts) {
    const found = PAYLOAD.exec(sentence.fields.slice(4, 6).join());
    if (found === null) {
      const notice = noticeOf('sentence-ais-payload', sentence);
      return { whole: null, givenUp: parts.map((part) => ({ ...part, notice })) };
    }
    groups.push(...groupsOf(found[1] as string));
    fill = Number(found[2]);
  }
  const channel = channelOf(parts[0].sentence.fields[3]);
  return { whole: { payload: { groups, length: groups.length * 6 - fill }, channel, parts }, givenUp: [] };
}

/** Some receivers number the channels 1 and 2 (common practice, no source). */
function channelOf(field: string | undefined): 'A' | 'B' | null {
  if (field === 'A' || field === '1') return 'A';
  return field === 'B' || field === '2' ? 'B' : null;
}

type LossCode = 'sentence-ais-count' | 'sentence-ais-payload' | 'sentence-ais-incomplete';

function lost<About>(part: AisPart<About>, code: LossCode): GivenUp<About> {
  return { ...part, notice: noticeOf(code, part.sentence) };
}

function noticeOf(code: LossCode, { raw }: Sentence): Notice {
  return issue(code, {}, { at: ['AIS'], received: quote(raw), clause: CLAUSE });
}
