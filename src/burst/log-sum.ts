/** Natural log of the sum of two exponentials. */
export function logSum(one: number, other: number): number {
  const high = Math.max(one, other);
  return high === Number.NEGATIVE_INFINITY ? high : high + Math.log1p(Math.exp(Math.min(one, other) - high));
}
