/**
 * The burst: a call as symbols and bits on the air, and back again from whatever was heard of them.
 *
 * {@link encodeCall} makes the bits; {@link decodeSoft}, {@link decodeBits} and {@link decodeStream} read
 * them, each with its {@link Verdict}. ITU-R M.493 and M.821-1 are cited from memory, unless a national restatement is
 * named.
 *
 * Guide: [Burst: how does it travel?](../../docs/guide/burst.md).
 *
 * @packageDocumentation
 */
export { decodeAtis, encodeAtis } from './atis.ts';
export { decodeAttempt } from './decode-attempt.ts';
export { decodeBits } from './decode-bits.ts';
export { decodeSoft } from './decode-soft.ts';
export { decodeStream } from './decode-stream.ts';

export { type Burst, encodeCall } from './encode.ts';
export { errorCheckOf } from './error-check.ts';

export type { Reception, Verdict } from './reception.ts';
