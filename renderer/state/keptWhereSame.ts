/**
 * A list as it was read anew, with what stood in the one before wherever nothing about it has changed, so that it is not drawn again;
 * the list before itself where nothing has changed at all.
 */
export function keptWhereSame<T>(before: T[], now: T[], idOf: (one: T) => string): T[] {
  const known = new Map(before.map((one) => [idOf(one), one]));
  const kept = now.map((one) => {
    const old = known.get(idOf(one));
    return old !== undefined && JSON.stringify(old) === JSON.stringify(one) ? old : one;
  });
  return kept.length === before.length && kept.every((one, index) => one === before[index]) ? before : kept;
}
