/** Acts that wait for the picture to stand before they are asked for: a flag on its way to the frame on screen. */
export type Landing = {
  /** Counts an act as on its way until it has ended; gives its answer. */
  readonly follow: <T>(act: Promise<T>) => Promise<T>;
  readonly isUnderWay: () => boolean;
  /** Resolves once none is on its way. Undo waits for it: whoever presses it means the newest act. */
  readonly ended: () => Promise<void>;
};

export function createLanding(): Landing {
  const underWay = new Set<Promise<unknown>>();
  return {
    follow: async (act) => {
      underWay.add(act);
      try {
        return await act;
      } finally {
        underWay.delete(act);
      }
    },
    isUnderWay: () => underWay.size > 0,
    ended: async () => {
      while (underWay.size > 0) await Promise.allSettled(underWay);
    },
  };
}
