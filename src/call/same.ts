/** Whether two plain values are alike all the way down. */
export function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const left = Object.entries(one);
  if (left.length !== Object.keys(other).length) return false;
  return left.every(
    ([key, value]) => Object.hasOwn(other, key) && same(value, (other as Record<string, unknown>)[key]),
  );
}
