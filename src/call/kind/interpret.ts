import type { Call } from '../call.ts';
import { addressOf } from '../element/address-symbols.ts';
import type { CallFields } from '../fields.ts';
import { readAnnouncement } from './announcement.ts';
import { readAutomaticService } from './automatic-service.ts';
import { readDistress } from './distress.ts';
import { readEnquiry } from './enquiry.ts';
import { kindOf } from './kind-of.ts';
import { readPositionReply } from './position-reply.ts';
import { readSender } from './sender.ts';
import { readUnableToComply } from './unable-to-comply.ts';

/** What fields mean, without what was received beside it. */
export function interpret(fields: CallFields): Call {
  const kind = kindOf(fields);
  switch (kind) {
    case 'distress-alert':
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
      return readDistress(kind, fields);
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
    case 'individual-acknowledgement':
      return readAnnouncement(kind, fields);
    case 'unable-to-comply':
      return readUnableToComply(fields);
    case 'position-request':
    case 'test-call':
    case 'test-acknowledgement':
    case 'polling-call':
    case 'polling-acknowledgement':
      return readEnquiry(kind, fields);
    case 'position-reply':
      return readPositionReply(fields);
    case 'automatic-service-call':
      return readAutomaticService(fields);
    case 'unrecognised-call':
      return { kind, to: addressOf(fields), ...readSender(fields), asReceived: fields };
  }
}
