/**
 * What a fast coach types between a weight key and the fault list that it opens: kept for the list's filter, so that no
 * letter of it runs as a key of its own.
 */
let typed: string | null = null;

/** From now on, typing is kept. */
export function holdTyping(): void {
  typed = '';
}

/** Keeps a key while typing is held; whether it did. */
export function takeTyping(event: KeyboardEvent): boolean {
  if (typed === null || event.ctrlKey || event.metaKey || event.altKey) return false;
  if (event.key === 'Backspace') typed = typed.slice(0, -1);
  else if (event.key.length === 1) typed += event.key;
  return true;
}

/** Ends that; gives what was typed. */
export function releaseTyping(): string {
  const kept = typed ?? '';
  typed = null;
  return kept;
}
