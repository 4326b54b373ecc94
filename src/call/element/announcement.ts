import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { endsOfSequence, symbolOfName } from '../symbol.ts';
import { receivedNotice } from '../texts.ts';

/** The calls that announce traffic and propose a channel for it. */
export type Announcement = Call<
  'all-ships-call' | 'area-call' | 'group-call' | 'individual-call' | 'individual-acknowledgement'
>;

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
  return [receivedNotice('call-channel-none', {}, 'channel', 'ITU-R M.541-11 Annex 3, unverified')];
}

/** Whether one of the two is ashore: such identities begin with 00 (ITU-R M.585-10 Annex 1). */
function isWithCoast({ from, to }: Call<'individual-call'>): boolean {
  return [from, to.mmsi].some((mmsi) => mmsi?.startsWith('00'));
}

/**
 * Whether a call has the form of the automatic alarm of a moored vessel: format 120, category 100, both telecommands
 * and both channel elements without information (126), end of sequence 127. Source: 47 CFR 80.179(e), 2025.
 */
export function isMooredVesselAlarm(call: Call): boolean {
  return (
    call.kind === 'individual-call' &&
    call.category === 'routine' &&
    call.firstTelecommand === null &&
    call.secondTelecommand === null &&
    call.channel === null &&
    call.frequencies === undefined &&
    call.asReceived?.end === symbolOfName(endsOfSequence, 'end-of-sequence')
  );
}

export function mooredVesselNotice(): Notice {
  return receivedNotice('call-moored-vessel-alarm', {}, 'kind', '47 CFR 80.179(e)');
}
