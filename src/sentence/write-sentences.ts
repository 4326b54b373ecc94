import { type Call, type CallFields, decodeFields, encodeFields, isDistressCall } from '../call/index.ts';
import type { Notice } from '../result/index.ts';
import { want } from '../result/internal.ts';
import { requireOneOf } from './arguments.ts';
import { dseFields } from './dsc/dse.ts';
import { DIRECTIONS, readDsc } from './dsc/read-dsc.ts';
import { dscFields, uncarriedNotices } from './dsc/write-dsc.ts';
import { formatSentence } from './frame/format.ts';
import { lossNotice } from './texts.ts';

const CLAUSE = 'IEC 61162-1, DSC sentence';

/**
 * Writes a call as its `DSC` sentence and, when it carries more than fits, its `DSE` sentences.
 *
 * A sentence has no place for everything: a received one leaves out the called station (an area excepted,
 * which takes the caller's place), a commanded one the caller. Whatever else of a received call has no code in a
 * sentence, such as symbols 0 to 27, leaves its field empty and gives a notice: a code of two digits would turn it into
 * another call. A commanded call with such content is refused.
 *
 * **Caution.** A commanded sentence can make a radio transmit. Send one only on the decision of a person who may
 * operate that radio. A false distress alert starts a search, and sending one on purpose is an offence in most
 * countries: distress calls are refused unless `allowDistress` is set. To try a radio, command a test call
 * (`composeTestCall` in `seahail/call`) and follow the rules of the administration.
 *
 * @param call - the call
 * @param options - direction and talker
 * @returns the sentences, and a notice for whatever they do not carry
 * @throws TypeError, RangeError when the direction or talker is none, a value of the call has no symbols, a
 * commanded call has content that no sentence carries, or a distress call is commanded without `allowDistress`
 *
 * Source: IEC 61162-1, `DSC` and `DSE` sentences, as restated in equipment papers.
 *
 * @see {@link readSentences}
 * @see {@link writeWaypoint}
 *
 * @example
 * ```ts
 * import { composePositionRequest } from 'seahail/call';
 * import { writeSentences } from 'seahail/sentence';
 *
 * const call = composePositionRequest({ from: '232999871', to: '232999142' });
 * console.log(writeSentences(call, { direction: 'commanded' }).sentences[0]); // $CDDSC,20,2329991420,08,21,26,,,,,R,*2D
 * ```
 */
export function writeSentences(
  call: Call,
  options: {
    /** Two capitals or digits; `'CD'` (DSC equipment) unless given. */
    readonly talker?: string | undefined;
    /**
     * `'received'`: as the radio reports it to a display, field 2 is the caller. `'commanded'`: as a display
     * orders it from a radio, field 2 is the called station.
     */
    readonly direction: 'received' | 'commanded';
    /**
     * Must be `true` to command a distress call of any kind. By setting it you confirm that the sentence goes to a test
     * bench, a recording or a closed training circuit, or that the person in command has decided to send this very
     * call. A false distress alert starts a search.
     */
    readonly allowDistress?: boolean | undefined;
  },
): {
  /** In order, each without its line end; put CR LF after each on the wire. */
  readonly sentences: readonly string[];
  /** Fields of the call that the sentences do not carry. */
  readonly notices: readonly Notice[];
} {
  want('writeSentences', 'options with direction', options);
  const { direction, talker = 'CD', allowDistress = false } = options;
  requireOneOf('direction', direction, DIRECTIONS);
  const fields = encodeFields(call);
  const texts = dscFields(fields, direction);
  const { sentences: expansions, left } = dseFields(texts[1], fields.expansion);
  if (expansions.length > 0) texts[10] = 'E';

  const read = readDsc(texts, { direction, own: fields.self }).fields;
  const kind = decodeFields(read).call.kind;
  const notices = [
    ...uncarriedNotices(
      fields,
      read,
      direction === 'commanded' || fields.format === 102 ? 'self' : 'address',
    ),
    ...left.map(({ specifier, symbols }) =>
      lossNotice(
        'sentence-expansion-lost',
        { specifier, count: symbols.length },
        { at: ['DSC'], received: String(specifier), clause: CLAUSE },
      ),
    ),
    ...(kind === call.kind ? [] : [kindNotice(call.kind, kind)]),
  ];
  if (direction === 'commanded') {
    if (allowDistress !== true && (isAboutDistress(fields) || isDistressCall({ kind }))) refuseDistress();
    if (notices[0] !== undefined) throw new RangeError(`writeSentences: ${notices[0].message}`);
  }
  return {
    sentences: [
      formatSentence({ talker, formatter: 'DSC', fields: texts }),
      ...expansions.map((each) => formatSentence({ talker, formatter: 'DSE', fields: each })),
    ],
    notices,
  };
}

/** Whether a radio could take the call for one of distress, by any of its fields. */
function isAboutDistress({ format, category, distressed, nature }: CallFields): boolean {
  return format === 112 || category === 112 || distressed !== null || nature !== null;
}

function refuseDistress(): never {
  throw new RangeError(
    'writeSentences: this sentence orders a radio to send a distress call: pass allowDistress: true only for a sentence that never reaches a transmitter, or when the person in command has decided to send it; to try a radio, command a test call',
  );
}

function kindNotice(written: Call['kind'], read: Call['kind']): Notice {
  return lossNotice('sentence-kind-lost', { written }, { at: ['DSC'], received: read, clause: CLAUSE });
}
