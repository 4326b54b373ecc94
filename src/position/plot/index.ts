/**
 * A drawing of positions and bearings as SVG.
 *
 * @packageDocumentation
 */
export type { PlotOptions, PlottedStation } from './plot.ts';
export { plotBearings } from './plot.ts';
