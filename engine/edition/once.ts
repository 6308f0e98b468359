/** A value that is made when it is first asked for, and kept. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** A value for each of some objects, made when it is first asked for and kept as long as the object lives. */
export function oncePer<Key extends object, T>(make: (key: Key) => T): (key: Key) => T {
  const made = new WeakMap<Key, { readonly value: T }>();
  return (key) => {
    const known = made.get(key) ?? { value: make(key) };
    made.set(key, known);
    return known.value;
  };
}
