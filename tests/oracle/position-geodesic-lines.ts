import { readFileSync } from 'node:fs';

/** One line of the published test set: all angles in degrees, lengths in metres. */
export interface GeodesicLine {
  readonly latitude1: number;
  readonly longitude1: number;
  readonly azimuth1: number;
  readonly latitude2: number;
  readonly longitude2: number;
  /** Onward azimuth at the second point. */
  readonly azimuth2: number;
  readonly metres: number;
  /** Reduced length m12: how far apart two lines end that start a radian apart. */
  readonly reducedLength: number;
}

/** "Test set for geodesics", doi:10.5281/zenodo.32156: 500 of its lines, all nine classes, WGS 84. */
export function geodesicLines(): GeodesicLine[] {
  const file = new URL('../../shared/position/geodtest-500.dat', import.meta.url);
  return readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .map((line) => {
      const field = line.split(' ').map(Number) as [
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
        number,
      ];
      return {
        latitude1: field[0],
        longitude1: field[1],
        azimuth1: field[2],
        latitude2: field[3],
        longitude2: field[4],
        azimuth2: field[5],
        metres: field[6],
        reducedLength: field[8],
      };
    });
}
