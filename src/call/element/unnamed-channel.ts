import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { receivedNotice } from '../texts.ts';

/** The calls that announce traffic and propose a channel for it. */
export type Announcement = Call<
  'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
>;

/** Whether a call announces traffic. */
export function announces(call: Call): call is Announcement {
  return 'secondTelecommand' in call && call.kind !== 'automatic-service-call';
}

/**
 * What is to be said of a call for speech that proposes no working channel: nothing where the coast station of the two
 * will name it. The automatic alarm of a moored vessel announces no speech.
 */
export function unnamedChannelNotices(call: Call): Notice[] {
  if (!announces(call) || call.channel !== null || call.frequencies !== undefined) return [];
  if (call.firstTelecommand !== 'telephony-simplex' && call.firstTelecommand !== 'telephony-duplex')
    return [];
  const isRoutine = call.category !== 'safety' && call.category !== 'urgency' && call.category !== 'distress';
  if (call.kind === 'individual-call' && isRoutine && isWithCoast(call)) return [];
  return [
    receivedNotice(
      'call-channel-none',
      {},
      { at: ['channel'], clause: 'ITU-R M.541-11 Annex 3, unverified' },
    ),
  ];
}

/** Whether one of the two is ashore: such identities begin with 00 (ITU-R M.585-10 Annex 1). */
function isWithCoast({ from, to }: Announcement): boolean {
  return [from, 'mmsi' in to ? to.mmsi : null].some((mmsi) => mmsi?.startsWith('00'));
}
