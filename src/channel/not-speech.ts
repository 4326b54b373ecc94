import type { Channel } from './channel.ts';

/** Why a service that is not speech is not for talk. */
export const NOT_SPEECH: { readonly [service in Channel['service']]?: string } = {
  dsc: 'it carries digital selective calls only, never speech',
  ais: 'it carries automatic identification data only',
  asm: 'it carries application-specific data messages only',
  vdes: 'it carries data exchange only',
  data: 'it carries data of autonomous devices only',
};

/** Why a channel of coast stations alone is not for talk. */
export const RECEIVE_ONLY: string = 'ships do not transmit on it';

/** Why 75 and 76 are not for talk. */
export const GUARDS_16: string = 'it guards channel 16 and carries navigation-related port traffic only';
