import { type Call, describeCall } from 'seahail/call';

/** Cautions for the sender of a call, before those for everybody. */
export function cautionsFor(call: Call): ReturnType<typeof describeCall>['cautions'] {
  const { cautions } = describeCall(call, call.from === null ? {} : { own: call.from });
  // An alert has the sender's caution already, and nothing argues against cancelling a false one.
  if (call.kind === 'distress-alert' || call.kind === 'distress-self-cancel') return cautions;
  if (!call.kind.startsWith('distress-')) return cautions;
  return [
    {
      code: '',
      params: {},
      text: 'Only about grave and imminent danger that is real, on the authority of the master or the person responsible for the station, never as a test',
      clause: 'RR 2024 Art. 32; 47 CFR 80.335',
    },
    ...cautions,
  ];
}
