/**
 * Who is it? Nine-digit identities of the maritime mobile service (MMSI), call signs and call addresses.
 *
 * - {@link parseIdentity}: well-formed? Text as people write it to an {@link Identity} with its parts.
 * - {@link checkIdentity}, {@link usesOf}: sensible here? Own identity, address of a call, address of a group.
 * - `seahail/identity/administrations`: assigned? The table of MIDs, apart because of its size.
 * - {@link formatIdentity}: for people and for machines.
 * - {@link encodeCallAddress}, {@link decodeCallAddress}: the ten digits used on the air.
 * - {@link encodeAtisCode}, {@link decodeAtisCode}: the ten digits used on inland waters.
 * - {@link checkCallSign}: is a call sign plausible?
 * - {@link identitySchema}, {@link callSignSchema}: Standard Schemas for forms.
 * - {@link identityForms}: the table of forms, for help pages.
 * - `seahail/directory`: known stations.
 *
 * Guide: [Identity: who is it?](../../docs/guide/identity.md).
 *
 * @packageDocumentation
 */
export { type AtisReading, atisMembers, decodeAtisCode, encodeAtisCode } from './atis.ts';

export { decodeCallAddress, encodeCallAddress } from './call-address.ts';
export { callSignSchema, checkCallSign } from './call-sign.ts';
export { checkIdentity, type IdentityField, usesOf } from './check.ts';
export { mmsi } from './classify.ts';
export { formatIdentity } from './format.ts';
export { type IdentityForm, identityForms } from './forms.ts';
export type {
  Identity,
  IdentityKind,
  IdentityParts,
  Mmsi,
} from './identity.ts';
export { parseIdentity } from './parse.ts';
export { identitySchema } from './schema.ts';
