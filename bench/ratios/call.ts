import { encodeCall } from 'seahail/burst';
import { checkCall, composeIndividualCall, decodeFields, describeCall, encodeFields } from 'seahail/call';
import { type Figure, ratioOf } from './ratio.ts';

/** Routine call of the invented scenario, and the same as an older set sends it, with its second element open. */
const composed = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
const fields = encodeFields(composed);
const received = decodeFields({ ...fields, transmit: [126, 126, 126] }).call;

/** What is done with a call as received, beside the same with one that was composed. */
export function callFigures(): Figure[] {
  const work = {
    described: (call: typeof received) => describeCall(call).rows.length,
    checked: (call: typeof received) => checkCall(call).length,
    encoded: (call: typeof received) => encodeCall(call).bits.length,
  };
  return Object.entries(work).map(([word, of]) => ({
    what: `a call as received ${word}`,
    beside: 'the same call composed',
    ratio: ratioOf({ subject: () => of(received), yardstick: () => of(composed) }),
    goal: 2,
  }));
}
