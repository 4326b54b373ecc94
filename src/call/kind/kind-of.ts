import type { CallKind } from '../call.ts';
import { identityOf } from '../element/identity-symbols.ts';
import type { CallFields } from '../fields.ts';

/**
 * The kind of call that fields mean, by format specifier, first telecommand, end of sequence and
 * whether there is a position. The category counts only as a sign of distress, since older sets send
 * position calls as routine (common practice, no source).
 */
export function kindOf(fields: CallFields): CallKind {
  switch (fields.format) {
    case 112:
      return 'distress-alert';
    case 102:
      return distressKind(fields) ?? 'area-call';
    case 114:
      return distressKind(fields) ?? 'group-call';
    case 116:
      return distressKind(fields) ?? 'all-ships-call';
    case 120:
      return distressKind(fields) ?? individualKind(fields);
    case 123:
      return 'automatic-service-call';
    default:
      return 'unrecognised-call';
  }
}

/** `null` when the call is no distress call. The telecommand decides, as long as some other field speaks of distress. */
function distressKind(fields: CallFields): CallKind | null {
  const bearsShip = fields.distressed !== null || fields.nature !== null;
  if (!bearsShip && fields.category !== 112) return null;
  if (fields.telecommand1 === 112)
    return fields.end === 122 ? 'distress-relay-acknowledgement' : 'distress-relay';
  if (fields.telecommand1 === 110) {
    if (fields.format !== 116) return 'unrecognised-call';
    const ship = identityOf(fields.distressed);
    return ship !== null && ship === identityOf(fields.self)
      ? 'distress-self-cancel'
      : 'distress-acknowledgement';
  }
  return bearsShip ? 'unrecognised-call' : null;
}

function individualKind(fields: CallFields): CallKind {
  const answer = fields.end === 122;
  switch (fields.telecommand1) {
    case 103:
      return answer ? 'polling-acknowledgement' : 'polling-call';
    case 104:
      return 'unable-to-comply';
    case 118:
      return answer ? 'test-acknowledgement' : 'test-call';
    case 121:
      return answer || fields.position !== null ? 'position-reply' : 'position-request';
    default:
      return answer ? 'individual-acknowledgement' : 'individual-call';
  }
}
