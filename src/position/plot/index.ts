/**
 * A drawing of positions and bearings as SVG.
 *
 * @packageDocumentation
 */

export { plotBearings } from './plot.ts';
