import type { Notice } from '../result/index.ts';
import type { Call } from './call.ts';
import { isMooredVesselAlarm } from './element/moored-vessel.ts';
import type { CallFields } from './fields.ts';
import { canonicalFields } from './kind/canonical-fields.ts';
import { interpret } from './kind/interpret.ts';
import { compositionNotices, unrecognisedNotices } from './notice/composition-notices.ts';
import { same } from './same.ts';
import { whole } from './whole-fields.ts';

const mooredVesselNotice: Notice = {
  code: 'call-moored-vessel-alarm',
  message: 'Call: has the form of the automatic alarm of a moored vessel, which does not say which danger',
  at: ['kind'],
  clause: '47 CFR 80.179(e)',
};

/** A call with what a person should be told about how it was composed. */
export interface InterpretedCall {
  readonly call: Call;
  readonly notices: readonly Notice[];
}

/**
 * What the fields of a call mean. Never fails: fields that fit no kind give an `'unrecognised-call'`,
 * symbols outside the tables keep their number as a name, and whatever the call as such does not say
 * stays with it in `asReceived`, so that {@link callToFields} gives back the same fields.
 *
 * The notices name what differs from the tables of ITU-R M.493 and what could not be read.
 *
 * @param received - the fields, each as the symbols received; one that is left out, or of another type, is one that
 * the call does not carry
 * @returns the call, and notices about odd, missing and unknown symbols
 *
 * @example
 * ```ts
 * import { callFromFields, callToFields, composePositionRequest } from 'seahail/call';
 *
 * const fields = callToFields(composePositionRequest({ from: '232999871', to: '232999142' }));
 * const { call, notices } = callFromFields({ ...fields, category: 100 });
 * console.log(call.kind); // position-request
 * console.log(notices[0]?.code); // call-category-unusual
 * ```
 */
export function callFromFields(received: CallFields): InterpretedCall {
  const fields = whole(received);
  const call = interpret(fields);
  if (call.kind === 'unrecognised-call') return { call, notices: unrecognisedNotices(fields) };
  const canonical = canonicalFields(call);
  const exact = same(canonical, fields);
  const read = exact ? call : { ...call, asReceived: fields };
  if (isMooredVesselAlarm(read)) return { call: read, notices: [mooredVesselNotice] };
  return { call: read, notices: compositionNotices(call.kind, fields, exact ? null : canonical) };
}
