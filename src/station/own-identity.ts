import { parseIdentity, usesOf } from '../identity/index.ts';

/** Whether an identity may stand as a station's own. */
export function canBeOwn(mmsi: unknown): mmsi is string {
  const identity = parseIdentity(mmsi);
  return identity.ok && identity.value.mmsi === mmsi && usesOf(identity.value).own;
}
