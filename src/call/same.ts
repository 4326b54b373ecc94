/** Whether two plain values are alike all the way down. */
export function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one)) return Array.isArray(other) && sameItems(one, other);
  return !Array.isArray(other) && sameProperties(one as Properties, other as Properties);
}

type Properties = Readonly<Record<string, unknown>>;

// Plain loops: every call read from a sentence or a burst comes through here.
function sameItems(one: readonly unknown[], other: readonly unknown[]): boolean {
  if (one.length !== other.length) return false;
  for (let index = 0; index < one.length; index += 1) if (!same(one[index], other[index])) return false;
  return true;
}

function sameProperties(one: Properties, other: Properties): boolean {
  const names = Object.keys(one);
  if (names.length !== Object.keys(other).length) return false;
  for (const name of names) if (!Object.hasOwn(other, name) || !same(one[name], other[name])) return false;
  return true;
}

/** The same plain value again, sharing nothing with it. */
export function copyOf<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(copyOf) as Value;
  const copy = { ...value };
  for (const name in copy) copy[name] = copyOf(copy[name]);
  return copy;
}
