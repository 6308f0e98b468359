/**
 * Pairs the items of two lists, each at most once. The rules are tried one after another over the whole list, so that what
 * an early rule knows for sure is not taken away by a later guess; within a rule, the order of the lists decides.
 */
export function pairUp<T>(
  items: readonly T[],
  others: readonly T[],
  rules: readonly ((item: T, other: T) => boolean)[],
): ReadonlyMap<T, T> {
  const pairs = new Map<T, T>();
  const taken = new Set<T>();
  for (const rule of rules) {
    for (const item of items) {
      if (pairs.has(item)) continue;
      const other = others.find((one) => !taken.has(one) && rule(item, one));
      if (other === undefined) continue;
      pairs.set(item, other);
      taken.add(other);
    }
  }
  return pairs;
}
