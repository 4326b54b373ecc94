import type { Call } from '../../call/index.ts';
import { isMooredVesselAlarm } from '../../call/internal.ts';
import { formatReportedPosition } from '../../position/internal.ts';

/** What a call is, in a few words, for log lines and messages: `individual call from 232999871 to 232999142, channel 72`. */
export function briefly(call: Call): string {
  const from = call.from === null ? '' : ` from ${call.from}`;
  if (isMooredVesselAlarm(call)) return `possible automatic alarm of a moored vessel${from}`;
  const name = call.kind.replaceAll('-', ' ');
  return `${name}${from}${addressee(call)}${remainder(call)}`;
}

function addressee(call: Call): string {
  switch (call.to?.kind) {
    case 'station':
    case 'group':
      return call.to.mmsi === null ? '' : ` to ${call.to.mmsi}`;
    case 'area':
      return ' to an area';
    case 'all-ships':
      return ' to all ships';
    default:
      return '';
  }
}

function remainder(call: Call): string {
  const parts: string[] = [];
  if ('distressed' in call && call.distressed !== call.from)
    parts.push(`for ${call.distressed ?? 'an unidentified vessel'}`);
  if ('nature' in call && call.nature !== null) parts.push(call.nature.replaceAll('-', ' '));
  if ('category' in call && call.category !== null && call.category !== 'routine') parts.push(call.category);
  if ('reason' in call && call.reason !== null) parts.push(call.reason.replaceAll('-', ' '));
  if ('channel' in call && call.channel !== null) parts.push(`channel ${call.channel}`);
  if ('position' in call)
    parts.push(call.position === null ? 'no position' : formatReportedPosition(call.position));
  if ('time' in call && call.time !== null) {
    parts.push(`${String(call.time.hour).padStart(2, '0')}${String(call.time.minute).padStart(2, '0')} UTC`);
  }
  return parts.map((part) => `, ${part}`).join('');
}
