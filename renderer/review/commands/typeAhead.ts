/**
 * What a fast coach types between a weight key and the fault list that it opens: kept for the list's filter, so that no
 * letter of it runs as a key of its own.
 */
export type TypeAhead = {
  /** From now on, typing is kept. */
  readonly hold: () => void;
  /** Keeps a key while typing is held; whether it did. */
  readonly keep: (event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>) => boolean;
  /** Ends that; gives what was typed. */
  readonly release: () => string;
};

export function createTypeAhead(): TypeAhead {
  let typed: string | null = null;
  return {
    hold: () => {
      typed = '';
    },
    keep: ({ key, ctrlKey, metaKey, altKey }) => {
      if (typed === null || ctrlKey || metaKey || altKey) return false;
      if (key === 'Backspace') typed = typed.slice(0, -1);
      else if (key.length === 1) typed += key;
      return true;
    },
    release: () => {
      const kept = typed ?? '';
      typed = null;
      return kept;
    },
  };
}
