import type { Call, Category, NatureOfDistress, Reason } from '../../call/index.ts';
import { isMooredVesselAlarm } from '../../call/internal.ts';
import { formatReportedPosition } from '../../position/internal.ts';
import type { CodedText } from '../../result/index.ts';
import { coded } from '../texts.ts';

/** What a call is, in a few words, for log lines and messages: `individual call from 232999871 to 232999142, channel 72`. */
export function briefly(call: Call): CodedText {
  const from = call.from === null ? {} : { from: call.from };
  if (isMooredVesselAlarm(call)) return coded('station-brief-moored', from);
  const whose = { kind: call.kind, ...from, ...addressee(call) };
  return 'position' in call
    ? coded('station-brief-place', { ...whose, ...placeOf(call) })
    : coded('station-brief', { ...whose, ...purposeOf(call) });
}

/** A vessel in distress. */
export function vesselIn(distressed: string | null): string | CodedText {
  return distressed ?? coded('station-unidentified-vessel', {});
}

/** The station that sent a call. */
export function senderOf({ from }: Call): string | CodedText {
  return from ?? coded('station-unknown-station', {});
}

/** The kinds named after whom they are for need no address. */
function addressee({ kind, to }: Call): { readonly to?: string; readonly many?: 'area' | 'all-ships' } {
  if (to === null || to.kind === 'all-stations' || kind === 'area-call' || kind === 'all-ships-call')
    return {};
  if (to.kind === 'area' || to.kind === 'all-ships') return { many: to.kind };
  return to.mmsi === null ? {} : { to: to.mmsi };
}

// A symbol without a name keeps its number.

function purposeOf(call: Call) {
  return {
    ...('category' in call &&
      call.category !== null &&
      call.category !== 'routine' && { category: call.category as Category }),
    ...('reason' in call && call.reason !== null && { reason: call.reason as Reason }),
    ...('channel' in call && call.channel !== null && { channel: call.channel }),
  };
}

function placeOf(call: Extract<Call, { readonly position: unknown }>) {
  const { position, time } = call;
  return {
    ...('distressed' in call && call.distressed !== call.from && { distressed: vesselIn(call.distressed) }),
    ...('nature' in call && call.nature !== null && { nature: call.nature as NatureOfDistress }),
    ...(position === null ? { lack: 'position' as const } : { position: formatReportedPosition(position) }),
    ...(time !== null && { time: twoDigits(time.hour) + twoDigits(time.minute) }),
  };
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
