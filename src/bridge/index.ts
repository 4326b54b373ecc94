/**
 * From one cable to the other: for a boat with an older radio on a serial port and a newer display on the network, or
 * the reverse.
 *
 * Guide: [Network: what does the bus say?](../../docs/guide/network.md).
 *
 * @packageDocumentation
 */
export { type Bridge, createBridge } from './bridge.ts';
