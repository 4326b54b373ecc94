/**
 * The texts of the library in German, for `translate` of `seahail/locale`. Safety wording needs a second reader, a radio
 * operator who speaks the language, before anyone relies on it.
 *
 * @packageDocumentation
 */
import type { Catalogue } from './catalogue.ts';
import { audio } from './de/audio.ts';
import { bridge } from './de/bridge.ts';
import { burst } from './de/burst.ts';
import { call } from './de/call.ts';
import { channel } from './de/channel.ts';
import { channelPlans } from './de/channel-plans.ts';
import { directory } from './de/directory.ts';
import { identity } from './de/identity.ts';
import { network } from './de/network.ts';
import { position } from './de/position.ts';
import { result } from './de/result.ts';
import { sentence } from './de/sentence.ts';
import { speech } from './de/speech.ts';
import { station } from './de/station.ts';

/** German. */
export const german: Catalogue = {
  lang: 'de',
  translated: {
    by: 'the authors, none of whom is a radio operator in this language',
    on: '2026-11-28',
    note: 'safety wording needs a second reader, a radio operator who speaks the language, before it is relied on',
  },
  texts: {
    ...result,
    ...identity,
    ...directory,
    ...channel,
    ...channelPlans,
    ...position,
    ...call,
    ...speech,
    ...sentence,
    ...network,
    ...station,
    ...burst,
    ...audio,
    ...bridge,
  },
};
