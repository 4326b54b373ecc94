import { type Call, describeCall } from 'seahail/call';

/** What the sender of a call must mind, before what everybody must. */
export function cautionsFor(call: Call): ReturnType<typeof describeCall>['cautions'] {
  const { cautions } = describeCall(call, call.from === null ? {} : { own: call.from });
  // The caution of an alert is the sender's already.
  if (call.kind === 'distress-alert' || !call.kind.startsWith('distress-')) return cautions;
  return [
    {
      text: 'Only about grave and imminent danger that is real, by order of the person responsible for the vessel or station, and never as a test',
      clause: 'Radio Regulations Art. 32, from memory; 47 CFR 80.335',
    },
    ...cautions,
  ];
}
