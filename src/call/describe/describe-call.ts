import type { ChannelPlan } from '../../channel/index.ts';
import { want } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { channelName } from '../element/channel-symbols.ts';
import { type StationNames, stationNamed } from '../station-names.ts';
import { describing } from '../texts.ts';
import { cautionsOf } from './cautions.ts';
import { type CallDescription, fieldRows } from './field-rows.ts';
import { type NameOf, sentenceOf } from './sentence.ts';

/**
 * A call for people: one sentence, every field with its symbols, and the cautions that belong to it.
 *
 * @param call - any call
 * @param options - names of stations, own identity, plan of the waters
 * @returns the description in English, with the data for `translate` of `seahail/locale`
 * @throws TypeError without a call; RangeError when the call holds a value without symbols
 *
 * @see {@link answersTo}
 * @see {@link checkCall}
 *
 * @example
 * ```ts
 * import { composeDistressAlert, describeCall } from 'seahail/call';
 *
 * const alert = composeDistressAlert({ from: '232999218', nature: 'flooding', time: { hour: 14, minute: 32 } });
 * const names = new Map([['232999218', 'Bounty of Lorn']]);
 * const { sentence, rows } = describeCall(alert, { directory: (mmsi) => names.get(mmsi) });
 * console.log(sentence); // Distress alert from Bounty of Lorn (232999218): flooding, position not known, 14:32 UTC
 * console.log(rows[1]?.label, rows[1]?.symbols); // Self-identification [ 23, 29, 99, 21, 80 ]
 * ```
 */
export function describeCall(
  call: Call,
  options: {
    /** Names of stations: a directory, or a function such as `(mmsi) => stationOf(directory, mmsi)`. */
    readonly directory?: StationNames | undefined;
    /** Own identity, shown as "this station". */
    readonly own?: string | undefined;
    /** Own coast station is designated to acknowledge distress by DSC, for the cautions; not unless stated. */
    readonly designated?: boolean | undefined;
    /** The plan of the waters: channels are then called by its names, `'22A'` for the 1022 of a call in Canada. */
    readonly plan?: ChannelPlan | undefined;
  } = {},
): CallDescription {
  want('describeCall', 'a call', call, 'kind');
  const nameOf: NameOf = (mmsi) => {
    if (mmsi === null) return describing('call-unnamed-station', {});
    if (mmsi === options.own) return describing('call-own-station', {});
    const name = stationNamed(options.directory, mmsi)?.name;
    return name == null ? mmsi : `${name} (${mmsi})`;
  };
  const channelOf = (channel: string): string => channelName(channel, options.plan);
  const sentenceText = sentenceOf(call, nameOf, channelOf);
  return {
    sentence: sentenceText.message,
    sentenceText,
    rows: fieldRows(call, nameOf, channelOf),
    cautions: cautionsOf(call, options),
  };
}
