/**
 * Marine VHF digital selective calling, room by room.
 *
 * Text from a form becomes an identity ({@link parseIdentity}); a plan of the waters gives channels
 * ({@link findChannel}, {@link workingChannels}); a line from a radio becomes a {@link Call}
 * ({@link readSentences}); a reported position becomes range and bearing ({@link rangeAndBearing},
 * {@link boundsFrom}); a call becomes symbols, bits and sound ({@link encodeCall}, {@link modulate}) and comes back
 * ({@link createReceiver}); and a station decides what to do next ({@link step}).
 *
 * Every room is a door of its own (`seahail/identity`, `seahail/channel`, …). Import from there, or from here: a
 * bundler drops what is not used either way.
 *
 * @packageDocumentation
 */

export * from './audio/index.ts';
export * from './burst/index.ts';
export * from './call/index.ts';
export * from './channel/canada.ts';
export * from './channel/index.ts';
export * from './channel/international.ts';
export * from './channel/netherlands.ts';
export * from './channel/sweden.ts';
export * from './channel/united-kingdom.ts';
export * from './channel/united-states.ts';
export * from './directory/index.ts';
export * from './identity/administrations.ts';
export * from './identity/index.ts';
export * from './position/index.ts';
export * from './position/plot/index.ts';
export * from './report/index.ts';
export * from './result/index.ts';
export * from './sentence/index.ts';
export * from './speech/index.ts';
export * from './station/index.ts';
