/** Numbers that look random and come again with the same seed. */
export type Random = {
  /** 0 up to, not including, 1. */
  readonly share: () => number;
  /** A whole number from 0 up to, not including, `below`. */
  readonly below: (below: number) => number;
  readonly oneOf: <T>(items: readonly [T, ...T[]] | readonly T[]) => T;
};

/** The generator mulberry32 of a seed. */
export function randomOf(seed: number): Random {
  let state = seed >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number): number => Math.floor(share() * limit);
  return {
    share,
    below,
    oneOf: <T>(items: readonly T[]): T => {
      const item = items[below(items.length)];
      if (item === undefined) throw new Error('There is nothing to choose from.');
      return item;
    },
  };
}
