import {
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
} from '../../src/call/index.ts';

// Stations and places are the invented ones of the demo.
const from = '232999871';
const to = '232999142';
const coast = '002329990';
const place = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 14, minute: 32 };
const area = {
  kind: 'geographic-area',
  north: { hemisphere: 'N', degrees: 57 },
  west: { hemisphere: 'W', degrees: 7 },
  southward: 2,
  eastward: 3,
} as const;
const alert = composeDistressAlert({ from, nature: 'sinking', position: place, time });
const relay = composeDistressRelay({ from: to, to: coast, about: alert });
const hail = composeIndividualCall({ from, to, channel: '72' });
const request = composePositionRequest({ from, to });
const test = composeTestCall({ from, to: coast });
const polling = composePollingCall({ from, to });

const calls: readonly Call[] = [
  alert,
  composeDistressAcknowledgement({ from: coast, about: alert }),
  composeDistressSelfCancel({ from, about: alert }),
  relay,
  composeDistressRelay({ from: coast, about: alert }),
  composeDistressRelay({ from: coast, to: area, about: alert }),
  composeDistressRelayAcknowledgement({ from: coast, about: relay }),
  composeDistressRelayAcknowledgement({ from: coast, to: { kind: 'all-ships' }, about: relay }),
  composeAllShipsCall({ from, category: 'urgency' }),
  composeAreaCall({ from: coast, area, category: 'safety' }),
  composeGroupCall({ from, to: '023299905', channel: '77' }),
  hail,
  composeIndividualAcknowledgement({ call: hail }),
  composeUnableToComply({ call: hail, reason: 'busy' }),
  request,
  composePositionReply({ call: request, position: place, time }),
  test,
  composeTestAcknowledgement({ call: test }),
  polling,
  composePollingAcknowledgement({ call: polling }),
];

/** One call of each composition, by kind and kind of address. */
export const sampleCalls: Readonly<Record<string, Call>> = Object.fromEntries(
  calls.map((call) => [`${call.kind} to ${call.to?.kind}`, call]),
);
