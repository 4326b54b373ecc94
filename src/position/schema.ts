import type { FormSchema } from '../result/index.ts';
import { formSchema } from '../result/internal.ts';
import type { WrittenPosition } from './coordinates.ts';
import { parsePosition } from './parse-position.ts';

/**
 * A schema for a position as people write it, for libraries that take Standard Schema v1.
 *
 * @returns the schema; its output is what {@link parsePosition} gives
 *
 * Source: Standard Schema v1.
 *
 * @see {@link parsePosition}
 *
 * @example
 * ```ts
 * import { positionSchema } from 'seahail/position';
 *
 * const { issues } = positionSchema()['~standard'].validate('56,5');
 * console.log(issues?.[0]?.suggestion); // 56, 5
 * ```
 */
export function positionSchema(): FormSchema<WrittenPosition> {
  const degrees = (most: number) => ({ type: 'number', minimum: -most, maximum: most });
  return formSchema('positionSchema', parsePosition, {
    type: 'object',
    properties: { latitude: degrees(90), longitude: degrees(180), step: { type: 'number', minimum: 0 } },
    required: ['latitude', 'longitude', 'step'],
  });
}
