import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { endsOfSequence, symbolOfName } from '../symbol.ts';
import { receivedNotice } from '../texts.ts';

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

/** Says so. */
export function mooredVesselNotice(): Notice {
  return receivedNotice('call-moored-vessel-alarm', {}, { at: ['kind'], clause: '47 CFR 80.179(e)' });
}
