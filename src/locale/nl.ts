/**
 * The texts of the library in Dutch, for `translate` of `seahail/locale`. Safety wording needs a second reader, a radio
 * operator who speaks the language, before anyone relies on it.
 *
 * @packageDocumentation
 */
import type { Catalogue } from './catalogue.ts';
import { audio } from './nl/audio.ts';
import { bridge } from './nl/bridge.ts';
import { burst } from './nl/burst.ts';
import { call } from './nl/call.ts';
import { channel } from './nl/channel.ts';
import { channelPlans } from './nl/channel-plans.ts';
import { directory } from './nl/directory.ts';
import { identity } from './nl/identity.ts';
import { network } from './nl/network.ts';
import { position } from './nl/position.ts';
import { result } from './nl/result.ts';
import { sentence } from './nl/sentence.ts';
import { speech } from './nl/speech.ts';
import { station } from './nl/station.ts';

/** Dutch. */
export const dutch: Catalogue = {
  lang: 'nl',
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
