import { type Call, callToFields } from '../call/index.ts';
import type { Direction } from '../report/index.ts';
import { requireOneOf } from './arguments.ts';
import { dseFields } from './dsc/dse.ts';
import { DIRECTIONS } from './dsc/station-field.ts';
import { dscFields } from './dsc/write-dsc.ts';
import { formatSentence } from './frame/format.ts';
import type { TalkerOption } from './point/waypoint.ts';

/** How a call is written. */
export interface WriteOptions extends TalkerOption {
  /**
   * `'received'`: as the radio reports it to a display, field 2 is the caller. `'commanded'`: as a display
   * orders it from a radio, field 2 is the called station.
   */
  readonly direction: Direction;
}

/**
 * Writes a call as its `DSC` sentence and, when it carries more than fits, its `DSE` sentences.
 *
 * A commanded sentence can make a radio transmit. It must be sent only by, or on the word of, a person who
 * may operate that radio, and never for a distress alert or a test of one.
 *
 * A sentence has no place for everything: a received one leaves out the called station (an area excepted,
 * which takes the caller's place), a commanded one the caller.
 *
 * @param call - the call
 * @param options - direction and talker
 * @returns the sentences in order, each without its line end; put CR LF behind each on the wire
 * @throws RangeError when the direction is none, a value of the call has no symbols, or a sentence would be too long
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
 * console.log(writeSentences(call, { direction: 'commanded' })[0]); // $CDDSC,20,2329991420,08,21,26,,,,,R,*2D
 * ```
 */
export function writeSentences(call: Call, { direction, talker = 'CD' }: WriteOptions): string[] {
  requireOneOf('direction', direction, DIRECTIONS);
  const fields = callToFields(call);
  const dsc = dscFields(fields, direction);
  const sentences = [formatSentence({ talker, formatter: 'DSC', fields: dsc })];
  for (const dse of dseFields(dsc[1] ?? '', fields.expansion)) {
    sentences.push(formatSentence({ talker, formatter: 'DSE', fields: dse }));
  }
  return sentences;
}
