/**
 * The texts of the library in French, for `translate` of `seahail/locale`. Safety wording needs a second reader, a radio
 * operator who speaks the language, before anyone relies on it.
 *
 * @packageDocumentation
 */
import type { Catalogue } from './catalogue.ts';
import { audio } from './fr/audio.ts';
import { bridge } from './fr/bridge.ts';
import { burst } from './fr/burst.ts';
import { call } from './fr/call.ts';
import { channel } from './fr/channel.ts';
import { channelPlans } from './fr/channel-plans.ts';
import { directory } from './fr/directory.ts';
import { identity } from './fr/identity.ts';
import { network } from './fr/network.ts';
import { position } from './fr/position.ts';
import { result } from './fr/result.ts';
import { sentence } from './fr/sentence.ts';
import { speech } from './fr/speech.ts';
import { station } from './fr/station.ts';

/** French. */
export const french: Catalogue = {
  lang: 'fr',
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
