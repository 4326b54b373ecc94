import { parseIdentity, usesOf } from '../../identity/index.ts';

/** Whether an identity may stand as a station's own. */
export function canBeOwn(mmsi: unknown): mmsi is string {
  const identity = parseIdentity(mmsi);
  return identity.ok && identity.value.mmsi === mmsi && usesOf(identity.value).own;
}

/** Whether an identity is that of a coast station, or of a group of them (ITU-R M.585: 00 in front). */
export function isCoastIdentity(mmsi: string | null): boolean {
  return mmsi?.startsWith('00') ?? false;
}
