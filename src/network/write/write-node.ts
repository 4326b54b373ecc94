import { want } from '../../result/internal.ts';
import { ADDRESS_CLAIM, PRODUCT } from '../message/layout.ts';
import type { NetworkFrame } from '../transport/frame.ts';
import { type MessageOptions, messageFrames } from './message-frames.ts';

/**
 * The frames with which a node claims an address (PGN 60928) and says what it is (PGN 126996).
 *
 * For makers of a node. To behave on the network takes more than these frames: wait 250 ms after a claim before
 * sending anything else; give the address up to a node whose claim has the lower NAME; answer requests (PGN 59904)
 * for both groups. Certification is the maker's own matter.
 *
 * @param node - who it is
 * @param options - the address that it claims
 * @returns the claim, then the product information
 * @throws RangeError when a number is out of range
 *
 * Source: SAE J1939-81 as restated in the documentation of the Linux kernel; public list of parameter groups.
 *
 * @example
 * ```ts
 * import { writeNodeFrames } from 'seahail/network';
 *
 * const node = { unique: 1, manufacturer: 2046, function: 190, deviceClass: 70 };
 * const [claim] = writeNodeFrames({ ...node, model: 'Skerra', software: '1', serial: '7' }, { source: 40 });
 * console.log(claim?.id.toString(16)); // 18eeff28
 * ```
 */
export function writeNodeFrames(
  node: {
    /** Number that no other node of the same manufacturer has, 0 to 2097151. */
    readonly unique: number;
    /** Manufacturer, from the public list, 0 to 2047. */
    readonly manufacturer: number;
    /** Function within its class, 0 to 255. */
    readonly function: number;
    /** Class, 0 to 127; 70 is communication. */
    readonly deviceClass: number;
    /** Model, at most 32 characters. */
    readonly model: string;
    /** Version of its software, at most 32 characters. */
    readonly software: string;
    /** Serial number, at most 32 characters. */
    readonly serial: string;
  },
  options: MessageOptions,
): NetworkFrame[] {
  want('writeNodeFrames', 'a node', node, 'unique');
  want('writeNodeFrames', 'options with source', options, 'source');
  for (const [name, most] of [
    ['unique', 2 ** 21 - 1],
    ['manufacturer', 2047],
    ['function', 255],
    ['deviceClass', 127],
  ] as const) {
    const value = node[name];
    if (!(Number.isInteger(value) && value >= 0 && value <= most))
      throw new RangeError(`${name}: expected a whole number from 0 to ${most}, got ${value}`);
  }
  const claim = {
    ...node,
    instanceLower: 0,
    instanceUpper: 0,
    systemInstance: 0,
    industry: MARINE,
    arbitrary: 1,
  };
  const product = {
    databaseVersion: 2.1,
    product: 0,
    model: node.model,
    software: node.software,
    modelVersion: '',
    serial: node.serial,
    // Not certified, and one load unit of 50 mA.
    certification: null,
    load: 1,
  };
  return [...messageFrames(ADDRESS_CLAIM, claim, options), ...messageFrames(PRODUCT, product, options)];
}

/** Industry group of the NAME. */
const MARINE = 4;
