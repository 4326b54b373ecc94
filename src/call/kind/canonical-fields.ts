import type { Call } from '../call.ts';
import type { CallFields } from '../fields.ts';
import { announcementFields } from './announcement.ts';
import { automaticServiceFields } from './automatic-service.ts';
import { distressFields } from './distress.ts';
import { enquiryFields } from './enquiry.ts';
import { positionReplyFields } from './position-reply.ts';
import { unableToComplyFields } from './unable-to-comply.ts';

/**
 * The fields that the tables give a call, whatever was received.
 *
 * @throws TypeError, RangeError when a value has no symbols, such as an identity of eight digits
 */
export function canonicalFields(call: Call): CallFields {
  switch (call.kind) {
    case 'distress-alert':
    case 'distress-acknowledgement':
    case 'distress-self-cancel':
    case 'distress-relay':
    case 'distress-relay-acknowledgement':
      return distressFields(call);
    case 'all-ships-call':
    case 'area-call':
    case 'group-call':
    case 'individual-call':
    case 'individual-acknowledgement':
      return announcementFields(call);
    case 'unable-to-comply':
      return unableToComplyFields(call);
    case 'position-request':
    case 'test-call':
    case 'test-acknowledgement':
    case 'polling-call':
    case 'polling-acknowledgement':
      return enquiryFields(call);
    case 'position-reply':
      return positionReplyFields(call);
    case 'automatic-service-call':
      return automaticServiceFields(call);
    case 'unrecognised-call':
      return call.asReceived;
  }
}
