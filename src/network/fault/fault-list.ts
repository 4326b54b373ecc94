import type { CodedText } from '../../result/index.ts';
import { said } from './texts.ts';

/** How sure each fault is. */
const CERTAINTIES: Readonly<Record<NetworkFaultId, (typeof NETWORK_FAULTS)[number]['certainty']>> = {
  'no-frames': 'certain',
  'not-frames': 'certain',
  'packet-torn': 'certain',
  'no-call-message': 'possible',
  'two-digit-codes': 'certain',
  'identity-code': 'certain',
  'category-lost': 'likely',
  'message-cut-off': 'certain',
  'date-early': 'certain',
  'call-repeated': 'certain',
  'no-address-claim': 'possible',
  'address-disputed': 'likely',
  'two-positions': 'possible',
  'own-report-as-target': 'likely',
  'waypoint-not-listed': 'possible',
};

/** One of the faults of {@link NETWORK_FAULTS}. */
export type NetworkFaultId =
  | 'no-frames'
  | 'not-frames'
  | 'packet-torn'
  | 'no-call-message'
  | 'two-digit-codes'
  | 'identity-code'
  | 'category-lost'
  | 'message-cut-off'
  | 'date-early'
  | 'call-repeated'
  | 'no-address-claim'
  | 'address-disputed'
  | 'two-positions'
  | 'own-report-as-target'
  | 'waypoint-not-listed';

/**
 * What can be wrong between a radio and a display on the network, in the order in which to look.
 *
 * Source: common practice, collected from public reports of trouble; the rules of messages are those of the public
 * list of parameter groups of IEC 61162-3.
 */
export const NETWORK_FAULTS: readonly {
  readonly id: NetworkFaultId;
  readonly certainty: 'certain' | 'likely' | 'possible';
  readonly why: CodedText;
  readonly remedy: CodedText;
}[] = /* @__PURE__ */ (Object.keys(CERTAINTIES) as NetworkFaultId[]).map((id) => ({
  id,
  certainty: CERTAINTIES[id],
  why: said('network-why', { fault: id }),
  remedy: said('network-remedy', { fault: id }),
}));
